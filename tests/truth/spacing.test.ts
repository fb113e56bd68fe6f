/**
 * Published worked examples of shaping over a length, and of waist shaping. Each publication's stitch counts, totals of
 * rows and pairs of intervals are tested; row numbers only where its convention is ours (the shaping row ends its interval).
 */
import { describe, expect, it } from 'vitest';
import { type Gauge, rateAsPrinted, rowsFor, stitchesFor } from '../../src/fit/gauge.ts';
import { type Carriers, type Spaced, space } from '../../src/fit/spacing.ts';
import { cm, inches, type LengthUnit, lengthIn, perCm, rows, stitches } from '../../src/fit/units.ts';

interface Published {
  readonly source: string;
  readonly rows: number;
  readonly from: number;
  readonly to: number;
  readonly perRow?: number;
  readonly carriers?: Carriers;
  readonly lead?: number;
  readonly trail?: number;
  /** every → times */
  readonly runs: readonly (readonly [every: number, times: number])[];
  readonly shapingRows?: readonly number[];
  readonly counts?: readonly number[];
}

// biome-ignore format: one example stands below another
const EXAMPLES: readonly Published[] = [
  { source: 'Sleeve, designyourownsweater, 2007: 196 rows less 20 plain, 72 to 156 stitches', rows: 196, from: 72, to: 156, trail: 20, runs: [[5, 8], [4, 34]] },
  { source: 'Needle increasing or decreasing (the division method), apparel-analysis, 2013: 36 a side over 140 rows', rows: 140, from: 40, to: 112, runs: [[4, 32], [3, 4]] },
  { source: 'Malroy, sleeve number 4, projekteprojekte, 2010: 42 to 56 over 56 of 74 rows', rows: 60, from: 42, to: 56, trail: 4, runs: [[8, 7]],
    shapingRows: [8, 16, 24, 32, 40, 48, 56], counts: [44, 46, 48, 50, 52, 54, 56] },
  { source: 'How to figure out decrease and increase placement, knittingunplugged, 2016: 50 to 72 over 84 of 91 rows', rows: 91, from: 50, to: 72, trail: 7, runs: [[8, 7], [7, 4]] },
  { source: 'Guide to Basic Knitwear Design: Shaping, suite101: 42 to 92 over 90 rows (the exact fit)', rows: 90, from: 42, to: 92, runs: [[4, 15], [3, 10]] },
  { source: 'Top-down to measure, wollequeen: 26 stitches over 150 rounds, two intervals (its one-interval answer leaves 7 plain)', rows: 150, from: 70, to: 44, runs: [[11, 6], [12, 7]] },
  { source: 'Waffles #7: sleeves, needlesnotesandnews, 2008: 54 to 30 by every third round 12 times after 6 plain', rows: 42, from: 54, to: 30, lead: 6, runs: [[3, 12]] },
  { source: 'Pattern writing and applied maths, natalieinstitches, 2021, first phase: every row 6 times', rows: 6, from: 30, to: 24, perRow: 1, runs: [[1, 6]] },
  { source: 'Pattern writing and applied maths, natalieinstitches, 2021, second phase: every 2nd row 6 times', rows: 12, from: 24, to: 18, perRow: 1, runs: [[2, 6]] },
  { source: 'Pattern writing and applied maths, natalieinstitches, 2021, third phase: every 4th row 3 times', rows: 12, from: 18, to: 15, perRow: 1, runs: [[4, 3]] },
];

describe('published examples of shaping over a length', () => {
  it.each(EXAMPLES)('$source', (e) => {
    const s = space({
      rows: rows(e.rows),
      from: stitches(e.from),
      to: stitches(e.to),
      perRow: e.perRow ?? 2,
      carriers: e.carriers ?? 'every row',
      lead: rows(e.lead ?? 0),
      trail: rows(e.trail ?? 0),
      order: 'grouped',
    }) as Spaced;
    expect(s.runs.map((r) => [r.every, r.times])).toEqual(e.runs);
    if (e.shapingRows !== undefined) expect(s.shaping.map((r) => r.row)).toEqual(e.shapingRows);
    if (e.counts !== undefined) expect(s.shaping.map((r) => r.after)).toEqual(e.counts);
  });

  it('Malroy, sleeve number 4, 2010: shifted to right-side rows it falls on the rows that were printed', () => {
    // Rows 15 to 70 of the sleeve; the shaping starts after 14 rows of cuff, so row 21 is the section's 7th.
    const s = space({
      rows: rows(60),
      from: stitches(42),
      to: stitches(56),
      perRow: 2,
      carriers: 'odd rows',
      lead: rows(0),
      trail: rows(4),
      order: 'grouped',
    }) as Spaced;
    expect(s.shaping.map((r) => r.row + 14)).toEqual([21, 29, 37, 45, 53, 61, 69]);
  });

  it('How do you calculate a decrease in sleeve?, bkkquilt: 80 to 45 is odd, so both neighbours are offered', () => {
    const s = space({
      rows: rows(144),
      from: stitches(80),
      to: stitches(45),
      perRow: 2,
      carriers: 'every row',
      lead: rows(0),
      trail: rows(0),
      order: 'grouped',
    });
    if (s.kind !== 'no multiple') throw new Error(`expected a refusal, got ${s.kind}`);
    expect(s.alternatives.map((a) => [a.spaced.shaping.length, a.spaced.to])).toEqual([
      [17, 46],
      [18, 44],
    ]);
  });
});

const gauge = (sts: number, rws: number, over: number, unit: LengthUnit): Gauge => ({
  stitches: rateAsPrinted({ count: sts, span: lengthIn(over, unit), unit }),
  rows: rateAsPrinted({ count: rws, span: lengthIn(over, unit), unit }),
  worked: 'round',
});

describe('published lengths and widths around a sleeve', () => {
  it('Sleeve, designyourownsweater, 2007: 49 cm at 40 rows to 10 cm is 196 rows; 26 and 56 cm at 28 stitches are 72.8 and 156.8', () => {
    const g = gauge(28, 40, 10, 'cm');
    expect(rowsFor(cm(49), g.rows.perCm)).toBe(196);
    const raw = (w: number) => stitchesFor(cm(w), g.stitches.perCm);
    expect([raw(26), raw(56)].map((c) => ('exact' in c ? c.exact : Number.NaN))).toEqual([
      expect.closeTo(72.8, 9),
      expect.closeTo(156.8, 9),
    ]);
    // It cuts both down to even counts, 72 and 156: our lower neighbour.
    const even = stitchesFor(cm(26), g.stitches.perCm, { multiple: 2, plus: 0, edge: 0, parity: 'any' });
    expect('below' in even && even.below.stitches).toBe(72);
  });

  it('Math Monday: Decreasing part I, papermoonknits: 13 and 9.5 in at 4.75 per inch are 62 and 46, nearest even', () => {
    const even = { multiple: 1, plus: 0, edge: 0, parity: 'even' as const };
    const count = (w: number) => stitchesFor(inches(w), perCm(4.75 / 2.54), even);
    expect([count(13), count(9.5)].map((c) => ('chosen' in c ? c.chosen : 0))).toEqual([62, 46]);
  });

  it('Math Monday: Sleeve Magic, papermoonknits: 14 in at 6 rounds per inch are 84 rounds', () => {
    expect(rowsFor(inches(18 - 1 - 1 - 2), perCm(6 / 2.54))).toBe(84);
  });

  it('How to lengthen or shorten the sleeves, maddieharveydesigns: 5 cm at 33.5 rounds to 10 cm are 17 rounds', () => {
    expect(rowsFor(cm(5), gauge(20, 33.5, 10, 'cm').rows.perCm)).toBe(17);
  });

  it('How do you calculate a decrease in sleeve?, bkkquilt: 18 in at 8 rounds per inch are 144 rounds', () => {
    expect(rowsFor(inches(21 - 1 - 1 - 1), perCm(8 / 2.54))).toBe(144);
  });
});

describe('published waist shaping: Waist Shaping, Interweave (Knitting Daily), 2008', () => {
  const [spi, rpi] = [perCm(7 / 2.54), perCm(13 / 2.54)];

  it('the math, hem to hip: 45.5 in finished at 7 per inch are 318.5, taken up to 319; 2 in are 26 rounds', () => {
    const hip = stitchesFor(inches(44 + 1.5), spi);
    expect('exact' in hip && hip.exact).toBeCloseTo(318.5, 9);
    expect('chosen' in hip && hip.chosen).toBe(319);
    expect(rowsFor(inches(2), rpi)).toBe(26);
  });

  it('from hip to waist: 52 of 319 stitches go in 13 rounds of 4, leaving 267', () => {
    const waist = stitchesFor(inches(36.5 + 1.5), spi, {
      multiple: 4,
      plus: 319 % 4,
      edge: 0,
      parity: 'any',
    });
    expect('chosen' in waist && waist.chosen).toBe(267);
    const s = space({
      rows: rows(78),
      from: stitches(319),
      to: stitches(267),
      perRow: 4,
      carriers: 'every row',
      lead: rows(0),
      trail: rows(0),
      order: 'grouped',
    }) as Spaced;
    expect(s.shaping).toHaveLength(13);
    expect(s.runs.map((r) => [r.every, r.times])).toEqual([[6, 13]]);
  });

  it('from waist on up: an inch plain is 13 rounds; 32 stitches come back in 8 rounds of 4, to 299', () => {
    expect(rowsFor(inches(1), rpi)).toBe(13);
    const bust = stitchesFor(inches(41 + 1.5), spi, { multiple: 4, plus: 267 % 4, edge: 0, parity: 'any' });
    expect('chosen' in bust && bust.chosen).toBe(299);
  });

  it('Reading a pattern: shaping to the waist, zanotowane: 91, 103, 113 to 99, 111, 121 in 4 rows of 2', () => {
    for (const [from, to] of [
      [91, 99],
      [103, 111],
      [113, 121],
    ] as const) {
      const s = space({
        rows: rows(24),
        from: stitches(from),
        to: stitches(to),
        perRow: 2,
        carriers: 'every row',
        lead: rows(0),
        trail: rows(0),
        order: 'grouped',
      }) as Spaced;
      expect(s.shaping.map((r) => r.row)).toEqual([6, 12, 18, 24]);
    }
  });
});
