/** The pattern as it can be compared with a body: the sample sweater, or the knitter's own from the row of its sizes. */
import { rateAsPrinted } from '../fit/gauge.ts';
import type { OwnGauge } from '../fit/knitted.ts';
import type { Pattern } from '../fit/pattern.ts';
import { cm } from '../fit/units.ts';
import { madeOf, samplePattern } from './figures.ts';
import { type Ledger, take, takeChoice } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';

/** Undefined where neither a sample was chosen nor a row of sizes given. */
export function patternOf(book: Ledger): Pattern | undefined {
  const sample = samplePattern(book);
  if (sample !== undefined) return sample;
  const sizes = take(book, 'sizes_bust', 'sizes');
  const gauge = take(book, 'pattern_gauge', 'gauge');
  if (sizes === undefined || gauge === undefined) return undefined;
  const made = madeOf(takeChoice(book, 'body_made')) ?? {
    worked: 'round' as const,
    direction: 'up' as const,
  };
  return {
    name: 'your pattern',
    // Only widths around the bust are compared; how sleeve and body meet does not enter.
    construction: 'set-in',
    direction: made.direction,
    body: made.worked,
    sleeves: made.worked,
    gauge: { stitches: gauge.stitches, rows: gauge.rows },
    edge: { body: 0, sleeves: 0 },
    repeat: { multiple: 1, plus: 0 },
    edging: { hem: cm(0), cuff: cm(0) },
    sizes: sizes.lengths.flatMap((bust, i) =>
      bust === null ? [] : [{ label: sizes.labels?.[i] ?? String(i + 1), finished: { bust }, counts: {} }],
    ),
  };
}

/** The own gauges for body and sleeves; the pattern's where no swatch is known and the question allows it. */
export function ownGauges(book: Ledger, pattern: Pick<Pattern, 'body' | 'sleeves'>): OwnGauge | undefined {
  const body = ownGauge(book, pattern.body);
  return body && { body, sleeves: { ...body, worked: pattern.sleeves } };
}

/** The gauge that the pattern states, as printed. */
export function patternGauge(book: Ledger) {
  const sample = samplePattern(book);
  const line = sample?.gauge ?? take(book, 'pattern_gauge', 'gauge');
  return line === undefined
    ? undefined
    : { stitches: rateAsPrinted(line.stitches), rows: rateAsPrinted(line.rows) };
}
