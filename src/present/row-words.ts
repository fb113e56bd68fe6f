/** One row written for the hands: 'k3, (k6, k2tog) 9 times, k3', with what its abbreviations mean. */
import { CHANGES, type Change, type Segment } from '../fit/row.ts';

const MEANING: Readonly<Record<Change, string>> = {
  m1: 'm1 makes one stitch out of the bar before the next stitch',
  kfb: 'kfb knits into the front and the back of one stitch',
  kyok: 'kyok works knit, yarn over, knit into one stitch',
  k2tog: 'k2tog knits two stitches together',
  cdd: 'cdd makes one stitch of three, the middle one on top',
};

export function wordRow(row: readonly Segment[]): string {
  return row.map(wordSegment).join(', ');
}

/** 'k2tog knits two stitches together.', a sentence for each way of changing the count that the row uses. */
export function wordMeanings(row: readonly Segment[]): string {
  const used = changesIn(row);
  return CHANGES.filter((change) => used.has(change))
    .map((change) => `${MEANING[change]}.`)
    .join(' ');
}

function wordSegment(segment: Segment): string {
  switch (segment.kind) {
    case 'edge':
      return `work ${segment.stitches} border ${segment.stitches === 1 ? 'stitch' : 'stitches'}`;
    case 'plain':
      return `k${segment.stitches}`;
    case 'change':
      return segment.change;
    case 'repeat':
      return `${bracketed(segment.of)} ${segment.times} times`;
    default:
      return segment satisfies never;
  }
}

/** Square brackets around what holds round ones. */
function bracketed(of: readonly Segment[]): string {
  const inner = wordRow(of);
  if (of.length === 1) return inner;
  return of.some((s) => s.kind === 'repeat') ? `[${inner}]` : `(${inner})`;
}

function changesIn(row: readonly Segment[]): ReadonlySet<Change> {
  return new Set(
    row.flatMap((s) => (s.kind === 'change' ? [s.change] : s.kind === 'repeat' ? [...changesIn(s.of)] : [])),
  );
}
