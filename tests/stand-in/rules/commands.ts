/** Command definitions as they are registered in bulk (page `interactions/application-commands`). */
import { isObject, type JsonObject, numberIn, objectsIn, textIn } from '../json.ts';
import { description, localized, lowerName, options } from './command-options.ts';
import { both, type Fields, form, list, oneOf, snowflake, text, truth } from './fields.ts';
import type { Rule, Spot } from './spot.ts';

/** How many commands of each type an app may have, globally and again in each server. */
const MOST_OF_TYPE: Readonly<Record<number, number>> = { 1: 100, 2: 15, 3: 15 };

const distinct: Rule = (spot) => {
  const entries = Array.isArray(spot.value) ? spot.value : [];
  if (new Set(entries).size < entries.length) spot.wrong('choice-twice', 'Each entry may come once.');
};

const shared: Fields = {
  id: snowflake,
  default_member_permissions: text(1, 20, /^\d+$/),
  nsfw: truth,
};

const onlyGlobal: Fields = {
  contexts: both(list(oneOf(0, 1, 2), 1, 3), distinct),
  integration_types: both(list(oneOf(0, 1), 1, 2), distinct),
};

const chat = form(
  { name: lowerName, description },
  {
    type: oneOf(1),
    ...shared,
    ...onlyGlobal,
    name_localizations: localized(lowerName),
    description_localizations: localized(description),
    options,
  },
);

/** A command on a person or a message: any letters in its name, and no description. */
const menuEntry = form(
  { name: text(1, 32), type: oneOf(2, 3) },
  { ...shared, ...onlyGlobal, name_localizations: localized(text(1, 32)) },
);

/** Texts of one command together (names, descriptions, choice values), the longest translation counting. */
function lengthOfTexts(part: JsonObject): number {
  const longest = (key: string) => {
    const translated = Object.values(
      isObject(part[`${key}_localizations`]) ? Object(part[`${key}_localizations`]) : {},
    );
    return Math.max(textIn(part, key).length, ...translated.map((text) => `${text}`.length));
  };
  const below = [...objectsIn(part, 'options'), ...objectsIn(part, 'choices')];
  const sum = below.reduce((total, inner) => total + lengthOfTexts(inner), 0);
  return longest('name') + longest('description') + textIn(part, 'value').length + sum;
}

const notTooWordy: Rule = (spot) => {
  const length = isObject(spot.value) ? lengthOfTexts(spot.value) : 0;
  if (length > 8000) spot.wrong('texts-over-8000', `The texts hold ${length} of 8000 characters.`);
};

const privateNeedsUser: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  const { contexts, integration_types: types } = spot.value;
  const userInstall = Array.isArray(types) && types.includes(1);
  if (Array.isArray(contexts) && contexts.includes(2) && !userInstall) {
    spot.wrong('private-channel-needs-user-install', 'Context 2 needs integration type 1.');
  }
};

const notInGuild: Rule = (spot) => {
  for (const key of Object.keys(onlyGlobal)) {
    if (isObject(spot.value) && spot.value[key] !== undefined && spot.value[key] !== null) {
      spot.at(key).wrong('only-in-global-commands', `'${key}' is for global commands only.`);
    }
  }
};

const command: Rule = (spot) => {
  const isMenuEntry = isObject(spot.value) && (spot.value.type === 2 || spot.value.type === 3);
  both(isMenuEntry ? menuEntry : chat, notTooWordy, privateNeedsUser)(spot);
};

const asASet: Rule = (spot) => {
  const entries: readonly JsonObject[] = Array.isArray(spot.value) ? spot.value.filter(isObject) : [];
  const names = new Set<string>();
  const counts = new Map<number, number>();
  entries.forEach((entry, place) => {
    const type = numberIn(entry, 'type') ?? 1;
    const name = `${type} ${textIn(entry, 'name')}`;
    if (names.has(name)) spot.at(place).wrong('command-name-twice', `'${entry.name}' comes twice.`);
    names.add(name);
    counts.set(type, (counts.get(type) ?? 0) + 1);
  });
  for (const [type, count] of counts) tooMany(spot, type, count);
};

function tooMany(spot: Spot, type: number, count: number): void {
  const most = MOST_OF_TYPE[type] ?? 0;
  if (count > most) spot.wrong('too-many-of-a-kind', `${count} of ${most} commands of type ${type}.`);
}

/** The whole list an app registers, globally or in one server. */
export function commandList(where: 'global' | 'guild'): Rule {
  const one = where === 'global' ? command : both(command, notInGuild);
  return both(list(one, 0, 130), asASet);
}
