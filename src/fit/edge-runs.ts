/** Shaping at edges gathered into runs of equal events at equal intervals, as a knitter says them. */
import type { Edge, EdgeEvent } from './edge-shaping.ts';
import type { Rows } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface EdgeRun {
  readonly by: EdgeEvent['by'];
  /** Both: in one row, or for bind-offs where this row and the next begin. */
  readonly edge: Edge;
  /** Stitches at each edge in each event of the run. */
  readonly stitches: number;
  readonly times: number;
  /** Rows from one to the next; 0 where there is only one. */
  readonly every: number;
  readonly first: Rows;
  /** Of a run of bind-offs at both edges, the row of the last one at the left edge. */
  readonly last: Rows;
}

export function edgeRuns(events: readonly EdgeEvent[]): readonly EdgeRun[] {
  const runs: EdgeRun[] = [];
  for (const single of paired(events)) {
    const before = runs.at(-1);
    const joined = before === undefined ? undefined : continued(before, single);
    if (joined === undefined) runs.push(single);
    else runs[runs.length - 1] = joined;
  }
  return runs;
}

/** Each event as a run of its own, a bind-off at the right edge together with its like at the left one in the next row. */
function paired(events: readonly EdgeEvent[]): EdgeRun[] {
  const runs: EdgeRun[] = [];
  for (const [i, event] of events.entries()) {
    if (i > 0 && matches(events[i - 1], event)) continue;
    const other = events[i + 1];
    const pair = other !== undefined && matches(event, other);
    runs.push({
      by: event.by,
      edge: pair ? 'both' : event.edge,
      stitches: Math.abs(event.change),
      times: 1,
      every: 0,
      first: event.row,
      last: pair ? other.row : event.row,
    });
  }
  return runs;
}

function matches(right: EdgeEvent | undefined, left: EdgeEvent): boolean {
  return (
    right?.by === 'bind off' &&
    left.by === 'bind off' &&
    right.edge === 'right' &&
    left.edge === 'left' &&
    left.row === right.row + 1 &&
    left.change === right.change
  );
}

function continued(run: EdgeRun, next: EdgeRun): EdgeRun | undefined {
  const alike = run.by === next.by && run.edge === next.edge && run.stitches === next.stitches;
  const every = next.last - run.last;
  const pairs = run.by === 'bind off' && run.edge === 'both';
  if (!alike || (run.times > 1 && every !== run.every) || (pairs && every !== 2)) return undefined;
  return { ...run, every, times: run.times + 1, last: next.last };
}

/** How often each run shapes, from its first row, its last and the rows between. */
export function explainRuns(events: readonly EdgeEvent[]): readonly WorkingLine[] {
  return edgeRuns(events).flatMap((run) => {
    if (run.times === 1) return [];
    const span = run.last - (run.edge === 'both' && run.by === 'bind off' ? 1 : 0);
    const given = {
      a: quantity('row of the last', span, 'rows'),
      b: quantity('row of the first', run.first, 'rows'),
      c: quantity('rows from one to the next', run.every, 'rows'),
    };
    return [
      workOut(`shapings from row ${run.first} to row ${run.last}`, '(a - b) / c + 1', given, {
        unit: 'times',
      }),
    ];
  });
}
