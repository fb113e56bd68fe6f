/**
 * A drawing as a value: lines, areas and texts, each named by what it is for and never by a colour, so that its geometry
 * can be checked before anything is rasterised. `x` grows to the right, `y` downwards. On a picture a unit is what a
 * phone shows as one pixel; on a page it is a point (1/72 in).
 */
import { ASCENT, DESCENT, textWidth, type Weight } from './font.ts';
import type { FillName, LineName, TextInk } from './palette.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An open or closed line through points, with a fill where it is an area. */
export interface PathShape {
  readonly shape: 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly line: LineName | null;
  readonly fill: FillName | null;
  /** What it stands for, where a check or a reader needs to find it again. */
  readonly name?: string;
}

/** One line of text; `x` and `y` are where it is anchored on its baseline. */
export interface TextShape {
  readonly shape: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
  readonly anchor: Anchor;
  readonly ink: TextInk;
  /** The room kept for it: no other text comes into it. */
  readonly box: Box;
  readonly name?: string;
}

export type Anchor = 'start' | 'middle' | 'end';
export type Shape = PathShape | TextShape;

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** From the back to the front. */
  readonly shapes: readonly Shape[];
}

export function point(x: number, y: number): Point {
  return { x, y };
}

export function line(name: LineName, ...points: readonly Point[]): PathShape {
  return { shape: 'path', points, closed: false, line: name, fill: null };
}

export function area(fill: FillName | null, outline: LineName | null, points: readonly Point[]): PathShape {
  return { shape: 'path', points, closed: true, line: outline, fill };
}

export function box(x: number, y: number, width: number, height: number): Box {
  return { x, y, width, height };
}

export function rectangle(fill: FillName | null, outline: LineName | null, b: Box): PathShape {
  const [right, low] = [b.x + b.width, b.y + b.height];
  return area(fill, outline, [point(b.x, b.y), point(right, b.y), point(right, low), point(b.x, low)]);
}

export interface TextLook {
  readonly size: number;
  readonly weight?: Weight;
  readonly anchor?: Anchor;
  readonly ink?: TextInk;
  readonly name?: string;
}

/** A text with the room that its letters take. */
export function text(words: string, at: Point, look: TextLook): TextShape {
  const { size, weight = 'regular', anchor = 'start', ink = 'text' } = look;
  const width = textWidth(words, size, weight);
  const left = { start: at.x, middle: at.x - width / 2, end: at.x - width }[anchor];
  return {
    shape: 'text',
    text: words,
    ...at,
    size,
    weight,
    anchor,
    ink,
    box: box(left, at.y - ASCENT * size, width, (ASCENT + DESCENT) * size),
    ...(look.name === undefined ? {} : { name: look.name }),
  };
}

export function named<S extends Shape>(name: string, shape: S): S {
  return { ...shape, name };
}

/** The same shapes `k` times as large, then moved. Line widths and dashes stay as they are. */
export function placed(shapes: readonly Shape[], by: Point, k = 1): Shape[] {
  const move = (p: Point) => point(p.x * k + by.x, p.y * k + by.y);
  return shapes.map((s) =>
    s.shape === 'path'
      ? { ...s, points: s.points.map(move) }
      : {
          ...s,
          ...move(s),
          size: s.size * k,
          box: { ...move(s.box), width: s.box.width * k, height: s.box.height * k },
        },
  );
}

/** The least box around all points and texts. */
export function boundsOf(shapes: readonly Shape[]): Box {
  const corners = shapes.flatMap((s) =>
    s.shape === 'path'
      ? s.points
      : [point(s.box.x, s.box.y), point(s.box.x + s.box.width, s.box.y + s.box.height)],
  );
  const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return box(left, top, Math.max(...xs) - left, Math.max(...ys) - top);
}
