import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CM_PER,
  cm,
  formatDecimal,
  formatLength,
  formatTape,
  inches,
  LENGTH_UNITS,
  lengthIn,
  onTape,
  perCm,
  roundHalfUp,
  rows,
  stitches,
} from '../../src/fit/units.ts';

const EIGHTHS: Readonly<Record<string, number>> = {
  '⅛': 1 / 8,
  '¼': 1 / 4,
  '⅜': 3 / 8,
  '½': 1 / 2,
  '⅝': 5 / 8,
  '¾': 3 / 4,
  '⅞': 7 / 8,
};

/** Reads back what `formatTape` printed: a sign, a whole part, a decimal part or a fraction. */
function readBack(printed: string): number {
  const sign = printed.startsWith('−') ? -1 : 1;
  const digits = printed.replace('−', '');
  const fraction = EIGHTHS[digits.slice(-1)];
  return sign * (fraction === undefined ? Number(digits) : Number(digits.slice(0, -1)) + fraction);
}

const unit = fc.constantFrom(...LENGTH_UNITS);

describe('lengths', () => {
  it('count 2.54 cm to the inch, exactly (international yard and pound agreement, 1959)', () => {
    expect(CM_PER.in).toBe(2.54);
    expect(inches(4)).toBeCloseTo(10.16, 12);
    expect(inches(36)).toBeCloseTo(91.44, 12);
  });

  it('show on a tape what was read from it', () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: 300, noNaN: true }), unit, (value, u) => {
        expect(onTape(lengthIn(value, u), u)).toBeCloseTo(value, 10);
      }),
    );
  });

  it('are refused where they are no number', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => cm(bad)).toThrow(RangeError);
  });

  it('do not make a gauge of nothing or less', () => {
    for (const bad of [0, -1, Number.NaN]) expect(() => perCm(bad)).toThrow(RangeError);
  });

  it('do not make stitches or rows of a fraction', () => {
    expect(() => stitches(10.5)).toThrow(RangeError);
    expect(() => rows(Number.NaN)).toThrow(RangeError);
  });
});

describe('a printed length', () => {
  it.each([
    [0, 'in', '0 in'],
    [96.5, 'cm', '96.5 cm'],
    [96.54, 'cm', '96.5 cm'],
    [96.55, 'cm', '96.6 cm'],
    [100, 'cm', '100 cm'],
    [0, 'cm', '0 cm'],
    [-5, 'cm', '−5 cm'],
    [-0.04, 'cm', '0 cm'],
    [38, 'in', '38 in'],
    [18.75, 'in', '18¾ in'],
    [0.5, 'in', '½ in'],
    [-0.125, 'in', '−⅛ in'],
    [-2.5, 'in', '−2½ in'],
    [38.4, 'in', '38.4 in'],
    [53 + 1 / 3, 'in', '53.3 in'],
  ] as const)('of %d %s reads %s', (value, u, printed) => {
    expect(formatLength(lengthIn(value, u), u)).toBe(printed);
  });

  it('reads back as it was typed: tenths in either unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3000, max: 3000 }), unit, (tenths, u) => {
        expect(readBack(formatTape(lengthIn(tenths / 10, u), u))).toBeCloseTo(tenths / 10, 9);
      }),
    );
  });

  it('reads back as it was typed: eighths of an inch', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2400, max: 2400 }), (eighths) => {
        expect(readBack(formatTape(inches(eighths / 8), 'in'))).toBe(eighths / 8);
      }),
    );
  });

  it('is never more than half a tenth from the length', () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: 300, noNaN: true }), unit, (value, u) => {
        expect(Math.abs(readBack(formatTape(lengthIn(value, u), u)) - value)).toBeLessThanOrEqual(
          0.05 + 1e-6,
        );
      }),
    );
  });
});

describe('rounding', () => {
  it.each([
    [0.5, 0, 1],
    [-0.5, 0, -1],
    [1.005, 2, 1.01],
    [178.5, 0, 179],
    [2.4999, 0, 2],
  ])('takes %d to %d places as %d: a half goes away from nought', (value, places, rounded) => {
    expect(roundHalfUp(value, places)).toBe(rounded);
  });

  it('prints no trailing noughts and a true minus sign', () => {
    expect(formatDecimal(5.5, 2)).toBe('5.5');
    expect(formatDecimal(-5.25, 2)).toBe('−5.25');
    expect(formatDecimal(-0.001, 2)).toBe('0');
  });
});
