import { describe, expect, it } from 'vitest';
import { decimalsOf, inUnit } from '../../src/fit/in-unit.ts';
import { QUANTITY_UNITS } from '../../src/fit/working.ts';

/** 1 in = 2.54 cm and 1 yd = 0.9144 m exactly: the international yard, agreed in 1959. */
describe('a figure in inches', () => {
  it.each([
    ['a length', 25.4, 'cm', 10],
    ['an area', 6.4516, 'cm²', 1],
    ['a gauge of stitches', 2, 'stitches/cm', 5.08],
    ['a gauge of rows', 3, 'rows/cm', 7.62],
    ['a rate', 1, '/cm', 2.54],
    ['a weight to the area', 1, 'g/cm²', 6.4516],
    ['a length of yarn, in yards', 91.44, 'm', 100],
    ['a weight', 50, 'g', 50],
    ['a count of stitches', 220, 'stitches', 220],
    ['a count of rows', 120, 'rows', 120],
    ['a count', 3, 'times', 3],
    ['a share', 0.5, 'ratio', 0.5],
  ] as const)('%s', (_, value, of, inches) => {
    expect(inUnit(value, of, 'in')).toBeCloseTo(inches, 9);
    expect(inUnit(value, of, 'cm')).toBe(value);
  });
});

describe('the decimals that are shown', () => {
  it('are two, three of rates and shares, four of a weight to the area', () => {
    const three = ['stitches/cm', 'rows/cm', '/cm', 'ratio'];
    for (const unit of QUANTITY_UNITS)
      expect([unit, decimalsOf(unit)]).toEqual([unit, unit === 'g/cm²' ? 4 : three.includes(unit) ? 3 : 2]);
  });
});
