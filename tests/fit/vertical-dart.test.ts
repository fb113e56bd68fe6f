import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bustAdvice } from '../../src/fit/bust-advice.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { CARRIERS } from '../../src/fit/spacing.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { frontStitches, type VerticalDartAsk, verticalDarts } from '../../src/fit/vertical-dart.ts';
import { Needle } from '../simulator/needle.ts';

const ask: VerticalDartAsk = {
  extra: { from: 'girths', bust: cm(108), upperBust: cm(98) },
  gauge: { stitchesPerCm: perCm(2.2), rowsPerCm: perCm(3) },
  front: stitches(108),
  bustSpan: cm(20),
  perRow: 4,
  carriers: 'every row',
  widenOver: rows(50),
  narrowOver: rows(20),
};

const asks = fc
  .record({
    width: fc.double({ min: -2, max: 20, noNaN: true }),
    stitchesPerCm: fc.double({ min: 0.8, max: 4.5, noNaN: true }),
    front: fc.integer({ min: 30, max: 240 }),
    perRow: fc.constantFrom(2 as const, 4 as const),
    carriers: fc.constantFrom(...CARRIERS),
    widen: fc.integer({ min: 0, max: 80 }),
    narrow: fc.option(fc.integer({ min: 0, max: 60 })),
  })
  .map(
    (r): VerticalDartAsk => ({
      extra: { from: 'width', width: cm(r.width + 0) },
      gauge: { stitchesPerCm: perCm(r.stitchesPerCm), rowsPerCm: perCm(3) },
      front: stitches(r.front),
      bustSpan: cm(19),
      perRow: r.perRow,
      carriers: r.carriers,
      widenOver: rows(r.widen),
      narrowOver: r.narrow === null ? null : rows(r.narrow),
    }),
  );

describe('vertical darts', () => {
  it('widen the front by the stitches stated, and narrow it again where asked, when knitted', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = verticalDarts(any);
        if (found.kind !== 'vertical darts') return;
        const needle = Needle.castOn(any.front, 'flat');
        const each = any.perRow / 2;
        const parts = [{ part: found.widen, change: each }];
        if (found.narrow !== null) parts.push({ part: found.narrow, change: -each });
        for (const { part, change } of parts)
          for (let row = 1; row <= part.rows; row++) {
            const shaping = part.shaping.find((s) => s.row === row);
            const taken = change < 0 ? 1 - change : 0;
            const at = [found.fromSide, needle.count - found.fromSide - taken].map((before) => ({
              before,
              change,
            }));
            if (shaping === undefined) needle.finish();
            else expect(needle.shaped({ at }).count).toBe(shaping.after);
          }
        expect(needle.count).toBe(any.front + (found.narrow === null ? found.added : 0));
      }),
      { numRuns: 1000 },
    );
  });

  it('add the multiple of what a row changes that comes nearest to the width', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = frontStitches(any.extra, any.gauge, any.perRow);
        if (found.kind === 'not needed') return;
        const wanted = any.extra.from === 'width' ? any.extra.width : Number.NaN;
        expect(found.added % any.perRow).toBe(0);
        expect(Math.abs(found.added - wanted * any.gauge.stitchesPerCm)).toBeLessThanOrEqual(
          any.perRow / 2 + 1e-8,
        );
        expect(found.width).toBeCloseTo(found.added / any.gauge.stitchesPerCm, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('show their figures in workings that evaluate to them, and survive being written to JSON', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = verticalDarts(any);
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = found.workings.map((line) => line.result.value);
        if (found.kind === 'vertical darts')
          expect(told).toEqual(expect.arrayContaining([found.added, found.width, found.fromSide]));
        if (found.kind === 'too few rows')
          expect(told).toEqual(expect.arrayContaining([found.needed, found.available]));
      }),
      { numRuns: 500 },
    );
  });

  it('give the difference between full and upper bust to the front', () => {
    // 10 cm × 2.2 = 22 stitches: 24 by fours is as near as 20, and a tie goes to the larger.
    expect(verticalDarts(ask)).toMatchObject({
      added: 24,
      fromSide: 32,
      widen: { to: 132 },
      narrow: { to: 108 },
    });
  });

  it('that do not fit their rows say which part, and offer what fits', () => {
    const found = verticalDarts({ ...ask, perRow: 2, narrowOver: rows(8) });
    if (found.kind !== 'too few rows') throw new Error(found.kind);
    expect(found).toMatchObject({ part: 'narrowing', needed: 11, available: 8 });
    expect(found.alternatives.length).toBeGreaterThan(0);
  });

  it('are not needed where full and upper bust agree', () => {
    const same = { from: 'girths', bust: cm(98), upperBust: cm(98) } as const;
    expect(verticalDarts({ ...ask, extra: same })).toMatchObject({ kind: 'not needed', width: 0 });
  });

  it('say so where the bust points lie outside the front', () => {
    expect(verticalDarts({ ...ask, front: stitches(44) })).toMatchObject({
      kind: 'darts outside the front',
      span: 44,
    });
  });
});

describe('advice for a full bust', () => {
  it.each([
    ['length and width are wanting', 4, 8, 5, 'plain', 'both'],
    ['only length is wanting', 4, 3, 5, 'plain', 'short rows'],
    ['only width is wanting', 0, 8, 5, 'plain', 'vertical darts'],
    ['nothing is wanting', 0, 3, 5, 'plain', 'none'],
    ['much ease takes up a little length', 2, 3, 8, 'plain', 'none'],
    ['little ease does not', 2, 3, 5, 'plain', 'short rows'],
    ['a pattern would be broken and width helps', 4, 8, 5, 'patterned', 'vertical darts'],
    ['a pattern would be broken and only length helps', 4, 3, 5, 'patterned', 'short rows'],
    ['lengths are not known and girths differ much', null, 8, 5, 'plain', 'both'],
    ['lengths are not known and girths differ little', null, 3, 5, 'plain', 'none'],
  ] as const)('where %s', (_, length, width, ease, fabric, suits) => {
    const advice = bustAdvice({
      length: length === null ? null : cm(length),
      width: cm(width),
      ease: cm(ease),
      fabric,
    });
    expect(advice.suits).toBe(suits);
    expect(advice.because.length).toBeGreaterThan(0);
  });
});
