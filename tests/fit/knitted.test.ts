import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { rateAsPrinted, rateFrom } from '../../src/fit/gauge.ts';
import { gaugeToReach, knitted } from '../../src/fit/knitted.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm, inches, rows, stitches } from '../../src/fit/units.ts';
import { REGIONS, type Region } from '../../src/fit/words.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from './plain-pattern.ts';

const OWN = bothOf(gaugeOf(20, 28, 'cm'));

describe('the sample sweater knitted at its own gauge', () => {
  const theirs = bothOf(gaugeOf(22, 30, 'cm'));
  const every = [SAMPLE_ROUND, SAMPLE_PIECES].flatMap((pattern) =>
    pattern.sizes.map((size) => ({ pattern, size, name: `${pattern.name}, size ${size.label}` })),
  );

  it.each(every)('measures what it prints, to the millimetre: $name', ({ pattern, size }) => {
    for (const region of REGIONS) {
      const printed = size.finished[region] ?? Number.NaN;
      const real = knitted(region, size, pattern, theirs)?.value ?? Number.NaN;
      expect(Math.abs(real - printed)).toBeLessThanOrEqual(0.05 + 1e-9);
    }
  });
});

describe('a size knitted at another gauge', () => {
  it('is its counts at that gauge', () => {
    const size = { label: '1', finished: { bust: cm(100) }, counts: { bust: stitches(220) } };
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size]);
    expect(knitted('bust', size, pattern, OWN)).toMatchObject({ value: 110, from: 'counts' });
  });

  it('is, without counts, the printed width times the two gauges', () => {
    const [size = { label: '', finished: {}, counts: {} }] = bustSizes('cm', 100);
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size]);
    expect(knitted('bust', size, pattern, OWN)?.value).toBeCloseTo(110, 9);
  });

  it('loses its edge stitches to the seams, in each of two pieces', () => {
    const size = { label: '1', finished: {}, counts: { bust: stitches(112), 'upper arm': stitches(72) } };
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size], {
      body: 'flat',
      sleeves: 'flat',
      edge: { body: 2, sleeves: 2 },
    });
    expect(knitted('bust', size, pattern, OWN)?.value).toBe(110);
    expect(knitted('upper arm', size, pattern, OWN)?.value).toBe(35);
  });

  it('keeps a length that is knitted to a tape, and changes one that is counted in rows', () => {
    const size = {
      label: '1',
      finished: { 'body length': cm(40), 'armhole depth': cm(20) },
      counts: {},
      rows: { armhole: rows(60) },
    };
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size]);
    expect(knitted('body length', size, pattern, OWN)).toMatchObject({ value: 40, from: 'printed length' });
    const armhole = knitted('armhole depth', size, pattern, OWN);
    expect(armhole?.from).toBe('rows');
    expect(armhole?.value).toBeCloseTo(60 / 2.8, 9);
  });

  it('takes body and sleeves at the gauge of each', () => {
    const size = { label: '1', finished: {}, counts: { bust: stitches(220), 'upper arm': stitches(70) } };
    const pattern = patternOf({ stitches: 22, rows: 30, unit: 'cm' }, [size]);
    const own = { body: gaugeOf(22, 30, 'cm'), sleeves: gaugeOf(20, 30, 'cm') };
    expect(knitted('bust', size, pattern, own)?.value).toBeCloseTo(100, 9);
    expect(knitted('upper arm', size, pattern, own)?.value).toBeCloseTo(35, 9);
  });

  it('has a range as wide as the gauge is unsure; a taped length has none', () => {
    const counted = rateFrom([{ count: 20, span: cm(10), unit: 'cm' }]);
    const own = bothOf({ stitches: counted, rows: counted, worked: 'round' });
    const size = { label: '1', finished: { 'body length': cm(40) }, counts: { bust: stitches(200) } };
    const pattern = patternOf({ stitches: 20, rows: 20, unit: 'cm' }, [size]);
    const bust = knitted('bust', size, pattern, own);
    expect(bust?.range.high).toBeGreaterThan(bust?.value ?? Number.POSITIVE_INFINITY);
    expect(bust?.range.expected).toBeCloseTo(100, 9);
    expect(knitted('body length', size, pattern, own)?.range).toEqual({ low: 40, expected: 40, high: 40 });
  });

  it('is undefined where the pattern says nothing', () => {
    const size = { label: '1', finished: {}, counts: {} };
    const pattern = patternOf({ stitches: 20, rows: 28, unit: 'cm' }, [size]);
    for (const region of REGIONS) expect(knitted(region, size, pattern, OWN)).toBeUndefined();
  });

  it('shows its sum', () => {
    const count = fc.integer({ min: 20, max: 400 });
    fc.assert(
      fc.property(count, fc.constantFrom<Region>('bust', 'cross back', 'upper arm'), (n, region) => {
        const size = { label: '1', finished: {}, counts: { [region]: stitches(n) } };
        const pattern = patternOf({ stitches: 22, rows: 30, unit: 'in' }, [size], { body: 'flat' });
        const real = knitted(region, size, pattern, OWN);
        expect(evaluate(real?.working.formula ?? '', real?.working.given ?? {})).toBe(real?.value);
      }),
    );
  });
});

describe('a width of which the pattern prints no count', () => {
  it('comes out as wanted in the size that prints it times the own gauge over the pattern’s', () => {
    const width = fc.double({ min: 40, max: 200, noNaN: true });
    const gauge = fc.integer({ min: 10, max: 36 });
    fc.assert(
      fc.property(width, gauge, gauge, (wanted, theirs, mine) => {
        const size = { label: '1', finished: { bust: cm((wanted * mine) / theirs) }, counts: {} };
        const pattern = patternOf({ stitches: theirs, rows: 30, unit: 'cm' }, [size]);
        expect(knitted('bust', size, pattern, bothOf(gaugeOf(mine, 30, 'cm')))?.value).toBeCloseTo(wanted, 8);
      }),
    );
  });
});

describe('the gauge to reach', () => {
  it('makes the same stitches as wide as wanted', () => {
    const rate = rateAsPrinted({ count: 20, span: inches(4), unit: 'in' });
    const line = gaugeToReach(inches(40), rate, inches(50));
    expect(line.result.value * inches(50)).toBeCloseTo(rate.perCm * inches(40), 9);
  });
});
