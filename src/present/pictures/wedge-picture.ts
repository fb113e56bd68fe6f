/**
 * A short-row wedge to scale as it is worn, and under that as a staircase, seen from the right side: right-side rows run
 * from right to left. Each short row is a line that ends at its turn; beside the turn stand the row and its stitches from
 * the marker. Read upwards.
 *
 *   end marker               start marker
 *     |   ┌──────────────┐ row 4 │        wide to scale, each row as tall as its label needs
 *     | row 3 ─────────────┐row 2│
 */
import type { TurnedWedge } from '../../fit/plan.ts';
import type { Turn } from '../../fit/wedge.ts';
import { area, type Drawing, line, named, type Point, point, type Shape, text } from '../draw/drawing.ts';
import { wrapText } from '../draw/font.ts';
import type { View } from '../view.ts';
import { keyOf, scaleBar } from './key.ts';
import { LEADING, MARGIN, PICTURE_WIDTH, SMALL, TITLE } from './picture.ts';
import { layToScale } from './to-scale.ts';
import { wedgeToScale } from './wedge-to-scale.ts';

const PITCH = 18;
/** Of the part that is to scale. */
const TALLEST = 150;
/** Columns of labels on either side of the staircase. */
const LABELS = 84;
const LEFT = MARGIN + LABELS + 8;
const RIGHT = PICTURE_WIDTH - MARGIN - LABELS - 8;

export function drawWedge(wedge: TurnedWedge, title: string, view: View): Drawing {
  const room = PICTURE_WIDTH - 2 * MARGIN;
  const titles = wrapText(title, room, TITLE.size, 'bold');
  const laid = layToScale(wedgeToScale(wedge, view), 26 + 21 * titles.length, TALLEST);
  const key = laid.low + 26;
  const top = key + 24 + 2 * LEADING;
  const foot = top + PITCH * (wedge.rows + 0.5);
  return {
    width: PICTURE_WIDTH,
    height: foot + 2 * LEADING + MARGIN,
    shapes: [
      ...titles.map((t, i) => text(t, point(MARGIN, 26 + 21 * i), TITLE)),
      ...laid.shapes,
      ...keyOf(
        [
          { line: 'yours', words: 'the piece' },
          { line: 'second', words: 'short rows' },
        ],
        point(MARGIN, key),
      ),
      ...scaleBar(laid.perCm, view.unit, point(PICTURE_WIDTH - MARGIN, key), 80),
      ...staircase(wedge, top, foot),
      text(
        `row, and stitches ${wedge.markers[0]?.name === 'centre' ? 'past' : 'before'} the marker; read upwards ↑`,
        point(MARGIN, foot + 1.6 * LEADING),
        SMALL,
      ),
    ],
  };
}

function staircase(wedge: TurnedWedge, top: number, foot: number): Shape[] {
  const x = across(wedge);
  const y = (row: number) => foot - PITCH * row;
  return [
    ...steps(wedge, x, y),
    ...wedge.markers.flatMap((m) => marker(m.name, x(m.at), top, foot)),
    named('short rows', line('yours', ...path(wedge, x, y))),
    ...wedge.turns.flatMap((turn) => label(turn, point(x(turn.at), y(turn.row)))),
  ];
}

/** From a boundary on the needle to its place: the start of right-side rows lies at the right. */
function across(wedge: TurnedWedge): (boundary: number) => number {
  const { low, high } = extent(wedge);
  return (boundary) => RIGHT - ((boundary - low) / Math.max(1, high - low)) * (RIGHT - LEFT);
}

/** All turns and markers; the whole needle to the edge where only one side is sloped. */
export function extent({ turns, markers, sides, needle }: TurnedWedge): { low: number; high: number } {
  const all = [...turns.map((t) => t.at), ...markers.map((m) => m.at)];
  const low = Math.min(...all, ...(sides === 'end' ? [0] : []));
  const high = Math.max(...all, ...(sides === 'start' ? [needle] : []));
  return { low, high };
}

/** The way of the yarn, from turn to turn. On one sloped side every other row runs to the edge and back. */
function path(wedge: TurnedWedge, x: (b: number) => number, y: (row: number) => number): Point[] {
  const { low, high } = extent(wedge);
  const ends = (side: Turn['side']) => (side === 'end' ? low : high);
  const firstFrom = wedge.turns[0] === undefined ? low : ends(wedge.turns[0].side);
  let from = firstFrom;
  return Array.from({ length: wedge.rows }, (_, i) => i + 1).flatMap((row) => {
    const turn = wedge.turns.find((t) => t.row === row);
    const to = turn === undefined ? firstFrom : turn.at;
    const points = [point(x(from), y(row)), point(x(to), y(row))];
    from = to;
    return points;
  });
}

/** The fabric that a pair of rows adds. */
function steps(wedge: TurnedWedge, x: (b: number) => number, y: (row: number) => number): Shape[] {
  const { low, high } = extent(wedge);
  return Array.from({ length: wedge.rows / 2 }, (_, i) => 2 * i + 1).map((row) => {
    const at = (side: Turn['side']) =>
      wedge.turns.find((t) => t.side === side && (t.row === row || t.row === row + 1))?.at;
    const [left, right] = [x(at('end') ?? high), x(at('start') ?? low)];
    const [under, over] = [y(row - 1), y(row + 1)];
    return named(
      'step',
      area('fabric', null, [point(left, under), point(right, under), point(right, over), point(left, over)]),
    );
  });
}

function marker(name: string, x: number, top: number, foot: number): Shape[] {
  const anchor = name === 'start' ? 'end' : name === 'end' ? 'start' : 'middle';
  return [
    named('marker', line('string', point(x, top - 4), point(x, foot))),
    text(`${name} marker`, point(x, top - 10), { ...SMALL, anchor }),
  ];
}

function label(turn: Turn, at: Point): Shape[] {
  const words = `row ${turn.row}: ${turn.stitches}`;
  const left = turn.side === 'end';
  const x = left ? LEFT - 8 : RIGHT + 8;
  return [
    line('leader', at, point(x + (left ? 2 : -2), at.y)),
    text(words, point(x, at.y + 4), { size: 12.5, anchor: left ? 'end' : 'start', name: 'turn' }),
  ];
}
