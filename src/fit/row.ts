/** One row as it is written for the hands: plain stretches, changes and repeats, with the stitches it takes and leaves. */
import { type Stitches, stitches } from './units.ts';

/** Ways to change the count inside a row: single and double increases, single and double decreases. */
export const CHANGES = ['m1', 'kfb', 'kyok', 'k2tog', 'cdd'] as const;
export type Change = (typeof CHANGES)[number];

/**
 * Stitches that a change takes from the left needle and leaves on the right one. `m1` lifts the bar between two
 * stitches, `kyok` works knit, yarn over, knit into one stitch, `cdd` is a centred double decrease.
 */
export const MADE_OF: Readonly<Record<Change, { readonly takes: number; readonly leaves: number }>> = {
  m1: { takes: 0, leaves: 1 },
  kfb: { takes: 1, leaves: 2 },
  kyok: { takes: 1, leaves: 3 },
  k2tog: { takes: 2, leaves: 1 },
  cdd: { takes: 3, leaves: 1 },
};

export type Segment =
  /** Border or seam stitches, worked as they are. */
  | { readonly kind: 'edge'; readonly stitches: Stitches }
  | { readonly kind: 'plain'; readonly stitches: Stitches }
  | { readonly kind: 'change'; readonly change: Change }
  | { readonly kind: 'repeat'; readonly times: number; readonly of: readonly Segment[] };

export function plain(count: number): Segment {
  return { kind: 'plain', stitches: stitches(count) };
}

/** The changes that a row uses, each once. */
export function changesIn(row: readonly Segment[]): readonly Change[] {
  const used = (segment: Segment): readonly Change[] =>
    segment.kind === 'change' ? [segment.change] : segment.kind === 'repeat' ? changesIn(segment.of) : [];
  return [...new Set(row.flatMap(used))];
}

/** Stitches that the row takes from the left needle. */
export function taken(row: readonly Segment[]): Stitches {
  return tally(row, (change) => MADE_OF[change].takes);
}

/** Stitches that the row leaves on the right needle. */
export function left(row: readonly Segment[]): Stitches {
  return tally(row, (change) => MADE_OF[change].leaves);
}

function tally(row: readonly Segment[], each: (change: Change) => number): Stitches {
  const count = (segment: Segment): number => {
    switch (segment.kind) {
      case 'edge':
      case 'plain':
        return segment.stitches;
      case 'change':
        return each(segment.change);
      case 'repeat':
        return segment.times * tally(segment.of, each);
      default:
        return segment satisfies never;
    }
  };
  return stitches(row.reduce((sum, segment) => sum + count(segment), 0));
}
