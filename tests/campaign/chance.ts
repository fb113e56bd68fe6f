/** Chance that can be had again: the same seed gives the same draws. */

export interface Chance {
  /** From nought up to, not with, `below`. */
  readonly whole: (below: number) => number;
  readonly often: (share: number) => boolean;
  readonly one: <T>(of: readonly [T, ...T[]]) => T;
}

export function chance(seed: number): Chance {
  let state = seed >>> 0;
  // Mulberry32: a short generator in the public domain, from memory; plenty for choosing what to say next.
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (below: number) => Math.floor(next() * below);
  return {
    whole,
    often: (share) => next() < share,
    one: (of) => of[whole(of.length)] ?? of[0],
  };
}
