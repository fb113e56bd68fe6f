/** Shaping lines row by row, with the sums beside them. */
import { describe, expect, it } from 'vitest';
import { type LineAsk, type LineReading, readShapingLine } from '../../src/fit/shaping-line.ts';
import { stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

interface Known {
  readonly start?: number;
  readonly end?: number;
  readonly perRow?: number;
}

function read(text: string, { start, end, perRow }: Known) {
  const ask: LineAsk = {
    text,
    ...(start === undefined ? {} : { start: stitches(start) }),
    ...(end === undefined ? {} : { end: stitches(end) }),
    ...(perRow === undefined ? {} : { perRow }),
  };
  return readShapingLine(ask);
}

/** `5 −2 48`: on row 5 two stitches fewer, 48 after it; `?` where it is not known. */
function rowsSaid({ rows, shaping, end, check }: LineReading): string {
  const each = shaping.map((s) => `${s.row} ${s.change ?? '?'} ${s.after ?? '?'}`);
  return `${each.join(', ')} | ${rows} rows, ${end ?? '?'} left, ${check.kind}`;
}

describe('a shaping line, row by row,', () => {
  it.each<[string, Known, readonly string[]]>([
    [
      'dec 1 st each end of next and 2 foll 4th rows',
      {},
      ['1 -2 ?, 5 -2 ?, 9 -2 ? | 9 rows, ? left, not known'],
    ],
    [
      'dec 1 st each end of next and 2 foll 4th rows',
      { start: 52 },
      ['1 -2 50, 5 -2 48, 9 -2 46 | 9 rows, 46 left, not known'],
    ],
    [
      'dec 1 st each end of next and 2 foll 4th rows',
      { end: 46 },
      ['1 -2 ?, 5 -2 ?, 9 -2 ? | 9 rows, ? left, not known'],
    ],
    // No stitch is left after the fifth row of two: then no count is told.
    [
      'dec 1 st each end of every 2nd row 3 times',
      { start: 6 },
      [
        '2 -2 4, 4 -2 2, 6 -2 ? | 6 rows, ? left, not known',
        '1 -2 4, 3 -2 2, 5 -2 ? | 5 rows, ? left, not known',
      ],
    ],
    [
      'dec 1 st each end of every 2nd row 3 times',
      { start: 7 },
      [
        '2 -2 5, 4 -2 3, 6 -2 1 | 6 rows, 1 left, not known',
        '1 -2 5, 3 -2 3, 5 -2 1 | 5 rows, 1 left, not known',
      ],
    ],
    // The counts tell which way: up from 40 to 44, down from 44 to 40; without them nothing does.
    [
      'every 6th row 2 times',
      { start: 40, end: 44, perRow: 2 },
      ['6 2 42, 12 2 44 | 12 rows, 44 left, adds up', '1 2 42, 7 2 44 | 7 rows, 44 left, adds up'],
    ],
    [
      'every 6th row 2 times',
      { start: 44, end: 40, perRow: 2 },
      ['6 -2 42, 12 -2 40 | 12 rows, 40 left, adds up', '1 -2 42, 7 -2 40 | 7 rows, 40 left, adds up'],
    ],
    [
      'every 6th row 2 times',
      { start: 44, perRow: 2 },
      ['6 ? ?, 12 ? ? | 12 rows, ? left, not known', '1 ? ?, 7 ? ? | 7 rows, ? left, not known'],
    ],
    [
      'every 6th row 2 times',
      { end: 44, perRow: 2 },
      ['6 ? ?, 12 ? ? | 12 rows, ? left, not known', '1 ? ?, 7 ? ? | 7 rows, ? left, not known'],
    ],
    [
      'every 4th row until 44 sts',
      { start: 40, perRow: 2 },
      ['4 2 42, 8 2 44 | 8 rows, 44 left, not known', '1 2 42, 5 2 44 | 5 rows, 44 left, not known'],
    ],
    // Two lines at once: the rows of both, and the longer one's end.
    [
      'dec 1 st each end of next 3 rows, at the same time inc 1 st every 4th row twice',
      { start: 40 },
      [
        '1 -2 38, 2 -2 36, 3 -2 34, 4 1 35, 8 1 36 | 8 rows, 36 left, not known',
        '1 -1 39, 2 -2 37, 3 -2 35, 5 1 36 | 5 rows, 36 left, not known',
      ],
    ],
    [
      'dec 1 st each end of next 3 rows, at the same time every row twice',
      { start: 40, end: 30 },
      ['1 ? ?, 2 ? ?, 3 -2 ? | 3 rows, ? left, not known'],
    ],
    [
      'inc 1 st each end of 5th row, work 9 rows even',
      { start: 40 },
      ['5 2 42 | 14 rows, 42 left, not known'],
    ],
    [
      '20 rows: dec 1 st each end of every 6th row',
      { start: 60 },
      [
        '6 -2 58, 12 -2 56, 18 -2 54 | 20 rows, 54 left, not known',
        '1 -2 58, 7 -2 56, 13 -2 54 | 20 rows, 54 left, not known',
      ],
    ],
    [
      'dec 1 st each end of next row and every foll 8th row 2 times',
      { start: 60, end: 54 },
      [
        '1 -2 58, 9 -2 56, 17 -2 54 | 17 rows, 54 left, adds up',
        '1 -2 58, 9 -2 56 | 9 rows, 56 left, does not add up',
      ],
    ],
  ])('%s, %o', (text, known, expected) => {
    const found = read(text, known);
    expect(found.kind === 'read' ? found.readings.map(rowsSaid) : found.reason).toEqual(expected);
  });

  it('has its sums beside it, each line by its number where there are two', () => {
    const sums = (text: string, known: Known) => {
      const found = read(text, known);
      return found.kind === 'read' ? told(found.readings[0]?.workings ?? []) : [found.reason];
    };
    expect(sums('dec 1 st each end of next and 5 foll 4th rows', { start: 52 })).toEqual([
      'rows of the line: a1 + a2 * n2 = 21 rows',
      'shaping rows in all: n1 + n2 = 6 times',
      'stitches after the line: a - n1 * s1 - n2 * s2 = 40 stitches',
    ]);
    expect(sums('inc 1 st each end of 5th row, work 9 rows even', { start: 40 })).toEqual([
      'rows of the line: a1 + a2 = 14 rows',
      'shaping rows in all: n1 = 1 times',
      'stitches after the line: a + n1 * s1 = 42 stitches',
    ]);
    expect(
      sums('dec 1 st each end of next 3 rows, at the same time inc 1 st every 4th row twice', { start: 40 }),
    ).toEqual([
      'rows of the line, line 1: a1 = 3 rows',
      'rows of the line, line 2: a1 * n1 = 8 rows',
      'shaping rows in all, line 1: n1 = 3 times',
      'shaping rows in all, line 2: n1 = 2 times',
      'stitches after the line: a - n1 * s1 + n2 * s2 = 36 stitches',
    ]);
  });
});

describe('a shaping line is refused with its reason', () => {
  it.each<[string, Known, string, string | undefined]>([
    ['dec 1 st each end of next row, 3rd row and 2nd row', { start: 40 }, 'rows run backward', '2'],
    ['dec 1 st each end of every 4th row until 31 sts', { start: 40 }, 'count is never reached', '31'],
    ['inc every 4th row until 46 sts', { start: 40 }, 'stitches a row are missing', undefined],
    ['every 4th row until 46 sts', { perRow: 2 }, 'count at the start is missing', undefined],
    [
      'dec 1 st each end of every 4th row until 30 sts, at the same time every 2nd row twice',
      { start: 40 },
      'count is shared by two lines',
      undefined,
    ],
    [
      'dec 1 st each end of next 8 rows and every 8th row for a total of 6 decreases',
      {},
      'number without a meaning',
      '6',
    ],
  ])('%s', (text, known, reason, word) => {
    const found = read(text, known);
    expect(found).toMatchObject({ kind: 'cannot read', reason });
    expect('word' in found ? found.word : undefined).toBe(word);
    expect('word' in found).toBe(word !== undefined);
  });
});
