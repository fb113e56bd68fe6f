import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeButtons } from '../../src/fit/buttons.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { ANY_COUNT } from '../../src/fit/gauge.ts';
import { type PickUpAsk, pickUp, RATIO_WITHIN, runsFor, smallRatio } from '../../src/fit/pickup.ts';
import { perCm, rows } from '../../src/fit/units.ts';
import { told } from './told.ts';

const ask = (over: Partial<PickUpAsk> = {}): PickUpAsk => ({
  rows: rows(114),
  rowsPerCm: perCm(3),
  stitchesPerCm: perCm(2.2),
  rule: ANY_COUNT,
  ...over,
});

describe('stitches picked up along an edge', () => {
  it('make the band as long as the edge: 114 rows are 38 cm, 83.6 stitches', () => {
    const found = pickUp(ask());
    // 2.2 / 3 = 0.7333: 3 of 4 is 2.3 % off and would give 85.5.
    expect(found).toMatchObject({
      kind: 'picked up',
      stitches: 84,
      ratio: { stitches: 3, rows: 4 },
      byRatio: 86,
    });
  });

  it('fit the rib of the band, edge stitches over and above', () => {
    const found = pickUp(ask({ rule: { multiple: 4, plus: 2, edge: 2, parity: 'any' } }));
    // 83.6 + 2 = 85.6, and 4 × 20 + 4 = 84 is nearer than 88.
    expect(found).toMatchObject({ kind: 'picked up', stitches: 84 });
  });

  it('are refused where no count has the parity asked for', () => {
    const rule = { multiple: 2, plus: 1, edge: 0, parity: 'even' } as const;
    expect(pickUp(ask({ rule }))).toEqual({
      kind: 'no such count',
      why: { impossible: 'parity never met', rule },
    });
  });

  it('are more than the rows where the band is denser than the edge', () => {
    const found = pickUp(ask({ rows: rows(24), rowsPerCm: perCm(2), stitchesPerCm: perCm(2.5) }));
    expect(found).toMatchObject({
      stitches: 30,
      between: 'a stitch more',
      runs: [{ pick: 4, times: 6 }],
      ratio: { stitches: 5, rows: 4 },
    });
  });

  it('are one in every row where band and edge are equally dense', () => {
    const found = pickUp(ask({ rows: rows(40), rowsPerCm: perCm(2.2) }));
    expect(found).toMatchObject({ stitches: 40, between: 'nothing', runs: [{ pick: 40, times: 1 }] });
  });

  it('show how they came about', () => {
    const found = pickUp(ask({ rule: { multiple: 4, plus: 2, edge: 2, parity: 'any' } }));
    if (found.kind !== 'picked up') throw new Error(found.kind);
    expect(told(found.workings)).toEqual([
      'length of the edge: a / b = 38 cm',
      'stitches to pick up: a * b + e = 84 stitches',
      'stitches to a row: a / b = 0.733333 ratio',
      'stitches by the ratio alone: a * p / q = 86 stitches',
    ]);
    expect(told(pickUp(ask()).kind === 'picked up' ? (pickUp(ask()) as typeof found).workings : [])[1]).toBe(
      'stitches to pick up: a * b = 84 stitches',
    );
  });

  it('use up every row and every stitch, in stretches that differ by one at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (count, edge) => {
        const { between, runs } = runsFor(count, edge);
        const picked = runs.reduce((sum, r) => sum + r.pick * r.times, 0);
        const breaks = between === 'nothing' ? 0 : runs.reduce((sum, r) => sum + r.times, 0);
        expect([picked, picked + breaks].sort((a, b) => a - b)).toEqual([count, edge].sort((a, b) => a - b));
        expect(between).toBe(count === edge ? 'nothing' : count < edge ? 'a row skipped' : 'a stitch more');
        const picks = runs.map((r) => r.pick);
        expect(Math.max(...picks) - Math.min(...picks)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('have a ratio of the smallest numbers that come within a fortieth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 1.4, noNaN: true }), (share) => {
        const { stitches: p, rows: q } = smallRatio(share);
        const off = Math.abs(p / q / share - 1);
        for (let smaller = 1; smaller < q; smaller += 1) {
          const other = Math.abs(Math.max(1, Math.round(share * smaller)) / smaller / share - 1);
          expect(other > RATIO_WITHIN).toBe(true);
        }
        expect(off).toBeLessThanOrEqual(0.06);
      }),
    );
  });

  it('have the nearest ratio where none comes within a fortieth', () => {
    // 1 in 12 is 11 % off, and so is 1 in 11, 1 in 13 being beyond what can be counted.
    expect(smallRatio(0.075)).toEqual({ stitches: 1, rows: 12 });
    expect(smallRatio(0.06)).toEqual({ stitches: 1, rows: 12 });
  });

  it('have workings that are their own formulas', () => {
    const found = pickUp(ask());
    if (found.kind !== 'picked up') throw new Error(found.kind);
    for (const w of found.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
  });
});

describe('buttonholes', () => {
  const band = { unit: 'rows', length: 114, buttons: 7, first: 3, last: 3, hole: 2 } as const;

  it('lie at equal gaps within one row, from the first inset to the last', () => {
    const found = placeButtons(band);
    if (found.kind !== 'placed') throw new Error(found.kind);
    // 114 − 6 − 14 = 94 rows for 6 gaps: 4 of 16 and 2 of 15.
    expect([...found.gaps].sort()).toEqual([15, 15, 16, 16, 16, 16]);
    expect(found.holes[0]).toEqual({ from: 4, to: 5 });
    expect(found.holes.at(-1)).toEqual({ from: 110, to: 111 });
  });

  it('stand by themselves where there is but one', () => {
    const one = placeButtons({ ...band, buttons: 1 });
    expect(one).toMatchObject({ kind: 'placed', holes: [{ from: 4, to: 5 }], gaps: [] });
    expect(told(one.workings)).toEqual(['rows free between the buttonholes: a - b - c - n * h = 106 rows']);
  });

  it('show how the gaps came about', () => {
    expect(told(placeButtons(band).workings)).toEqual([
      'rows free between the buttonholes: a - b - c - n * h = 94 rows',
      'a shorter gap: a / b = 15 rows',
      'gaps one longer: a - b * c = 4 times',
    ]);
    expect(told(placeButtons({ ...band, length: 20 }).workings)).toEqual([
      'rows free between the buttonholes: a - b - c - n * h = 0 rows',
    ]);
  });

  it.each([{ buttons: 0 }, { hole: 0 }, { length: 10.5 }, { first: 1.5 }])('are refused with %o', (wrong) => {
    expect(() => placeButtons({ ...band, ...wrong })).toThrow(RangeError);
  });

  it('say how many there is room for', () => {
    expect(placeButtons({ ...band, length: 20 })).toMatchObject({ kind: 'no room', most: 5, needed: 26 });
    expect(placeButtons({ ...band, length: 20, buttons: 5 })).toMatchObject({
      kind: 'placed',
      gaps: [1, 1, 1, 1],
    });
  });

  it('always add up to the band', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 1, max: 15 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 1, max: 6 }),
        (length, buttons, first, last, hole) => {
          const asked = { unit: 'stitches', length, buttons, first, last, hole } as const;
          const found = placeButtons(asked);
          for (const w of found.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
          if (found.kind === 'no room') {
            expect(found.most).toBeLessThan(buttons);
            if (found.most > 0) expect(placeButtons({ ...asked, buttons: found.most }).kind).toBe('placed');
            return;
          }
          expect(found.holes.length).toBe(buttons);
          expect(found.holes[0]?.from).toBe(first + 1);
          if (buttons > 1) expect(found.holes.at(-1)?.to).toBe(length - last);
          expect(
            Math.max(0, ...found.gaps) - Math.min(...found.gaps, Math.max(0, ...found.gaps)),
          ).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
