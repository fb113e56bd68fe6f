/** Figures in the unit that a person reads, and to how many decimals they are shown. */
import { CM_PER, type LengthUnit } from './units.ts';
import type { QuantityUnit } from './working.ts';
import { METRES_PER_YARD } from './yarn.ts';

/** A value given in centimetres (or per centimetre) in the reader's unit. */
export function inUnit(value: number, of: QuantityUnit, unit: LengthUnit): number {
  const factor = CM_PER[unit];
  switch (of) {
    case 'cm':
      return value / factor;
    case 'cm²':
      return value / factor ** 2;
    case 'stitches/cm':
    case 'rows/cm':
    case '/cm':
      return value * factor;
    case 'g/cm²':
      return value * factor ** 2;
    case 'm':
      // Yarn is sold by the yard where cloth is measured in inches.
      return unit === 'in' ? value / METRES_PER_YARD : value;
    case 'g':
    case 'stitches':
    case 'rows':
    case 'times':
    case 'ratio':
      return value;
    default:
      return of satisfies never;
  }
}

/** Decimals to which a figure of workings is shown, so that a sum can be followed. */
export function decimalsOf(unit: QuantityUnit): number {
  switch (unit) {
    case 'stitches/cm':
    case 'rows/cm':
    case '/cm':
    case 'ratio':
      return 3;
    case 'g/cm²':
      return 4;
    case 'cm':
    case 'cm²':
    case 'g':
    case 'm':
    case 'stitches':
    case 'rows':
    case 'times':
      return 2;
    default:
      return unit satisfies never;
  }
}
