/** The answer to an interaction (page `interactions/receiving-and-responding`). */
import { isObject, objectsIn } from '../json.ts';
import { both, form, list, oneOf, text, whole } from './fields.ts';
import { EPHEMERAL, type MessageSetting, message } from './messages.ts';
import { modal } from './modals.ts';
import type { Rule, Spot } from './spot.ts';

/** What the person did. A modal's submission knows whether the modal was opened from a message. */
export type Deed = 'command' | 'component' | 'autocomplete' | 'modal' | 'modal from a message';

/** Callback types: 4 reply, 5 reply later, 6 update later, 7 update, 8 choices, 9 modal. */
export type CallbackType = 4 | 5 | 6 | 7 | 8 | 9;

const ANSWERS_TO: Readonly<Record<Deed, readonly CallbackType[]>> = {
  command: [4, 5, 9],
  component: [4, 5, 6, 7, 9],
  autocomplete: [8],
  modal: [4, 5],
  'modal from a message': [4, 5, 6, 7],
};

export interface CallbackSetting {
  readonly deed: Deed;
  /** Command option type under autocompletion (3 text, 4 whole number, 10 number). */
  readonly focusedType: number | undefined;
  readonly reply: MessageSetting;
  readonly update: MessageSetting;
}

export function callback(setting: CallbackSetting): Rule {
  return (spot) => {
    if (!isObject(spot.value)) return spot.wrong('wrong-type', 'Must be an object.');
    const type = spot.value.type;
    const allowed: readonly unknown[] = ANSWERS_TO[setting.deed];
    if (!allowed.includes(type)) {
      const says = `Type ${type} is no answer to: ${setting.deed}.`;
      return spot.at('type').wrong('callback-not-for-this-interaction', says);
    }
    ruleFor(type as CallbackType, setting)(spot);
  };
}

function ruleFor(type: CallbackType, setting: CallbackSetting): Rule {
  const only = { type: oneOf(type) };
  switch (type) {
    case 4:
      return form({ ...only, data: message(setting.reply) });
    case 5:
      return form(only, { data: form({}, { flags: ephemeralOnly }) });
    case 6:
      return form(only);
    case 7:
      return form({ ...only, data: message(setting.update) });
    case 8:
      return form({ ...only, data: choices(setting.focusedType) });
    case 9:
      return form({ ...only, data: modal });
    default:
      return type satisfies never;
  }
}

const ephemeralOnly: Rule = both(whole(0, 2 ** 31 - 1), (spot) => {
  if (Number(spot.value) & ~EPHEMERAL)
    spot.wrong('flag-not-allowed', 'A deferred reply can only be ephemeral.');
});

function choices(focusedType: number | undefined): Rule {
  const choice = form(
    { name: text(1, 100), value: choiceValue(focusedType ?? 3) },
    { name_localizations: anyNames },
  );
  return both(form({ choices: list(choice, 0, 25) }), distinctChoices);
}

const anyNames: Rule = (spot) => {
  if (!isObject(spot.value)) return spot.wrong('wrong-type', 'Must be an object.');
  for (const locale of Object.keys(spot.value)) text(1, 100)(spot.at(locale));
};

/** A choice's value has the type of its option; text up to 100 characters, numbers exact in a double. */
export function choiceValue(optionType: number): Rule {
  return (spot) => {
    const wanted = optionType === 3 ? 'string' : 'number';
    if (typeof spot.value !== wanted)
      return spot.wrong('choice-of-wrong-type', `The value must be a ${wanted}.`);
    if (optionType === 3) text(0, 100)(spot);
    else if (optionType === 4) whole(-(2 ** 53), 2 ** 53)(spot);
  };
}

/** Two choices with one name, or one value, cannot be told apart. */
export function distinctChoices(spot: Spot): void {
  if (!isObject(spot.value)) return;
  const list = objectsIn(spot.value, 'choices');
  for (const key of ['name', 'value'] as const) {
    const distinct = new Set(list.map((choice) => choice[key]));
    if (distinct.size < list.length)
      spot.at('choices').wrong('choice-twice', `Two choices share one ${key}.`);
  }
}
