/**
 * What a shaping line says, clause by clause, and why one may be impossible to read.
 */

/** How often a run of shaping rows is worked. */
export type Often =
  /** So many times after whatever came before. */
  | { readonly count: 'times'; readonly times: number }
  /** 'next row and every 8th row 6 times': with the row before or after it. */
  | { readonly count: 'times, first perhaps counted in'; readonly times: number }
  /** So many shaping rows together with all that came before. */
  | { readonly count: 'in all'; readonly times: number }
  /** Until so many stitches are left. */
  | { readonly count: 'until'; readonly stitches: number }
  /** As often as the rows stated for the whole line allow. */
  | { readonly count: 'within'; readonly rows: number };

/** Stitches that one shaping row changes, and which way; undefined where the line does not say. */
export interface Effect {
  readonly by: 'increase' | 'decrease' | undefined;
  readonly perRow: number | undefined;
  /** The line says where, and so how often on the row; else `perRow` may be more than it says. */
  readonly placed: boolean;
}

export type Clause =
  /** Shaping on so many rows in succession, from the next row on. */
  | { readonly kind: 'next'; readonly rows: number; readonly effect: Effect }
  /** Shaping on the row of that number, counted from the start of the line. */
  | { readonly kind: 'row'; readonly row: number; readonly effect: Effect }
  /** Shaping on every Nth row; two intervals take turns. */
  | {
      readonly kind: 'run';
      readonly every: readonly number[];
      readonly often: Often;
      readonly effect: Effect;
    }
  | { readonly kind: 'plain'; readonly rows: number };

export interface Line {
  readonly clauses: readonly Clause[];
  /** The line goes on from a shaping row that has just been worked: 'repeat the decrease row every …'. */
  readonly goesOn: boolean;
  /** Stitches that the line itself names for before and after it. */
  readonly start: number | undefined;
  readonly end: number | undefined;
}

/** Why a shaping line cannot be read, each with a line that can. */
export const LINE_REFUSALS = {
  'nothing to read': 'decrease 1 st at each end of every 6th row 5 times',
  'word not known': 'decrease 1 st at each end of next row and every foll 8th row 6 more times',
  'number without a meaning': 'every 6th row 5 times, then every 4th row 10 times',
  'no rows named': 'every 6th row 5 times',
  'how often is missing': 'every 6th row 5 times',
  'count at the start is missing': '46 sts, increase 1 st at each end of every 6th row to 74 sts',
  'stitches a row are missing': '46 sts, increase 1 st at each end of every 6th row to 74 sts',
  'count is never reached': '60 sts, decrease 1 st at each end of every 4th row until 40 sts remain',
  'count is shared by two lines':
    'decrease 1 st at armhole edge of next 5 rows, at the same time 1 st at neck edge of next 3 rows',
  'rows run backward': '3rd and 7th row, then every foll 6th row 4 times',
} as const;
export type LineRefusal = keyof typeof LINE_REFUSALS;

/** Thrown inside the reader and turned into a value by it. */
export class Unreadable extends Error {
  readonly reason: LineRefusal;
  readonly word: string | undefined;
  constructor(reason: LineRefusal, word?: string) {
    super(reason);
    this.reason = reason;
    this.word = word;
  }
}
