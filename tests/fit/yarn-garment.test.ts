import { describe, expect, it } from 'vitest';
import { cm, perCm, stitches } from '../../src/fit/units.ts';
import { type ShortRows, sweaterArea } from '../../src/fit/yarn-garment.ts';

const SWEATER = { bust: cm(100), length: cm(60), upperArm: cm(36), wrist: cm(20), sleeve: cm(45) };
/** 6 cm deep over 20 cm, and tapering to nothing over 15 cm on either side. */
const HEM: ShortRows = {
  sides: 'both',
  flat: stitches(40),
  steps: [stitches(10), stitches(10), stitches(10)],
  depth: cm(6),
  gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
};

describe('the area of a sweater', () => {
  it('is a tube and two tapered sleeves', () => {
    expect(sweaterArea(SWEATER).area).toBeCloseTo(100 * 60 + 2 * 28 * 45, 9);
  });

  it('grows by the trapezium of each stretch of short rows', () => {
    const more = (...wedges: ShortRows[]) => sweaterArea(SWEATER, wedges).area - sweaterArea(SWEATER).area;
    expect(more(HEM)).toBeCloseTo(((20 + 50) / 2) * 6, 9);
    expect(more({ ...HEM, sides: 'end' })).toBeCloseTo(((20 + 35) / 2) * 6, 9);
    expect(more(HEM, HEM)).toBeCloseTo(2 * more(HEM), 9);
  });

  it('shows the short rows in its workings, a line each, and adds them up', () => {
    const { workings } = sweaterArea(SWEATER, [HEM, HEM]);
    expect(workings.map(({ label }) => label)).toEqual([
      'area of the body',
      'area of one sleeve',
      'area that short rows add',
      'area that short rows add',
      'area in all',
    ]);
    expect(workings.at(-1)?.formula).toBe('a + 2 * b + s1 + s2');
  });
});
