import { describe, expect, it } from 'vitest';
import { level, piece } from '../../src/fit/outline.ts';
import { areaInAll, areaOf } from '../../src/fit/yarn-area.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** At 20 stitches and 30 rows to 10 cm: 20 cm at the wrist, straight for 5 cm, then 40 cm wide 40 cm further up. */
const SLEEVE = piece('sleeve', 'flat', 'up', [
  level('cuff', 0, 40),
  level('wrist', 15, 40),
  level('upper arm', 135, 80),
]);

describe('the area of a piece', () => {
  it('is that of its sections, each a trapezium, line by line', () => {
    const { area, workings } = areaOf(SLEEVE, over10cm(20, 30));
    // 20 × 5 and (20 + 40) / 2 × 40.
    expect(area).toBeCloseTo(100 + 1200, 9);
    expect(told(workings)).toEqual([
      'area from cuff to wrist: (a + b) / 2 * h = 100 cm²',
      'area from wrist to upper arm: (a + b) / 2 * h = 1200 cm²',
      'area of the sleeve: a1 + a2 = 1300 cm²',
    ]);
  });

  it('counts each piece as often as it is knitted', () => {
    const one = areaOf(SLEEVE, over10cm(20, 30));
    const { area, workings } = areaInAll([
      { area: one, times: 2 },
      { area: { area: 4000, workings: [] }, times: 1 },
    ]);
    expect(area).toBeCloseTo(2 * 1300 + 4000, 9);
    expect(told(workings)).toEqual([
      ...told(one.workings),
      'area of the pieces of one kind: a * n = 2600 cm²',
      'area of the pieces of one kind: a * n = 4000 cm²',
      'area in all: a1 + a2 = 6600 cm²',
    ]);
  });

  it('is nothing where there is nothing', () => {
    expect(areaInAll([]).area).toBe(0);
  });
});
