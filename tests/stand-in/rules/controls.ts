/** Buttons, selects and the rows they stand in (page `components/reference`). */
import { isAbsent, isObject, type JsonObject, numberIn, objectsIn } from '../json.ts';
import {
  both,
  byType,
  type Fields,
  form,
  link,
  list,
  oneOf,
  snowflake,
  text,
  truth,
  whole,
} from './fields.ts';
import type { Rule, Spot } from './spot.ts';

export const componentId = whole(0, 2 ** 31 - 1);
export const customId = text(1, 100);

/** The platform takes only a whole emoji of the Unicode set, or a custom one by its id. */
const WHOLE_EMOJI = String.raw`^\p{RGI_Emoji}$`;
const EMOJI = new RegExp(WHOLE_EMOJI, 'v');

const realEmoji: Rule = (spot) => {
  const emoji = spot.value;
  if (!isObject(emoji) || !isAbsent(emoji, 'id')) return;
  if (typeof emoji.name !== 'string' || !EMOJI.test(emoji.name)) {
    spot.wrong('not-an-emoji', `'${emoji.name}' is no emoji.`);
  }
};

export const emoji: Rule = both(form({}, { id: snowflake, name: text(1, 32), animated: truth }), realEmoji);

/** Styles 1 to 4 act by custom id, 5 opens an address, 6 sells. */
const buttonAction: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  const button = spot.value;
  const style = numberIn(button, 'style') ?? 0;
  const action = style <= 4 ? 'custom_id' : style === 5 ? 'url' : 'sku_id';
  if (isAbsent(button, action)) spot.wrong('button-without-action', `Style ${style} needs ${action}.`);
  const others = ['custom_id', 'url', 'sku_id'].filter((key) => key !== action && !isAbsent(button, key));
  if (others.length > 0)
    spot.wrong('button-with-two-actions', `Style ${style} takes no ${others.join(', ')}.`);
  if (style !== 6 && isAbsent(button, 'label') && isAbsent(button, 'emoji')) {
    spot.wrong('button-without-face', 'A button needs a label or an emoji.');
  }
};

export const button: Rule = both(
  form(
    { type: oneOf(2), style: oneOf(1, 2, 3, 4, 5, 6) },
    {
      id: componentId,
      custom_id: customId,
      label: text(1, 80),
      emoji,
      url: link(512, 'http:', 'https:', 'discord:'),
      sku_id: snowflake,
      disabled: truth,
    },
  ),
  buttonAction,
);

/** Least and most choices agree with each other, with the options and with what is chosen at first. */
export const choosable: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  const least = numberIn(spot.value, 'min_values') ?? 1;
  const most = numberIn(spot.value, 'max_values') ?? 1;
  if (least > most)
    spot.wrong('minimum-over-maximum', `min_values ${least} is more than max_values ${most}.`);
  const options = objectsIn(spot.value, 'options');
  if (spot.value.options !== undefined && Math.max(most, least) > options.length) {
    spot.wrong('more-than-options', `${most} choices asked of ${options.length} options.`);
  }
  const chosen = options.filter((option) => option.default === true).length;
  if (chosen > most) spot.wrong('defaults-out-of-bounds', `${chosen} options are chosen at first.`);
};

export const distinctOptions: Rule = (spot) => {
  const values = new Set<unknown>();
  const options = Array.isArray(spot.value) ? spot.value : [];
  options.forEach((option: unknown, place) => {
    if (!isObject(option)) return;
    if (values.has(option.value))
      spot.at(place).wrong('option-value-twice', `'${option.value}' comes twice.`);
    values.add(option.value);
  });
};

const selectOption = form(
  { label: text(1, 100), value: text(1, 100) },
  { description: text(1, 100), emoji, default: truth },
);

/** Whether a select stands in a message (it can be disabled) or in a modal (it can be required). */
export type SelectPlace = 'message' | 'modal';

const optional = (place: SelectPlace): Fields => ({
  id: componentId,
  placeholder: text(1, 150),
  min_values: whole(0, 25),
  max_values: whole(1, 25),
  ...(place === 'message' ? { disabled: truth } : { required: truth }),
});

function defaults(...kinds: readonly string[]): Fields {
  return { default_values: list(form({ id: snowflake, type: oneOf(...kinds) }), 0, 25) };
}

/** The five selects, by component type. */
export function selects(place: SelectPlace): Readonly<Record<number, Rule>> {
  const options = both(list(selectOption, 1, 25), distinctOptions);
  const pick = (type: number, own: Fields) =>
    both(form({ type: oneOf(type), custom_id: customId }, { ...optional(place), ...own }), choosable);
  return {
    3: both(form({ type: oneOf(3), custom_id: customId, options }, optional(place)), choosable),
    5: pick(5, defaults('user')),
    6: pick(6, defaults('role')),
    7: pick(7, defaults('user', 'role')),
    8: pick(8, { ...defaults('channel'), channel_types: list(whole(0, 16), 0, 17) }),
  };
}

/** Up to five buttons, or exactly one select. */
const rowContent: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  const inside: readonly JsonObject[] = objectsIn(spot.value, 'components');
  const others = inside.filter((component) => component.type !== 2).length;
  if (others > 0 && inside.length > 1) rowMixed(spot);
};

function rowMixed(spot: Spot): void {
  spot.wrong('row-mixed', 'A row holds up to five buttons or exactly one select.');
}

export const row: Rule = both(
  form(
    {
      type: oneOf(1),
      components: list(byType({ 2: button, ...selects('message') }, 'an action row'), 1, 5),
    },
    { id: componentId },
  ),
  rowContent,
);
