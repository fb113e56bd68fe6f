/** One row written for the hands: 'k3, (k6, k2tog) 9 times, k3'. */
import type { Segment } from '../fit/row.ts';

export function wordRow(row: readonly Segment[]): string {
  return row.map(wordSegment).join(', ');
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
