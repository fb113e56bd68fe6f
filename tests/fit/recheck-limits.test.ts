import { describe, expect, it } from 'vitest';
import type { Gauge } from '../../src/fit/gauge.ts';
import { level, type Piece, piece } from '../../src/fit/outline.ts';
import { recheck } from '../../src/fit/recheck.ts';
import { ahead } from '../../src/fit/recheck-ahead.ts';
import { measuresOf, measureWorkings, type Placed } from '../../src/fit/recheck-measures.ts';
import { perCm, rows, stitches } from '../../src/fit/units.ts';
import type { Worked } from '../../src/fit/words.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const PLANNED = over10cm(20, 30);

/** A gauge at which the stitches of 50 cm measure `width`, give or take two standard errors of `either`. */
function measuring(width: number, either: number): Gauge {
  const rate = perCm(100 / width);
  const se = (either / width / 2) * rate;
  return { ...PLANNED, stitches: { perCm: rate, se, counts: [] } };
}

const PLACED: Placed = { planned: level('bust', 0, 100), row: 0, stitches: 100, knitted: true };

/** What is said of 100 stitches that were planned as 50 cm: 1.25 cm is allowed. */
function said(width: number, either: number) {
  const [measure] = measuresOf([PLACED], PLANNED, measuring(width, either), 0);
  return { within: measure?.within, sure: measure?.sure };
}

describe('a width planned as 50 cm', () => {
  it.each([
    ['as planned, and surely', 50, 0, true, true],
    ['a little off, with its whole range', 50.5, 0.5, true, true],
    ['just as far off as is allowed', 51.25, 0, true, true],
    ['within, its range beyond on one side', 51, 0.5, true, false],
    ['within, its range beyond on the other', 49, 0.5, true, false],
    ['within, its range beyond on both', 50, 2, true, false],
    ['too wide, with its whole range', 53, 0.5, false, true],
    ['too narrow, with its whole range', 47, 0.5, false, true],
    ['too wide, though its range reaches back within', 53, 2.5, false, false],
    ['too wide, though it may even be too narrow', 51.5, 4, false, false],
  ])('%s: %d cm, give or take %d', (_, width, either, within, sure) => {
    expect(said(width, either)).toEqual({ within, sure });
  });
});

describe('what is allowed', () => {
  const widthOff = (planned: number, real: number) => {
    const placed = { ...PLACED, planned: level('wrist', 0, planned), stitches: real };
    return measuresOf([placed], PLANNED, PLANNED, 0)[0]?.within;
  };

  it('is half a centimetre on a wrist and a fortieth on a bust', () => {
    expect([widthOff(32, 33), widthOff(32, 34)]).toEqual([true, false]);
    expect([widthOff(200, 205), widthOff(200, 206)]).toEqual([true, false]);
  });

  it('is half an inch on a length, which is told of every level but the first', () => {
    const lengthOff = (row: number) => {
      const placed = { ...PLACED, planned: level('underarm', 90, 100), row };
      return measuresOf([placed], PLANNED, PLANNED, 0).find((m) => m.of === 'length')?.within;
    };
    expect([lengthOff(93), lengthOff(94), lengthOff(87), lengthOff(86)]).toEqual([true, false, true, false]);
    expect(measuresOf([PLACED], PLANNED, PLANNED, 0).map((m) => m.of)).toEqual(['width']);
  });

  it('shows how each measure came about, edge stitches left out', () => {
    const placed = { planned: level('underarm', 90, 102), row: 96, stitches: 106, knitted: false };
    const real: Gauge = {
      ...PLANNED,
      stitches: { perCm: perCm(2.1), se: 0.01, counts: [PLANNED, PLANNED].flatMap((g) => g.stitches.counts) },
    };
    expect(told(measureWorkings([placed], PLANNED, real, 2))).toEqual([
      'stitches to a centimetre, as knitted: a / b = 2 stitches/cm',
      'rows to a centimetre, as knitted: a / b = 3 rows/cm',
      'width at the underarm, planned: (a - b) / c = 50 cm',
      'width at the underarm, at the gauge as knitted: (a - b) / c = 49.52381 cm',
      'width at the underarm, give or take: 2 * a * s / r = 0.471655 cm',
      'length to the underarm, planned: a / b = 30 cm',
      'length to the underarm, at the gauge as knitted: a / b = 32 cm',
      'length to the underarm, give or take: 2 * a * s / r = 0 cm',
    ]);
    expect(told(measureWorkings([PLACED], PLANNED, PLANNED, 0)).slice(2)).toEqual([
      'width at the bust, planned: a / c = 50 cm',
      'width at the bust, at the gauge as knitted: a / c = 50 cm',
      'width at the bust, give or take: 2 * a * s / r = 0 cm',
    ]);
  });
});

const SLEEVE = piece('sleeve', 'flat', 'up', [
  level('wrist', 0, 44),
  level('elbow', 60, 60),
  level('upper arm', 120, 74),
]);
const FLAT = { perRow: 2, carriers: 'odd rows', edge: 2 } as const;

function halfway(row: number, count: number, real = PLANNED) {
  const now = { row: rows(row), stitches: stitches(count) };
  return recheck({ piece: SLEEVE, planned: PLANNED, real, now, shaped: FLAT });
}

describe('the count on the needle', () => {
  it('may be off by one shaping row, not by more, and not by a single stitch', () => {
    // 30 rows in, half of the way from 44 to 60 stitches.
    const kinds = [52, 54, 50, 56, 53].map((count) => halfway(30, count).kind);
    expect(kinds).toEqual(['on track', 'on track', 'on track', 'mend ahead', 'mend ahead']);
  });

  it('is let be where nothing is left to knit', () => {
    expect(halfway(120, 75).kind).toBe('on track');
  });

  it('needs a piece of knitting', () => {
    expect(() => halfway(-1, 44)).toThrow(/-1 rows and 44 stitches are no piece/);
    expect(() => halfway(10, 0)).toThrow(/10 rows and 0 stitches are no piece/);
    expect(halfway(10, 1).kind).not.toBe('on track');
  });
});

describe('the rest of a piece', () => {
  const from = { row: 31, stitches: 50 };
  const gauge = { planned: PLANNED, real: over10cm(22, 27) };

  it('has every section from the row at hand on, none of it knitted yet', () => {
    const rest = ahead({
      planned: SLEEVE,
      gauge,
      shaped: FLAT,
      from,
      anew: { counts: true, rows: true },
    });
    // 60 and 120 rows × 2.7 / 3 are 54 and 108; (60 − 2) and (74 − 2) stitches × 2.2 / 2 + 2 are 65.8 and 81.2.
    expect(rest.levels.map((l) => [l.row, l.stitches, l.knitted])).toEqual([
      [54, 66, false],
      [108, 82, false],
    ]);
    expect(rest.sections).toMatchObject([
      { kind: 'spaced', rows: 23, carriers: 'even rows' },
      { kind: 'spaced', rows: 54, carriers: 'odd rows' },
    ]);
    expect(told(rest.workings).slice(0, 4)).toEqual([
      'rows to the elbow: a * b / c = 54 rows',
      'stitches at the elbow: (a - e) * b / c + e = 66 stitches',
      'rows to the upper arm: a * b / c = 108 rows',
      'stitches at the upper arm: (a - e) * b / c + e = 82 stitches',
    ]);
    expect(rest.workings.length).toBeGreaterThan(4);
  });

  it('keeps rows and counts where they need not change', () => {
    const rest = ahead({ planned: SLEEVE, gauge, shaped: FLAT, from, anew: { counts: false, rows: false } });
    expect(rest.levels.map((l) => [l.row, l.stitches])).toEqual([
      [60, 60],
      [120, 74],
    ]);
    expect(told(rest.workings).slice(0, 2)).toEqual([
      'rows to the elbow: a = 60 rows',
      'stitches at the elbow: a = 60 stitches',
    ]);
  });

  it('lets every row carry shaping where it could before', () => {
    const round: Piece = { ...SLEEVE, worked: 'round' };
    const shaped = { perRow: 2, carriers: 'every row', edge: 0 } as const;
    const rest = ahead({ planned: round, gauge, shaped, from, anew: { counts: false, rows: true } });
    expect(rest.sections[0]).toMatchObject({ carriers: 'every row', rows: 23 });
  });
});

describe('a straight piece that has grown too long', () => {
  const straight = (worked: Worked, underarm: number) =>
    piece('body', worked, 'up', [
      level('hem', 0, 220),
      level('waist', 20, 220),
      level('underarm', 114, underarm),
    ]);
  const ripped = (worked: Worked, row: number, underarm = 220, count = 220) => {
    const found = recheck({
      piece: straight(worked, underarm),
      planned: over10cm(22, 30),
      real: over10cm(22, 26),
      now: { row: rows(row), stitches: stitches(count) },
      shaped: { perRow: 4, carriers: 'every row', edge: 0 },
    });
    if (found.kind !== 'decide') throw new Error(found.kind);
    return [found.ripBack.to, found.ripBack.from.row];
  };

  it('is ripped back to the row that has the length: 98.8 rounds are 99, and 98 rows of a flat piece', () => {
    expect(ripped('round', 110)).toEqual(['within a straight section', 99]);
    expect(ripped('flat', 110)).toEqual(['within a straight section', 98]);
  });

  it('is ripped back to the level before where it was shaped since', () => {
    expect(ripped('round', 110, 240, 240)[0]).not.toBe('within a straight section');
    expect(ripped('round', 110, 240, 220)[0]).not.toBe('within a straight section');
  });
});

describe('what is worked out anew', () => {
  const sleeve = piece('sleeve', 'flat', 'up', [
    level('cuff', 0, 44),
    level('wrist', 18, 44),
    level('upper arm', 132, 74),
  ]);
  /** The rest from the wrist on, planned at 22 stitches and 30 rows. */
  const rest = (real: Gauge) => {
    const now = { row: rows(18), stitches: stitches(44) };
    const found = recheck({ piece: sleeve, planned: over10cm(22, 30), real, now, shaped: FLAT });
    if (found.kind !== 'mend ahead') throw new Error(found.kind);
    const [, upperArm] = found.rest.piece.levels;
    return { off: found.off.map(({ of }) => of), upperArm: [upperArm?.row, upperArm?.stitches], found };
  };

  it('is the rows alone where only lengths would be off: 132 × 2.7 / 3 less 18 are 100', () => {
    // At 22.4 to 10 cm the arm would be 32.1 cm for 32.7, which is near enough.
    expect(rest(over10cm(22.4, 27))).toMatchObject({ off: ['length'], upperArm: [100, 74] });
  });

  it('is the stitches alone where only widths would be off: 72 × 2.145 / 2.2 + 2 are 72', () => {
    // At 29.5 rows to 10 cm the sleeve would be 44.7 cm long for 44.
    expect(rest(over10cm(21.45, 29.5))).toMatchObject({ off: ['width'], upperArm: [114, 72] });
  });

  it('is both where both would be off', () => {
    expect(rest(over10cm(21.45, 27))).toMatchObject({ off: ['width', 'length'], upperArm: [100, 72] });
  });

  it('is shown after the measures: level by level', () => {
    const { found } = rest(over10cm(21.45, 27));
    expect(found.workings.slice(-found.rest.workings.length)).toEqual(found.rest.workings);
    expect(told(found.workings).slice(0, 2)).toEqual([
      'stitches to a centimetre, as knitted: a / b = 2.145 stitches/cm',
      'rows to a centimetre, as knitted: a / b = 2.7 rows/cm',
    ]);
  });
});

describe('a body in the round', () => {
  const body = (hem: number, underarm: number) =>
    piece('body', 'round', 'up', [level('hem', 0, hem), level('underarm', 114, underarm)]);
  const ROUND = { perRow: 4, carriers: 'every row', edge: 0 } as const;
  const found = (of: Piece, row: number, count: number, real = over10cm(22, 30)) =>
    recheck({
      piece: of,
      planned: over10cm(22, 30),
      real,
      now: { row: rows(row), stitches: stitches(count) },
      shaped: ROUND,
    });

  it('is on track on any count from which shaping rows of four reach the next: 217 and 221', () => {
    expect(found(body(217, 221), 60, 217).kind).toBe('on track');
    expect(found(body(217, 221), 60, 219).kind).not.toBe('on track');
  });

  it('that is too wide from its hem on is begun again, with the count that has the width', () => {
    // 222 × 2 / 2.2 = 201.8, in fours and two: 202.
    const loose = found(body(222, 222), 60, 222, over10cm(20, 30));
    if (loose.kind !== 'decide') throw new Error(loose.kind);
    expect(loose.ripBack).toMatchObject({ rows: 60, to: 'the start, with another count' });
    expect(loose.ripBack.from).toEqual({ row: 0, stitches: 202 });
    expect(loose.ripBack.levels.map((l) => [l.planned.name, l.stitches])).toEqual([
      ['hem', 202],
      ['underarm', 202],
    ]);
    expect(told(loose.workings)).toContain('rows to rip back: a - b = 60 rows');
    expect(told(loose.workings)).toContain(
      'stitches at the hem, begun again: (a - e) * b / c + e = 202 stitches',
    );
  });

  it('whose waist is knitted too wide is ripped back to what lies below it', () => {
    const shaped = piece('body', 'round', 'up', [
      level('hem', 0, 36),
      level('waist', 60, 220),
      level('underarm', 120, 240),
    ]);
    // At 21.4 to 10 cm, 36 stitches are near enough; 220 are 102.8 cm for 100.
    const loose = found(shaped, 80, 228, over10cm(21.4, 30));
    if (loose.kind !== 'decide') throw new Error(loose.kind);
    expect(loose.goOn.cost.map(({ level: at, of }) => [at, of])).toEqual([['waist', 'width']]);
    expect(loose.ripBack).toMatchObject({ rows: 80, to: 'hem', from: { row: 0, stitches: 36 } });
  });

  it('that is ripped back to a level at which it stands loses no row by it', () => {
    // 24 shaping rows more are needed than the 4 rounds that are left have: back to the hem, 110 rounds.
    const late = found(body(120, 220), 110, 120);
    if (late.kind !== 'decide') throw new Error(late.kind);
    expect(late.ripBack).toMatchObject({ rows: 110, to: 'hem', from: { row: 0, stitches: 120 } });
    const rowOf = told(late.workings).filter((line) => line.startsWith('rows to rip back'));
    expect(rowOf).toEqual(['rows to rip back: a - b = 110 rows']);
  });

  it('keeps the levels below the row that it is ripped back to as they were knitted', () => {
    const shaped = piece('body', 'round', 'up', [
      level('hem', 0, 100),
      level('waist', 60, 120),
      level('underarm', 114, 220),
    ]);
    // 25 shaping rounds are needed; four rounds are left, but 54 from the waist on.
    const late = found(shaped, 110, 120);
    if (late.kind !== 'decide') throw new Error(late.kind);
    expect(late.ripBack).toMatchObject({ rows: 50, to: 'waist', from: { row: 60, stitches: 120 } });
    expect(late.ripBack.levels.map((l) => l.stitches)).toEqual([100, 120, 220]);
  });

  it('is rechecked at its very last row too', () => {
    const long = found(body(220, 220), 114, 220, over10cm(22, 26));
    if (long.kind !== 'decide') throw new Error(long.kind);
    expect(long.ripBack).toMatchObject({ rows: 15, to: 'within a straight section' });
    // 114 × 2.6 / 3 are 98.8 rounds.
    expect(long.ripBack.levels.at(-1)?.row).toBe(99);
  });

  it('may be rechecked before its first row', () => {
    expect(found(body(220, 220), 0, 220).kind).toBe('on track');
  });
});
