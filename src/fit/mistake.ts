/**
 * The slips that knitters make in sums, each as a way of working the line wrongly: what comes of it is the figure of one
 * who slipped so. The list is common practice of the trade; no figure is looked up.
 */
import { subsets, type Variant, variant, withLeads, withoutTwo } from './mistake-variants.ts';
import { isEase, isRate, type Sum } from './sum.ts';
import { CM_PER, roundHalfUp } from './units.ts';
import type { Quantity, Rounding, WorkingLine } from './working.ts';

export const MISTAKES = [
  'gauge turned round',
  'other gauge',
  'gauge of the whole swatch',
  'half a width',
  'whole width for a part',
  'one side only',
  'two left out',
  'inches and centimetres mixed',
  'ease forgotten',
  'ease twice',
  'ease the wrong way',
  'edging forgotten',
  'edge stitches forgotten',
  'repeat forgotten',
  'extra stitches forgotten',
  'odd rows',
  'rounded the wrong way',
  'not rounded',
  'rounded too early',
  'off by one',
  'multiplied for divided',
  'added for taken away',
] as const;
export type Mistake = (typeof MISTAKES)[number];

/** A swatch is counted over four inches or ten centimetres. */
const SWATCH = { cm: 10, in: 4 } as const;

/** Every way in which the slip may be made in the sum; none where it has no place there. */
export function variantsOf(mistake: Mistake, sum: Sum): readonly Variant[] {
  const { read: line, rates, unit } = sum;
  switch (mistake) {
    case 'gauge turned round':
      return [
        ...(isRate(line.result) ? [variant(line, { formula: `1 / (${line.formula})` })] : []),
        ...subsets(line, isRate, ({ value }) => 1 / value),
      ];
    case 'other gauge':
      return subsets(line, isRate, (q) => (q.unit === 'rows/cm' ? rates.stitches : rates.rows));
    case 'gauge of the whole swatch':
      return subsets(line, isRate, ({ value }) => value * SWATCH[unit]);
    case 'half a width':
      return turnsWidths(line) ? subsets(line, isAcross, ({ value }) => value / 2) : [];
    case 'whole width for a part':
      return turnsWidths(line) ? subsets(line, isAcross, ({ value }) => value * 2) : [];
    case 'one side only':
      return [
        ...subsets(line, isPerShapingRow, ({ value }) => value / 2),
        ...(isOfTwoSides(line) ? withoutTwo(line) : []),
      ];
    case 'two left out':
      return isOfTwoSides(line) ? [] : withoutTwo(line);
    case 'inches and centimetres mixed':
      return mixedUnits(sum);
    case 'ease forgotten':
      return withLeads(sum, isEase, () => 0);
    case 'ease twice':
      return withLeads(sum, isEase, ({ value }) => value * 2);
    case 'ease the wrong way':
      return withLeads(sum, isEase, ({ value }) => -value);
    case 'edging forgotten':
      return withLeads(sum, isEdging, () => 0);
    case 'edge stitches forgotten':
      return subsets(line, isEdgeStitches, () => 0);
    case 'rounded too early':
      return [0, 1].flatMap((places) => roundedTo(places, line));
    case 'off by one':
      return offByOne(line);
    case 'multiplied for divided':
      return turnedProduct(line);
    case 'added for taken away':
      return turnedSum(line);
    case 'repeat forgotten':
    case 'extra stitches forgotten':
    case 'odd rows':
    case 'rounded the wrong way':
    case 'not rounded':
      return otherRounding(mistake, line);
    default:
      return mistake satisfies never;
  }
}

function turnsWidths({ given }: WorkingLine): boolean {
  return Object.values(given).some(({ unit }) => unit === 'stitches/cm');
}

function isAcross(q: Quantity): boolean {
  return (q.unit === 'cm' || q.unit === 'stitches') && !isEdgeStitches(q) && !isEase(q);
}

function isEdgeStitches({ name }: Quantity): boolean {
  return /\bedge stitches\b/.test(name);
}

function isEdging({ name, unit }: Quantity): boolean {
  return /\b(?:edging|cuff)\b/.test(name) && (unit === 'rows' || unit === 'cm');
}

function isPerShapingRow({ name }: Quantity): boolean {
  return name === 'stitches a shaping row';
}

function isOfTwoSides({ label }: WorkingLine): boolean {
  return /\b(?:each|both|either)\b/.test(label);
}

/** Each figure that has more decimals than these, without them. */
function roundedTo(places: number, line: WorkingLine): readonly Variant[] {
  const rounded = ({ value }: Quantity) => roundHalfUp(value, places);
  return subsets(line, (q) => rounded(q) !== q.value, rounded);
}

/** Lengths in inches taken for centimetres, or the other way about; or the figure itself given in the other unit. */
function mixedUnits({ read: line, unit }: Sum): readonly Variant[] {
  const factor = unit === 'cm' ? 1 / CM_PER.in : CM_PER.in;
  const sign = unit === 'cm' ? '/' : '*';
  return [
    ...subsets(
      line,
      ({ unit: of }) => of === 'cm',
      ({ value }) => value * factor,
    ),
    ...subsets(line, isRate, ({ value }) => value / factor),
    ...(line.result.unit === 'cm'
      ? [variant(line, { formula: `(${line.formula}) ${sign} ${CM_PER.in}` })]
      : []),
  ];
}

/** Intervals counted for shaping rows, posts for the gaps between them. */
function offByOne(line: WorkingLine): readonly Variant[] {
  const { result, formula } = line;
  const isCounted = result.unit === 'times' || result.unit === 'rows';
  return [
    ...(isCounted ? [`${formula} + 1`, `${formula} - 1`].map((f) => variant(line, { formula: f })) : []),
    ...[-1, 1].flatMap((n) =>
      subsets(
        line,
        ({ unit }) => unit === 'times',
        ({ value }) => value + n,
      ),
    ),
  ];
}

/** Where a gauge goes in, the slip is called by that name. */
function turnedProduct(line: WorkingLine): readonly Variant[] {
  const { formula, given } = line;
  if (Object.values(given).some(isRate) || isRate(line.result)) return [];
  const turned = new Set([...formula.matchAll(/[*/] ([a-z]\w*)/gi)].map(([, letter]) => letter));
  const inverted = subsets(
    line,
    (_, letter) => turned.has(letter),
    ({ value }) => 1 / value,
  );
  const swapped = /^(\w+) \/ (\w+)$/.exec(formula);
  return swapped === null
    ? inverted
    : [...inverted, variant(line, { formula: `${swapped[2]} / ${swapped[1]}` })];
}

function turnedSum(line: WorkingLine): readonly Variant[] {
  const [, one, sign, other] = /^(\w+) ([-+]) (\w+)$/.exec(line.formula) ?? [];
  if (sign === undefined || Object.values(line.given).some(isEase)) return [];
  return [variant(line, { formula: `${one} ${sign === '+' ? '-' : '+'} ${other}` })];
}

/** Slips that lie in the rounding alone. */
export const ROUNDING_SLIPS = [
  'repeat forgotten',
  'extra stitches forgotten',
  'odd rows',
  'rounded the wrong way',
  'not rounded',
] as const;
type RoundingSlip = (typeof ROUNDING_SLIPS)[number];

function otherRounding(mistake: RoundingSlip, line: WorkingLine): readonly Variant[] {
  const { rounding, exact, result } = line;
  if (rounding === undefined) return [];
  const isRepeat = rounding.to === 'multiple' && rounding.multiple > 1;
  const isRounded = Math.abs(result.value - exact) > 1e-9;
  switch (mistake) {
    case 'repeat forgotten':
      return isRepeat ? [variant(line, { rounding: { to: 'whole' } })] : [];
    case 'extra stitches forgotten':
      return isRepeat && rounding.plus > 0 ? [variant(line, { rounding: { ...rounding, plus: 0 } })] : [];
    case 'odd rows':
      return rounding.to === 'even' ? [variant(line, { rounding: { to: 'whole' } })] : [];
    case 'rounded the wrong way':
      return isRounded ? theOtherWay(line, rounding) : [];
    case 'not rounded':
      return isRounded ? [variant(line, { rounding: undefined })] : [];
    default:
      return mistake satisfies never;
  }
}

/** Half a step up or down before rounding to the nearest is rounding up or down. */
function theOtherWay(line: WorkingLine, rounding: Rounding): readonly Variant[] {
  switch (rounding.to) {
    case 'whole down':
      return [variant(line, { rounding: { to: 'whole up' } })];
    case 'whole up':
      return [variant(line, { rounding: { to: 'whole down' } })];
    case 'whole':
    case 'even':
    case 'multiple': {
      const step = rounding.to === 'whole' ? 1 : rounding.to === 'even' ? 2 : rounding.multiple;
      return ['+', '-'].map((sign) => variant(line, { formula: `${line.formula} ${sign} ${step / 2}` }));
    }
    default:
      return rounding satisfies never;
  }
}
