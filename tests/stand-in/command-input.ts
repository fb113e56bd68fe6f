/** How a person fills in a command's options, held to the same bounds as by her client. */
import { type GivenFile, NotPossible, type Resolved } from './given.ts';
import { isObject, type JsonObject, numberIn, objectsIn, textIn } from './json.ts';
import type { RegisteredCommand } from './registry.ts';

/** A text, number or truth; people, channels and roles by object with an id; a file. */
export type OptionValue = string | number | boolean | { readonly id: string } | GivenFile;
export type OptionValues = Readonly<Record<string, OptionValue>>;

/** A command filled in, and the type of the option under autocompletion. */
export interface FilledIn {
  readonly data: JsonObject;
  readonly focusedType: number | undefined;
}

interface Input {
  readonly values: OptionValues;
  /** Name of the option being typed in, for autocompletion; nothing else need be complete then. */
  readonly focused: string | undefined;
  readonly resolved: Resolved;
}

/** `path` names the subcommand (and group) below the command, outermost first. */
export function fillIn(command: RegisteredCommand, path: readonly string[], input: Input): FilledIn {
  const leaf = path.reduce(stepDown, command.definition);
  const definitions = objectsIn(leaf, 'options');
  if (definitions.some((option) => (numberIn(option, 'type') ?? 0) <= 2)) {
    throw new NotPossible(`'${command.name}' cannot be called without one of its subcommands.`);
  }
  const stray = Object.keys(input.values).find((name) => !definitions.some((option) => option.name === name));
  if (stray !== undefined) throw new NotPossible(`'${command.name}' has no option '${stray}'.`);
  const filled = definitions.flatMap((option) => fillOption(option, input));
  const focused = definitions.find((option) => option.name === input.focused);
  if (input.focused !== undefined && focused?.autocomplete !== true) {
    throw new NotPossible(`'${command.name}' completes no option '${input.focused}'.`);
  }
  return { data: wrap(command, path, filled, input), focusedType: focused && numberIn(focused, 'type') };
}

function stepDown(level: JsonObject, name: string): JsonObject {
  const next = objectsIn(level, 'options').find((option) => option.name === name && Number(option.type) <= 2);
  if (!next) throw new NotPossible(`There is no subcommand '${name}'.`);
  return next;
}

function wrap(
  command: RegisteredCommand,
  path: readonly string[],
  filled: readonly JsonObject[],
  input: Input,
): JsonObject {
  const innermost = path.length;
  const options = [...path].reverse().reduce<readonly JsonObject[]>((inner, name, fromInside) => {
    const isGroup = innermost === 2 && fromInside === 1;
    return [{ name, type: isGroup ? 2 : 1, options: inner }];
  }, filled);
  const guild = command.guildId === undefined ? {} : { guild_id: command.guildId };
  return { id: command.id, name: command.name, type: 1, ...guild, options, ...input.resolved.onWire() };
}

function fillOption(option: JsonObject, input: Input): readonly JsonObject[] {
  const name = textIn(option, 'name');
  const type = numberIn(option, 'type') ?? 0;
  const given = input.values[name];
  const completing = input.focused !== undefined;
  if (given === undefined) {
    if (option.required === true && !completing) throw new NotPossible(`Option '${name}' is required.`);
    return completing && name === input.focused ? [{ name, type, value: '', focused: true }] : [];
  }
  if (name === input.focused) return [{ name, type, value: `${given}`, focused: true }];
  return [{ name, type, value: checked(option, type, given, input.resolved) }];
}

function checked(option: JsonObject, type: number, given: OptionValue, resolved: Resolved): unknown {
  const no = (why: string) => new NotPossible(`Option '${option.name}': ${why}.`);
  switch (type) {
    case 3:
      if (typeof given !== 'string') throw no('a text is wanted');
      return withinLength(option, given, no);
    case 4:
    case 10:
      if (typeof given !== 'number' || (type === 4 && !Number.isInteger(given)))
        throw no('a number is wanted');
      return withinValue(option, given, no);
    case 5:
      if (typeof given !== 'boolean') throw no('true or false is wanted');
      return given;
    case 11:
      if (!isFile(given)) throw no('a file is wanted');
      return resolved.upload(given);
    default:
      if (!isObject(given) || typeof given.id !== 'string')
        throw no('someone or something with an id is wanted');
      return resolved.mention(given.id);
  }
}

function isFile(given: OptionValue): given is GivenFile {
  return typeof given === 'object' && 'bytes' in given;
}

type No = (why: string) => Error;

function withinLength(option: JsonObject, given: string, no: No): string {
  if (given.length < (numberIn(option, 'min_length') ?? 1)) throw no('the text is too short');
  if (given.length > (numberIn(option, 'max_length') ?? 6000)) throw no('the text is too long');
  return amongChoices(option, given, no);
}

function withinValue(option: JsonObject, given: number, no: No): number {
  if (given < (numberIn(option, 'min_value') ?? Number.NEGATIVE_INFINITY))
    throw no('the number is too small');
  if (given > (numberIn(option, 'max_value') ?? Number.POSITIVE_INFINITY))
    throw no('the number is too large');
  return amongChoices(option, given, no);
}

function amongChoices<T>(option: JsonObject, given: T, no: No): T {
  const choices = objectsIn(option, 'choices');
  if (choices.length > 0 && !choices.some((choice) => choice.value === given))
    throw no('not among the choices');
  return given;
}
