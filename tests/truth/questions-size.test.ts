/**
 * Questions met in public knitting talk, worked answers collected 2026; the situations in our own words. Each answer
 * was worked out by hand, apart from this program, and is compared to the last place that it states.
 */
import { describe, expect, it } from 'vitest';
import { easeOf, easeTable } from '../../src/fit/ease.ts';
import { type Gauge, heightOf, rateFrom, rowsFor, stitchesFor } from '../../src/fit/gauge.ts';
import { gaugeToReach, knitted, type OwnGauge } from '../../src/fit/knitted.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { chooseSize } from '../../src/fit/size.ts';
import { targetsFor, targetsFromGarment } from '../../src/fit/targets.ts';
import { type Cm, cm, inches, stitches } from '../../src/fit/units.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from '../fit/plain-pattern.ts';

const to4in = (count: number) => bothOf(gaugeOf(count, 28, 'in'));
const inIn = (length: Cm | undefined) => (length ?? Number.NaN) / 2.54;

/** A size that prints no more than its stitches at the bust. */
const counted = (count: number, label = `${count}`): PatternSize => ({
  label,
  finished: {},
  counts: { bust: stitches(count) },
});
const bustOf = (size: PatternSize | undefined, pattern: Pattern, own: OwnGauge) =>
  size === undefined ? Number.NaN : inIn(knitted('bust', size, pattern, own)?.value);

function swatch(count: number, rowCount: number, span: Cm): Gauge {
  const rate = (n: number) => rateFrom([{ count: n, span, unit: 'in' }]);
  return { stitches: rate(count), rows: rate(rowCount), worked: 'round' };
}

describe('a stitch short of gauge', () => {
  const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, bustSizes('in', 40));
  it.each([
    [19, 42.1],
    [17, 47.1],
  ])('20 to 4 in asked, %d knitted: 40 in become %d in', (own, width) => {
    expect(bustOf(pattern.sizes[0], pattern, to4in(own))).toBeCloseTo(width, 1);
  });
});

describe('four sizes and three needles, a bust of 40 in, finished sizes 2 in above the named ones', () => {
  const named = ['S', 'M', 'L', 'XL'];
  const sizes = bustSizes('in', 34, 37, 40, 43).map((size, i) => ({ ...size, label: named[i] ?? '' }));
  const pattern = patternOf({ stitches: 16, rows: 23, unit: 'in' }, sizes);
  it.each([
    ['M', 14, 42.3],
    ['XL', 17, 40.5],
    ['XL', 18, 38.2],
    ['XL', 16, 43],
  ])('%s at %d to 4 in measures %d in', (label, own, width) => {
    const size = pattern.sizes.find((s) => s.label === label);
    expect(bustOf(size, pattern, to4in(own))).toBeCloseTo(width, 1);
  });
  it('the medium on the biggest needle is right for about 2 in of ease', () => {
    const { targets } = targetsFor({ table: 'women', known: { bust: inches(40) } }, { ease: inches(2) });
    const choice = chooseSize(pattern, targets, to4in(14));
    expect(choice.kind === 'ranked' && choice.best.label).toBe('M');
  });
});

describe('10 in of ease on a bust of 38 in, at 4.75 stitches to the inch instead of 5', () => {
  const pattern = patternOf({ stitches: 20, rows: 32, unit: 'in' }, [counted(227), counted(247)]);
  const own = to4in(19);
  it.each([
    [0, 47.8, 9.8],
    [1, 52, 14],
  ])('size %d of the two measures %d in, %d in of ease', (i, width, ease) => {
    const finished = bustOf(pattern.sizes[i], pattern, own);
    expect(finished).toBeCloseTo(width, 1);
    expect(inIn(cm(easeOf('bust', inches(finished), inches(38)).result.value))).toBeCloseTo(ease, 1);
  });
  it('the smaller one is right', () => {
    const { targets } = targetsFor({ table: 'women', known: { bust: inches(38) } }, { ease: inches(10) });
    const choice = chooseSize(pattern, targets, own);
    expect(choice.kind === 'ranked' && choice.best.label).toBe('227');
  });
  it('four rows in half an inch are 8 rows to the inch', () => {
    expect(rateFrom([{ count: 4, span: inches(0.5), unit: 'in' }]).perCm * 2.54).toBeCloseTo(8, 9);
  });
});

describe('a bust of 38 in between the sizes of a buttoned coat', () => {
  const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, bustSizes('in', 32, 36, 40.5, 44, 48));
  it.each([
    [40.5, 2.5],
    [36, -2],
  ])('%d in has %d in of ease', (finished, ease) => {
    expect(inIn(cm(easeOf('bust', inches(finished), inches(38)).result.value))).toBeCloseTo(ease, 9);
  });
  it('positive ease, as a coat needs, leads to 40.5', () => {
    const classic = easeTable(inches(38), pattern, to4in(20)).find((row) => row.fit === 'classic');
    expect(classic?.nearest).toMatchObject({ label: '40.5', within: true });
  });
});

describe('a lighter yarn: 18 stitches are 3.5 in wide where the pattern has 18 to 4 in', () => {
  const pattern = patternOf({ stitches: 18, rows: 26, unit: 'in' }, bustSizes('in', 56));
  const own = bothOf(swatch(18, 26, inches(3.5)));
  it('is 5.14 to the inch', () => {
    expect(own.body.stitches.perCm * 2.54).toBeCloseTo(5.14, 2);
  });
  it('49 in are had by following the size of 56 in, and that comes out as 49', () => {
    expect(bustOf(pattern.sizes[0], pattern, own)).toBeCloseTo(49, 9);
  });
});

describe('a tight sweater whose 18 to 4 in was also written as 4.25 to the inch', () => {
  const pattern = patternOf({ stitches: 16, rows: 28, unit: 'in' }, [counted(184)]);
  it.each([
    [4.25, 43.3, 195.5],
    [4.5, 40.9, 207],
  ])('if it is %d: 184 stitches are %d in, and 46 in need %d', (own, width, needed) => {
    expect(bustOf(pattern.sizes[0], pattern, to4in(own * 4))).toBeCloseTo(width, 1);
    const choice = stitchesFor(inches(46), gaugeOf(own * 4, 28, 'in').stitches.perCm);
    expect('exact' in choice && choice.exact).toBeCloseTo(needed, 9);
  });
});

describe("a nursing sweater: the pattern's stitches and rows fill 3.5 in, not 4", () => {
  const pattern = patternOf({ stitches: 16, rows: 22, unit: 'in' }, bustSizes('in', 44, 50.3));
  const own = bothOf(swatch(16, 22, inches(3.5)));
  it('is 4.57 stitches and 6.29 rows to the inch', () => {
    expect(own.body.stitches.perCm * 2.54).toBeCloseTo(4.57, 2);
    expect(own.body.rows.perCm * 2.54).toBeCloseTo(6.29, 2);
  });
  it('44 in as printed come out at 38.5; 44 in as knitted are 50.3 in print', () => {
    expect(bustOf(pattern.sizes[0], pattern, own)).toBeCloseTo(38.5, 9);
    expect(bustOf(pattern.sizes[1], pattern, own)).toBeCloseTo(44, 1);
  });
  it('8 in counted in rows come out at 7', () => {
    const written = rowsFor(inches(8), gaugeOf(16, 22, 'in').rows.perCm);
    expect(inIn(heightOf(written, own.body))).toBeCloseTo(7, 9);
  });
});

describe('a back of 79 stitches, a body of 34 in, and three ways to a smaller sweater', () => {
  const pattern = patternOf({ stitches: 18, rows: 26, unit: 'in' }, [counted(79), counted(83)], {
    body: 'flat',
  });
  it.each([
    [0, 18, 35.1, 1.1],
    [0, 19, 33.3, -0.7],
    [0, 20, 31.6, -2.4],
    [1, 20, 33.2, -0.8],
  ])('size %d of the two at %d to 4 in measures %d in, %d in of ease', (i, own, width, ease) => {
    const finished = bustOf(pattern.sizes[i], pattern, to4in(own));
    expect(finished).toBeCloseTo(width, 1);
    expect(inIn(cm(easeOf('bust', inches(finished), inches(34)).result.value))).toBeCloseTo(ease, 1);
  });
});

describe('a largest size of 46 in and a bust of 50 in', () => {
  it("50 in finished need 0.92 of the pattern's gauge, 52 in 0.885", () => {
    const rate = gaugeOf(12, 20, 'in').stitches;
    const ratio = (wanted: number) =>
      gaugeToReach(inches(46), rate, inches(wanted)).result.value / rate.perCm;
    expect(ratio(50)).toBeCloseTo(0.92, 9);
    expect(ratio(52)).toBeCloseTo(0.885, 3);
  });
  it('the pattern as printed is said to end 4 in short', () => {
    const pattern = patternOf({ stitches: 12, rows: 20, unit: 'in' }, bustSizes('in', 38, 42, 46));
    const choice = chooseSize(pattern, targetsFromGarment({ bust: inches(50) }), to4in(12));
    expect(choice.kind === 'ranked' && inIn(choice.beyond?.by)).toBeCloseTo(4, 9);
  });
});

describe('a largest size of 102 cm, 122 cm wanted, at 14 to 10 cm', () => {
  const pattern = patternOf({ stitches: 14, rows: 21, unit: 'cm' }, bustSizes('cm', 92, 102));
  const choice = chooseSize(pattern, targetsFromGarment({ bust: cm(122) }), bothOf(gaugeOf(14, 21, 'cm')));
  const beyond = choice.kind === 'ranked' ? choice.beyond : undefined;
  it('takes 28 stitches more all round', () => {
    expect(beyond).toMatchObject({ end: 'largest', label: '102' });
    expect(beyond?.stitches.result.value).toBe(28);
  });
  it('or, by the needle alone, 11.7 to 10 cm', () => {
    expect((beyond?.gauge.result.value ?? Number.NaN) * 10).toBeCloseTo(11.7, 1);
  });
});

describe('swatches that cannot be right', () => {
  const pattern = patternOf({ stitches: 18, rows: 24, unit: 'in' }, bustSizes('in', 40));
  it.each([
    [17, 1.059],
    [14, 1.286],
  ])('%d where 18 is asked makes the sweater %d times as wide', (own, times) => {
    expect(bustOf(pattern.sizes[0], pattern, to4in(own)) / 40).toBeCloseTo(times, 3);
  });
  it('at 17, the size to follow is what is wanted divided by 1.059', () => {
    const [follow] = bustSizes('in', 40 / 1.059);
    expect(bustOf(follow, pattern, to4in(17))).toBeCloseTo(40, 1);
  });
});

describe('a swatch washed, and another hung with a weight', () => {
  const [washed, hung] = [swatch(17, 23, inches(4)), swatch(17, 21, inches(4))];
  it('as washed is 4.25 stitches and 5.75 rows to the inch', () => {
    expect(washed.stitches.perCm * 2.54).toBeCloseTo(4.25, 9);
    expect(washed.rows.perCm * 2.54).toBeCloseTo(5.75, 9);
  });
  it('24 in of rows, hung, grow 1.095 times, to 26.3 in', () => {
    const rowsKnitted = rowsFor(inches(24), washed.rows.perCm);
    expect(inIn(heightOf(rowsKnitted, hung)) / 24).toBeCloseTo(1.095, 3);
    expect(inIn(heightOf(rowsKnitted, hung))).toBeCloseTo(26.3, 1);
  });
});
