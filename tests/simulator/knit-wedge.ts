/**
 * Knits a wedge on a needle as a knitter would who has only the turns: marker, stitches before or past it, turn.
 * A wedge that begins on a wrong-side row is knitted after one plain row. Afterwards the work is closed: to the end of
 * the row, or to the join.
 */
import type { TurnedWedge } from '../../src/fit/plan.ts';
import type { Needle } from './needle.ts';

export function knitWedge(needle: Needle, wedge: TurnedWedge): Needle {
  if (wedge.firstRow === 'wrong side') needle.finish();
  for (let row = 1; row <= wedge.rows; row++) {
    const turn = wedge.turns.find((t) => t.row === row);
    if (turn === undefined) needle.finish();
    else needle.knitTo(boundary(wedge, turn)).turn();
  }
  return needle.finish();
}

function boundary(wedge: TurnedWedge, { side, way, marker, stitches }: TurnedWedge['turns'][number]): number {
  const hangs = wedge.markers.find(({ name }) => name === marker)?.at;
  if (hangs === undefined) throw new Error(`no ${marker} marker hangs on this needle`);
  const forward = side === 'end' ? 1 : -1;
  return hangs + forward * (way === 'past' ? stitches : -stitches);
}
