/** The key of a drawing: a sample of each kind of line with its words, and a bar of a known length. */
import type { LengthUnit } from '../../fit/units.ts';
import { CM_PER } from '../../fit/units.ts';
import { line, named, type Point, point, type Shape, text } from '../draw/drawing.ts';
import { textWidth } from '../draw/font.ts';
import type { LineName } from '../draw/palette.ts';
import { SMALL } from './picture.ts';

export interface KeyEntry {
  readonly line: LineName;
  readonly words: string;
}

const SAMPLE = 30;

/** Samples side by side from `at` on, the words' baseline at its y. */
export function keyOf(entries: readonly KeyEntry[], at: Point): Shape[] {
  let x = at.x;
  return entries.flatMap((entry) => {
    const from = x;
    x += SAMPLE + 6 + textWidth(entry.words, SMALL.size) + 16;
    return [
      line(entry.line, point(from, at.y - 4), point(from + SAMPLE, at.y - 4)),
      text(entry.words, point(from + SAMPLE + 6, at.y), SMALL),
    ];
  });
}

/** Lengths of a bar, in the reader's unit. */
const BARS: Readonly<Record<LengthUnit, readonly number[]>> = { cm: [10, 5, 2, 1], in: [4, 2, 1, 0.5] };

/** A bar of a round length that is at most `room` long, its words to the right of it, ending at `end`. */
export function scaleBar(perCm: number, unit: LengthUnit, end: Point, room: number): Shape[] {
  const long = (n: number) => n * CM_PER[unit] * perCm;
  const fits = BARS[unit].find((n) => long(n) <= room) ?? BARS[unit].at(-1) ?? 1;
  const words = `${fits === 0.5 ? '½' : fits} ${unit}`;
  const right = end.x - textWidth(words, SMALL.size) - 6;
  const [left, y] = [right - long(fits), end.y - 4];
  return [
    named('scale bar', line('dimension', point(left, y), point(right, y))),
    line('dimension', point(left, y - 4), point(left, y + 4)),
    line('dimension', point(right, y - 4), point(right, y + 4)),
    text(words, point(right + 6, end.y), { ...SMALL, name: 'scale' }),
  ];
}
