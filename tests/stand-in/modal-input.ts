/** How a person fills in a form, held to the same bounds as by her client. */
import { type GivenFile, NotPossible, type Resolved } from './given.ts';
import { isAbsent, isObject, type JsonObject, numberIn, objects, objectsIn, textIn } from './json.ts';
import type { SeenModal } from './seen.ts';

/** A text or radio choice; a list of choices or of ids; files; a ticked or empty box. */
export type FieldValue = string | readonly string[] | readonly GivenFile[] | boolean;
export type FieldValues = Readonly<Record<string, FieldValue>>;

/** The data of a modal's submission; fields that were left alone keep what they showed at first. */
export function submission(modal: SeenModal, values: FieldValues, resolved: Resolved): JsonObject {
  const known = new Set(modal.fields.map((field) => field.custom_id));
  const stray = Object.keys(values).find((name) => !known.has(name));
  if (stray !== undefined) throw new NotPossible(`The form has no field '${stray}'.`);
  const fill = (part: JsonObject): JsonObject => {
    const { type, id } = part;
    if (isObject(part.component)) return { type, id, component: fill(part.component) };
    if (Array.isArray(part.components)) return { type, id, components: objects(part.components).map(fill) };
    if (typeof part.custom_id !== 'string') return { type, id };
    return { type, id, custom_id: part.custom_id, ...filled(part, values[part.custom_id], resolved) };
  };
  const components = numbered(objectsIn(modal.definition, 'components')).map(fill);
  return { custom_id: modal.customId, components, ...resolved.onWire() };
}

/** Components with an id each, as the platform gives them. */
function numbered(components: readonly JsonObject[]): readonly JsonObject[] {
  let last = 0;
  const number = (part: JsonObject): JsonObject => {
    last += 1;
    return {
      ...part,
      id: numberIn(part, 'id') ?? last,
      ...(isObject(part.component) && { component: number(part.component) }),
      ...(Array.isArray(part.components) && { components: objects(part.components).map(number) }),
    };
  };
  return components.map(number);
}

function filled(field: JsonObject, given: FieldValue | undefined, resolved: Resolved): JsonObject {
  switch (field.type) {
    case 4:
      return { value: typedText(field, given) };
    case 21:
      return { value: radioChoice(field, given) };
    case 23:
      return { value: given === undefined ? field.default === true : given === true };
    case 19:
      return { values: counted(field, filesOf(given), 'files').map((file) => resolved.upload(file)) };
    case 3:
    case 22:
      return { values: counted(field, choicesOf(field, given), 'choices') };
    default:
      return { values: counted(field, textsOf(given), 'choices').map((id) => resolved.mention(id)) };
  }
}

function typedText(field: JsonObject, given: FieldValue | undefined): string {
  const text = given ?? textIn(field, 'value');
  if (typeof text !== 'string') throw no(field, 'a text is wanted');
  if (text === '' && field.required === false) return text;
  const least = Math.max(1, numberIn(field, 'min_length') ?? 0);
  if (text.length < least) throw no(field, `at least ${least} characters are wanted`);
  if (text.length > (numberIn(field, 'max_length') ?? 4000)) throw no(field, 'the text is too long');
  return text;
}

function radioChoice(field: JsonObject, given: FieldValue | undefined): string | null {
  const atFirst = objectsIn(field, 'options').find((option) => option.default === true);
  const value = given ?? (atFirst ? textIn(atFirst, 'value') : undefined);
  if (value === undefined && field.required === false) return null;
  if (typeof value !== 'string' || !isOption(field, value)) throw no(field, 'one of its options is wanted');
  return value;
}

function choicesOf(field: JsonObject, given: FieldValue | undefined): readonly string[] {
  const atFirst = objectsIn(field, 'options').filter((option) => option.default === true);
  const values = given === undefined ? atFirst.map((option) => textIn(option, 'value')) : textsOf(given);
  if (!values.every((value) => isOption(field, value))) throw no(field, 'only its options can be chosen');
  return values;
}

/** As many entries as the field takes; an optional field may also stay empty. */
function counted<T>(field: JsonObject, entries: readonly T[], what: string): readonly T[] {
  if (entries.length === 0 && field.required === false) return entries;
  const least = numberIn(field, 'min_values') ?? 1;
  const mostOfAll = field.type === 22 ? objectsIn(field, 'options').length : 1;
  const most = isAbsent(field, 'max_values') ? mostOfAll : Number(field.max_values);
  if (entries.length < least || entries.length > most)
    throw no(field, `${least} to ${most} ${what} are wanted`);
  return entries;
}

function isOption(field: JsonObject, value: string): boolean {
  return objectsIn(field, 'options').some((option) => option.value === value);
}

function textsOf(given: FieldValue | undefined): readonly string[] {
  return Array.isArray(given) ? given.filter((entry) => typeof entry === 'string') : [];
}

function filesOf(given: FieldValue | undefined): readonly GivenFile[] {
  return Array.isArray(given) ? given.filter((entry) => typeof entry === 'object') : [];
}

function no(field: JsonObject, why: string): NotPossible {
  return new NotPossible(`Field '${field.custom_id}': ${why}.`);
}
