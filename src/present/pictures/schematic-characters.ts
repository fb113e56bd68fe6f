/**
 * A schematic in plain characters: the outline at the left, wide to scale, and its levels written beside it.
 * `/ | \` is the knitter's own edge, `:` the pattern's where it lies elsewhere, `+` a dart line.
 */
import { type Piece, widthAt } from '../../fit/outline.ts';
import type { PieceChange } from '../../fit/plan.ts';
import type { View } from '../view.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { flatWidth, type PieceFigures } from './piece-figures.ts';
import { lengthWords, levelWords, liesFlat, sectionWords } from './schematic-words.ts';
import { pieceTitle } from './words.ts';

/** Columns of the written part, and at most of the drawn one. */
const WRITTEN = 25;
const MOST_DRAWN = 33;

/** A line of the drawing: the row of knitting that it shows, and what stands beside it. */
interface Row {
  /** Null below or above the piece. */
  readonly height: number | null;
  readonly level: boolean;
  readonly words: string;
}

export function schematicCharacters(figures: PieceFigures, view: View, columns: number): string {
  const { after, before, darts } = figures.change;
  const wide = Math.max(columns, LEAST_COLUMNS);
  // Odd, so that it has a column in its middle.
  const drawn = Math.min(MOST_DRAWN, 2 * Math.floor((wide - WRITTEN - 3) / 2) + 1);
  const written = Math.max(WRITTEN, wide - drawn - 2);
  const rows = rowsOf(figures, view, written);
  return sheetOfCharacters([
    [
      ...wrapColumns(pieceTitle(after.name, after.worked), wide),
      ...wrapColumns(lengthWords(figures, view), wide),
    ],
    rows.map((row, i) => `${outlineAt(rows, i, figures, drawn)}  ${row.words}`),
    wrapColumns(
      `Its width is to scale, ${liesFlat(after.worked)}. / | \\ yours${before === null ? '' : ', : the pattern'}${darts === undefined ? '' : ', + dart lines'}`,
      wide,
    ),
  ]);
}

/** From the top down as it is worn. */
function rowsOf(figures: PieceFigures, view: View, written: number): Row[] {
  const { change } = figures;
  const up = change.after.direction === 'up';
  const order = figures.levels.map((_, i) => i);
  if (up) order.reverse();
  return order.flatMap((index, k) => {
    const level = figures.levels[index];
    if (level === undefined) return [];
    const words = levelWords(level, change.gauge.worked, view);
    const section = figures.sections[up ? index - 1 : index];
    const lines = [
      ...[words.count, words.width, words.plain, words.pattern].flatMap((w) =>
        w === null ? [] : wrapColumns(w, written),
      ),
      ...(section === undefined || section.rows === 0
        ? []
        : ['', `  ${sectionWords(section, change.gauge.worked, view)}`, '']),
    ];
    const from = up ? level.row + level.plain : level.row;
    const next = figures.levels[order[k + 1] ?? -1];
    const to = next === undefined ? null : up ? next.row + next.plain : next.row;
    return lines.map((said, n): Row => {
      const height = n === 0 ? from : to === null ? null : from + ((to - from) * n) / lines.length;
      return { height, level: n === 0, words: said };
    });
  });
}

function outlineAt(rows: readonly Row[], i: number, figures: PieceFigures, drawn: number): string {
  const { change } = figures;
  const row = rows[i];
  if (row === undefined || row.height === null) return ' '.repeat(drawn);
  const widest = Math.max(
    ...[change.after, change.before].flatMap((p) =>
      p === null ? [] : p.levels.map((l) => flatWidth(l.stitches, change)),
    ),
  );
  const middle = (drawn - 1) / 2;
  const half = (piece: Piece, height: number) =>
    Math.round((flatWidth(widthAt(piece, height), change) / widest) * middle);
  const own = half(change.after, row.height);
  const below = rows[i + 1]?.height ?? row.height;
  const cells = Array<string>(drawn).fill(' ');
  const put = (at: number, mark: [string, string]) => {
    cells[Math.round(middle - at)] = mark[0];
    cells[Math.round(middle + at)] = mark[1];
  };
  if (row.level) cells.fill('-', Math.round(middle - own), Math.round(middle + own));
  if (change.before !== null) put(half(change.before, row.height), [':', ':']);
  const dart = dartAt(change, row.height);
  if (dart !== undefined) put(Math.round((2 * dart * middle) / widest), ['+', '+']);
  put(own, slope(own, half(change.after, below)));
  return cells.join('');
}

function slope(here: number, below: number): [string, string] {
  if (here === below) return ['|', '|'];
  return below > here ? ['/', '\\'] : ['\\', '/'];
}

/** From the middle to each dart line at a height in rows, in centimetres; undefined where there is none. */
function dartAt({ darts = [], gauge }: PieceChange, height: number): number | undefined {
  const next = darts.findIndex(({ row }) => row >= height);
  const [from, to] = [darts[Math.max(0, next - 1)], darts[next]];
  if (from === undefined || to === undefined || height < from.row) return undefined;
  const share = to.row === from.row ? 0 : (height - from.row) / (to.row - from.row);
  return (from.fromMiddle + share * (to.fromMiddle - from.fromMiddle)) / gauge.stitchesPerCm;
}
