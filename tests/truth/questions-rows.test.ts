/**
 * Questions met in public knitting talk about a row gauge that is off and about shaping over the rows that are left,
 * worked answers collected 2026; the situations in our own words.
 */
import { describe, expect, it } from 'vitest';
import { rowsFor, stitchesFor } from '../../src/fit/gauge.ts';
import { retell } from '../../src/fit/regauge-rows.ts';
import { readShapingLine } from '../../src/fit/shaping-line.ts';
import { type Carriers, space } from '../../src/fit/spacing.ts';
import { inches, perCm, rows, stitches } from '../../src/fit/units.ts';

const perInch = (count: number) => perCm(count / 2.54);

/** Runs as interval → times, and the rows over. */
function spread(length: number, from: number, to: number, perRow: number, carriers: Carriers = 'every row') {
  const spaced = space({
    rows: rows(length),
    from: stitches(from),
    to: stitches(to),
    perRow,
    carriers,
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
  });
  if (spaced.kind !== 'spaced') throw new Error(spaced.kind);
  return {
    runs: Object.fromEntries(spaced.runs.map((r) => [r.every, r.times])),
    over: spaced.plainAfter,
    base: spaced.base,
  };
}

describe('set-in sleeve, 5.25 rows to the inch for 4.25: the first and every sixth row, ten increases', () => {
  const line = readShapingLine({ text: 'inc on first and every 6th row for a total of 10 increases' });

  it('takes 55 rows, 12.9 in, which are 68 rows at the own gauge', () => {
    if (line.kind !== 'read') throw new Error(line.kind);
    const [reading] = line.readings;
    expect(reading?.rows).toBe(55);
    const told = retell('sleeve', rows(55), { pattern: perInch(4.25), own: perInch(5.25) }, 'whole');
    expect(told.length / 2.54).toBeCloseTo(12.9, 1);
    expect(told.rows).toBe(68);
  });

  it('goes on after row 1 with every 8th row 4 times and every 7th 5 times', () => {
    expect(spread(67, 40, 58, 2)).toMatchObject({ runs: { 8: 4, 7: 5 }, over: 0 });
  });

  it('or on right-side rows only with every 8th 6 times and every 6th 3 times, one row over', () => {
    // After row 1, right-side rows are the even ones of what follows.
    expect(spread(67, 40, 58, 2, 'even rows')).toMatchObject({ runs: { 8: 6, 6: 3 }, over: 1 });
  });
});

const FOURS = { multiple: 4, plus: 0, edge: 0, parity: 'any' } as const;

describe('rows that are left', () => {
  it.each([
    [24, { 10: 4, 9: 2 }],
    [20, { 12: 3, 11: 2 }],
  ])('waist in the round: %i stitches, four a round, over 58 rounds', (lost, runs) => {
    expect(spread(58, 200, 200 - lost, 4)).toMatchObject({ runs, over: 0 });
  });

  it('waist in the round: 5 in at 4.5 are 22.5 stitches, between 20 and 24 of four at a time', () => {
    expect(stitchesFor(inches(5), perInch(4.5), FOURS)).toMatchObject({
      exact: 22.5,
      below: { stitches: 20 },
      above: { stitches: 24 },
    });
  });

  it('top-down sleeve from 88 to 52 over 100 rounds: every 6th 10 times and every 5th 8 times', () => {
    expect(spread(100, 88, 52, 2)).toMatchObject({ runs: { 6: 10, 5: 8 }, over: 0 });
  });

  it('top-down sleeve from 58 to 40 over 105 rounds: every 12th 6 times and every 11th 3 times', () => {
    // 17 in less 1 in of rib and 1 in plain at 7 rounds to the inch.
    expect(rowsFor(inches(17 - 1 - 1), perInch(7))).toBe(105);
    expect(spread(105, 58, 40, 2)).toMatchObject({ runs: { 12: 6, 11: 3 }, over: 0 });
  });

  it('sleeve too wide: 12 increases over the rows of 21 every 4th are 84 rows, every 7th', () => {
    expect(spread(4 * 21, 34, 58, 2)).toMatchObject({ runs: { 7: 12 }, over: 0 });
  });

  it('one sleeve an inch longer than the other: 7 rounds at 7 to the inch', () => {
    expect(rowsFor(inches(1), perInch(7))).toBe(7);
  });

  it('yoke an inch and a half too shallow: 9 rows at 6 to the inch, 10 where they are to be even', () => {
    expect(rowsFor(inches(1.5), perInch(6))).toBe(9);
    expect(rowsFor(inches(1.5), perInch(6), 'even')).toBe(10);
  });

  it('cardigan of 35 in drawn in to 28 at 4.25: 29.75 stitches lie between 28 and 32, of four at a time', () => {
    expect(stitchesFor(inches(35 - 28), perInch(4.25), FOURS)).toMatchObject({
      exact: expect.closeTo(29.75, 9),
      below: { stitches: 28, width: inches(28 / 4.25) },
      above: { stitches: 32, width: inches(32 / 4.25) },
    });
    // Seven rows of four: the first at once, then every 4th row 3 times and every 6th 3 times over 30 rows.
    expect(spread(30, 144, 120, 4, 'even rows')).toMatchObject({ runs: { 6: 3, 4: 3 }, over: 0 });
  });

  it('waist of 54 stitches over 42 rows: 27 at one side edge take 15 second rows and 12 single ones', () => {
    expect(spread(42, 109, 82, 1)).toMatchObject({ runs: { 2: 15, 1: 12 }, over: 0 });
  });

  it('the same 54 by darts too, four a row, are no whole rows: 13 or 14, and 13 lie on every third', () => {
    const asked = { rows: rows(42), from: stitches(218), perRow: 4, carriers: 'every row' } as const;
    const found = space({ ...asked, to: stitches(164), lead: rows(0), trail: rows(0), order: 'grouped' });
    if (found.kind !== 'no multiple') throw new Error(found.kind);
    expect(found.alternatives.map(({ spaced }) => [spaced.shaping.length, spaced.to])).toEqual([
      [13, 166],
      [14, 162],
    ]);
    const three = { ...asked, to: stitches(166), lead: rows(0), trail: rows(3), order: 'grouped' } as const;
    expect(space(three)).toMatchObject({ runs: [{ every: 3, times: 13 }], plainAfter: 3 });
  });

  it('cuff too tight: half the decreases leave a cuff half way between 60 stitches and the old 36', () => {
    // The counts are our own; the asker gave none. Every eighth row for every fourth over the same 48 rows.
    const [old, eased] = [4, 8].map((every) =>
      readShapingLine({
        text: `dec 1 st each end of every ${every}th row ${48 / every} times`,
        start: stitches(60),
      }),
    );
    const ended = [old, eased].map((line) => (line?.kind === 'read' ? line.readings[0]?.end : undefined));
    expect(ended).toEqual([36, (60 + 36) / 2]);
    // Over knuckles of 9 in at 5.5 stitches the cuff wants 49.5, so 50: five decreases in place of six.
    expect(stitchesFor(inches(9), perInch(5.5))).toMatchObject({
      exact: expect.closeTo(49.5, 9),
      chosen: 50,
    });
    expect(spread(48, 60, 50, 2)).toMatchObject({ runs: { 10: 3, 9: 2 }, over: 0 });
  });

  it('child between two sizes, one inch more of sleeve: six rows, laid between the increases', () => {
    // The row gauge and the sleeve are our own.
    const more = rowsFor(inches(1), perInch(6));
    expect(more).toBe(6);
    expect(spread(48, 30, 42, 2)).toMatchObject({ runs: { 8: 6 }, over: 0 });
    expect(spread(48 + more, 30, 42, 2)).toMatchObject({ runs: { 9: 6 }, over: 0 });
  });
});
