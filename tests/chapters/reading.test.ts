import { describe, expect, it } from 'vitest';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

const typed = (line: string | string[], before = "don't know", after = "don't know") => ({
  reading_line: line,
  reading_before: before,
  reading_after: after,
});

const rowsOf = (plan: ReturnType<typeof planOf>) =>
  instructed(plan, 'shape rows').map((i) => i.shaping.map((s) => s.row));

describe('a shaping line read in three questions', () => {
  it('asks three questions', () => {
    expect(flowOf('reading').stops).toHaveLength(3);
  });

  it('shows both readings where the trade is of two minds', () => {
    const plan = planOf('reading', typed('decrease 1 st at each end of every 6th row 5 times', '60', '50'));
    expect(rowsOf(plan)).toEqual([
      [6, 12, 18, 24, 30],
      [1, 7, 13, 19, 25],
    ]);
    expect(textOf(plan)).toContain(
      'Rows that shape, with the count after each: 6 (58), 12 (56), 18 (54), 24 (52), 30 (50).',
    );
    expectSound(plan);
  });

  // biome-ignore format: one question stands below another
  it.each([
    { what: 'baby raglan, rows 1 to 41, 52 to 20', line: 'dec 1 st at each end of next and 5 foll 4th rows, then foll 10 alt rows', before: '52', after: '20', rows: [1, 5, 9, 13, 17, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41] },
    { what: 'armhole, 49 to 39', line: 'dec 1 st at each end of next 3 rows, then foll 1 alt row, then 1 foll 4th row', before: '49', after: '39', rows: [1, 2, 3, 5, 9] },
  ])('questions met in knitting talk: $what', ({ line, before, after, rows }) => {
    const plan = planOf('reading', typed(line, before, after));
    const adding = plan.steps.findIndex((s) => s.notes.some((n) => n.say === 'note: the line adds up'));
    expect(rowsOf(plan)[adding]).toEqual(rows);
    expectSound(plan);
  });

  it('a question met in knitting talk, in German: every 4th and 6th row by turns, 60 rows', () => {
    const plan = planOf(
      'reading',
      typed('12 x 1 Masche in jeder 4. und 6. Reihe beidseitig zunehmen', '48', '72'),
    );
    expect(rowsOf(plan)[0]).toEqual([4, 10, 14, 20, 24, 30, 34, 40, 44, 50, 54, 60]);
    expect(instructed(plan, 'shape rows')[0]?.shaping.at(-1)?.after).toBe(72);
    expectSound(plan);
  });

  it('takes the size that was picked out of a line for all sizes', () => {
    const line = 'dec 1 st at neck edge every 6th (8th, 6th) row 5 (2, 1) times';
    const plan = planOf('reading', typed([line, '2'], '30', '28'));
    expect(rowsOf(plan)[0]).toEqual([8, 16]);
    expectSound(plan);
  });

  it('names the reading that alone adds up', () => {
    const plan = planOf(
      'reading',
      typed('dec 1 st at each end of next and every foll 8th row 6 times', '60', '48'),
    );
    const meant = plan.steps.filter((s) => s.notes.some((n) => n.say === 'note: only this reading adds up'));
    expect(meant).toHaveLength(1);
    expect(meant[0]?.notes.map((n) => n.say)).toContain('note: times with the first row');
    expectSound(plan);
  });

  it('says what the line reaches where it does not add up, and from which count it would', () => {
    const plan = planOf('reading', typed('dec 1 st at each end of every 4th row 9 times', '45', '24'));
    const text = textOf(plan);
    expect(text).toContain('From 45 stitches you reach 27 stitches, but the pattern says 24 stitches.');
    expect(text).toContain('It would add up from 42 stitches.');
    expectSound(plan);
  });

  it('tells the rows alone where no count is known', () => {
    const plan = planOf('reading', typed('every 6th row 3 times'));
    expect(textOf(plan)).toContain('Rows that shape: 6, 12, 18.');
    expectSound(plan);
  });

  it('works out from the counts how many stitches a row changes, where the line does not say', () => {
    const plan = planOf('reading', typed('decrease every 4th row 5 times', '40', '30'));
    expect(textOf(plan)).toContain('Each decreases 2 stitches.');
    expectSound(plan);
  });

  it('speaks of rounds where the line does', () => {
    expect(textOf(planOf('reading', typed('dec 2 sts every 5th rnd 4 times', '50')))).toContain(
      'Rounds that shape',
    );
  });

  it('says what it needs where a line goes on until a count', () => {
    const line = 'increase 1 st at each end of every 6th row to 74 sts';
    const cannot = cannotOf('reading', typed(line));
    expect(textOf(cannot)).toContain('the count before it must be known');
    const plan = planOf('reading', typed(line, '46'));
    expect(instructed(plan, 'shape rows')[0]?.shaping).toHaveLength(14);
    expectSound(plan);
  });
});
