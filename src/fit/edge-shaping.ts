/**
 * Shaping at the edges of a piece, row by row: complete enough that another program can knit it.
 * Row 1 of a section is a right-side row. `right` is the edge at which right-side rows begin, `left` the one at which
 * wrong-side rows begin: a bind-off at the right edge lies in an odd row, at the left edge in an even one.
 */
import type { Run, Spaced } from './spacing.ts';
import { type Rows, rows, type Stitches, stitches } from './units.ts';

export const EDGES = ['right', 'left', 'both'] as const;
export type Edge = (typeof EDGES)[number];

export interface EdgeEvent {
  /** Row of the section, counted from 1. */
  readonly row: Rows;
  readonly edge: Edge;
  readonly by: 'bind off' | 'decrease' | 'increase';
  /** Stitches gained (positive) or lost (negative) at each edge that is named. */
  readonly change: number;
  /** Stitches on the needle after it. */
  readonly after: Stitches;
}

/** Stitches that an event adds to the needle, or takes from it. */
export function changeOf(event: EdgeEvent): number {
  return event.edge === 'both' ? 2 * event.change : event.change;
}

/** Stitches on the needle after the last event. */
export function countAfter(from: Stitches, events: readonly EdgeEvent[]): Stitches {
  return events.at(-1)?.after ?? from;
}

/** Bind-offs at the beginning of two rows each, first at the right edge, then at the left one; none of nought. */
export function boundOff(
  from: Stitches,
  bindOffs: readonly number[],
  afterRow: number,
): readonly EdgeEvent[] {
  return recount(
    from,
    bindOffs.flatMap((count, i) =>
      count === 0
        ? []
        : [bindOff(afterRow + 2 * i + 1, 'right', count), bindOff(afterRow + 2 * i + 2, 'left', count)],
    ),
  );
}

/** Bind-offs at one edge, in every second row from `row` on. */
export function boundOffAt(
  edge: 'right' | 'left',
  from: Stitches,
  bindOffs: readonly number[],
  row: number,
): readonly EdgeEvent[] {
  return recount(
    from,
    bindOffs.map((count, i) => bindOff(row + 2 * i, edge, count)),
  );
}

/** What a spacing does at the edges of a section that begins after `afterRow` rows. */
export function spacedAt(edge: Edge, spaced: Spaced, afterRow: number): readonly EdgeEvent[] {
  const sign = spaced.to >= spaced.from ? 1 : -1;
  const change = (sign * spaced.perRow) / (edge === 'both' ? 2 : 1);
  if (!Number.isInteger(change))
    throw new RangeError(`${spaced.perRow} a row cannot lie at both edges alike`);
  return spaced.shaping.map(({ row, after }) => ({
    row: rows(afterRow + row),
    edge,
    by: sign > 0 ? 'increase' : 'decrease',
    change,
    after,
  }));
}

/**
 * Shaping as a pattern prints it: the first change in `firstRow`, each further one `every` rows after the one before.
 * The first run's own interval counts from before `firstRow`: 'every 2nd row 3 times' from row 1 is rows 1, 3 and 5.
 */
export function asPrinted(
  edge: Edge,
  from: Stitches,
  firstRow: number,
  runs: readonly Pick<Run, 'every' | 'times'>[],
  change: number,
): readonly EdgeEvent[] {
  const intervals = runs.flatMap(({ every, times }) => Array<number>(times).fill(every));
  let row = firstRow - (intervals[0] ?? 0);
  const placed = intervals.map((interval): EdgeEvent => {
    row += interval;
    return { row: rows(row), edge, by: change > 0 ? 'increase' : 'decrease', change, after: from };
  });
  return recount(from, placed);
}

/** Several shapings 'at the same time': joined by rows and counted anew. Those of one row keep the order given. */
export function together(
  from: Stitches,
  ...shapings: readonly (readonly EdgeEvent[])[]
): readonly EdgeEvent[] {
  return recount(
    from,
    shapings.flat().sort((a, b) => a.row - b.row),
  );
}

function recount(from: Stitches, events: readonly EdgeEvent[]): readonly EdgeEvent[] {
  let count: number = from;
  return events.map((event) => {
    count += changeOf(event);
    return { ...event, after: stitches(count) };
  });
}

function bindOff(row: number, edge: Edge, count: number): EdgeEvent {
  return { row: rows(row), edge, by: 'bind off', change: -count, after: stitches(0) };
}
