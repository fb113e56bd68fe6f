/**
 * What a picture of a piece has to say: its levels with counts and widths, its sections with rows and lengths, and how
 * the pattern has them. Drawing, words and characters are all made from this, so that they say the same.
 */
import type { Level, Piece } from '../../fit/outline.ts';
import type { PieceChange } from '../../fit/plan.ts';
import { type Cm, cm } from '../../fit/units.ts';
import type { LevelName } from '../../fit/words.ts';

export interface LevelFigures {
  readonly name: string;
  /** Rows from the start of knitting; `plain` rows more are knitted on the same count. */
  readonly row: number;
  readonly plain: number;
  readonly stitches: number;
  /** Finished, edge stitches left out: all round where the piece is knitted in the round. */
  readonly width: Cm;
  /** Null where there is no pattern outline; 'none' where the pattern states nothing at this level. */
  readonly pattern: { readonly stitches: number; readonly width: Cm } | 'none' | null;
  readonly changed: boolean;
}

export interface SectionFigures {
  readonly rows: number;
  readonly length: Cm;
}

export interface PieceFigures {
  readonly change: PieceChange;
  /** In the order of knitting; `sections[i]` leads from level i to level i + 1. */
  readonly levels: readonly LevelFigures[];
  readonly sections: readonly SectionFigures[];
  readonly rows: number;
  readonly length: Cm;
  readonly patternRows: number | null;
}

export function pieceFigures(change: PieceChange): PieceFigures {
  const { before, after } = change;
  const groups = grouped(after);
  const levels = groups.map(([first, last]): LevelFigures => {
    const pattern = patternAt(change, first.name, after.levels.indexOf(first));
    return {
      name: levelName(after, first === after.levels[0] ? first : last),
      row: first.row,
      plain: last.row - first.row,
      stitches: first.stitches,
      width: widthOf(first.stitches, change),
      pattern,
      changed: pattern !== null && (pattern === 'none' || pattern.stitches !== first.stitches),
    };
  });
  const sections = levels.slice(1).map((to, i) => {
    const from = levels[i];
    return section(to.row - (from === undefined ? 0 : from.row + from.plain), change);
  });
  const rows = rowsOf(after);
  return {
    change,
    levels,
    sections,
    rows,
    length: lengthOf(rows, change),
    patternRows: before === null ? null : rowsOf(before),
  };
}

/** Neighbouring levels of one name and count, or in one row with one count, as one; the piece's ends stay by themselves. */
function grouped(piece: Piece): readonly (readonly [first: Level, last: Level])[] {
  const groups: [Level, Level][] = [];
  for (const level of piece.levels) {
    const group = groups.at(-1);
    const same = group !== undefined && group[0].stitches === level.stitches;
    const alike = same && group[0].name === level.name && level !== piece.levels.at(-1);
    if (alike || (same && group[1].row === level.row)) group[1] = level;
    else groups.push([level, level]);
  }
  return groups;
}

function patternAt(change: PieceChange, name: LevelName, index: number): LevelFigures['pattern'] {
  const { before, after } = change;
  if (before === null) return null;
  // Knitted down, a hem ends where the piece ends: the last of that name is not the first.
  const nth = after.levels.slice(0, index).filter((l) => l.name === name).length;
  const theirs = before.levels.filter((l) => l.name === name);
  const level = theirs[Math.min(nth, theirs.length - 1)];
  if (level === undefined) return 'none';
  return { stitches: level.stitches, width: widthOf(level.stitches, change) };
}

export function widthOf(stitches: number, { gauge, edge }: PieceChange): Cm {
  return cm(Math.max(0, stitches - edge) / gauge.stitchesPerCm);
}

export function lengthOf(rows: number, { gauge }: PieceChange): Cm {
  return cm(rows / gauge.rowsPerCm);
}

function section(rows: number, change: PieceChange): SectionFigures {
  return { rows, length: lengthOf(rows, change) };
}

export function rowsOf(piece: Piece): number {
  return piece.levels.at(-1)?.row ?? 0;
}

/** Width as it lies flat: half of what goes round, or the whole of a flat piece. */
export function flatWidth(stitches: number, change: PieceChange): number {
  return widthOf(stitches, change) / (change.gauge.worked === 'round' ? 2 : 1);
}

function levelName(piece: Piece, level: Level): string {
  const last = level === piece.levels.at(-1);
  switch (level.name) {
    case 'cast-on':
      return 'cast-on edge';
    case 'hem':
      return last && piece.direction === 'down' ? 'lower edge' : 'top of the hem';
    case 'cuff':
      return 'top of the cuff';
    case 'wrist':
      return last && piece.direction === 'down' ? 'cuff edge' : 'wrist';
    default:
      return level.name;
  }
}
