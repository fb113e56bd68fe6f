/**
 * From a counted swatch to a gauge, with how sure it is.
 * A gauge keeps the span that was counted: 22 stitches over 4 in and over 10 cm are different fabrics (1.6 %).
 */
import {
  type Cm,
  cm,
  type LengthUnit,
  type PerCm,
  perCm,
  type Rows,
  rows,
  type Stitches,
  stitches,
} from './units.ts';
import type { Worked } from './words.ts';

/** One count: so many stitches (or rows) over a span of fabric. */
export interface Count {
  readonly count: number;
  readonly span: Cm;
  /** The unit in which the span was measured, for showing it back. */
  readonly unit: LengthUnit;
}

/** A rate with its standard error, both per centimetre. */
export interface Rate {
  readonly perCm: PerCm;
  /** One standard error of `perCm`. */
  readonly se: number;
  /** The counts behind it, for the workings. */
  readonly counts: readonly Count[];
}

export interface Gauge {
  readonly stitches: Rate;
  readonly rows: Rate;
  readonly worked: Worked;
}

/** A count is read to the nearest quarter stitch: a uniform error of that width has this standard deviation. */
const COUNT_ERROR = 0.25 / Math.sqrt(12);
/** A tape is read to the nearest millimetre, in centimetres. */
const TAPE_ERROR = 0.1 / Math.sqrt(12);

/**
 * The mean rate over the places counted, weighted by span. Its standard error joins, as independent, the reading of
 * each count and tape and the spread between the places. Throws without a count.
 */
export function rateFrom(counts: readonly Count[]): Rate {
  if (counts.length === 0) throw new RangeError('a rate needs at least one count');
  const total = counts.reduce((sum, c) => sum + c.count, 0);
  const span = counts.reduce((sum, c) => sum + c.span, 0);
  const rate = perCm(total / span);
  const n = counts.length;
  const countError = (Math.sqrt(n) * COUNT_ERROR) / total;
  const tapeError = (Math.sqrt(n) * TAPE_ERROR) / span;
  const spread = n < 2 ? 0 : sampleVariance(counts.map((c) => c.count / c.span)) / n / rate ** 2;
  return { perCm: rate, se: rate * Math.sqrt(countError ** 2 + tapeError ** 2 + spread), counts };
}

/** A rate that is taken as printed, for instance a pattern's: no error of reading. */
export function rateAsPrinted(count: Count): Rate {
  return { perCm: perCm(count.count / count.span), se: 0, counts: [count] };
}

function sampleVariance(values: readonly number[]): number {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (values.length - 1);
}

/** The width of so many stitches, in centimetres. */
export function widthOf(count: number, gauge: Gauge): Cm {
  return cm(count / gauge.stitches.perCm);
}

/** The height of so many rows, in centimetres. */
export function heightOf(count: number, gauge: Gauge): Cm {
  return cm(count / gauge.rows.perCm);
}

/** A finished measurement with its range of two standard errors: about 19 in 20 come out within it. */
export interface Range {
  readonly low: Cm;
  readonly expected: Cm;
  readonly high: Cm;
}

/** The range of the length that `count` stitches (or rows) will measure, given how sure the rate is. */
export function rangeOf(count: number, rate: Rate): Range {
  return rangeAround(cm(count / rate.perCm), rate);
}

/** The range of a length that was worked out with this rate. */
export function rangeAround(expected: Cm, rate: Rate): Range {
  const error = (2 * rate.se) / rate.perCm;
  return { low: cm(expected * (1 - error)), expected, high: cm(expected * (1 + error)) };
}

/** What a stitch count must satisfy besides the width. */
export interface CountRule {
  /** Stitch repeat; 1 where any count will do. */
  readonly multiple: number;
  /** Stitches beyond the repeats, for instance 2 in 'multiple of 4 + 2'. */
  readonly plus: number;
  /** Edge (selvedge) stitches outside the width: on flat pieces that are seamed, 2 in all as a rule. */
  readonly edge: number;
  readonly parity: 'any' | 'even' | 'odd';
}

export const ANY_COUNT: CountRule = { multiple: 1, plus: 0, edge: 0, parity: 'any' };

export interface CountChoice {
  readonly chosen: Stitches;
  readonly width: Cm;
  /** The nearest admissible counts on either side of the exact one; one of them is `chosen`. */
  readonly below: { readonly stitches: Stitches; readonly width: Cm };
  readonly above: { readonly stitches: Stitches; readonly width: Cm };
  /** width × rate + edge, before rounding. */
  readonly exact: number;
  /** The admissible counts as one arithmetic series: `step` times anything, plus `start`. */
  readonly step: number;
  readonly start: number;
}

export type NoSuchCount = { readonly impossible: 'parity never met'; readonly rule: CountRule };

/** The nearest admissible stitch count for a width; a tie goes to the larger. Widths exclude the edge stitches. */
export function stitchesFor(width: Cm, rate: PerCm, rule: CountRule = ANY_COUNT): CountChoice | NoSuchCount {
  const series = admissible(rule);
  if (series === undefined) return { impossible: 'parity never met', rule };
  const { step, start } = series;
  const exact = width * rate + rule.edge;
  const least = start + step * Math.max(0, Math.ceil((rule.edge + 1 - start) / step));
  const below = Math.max(least, start + step * Math.floor((exact - start) / step + 1e-9));
  const above = Math.abs(exact - below) < 1e-9 ? below : below + step;
  const chosen = exact - below < above - exact - 1e-9 ? below : above;
  const side = (n: number) => ({ stitches: stitches(n), width: cm((n - rule.edge) / rate) });
  return {
    chosen: stitches(chosen),
    width: side(chosen).width,
    below: side(below),
    above: side(above),
    exact,
    step,
    start,
  };
}

/** The counts that a rule allows, as `start + k × step`; undefined where its parity can never be met. */
export function admissible(rule: CountRule): { step: number; start: number } | undefined {
  const start = rule.plus + rule.edge;
  if (rule.parity === 'any') return { step: rule.multiple, start };
  const wanted = rule.parity === 'even' ? 0 : 1;
  if (rule.multiple % 2 === 0)
    return Math.abs(start % 2) === wanted ? { step: rule.multiple, start } : undefined;
  return { step: rule.multiple * 2, start: Math.abs(start % 2) === wanted ? start : start + rule.multiple };
}

/** Rows for a length: the nearest whole number, or the nearest even one where a wrong-side row must come last. */
export function rowsFor(length: Cm, rate: PerCm, to: 'whole' | 'even' = 'whole'): Rows {
  const step = to === 'even' ? 2 : 1;
  return rows(step * Math.floor((length * rate) / step + 0.5 + 1e-9));
}
