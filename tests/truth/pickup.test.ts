/** Published worked examples of picking up and of buttonholes, and questions met in public knitting talk. */
import { describe, expect, it } from 'vitest';
import { placeButtons } from '../../src/fit/buttons.ts';
import { ANY_COUNT, rateAsPrinted, rowsFor, stitchesFor, widthOf } from '../../src/fit/gauge.ts';
import { pickUp, runsFor, smallRatio } from '../../src/fit/pickup.ts';
import { cm, inches, lengthIn, perCm, rows } from '../../src/fit/units.ts';

const perInch = (count: number) => perCm(count / 2.54);

describe('picking up', () => {
  it('71 stitches of 88 rows skips 17 and runs of 4.18 (forum.knittinghelp.com, How to knit up)', () => {
    const { between, runs } = runsFor(71, 88);
    expect(between).toBe('a row skipped');
    // The publication picks up 4, skips 1, 17 times, then 3 more; here the same 71 in runs of 5 and 4.
    expect(runs).toEqual([
      { pick: 5, times: 3 },
      { pick: 4, times: 14 },
    ]);
    expect(runs.reduce((sum, r) => sum + r.pick * r.times, 0) / 17).toBeCloseTo(4.176, 3);
  });

  it('20 in at 16 stitches and 24 rows to 4 in: 80 stitches of 120 rows, 2 of 3 (menwhoknit.com, Picking Up Stitches)', () => {
    const found = pickUp({
      rows: rows(120),
      rowsPerCm: perInch(24 / 4),
      stitchesPerCm: perInch(16 / 4),
      rule: ANY_COUNT,
    });
    expect(found).toMatchObject({ stitches: 80, byRatio: 80, ratio: { stitches: 2, rows: 3 } });
  });

  it('an armhole of 18 in at 5 stitches to the inch takes 90 (livingwithgotlands.com, 2015)', () => {
    expect(stitchesFor(inches(18), perInch(5))).toMatchObject({ chosen: 90 });
  });

  it('53 stitches along 11.5 in are 4.61 to the inch, 18.43 to 4 in (forum.knittinghelp.com, Picking up stitches)', () => {
    const counted = rateAsPrinted({ count: 53, span: inches(11.5), unit: 'in' });
    expect(stitchesFor(inches(1), counted.perCm)).toMatchObject({ exact: expect.closeTo(4.61, 2) });
    expect(stitchesFor(inches(4), counted.perCm)).toMatchObject({
      exact: expect.closeTo(18.43, 2),
      chosen: 18,
    });
  });

  it('24 stitches and 32 rows to 10 cm: 35 cm of sleeve are 84 stitches (ivicreas.com, in French)', () => {
    expect(stitchesFor(cm(35), perCm(2.4))).toMatchObject({ chosen: 84 });
    // The pattern's 32 cm are 76.8; it prints 76.
    expect(stitchesFor(cm(32), perCm(2.4), { ...ANY_COUNT, parity: 'even' })).toMatchObject({
      exact: expect.closeTo(76.8, 9),
      below: { stitches: 76 },
    });
  });

  it.each([
    [24 / 32, 3, 4],
    [0.8, 4, 5],
    [5 / 7, 5, 7],
    [2 / 3, 2, 3],
  ])('a share of %f is %i of %i, as the trade says it', (share, p, q) => {
    expect(smallRatio(share)).toEqual({ stitches: p, rows: q });
  });
});

describe('buttonholes', () => {
  it('3 buttons, end buttons 2.5 in apart at 9 rows to the inch: every 11 rows (slippedstitches.wordpress.com, 2016)', () => {
    // The publication rounds down: 4 rows at the ends for 4.5, buttons every 11 rows for 11.25. A button sits on a single row.
    // Ours are rounded to the nearest row: 5 for 4.5, and 11 for 11.25 as published.
    expect([rowsFor(inches(0.5), perInch(9)), rowsFor(inches(2.5 / 2), perInch(9))]).toEqual([5, 11]);
    const found = placeButtons({ unit: 'rows', length: 4 + 23 + 4, buttons: 3, first: 4, last: 4, hole: 1 });
    if (found.kind !== 'placed') throw new Error(found.kind);
    expect(found.holes.map((h) => h.from)).toEqual([5, 16, 27]);
  });

  it('8 buttons over 15 in have 7 spaces of 2.143 in (treadleyardgoods.blogspot.com, Spacing buttonholes, 2023)', () => {
    // In rows, 7 to the inch: 105 rows from the first to the last, so no drift of an eighth of an inch comes about.
    const found = placeButtons({ unit: 'rows', length: 106, buttons: 8, first: 0, last: 0, hole: 1 });
    if (found.kind !== 'placed') throw new Error(found.kind);
    const steps = found.holes.slice(1).map((h, i) => (h.from - (found.holes[i]?.from ?? 0)) / 7);
    expect(steps).toHaveLength(7);
    for (const step of steps) expect(step).toBeCloseTo(2.143, 3);
  });
});

describe('a question met in public knitting talk, worked answer collected 2026', () => {
  it('80 to pick up in 102 rows: 14 times 4 and 8 times 3, 22 rows skipped; 0.784, near 4 of 5', () => {
    expect(runsFor(80, 102)).toEqual({
      between: 'a row skipped',
      runs: [
        { pick: 4, times: 14 },
        { pick: 3, times: 8 },
      ],
    });
    expect(smallRatio(80 / 102)).toEqual({ stitches: 4, rows: 5 });
  });

  it('child’s band: 53 stitches seem few; at 22 to 4 in 11.5 in want 63', () => {
    expect(stitchesFor(inches(11.5), perInch(22 / 4))).toMatchObject({ chosen: 63 });
    expect(smallRatio(53 / 80)).toEqual({ stitches: 2, rows: 3 });
  });

  it('sleeves last, 23 stitches to 4 in: 15.5 in pick up 88 and the cuff of 9 in keeps 52, multiples of 4', () => {
    const fours = { ...ANY_COUNT, multiple: 4 };
    expect(stitchesFor(inches(15.5), perInch(23 / 4), fours)).toMatchObject({ chosen: 88 });
    expect(stitchesFor(lengthIn(9, 'in'), perInch(23 / 4), fours)).toMatchObject({ chosen: 52 });
    expect(
      widthOf(143, {
        stitches: { perCm: perInch(23 / 4), se: 0, counts: [] },
        rows: { perCm: perInch(8), se: 0, counts: [] },
        worked: 'round',
      }) / 2.54,
    ).toBeCloseTo(24.9, 1);
  });
});
