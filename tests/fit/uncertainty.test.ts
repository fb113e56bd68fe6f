import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { BODY_TAPE_ERROR, garmentUncertainty } from '../../src/fit/garment-uncertainty.ts';
import { type Gauge, rangeOf, rateAsPrinted, rateFrom } from '../../src/fit/gauge.ts';
import { SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { fromCount, fromSlope, fromTape, together, uncertainty } from '../../src/fit/uncertainty.ts';
import { cm } from '../../src/fit/units.ts';

const gauge = (span: number): Gauge => ({
  stitches: rateFrom([{ count: 2.2 * span, span: cm(span), unit: 'cm' }]),
  rows: rateFrom([{ count: 3 * span, span: cm(span), unit: 'cm' }]),
  worked: 'round',
});
const SWATCH = gauge(10);

describe('one measurement', () => {
  it('has the range of the gauge it hangs on', () => {
    const bust = uncertainty(fromCount('bust', 220, SWATCH.stitches, 'stitch gauge'));
    const range = rangeOf(220, SWATCH.stitches);
    expect(bust.range.low).toBeCloseTo(range.low, 9);
    expect(bust.range.high).toBeCloseTo(range.high, 9);
    expect(bust.hangs).toEqual([{ on: 'stitch gauge', share: 1 }]);
  });

  it('is sure where the gauge is taken as printed', () => {
    const printed = rateAsPrinted({ count: 22, span: cm(10), unit: 'cm' });
    const bust = uncertainty(fromCount('bust', 220, printed, 'stitch gauge'));
    expect(bust.range.low).toBe(bust.range.high);
    expect(bust.range.expected).toBeCloseTo(100, 9);
    expect(bust.hangs).toEqual([]);
  });

  it('is surer the longer the span that was counted', () => {
    const width = (span: number) => {
      const { low, high } = uncertainty(fromCount('bust', 220, gauge(span).stitches, 'stitch gauge')).range;
      return high - low;
    };
    expect(width(20)).toBeLessThan(width(10) * 0.6);
  });
});

describe('measurements together', () => {
  it('double where the same gauge stands behind both', () => {
    const half = fromCount('back', 110, SWATCH.stitches, 'stitch gauge');
    const whole = uncertainty(together('bust', [{ of: half, times: 2 }]));
    const range = rangeOf(220, SWATCH.stitches);
    expect(whole.range.high).toBeCloseTo(range.high, 9);
  });

  it('cancel where the same gauge stands behind both and one is taken off', () => {
    const same = fromCount('back', 110, SWATCH.stitches, 'stitch gauge');
    const none = uncertainty(
      together('difference', [
        { of: same, times: 1 },
        { of: same, times: -1 },
      ]),
    );
    expect(none.range).toEqual({ low: 0, expected: 0, high: 0 });
  });

  it('join as the root of squares where the figures are independent', () => {
    const a = fromTape('one', cm(50), cm(0.3), 'row gauge');
    const b = fromTape('other', cm(20), cm(0.4), 'body measurement');
    const sum = uncertainty(
      together('sum', [
        { of: a, times: 1 },
        { of: b, times: -1 },
      ]),
    );
    expect(sum.range.expected).toBe(30);
    expect(sum.range.high - sum.range.expected).toBeCloseTo(2 * 0.5, 9);
    expect(sum.hangs.map((h) => h.on)).toEqual(['body measurement', 'row gauge']);
    expect(sum.hangs[0]?.share).toBeCloseTo(0.64, 9);
  });

  it('on a slope weigh each gauge by its side', () => {
    const steep = uncertainty(fromSlope('raglan line', 10, 90, SWATCH));
    const flat = uncertainty(fromSlope('shoulder', 44, 6, SWATCH));
    expect(steep.hangs[0]?.on).toBe('row gauge');
    expect(flat.hangs[0]?.on).toBe('stitch gauge');
    expect(steep.range.expected).toBeCloseTo(Math.hypot(10 / 2.2, 30), 9);
  });

  it('agree with figures thrown at random', () => {
    // A fixed sequence of normal deviates (sums of twelve uniform ones), so that the run is the same each time.
    let seed = 12345;
    const uniform = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const normal = () => Array.from({ length: 12 }, uniform).reduce((a, b) => a + b, 0) - 6;
    const { stitches, rows } = SWATCH;
    const lengths = Array.from({ length: 4000 }, () =>
      Math.hypot(20 / (stitches.perCm + stitches.se * normal()), 60 / (rows.perCm + rows.se * normal())),
    );
    const mean = lengths.reduce((a, b) => a + b, 0) / lengths.length;
    const se = Math.sqrt(lengths.reduce((sum, l) => sum + (l - mean) ** 2, 0) / (lengths.length - 1));
    const { range } = uncertainty(fromSlope('edge', 20, 60, SWATCH));
    // 4000 throws tell a standard error to about 1.1 %; five times that is allowed.
    expect((range.high - range.expected) / 2 / se).toBeGreaterThan(0.945);
    expect((range.high - range.expected) / 2 / se).toBeLessThan(1.055);
  });

  it('have workings that are their own formulas', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (sts, rws) => {
        const found = uncertainty(
          together('ease', [
            { of: fromSlope('edge', sts, rws, SWATCH), times: 1 },
            { of: fromTape('body', cm(40), BODY_TAPE_ERROR), times: -1 },
          ]),
        );
        for (const w of found.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
        expect(found.hangs.reduce((sum, h) => sum + h.share, 0)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('a garment', () => {
  const [, , , size] = SAMPLE_ROUND.sizes;
  const own = { body: SWATCH, sleeves: gauge(5) };

  it('names for each measurement what it hangs on', () => {
    if (size === undefined) throw new Error('no size 4');
    const found = garmentUncertainty(size, SAMPLE_ROUND, own);
    expect(Object.fromEntries(found.map((f) => [f.region, f.finished.hangs[0]?.on]))).toEqual({
      bust: 'stitch gauge',
      'cross back': 'stitch gauge',
      'armhole depth': 'row gauge',
      neck: 'stitch gauge',
      'upper arm': 'stitch gauge of the sleeves',
      wrist: 'stitch gauge of the sleeves',
      waist: 'stitch gauge',
      hip: 'stitch gauge',
      'body length': 'row gauge',
      'sleeve length': 'row gauge of the sleeves',
    });
  });

  it('hangs on the gauge where a short swatch meets a large circumference, on the body where it is small', () => {
    if (size === undefined) throw new Error('no size 4');
    const found = garmentUncertainty(
      size,
      SAMPLE_ROUND,
      { body: gauge(5), sleeves: gauge(5) },
      { bust: cm(92), wrist: cm(15) },
    );
    const most = (region: string) => found.find((f) => f.region === region)?.ease?.hangs[0]?.on;
    expect(most('bust')).toBe('stitch gauge');
    expect(most('wrist')).toBe('body measurement');
    expect(found.find((f) => f.region === 'bust')?.ease?.range.expected).toBeCloseTo(8, 9);
    expect(found.find((f) => f.region === 'hip')?.ease).toBeUndefined();
  });
});
