import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { LINE_REFUSALS, type LineRefusal } from '../../src/fit/shaping-clause.ts';
import { type LineAsk, type LineReading, readShapingLine } from '../../src/fit/shaping-line.ts';
import { lineForSize } from '../../src/fit/shaping-size.ts';
import { space } from '../../src/fit/spacing.ts';
import { rows, stitches } from '../../src/fit/units.ts';

type Known = Omit<LineAsk, 'text'>;
const counts = (start: number, end?: number, perRow?: number): Known => ({
  start: stitches(start),
  ...(end === undefined ? {} : { end: stitches(end) }),
  ...(perRow === undefined ? {} : { perRow }),
});

function readings(text: string, known: Known = {}): readonly LineReading[] {
  const read = readShapingLine({ text, ...known });
  if (read.kind !== 'read') throw new Error(`${text}: ${read.reason} (${read.word})`);
  return read.readings;
}
const rowsOf = (reading: LineReading | undefined) => reading?.shaping.map((s) => s.row as number);

/** Lines of which the wording leaves no doubt: text, rows, count before, count after. */
const CLEAR: readonly (readonly [string, readonly number[], number, number])[] = [
  ['dec 1 st each end of next row and every foll 8th row 6 more times', [1, 9, 17, 25, 33, 41, 49], 60, 46],
  ['Decrease 1 st at each end of next and 5 foll 4th rows', [1, 5, 9, 13, 17, 21], 52, 40],
  ['inc 1 st at both ends of 3rd row and foll 10 alt rows', [3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23], 40, 62],
  ['dec 1 st each side next 3 rows, then foll 1 alt row, then 1 foll 4th row', [1, 2, 3, 5, 9], 49, 39],
  ['inc 1 st each end of 5th and every foll 6th row to 51 sts', [5, 11, 17], 45, 51],
  [
    'inc 1 st each end of 5th and every foll 6th row to 51 sts, then every foll 8th row until there are 55 sts',
    [5, 11, 17, 25, 33],
    45,
    55,
  ],
  ['dec 1 st at each end of the first and every 6th row for a total of 4 decreases', [1, 7, 13, 19], 40, 32],
  ['[Work 5 rows even, inc row] twice, each end', [6, 12], 40, 44],
  ['cast off 3 sts at beg of next 2 rows, then dec 1 st each end of foll 2 alt rows', [1, 2, 4, 6], 55, 45],
  ['Rep Dec Row at each end every 8th row 2 more times', [8, 16], 40, 36],
  ['12 rows: dec 1 st each end of next and every foll alt row', [1, 3, 5, 7, 9, 11], 40, 28],
  ['inc 1 st each side of both markers next rnd and every foll 10th rnd 2 more times', [1, 11, 21], 200, 212],
  ['dec 1 st each end of next row, then every row twice', [1, 2, 3], 20, 14],
];

describe('a shaping line without doubt', () => {
  it.each(CLEAR)('%s', (text, expected, start, end) => {
    const [reading, ...others] = readings(text, counts(start, end));
    expect(others).toEqual([]);
    expect(rowsOf(reading)).toEqual(expected);
    expect(reading?.check).toEqual({ kind: 'adds up', end });
  });

  it('keeps the rows that it names after the last shaping row', () => {
    const [reading] = readings('12 rows: dec 1 st each end of next and every foll alt row');
    expect(reading?.rows).toBe(12);
    const [then] = readings('inc 1 st each end of next row, work 9 rows even');
    expect(then?.rows).toBe(10);
  });

  it('takes what is said at the end for all that came before without it', () => {
    const [reading] = readings('next row and foll 4 alt rows, decreasing 1 st at each end', counts(30));
    expect(reading?.end).toBe(20);
  });

  it('takes many stitches before and after as the counts of the needle', () => {
    const [reading] = readings('60 sts, dec 1 st each end of next and foll 5 alt rows (48 sts)');
    expect(reading?.check).toEqual({ kind: 'adds up', end: 48 });
  });

  it('says from which count the line would reach the one that is printed', () => {
    const [reading] = readings('dec 1 st each end of next and foll 5 alt rows', counts(60, 46));
    expect(reading?.check).toEqual({ kind: 'does not add up', stated: 46, reached: 48, startThatWould: 58 });
  });
});

describe('wording of two minds', () => {
  it('gives both readings of ‘every 6th row 5 times’, each with its rows', () => {
    const both = readings('every 6th row 5 times, then every 4th row twice');
    expect(both.map((r) => [r.first, r.rows, rowsOf(r)])).toEqual([
      ['at the end of the interval', 38, [6, 12, 18, 24, 30, 34, 38]],
      ['on the next row', 33, [1, 7, 13, 19, 25, 29, 33]],
    ]);
  });

  it('gives both counts of ‘next row and every foll 8th row 6 times’, and which one adds up', () => {
    const both = readings('dec 1 st each end of next row and every foll 8th row 6 times', counts(60, 46));
    expect(both.map((r) => [r.counting, r.times, r.check.kind])).toEqual([
      ['after the first row', 7, 'adds up'],
      ['with the first row', 6, 'does not add up'],
    ]);
  });

  it.each([
    ['inc every 10 rows 6 times', 60, 51],
    ['every other row for 9 times', 18, 17],
    ['increase 1 st at each end of every RS row x5', 10, 9],
    ['dec every sixth rnd 5 times', 30, 25],
    ['jede 2. Reihe 10 x, dann jede 4. Reihe 5 x', 40, 39],
  ])('%s takes %i or %i rows', (text, later, sooner) => {
    expect(readings(text).map((r) => r.rows)).toEqual([later, sooner]);
  });

  it('joins two runs by ‘and’ without counting one into the other', () => {
    const both = readings('every 4th row 3 times and every 6th row twice');
    expect(both.map((r) => [r.times, r.rows])).toEqual([
      [5, 24],
      [5, 21],
    ]);
  });

  it('has none where every row is shaped', () => {
    expect(readings('dec at neck edge of every row 5 times').map(rowsOf)).toEqual([[1, 2, 3, 4, 5]]);
  });
});

describe('two lines at the same time', () => {
  const text =
    'dec 1 st at raglan edge of next and foll 2 alt rows, AT THE SAME TIME dec 1 st at neck edge of every row 5 times';

  it('are added up row by row', () => {
    const [reading] = readings(text, counts(20, 12));
    expect(reading?.shaping).toEqual([
      { row: 1, change: -2, after: 18 },
      { row: 2, change: -1, after: 17 },
      { row: 3, change: -2, after: 15 },
      { row: 4, change: -1, after: 14 },
      { row: 5, change: -2, after: 12 },
    ]);
    expect(reading?.check.kind).toBe('adds up');
  });
});

describe('a line that cannot be read', () => {
  it.each<[string, LineRefusal, string?]>([
    ['', 'nothing to read'],
    [' , then ', 'nothing to read'],
    ['dec every third moon', 'word not known', 'moon'],
    ['every 6th row', 'how often is missing'],
    ['dec 1 st each end', 'no rows named'],
    ['every 6th row 5 times, 7', 'number without a meaning', '7'],
    ['inc 1 st each end every 6th row to 74 sts', 'count at the start is missing'],
    ['40 sts, every 6th row to 74 sts', 'stitches a row are missing'],
    ['40 sts, inc 1 st each end of every 6th row to 75 sts', 'count is never reached', '75'],
    ['40 sts, dec 1 st each end of every 6th row to 74 sts', 'count is never reached', '74'],
    ['7th row, then 3rd row', 'rows run backward', '3'],
    ['every 5000th row 2 times', 'word not known', '5000th'],
  ])('%s', (text, reason, word) => {
    expect(readShapingLine({ text })).toEqual({
      kind: 'cannot read',
      reason,
      ...(word === undefined ? {} : { word }),
      example: LINE_REFUSALS[reason],
    });
  });

  it.each(Object.entries(LINE_REFUSALS))(
    'for %s is refused with an example that can be read',
    (_, example) => {
      expect(readShapingLine({ text: example }).kind).toBe('read');
    },
  );

  it('does not guess how many markers there are', () => {
    const each = 'inc 1 st each side of each marker next row and foll 3 alt rows';
    expect(readings(each, counts(100))[0]?.end).toBeUndefined();
    expect(readings(each, counts(100, undefined, 8))[0]?.end).toBe(132);
  });
});

describe('whatever is typed', () => {
  const words =
    'dec inc 1 st each end of next row and every foll 8th row 6 more times , then alt rows until sts ( ) [ ] 3 12 at the same time neck edge total even rep bind off 2'.split(
      ' ',
    );
  it('is read or refused, and never throws; all workings are their own formulas', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...words), { maxLength: 24 }),
        fc.option(fc.integer({ min: 1, max: 200 }), { nil: undefined }),
        (typed, start) => {
          const known = start === undefined ? {} : counts(start);
          const read = readShapingLine({ text: typed.join(' '), ...known });
          if (read.kind === 'cannot read') return;
          for (const r of read.readings) {
            for (const w of r.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
            expect(r.rows).toBeGreaterThanOrEqual(r.shaping.at(-1)?.row ?? 0);
            expect(r.shaping.map((s) => s.row)).toEqual(
              [...r.shaping.map((s) => s.row)].sort((a, b) => a - b),
            );
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  it('does not take a word of its own language for one of the trade’s', () => {
    for (const text of ['constructor', 'toString', '__proto__', 'hasOwnProperty every 6th row'])
      expect(readShapingLine({ text })).toMatchObject({ kind: 'cannot read', reason: 'word not known' });
  });

  it('is text of any kind', () => {
    fc.assert(
      fc.property(fc.string(), (text) => ['read', 'cannot read'].includes(readShapingLine({ text }).kind)),
    );
  });
});

describe('what the spacing of a section writes', () => {
  it('is read back as the same rows and the same counts', () => {
    const section = fc.record({
      rows: fc.integer({ min: 20, max: 200 }),
      times: fc.integer({ min: 1, max: 20 }),
      from: fc.integer({ min: 50, max: 90 }),
      widen: fc.boolean(),
    });
    fc.assert(
      fc.property(section, ({ rows: length, times, from, widen }) => {
        const spaced = space({
          rows: rows(length),
          from: stitches(from),
          to: stitches(from + (widen ? 2 : -2) * times),
          perRow: 2,
          carriers: 'every row',
          lead: rows(0),
          trail: rows(0),
          order: 'grouped',
        });
        if (spaced.kind !== 'spaced') throw new Error(spaced.kind);
        const runs = spaced.runs.map((run) => `every ${run.every}th row ${run.times} times`);
        const text = `${widen ? 'increase' : 'decrease'} 1 st at each end of ${runs.join(', then ')}`;
        const [reading] = readings(text, counts(from, spaced.to));
        expect(reading?.shaping.map((s) => ({ row: s.row, after: s.after }))).toEqual(spaced.shaping);
        expect(reading?.check.kind).toBe('adds up');
      }),
    );
  });
});

describe('a line that lists all sizes', () => {
  it.each<[string, number, string]>([
    ['cast off 9(10:11:12:13:13) sts at beg of next 4 rows', 4, 'cast off 13 sts at beg of next 4 rows'],
    ['dec on next 5 (5-7-7-7- 7) rows', 3, 'dec on next 7 rows'],
    ['35 [40, 44, 46] sts', 1, '40 sts'],
    [
      'every 6th (8th, 6th) row 5 (2, 1) times, then every – (6th, --) row – (3, --) times',
      0,
      'every 6th row 5 times',
    ],
    [
      'every 6th (8th, 6th) row 5 (2, 1) times, then every – (6th, --) row – (3, --) times',
      1,
      'every 8th row 2 times, every 6th row 3 times',
    ],
  ])('%s, size %i', (text, position, expected) => {
    expect(lineForSize(text, position)).toMatchObject({ kind: 'line', text: expected });
  });

  it('is refused where its lists differ or the size is not among them', () => {
    expect(lineForSize('5 (6, 7) rows 5 (6) times', 0)).toEqual({ kind: 'lists differ', sizes: [3, 2] });
    expect(lineForSize('5 (6, 7) times', 3)).toEqual({ kind: 'no such size', sizes: 3 });
  });
});
