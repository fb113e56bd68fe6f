import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type EasedRegion,
  easeAmount,
  easedWidth,
  easeLine,
  easeOf,
  easeTable,
  fitOf,
  MEASURED_AT,
} from '../../src/fit/ease.ts';
import { cm, inches } from '../../src/fit/units.ts';
import { FITS } from '../../src/fit/words.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from './plain-pattern.ts';

const REGIONS_EASED = Object.keys(MEASURED_AT) as EasedRegion[];

/**
 * Source: Craft Yarn Council's www.YarnStandards.com, Standards & Guidelines for Crochet and Knitting, 2015 and later;
 * names read at second hand, figures from memory. The published centimetres are rounded: up to 0.25 cm from the inches.
 */
describe('the published ease at the bust', () => {
  it.each([
    ['very close', -4, -2, -10, -5],
    ['close', 0, 0, 0, 0],
    ['classic', 2, 4, 5, 10],
    ['loose', 4, 6, 10, 15],
    ['oversized', 6, null, 15, null],
  ] as const)('of %s is %d to %s in', (fit, least, most, leastCm, mostCm) => {
    const amount = easeAmount('bust', fit);
    expect(amount.least).toBeCloseTo(inches(least), 9);
    expect(Math.abs(amount.least - leastCm)).toBeLessThanOrEqual(0.25);
    expect(amount.most === null).toBe(most === null);
    if (amount.most !== null) expect(Math.abs(amount.most - (mostCm ?? 0))).toBeLessThanOrEqual(0.25);
  });
});

describe('ease of any region', () => {
  it.each(REGIONS_EASED)('at the %s never falls from a closer fit to a looser one', (region) => {
    const aims = FITS.map((fit) => easeAmount(region, fit).aim);
    expect(aims).toEqual([...aims].sort((a, b) => a - b));
  });

  it.each(REGIONS_EASED)('at the %s is worked to within its own range', (region) => {
    for (const fit of FITS) {
      const { least, most, aim } = easeAmount(region, fit);
      expect(aim).toBeGreaterThanOrEqual(least);
      if (most !== null) expect(aim).toBeLessThanOrEqual(most);
    }
  });

  it("is not scaled from the bust's: a classic upper arm takes 1½ in, whatever the bust takes", () => {
    expect(easedWidth('upper arm', inches(12), 'classic').result.value).toBeCloseTo(inches(13.5), 9);
  });

  it('gives back the ease that was put in', () => {
    const length = fc.double({ min: 5, max: 200, noNaN: true });
    fc.assert(
      fc.property(length, fc.double({ min: -15, max: 40, noNaN: true }), (body, ease) => {
        const finished = easeLine('hip', cm(body), cm(ease)).result.value;
        expect(easeOf('hip', cm(finished), cm(body)).result.value).toBeCloseTo(ease, 9);
      }),
    );
  });
});

describe('an amount of ease', () => {
  it.each([
    [-3, 'very close'],
    [0, 'close'],
    [3, 'classic'],
    [5, 'loose'],
    [10, 'oversized'],
    // Between or on the edge of two fits: the nearer, and of two as near the looser.
    [-0.5, 'close'],
    [1, 'classic'],
    [4, 'loose'],
    [6, 'oversized'],
    [-10, 'very close'],
  ] as const)('of %d in is called %s', (ease, fit) => {
    expect(fitOf(inches(ease))).toBe(fit);
  });
});

describe('the table of ease', () => {
  const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, bustSizes('in', 36, 38, 40, 42, 44));

  it('names for each fit the finished bust to look for and the size that comes nearest', () => {
    const table = easeTable(inches(38), pattern, bothOf(gaugeOf(20, 28, 'in')));
    const shown = table.map((row) => [
      row.fit,
      Math.round((row.low / 2.54) * 10) / 10,
      row.high === null ? null : Math.round((row.high / 2.54) * 10) / 10,
      row.nearest?.label,
      row.nearest?.within,
    ]);
    expect(shown).toEqual([
      ['very close', 34, 36, '36', true],
      ['close', 38, 38, '38', true],
      ['classic', 40, 42, '42', true],
      ['loose', 42, 44, '44', true],
      ['oversized', 44, null, '44', true],
    ]);
  });

  it('looks at the sizes as they come out at the own gauge', () => {
    // Knitted at 18 to 4 in instead of 20, the 36 measures 40 in and the 38 measures 42.2.
    const table = easeTable(inches(38), pattern, bothOf(gaugeOf(18, 28, 'in')));
    const classic = table.find((row) => row.fit === 'classic');
    expect(classic?.nearest).toMatchObject({ label: '36', within: true });
    expect(classic?.nearest?.ease).toBeCloseTo(inches(2), 9);
  });

  it('says when the nearest size is not of that fit', () => {
    const table = easeTable(inches(50), pattern, bothOf(gaugeOf(20, 28, 'in')));
    expect(table.map((row) => row.nearest?.within)).toEqual([false, false, false, false, false]);
  });

  it('names no size where the pattern states no bust', () => {
    const bare = patternOf({ stitches: 20, rows: 28, unit: 'in' }, [
      { label: 'one size', finished: {}, counts: {} },
    ]);
    for (const row of easeTable(inches(38), bare, bothOf(gaugeOf(20, 28, 'in')))) {
      expect(row.nearest).toBeUndefined();
      expect(row.workings.length).toBeGreaterThan(0);
    }
  });
});
