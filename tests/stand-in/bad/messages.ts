/** Messages the platform's documentation forbids (pages `resources/message` and `reference`). */
import type { RawFile } from '../raw-app.ts';
import { type BadPayload, bad, SILENT, times } from './row.ts';

const embed = (own: object) => ({ embeds: [{ title: 'Sleeve', ...own }] });
const said = (own: object) => ({ content: 'hello', ...SILENT, ...own });

export const BAD_MESSAGES: readonly BadPayload[] = [
  bad('2001 characters', said({ content: 'x'.repeat(2001) }), 'too-long content'),
  bad('content that is no text', { content: 5 }, 'wrong-type content', 'empty-message'),
  bad('nothing at all', {}, 'empty-message'),
  bad('nothing but white space', said({ content: ' \n ' }), 'empty-message'),
  bad('a key that does not exist', said({ colour: 'red' }), 'unknown-key colour'),
  bad('a key that belongs to webhooks', said({ username: 'someone' }), 'unknown-key username'),
  bad('an ephemeral message outside an interaction', said({ flags: 64 }), 'flag-not-allowed flags'),
  bad('11 embeds', { embeds: times(11, () => ({ title: 'a' })) }, 'too-many embeds'),
  bad('an embed without anything in it', { embeds: [{ color: 1 }] }, 'empty-embed embeds.0'),
  bad('a title of 257 characters', embed({ title: 'x'.repeat(257) }), 'too-long embeds.0.title'),
  bad('a description of 4097', embed({ description: 'x'.repeat(4097) }), 'too-long embeds.0.description'),
  bad(
    '26 fields',
    embed({ fields: times(26, () => ({ name: 'a', value: 'b' })) }),
    'too-many embeds.0.fields',
  ),
  bad(
    'a field name of 257',
    embed({ fields: [{ name: 'x'.repeat(257), value: 'b' }] }),
    'too-long embeds.0.fields.0.name',
  ),
  bad(
    'a field value of 1025',
    embed({ fields: [{ name: 'a', value: 'x'.repeat(1025) }] }),
    'too-long embeds.0.fields.0.value',
  ),
  bad('a field without a value', embed({ fields: [{ name: 'a' }] }), 'missing embeds.0.fields.0.value'),
  bad(
    'a field with a blank value',
    embed({ fields: [{ name: 'a', value: ' ' }] }),
    'too-short embeds.0.fields.0.value',
  ),
  bad('a footer of 2049', embed({ footer: { text: 'x'.repeat(2049) } }), 'too-long embeds.0.footer.text'),
  bad('an author of 257', embed({ author: { name: 'x'.repeat(257) } }), 'too-long embeds.0.author.name'),
  bad('an embed key that does not exist', embed({ titel: 'a' }), 'unknown-key embeds.0.titel'),
  bad('a colour over 24 bits', embed({ color: 0x1000000 }), 'too-large embeds.0.color'),
  bad('a negative colour', embed({ color: -1 }), 'too-small embeds.0.color'),
  bad(
    'an address of 2049 characters',
    embed({ url: `https://a.test/${'x'.repeat(2034)}` }),
    'too-long embeds.0.url',
  ),
  bad('an address without a scheme', embed({ url: 'a.test/page' }), 'bad-format embeds.0.url'),
  bad(
    '6001 characters over two embeds',
    { embeds: [{ description: 'x'.repeat(4000) }, { description: 'x'.repeat(2001) }] },
    'embed-texts-over-6000 embeds',
  ),
  bad('text without allowed_mentions', { content: 'hello' }, 'mentions-not-silenced allowed_mentions'),
  bad(
    'text that lets people be called',
    { content: 'hello', allowed_mentions: { parse: ['users'] } },
    'mentions-not-silenced allowed_mentions',
  ),
  bad(
    'people both parsed and listed',
    { embeds: [{ title: 'a' }], allowed_mentions: { parse: ['users'], users: ['1'] } },
    'mentions-contradict allowed_mentions.users',
  ),
  bad(
    'a kind of mention that does not exist',
    { embeds: [{ title: 'a' }], allowed_mentions: { parse: ['all'] } },
    'not-one-of allowed_mentions.parse.0',
  ),
  bad(
    '101 people to be called',
    { embeds: [{ title: 'a' }], allowed_mentions: { users: times(101, (n) => `${n}`) } },
    'too-many allowed_mentions.users',
  ),
  bad('4 stickers', said({ sticker_ids: ['1', '2', '3', '4'] }), 'too-many sticker_ids'),
];

const named = (name: string, part = 'files[0]', size = 3): RawFile => ({
  part,
  name,
  bytes: new Uint8Array(size),
});
const tooLarge = 10 * 1024 * 1024 + 1;

export const BAD_FILES: readonly BadPayload[] = [
  {
    ...bad('11 files', {}, 'too-many attachments'),
    files: times(11, (n) => named(`${n}.txt`, `files[${n}]`)),
  },
  {
    ...bad('a file over 10 MiB', {}, 'file-too-large attachments'),
    files: [named('a.png', 'files[0]', tooLarge)],
  },
  {
    ...bad('a request over 25 MiB', {}, 'too-large'),
    files: times(3, (n) => named(`${n}.png`, `files[${n}]`, 9 * 1024 * 1024)),
  },
  {
    ...bad('a name the platform changes', {}, 'file-name-changes attachments'),
    files: [named('my plan.txt')],
  },
  {
    ...bad('one name twice', {}, 'file-name-twice attachments'),
    files: [named('a.txt'), named('a.txt', 'files[1]')],
  },
  {
    ...bad('a file that the payload leaves out', said({ attachments: [] }), 'file-not-listed attachments'),
    files: [named('a.txt')],
  },
  {
    ...bad(
      'a listed file that was not sent',
      { attachments: [{ id: 0 }, { id: 1 }] },
      'file-not-sent attachments.1',
    ),
    files: [named('a.txt')],
  },
  {
    ...bad(
      'alt text of 1025 characters',
      { attachments: [{ id: '0', description: 'x'.repeat(1025) }] },
      'too-long attachments.0.description',
    ),
    files: [named('a.png')],
  },
  {
    ...bad(
      'a picture that is not there',
      embed({ image: { url: 'attachment://b.png' } }),
      'no-such-attachment',
    ),
    files: [named('a.png')],
  },
  {
    ...bad(
      'a file that no component V2 shows',
      { flags: 1 << 15, components: [{ type: 14 }] },
      'file-not-shown attachments',
    ),
    files: [named('a.png')],
  },
  {
    ...bad('a form part of its own making', {}, 'unknown-part'),
    files: [named('a.txt'), named('b.txt', 'file')],
  },
];
