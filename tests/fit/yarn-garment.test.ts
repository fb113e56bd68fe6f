import { describe, expect, it } from 'vitest';
import { cm } from '../../src/fit/units.ts';
import { sweaterArea } from '../../src/fit/yarn-garment.ts';

const SWEATER = { bust: cm(100), length: cm(60), upperArm: cm(36), wrist: cm(20), sleeve: cm(45) };

describe('the area of a sweater', () => {
  it('is a tube and two tapered sleeves', () => {
    expect(sweaterArea(SWEATER).area).toBeCloseTo(100 * 60 + 2 * 28 * 45, 9);
  });

  it('is added up in its workings', () => {
    expect(sweaterArea(SWEATER).workings.map(({ label, formula }) => `${label}: ${formula}`)).toEqual([
      'area of the body: a * b',
      'area of one sleeve: (a + b) / 2 * c',
      'area in all: a + 2 * b',
    ]);
  });
});
