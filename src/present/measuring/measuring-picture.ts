/** A measuring picture put together: title, drawn figure, tape, and labels led to their landmarks. */
import {
  boundsOf,
  type Drawing,
  line,
  named,
  type Point,
  placed,
  point,
  type Shape,
  text,
} from '../draw/drawing.ts';
import { wrapText } from '../draw/font.ts';
import { settle } from '../draw/settle.ts';
import { BODY, LEADING, MARGIN, PICTURE_WIDTH, TITLE } from '../pictures/picture.ts';

/** What a picture shows, in the coordinates of its figure. */
export interface Shown {
  readonly alternative: string;
  readonly title: string;
  /** Units of the drawing for one of the figure. */
  readonly scale: number;
  readonly figure: readonly Shape[];
  /** In units of the drawing already: laid over the figure. Made from a place of the figure by `at`. */
  readonly tape: (at: (p: Point) => Point) => readonly Shape[];
  readonly labels: readonly { readonly words: string; readonly to: Point }[];
}

/** Labels stand to the right of the figure. */
const COLUMN = 300;
const TOP = 48;

export function drawMeasuring(shown: Shown): Drawing {
  const { at, shapes: person, width, height } = personMeasured(shown);
  const left = MARGIN + (COLUMN - 24 - MARGIN - width) / 2;
  const moved = (p: Point) => point(at(p).x + left, at(p).y + TOP);
  const shapes = [
    text(shown.title, point(MARGIN, 26), TITLE),
    ...placed(person, point(left, TOP)),
    ...labels(shown, moved),
  ];
  const bounds = boundsOf(shapes);
  return {
    width: PICTURE_WIDTH,
    height: Math.max(TOP + height, bounds.y + bounds.height) + MARGIN,
    shapes,
  };
}

/** The figure and the tape alone, from the top left of the figure. */
export function figureAlone(shown: Shown): Drawing {
  const { shapes } = personMeasured(shown);
  const bounds = boundsOf(shapes);
  return { width: bounds.width, height: bounds.height, shapes: placed(shapes, point(-bounds.x, -bounds.y)) };
}

function personMeasured({ figure, scale, tape }: Shown) {
  const { x, y, width, height } = boundsOf(figure);
  const at = (p: Point) => point((p.x - x) * scale, (p.y - y) * scale);
  const shapes = [...placed(figure, at(point(0, 0)), scale), ...tape(at)];
  return { at, shapes, width: width * scale, height: height * scale };
}

function labels(shown: Shown, at: (p: Point) => Point): Shape[] {
  const made = shown.labels
    .map(({ words, to }) => ({
      lines: wrapText(words, PICTURE_WIDTH - MARGIN - COLUMN, BODY.size),
      to: at(to),
    }))
    .sort((a, b) => a.to.y - b.to.y);
  const wanted = made.map((m) => ({ middle: m.to.y, length: LEADING * m.lines.length }));
  const middles = settle(wanted, 8);
  return made.flatMap(({ lines, to }, i) => {
    const top = (middles[i] ?? 0) - (LEADING * lines.length) / 2;
    return [
      named('leader', line('leader', to, point(COLUMN - 18, to.y), point(COLUMN - 5, top + LEADING / 2))),
      ...lines.map((l, n) => text(l, point(COLUMN, top + LEADING * (n + 0.76)), BODY)),
    ];
  });
}

/** A landmark: a dot in a ring of ground. */
export function landmark(p: Point): Shape[] {
  const ring = (r: number) =>
    Array.from({ length: 16 }, (_, i) =>
      point(p.x + r * Math.cos((i * Math.PI) / 8), p.y + r * Math.sin((i * Math.PI) / 8)),
    );
  const dot = (r: number, fill: 'ground' | 'strong'): Shape => ({
    shape: 'path',
    points: ring(r),
    closed: true,
    line: null,
    fill,
  });
  return [dot(5, 'ground'), dot(3.6, 'strong')];
}
