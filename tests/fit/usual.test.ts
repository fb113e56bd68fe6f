import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkMeasurement } from '../../src/fit/body.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { ORIGINS } from '../../src/fit/tables/origin.ts';
import { cm, inches } from '../../src/fit/units.ts';
import { usual } from '../../src/fit/usual.ts';
import { MEASUREMENTS, type Measurement, TABLES, type Table } from '../../src/fit/words.ts';

type Known = Partial<Record<Measurement, number>>;

function likely(of: Measurement, table: Table, known: Known) {
  return usual(of, {
    table,
    known: Object.fromEntries(Object.entries(known).map(([m, v]) => [m, cm(v)])),
  });
}

/** Source: Craft Yarn Council's www.YarnStandards.com, sizes from memory, in inches. */
describe("the industry's table gives, for the size of this bust,", () => {
  it.each([
    ['women', 38, 'upper arm', 'Medium', 11],
    ['women', 38, 'waist', 'Medium', 29],
    ['women', 41, 'hip', 'Large', 43],
    ['women', 41, 'cross back', 'Large', 17.25],
    ['women', 47, 'armhole depth', '2X', 8.75],
    ['women', 70, 'upper arm', '5X', 19.5],
    ['women', 20, 'upper arm', 'X-Small', 9.75],
    ['men', 39, 'upper arm', 'Medium', 13],
    ['men', 39, 'arm length', 'Medium', 18.5],
    ['children', 25, 'armhole depth', '6', 5],
    ['babies', 18, 'cross back', '12 months', 8.25],
  ] as const)('%s, bust %d in: %s of size %s', (table, bust, of, size, expected) => {
    const found = likely(of, table, { bust: inches(bust) });
    expect(found).toMatchObject({ source: 'council', rule: { by: 'size of this bust', size } });
    expect(found?.value).toBeCloseTo(inches(expected), 9);
  });

  it('of two sizes as near, the larger', () => {
    expect(likely('upper arm', 'women', { bust: inches(39) })?.rule).toMatchObject({ size: 'Large' });
  });

  it("a back length from the shoulder's highest point, 2 cm above the nape", () => {
    expect(likely('back length', 'women', { bust: inches(38) })?.value).toBeCloseTo(inches(17.25) + 2, 9);
  });
});

/** Source: 2012 Anthropometric Survey of U.S. Army Personnel, 2014: medians, computed from its public data files. */
describe('the survey of soldiers gives', () => {
  it.each([
    ['women', 'wrist', { bust: 96 }, 15.5],
    ['women', 'neck', { bust: 96 }, 37.3],
    ['women', 'wrist', { bust: 140 }, 16.4],
    ['men', 'wrist', { bust: 105 }, 17.5],
    ['men', 'hip', { bust: 80 }, 86.2],
    ['men', 'hip', { bust: 130 }, 119.8],
    // A chest of 79 cm opens the second band, from 79 to 84 cm.
    ['women', 'wrist', { bust: 78.9 }, 14.6],
    ['women', 'wrist', { bust: 79 }, 14.8],
    ['women', 'wrist', {}, 15.4],
    ['women', 'head', {}, 56],
    ['men', 'head', {}, 57.4],
  ] as const)('%s: %s beside %o', (table, of, known, expected) => {
    expect(likely(of, table, known)).toMatchObject({ value: expected, source: 'soldiers' });
  });

  it('a back length as a share of height, to the navel', () => {
    // 162.6 × 0.2604 = 42.34, and 2 cm from the nape to the shoulder's highest point.
    expect(likely('back length', 'women', { height: 162.6 })?.value).toBeCloseTo(44.34, 2);
  });

  it('an arm length as a share of height', () => {
    // (54.2 − 9.55) cm at 162.6 cm, the medians of shoulder to wrist and shoulder to armpit.
    expect(likely('arm length', 'women', { height: 162.6 })?.value).toBeCloseTo(44.65, 1);
    expect(likely('arm length', 'men', { height: 175.5 })?.value).toBeCloseTo(48.1, 1);
  });
});

describe('a likely figure', () => {
  it('of the upper bust lies 2 in under the bust, as patterns are drafted', () => {
    expect(likely('upper bust', 'women', { bust: inches(38) })).toMatchObject({
      source: 'upper torso',
      rule: { by: 'standard difference' },
    });
    expect(likely('upper bust', 'women', { bust: inches(38) })?.value).toBeCloseTo(inches(36), 9);
  });

  it('from bust point to bust point is a fifth of the bust, as dressmaking has it', () => {
    const found = likely('bust span', 'women', { bust: 100 });
    expect(found).toMatchObject({ value: 20, source: 'trade', rule: { by: 'share of bust' } });
  });

  it('says by which rule it was found where the bust is not known', () => {
    expect(likely('wrist', 'women', {})?.rule).toEqual({ by: 'median of all' });
    expect(likely('wrist', 'women', { bust: 96 })?.rule).toEqual({
      by: 'band of chest',
      from: 94,
      below: 99,
    });
  });

  // Median heights: CDC Growth Charts, 2000.
  it("of a child's chest comes from the age at which its height is the median", () => {
    expect(likely('bust', 'children', { height: 115 })).toMatchObject({
      value: inches(25),
      rule: { by: 'size of this height', size: '6' },
    });
    expect(likely('arm length', 'babies', { height: 75 })).toMatchObject({
      value: inches(7.5),
      rule: { size: '12 months' },
    });
  });

  it.each([
    ['bust', 'women', { height: 165 }],
    ['height', 'women', { bust: 96 }],
    ['front length', 'women', { 'back length': 42 }],
    ['upper bust', 'men', { bust: 100 }],
    ['head', 'children', { bust: 60 }],
    ['wrist', 'babies', { bust: 45 }],
    ['waist', 'women', {}],
    ['back length', 'men', { bust: 100 }],
    ['bust', 'men', { height: 175 }],
    ['waist', 'children', {}],
    ['bust', 'babies', { bust: 45 }],
    ['bust span', 'women', {}],
    ['upper bust', 'women', {}],
  ] as const)('is not given where there is no sound source: %s of %s beside %o', (of, table, known) => {
    expect(likely(of, table, known)).toBeUndefined();
  });

  const bodies = fc.record({
    bust: fc.double({ min: 72, max: 155, noNaN: true }),
    height: fc.double({ min: 145, max: 180, noNaN: true }),
  });

  it('is its own workings, and names its source', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASUREMENTS),
        fc.constantFrom(...TABLES),
        bodies,
        (of, table, known) => {
          const found = likely(of, table, known);
          if (found === undefined) return;
          const last = found.workings.at(-1);
          expect(last?.result.value).toBe(found.value);
          for (const line of found.workings) {
            expect(evaluate(line.formula, line.given)).toBe(line.exact);
            expect(line.result.unit).toBe('cm');
          }
          expect(ORIGINS[found.source].title).not.toBe('');
        },
      ),
    );
  });

  it('is never one that the checks would refuse', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASUREMENTS),
        fc.constantFrom('women', 'men'),
        bodies,
        (of, table, known) => {
          const found = likely(of, table, known);
          if (found === undefined) return;
          const verdict = checkMeasurement(of, { value: found.value, unit: 'cm' }, { table, known: {} });
          expect(verdict.kind).toBe('fine');
        },
      ),
    );
  });

  it('never falls as the bust grows', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MEASUREMENTS),
        fc.constantFrom(...TABLES),
        fc.double({ min: 40, max: 160, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (of, table, bust, more) => {
          const [small, large] = [likely(of, table, { bust }), likely(of, table, { bust: bust + more })];
          if (small === undefined || large === undefined) return;
          expect(large.value).toBeGreaterThanOrEqual(small.value);
        },
      ),
    );
  });
});
