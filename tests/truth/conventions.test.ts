/**
 * Where published rules conflict: the convention that the engine states, the other one where it can be had, and by how
 * many stitches or rows they differ.
 */
import { describe, expect, it } from 'vitest';
import { rowsFor } from '../../src/fit/gauge.ts';
import { readShapingLine } from '../../src/fit/shaping-line.ts';
import { shoulderSlope } from '../../src/fit/shoulder-slope.ts';
import { space } from '../../src/fit/spacing.ts';
import { spread } from '../../src/fit/spread.ts';
import { cm, inches, perCm, rows, stitches } from '../../src/fit/units.ts';

describe('where the first shaping row falls', () => {
  // 'Needle increasing or decreasing' (apparel-analysis, 2013) and 'Sleeve' (designyourownsweater, 2007) divide the rows:
  // the shaping row ends its interval. Patterns word it as on the next row and every 6th row after that.
  it('is at the end of its interval, as the division method has it', () => {
    const spaced = space({
      rows: rows(30),
      from: stitches(40),
      to: stitches(50),
      perRow: 2,
      carriers: 'every row',
      lead: rows(0),
      trail: rows(0),
      order: 'grouped',
    });
    expect(spaced).toMatchObject({ runs: [{ every: 6, times: 5 }] });
    expect(spaced.kind === 'spaced' && spaced.shaping.map(({ row }) => row)).toEqual([6, 12, 18, 24, 30]);
  });

  it('is offered both ways where a pattern’s line leaves it open: five rows earlier on the next row', () => {
    const line = readShapingLine({ text: 'inc 1 st each end of every 6th row 5 times', start: stitches(40) });
    if (line.kind !== 'read') throw new Error(line.kind);
    const [ending, beginning] = line.readings.map(({ shaping }) => shaping.map(({ row }) => row as number));
    expect(ending).toEqual([6, 12, 18, 24, 30]);
    expect(beginning).toEqual([1, 7, 13, 19, 25]);
    expect(line.readings.map(({ end }) => end)).toEqual([50, 50]);
  });

  it('is said by the words of a line that names the next row', () => {
    const line = readShapingLine({ text: 'inc 1 st each end of next row, then every 6th row 4 times more' });
    if (line.kind !== 'read') throw new Error(line.kind);
    expect(line.readings.map(({ shaping }) => shaping.map(({ row }) => row as number))).toEqual([
      [1, 7, 13, 19, 25],
    ]);
  });
});

describe('what lies at the ends of a row with changes', () => {
  // Half a group at either end: 'Decreasing evenly' (forum.knittinghelp.com). A whole one: 'Teach Yourself Visually
  // Knitting', p. 71. None, with a change at either end: 'Decrease step help' (forum.knittinghelp.com).
  it.each([
    ['half', [3, 6, 6, 6, 6, 3]],
    ['whole', [5, 5, 5, 5, 5, 5]],
    // A stitch made lies between two stitches: one stays at either edge.
    ['none', [1, 7, 7, 7, 7, 1]],
  ] as const)('five more on 30 stitches with %s of a group at the ends', (ends, stretches) => {
    const found = spread({ stitches: stitches(30), change: 5, worked: 'flat', ends });
    if (found.kind !== 'spread') throw new Error(found.kind);
    expect(found.stretches).toEqual(stretches);
    expect(found.after).toBe(35);
  });

  it('is half a group where nothing is said', () => {
    const found = spread({ stitches: stitches(30), change: 5, worked: 'flat' });
    expect(found.kind === 'spread' && found.stretches).toEqual([3, 6, 6, 6, 6, 3]);
  });
});

describe('where the stitch over of a shoulder goes', () => {
  // 'Sweater shoulders: transform stair steps to short rows' (TECHknitting, 2012) gives it to the step at the neck.
  const ask = {
    how: 'bind-offs',
    direction: 'up',
    drop: cm(2),
    gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
    shoulder: stitches(16),
    on: { sides: 'start' },
  } as const;
  it('to the step at the armhole, and on request to the one at the neck as published', () => {
    expect(shoulderSlope(ask)).toMatchObject({ steps: [6, 5, 5], rows: 6 });
    expect(shoulderSlope({ ...ask, larger: 'innermost' })).toMatchObject({ steps: [5, 5, 6], rows: 6 });
  });
});

describe('to which even number short rows are rounded', () => {
  // 'How to lower the bottom edge' (maddieharveydesigns.com) and 'Shoulder Slope, Fitting part 2' (2013) always go up;
  // 'Short Rows as Bust Darts' (jg.net, 2010) goes down. The nearest agrees with all three of their examples.
  it.each([
    ['5 cm at 2.2 rows', cm(5), perCm(2.2), 11, 12],
    ['0.75 in at 7 rows', inches(0.75), perCm(7 / 2.54), 5.25, 6],
    ['1 cm at 4.2 rows', cm(1), perCm(4.2), 4.2, 4],
  ])('%s', (_, depth, rate, exact, even) => {
    expect(depth * rate).toBeCloseTo(exact, 9);
    expect(rowsFor(depth, rate, 'even')).toBe(even);
  });

  it('differs by two rows from always going up where less than one row is over: 8.4 are 8, not 10', () => {
    expect(rowsFor(cm(2), perCm(4.2), 'even')).toBe(8);
  });
});
