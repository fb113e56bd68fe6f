/** Shaped edges as lines in centimetres, along the stitches as they are knitted; y grows downwards, so up is negative. */
import { legs } from '../../fit/edge-length.ts';
import type { EdgeEvent } from '../../fit/edge-shaping.ts';
import type { SpacedOutline } from '../../fit/shaped.ts';
import type { Rows } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { type Point, point } from '../draw/drawing.ts';

/** The right edge of a section, from its lowest outer corner inwards and up: x is how far it has come in. */
export function rightEdge(events: readonly EdgeEvent[], rows: Rows, gauge: Rates): Point[] {
  let [across, up] = [0, 0];
  const corners = legs(events, rows).flatMap((leg) =>
    Array.from({ length: leg.times }, () => {
      across += leg.stitches;
      up += leg.rows;
      return point(across / gauge.stitchesPerCm, -up / gauge.rowsPerCm);
    }),
  );
  return [point(0, 0), ...corners];
}

/** Both edges of a section that is shaped alike on both sides, as one closed outline around x = 0. */
export function symmetrical(edge: readonly Point[], width: number): Point[] {
  const right = edge.map((p) => point(width / 2 - p.x, p.y));
  return [...right, ...right.map((p) => point(-p.x, p.y)).reverse()];
}

/** The outline of a section spaced at both its edges, row by row, around x = 0 and from y = 0 in the order of knitting. */
export function spacedOutline(spaced: SpacedOutline, gauge: Rates, direction: 'up' | 'down'): Point[] {
  const sign = direction === 'up' ? -1 : 1;
  const steps = [
    { row: 0, count: spaced.from as number },
    ...spaced.shaping.map(({ row, after }) => ({ row: row as number, count: after as number })),
    { row: spaced.rows as number, count: spaced.to as number },
  ];
  const right = steps.map(({ row, count }) =>
    point(count / gauge.stitchesPerCm / 2, (sign * row) / gauge.rowsPerCm),
  );
  return [...right, ...right.map((p) => point(-p.x, p.y)).reverse()];
}
