/** Shaping lines, clause by clause. The wordings are those of printed patterns; what they mean is practice of the trade. */
import { describe, expect, it } from 'vitest';
import { type Clause, type Effect, type Line, type Often, Unreadable } from '../../src/fit/shaping-clause.ts';
import { clausesOf } from '../../src/fit/shaping-clauses.ts';

/** `decrease 2` where the line says on how many places, `decrease 1?` where it may be more, `?` where it says nothing. */
function effectSaid({ by, perRow, placed }: Effect): string {
  return [...(by === undefined ? [] : [by]), `${perRow ?? ''}${placed ? '' : '?'}`].join(' ');
}

function oftenSaid(often: Often): string {
  switch (often.count) {
    case 'times':
      return `${often.times} times`;
    case 'times, first perhaps counted in':
      return `${often.times} times, perhaps with the first`;
    case 'in all':
      return `${often.times} in all`;
    case 'until':
      return `until ${often.stitches}`;
    case 'within':
      return `within ${often.rows} rows`;
    default:
      return often satisfies never;
  }
}

function clauseSaid(clause: Clause): string {
  switch (clause.kind) {
    case 'next':
      return `next ${clause.rows}: ${effectSaid(clause.effect)}`;
    case 'row':
      return `row ${clause.row}: ${effectSaid(clause.effect)}`;
    case 'run':
      return `every ${clause.every.join(' and ')}, ${oftenSaid(clause.often)}: ${effectSaid(clause.effect)}`;
    case 'plain':
      return `plain ${clause.rows}`;
    default:
      return clause satisfies never;
  }
}

const said = ({ clauses }: Line) => clauses.map(clauseSaid);

function refusal(text: string) {
  try {
    return clausesOf(text).map(said);
  } catch (error) {
    if (error instanceof Unreadable)
      return error.word === undefined ? error.reason : `${error.reason}: ${error.word}`;
    throw error;
  }
}

describe('a line of one clause', () => {
  // biome-ignore format: one wording stands below another
  it.each([
    ['next row', 'next 1: ?'],
    ['next 3 rows', 'next 3: ?'],
    ['next 4th row', 'every 4, 1 times: ?'],
    ['foll row', 'next 1: ?'],
    ['foll 3 rows', 'next 3: ?'],
    ['3 foll rows', 'next 3: ?'],
    ['foll alt row', 'every 2, 1 times: ?'],
    ['foll 10 alt rows', 'every 2, 10 times: ?'],
    ['5 foll 4th rows', 'every 4, 5 times: ?'],
    ['every row 5 times', 'every 1, 5 times: ?'],
    ['every 4 rows 3 times', 'every 4, 3 times: ?'],
    ['every 4th and 6th row 3 times', 'every 4 and 6, 3 times: ?'],
    ['every 4th and every 6th row 3 times', 'every 4 and 6, 3 times: ?'],
    ['12 times every 4th row', 'every 4, 12 times: ?'],
    ['every 4th row until 40 sts', 'every 4, until 40: ?'],
    ['every 4th row 6 times in all', 'every 4, 6 in all: ?'],
    ['dec every 6th row for a total of 4 decreases', 'every 6, 4 in all: decrease ?'],
    ['inc 1 st every 6th row 5 times', 'every 6, 5 times: increase 1?'],
    ['inc each end of every 6th row 5 times', 'every 6, 5 times: increase 2'],
    ['inc 1 st each side of both markers next rnd', 'next 1: increase 4'],
    ['dec 10 sts next row', 'next 1: decrease 10?'],
    ['dec row every 4th row twice', 'every 4, 2 times: decrease ?'],
    ['bind off 2 sts 2 times', 'every 2, 2 times: decrease 2?'],
    ['() next row', 'next 1: ?'],
  ])('%s', (text, expected) => {
    expect([refusal(text)].flat(2)).toEqual([expected]);
  });
});

describe('a line of several clauses', () => {
  // biome-ignore format: one wording stands below another
  it.each([
    ['next row, even 9 rows', ['next 1: ?', 'plain 9']],
    ['next row, work 9 rows even', ['next 1: ?', 'plain 9']],
    ['dec row, then every 4th row 3 times', ['next 1: decrease ?', 'every 4, 3 times: decrease ?']],
    ['dec row and next row', ['next 1: decrease ?', 'next 1: decrease ?']],
    ['next row, every 4th row twice, dec 1 st', ['next 1: decrease 1?', 'every 4, 2 times: decrease 1?']],
    ['dec 1 st every 4th row 3 times, inc 1 st every 6th row twice', ['every 4, 3 times: decrease 1?', 'every 6, 2 times: increase 1?']],
    ['12 rows: dec 1 st each end of next and every foll alt row', ['next 1: decrease 2', 'every 2, within 12 rows: decrease 2']],
    ['[work 5 rows even, inc row] twice', ['plain 5', 'next 1: increase ?', 'plain 5', 'next 1: increase ?']],
    // Joined by 'and', the number may count the first row in; 'then' and 'more' leave no doubt.
    ['next row and every 4th row 6 times', ['next 1: ?', 'every 4, 6 times, perhaps with the first: ?']],
    ['3rd row and every 4th row 6 times', ['row 3: ?', 'every 4, 6 times, perhaps with the first: ?']],
    ['next row, then every 4th row 6 times', ['next 1: ?', 'every 4, 6 times: ?']],
    ['next row and every 4th row 6 more times', ['next 1: ?', 'every 4, 6 times: ?']],
    ['next row and every 4th row 6 times more', ['next 1: ?', 'every 4, 6 times: ?']],
  ])('%s', (text, expected) => {
    expect(clausesOf(text).map(said)).toEqual([expected]);
  });

  it('that runs beside another takes over what is done, not where', () => {
    expect(
      clausesOf('dec 1 st at each end of next row, at the same time every 4th row twice').map(said),
    ).toEqual([['next 1: decrease 2'], ['every 4, 2 times: decrease ?']]);
  });
});

describe('a line goes on from a row that was just worked', () => {
  it.each([
    ['repeat dec row every 8th row 2 more times', true],
    ['every 6th row 5 more times', true],
    ['every 6th row 5 times', false],
    ['next row, repeat every 8th row twice', false],
    ['next row and every 6th row 5 more times', false],
  ])('%s: %s', (text, goesOn) => {
    expect(clausesOf(text).map((line) => line.goesOn)).toEqual([goesOn]);
  });
});

describe('stitches of the needle', () => {
  it.each<[string, number | undefined, number | undefined]>([
    ['5 sts, dec 1 st each end of next row', 5, undefined],
    // Four may be what a shaping row takes.
    ['4 sts, dec 1 st each end of next row', undefined, undefined],
    ['next row, 12 sts', undefined, 12],
    ['dec 1 st each end of every 4th row 6 times, to 59 sts', undefined, 59],
    ['dec 1 st each end of every 4th row 6 times (48 sts), then every 6th row twice', undefined, 48],
  ])('%s: %s before, %s after', (text, start, end) => {
    expect(clausesOf(text).map((line) => [line.start, line.end])).toEqual([[start, end]]);
  });
});

describe('a line is refused, never guessed', () => {
  it.each([
    ['every 4th row', 'how often is missing'],
    ['every 4th row 3', 'how often is missing'],
    ['every 4th row until', 'how often is missing'],
    ['every 4th row in all', 'how often is missing'],
    ['foll 4th rows', 'how often is missing'],
    ['to 59 sts', 'how often is missing'],
    ['work even', 'how often is missing'],
    ['[next row]', 'how often is missing'],
    ['(work 5 rows even', 'word not known: ('],
    ['every 6th row 5 times, 20 rows', 'number without a meaning: 20'],
    ['every 0th row twice', 'number without a meaning: 0'],
    ['12', 'number without a meaning: 12'],
    ['dec 1 st next row, 3 sts', 'no rows named: 3'],
    ['dec 2 sts 2 times', 'no rows named'],
    ['repeat dec row', 'no rows named'],
  ])('%s: %s', (text, reason) => {
    expect(refusal(text)).toBe(reason);
  });

  it('beyond what any sweater’s line repeats: 999 clauses', () => {
    expect(clausesOf('[next row] 999 times')[0]?.clauses).toHaveLength(999);
    expect(refusal('[next row, next row] 500 times')).toBe('number without a meaning: 500');
  });
});
