/** A shape drawn to scale in the room of a picture, with a width measured above it and a height measured beside it. */
import { boundsOf, line, named, type Point, placed, point, type Shape, text } from '../draw/drawing.ts';
import { textWidth } from '../draw/font.ts';
import { LEADING, MARGIN, PICTURE_WIDTH, SMALL } from './picture.ts';

/** From one place to another in centimetres, and what it measures there, a line each. */
export interface Extent {
  readonly from: number;
  readonly to: number;
  readonly words: readonly string[];
}

export interface ToScale {
  /** In centimetres, y downwards, without texts. */
  readonly shapes: readonly Shape[];
  readonly across: Extent | null;
  readonly upright: Extent | null;
  /** Names under parts of the drawing: where their middle lies, in centimetres. */
  readonly names: readonly { readonly words: string; readonly x: number }[];
}

export interface Laid {
  readonly shapes: readonly Shape[];
  /** The y of its lower end. */
  readonly low: number;
  readonly perCm: number;
}

const ROOM = { width: PICTURE_WIDTH - 2 * MARGIN, height: 320 } as const;
const MOST_PER_CM = 12;
/** Between the drawing and what is measured above or beside it; half the length of a line's end strokes. */
const [OFF, STROKE] = [10, 4] as const;

/** `tallest`: the height that the shape itself may have. */
export function layToScale(
  { shapes, across, upright, names }: ToScale,
  top: number,
  tallest: number = ROOM.height,
): Laid {
  const bounds = boundsOf(shapes);
  const head = across === null ? 0 : LEADING * across.words.length + OFF + STROKE;
  const beside = upright === null ? 0 : widest(upright.words) + OFF + STROKE + 8;
  const room = ROOM.width - beside;
  const perCm = Math.min(room / bounds.width, tallest / bounds.height, MOST_PER_CM);
  const [width, height] = [bounds.width * perCm, bounds.height * perCm];
  const least = upright === null ? 0 : LEADING * upright.words.length;
  const left = MARGIN + (room - width) / 2;
  const high = top + head + Math.max(0, (least - height) / 2);
  const low = Math.max(high + height, high + (height + least) / 2);
  const at = (p: Point) => point(left + (p.x - bounds.x) * perCm, high + (p.y - bounds.y) * perCm);
  const origin = at(point(0, 0));
  return {
    perCm,
    low: low + (names.length > 0 ? LEADING + 4 : 0),
    shapes: [
      ...placed(shapes, origin, perCm),
      ...(across === null ? [] : measuredAbove(across, (x) => at(point(x, 0)).x, high - OFF)),
      ...(upright === null ? [] : measuredBeside(upright, (y) => at(point(0, y)).y, left + width + OFF)),
      ...names.map((n) =>
        text(n.words, point(onPage(at(point(n.x, 0)).x, [n.words]), low + LEADING + 2), {
          ...SMALL,
          anchor: 'middle',
        }),
      ),
    ],
  };
}

function widest(lines: readonly string[]): number {
  return Math.max(...lines.map((l) => textWidth(l, SMALL.size)));
}

/** The middle of words that stand as near to `middle` as the page lets them. */
function onPage(middle: number, words: readonly string[]): number {
  const half = widest(words) / 2;
  return Math.min(Math.max(middle, MARGIN + half), PICTURE_WIDTH - MARGIN - half);
}

function measuredAbove({ from, to, words }: Extent, x: (cm: number) => number, y: number): Shape[] {
  const [left, right] = [x(from), x(to)];
  const middle = onPage((left + right) / 2, words);
  return [
    named('across', line('dimension', point(left, y), point(right, y))),
    ...[left, right].map((at) => line('dimension', point(at, y - STROKE), point(at, y + STROKE))),
    ...words.map((w, i) =>
      text(w, point(middle, y - STROKE - 4 - LEADING * (words.length - 1 - i)), {
        ...SMALL,
        anchor: 'middle',
        name: `across, line ${i + 1}`,
      }),
    ),
  ];
}

function measuredBeside({ from, to, words }: Extent, y: (cm: number) => number, x: number): Shape[] {
  const [high, low] = [y(from), y(to)];
  const top = (high + low) / 2 - (LEADING * words.length) / 2;
  return [
    named('upright', line('dimension', point(x, high), point(x, low))),
    ...[high, low].map((at) => line('dimension', point(x - STROKE, at), point(x + STROKE, at))),
    ...words.map((w, i) =>
      text(w, point(x + STROKE + 4, top + LEADING * (i + 0.76)), {
        ...SMALL,
        name: `upright, line ${i + 1}`,
      }),
    ),
  ];
}
