/** How many stitches a body has after so many of its rows. */
import type { BodyShaping } from './body-shaping.ts';
import type { Stitches } from './units.ts';

/** Undefined past its last row, and from a section on that cannot be shaped. */
export function countAfterRow({ sections }: BodyShaping, row: number): Stitches | undefined {
  let start = 0;
  for (const { from, stretch, spacing } of sections) {
    if (spacing !== null && spacing.kind !== 'spaced') return undefined;
    if (row <= start + stretch.rows)
      return spacing?.shaping.findLast((shaped) => start + shaped.row <= row)?.after ?? from;
    start += stretch.rows;
  }
  return undefined;
}
