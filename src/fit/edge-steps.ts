/** Shaped edges as instructions of a plan, with the workings of every figure that their words state. */
import { explainRuns } from './edge-runs.ts';
import { countAfter, type EdgeEvent } from './edge-shaping.ts';
import type { EdgeSchedule, Instruction } from './plan.ts';
import type { Rows, Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export function scheduleOf(
  at: EdgeSchedule['at'],
  from: Stitches,
  events: readonly EdgeEvent[],
  rows: Rows,
): EdgeSchedule {
  return { from, to: countAfter(from, events), rows, at, events };
}

export function shapedEdges(schedule: EdgeSchedule): Instruction {
  return { do: 'shape edges', schedule };
}

/** The runs, the stitches of each event, the rows in all and the stitches at the end. */
export function edgeWorkings({ from, to, rows, events }: EdgeSchedule): readonly WorkingLine[] {
  const changes = [...new Set(events.map((event) => Math.abs(event.change)))];
  const same = (label: string, value: number, unit: 'stitches' | 'rows') =>
    workOut(label, 'a', { a: quantity(label, value, unit) }, { unit });
  const lost = {
    a: quantity('stitches at the start', from, 'stitches'),
    b: quantity('stitches at the end', to, 'stitches'),
  };
  return [
    ...explainRuns(events),
    ...changes.map((count) => same('stitches of one shaping at an edge', count, 'stitches')),
    same('rows of this section', rows, 'rows'),
    workOut('stitches lost in this section', 'a - b', lost, { unit: 'stitches' }),
  ];
}
