import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, perCm } from '../../src/fit/units.ts';
import { replaceBalls, yarnFromPattern, yarnFromSwatch } from '../../src/fit/yarn.ts';
import { rowsLeft, yarnLeft } from '../../src/fit/yarn-left.ts';
import { metresPerGram } from '../../src/fit/yarn-number.ts';

describe('yarn from a weighed swatch', () => {
  const swatch = { amount: { value: 5, unit: 'g' }, width: cm(10), height: cm(10) } as const;

  it('is in whole balls, with the margin that is stated', () => {
    expect(yarnFromSwatch(6400, swatch, { grams: 50 }, 0.1)).toMatchObject({
      kind: 'need',
      estimate: { value: 320, unit: 'g' },
      withMargin: { value: expect.closeTo(352, 9), unit: 'g' },
      balls: 8,
    });
  });

  it('asks for what the band says where the ball is known by length only', () => {
    expect(yarnFromSwatch(6400, swatch, { metres: 120 }, 0.1)).toMatchObject({
      kind: 'ball unknown',
      needed: 'g',
      estimate: { value: 320, unit: 'g' },
    });
  });
});

describe('yarn from the pattern’s amount', () => {
  it('grows with the area and with the stitches to a centimetre', () => {
    const asked = {
      amount: { value: 1000, unit: 'm' },
      areaRatio: 1.2,
      gauge: { pattern: perCm(2), own: perCm(2.2) },
    } as const;
    expect(yarnFromPattern(asked, { metres: 110 }, 0.1)).toMatchObject({
      estimate: { value: expect.closeTo(1320, 9) },
      balls: 14,
    });
  });

  it('is as many balls of another length, never fewer metres', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 30, max: 500 }),
        fc.integer({ min: 30, max: 500 }),
        (n, a, b) => {
          const need = replaceBalls(n, { metres: a }, { metres: b }, 0);
          if (need.kind !== 'need') throw new Error(need.kind);
          expect(need.balls * b).toBeGreaterThanOrEqual(n * a);
          expect((need.balls - 1) * b).toBeLessThan(n * a);
          for (const w of need.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
        },
      ),
    );
  });

  it('needs a ball that holds something', () => {
    expect(() => replaceBalls(5, { metres: 100 }, { metres: 0 }, 0)).toThrow(RangeError);
  });
});

describe('yarn in mid-project', () => {
  const ask = { unit: 'g', left: 200, used: { amount: 150, area: 3000 }, rest: 3400, margin: 0.1 } as const;

  it('lasts, and so much is over', () => {
    expect(yarnLeft(ask)).toMatchObject({
      kind: 'lasts',
      needed: { value: expect.closeTo(187, 9) },
      over: { value: expect.closeTo(13, 9) },
    });
  });

  it('or runs short, and is enough for so much area', () => {
    const found = yarnLeft({ ...ask, left: 165 });
    expect(found).toMatchObject({ kind: 'runs short', short: { value: expect.closeTo(22, 9) } });
    expect(found.kind === 'runs short' && found.enoughFor).toBeCloseTo(3000, 9);
  });

  it('is just enough for the area that it is said to be enough for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 186 }), (left) => {
        const short = yarnLeft({ ...ask, left });
        if (short.kind !== 'runs short') return;
        const again = yarnLeft({ ...ask, left: left + 1e-6, rest: short.enoughFor });
        expect(again.kind).toBe('lasts');
      }),
    );
  });

  it('cannot be told before anything is knitted', () => {
    expect(() => yarnLeft({ ...ask, used: { amount: 0, area: 0 } })).toThrow(RangeError);
  });

  it('never gives fewer rows than none', () => {
    expect(rowsLeft('g', 3, 4, 1).rows).toBe(0);
    expect(rowsLeft('g', 40, 4, 1).rows).toBe(9);
  });
});

describe('a cone’s number', () => {
  it('is read as metres to the gram', () => {
    // 2/24 worsted: 6720 yd to the pound.
    expect(metresPerGram('worsted', 24, 2).exact).toBeCloseTo((6720 * 0.9144) / 453.59237, 9);
    expect(() => metresPerGram('cotton', 16, 0)).toThrow(RangeError);
  });
});
