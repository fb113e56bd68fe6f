/**
 * Checks on one measurement of a body: impossible, in the wrong unit, improbable, or fine.
 *
 * How each is taken: bust, waist and hip round the body; neck round its base; upper arm where it is widest; cross back
 * from shoulder point to shoulder point; bust span from bust point to bust point; armhole depth from the shoulder straight down to the underarm; back and front
 * length from the shoulder's highest point to the waist; arm length from underarm to wrist.
 */
import { type Beside, type Body, type Bounds, besides, possibleRange, usualRange } from './bounds.ts';
import { type Cm, type LengthUnit, lengthIn } from './units.ts';
import type { Measurement } from './words.ts';

export type { Body } from './bounds.ts';

/** A figure as it was typed. */
export interface Typed {
  readonly value: number;
  readonly unit: LengthUnit;
}

export interface Fine {
  readonly kind: 'fine';
  readonly value: Cm;
}

/** No body known or thinkable has this figure: refused. */
export interface Impossible {
  readonly kind: 'impossible';
  readonly value: Cm;
  /** What would be taken. */
  readonly low: Cm;
  readonly high: Cm;
  /** Smallest and largest published, from which the bounds were widened. */
  readonly usual: Bounds;
}

/** Asked again, and kept if confirmed. */
export interface Improbable {
  readonly kind: 'improbable';
  readonly value: Cm;
  /** The figure by itself, or beside another measurement of the same body. */
  readonly because: { readonly of: 'itself' } | { readonly of: 'another'; readonly beside: Beside };
  readonly usual: Bounds;
}

/** The same number in the other unit is an everyday figure: offered, and if refused, asked as `asTyped` says. */
export interface WrongUnit {
  readonly kind: 'wrong unit';
  readonly value: Cm;
  readonly meant: Cm;
  readonly as: LengthUnit;
  readonly asTyped: Impossible | Improbable;
}

export type Verdict = Fine | Impossible | Improbable | WrongUnit;

/** Holds a typed figure against the published tables and against what is known of the same body. */
export function checkMeasurement(measurement: Measurement, typed: Typed, body: Body): Verdict {
  const asTyped = judge(measurement, lengthIn(typed.value, typed.unit), body);
  if (asTyped.kind === 'fine') return asTyped;
  const as = typed.unit === 'cm' ? 'in' : 'cm';
  const other = judge(measurement, lengthIn(typed.value, as), body);
  if (other.kind !== 'fine') return asTyped;
  return { kind: 'wrong unit', value: asTyped.value, meant: other.value, as, asTyped };
}

function judge(measurement: Measurement, value: Cm, body: Body): Fine | Impossible | Improbable {
  const usual = usualRange(measurement, body.table);
  const possible = possibleRange(measurement, body.table);
  if (outside(value, possible)) return { kind: 'impossible', value, ...possible, usual };
  if (outside(value, usual)) return { kind: 'improbable', value, because: { of: 'itself' }, usual };
  const beside = besides(measurement, value, body).find((b) => outside(value, b));
  if (beside === undefined) return { kind: 'fine', value };
  const { low, high } = beside;
  return { kind: 'improbable', value, because: { of: 'another', beside }, usual: { low, high } };
}

/** A billionth is allowed for the rounding of an inch that was converted. */
function outside(value: number, { low, high }: Bounds): boolean {
  return value < low - 1e-9 || value > high + 1e-9;
}
