/** From which the measuring pictures are put together: figures, and lines of the tape over them. */
import { area, type Box, line, named, type Point, point } from '../draw/drawing.ts';
import { smooth, tape, tapeAround } from './curve.ts';
import { sideFigure, trunkFigure } from './figure.ts';
import { landmark, type Shown } from './measuring-picture.ts';

/** Trunk figures at this size fill the picture beside their labels. */
const TRUNK = 80;

export type Tape = Shown['tape'];
type Labels = Shown['labels'];

export function left(p: Point): Point {
  return point(-p.x, p.y);
}

export function trunk(
  view: 'front' | 'back',
  title: string,
  alternative: string,
  lies: Tape,
  labels: Labels,
): Shown {
  return { title, alternative, scale: TRUNK, figure: trunkFigure(view), tape: lies, labels };
}

export function side(title: string, alternative: string, lies: Tape, labels: Labels): Shown {
  return { title, alternative, scale: TRUNK, figure: sideFigure('forward', 'thigh'), tape: lies, labels };
}

export function around(place: Point, depth: number): Tape {
  return (at) => tapeAround(at(left(place)), at(place), depth);
}

/** From point to point over the figure, a landmark at either end. */
export function along(...points: readonly Point[]): Tape {
  const ends = [points[0], points.at(-1)];
  return (at) => [
    ...tape(smooth(points.map(at))),
    ...ends.flatMap((end) => (end === undefined ? [] : landmark(at(end)))),
  ];
}

/** The string that marks the waist, or the height of a landmark. */
export function across(from: Point, to: Point): Tape {
  return (at) => [named('level', line('string', at(from), at(to)))];
}

export function both(...tapes: readonly Tape[]): Tape {
  return (at) => tapes.flatMap((t) => t(at));
}

/** A pencil, or a ruler without its point, that is held level. */
export function pencil({ x, y, width, height }: Box, tip = 0.1): Tape {
  const right = x + width;
  const corners = [
    point(x, y),
    point(right, y),
    point(right + tip, y + height / 2),
    point(right, y + height),
    point(x, y + height),
  ];
  return (at) => [named('level', area('ground', 'figure', corners.map(at)))];
}
