/**
 * Where the shaping rounds of a round yoke lie and how much each takes. Places are shares of the yoke's depth counted
 * from the underarm, so that they scale with it; takes are parts of the whole change.
 */
import type { Rows, Stitches } from './units.ts';
import type { Direction } from './words.ts';

export interface SchemeRound {
  readonly at: number;
  readonly part: number;
}
export type YokeScheme = readonly SchemeRound[];

/**
 * Three rounds at half, three quarters and the top of the yoke. Where the neck is 8/27 of the underarm each keeps two
 * thirds, as published in Knitting Without Tears, 1971: the parts of the whole change are then 9, 6 and 4.
 */
export const THREE_ROUNDS: YokeScheme = [
  { at: 1 / 2, part: 9 },
  { at: 3 / 4, part: 6 },
  { at: 1, part: 4 },
];

/**
 * The same three places; where the neck is 3/10 of the underarm three quarters, two thirds and three fifths are kept in
 * turn, as published in Knitting Around, 1989: the parts of the whole change are then 5, 5 and 4.
 */
export const LATER_THREE_ROUNDS: YokeScheme = [
  { at: 1 / 2, part: 5 },
  { at: 3 / 4, part: 5 },
  { at: 1, part: 4 },
];

/** So many rounds, equally far apart and equal in what they take, the last at the neck. */
export function evenly(rounds: number): YokeScheme {
  return Array.from({ length: rounds }, (_, i) => ({ at: (i + 1) / rounds, part: 1 }));
}

/** Rounds as a pattern prints them, in the order of knitting, with the stitches after each. */
export interface PrintedRounds {
  readonly direction: Direction;
  /** Of the whole yoke. */
  readonly rows: Rows;
  /** Before its first round. */
  readonly before: Stitches;
  readonly rounds: readonly { readonly round: Rows; readonly after: Stitches }[];
}

/** A round lies outside the yoke or not after the one before, or its count goes the wrong way. */
export interface RoundsWrong {
  readonly kind: 'rounds out of order';
  /** Which of them, counted from 1. */
  readonly nth: number;
}

/** A pattern's own rounds, for knitting them over another number of rows. */
export function asPattern({ direction, rows, before, rounds }: PrintedRounds): YokeScheme | RoundsWrong {
  const up = direction === 'up';
  const scheme: SchemeRound[] = [];
  let [last, count] = [0, before as number];
  for (const [i, { round, after }] of rounds.entries()) {
    const part = up ? count - after : after - count;
    if (round <= last || round > rows || part <= 0) return { kind: 'rounds out of order', nth: i + 1 };
    scheme.push({ at: (up ? round : rows - round + 1) / rows, part });
    [last, count] = [round, after];
  }
  return up ? scheme : scheme.reverse();
}
