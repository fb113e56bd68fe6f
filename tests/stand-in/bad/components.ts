/** Components the documentation forbids in messages (page `components/reference`). */
import { type BadPayload, bad, SILENT, times } from './row.ts';

const button = (own: object = {}) => ({ type: 2, style: 1, label: 'Next', custom_id: 'next', ...own });
const buttons = (count: number) => times(count, (n) => button({ custom_id: `b${n}` }));
const row = (...components: unknown[]) => ({ type: 1, components });
const option = (n: number) => ({ label: `size ${n}`, value: `${n}` });
const select = (own: object = {}) => ({
  type: 3,
  custom_id: 'size',
  options: [option(1), option(2)],
  ...own,
});
const inRow = (...components: unknown[]) => ({ components: [row(...components)] });
const first = 'components.0.components.0';

export const BAD_CONTROLS: readonly BadPayload[] = [
  bad('6 rows', { components: times(6, (n) => row(button({ custom_id: `b${n}` }))) }, 'too-many components'),
  bad('6 buttons in a row', inRow(...buttons(6)), 'too-many components.0.components'),
  bad('an empty row', inRow(), 'too-few components.0.components'),
  bad('a button outside a row', { components: [button()] }, 'not-allowed-here components.0.type'),
  bad('a button beside a select', inRow(button(), select()), 'row-mixed components.0'),
  bad('two selects in a row', inRow(select(), select({ custom_id: 'b' })), 'row-mixed components.0'),
  bad(
    'a custom id of 101 characters',
    inRow(button({ custom_id: 'x'.repeat(101) })),
    `too-long ${first}.custom_id`,
  ),
  bad('an empty custom id', inRow(button({ custom_id: '' })), `too-short ${first}.custom_id`),
  bad('a custom id twice', inRow(button(), button()), 'custom-id-twice components.0.components.1.custom_id'),
  bad(
    'a numeric id twice',
    inRow(button({ id: 4 }), button({ id: 4, custom_id: 'b' })),
    'component-id-twice components.0.components.1.id',
  ),
  bad('a label of 81 characters', inRow(button({ label: 'x'.repeat(81) })), `too-long ${first}.label`),
  bad(
    'a button without an action',
    inRow({ type: 2, style: 1, label: 'Next' }),
    `button-without-action ${first}`,
  ),
  bad(
    'a link without an address',
    inRow({ type: 2, style: 5, label: 'Page' }),
    `button-without-action ${first}`,
  ),
  bad(
    'a link with a custom id',
    inRow(button({ style: 5, url: 'https://a.test' })),
    `button-with-two-actions ${first}`,
  ),
  bad(
    'a button without a face',
    inRow({ type: 2, style: 1, custom_id: 'a' }),
    `button-without-face ${first}`,
  ),
  bad('a letter for an emoji', inRow(button({ emoji: { name: 'x' } })), `not-an-emoji ${first}.emoji`),
  bad(
    'a style that does not exist',
    inRow(button({ style: 9, sku_id: '1', custom_id: null })),
    `not-one-of ${first}.style`,
  ),
  bad(
    'an address of 513 characters',
    inRow({ type: 2, style: 5, label: 'Page', url: `https://a.test/${'x'.repeat(498)}` }),
    `too-long ${first}.url`,
  ),
  bad('no option', inRow(select({ options: [] })), `too-few ${first}.options`, `more-than-options ${first}`),
  bad('26 options', inRow(select({ options: times(26, option) })), `too-many ${first}.options`),
  bad(
    'an option label of 101 characters',
    inRow(select({ options: [{ label: 'x'.repeat(101), value: 'a' }] })),
    `too-long ${first}.options.0.label`,
  ),
  bad(
    'an option value of 101',
    inRow(select({ options: [{ label: 'a', value: 'x'.repeat(101) }] })),
    `too-long ${first}.options.0.value`,
  ),
  bad(
    'an option description of 101',
    inRow(select({ options: [{ ...option(1), description: 'x'.repeat(101) }] })),
    `too-long ${first}.options.0.description`,
  ),
  bad(
    'an option value twice',
    inRow(select({ options: [option(1), option(1)] })),
    `option-value-twice ${first}.options.1`,
  ),
  bad(
    'a placeholder of 151',
    inRow(select({ placeholder: 'x'.repeat(151) })),
    `too-long ${first}.placeholder`,
  ),
  bad('more choices than options', inRow(select({ max_values: 3 })), `more-than-options ${first}`),
  bad('least over most', inRow(select({ min_values: 2, max_values: 1 })), `minimum-over-maximum ${first}`),
  bad('26 choices', inRow({ type: 5, custom_id: 'who', max_values: 26 }), `too-large ${first}.max_values`),
  bad(
    'two chosen where one may be',
    inRow(select({ options: [1, 2].map((n) => ({ ...option(n), default: true })) })),
    `defaults-out-of-bounds ${first}`,
  ),
  bad('a select with a modal-only key', inRow(select({ required: true })), `unknown-key ${first}.required`),
];

const v2 = (...components: unknown[]) => ({ flags: 1 << 15, components, ...SILENT });
const text = (content = 'a') => ({ type: 10, content });
const picture = { media: { url: 'https://a.test/a.png' } };

export const BAD_LAYOUTS: readonly BadPayload[] = [
  bad(
    'components V2 without the flag',
    { components: [text()], ...SILENT },
    'needs-components-v2 components',
  ),
  bad('content beside components V2', { ...v2(text()), content: 'a' }, 'not-with-components-v2 content'),
  bad(
    'embeds beside components V2',
    { ...v2(text()), embeds: [{ title: 'a' }] },
    'not-with-components-v2 embeds',
  ),
  bad('stickers beside them', { ...v2(text()), sticker_ids: ['1'] }, 'not-with-components-v2 sticker_ids'),
  bad(
    '41 at the top',
    v2(...times(41, () => text())),
    'too-many components',
    'components-over-40 components',
  ),
  bad(
    '41 with those inside',
    v2({ type: 17, components: times(40, () => text()) }),
    'components-over-40 components',
  ),
  bad(
    '4001 characters in one text',
    v2(text('x'.repeat(4001))),
    'too-long components.0.content',
    'texts-over-4000 components',
  ),
  bad('4001 over two texts', v2(text('x'.repeat(4000)), text()), 'texts-over-4000 components'),
  bad(
    'a container in a container',
    v2({ type: 17, components: [{ type: 17, components: [text()] }] }),
    'not-allowed-here components.0.components.0.type',
  ),
  bad(
    'a section of 4 texts',
    v2({ type: 9, components: times(4, () => text()), accessory: button() }),
    'too-many components.0.components',
  ),
  bad(
    'a section without an accessory',
    v2({ type: 9, components: [text()] }),
    'missing components.0.accessory',
  ),
  bad('a gallery of 11', v2({ type: 12, items: times(11, () => picture) }), 'too-many components.0.items'),
  bad('an empty gallery', v2({ type: 12, items: [] }), 'too-few components.0.items'),
  bad(
    'alt text of 1025 characters',
    v2({ type: 12, items: [{ ...picture, description: 'x'.repeat(1025) }] }),
    'too-long components.0.items.0.description',
  ),
  bad('a file from the web', v2({ type: 13, file: picture.media }), 'bad-format components.0.file.url'),
  bad(
    'displayed text that may call people',
    { ...v2(text()), allowed_mentions: null },
    'mentions-not-silenced allowed_mentions',
  ),
];
