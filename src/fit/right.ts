/** When two figures of a sum count as the same: a tape is read to its marks, stitches and rows are counted. */
import type { LengthUnit } from './units.ts';
import { applyRounding, type QuantityUnit, type WorkingLine } from './working.ts';

/** A count is the same to within what comes of working with decimals. */
const COUNTED = 1e-6;

/** Whether a figure in the reader's unit is the line's result, whose figures are in that unit. */
export function isRight(line: WorkingLine, figure: number, reader: LengthUnit): boolean {
  const { result, rounding } = line;
  return isClose(figure, result.value, result.unit, reader, rounding !== undefined);
}

/** `counted`: the value came of rounding, so that nothing but itself will do. */
export function isClose(
  figure: number,
  value: number,
  unit: QuantityUnit,
  reader: LengthUnit,
  counted: boolean,
): boolean {
  const whole = counted || (isCount(unit) && Number.isInteger(value));
  return Math.abs(figure - value) <= (whole ? 0 : markOf(unit, reader) / 2) + COUNTED;
}

function isCount(unit: QuantityUnit): boolean {
  return unit === 'stitches' || unit === 'rows' || unit === 'times';
}

/** The least step in which a figure is read: a millimetre or an eighth of an inch on a tape. */
function markOf(unit: QuantityUnit, reader: LengthUnit): number {
  switch (unit) {
    case 'cm':
      return reader === 'in' ? 1 / 8 : 0.1;
    case 'stitches':
    case 'rows':
    case 'times':
      return 0.1;
    case 'stitches/cm':
    case 'rows/cm':
    case '/cm':
    case 'ratio':
      return 0.01;
    case 'g/cm²':
      return 0.001;
    case 'cm²':
    case 'g':
    case 'm':
      return 1;
    default:
      return unit satisfies never;
  }
}

/** The exact value as the line rounds it. */
export function roundedAs({ rounding }: WorkingLine, exact: number): number {
  return rounding === undefined ? exact : applyRounding(exact, rounding);
}
