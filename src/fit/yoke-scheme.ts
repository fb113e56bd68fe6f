/**
 * Where the shaping rounds of a round yoke lie and how much each takes. Places are shares of the yoke's depth counted
 * from the underarm, so that they scale with it; takes are parts of the whole change.
 */
import type { Rows, Stitches } from './units.ts';

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

/** So many rounds, equally far apart and equal in what they take, the last at the neck. */
export function evenly(rounds: number): YokeScheme {
  return Array.from({ length: rounds }, (_, i) => ({ at: (i + 1) / rounds, part: 1 }));
}

/** A pattern's own rounds, for knitting them over another number of rows; counted from the underarm. */
export function asPattern(
  yokeRows: Rows,
  rounds: readonly { readonly round: Rows; readonly takes: Stitches }[],
): YokeScheme {
  return rounds.map(({ round, takes }) => ({ at: round / yokeRows, part: takes }));
}
