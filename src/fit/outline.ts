/**
 * A piece as a list of levels, each so many rows above the start of knitting and so many stitches wide.
 * Between two levels lies a section. Nearly every alteration builds that list anew.
 */
import { type Rows, rows, type Stitches, stitches } from './units.ts';
import type { Direction, LevelName, PieceName, Worked } from './words.ts';

export interface Level {
  readonly name: LevelName;
  /** Rows knitted from the start of the piece up to and including this level. The first level is at 0. */
  readonly row: Rows;
  readonly stitches: Stitches;
}

/** Levels in the order of knitting: from the cast-on, whichever way the piece grows. */
export interface Piece {
  readonly name: PieceName;
  readonly worked: Worked;
  readonly direction: Direction;
  readonly levels: readonly Level[];
}

/** What lies between two neighbouring levels. */
export interface Section {
  readonly from: Level;
  readonly to: Level;
  readonly rows: Rows;
  /** Stitches gained (positive) or lost (negative) on the way. */
  readonly change: number;
}

/** Builds a piece, or throws where levels are out of order, start above row 0, or a count is not positive. */
export function piece(
  name: PieceName,
  worked: Worked,
  direction: Direction,
  levels: readonly Level[],
): Piece {
  if (levels[0]?.row !== 0) throw new RangeError(`the first level of a ${name} lies at row 0`);
  levels.forEach((level, i) => {
    const before = levels[i - 1];
    if (before !== undefined && level.row < before.row) {
      throw new RangeError(`${level.name} (row ${level.row}) lies below ${before.name} (row ${before.row})`);
    }
    if (level.stitches < 1) throw new RangeError(`${level.name} needs at least one stitch`);
  });
  return { name, worked, direction, levels };
}

export function level(name: LevelName, row: number, count: number): Level {
  return { name, row: rows(row), stitches: stitches(count) };
}

export function sections(p: Piece): readonly Section[] {
  return p.levels.slice(1).map((to, i) => {
    const from = p.levels[i] as Level;
    return { from, to, rows: rows(to.row - from.row), change: to.stitches - from.stitches };
  });
}

/** The stitch count on the needle after `row` rows if every section changed evenly; for drawings and rechecks. */
export function widthAt(p: Piece, row: number): number {
  const above = p.levels.findIndex((l) => l.row >= row);
  const to = p.levels[above];
  if (to === undefined) return p.levels.at(-1)?.stitches ?? 0;
  const from = p.levels[above - 1];
  if (from === undefined) return to.stitches;
  return from.stitches + ((to.stitches - from.stitches) * (row - from.row)) / (to.row - from.row);
}
