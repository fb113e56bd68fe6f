/** Forms the documentation forbids (pages `interactions/receiving-and-responding`, `components/reference`). */
import { type BadPayload, bad, times } from './row.ts';

const input = (own: object = {}) => ({ type: 4, custom_id: 'stitches', style: 1, ...own });
const label = (component: unknown, own: object = {}) => ({ type: 18, label: 'Stitches', component, ...own });
const modal = (...components: unknown[]) => ({ custom_id: 'swatch', title: 'Your swatch', components });
const of = (component: unknown) => modal(label(component));
const option = (n: number) => ({ label: `size ${n}`, value: `${n}` });
const first = 'data.components.0';
const inner = `${first}.component`;

export const BAD_MODALS: readonly BadPayload[] = [
  bad('a title of 46 characters', { ...of(input()), title: 'x'.repeat(46) }, 'too-long data.title'),
  bad('no title', { ...of(input()), title: undefined }, 'missing data.title'),
  bad('no custom id', { ...of(input()), custom_id: undefined }, 'missing data.custom_id'),
  bad('no component', modal(), 'too-few data.components'),
  bad(
    '6 components',
    modal(...times(6, (n) => label(input({ custom_id: `i${n}` })))),
    'too-many data.components',
  ),
  bad(
    'a button',
    modal({ type: 1, components: [{ type: 2, style: 1, label: 'a', custom_id: 'a' }] }),
    `not-allowed-here ${first}.components.0.type`,
  ),
  bad('an input outside a label', modal(input()), `not-allowed-here ${first}.type`),
  bad(
    'a label of 46 characters',
    modal(label(input(), { label: 'x'.repeat(46) })),
    `too-long ${first}.label`,
  ),
  bad(
    'a description of 101',
    modal(label(input(), { description: 'x'.repeat(101) })),
    `too-long ${first}.description`,
  ),
  bad('an input with a label of its own', of(input({ label: 'Stitches' })), `unknown-key ${inner}.label`),
  bad(
    'a row whose input has no label',
    modal({ type: 1, components: [input()] }),
    `missing ${first}.components.0.label`,
  ),
  bad(
    'a custom id twice',
    modal(label(input()), label(input())),
    'custom-id-twice data.components.1.component.custom_id',
  ),
  bad('a longest length of 4001', of(input({ max_length: 4001 })), `too-large ${inner}.max_length`),
  bad('a longest length of 0', of(input({ max_length: 0 })), `too-small ${inner}.max_length`),
  bad('shortest over longest', of(input({ min_length: 5, max_length: 4 })), `minimum-over-maximum ${inner}`),
  bad(
    'a value longer than allowed',
    of(input({ max_length: 2, value: '22.5' })),
    `value-out-of-bounds ${inner}.value`,
  ),
  bad('a placeholder of 101', of(input({ placeholder: 'x'.repeat(101) })), `too-long ${inner}.placeholder`),
  bad(
    'a disabled select',
    of({ type: 3, custom_id: 's', options: [option(1)], disabled: true }),
    `unknown-key ${inner}.disabled`,
  ),
  bad(
    'least 0 of a required select',
    of({ type: 3, custom_id: 's', options: [option(1)], min_values: 0 }),
    `optional-needs-not-required ${inner}`,
  ),
  bad('11 files', of({ type: 19, custom_id: 'f', max_values: 11 }), `too-large ${inner}.max_values`),
  bad(
    '11 kinds of file',
    of({ type: 19, custom_id: 'f', file_types: times(11, (n) => `.${n}`) }),
    `too-many ${inner}.file_types`,
  ),
  bad('one radio option', of({ type: 21, custom_id: 'r', options: [option(1)] }), `too-few ${inner}.options`),
  bad(
    '11 radio options',
    of({ type: 21, custom_id: 'r', options: times(11, option) }),
    `too-many ${inner}.options`,
  ),
  bad(
    'two radio options chosen at first',
    of({ type: 21, custom_id: 'r', options: [1, 2].map((n) => ({ ...option(n), default: true })) }),
    `defaults-out-of-bounds ${inner}`,
  ),
  bad(
    'no checkbox',
    of({ type: 22, custom_id: 'c', options: [] }),
    `too-few ${inner}.options`,
    `minimum-over-maximum ${inner}`,
  ),
  bad(
    '11 checkboxes',
    of({ type: 22, custom_id: 'c', options: times(11, option) }),
    `too-many ${inner}.options`,
  ),
  bad(
    'more ticks than boxes',
    of({ type: 22, custom_id: 'c', options: [option(1)], max_values: 2 }),
    `more-than-options ${inner}`,
  ),
  bad('a key that does not exist', { ...of(input()), size: 'big' }, 'unknown-key data.size'),
];
