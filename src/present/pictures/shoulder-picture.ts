/** Shoulders bound off in steps, from a little below them up to the neck. */
import type { EdgeEvent } from '../../fit/edge-shaping.ts';
import type { ShapedPart, ShoulderOutline } from '../../fit/shaped.ts';
import { cm, formatLength, rows } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, named, type Point, point } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { rightEdge } from './edge-lines.ts';
import type { Framed } from './framed.ts';
import { countedRows } from './words.ts';

type ShapedShoulders = Extract<ShapedPart, { shape: 'stepped shoulders' }>;

/** Centimetres of the piece that are shown below the shoulders. */
const BELOW = 3;

export function shoulderFramed(shown: ShapedShoulders, { unit }: View): Omit<Framed, 'title'> {
  const { after: slope, gauge } = shown;
  // The first step lies flat in its row, so that the last one is two rows less above it than all steps have.
  const between = rows(slope.rows - 2);
  const high = cm(between / gauge.rowsPerCm);
  const wide = cm(slope.shoulder / gauge.stitchesPerCm);
  const outer = slope.from / gauge.stitchesPerCm / 2;
  const right = slope.events.some((e) => e.edge === 'right');
  const across = right ? { from: outer - wide, to: outer } : { from: -outer, to: wide - outer };
  return {
    shapes: [named('shoulders', area('fabric', 'yours', outline(slope, gauge)))],
    across: { ...across, words: [`${slope.shoulder} sts, ${formatLength(wide, unit)}`] },
    upright: {
      from: -high - start(slope) / gauge.rowsPerCm,
      to: -start(slope) / gauge.rowsPerCm,
      words: [formatLength(high, unit), countedRows(between, 'flat')],
    },
    names: [],
    key: [{ line: 'yours', words: 'yours' }],
    facts: [
      `Steps from the armhole edge to the neck: ${slope.steps.join(', ')} sts. Each shoulder: ${slope.shoulder} sts (${formatLength(wide, unit)}).`,
      `From the first step to the last: ${countedRows(between, 'flat')} (${formatLength(high, unit)}). Through the middles of the steps the shoulder drops ${formatLength(slope.drop, unit)}.`,
    ],
    drawn: 'The piece from a little below the shoulders up to the neck, to scale.',
  };
}

/** Rows before the first step: one where a single shoulder is bound off on the way back. */
function start({ events }: ShoulderOutline): number {
  return (events[0]?.row ?? 1) - 1;
}

/** Around x = 0, the row of the first step at y = 0. */
function outline({ from, events }: ShoulderOutline, gauge: Rates): Point[] {
  const half = from / gauge.stitchesPerCm / 2;
  const top = rows((events.at(-1)?.row ?? 1) - 1);
  const edge = (side: EdgeEvent['edge']) =>
    rightEdge(
      events.filter((e) => e.edge === side).map((e) => ({ ...e, edge: 'right' as const })),
      top,
      gauge,
    );
  const right = edge('right').map((p) => point(half - p.x, p.y));
  const left = edge('left').map((p) => point(p.x - half, p.y));
  return [point(-half, BELOW), point(half, BELOW), ...right, ...left.reverse()];
}
