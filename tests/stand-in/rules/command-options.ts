/** Options of a command (page `interactions/application-commands`). */
import { isAbsent, isObject, type JsonObject, numberIn, objectsIn } from '../json.ts';
import { choiceValue, distinctChoices } from './callbacks.ts';
import { both, byType, decimal, type Fields, form, list, oneOf, text, truth, whole } from './fields.ts';
import type { Rule, Spot } from './spot.ts';

/** Form of a chat command's or option's name, from the documentation. */
const NAME = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;

export const lowerName: Rule = both(text(1, 32, NAME), (spot) => {
  if (typeof spot.value === 'string' && spot.value !== spot.value.toLowerCase()) {
    spot.wrong('not-lower-case', `'${spot.value}' must be in lower case.`);
  }
});

/** Languages the platform can show (page `reference`, Locales). */
const LOCALES =
  'id da de en-GB en-US es-ES es-419 fr hr it lt hu nl no pl pt-BR ro fi sv-SE vi tr cs el bg ru uk hi th zh-CN ja zh-TW ko'.split(
    ' ',
  );

export function localized(rule: Rule): Rule {
  return form({}, Object.fromEntries(LOCALES.map((locale) => [locale, rule])));
}

export const description = text(1, 100);

const named = (type: number): Fields => ({ type: oneOf(type), name: lowerName, description });
const translations: Fields = {
  name_localizations: localized(lowerName),
  description_localizations: localized(description),
};

/** Numbers a choice or bound may take: those a double holds exactly. */
const bound = decimal(-(2 ** 53), 2 ** 53);

function value(type: number, own: Fields = {}): Rule {
  return form(named(type), { ...translations, required: truth, ...own });
}

/** A text or number option: listed choices, or autocompletion, never both. */
function chosenValue(type: number, own: Fields): Rule {
  const choice = form(
    { name: text(1, 100), value: choiceValue(type) },
    { name_localizations: localized(text(1, 100)) },
  );
  return both(
    value(type, { choices: list(choice, 0, 25), autocomplete: truth, ...own }),
    distinctChoices,
    eitherChoicesOrAutocomplete,
    boundsAgree,
  );
}

const eitherChoicesOrAutocomplete: Rule = (spot) => {
  const option = spot.value as JsonObject;
  if (option.autocomplete === true && objectsIn(option, 'choices').length > 0) {
    spot.wrong('choices-with-autocomplete', 'Choices and autocompletion exclude each other.');
  }
};

const boundsAgree: Rule = (spot) => {
  const option = spot.value as JsonObject;
  for (const kind of ['length', 'value']) {
    const least = numberIn(option, `min_${kind}`) ?? Number.NEGATIVE_INFINITY;
    const most = numberIn(option, `max_${kind}`) ?? Number.POSITIVE_INFINITY;
    if (least > most) spot.wrong('minimum-over-maximum', `min_${kind} ${least} is more than ${most}.`);
  }
};

const values: Readonly<Record<number, Rule>> = {
  3: chosenValue(3, { min_length: whole(0, 6000), max_length: whole(1, 6000) }),
  4: chosenValue(4, { min_value: both(bound, integral), max_value: both(bound, integral) }),
  5: value(5),
  6: value(6),
  7: value(7, { channel_types: list(whole(0, 16), 0, 17) }),
  8: value(8),
  9: value(9),
  10: chosenValue(10, { min_value: bound, max_value: bound }),
  11: value(11),
};

function integral(spot: Spot): void {
  if (!Number.isInteger(spot.value)) spot.wrong('wrong-type', 'Must be a whole number.');
}

const valueOptions: Rule = both(list(byType(values, 'a list of values'), 0, 25), inOrder);

const subcommand = form(named(1), { ...translations, options: valueOptions });
const group = form(
  { ...named(2), options: both(list(byType({ 1: subcommand }, 'a group'), 1, 25), inOrder) },
  translations,
);

/** Required options come first, and no name comes twice. */
function inOrder(spot: Spot): void {
  const names = new Set<unknown>();
  let optionalSeen = false;
  const options = Array.isArray(spot.value) ? spot.value : [];
  options.forEach((option: unknown, place) => {
    if (!isObject(option)) return;
    if (names.has(option.name)) spot.at(place).wrong('option-name-twice', `'${option.name}' comes twice.`);
    names.add(option.name);
    if (option.required === true && optionalSeen) {
      spot
        .at(place)
        .wrong('required-after-optional', `'${option.name}' must stand before the optional ones.`);
    }
    if (option.required !== true) optionalSeen = true;
  });
}

/** Subcommands and groups stand only among their like. */
const notMixed: Rule = (spot) => {
  const kinds = new Set((Array.isArray(spot.value) ? spot.value : []).map(isSubcommand));
  if (kinds.size > 1) spot.wrong('subcommands-mixed', 'Subcommands and values do not stand side by side.');
};

function isSubcommand(option: unknown): boolean {
  return isObject(option) && !isAbsent(option, 'type') && Number(option.type) <= 2;
}

export const options: Rule = both(
  list(byType({ 1: subcommand, 2: group, ...values }, 'a command'), 0, 25),
  notMixed,
  inOrder,
);
