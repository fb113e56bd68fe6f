/** Patterns with one figure of one size replaced, as a slip of the pen would. */
import type { Counted, Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import type { Region } from '../../src/fit/words.ts';

export function withSize(
  pattern: Pattern,
  label: string,
  change: (size: PatternSize) => PatternSize,
): Pattern {
  return { ...pattern, sizes: pattern.sizes.map((s) => (s.label === label ? change(s) : s)) };
}

export function withCount(pattern: Pattern, label: string, place: Counted, value: number): Pattern {
  return withSize(pattern, label, (s) => ({ ...s, counts: { ...s.counts, [place]: stitches(value) } }));
}

export function withLength(pattern: Pattern, label: string, region: Region, value: number): Pattern {
  return withSize(pattern, label, (s) => ({ ...s, finished: { ...s.finished, [region]: cm(value) } }));
}

/** One size alone, so that the order of sizes does not come into it. */
export function only(pattern: Pattern, label: string): Pattern {
  return { ...pattern, sizes: pattern.sizes.filter((s) => s.label === label) };
}
