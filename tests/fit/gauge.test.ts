import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ANY_COUNT,
  admissible,
  type Count,
  type CountChoice,
  type CountRule,
  type Gauge,
  heightOf,
  rangeOf,
  rateAsPrinted,
  rateFrom,
  rowsFor,
  stitchesFor,
  widthOf,
} from '../../src/fit/gauge.ts';
import { cm, inches, perCm } from '../../src/fit/units.ts';

const over10cm = (count: number): Count => ({ count, span: cm(10), unit: 'cm' });
const over4in = (count: number): Count => ({ count, span: inches(4), unit: 'in' });

const rule = fc.record<CountRule>({
  multiple: fc.integer({ min: 1, max: 30 }),
  plus: fc.integer({ min: -3, max: 8 }),
  edge: fc.constantFrom(0, 1, 2, 4),
  parity: fc.constantFrom('any', 'even', 'odd'),
});
const width = fc.double({ min: 1, max: 250, noNaN: true }).map(cm);
const rate = fc.double({ min: 0.4, max: 6, noNaN: true }).map(perCm);

function chosen(choice: ReturnType<typeof stitchesFor>): CountChoice {
  if ('impossible' in choice) throw new Error('a count was expected');
  return choice;
}

/** Every count up to `most` that the rule allows, found by trying each: whole repeats, none or more, and the plus. */
function allowed(r: CountRule, most: number): number[] {
  const counts: number[] = [];
  for (let n = r.edge + Math.max(1, r.plus); n <= most; n++) {
    const fitsRepeat = (n - r.edge - r.plus) % r.multiple === 0;
    if (fitsRepeat && (r.parity === 'any' || n % 2 === (r.parity === 'even' ? 0 : 1))) counts.push(n);
  }
  return counts;
}

describe('a gauge', () => {
  it('knows 22 stitches to 4 in from 22 to 10 cm', () => {
    const [imperial, metric] = [rateAsPrinted(over4in(22)), rateAsPrinted(over10cm(22))];
    expect(chosen(stitchesFor(inches(40), imperial.perCm)).chosen).toBe(220);
    expect(chosen(stitchesFor(inches(40), metric.perCm)).chosen).toBe(224);
    expect(metric.perCm / imperial.perCm).toBeCloseTo(1.016, 12);
  });

  it('is all stitches over all spans where several places were counted', () => {
    const measured = rateFrom([over10cm(22), { count: 34, span: cm(15), unit: 'cm' }]);
    expect(measured.perCm).toBeCloseTo(56 / 25, 12);
    expect(measured.counts).toHaveLength(2);
  });

  it('needs at least one count', () => {
    expect(() => rateFrom([])).toThrow(/at least one count/);
  });

  it('is exact where it is printed', () => {
    expect(rateAsPrinted(over10cm(22)).se).toBe(0);
  });

  it('is the surer the longer the span', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 40 }), fc.integer({ min: 2, max: 6 }), (count, times) => {
        const short = rateFrom([over10cm(count)]);
        const long = rateFrom([{ count: count * times, span: cm(10 * times), unit: 'cm' }]);
        expect(long.perCm).toBeCloseTo(short.perCm, 12);
        expect(long.se).toBeLessThan(short.se);
      }),
    );
  });

  it('is the surer the more places agree', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 40 }), fc.integer({ min: 1, max: 5 }), (count, places) => {
        const fewer = rateFrom(Array(places).fill(over10cm(count)));
        const more = rateFrom(Array(places + 1).fill(over10cm(count)));
        expect(more.se).toBeLessThan(fewer.se);
      }),
    );
  });

  it('is less sure where the places differ than where they agree', () => {
    expect(rateFrom([over10cm(21), over10cm(23)]).se).toBeGreaterThan(
      rateFrom([over10cm(22), over10cm(22)]).se,
    );
  });

  it('joins the errors of count and tape as independent: 22 stitches to 10 cm, read once', () => {
    // (0.25 / √12) / 22 = 0.328 %, (0.1 / √12) / 10 = 0.289 %, together 0.437 %.
    const once = rateFrom([over10cm(22)]);
    expect(once.se / once.perCm).toBeCloseTo(0.00437, 5);
  });

  it('adds how far three places differ: 21, 22 and 23 stitches to 10 cm', () => {
    // Variance of 2.1, 2.2, 2.3 is 0.01; over 3 places and 2.2²: 0.000689. Counts: 3 × (0.0722 / 66)² = 0.0000036;
    // tapes: 3 × (0.0289 / 30)² = 0.0000028. The root of the sum is 2.636 %.
    const thrice = rateFrom([over10cm(21), over10cm(22), over10cm(23)]);
    expect(thrice.se / thrice.perCm).toBeCloseTo(0.02636, 5);
  });

  it('keeps the printed count behind it', () => {
    expect(rateAsPrinted(over4in(22)).counts).toEqual([over4in(22)]);
  });

  it('has one and the same neighbour on either side where a count is exact', () => {
    const exact = chosen(stitchesFor(cm(40), perCm(2.2), { multiple: 4, plus: 0, edge: 0, parity: 'any' }));
    expect([exact.below.stitches, exact.chosen, exact.above.stitches]).toEqual([88, 88, 88]);
    const tie = chosen(stitchesFor(cm(45), perCm(2), { multiple: 4, plus: 0, edge: 0, parity: 'any' }));
    expect([tie.below.stitches, tie.chosen, tie.above.stitches]).toEqual([88, 92, 92]);
  });

  it('carries two standard errors to the finished width', () => {
    const once = rateFrom([over10cm(22)]);
    const bust = rangeOf(220, once);
    expect(bust.expected).toBeCloseTo(100, 9);
    expect(bust.high - bust.expected).toBeCloseTo(0.874, 3);
    expect(bust.expected - bust.low).toBeCloseTo(bust.high - bust.expected, 9);
  });

  it('is as unsure as widths of gauges thrown at random', () => {
    // A fixed sequence of normal deviates (sums of twelve uniform ones), so that the run is the same each time.
    let seed = 12345;
    const uniform = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const normal = () => Array.from({ length: 12 }, uniform).reduce((a, b) => a + b, 0) - 6;
    const once = rateFrom([over10cm(22)]);
    const widths = Array.from({ length: 4000 }, () => 220 / (once.perCm + once.se * normal()));
    const mean = widths.reduce((a, b) => a + b, 0) / widths.length;
    const se = Math.sqrt(widths.reduce((sum, w) => sum + (w - mean) ** 2, 0) / (widths.length - 1));
    const { high, expected } = rangeOf(220, once);
    // 4000 throws tell a standard error to about 1.1 %; five times that is allowed.
    expect((high - expected) / 2 / se).toBeGreaterThan(0.945);
    expect((high - expected) / 2 / se).toBeLessThan(1.055);
  });

  it('turns stitches to width and rows to height', () => {
    const gauge: Gauge = {
      stitches: rateFrom([over10cm(22)]),
      rows: rateFrom([over10cm(30)]),
      worked: 'round',
    };
    expect(widthOf(220, gauge)).toBeCloseTo(100, 9);
    expect(heightOf(75, gauge)).toBeCloseTo(25, 9);
  });
});

describe('stitches for a width', () => {
  it.each<[string, number, number, CountRule, number]>([
    ['the nearest whole number', 50.2, 2, ANY_COUNT, 100],
    ['the larger of two as near', 50.25, 2, ANY_COUNT, 101],
    ['a multiple of 4 plus 2', 50, 2, { ...ANY_COUNT, multiple: 4, plus: 2 }, 102],
    ['a multiple of 4 less 1', 50, 2, { ...ANY_COUNT, multiple: 4, plus: -1 }, 99],
    ['edge stitches outside the width', 50, 2, { ...ANY_COUNT, edge: 2 }, 102],
    ['an even number', 50.5, 2, { ...ANY_COUNT, parity: 'even' }, 102],
    ['an odd number', 50, 2, { ...ANY_COUNT, parity: 'odd' }, 101],
    ['an even multiple of 3', 50, 2, { ...ANY_COUNT, multiple: 3, parity: 'even' }, 102],
    ['the least there is, for a width of nothing', 0, 2, { ...ANY_COUNT, multiple: 6 }, 6],
  ])('are %s', (_, w, r, asked, count) => {
    expect(chosen(stitchesFor(cm(w), perCm(r), asked)).chosen).toBe(count);
  });

  it('are as near as any count the rule allows, a tie going to the larger', () => {
    fc.assert(
      fc.property(width, rate, rule, (w, r, asked) => {
        const choice = stitchesFor(w, r, asked);
        const counts = allowed(asked, Math.ceil(w * r) + 80);
        if ('impossible' in choice) {
          expect(counts).toEqual([]);
          return;
        }
        const exact = w * r + asked.edge;
        const off = (n: number) => Math.abs(n - exact);
        const best = counts.reduce((a, b) => (off(b) <= off(a) + 1e-9 ? b : a));
        expect(choice.chosen).toBe(best);
      }),
    );
  });

  it('come with both neighbours, next to each other in the series, and the width of each', () => {
    fc.assert(
      fc.property(width, rate, rule, (w, r, asked) => {
        const choice = stitchesFor(w, r, asked);
        if ('impossible' in choice) return;
        const { below, above, step, exact } = choice;
        expect([below.stitches, above.stitches]).toContain(choice.chosen);
        expect([0, step]).toContain(above.stitches - below.stitches);
        if (exact > below.stitches) expect(above.stitches).toBeGreaterThanOrEqual(exact - 1e-6);
        for (const side of [below, above]) expect(side.width * r).toBeCloseTo(side.stitches - asked.edge, 6);
      }),
    );
  });

  it('are refused where the parity can never be met', () => {
    const never: CountRule = { multiple: 4, plus: 0, edge: 0, parity: 'odd' };
    expect(stitchesFor(cm(50), perCm(2), never)).toEqual({ impossible: 'parity never met', rule: never });
  });

  it('are found below nought too when a repeat has stitches less: a multiple of 4 less 1 is odd', () => {
    expect(admissible({ multiple: 4, plus: -1, edge: 0, parity: 'odd' })).toEqual({ step: 4, start: -1 });
  });
});

describe('rows for a length', () => {
  it.each([
    [25, 3, 'whole', 75],
    [25.5, 3, 'whole', 77],
    [25, 3, 'even', 76],
    [24.9, 3, 'even', 74],
    [0, 3, 'even', 0],
  ] as const)('of %d cm at %d rows a cm, to the nearest %s number, are %d', (length, r, to, count) => {
    expect(rowsFor(cm(length), perCm(r), to)).toBe(count);
  });
});
