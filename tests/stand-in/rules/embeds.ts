/** Embeds of a message (page `resources/message`, Embed Limits; URL length from the published spec). */
import { type JsonObject, objectIn, objects, objectsIn, textIn } from '../json.ts';
import { both, form, link, list, text, truth, whole } from './fields.ts';
import type { Rule } from './spot.ts';

const page = link(2048, 'http:', 'https:');
const picture = form({ url: link(2048, 'http:', 'https:', 'attachment:') }, { description: text(0, 4096) });
const iconUrl = link(2048, 'http:', 'https:', 'attachment:');

const somethingInIt: Rule = (spot) => {
  const embed = spot.value as JsonObject;
  const shown = ['title', 'description', 'fields', 'image', 'thumbnail', 'footer', 'author'];
  const isFilled = (key: string) => {
    const value = embed[key];
    return Array.isArray(value) ? value.length > 0 : Boolean(value);
  };
  if (!shown.some(isFilled)) spot.wrong('empty-embed', 'An embed must show something.');
};

const embed = both(
  form(
    {},
    {
      type: text(1, 16, /^rich$/),
      title: text(1, 256),
      description: text(1, 4096),
      url: page,
      timestamp: text(1, 40, /^\d{4}-\d{2}-\d{2}T[\d:.]+(?:Z|[+-]\d{2}:\d{2})$/),
      color: whole(0, 0xffffff),
      footer: form({ text: text(1, 2048) }, { icon_url: iconUrl }),
      author: form({ name: text(1, 256) }, { url: page, icon_url: iconUrl }),
      image: picture,
      thumbnail: picture,
      fields: list(form({ name: text(1, 256), value: text(1, 1024) }, { inline: truth }), 0, 25),
    },
  ),
  somethingInIt,
);

const allTexts: Rule = (spot) => {
  const total = objects(spot.value).flatMap(textsOfEmbed).join('').length;
  if (total > 6000) spot.wrong('embed-texts-over-6000', `All embeds hold ${total} of 6000 characters.`);
};

/** Every text of an embed, in reading order. */
export function textsOfEmbed(embed: JsonObject): string[] {
  const fields = objectsIn(embed, 'fields').flatMap((field) => [
    textIn(field, 'name'),
    textIn(field, 'value'),
  ]);
  return [
    textIn(objectIn(embed, 'author'), 'name'),
    textIn(embed, 'title'),
    textIn(embed, 'description'),
    ...fields,
    textIn(objectIn(embed, 'footer'), 'text'),
  ].filter((text) => text !== '');
}

export const embeds: Rule = both(list(embed, 0, 10), allTexts);
