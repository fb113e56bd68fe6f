import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { knitted } from '../../src/fit/knitted.ts';
import type { Pattern } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { chooseSize, EFFORT, PRICE_PER_CM, type Ranking, type SizeChoice } from '../../src/fit/size.ts';
import { type Targets, targetsFor, targetsFromGarment } from '../../src/fit/targets.ts';
import { cm, inches, type LengthUnit, lengthIn, onTape } from '../../src/fit/units.ts';
import { FITS, type Measurement, REGIONS, type Region } from '../../src/fit/words.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from './plain-pattern.ts';

const THEIRS = bothOf(gaugeOf(22, 30, 'cm'));

function ranked(choice: SizeChoice): Ranking {
  if (choice.kind !== 'ranked') throw new Error(`a ranking was expected: ${choice.kind}`);
  return choice;
}
const bustTarget = (bust: number): Targets => targetsFromGarment({ bust: cm(bust) });

function measurements(unit: LengthUnit, known: Partial<Record<Measurement, number>>) {
  const entries = Object.entries(known).map(([m, value]) => [m, lengthIn(value, unit)]);
  return { table: 'women' as const, known: Object.fromEntries(entries) };
}

/** Anybody's figures, in inches to the eighth. */
const bodies = fc.record({
  bust: fc.integer({ min: 28 * 8, max: 62 * 8 }).map((n) => n / 8),
  waist: fc.integer({ min: 23 * 8, max: 55 * 8 }).map((n) => n / 8),
  'upper arm': fc.integer({ min: 9 * 8, max: 20 * 8 }).map((n) => n / 8),
  'cross back': fc.integer({ min: 13 * 8, max: 19 * 8 }).map((n) => n / 8),
  'armhole depth': fc.integer({ min: 6 * 8, max: 11 * 8 }).map((n) => n / 8),
});

describe('the best size', () => {
  it.each([SAMPLE_ROUND, SAMPLE_PIECES])(
    'is the one that equals every target, at no price: $name',
    (pattern) => {
      for (const size of pattern.sizes) {
        const real = REGIONS.flatMap((region) => {
          const k = knitted(region, size, pattern, THEIRS);
          return k === undefined ? [] : [[region, k.value] as const];
        });
        const choice = ranked(chooseSize(pattern, targetsFromGarment(Object.fromEntries(real)), THEIRS));
        expect(choice.best).toMatchObject({ label: size.label, price: 0 });
        expect(choice.best.reasons).toHaveLength(REGIONS.length);
        expect(choice.leftOut).toEqual([]);
      }
    },
  );

  it('is the same for a body measured in inches and in centimetres', () => {
    fc.assert(
      fc.property(bodies, fc.constantFrom(...FITS), (known, fit) => {
        const inCm = Object.fromEntries(Object.entries(known).map(([m, v]) => [m, onTape(inches(v), 'cm')]));
        const rank = (unit: LengthUnit, k: Partial<Record<Measurement, number>>) =>
          ranked(chooseSize(SAMPLE_ROUND, targetsFor(measurements(unit, k), { fit }).targets, THEIRS));
        const order = (r: Ranking) => r.ranking.map((s) => s.label);
        expect(order(rank('cm', inCm))).toEqual(order(rank('in', known)));
      }),
    );
  });

  it('never gets smaller as the bust grows, where the pattern prints the bust alone', () => {
    const busts = fc.uniqueArray(fc.integer({ min: 70, max: 160 }), { minLength: 1, maxLength: 9 });
    const bust = fc.double({ min: 60, max: 170, noNaN: true });
    fc.assert(
      fc.property(busts, bust, fc.double({ min: 0, max: 60, noNaN: true }), (sizes, smaller, more) => {
        const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, bustSizes('cm', ...sizes));
        const best = (b: number) => Number(ranked(chooseSize(pattern, bustTarget(b), THEIRS)).best.label);
        expect(best(smaller + more)).toBeGreaterThanOrEqual(best(smaller));
      }),
    );
  });

  it('is of two as near the larger', () => {
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, bustSizes('cm', 96, 100, 104));
    expect(ranked(chooseSize(pattern, bustTarget(102), THEIRS)).best.label).toBe('104');
  });

  it('is the one whose stitches give the target at the own gauge', () => {
    // 20 instead of 22 stitches to 10 cm: the 91 comes out at 100.1 cm.
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, bustSizes('cm', 82, 91, 100, 109));
    const choice = ranked(chooseSize(pattern, bustTarget(100), bothOf(gaugeOf(20, 30, 'cm'))));
    expect(choice.best.label).toBe('91');
    expect(choice.best.reasons[0]?.knitted.value).toBeCloseTo(100.1, 9);
  });

  it('gives way in the bust before it gives way in the shoulders', () => {
    const size = (label: string, bust: number, back: number) => ({
      label,
      finished: { bust: cm(bust), 'cross back': cm(back) },
      counts: {},
    });
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [
      size('small', 98, 37),
      size('large', 102, 40),
    ]);
    const choice = ranked(
      chooseSize(pattern, targetsFromGarment({ bust: cm(102), 'cross back': cm(37) }), THEIRS),
    );
    // The small one is 4 cm off in the bust at 2, the large one 3 cm off in the back at 4.
    expect(choice.ranking.map((s) => [s.label, s.price])).toEqual([
      ['small', 8],
      ['large', 12],
    ]);
  });

  it('follows the shoulders of a full bust, which goes to the front', () => {
    const full = measurements('cm', { bust: 112, 'upper bust': 95 });
    const wanted = targetsFor(full, { fit: 'close' });
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, bustSizes('cm', 92, 100, 108, 116));
    expect(ranked(chooseSize(pattern, wanted.targets, THEIRS)).best.label).toBe('100');
    expect(wanted.front?.extra).toBeCloseTo(112 - 95 - 5.08, 9);
  });
});

describe('the reasons of a size', () => {
  it('are priced by centimetre and effort, dearest first, and add up to the price of the size', () => {
    fc.assert(
      fc.property(bodies, fc.constantFrom(...FITS), (known, fit) => {
        const { targets } = targetsFor(measurements('in', known), { fit });
        for (const size of ranked(chooseSize(SAMPLE_PIECES, targets, THEIRS)).ranking) {
          const prices = size.reasons.map((r) => r.price);
          expect(prices).toEqual([...prices].sort((a, b) => b - a));
          expect(prices.reduce((a, b) => a + b, 0)).toBeCloseTo(size.price, 9);
          for (const r of size.reasons) {
            expect(r.difference).toBeCloseTo(r.knitted.value - r.target.aim, 9);
            expect(r.price).toBeCloseTo(Math.abs(r.difference) * PRICE_PER_CM[EFFORT[r.region]], 9);
            for (const line of r.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
          }
        }
      }),
    );
  });

  it('say that shoulders, armhole and neck are hard, arm and bust are work, the rest is easy', () => {
    const of = (effort: string) => REGIONS.filter((region) => EFFORT[region] === effort);
    expect(of('hard')).toEqual(['cross back', 'armhole depth', 'neck']);
    expect(of('work')).toEqual(['bust', 'upper arm']);
    expect(of('easy')).toEqual(['wrist', 'waist', 'hip', 'body length', 'sleeve length']);
    expect(PRICE_PER_CM.hard).toBeGreaterThan(PRICE_PER_CM.work);
    expect(PRICE_PER_CM.work).toBeGreaterThan(PRICE_PER_CM.easy);
  });

  it('find no fault with a neck that is wider than a body needs', () => {
    const size = (neck: number) => ({ label: `${neck}`, finished: { neck: cm(neck) }, counts: {} });
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size(34), size(60)]);
    const { targets } = targetsFor(measurements('cm', { neck: 36 }), { fit: 'classic' });
    const choice = ranked(chooseSize(pattern, targets, THEIRS));
    expect(choice.best).toMatchObject({ label: '60', price: 0 });
    expect(choice.ranking[1]?.reasons[0]?.difference).toBeCloseTo(34 - 38.54, 9);
  });
});

describe('a bust beyond the sizes', () => {
  const pattern = patternOf({ stitches: 20, rows: 28, unit: 'cm' }, bustSizes('cm', 90, 100, 110));
  const own = bothOf(gaugeOf(20, 28, 'cm'));

  it('above the largest says by how much, in centimetres, in stitches, and the gauge that would do', () => {
    const { beyond, best } = ranked(chooseSize(pattern, bustTarget(130), own));
    expect(best.label).toBe('110');
    expect(beyond).toMatchObject({ end: 'largest', label: '110' });
    expect(beyond?.by).toBeCloseTo(20, 9);
    expect(beyond?.stitches.result.value).toBe(40);
    expect((beyond?.gauge.result.value ?? 0) * 130).toBeCloseTo(2 * 110, 9);
  });

  it('below the smallest says so too', () => {
    const { beyond, best } = ranked(chooseSize(pattern, bustTarget(80), own));
    expect(best.label).toBe('90');
    expect(beyond).toMatchObject({ end: 'smallest', label: '90' });
    expect(beyond?.by).toBeCloseTo(-10, 9);
    expect(beyond?.stitches.result.value).toBe(20);
  });

  it('is not claimed while a size lies within the range of the fit', () => {
    const { targets } = targetsFor(measurements('cm', { bust: 104 }), { fit: 'classic' });
    expect(ranked(chooseSize(pattern, targets, own)).beyond).toBeUndefined();
  });
});

describe('patterns that say little', () => {
  it('of one size are ranked all the same', () => {
    const pattern = patternOf({ stitches: 20, rows: 28, unit: 'cm' }, bustSizes('cm', 100));
    const choice = ranked(chooseSize(pattern, bustTarget(96), bothOf(gaugeOf(20, 28, 'cm'))));
    expect(choice.ranking).toHaveLength(1);
    expect(choice.beyond).toMatchObject({ end: 'smallest' });
  });

  it.each<[string, Pattern]>([
    ['no sizes', patternOf({ stitches: 20, rows: 28, unit: 'cm' }, [])],
    [
      'no bust',
      patternOf({ stitches: 20, rows: 28, unit: 'cm' }, [{ label: '1', finished: {}, counts: {} }]),
    ],
  ])('with %s leave nothing to compare', (_, pattern) => {
    expect(chooseSize(pattern, bustTarget(96), THEIRS).kind).toBe('nothing to compare');
  });

  it('leave out a region that not every size states, so that no size is cheaper for saying less', () => {
    const [small, large] = bustSizes('cm', 96, 100);
    const sizes = [
      { label: '96', finished: { ...small?.finished, wrist: cm(40) }, counts: {} },
      { label: '100', finished: { ...large?.finished }, counts: {} },
    ];
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, sizes);
    const choice = ranked(chooseSize(pattern, targetsFromGarment({ bust: cm(96), wrist: cm(18) }), THEIRS));
    expect(choice.leftOut).toEqual(['wrist']);
    expect(choice.best).toMatchObject({ label: '96', price: 0 });
  });

  it.each(['drop shoulder', 'raglan', 'round yoke'] as const)(
    'have no cross back in a %s',
    (construction) => {
      const size = { label: '1', finished: { bust: cm(100), 'cross back': cm(50) }, counts: {} };
      const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size], { construction });
      const targets = targetsFromGarment({ bust: cm(100), 'cross back': cm(37) });
      const regions = ranked(chooseSize(pattern, targets, THEIRS)).best.reasons.map((r): Region => r.region);
      expect(regions).toEqual(['bust']);
    },
  );
});
