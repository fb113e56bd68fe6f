/** Figures of a result that stand in none of its workings, as a quantity put in or as a result. */
import type { WorkingLine } from '../../src/fit/working.ts';

export function unstated(
  figures: Readonly<Record<string, number>>,
  workings: readonly WorkingLine[],
): string[] {
  const stated = workings.flatMap((line) => [line.result, ...Object.values(line.given)].map((q) => q.value));
  return Object.keys(figures).filter(
    (name) => !stated.some((value) => Math.abs(value - (figures[name] ?? 0)) < 1e-9),
  );
}
