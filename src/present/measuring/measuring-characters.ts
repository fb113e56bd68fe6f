/**
 * A measuring picture in plain characters: the figure in strokes, `#` for the tape, `.` for what is hidden or marks a
 * level, and a number at each landmark whose words stand below.
 */
import { boundsOf, type PathShape, type Point, point, type Shape } from '../draw/drawing.ts';
import type { LineName } from '../draw/palette.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from '../pictures/characters.ts';
import type { Shown } from './measuring-picture.ts';

/** No figure is drawn wider: its lines would stand too far apart. */
const WIDEST = 44;
const TALLEST = 36;
/** A character is about twice as tall as it is wide. */
const TALL = 2;

export function measuringCharacters(shown: Shown, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  const { x, y, width, height } = boundsOf(shown.figure);
  const k = Math.min((Math.min(WIDEST, wide) - 1) / width, (TALLEST * TALL) / height);
  const toGrid = (p: Point) => point((p.x - x) * k, ((p.y - y) * k) / TALL);
  // The tape is laid in the units of the drawing, then brought to the grid as well.
  const large = (p: Point) => point(p.x * shown.scale, p.y * shown.scale);
  const small = (p: Point) => toGrid(point(p.x / shown.scale, p.y / shown.scale));
  const grid = new Grid();
  for (const path of pathsOf(shown.figure, toGrid)) grid.draw(path, true);
  for (const path of pathsOf(shown.tape(large), small)) grid.draw(path, false);
  shown.labels.forEach(({ to }, i) => {
    grid.put(toGrid(to), String(i + 1));
  });
  return sheetOfCharacters([
    wrapColumns(shown.title, wide),
    grid.lines(),
    shown.labels.flatMap(({ words }, i) => wrapColumns(`${i + 1} ${words}`, wide)),
    wrapColumns(`# the tape. ${shown.alternative}`, wide),
  ]);
}

function pathsOf(shapes: readonly Shape[], to: (p: Point) => Point): PathShape[] {
  return shapes.flatMap((s) => (s.shape === 'path' ? [{ ...s, points: s.points.map(to) }] : []));
}

/** Cells that grow as they are written to; x and y are rounded to the nearest. */
class Grid {
  private readonly rows: string[][] = [];

  put({ x, y }: Point, mark: string): void {
    const [column, row] = [Math.max(0, Math.round(x)), Math.max(0, Math.round(y))];
    while (this.rows.length <= row) this.rows.push([]);
    const cells = this.rows[row] ?? [];
    while (cells.length <= column) cells.push(' ');
    cells[column] = mark;
  }

  /** `covers`: what lies inside a filled path is hidden by it. */
  draw(path: PathShape, covers: boolean): void {
    if (covers && path.fill !== null) this.clear(path.points);
    if (path.line === null || path.line === 'marks') return;
    const points = path.closed ? [...path.points, ...path.points.slice(0, 1)] : path.points;
    const { line } = path;
    thinned(points).forEach((to, i, all) => {
      this.stroke(all[i - 1] ?? to, to, line);
    });
  }

  private stroke(from: Point, to: Point, line: LineName): void {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const steps = Math.max(1, Math.ceil(3 * Math.max(Math.abs(dx), Math.abs(dy))));
    for (let i = 0; i <= steps; i++)
      this.put(point(from.x + (dx * i) / steps, from.y + (dy * i) / steps), markOf(line, dx, dy));
  }

  /** What lies inside is covered. */
  private clear(outline: readonly Point[]): void {
    this.rows.forEach((cells, y) => {
      cells.forEach((_, x) => {
        if (inside(point(x, y), outline)) cells[x] = ' ';
      });
    });
  }

  lines(): string[] {
    return this.rows.map((cells) => cells.join(''));
  }
}

/** Without the points that lie less than a cell from the one before: their slopes say nothing. */
function thinned(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  points.forEach((p, i) => {
    const last = kept.at(-1);
    const far = last === undefined || Math.hypot(p.x - last.x, p.y - last.y) >= 1;
    if (far || i === points.length - 1) kept.push(p);
  });
  return kept;
}

function markOf(line: LineName, dx: number, dy: number): string {
  if (line === 'tape') return '#';
  if (line === 'hidden' || line === 'string') return '.';
  const slope = Math.abs(dy) * TALL;
  if (slope < 0.45 * Math.abs(dx)) return '-';
  if (slope > 2.6 * Math.abs(dx)) return '|';
  return dx * dy > 0 ? '\\' : '/';
}

/** Even-odd: a ray to the right crosses the outline an odd number of times. */
function inside(p: Point, outline: readonly Point[]): boolean {
  let crossings = 0;
  outline.forEach((b, i) => {
    const a = outline.at(i - 1) ?? b;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y)) crossings += 1;
  });
  return crossings % 2 === 1;
}
