/** Workings as they read, line by line: what is worked out, its formula, its value and unit. */
import type { WorkingLine } from '../../src/fit/working.ts';

export function told(workings: readonly WorkingLine[]): readonly string[] {
  return workings.map(({ label, formula, result }) => {
    const value = Math.round(result.value * 1e6) / 1e6;
    return `${label}: ${formula} = ${value} ${result.unit}`;
  });
}
