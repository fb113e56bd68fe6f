/** The armhole that a pattern prints, row by row: one bind-off at each side, then decreases at its pace, then straight. */
import { Needle } from '../simulator/needle.ts';
import type { Printed } from './printed.ts';

/** Rows of the armhole, an even number. */
export function armholeRows({ depth, rowsPerCm }: Printed): number {
  return 2 * Math.round((depth * rowsPerCm) / 2 + 1e-9);
}

/** Rows in which a stitch is decreased at both edges. */
export function decreaseRows({ back, cross, boundOff, pace }: Printed): number[] {
  const first = boundOff > 0 ? 3 : 1;
  const times = Math.max(0, (back - cross) / 2 - boundOff);
  return Array.from({ length: times }, (_, i) => first + i * pace);
}

/** A front of the pattern after so many rows of its armhole. */
export function frontAfter(printed: Printed, rows: number): Needle {
  const needle = Needle.castOn(printed.back, 'flat');
  const shaped = new Set(decreaseRows(printed));
  for (let row = 1; row <= rows; row++) {
    if (row <= 2 && printed.boundOff > 0) needle.bindOff(printed.boundOff).finish();
    else if (shaped.has(row)) needle.shaped({ start: -1, end: -1 });
    else needle.finish();
  }
  return needle;
}
