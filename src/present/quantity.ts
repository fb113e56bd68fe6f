/** Quantities as a knitter reads them: in her unit, with the word that belongs to the number. */
import { decimalsOf, inUnit } from '../fit/in-unit.ts';
import { type Cm, formatDecimal, formatTape, type LengthUnit } from '../fit/units.ts';
import type { Worked } from '../fit/words.ts';
import type { Quantity } from '../fit/working.ts';

export interface Reader {
  readonly unit: LengthUnit;
  readonly worked: Worked | null;
  /** Lengths to a hundredth, as workings show them, so that a sum can be followed. */
  readonly fine?: true;
}

/** '96 stitches', '1 round', '38¼ in', '5.5 stitches per in'. */
export function formatQuantity(q: Quantity, reader: Reader): string {
  switch (q.unit) {
    case 'cm':
      return `${formatNumber(q, reader)} ${reader.unit}`;
    case 'stitches':
      return counted(q.value, 'stitch', 'stitches');
    case 'rows':
      return reader.worked === 'round'
        ? counted(q.value, 'round', 'rounds')
        : counted(q.value, 'row', 'rows');
    case 'stitches/cm':
      return `${formatNumber(q, reader)} stitches per ${gaugeSpan(reader)}`;
    case 'rows/cm':
      return `${formatNumber(q, reader)} ${reader.worked === 'round' ? 'rounds' : 'rows'} per ${gaugeSpan(reader)}`;
    case 'cm²':
      return `${formatNumber(q, reader)} square ${reader.unit}`;
    case 'g/cm²':
      return `${formatNumber(q, reader)} g per square ${reader.unit}`;
    case '/cm':
      return `${formatNumber(q, reader)} per ${reader.unit}`;
    case 'g':
      return `${formatNumber(q, reader)} g`;
    case 'm':
      return `${formatNumber(q, reader)} ${reader.unit === 'in' ? 'yd' : 'm'}`;
    case 'times':
    case 'ratio':
      return formatNumber(q, reader);
    default:
      return q.unit satisfies never;
  }
}

/** From so many grams or metres on, yarn is told to the whole one: a kitchen scale shows no more. */
const WHOLE_YARN_FROM = 10;

/** Who measures in centimetres knows gauge over ten of them; workings count by one, so that a sum can be followed. */
function isOverTen({ unit, fine }: Reader): boolean {
  return unit === 'cm' && fine !== true;
}

function gaugeSpan(reader: Reader): string {
  return isOverTen(reader) ? '10 cm' : reader.unit;
}

/** The number alone, in the reader's unit. */
export function formatNumber(q: Quantity, reader: Reader): string {
  const { unit, fine } = reader;
  if ((q.unit === 'stitches/cm' || q.unit === 'rows/cm') && isOverTen(reader))
    return formatDecimal(10 * q.value, 2);
  if (q.unit === 'cm' && fine !== true) return formatTape(q.value as Cm, unit);
  const value = inUnit(q.value, q.unit, unit);
  const isYarn = q.unit === 'g' || q.unit === 'm';
  return formatDecimal(value, isYarn && fine !== true && value >= WHOLE_YARN_FROM ? 0 : decimalsOf(q.unit));
}

function counted(value: number, one: string, many: string): string {
  const shown = formatDecimal(value, 2);
  return `${shown} ${shown === '1' ? one : many}`;
}
