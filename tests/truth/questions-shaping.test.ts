/**
 * Questions met in public knitting talk, worked answers collected 2026; the situations in our own words.
 * Rows are counted from the next row. Each answer was worked out by hand, apart from this program.
 */
import { describe, expect, it } from 'vitest';
import { type LineReading, readShapingLine } from '../../src/fit/shaping-line.ts';
import { lineForSize } from '../../src/fit/shaping-size.ts';
import { stitches } from '../../src/fit/units.ts';

function readings(text: string, start?: number, end?: number): readonly LineReading[] {
  const read = readShapingLine({
    text,
    ...(start === undefined ? {} : { start: stitches(start) }),
    ...(end === undefined ? {} : { end: stitches(end) }),
  });
  if (read.kind !== 'read') throw new Error(`${text}: ${read.reason} (${read.word})`);
  return read.readings;
}
const rowsOf = (reading: LineReading | undefined) => reading?.shaping.map((s) => s.row as number);
const sized = (text: string, position: number) => {
  const line = lineForSize(text, position);
  if (line.kind !== 'line') throw new Error(line.kind);
  return line.text;
};

describe('a question about which rows a shaping line means', () => {
  it('flat raglan for a baby: the next and five following fourth rows, then ten following alternate rows, to 20', () => {
    const line = 'dec 1 st at each end of the next and 5 foll 4th rows, then of foll 10 alt rows';
    const [reading] = readings(line, 52, 20);
    expect(rowsOf(reading)).toEqual([1, 5, 9, 13, 17, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41]);
    expect(reading?.check.kind).toBe('adds up');
  });

  it('first armhole: next three rows, one alternate row, one following fourth row, 49 to 39', () => {
    const line = 'dec 1 st at both ends of next 3 rows, then foll 1 alt rows, then 1 foll 4th row';
    const [reading] = readings(line, 49, 39);
    expect(rowsOf(reading)).toEqual([1, 2, 3, 5, 9]);
    expect(reading?.end).toBe(39);
  });

  it('neck edge, fourth of six sizes: seven rows in succession, then six alternate rows', () => {
    const line =
      'dec 1 st at neck edge of next 5 (5-7-7-7- 7) rows then on foll alt rows 4 (5-5-6-7-7) times more';
    const [reading] = readings(sized(line, 3), 36, 23);
    expect(rowsOf(reading)).toEqual([1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 15, 17, 19]);
    expect(reading?.end).toBe(23);
  });

  it.each([
    [0, 27, 18],
    [1, 30, 20],
    [2, 33, 21],
    [3, 36, 23],
    [4, 38, 24],
    [5, 40, 26],
  ])('the same neck edge in size %i goes from %i to %i stitches', (position, start, end) => {
    const line =
      'dec 1 st at neck edge of next 5 (5-7-7-7- 7) rows then on foll alt rows 4 (5-5-6-7-7) times more';
    expect(readings(sized(line, position), start, end)[0]?.check.kind).toBe('adds up');
  });

  it('German sleeve: twelve increases at both edges, alternately in every fourth and sixth row', () => {
    const [reading] = readings('12 x 1 Masche in jeder 4. und 6. Reihe beidseitig zunehmen', 40);
    expect(rowsOf(reading)).toEqual([4, 10, 14, 20, 24, 30, 34, 40, 44, 50, 54, 60]);
    expect(reading?.rows).toBe(60);
    expect(reading?.end).toBe(64);
  });

  it('baby raglan, twelve rows: the next and every following alternate row make six rows and 12 stitches', () => {
    const [reading] = readings('12 rows: dec 1 st each end of next and every foll alt row', 40);
    expect(rowsOf(reading)).toEqual([1, 3, 5, 7, 9, 11]);
    expect(reading?.end).toBe(28);
  });

  it('baby raglan, the dreaded five rows: raglan edge on 1, 3, 5 and neck edge on every row lose 8', () => {
    const line =
      '5 rows: dec 1 st at raglan edge of next and every foll alt row AT THE SAME TIME dec 1 st at neck edge of next 5 rows';
    const [reading] = readings(line, 20);
    expect(rowsOf(reading)).toEqual([1, 2, 3, 4, 5]);
    expect(reading?.end).toBe(12);
  });
});

describe('a question about how many stitches are left', () => {
  it('yoke fronts and back, second of four sizes: every other row 9 times leaves 31 and 63', () => {
    expect(readings('dec 1 st at armhole edge every other row for 9 times', 40)[0]?.end).toBe(31);
    expect(readings('dec 1 st at each end every other row for 9 times', 81)[0]?.end).toBe(63);
  });

  it('shoulders, fifth of six sizes: 89 stitches, 13 off over 4 rows and 7 over 2 leave 23', () => {
    const line =
      'cast off 9(10:11:12:13:13) sts at beg of next 4 rows, then 8(8:8:7:7:8) sts at beg of next 2 rows';
    const [reading] = readings(sized(line, 4), 89, 23);
    expect(reading?.shaping.map((s) => s.after as number)).toEqual([76, 63, 50, 37, 30, 23]);
    expect(reading?.check.kind).toBe('adds up');
  });

  it('neck, second of seven sizes with dashes: six decreases on rows 1, 9, 17, 23, 29, 35 leave 24 of 30', () => {
    const line =
      'dec 1 st at neck edge of next row, then every 6th (8th, 6th, 6th, 4th, 4th, 4th) row 5 (2, 1, 6, 12, 10, 7) more times, then every – (6th, 4th, 4th, --, 2nd, 2nd) row – (3, 9, 2, --, 5, 12) times';
    const [reading] = readings(sized(line, 1), 30, 24);
    expect(rowsOf(reading)).toEqual([1, 9, 17, 23, 29, 35]);
    expect(reading?.check.kind).toBe('adds up');
  });

  it('cardigan neck: 8 of 31 held, then two stitches twice and one twice leave 17 for the shoulder', () => {
    const after = readings('bind off 2 sts 2 times and 1 st 2 times at neck edge', 31 - 8, 17);
    expect(after.map((r) => r.check.kind)).toEqual(['adds up', 'adds up']);
  });

  it('hooded pullover: 31 stitches less one on each of nine rows are 22, and 41 less 10 are the same 31', () => {
    expect(readings('dec 1 st at neck edge of next 9 rows', 31, 22)[0]?.check.kind).toBe('adds up');
    expect(
      readings('bind off 10 sts at beg of next row, then dec 1 st at neck edge of next 9 rows', 41)[0]?.end,
    ).toBe(22);
  });

  it('sleeve too wide: 34 stitches and 12 of 21 increase rows are 58, all 21 would be 76', () => {
    expect(readings('inc 1 st each end of every 4th row 12 times', 34)[0]?.end).toBe(58);
    expect(readings('inc 1 st each end of every 4th row 21 times', 34)[0]?.end).toBe(76);
  });

  it('three-quarter sleeve: every ten rows six times takes 60 rows from 47 to 59 stitches', () => {
    const [reading] = readings('inc 1 st each side every 10 rows 6 times', 47, 59);
    expect(reading?.rows).toBe(60);
    expect(reading?.check.kind).toBe('adds up');
  });

  it('sleeve with the first and every sixth row, ten increases in all: 55 rows', () => {
    const [reading] = readings('inc 1 st each end of first and every 6th row for a total of 10 increases');
    expect(reading?.rows).toBe(55);
    expect(reading?.times).toBe(10);
  });
});
