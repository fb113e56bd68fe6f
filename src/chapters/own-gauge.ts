/** The knitter's own gauge, from a swatch counted at several places or from one line. */
import { type Gauge, rateFrom } from '../fit/gauge.ts';
import type { Worked } from '../fit/words.ts';
import { type Ledger, take, takeCounts, waitFor } from './ledger.ts';

/** Undefined where neither was answered; what waits is entered. */
export function ownGauge(book: Ledger, worked: Worked): Gauge | undefined {
  const stitches = takeCounts(
    book,
    ['swatch_stitches', 'swatch_stitches_2', 'swatch_stitches_3'],
    'stitch gauge',
  );
  const rows = takeCounts(book, ['swatch_rows', 'swatch_rows_2'], 'row gauge');
  if (stitches.length > 0 && rows.length > 0)
    return { stitches: rateFrom(stitches), rows: rateFrom(rows), worked };
  const line = take(book, 'gauge', 'gauge');
  if (line === undefined) {
    waitFor(book, 'gauge', 'Every count of the plan waits for it.');
    return undefined;
  }
  return {
    stitches: rateFrom(stitches.length > 0 ? stitches : [line.stitches]),
    rows: rateFrom(rows.length > 0 ? rows : [line.rows]),
    worked,
  };
}
