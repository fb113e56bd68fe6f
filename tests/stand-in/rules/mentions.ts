/** Who a message would call by name (page `resources/message`, Allowed Mentions Object). */
import { isObject, type JsonObject, textsIn } from '../json.ts';
import { both, form, list, oneOf, snowflake, truth } from './fields.ts';
import type { Rule } from './spot.ts';

const contradiction: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  for (const kind of ['users', 'roles'] as const) {
    if (textsIn(spot.value, 'parse').includes(kind) && textsIn(spot.value, kind).length > 0) {
      spot.at(kind).wrong('mentions-contradict', `'${kind}' is both parsed and listed.`);
    }
  }
};

export const allowedMentions: Rule = both(
  form(
    {},
    {
      parse: list(oneOf('everyone', 'users', 'roles'), 0, 3),
      users: list(snowflake, 0, 100),
      roles: list(snowflake, 0, 100),
      replied_user: truth,
    },
  ),
  contradiction,
);

/** Text goes out only with `parse: []`: nothing that a person typed can call anyone. */
export const silenced: Rule = (spot) => {
  const parse = isObject(spot.value) ? spot.value.parse : undefined;
  if (!Array.isArray(parse) || parse.length > 0) {
    spot.wrong('mentions-not-silenced', 'A message with text must carry allowed_mentions with parse [].');
  }
};

/** The mentions in these texts that would call somebody; without `allowed` every one does. */
export function firingMentions(texts: readonly string[], allowed: unknown): string[] {
  const found = texts.join('\n').match(/@everyone|@here|<@[!&]?\d+>/g) ?? [];
  return isObject(allowed) ? found.filter((mention) => fires(mention, allowed)) : [...found];
}

function fires(mention: string, allowed: JsonObject): boolean {
  const parsed = textsIn(allowed, 'parse');
  if (!mention.startsWith('<')) return parsed.includes('everyone');
  const kind = mention.startsWith('<@&') ? 'roles' : 'users';
  return parsed.includes(kind) || textsIn(allowed, kind).includes(mention.replace(/\D/g, ''));
}
