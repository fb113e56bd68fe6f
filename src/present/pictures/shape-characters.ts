/** Shapes to scale in plain characters: a cell is half as wide as it is high. */
import { boundsOf, type PathShape, type Point } from '../draw/drawing.ts';
import type { LineName } from '../draw/palette.ts';
import type { KeyEntry } from './key.ts';
import type { ToScale } from './to-scale.ts';

/** Cells at most. */
const MOST = { columns: 64, rows: 22 } as const;

/** Kinds of line with a mark of their own; the knitter's own line runs as its slope is. */
const MARKS: Partial<Readonly<Record<LineName, string>>> = {
  pattern: ':',
  second: '*',
  leader: '.',
  string: '!',
};
const OWN = '/ | \\ -';

export function inCharacters({ shapes, names }: ToScale, columns: number): string[] {
  const paths = shapes.flatMap((s) => (s.shape === 'path' && s.line !== null && drawn(s.line) ? [s] : []));
  const bounds = boundsOf(paths);
  const wide = Math.min(columns, MOST.columns) - 1;
  const perCm = Math.min(wide / bounds.width, (2 * (MOST.rows - 1)) / bounds.height);
  const column = (x: number) => Math.round((x - bounds.x) * perCm);
  const cells = Array.from({ length: Math.round((bounds.height * perCm) / 2) + 1 }, () =>
    Array<string>(wide + 1).fill(' '),
  );
  const ordered = [...paths].sort((a, b) => Number(a.line === 'yours') - Number(b.line === 'yours'));
  for (const path of ordered)
    for (const { x, y, mark } of traced(path, (p) => ({
      x: column(p.x),
      y: Math.round(((p.y - bounds.y) * perCm) / 2),
    }))) {
      const row = cells[y];
      if (row !== undefined) row[x] = mark;
    }
  const under = nameLine(
    names.map((n) => ({ words: n.words, middle: column(n.x) })),
    wide + 1,
  );
  return [...cells.map((row) => row.join('')), ...under];
}

function drawn(line: LineName): boolean {
  return line === 'yours' || MARKS[line] !== undefined;
}

/** '/ | \ - yours, : the pattern' */
export function keyInCharacters(key: readonly KeyEntry[]): string {
  return key.map(({ line, words }) => `${MARKS[line] ?? OWN} ${words}`).join(', ');
}

interface Cell {
  readonly x: number;
  readonly y: number;
}

/** Every cell through which the line goes, with its mark: the knitter's own by the way from the cell before to the one after. */
function traced(path: PathShape, cell: (p: Point) => Cell): (Cell & { mark: string })[] {
  const points = path.closed ? [...path.points, ...path.points.slice(0, 1)] : path.points;
  const cells = points.slice(1).flatMap((to, i) => between(cell(points[i] ?? to), cell(to)));
  const way = cells.filter(({ x, y }, i) => x !== cells[i - 1]?.x || y !== cells[i - 1]?.y);
  const mark = path.line === null ? '' : (MARKS[path.line] ?? '');
  return way.map((at, i) => {
    const [from, to] = [way[i - 1] ?? at, way[i + 1] ?? at];
    return { ...at, mark: path.line === 'yours' ? sloped(to.x - from.x, to.y - from.y) : mark };
  });
}

function between(a: Cell, b: Cell): Cell[] {
  const steps = Math.max(Math.abs(b.x - a.x), Math.abs(b.y - a.y), 1);
  return Array.from({ length: steps + 1 }, (_, k) => ({
    x: Math.round(a.x + ((b.x - a.x) * k) / steps),
    y: Math.round(a.y + ((b.y - a.y) * k) / steps),
  }));
}

function sloped(dx: number, dy: number): string {
  if (dy === 0) return '-';
  if (dx === 0) return '|';
  return dx * dy > 0 ? '\\' : '/';
}

function nameLine(
  names: readonly { readonly words: string; readonly middle: number }[],
  wide: number,
): string[] {
  if (names.length === 0) return [];
  let line = '';
  for (const { words, middle } of names) {
    const from = Math.min(Math.max(Math.round(middle - words.length / 2), 0), wide - words.length);
    line = `${line.padEnd(line === '' ? from : Math.max(from, line.length + 1))}${words}`;
  }
  return line.length <= wide ? [line] : [names.map((n) => n.words).join(', ')];
}
