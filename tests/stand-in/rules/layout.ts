/** Components V2: texts, sections, pictures, files and containers (page `components/reference`). */
import { button, componentId, row } from './controls.ts';
import { both, byType, form, link, list, oneOf, text, truth, whole } from './fields.ts';
import type { Rule } from './spot.ts';
import { displayedTexts, everyComponent } from './tree.ts';

/** The message flag that turns components V2 on. */
export const COMPONENTS_V2 = 1 << 15;

export const textDisplay: Rule = form({ type: oneOf(10), content: text(1, 4000) }, { id: componentId });

const media = form({ url: link(2048, 'http:', 'https:', 'attachment:') });
const altText = text(1, 1024);

const thumbnail = form({ type: oneOf(11), media }, { id: componentId, description: altText, spoiler: truth });

const section = form(
  {
    type: oneOf(9),
    components: list(byType({ 10: textDisplay }, 'a section'), 1, 3),
    accessory: byType({ 2: button, 11: thumbnail }, 'an accessory'),
  },
  { id: componentId },
);

const gallery = form(
  { type: oneOf(12), items: list(form({ media }, { description: altText, spoiler: truth }), 1, 10) },
  { id: componentId },
);

const file = form(
  { type: oneOf(13), file: form({ url: link(2048, 'attachment:') }) },
  { id: componentId, spoiler: truth },
);

const separator = form({ type: oneOf(14) }, { id: componentId, divider: truth, spacing: oneOf(1, 2) });

const inside = { 1: row, 9: section, 10: textDisplay, 12: gallery, 13: file, 14: separator };

const container = form(
  { type: oneOf(17), components: list(byType(inside, 'a container'), 1, 40) },
  { id: componentId, accent_color: whole(0, 0xffffff), spoiler: truth },
);

/** 40 components in all, nested ones counted; 4000 characters over all text displays together. */
const totals: Rule = (spot) => {
  const count = [...everyComponent(spot.value)].length;
  if (count > 40) spot.wrong('components-over-40', `${count} of 40 components.`);
  const length = displayedTexts(spot.value).join('').length;
  if (length > 4000) spot.wrong('texts-over-4000', `${length} of 4000 displayed characters.`);
};

export const layout: Rule = both(list(byType({ ...inside, 17: container }, 'a message'), 0, 40), totals);

/** Components of a message without the flag: at most five rows. */
export const rows: Rule = (spot) => {
  const v2 = Array.isArray(spot.value) && spot.value.some((component) => component?.type > 8);
  if (v2) spot.wrong('needs-components-v2', 'These components need the components V2 flag.');
  else list(byType({ 1: row }, 'a message without components V2'), 0, 5)(spot);
};
