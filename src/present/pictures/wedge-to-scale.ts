/**
 * A wedge to scale as it is worn: the fabric that its short rows add, below a hem, above a neck or shoulder, or within
 * the front at a dart.
 */
import type { TurnedWedge } from '../../fit/plan.ts';
import { cm, formatLength } from '../../fit/units.ts';
import { extraRowsAt } from '../../fit/wedge.ts';
import { area, named, type Point, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import type { ToScale } from './to-scale.ts';
import { seenStitches } from './wedge-on-piece.ts';
import { countedRows } from './words.ts';

/** Centimetres of the fabric that are shown beside the wedge. */
const BESIDE = 3;

/** Stitches side by side that outgrow their neighbours by the same rows; boundaries as the wedge counts them. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly rows: number;
}

export function wedgeToScale(wedge: TurnedWedge, { unit }: View): ToScale {
  const { stitchesPerCm, rowsPerCm } = wedge.gauge;
  const steps = stretchesOf(wedge);
  const deep = wedge.rows / rowsPerCm;
  const x = (boundary: number) => -boundary / stitchesPerCm;
  const sign = rises(wedge) ? -1 : 1;
  const profile = steps.flatMap((s) => [s.from, s.to].map((at) => point(x(at), (sign * s.rows) / rowsPerCm)));
  const [right, left] = [x(steps[0]?.from ?? 0), x(steps.at(-1)?.to ?? wedge.needle)];
  const base = steps.filter((s) => s.rows > 0);
  const [first, last] = [base[0]?.from ?? 0, base.at(-1)?.to ?? 0];
  const added = [point(x(first), 0), ...profile.filter((p) => p.y !== 0), point(x(last), 0)];
  return {
    shapes: [...fabric(wedge, right, left, sign, deep), named('wedge', area('shade', 'second', added))],
    across: {
      from: x(last),
      to: x(first),
      words: [`${last - first} sts, ${formatLength(cm((last - first) / stitchesPerCm), unit)}`],
    },
    upright: {
      from: sign < 0 ? -deep : 0,
      to: sign < 0 ? 0 : deep,
      words: [formatLength(wedge.depth, unit), countedRows(wedge.rows, 'flat')],
    },
    names: [],
  };
}

/** What the drawing to scale says, for its words. */
export function scaleFact(wedge: TurnedWedge, { unit }: View): string {
  const { stitchesPerCm } = wedge.gauge;
  const base = stretchesOf(wedge).filter((s) => s.rows > 0);
  const stitches = (all: readonly Stretch[]) => all.reduce((sum, s) => sum + s.to - s.from, 0);
  const wide = (count: number) => `${count} sts (${formatLength(cm(count / stitchesPerCm), unit)})`;
  const all = wide(stitches(base.filter((s) => s.rows === wedge.rows)));
  return `The short rows lie over ${wide(stitches(base))}; all ${countedRows(wedge.rows, 'flat')} of them (${formatLength(wedge.depth, unit)}) over ${all}.`;
}

/** Whether the added fabric stands above the line where the plain rows end. A dart's longest row lies lowest where it is knitted up. */
function rises({ purpose, place }: TurnedWedge): boolean {
  switch (purpose) {
    case 'hem':
      return false;
    case 'bust dart':
      return place.point === 'is complete';
    case 'back neck raise':
    case 'lower front neck':
    case 'shoulder slope':
      return true;
    default:
      return purpose satisfies never;
  }
}

/** The piece beside the wedge: on the other side of its straight line, and all around a dart. */
function fabric({ purpose }: TurnedWedge, right: number, left: number, sign: number, deep: number): Shape[] {
  const [near, far] =
    purpose === 'bust dart' ? [sign * (deep + BESIDE), -sign * BESIDE] : [0, -sign * BESIDE];
  const corners: Point[] = [point(right, near), point(left, near), point(left, far), point(right, far)];
  return [named('piece', area('fabric', 'yours', corners))];
}

/** Of all stitches that are seen: the whole needle, or of a round the half in which the wedge lies. */
function stretchesOf(wedge: TurnedWedge): Stretch[] {
  const { from, stitches } = seenStitches(wedge) ?? wholeRound(wedge);
  const within = wedge.turns.map((t) => t.at).filter((at) => at > from && at < from + stitches);
  const places = [...new Set([from, ...within, from + stitches])].sort((a, b) => a - b);
  return places.slice(1).map((to, i) => {
    const begins = places[i] ?? from;
    const stitch = Math.floor((begins + to) / 2);
    return { from: begins, to, rows: extraRowsAt(wedge, onNeedle(stitch, wedge.needle)) };
  });
}

function onNeedle(stitch: number, needle: number): number {
  return ((stitch % needle) + needle) % needle;
}

/** A round laid open opposite the middle of the wedge. */
function wholeRound({ markers, turns, needle }: TurnedWedge): { from: number; stitches: number } {
  const places = [...turns.map((t) => t.at), ...markers.map((m) => m.at)];
  return { from: (Math.min(...places) + Math.max(...places) - needle) / 2, stitches: needle };
}
