/** A typed length: its centimetres for the engine, and the figure and unit that were typed for showing it back. */
import {
  type Cm,
  formatDecimal,
  formatTape,
  type LengthUnit,
  lengthIn,
  roundHalfUp,
} from '../../fit/units.ts';

export interface Length {
  readonly cm: Cm;
  readonly typed: { readonly value: number; readonly unit: LengthUnit };
}

/**
 * Two lengths that stand side by side in both units are one length when they lie within this many centimetres: print
 * rounds to whole centimetres (0.5) and to quarter inches (0.32).
 */
export const SAME_WITHIN_CM = 0.82;

/** A length of any sign; `value` in `unit`. */
export function lengthOf(value: number, unit: LengthUnit): Length {
  // The millionth part hides what floating point adds: 1.13 m is 113 cm.
  const tidy = roundHalfUp(value, 6);
  return { cm: lengthIn(tidy, unit), typed: { value: tidy, unit } };
}

export function otherUnit(unit: LengthUnit): LengthUnit {
  return unit === 'cm' ? 'in' : 'cm';
}

/** '96.5 cm (38 in)', the reader's own unit first; without one, the unit that was typed. */
export function echoLength(length: Length, own: LengthUnit | undefined): string {
  const first = own ?? length.typed.unit;
  const second = otherUnit(first);
  return `${figure(length, first)} ${first} (${figure(length, second)} ${second})`;
}

/** The figure in one unit; nothing is rounded away from what was typed, a conversion is rounded as on a tape. */
export function figure(length: Length, unit: LengthUnit): string {
  const rounded = formatTape(length.cm, unit);
  if (unit !== length.typed.unit) return rounded;
  const onGrid = Math.abs(length.typed.value * (unit === 'in' ? 8 : 10)) % 1 < 1e-6;
  return onGrid ? rounded : formatDecimal(length.typed.value, 3);
}

export function agree(a: Length, b: Length): boolean {
  return Math.abs(a.cm - b.cm) <= SAME_WITHIN_CM;
}
