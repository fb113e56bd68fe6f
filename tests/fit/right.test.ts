import { describe, expect, it } from 'vitest';
import { isClose, isRight } from '../../src/fit/right.ts';
import type { LengthUnit } from '../../src/fit/units.ts';
import { type QuantityUnit, quantity, workOut } from '../../src/fit/working.ts';

/** Half of the least mark, either way, is what the eye cannot tell: half a millimetre, or a sixteenth of an inch. */
describe('a figure is right', () => {
  it.each<[QuantityUnit, LengthUnit, number, number, number]>([
    ['cm', 'cm', 40, 40.05, 40.06],
    ['cm', 'in', 16, 16.0625, 16.07],
    ['stitches', 'cm', 110.5, 110.55, 110.56],
    ['rows', 'cm', 28.5, 28.45, 28.44],
    ['times', 'cm', 7.25, 7.3, 7.31],
    ['stitches/cm', 'cm', 2.2, 2.205, 2.206],
    ['rows/cm', 'in', 7.5, 7.495, 7.494],
    ['/cm', 'cm', 0.4, 0.405, 0.406],
    ['ratio', 'cm', 0.75, 0.755, 0.756],
    ['g/cm²', 'cm', 0.04, 0.0405, 0.0406],
    ['cm²', 'cm', 225, 225.5, 225.6],
    ['g', 'cm', 320, 319.5, 319.4],
    ['m', 'cm', 1183, 1183.5, 1183.6],
  ])(
    'in %s (read in %s) within half a mark of %d: %d, and no longer %d',
    (unit, reader, value, just, off) => {
      expect(isClose(just, value, unit, reader, false)).toBe(true);
      expect(isClose(off, value, unit, reader, false)).toBe(false);
    },
  );

  it.each<QuantityUnit>(['stitches', 'rows', 'times'])('to the whole %s where they are whole', (unit) => {
    expect(isClose(220, 220, unit, 'cm', false)).toBe(true);
    expect(isClose(220.04, 220, unit, 'cm', false)).toBe(false);
  });

  it('to the figure itself where the sum was rounded, and within a mark where it was not', () => {
    const given = { a: quantity('width', 41, 'cm'), b: quantity('parts', 2, 'times') };
    const exact = workOut('half of it', 'a / b', given, { unit: 'cm' });
    const rounded = workOut('half of it', 'a / b', given, { unit: 'cm', rounding: { to: 'whole' } });
    expect([isRight(exact, 20.52, 'cm'), isRight(rounded, 21, 'cm'), isRight(rounded, 21.02, 'cm')]).toEqual([
      true,
      true,
      false,
    ]);
  });
});
