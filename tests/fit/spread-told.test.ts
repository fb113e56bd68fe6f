/** The workings of rows spread by hand: each list is the sum as one would write it down, beside the stretches that come of it. */
import { describe, expect, it } from 'vitest';
import { type SpreadAsk, spread } from '../../src/fit/spread.ts';
import { stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

type Asked = Partial<Omit<SpreadAsk, 'stitches' | 'change'>>;

function asked(count: number, change: number, more: Asked = {}) {
  return spread({ stitches: stitches(count), change, worked: 'flat', ...more });
}
function stretches(count: number, change: number, more: Asked = {}): readonly number[] {
  const found = asked(count, change, more);
  if (found.kind !== 'spread') throw new Error(found.kind);
  return found.stretches;
}
const lines = (count: number, change: number, more: Asked = {}) => told(asked(count, change, more).workings);

describe('the workings of a spread row', () => {
  it('halve a stretch for either end of a flat row; an odd stitch goes to the last', () => {
    // 43 / 5 = 8.6, half of which is 4.3; 43 − 4 − 5 = 34 in four stretches are 8, 9, 9 and 8.
    expect(stretches(43, 5)).toEqual([4, 8, 9, 9, 8, 5]);
    expect(lines(43, 5)).toEqual([
      'changes in the row: a / b = 5 times',
      'stitches to a change: a / b = 8.6 stitches',
      'plain stitches: a - b * c = 43 stitches',
      'plain stitches before the first change: a / b / 2 = 4 stitches',
      'plain stitches after the last change: a + b = 5 stitches',
      'plain stitches between the changes: a - b - c = 34 stitches',
      'stretches: a - 1 = 4 times',
      'longer stretches: a - b * c = 2 times',
      'shorter stretches: a - b = 2 times',
      'plain stitches of a shorter stretch: a / b = 8 stitches',
      'plain stitches of a longer stretch: a + 1 = 9 stitches',
      'stitches after the row: a + b = 48 stitches',
    ]);
  });

  it('leave the border out, and what the decreases take', () => {
    // 40 − 4 = 36; four pairs take 8 and leave 28, a stretch of 7, half of which is 3.5: 4.
    expect(stretches(40, -4, { edge: stitches(2) })).toEqual([4, 7, 6, 7, 4]);
    expect(lines(40, -4, { edge: stitches(2) })).toEqual([
      'stitches between the edges: a - 2 * b = 36 stitches',
      'changes in the row: a / b = 4 times',
      'stitches to a change: a / b = 9 stitches',
      'plain stitches: a - b * c = 28 stitches',
      'plain stitches before the first change: a / b / 2 = 4 stitches',
      'plain stitches after the last change: a + b = 4 stitches',
      'plain stitches between the changes: a - b - c = 20 stitches',
      'stretches: a - 1 = 3 times',
      'longer stretches: a - b * c = 2 times',
      'shorter stretches: a - b = 1 times',
      'plain stitches of a shorter stretch: a / b = 6 stitches',
      'plain stitches of a longer stretch: a + 1 = 7 stitches',
      'stitches after the row: a - b = 36 stitches',
    ]);
  });

  it('know no ends in the round: as many stretches as changes', () => {
    // 41 − 8 = 33 in four stretches.
    expect(stretches(41, -4, { worked: 'round' }).toSorted()).toEqual([8, 8, 8, 9]);
    expect(lines(41, -4, { worked: 'round' })).toEqual([
      'changes in the row: a / b = 4 times',
      'stitches to a change: a / b = 10.25 stitches',
      'plain stitches: a - b * c = 33 stitches',
      'stretches: a = 4 times',
      'longer stretches: a - b * c = 1 times',
      'shorter stretches: a - b = 3 times',
      'plain stitches of a shorter stretch: a / b = 8 stitches',
      'plain stitches of a longer stretch: a + 1 = 9 stitches',
      'stitches after the row: a - b = 37 stitches',
    ]);
  });

  it('begin and end with the fewest stitches that a change needs, where no ends are wanted', () => {
    expect(stretches(40, 3, { ends: 'none' })).toEqual([1, 19, 19, 1]);
    expect(lines(40, 3, { ends: 'none' }).slice(3, 7)).toEqual([
      'plain stitches before the first change: a = 1 stitches',
      'plain stitches after the last change: a + b = 1 stitches',
      'plain stitches between the changes: a - b - c = 38 stitches',
      'stretches: a - 1 = 2 times',
    ]);
  });

  it('put a single change into the middle, whatever ends are wanted', () => {
    expect(stretches(40, 1, { ends: 'none' })).toEqual([20, 20]);
    expect(lines(40, 1, { ends: 'none' }).slice(3)).toEqual([
      'plain stitches before the first change: a / b / 2 = 20 stitches',
      'plain stitches after the last change: a + b = 20 stitches',
      'plain stitches between the changes: a - b - c = 0 stitches',
      'stitches after the row: a + b = 41 stitches',
    ]);
  });

  it('have a stretch more than changes where the ends are stretches like the others', () => {
    expect(stretches(40, 3, { ends: 'whole' })).toEqual([10, 10, 10, 10]);
    expect(lines(40, 3, { ends: 'whole' }).slice(2)).toEqual([
      'plain stitches: a - b * c = 40 stitches',
      'stretches: a + 1 = 4 times',
      'longer stretches: a - b * c = 0 times',
      'shorter stretches: a - b = 4 times',
      'plain stitches of a shorter stretch: a / b = 10 stitches',
      'stitches after the row: a + b = 43 stitches',
    ]);
  });

  it('share out whole repeats of a pattern, whose last two stitches a decrease takes', () => {
    // Six repeats of four: one, two, two and one.
    expect(stretches(24, -3, { repeat: stitches(4) })).toEqual([2, 6, 6, 4]);
    expect(lines(24, -3, { repeat: stitches(4) }).slice(2)).toEqual([
      'pattern repeats: a / b = 6 times',
      'repeats before the first change: a / b / 2 = 1 times',
      'repeats after the last change: a + b = 1 times',
      'repeats between the changes: a - b - c = 4 times',
      'stretches: a - 1 = 2 times',
      'longer stretches: a - b * c = 0 times',
      'shorter stretches: a - b = 2 times',
      'repeats of a shorter stretch: a / b = 2 times',
      'plain stitches of a shorter stretch: a * b - c = 6 stitches',
      'stitches after the row: a - b = 21 stitches',
    ]);
  });

  it('are the count alone where nothing changes', () => {
    expect(lines(40, 0)).toEqual(['stitches after the row: a + b = 40 stitches']);
  });

  it('name what is gained or lost by what it is', () => {
    const names = (change: number) =>
      asked(40, change).workings.flatMap(({ given }) => Object.values(given).map(({ name }) => name));
    expect(names(4)).toContain('stitches to gain');
    expect(names(4)).not.toContain('stitches to lose');
    expect(names(-4)).toContain('stitches to lose');
    expect(names(-4)).not.toContain('stitches to gain');
  });
});

describe('the workings of a row that cannot be', () => {
  it('count the pairs that a row of stitches holds', () => {
    expect(lines(20, -12)).toEqual([
      'stitches after the row: a + b = 8 stitches',
      'changes asked for: a / b = 12 times',
      'stitches between the edges: a - 2 * b = 20 stitches',
      'most changes in one row: a / b = 10 times',
    ]);
  });

  it('count the places between repeats, one fewer on a flat row', () => {
    expect(lines(24, -6, { repeat: stitches(4) }).slice(3)).toEqual([
      'stitches or repeats to place changes between: a / b = 6 times',
      'stitches over: a - b * c = 0 stitches',
      'most changes in one row: a - b = 5 times',
    ]);
    expect(lines(26, -2, { repeat: stitches(4) })).toContain('stitches over: a - b * c = 2 stitches');
  });

  it('count as many places as stitches in the round', () => {
    expect(lines(4, 6, { worked: 'round' }).slice(3)).toEqual([
      'stitches or repeats to place changes between: a / b = 4 times',
      'most changes in one row: a - b = 4 times',
    ]);
  });
});

describe('a row that can be', () => {
  it('needs no other way', () => {
    expect(asked(40, 4)).not.toHaveProperty('alternatives');
  });
});
