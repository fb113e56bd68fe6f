/** Curves as lines of many points, and a measuring tape laid along them. */
import { line, named, type Point, point, type Shape } from '../draw/drawing.ts';

/** Points between two that are given. */
const SAMPLES = 8;

/** A smooth line through all points in turn: Catmull–Rom splines of uniform spacing. */
export function smooth(points: readonly Point[]): Point[] {
  const at = (i: number) => points[Math.min(points.length - 1, Math.max(0, i))] ?? point(0, 0);
  const last = points.at(-1);
  const between = points.slice(1).flatMap((_, i) => {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return Array.from({ length: SAMPLES }, (_, k) => spline(a, b, c, d, k / SAMPLES));
  });
  return last === undefined ? [] : [...between, last];
}

/** The same around a closed outline. */
export function smoothAround(points: readonly Point[]): Point[] {
  const at = (i: number) => points[(i + points.length) % points.length] ?? point(0, 0);
  return points.flatMap((_, i) =>
    Array.from({ length: SAMPLES }, (_, k) => spline(at(i - 1), at(i), at(i + 1), at(i + 2), k / SAMPLES)),
  );
}

function spline(a: Point, b: Point, c: Point, d: Point, t: number): Point {
  const along = (p: number, q: number, r: number, s: number) =>
    0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t ** 2 + (3 * q - p - 3 * r + s) * t ** 3);
  return point(along(a.x, b.x, c.x, d.x), along(a.y, b.y, c.y, d.y));
}

/** Part of an ellipse around `middle`, from one angle to another in degrees, clockwise from the right. */
export function arc(middle: Point, rx: number, ry: number, from: number, to: number): Point[] {
  return Array.from({ length: 49 }, (_, i) => {
    const angle = ((from + ((to - from) * i) / 48) * Math.PI) / 180;
    return point(middle.x + rx * Math.cos(angle), middle.y + ry * Math.sin(angle));
  });
}

export function mirrored(points: readonly Point[]): Point[] {
  return points.map((p) => point(-p.x, p.y));
}

/** A tape along a line, with its marks. */
export function tape(points: readonly Point[]): Shape[] {
  return [named('tape', line('tape', ...points)), ...marks(points, 7)];
}

/** A tape around something round, seen slightly from above: in front it is seen, behind it is hidden. */
export function tapeAround(left: Point, right: Point, depth: number): Shape[] {
  const middle = point((left.x + right.x) / 2, (left.y + right.y) / 2);
  const [rx, slant] = [(right.x - left.x) / 2, (right.y - left.y) / 2];
  const tilted = (from: number, to: number) =>
    arc(middle, rx, depth, from, to).map((p) =>
      point(p.x, p.y + (slant * (p.x - middle.x)) / Math.max(rx, 1)),
    );
  return [line('hidden', ...tilted(180, 360)), ...tape(tilted(180, 0))];
}

/** Short strokes across a line, so far apart. */
function marks(points: readonly Point[], apart: number): Shape[] {
  const shapes: Shape[] = [];
  let left = apart / 2;
  points.slice(1).forEach((to, i) => {
    const from = points[i] ?? to;
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    for (; left <= long && long > 0; left += apart) {
      const [dx, dy] = [(to.x - from.x) / long, (to.y - from.y) / long];
      const on = point(from.x + dx * left, from.y + dy * left);
      shapes.push(
        line('marks', point(on.x - dy * 2.2, on.y + dx * 2.2), point(on.x + dy * 0.4, on.y - dx * 0.4)),
      );
    }
    left -= long;
  });
  return shapes;
}
