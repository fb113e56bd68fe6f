/** The counts before and after a row that changes them. */
import { type Stitches, stitches } from '../fit/units.ts';
import { type Ledger, take, takeStitches } from './ledger.ts';

/** Undefined where the answer waits; a count after of less than nought is nought. */
export function spreadCounts(book: Ledger): [before: Stitches | undefined, after: Stitches | undefined] {
  const before = takeStitches(book, 'spread_stitches');
  const change = take(book, 'spread_change', 'new count');
  if (change === undefined) return [before, undefined];
  if (change.how === 'to') return [before, stitches(change.count)];
  return [before, before === undefined ? undefined : stitches(Math.max(0, before + change.count))];
}
