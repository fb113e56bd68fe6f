/** A wedge where it lies on its piece: the fabric that each pair of short rows adds, to scale. */
import type { Level, Piece } from '../../fit/outline.ts';
import type { PieceChange, TurnedWedge } from '../../fit/plan.ts';
import { area, named, point, type Shape } from '../draw/drawing.ts';
import { flatWidth } from './piece-figures.ts';
import type { Scale } from './scale.ts';

/** Nothing where the piece has no such level, or where the wedge goes round more than the half that is seen. */
export function wedgeOnPiece(wedge: TurnedWedge, change: PieceChange, scale: Scale): Shape[] {
  const level = levelOf(wedge, change.after);
  const seen = seenStitches(wedge);
  if (level === undefined || seen === null) return [];
  const half = (flatWidth(level.stitches, change) * scale.perCm) / 2;
  const x = (boundary: number) => scale.middle + half - ((boundary - seen.from) / seen.stitches) * 2 * half;
  const reached = level.row + wedge.place.rows;
  const first = wedge.place.point === 'begins' ? reached : reached - wedge.rows;
  const sides = pairs(wedge).map(({ row, low, high }) => {
    const [under, over] = [scale.y(first + row - 1), scale.y(first + row + 1)];
    const [left, right] = [x(high ?? seen.from + seen.stitches), x(low ?? seen.from)];
    return {
      left: [point(left, under), point(left, over)],
      right: [point(right, under), point(right, over)],
    };
  });
  const outline = [...sides.flatMap((s) => s.right), ...sides.flatMap((s) => s.left).reverse()];
  return [named('wedge', area('shade', 'second', outline))];
}

/** A wedge counts from the edge where its hem begins or ends; an outline calls the top of the edging its hem. */
function levelOf({ place }: TurnedWedge, piece: Piece): Level | undefined {
  if (place.level === 'hem') return piece.direction === 'up' ? piece.levels[0] : piece.levels.at(-1);
  return piece.levels.find((l) => l.name === place.level);
}

/** The boundaries between which each pair of short rows runs; undefined where it runs to the edge. */
function pairs(wedge: TurnedWedge) {
  return Array.from({ length: wedge.rows / 2 }, (_, i) => 2 * i + 1).map((row) => {
    const at = (side: 'start' | 'end') =>
      wedge.turns.find((t) => t.side === side && (t.row === row || t.row === row + 1))?.at;
    return { row, low: at('start'), high: at('end') };
  });
}

/** The stitches that are seen: all of a flat piece; of a round the half in the middle of which the wedge lies. */
export function seenStitches({
  worked,
  needle,
  markers,
  turns,
}: TurnedWedge): { from: number; stitches: number } | null {
  if (worked === 'flat') return { from: 0, stitches: needle };
  const places = [...turns.map((t) => t.at), ...markers.map((m) => m.at)];
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const stitches = needle / 2;
  return high - low > stitches ? null : { from: (low + high - stitches) / 2, stitches };
}
