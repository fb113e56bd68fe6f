/** The chapter on one row: what is typed, and the row that comes of it. */
import { describe, expect, it } from 'vitest';
import type { Segment } from '../../src/fit/row.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, textOf } from './scripted.ts';

const flat = (from: string, to: string, by: string, border = '0') => ({
  spread_stitches: from,
  spread_change: to,
  spread_by: by,
  spread_worked: 'flat',
  spread_border: border,
});
const round = (from: string, to: string, by: string) => ({
  spread_stitches: from,
  spread_change: to,
  spread_by: by,
  spread_worked: 'in the round',
});

/** The one row that is written. */
function rowOf(typed: Parameters<typeof planOf>[1]): readonly Segment[] {
  const [written] = instructed(planOf('spread', typed), 'work row');
  return written?.row ?? [];
}

describe('spreading changes over one row', () => {
  it('asks five questions, four in the round', () => {
    for (const [typed, count] of [
      [flat('80', '70', 'k2tog'), 5],
      [round('80 sts', '96', 'm1'), 4],
    ] as const) {
      expect(planOf('spread', typed).flow).toBe('spread');
      expect(Object.keys(typed)).toHaveLength(count);
    }
  });

  it('writes 80 to 70 as a forum answer did (forum.knittinghelp.com, year not given)', () => {
    const text = textOf(planOf('spread', flat('80', '70', 'k2tog')));
    expect(text).toContain('Work this row: k3, k2tog, (k6, k2tog) 9 times, k3. You then have 70 stitches.');
  });

  // From 'Magic Formula for Placement of Increases or Decreases' (workshop handout, 2010), 'Math Monday: Decreasing part
  // II' (papermoonknits.com, year not given) and 'Calculating where to place the increases' (woolpackyarn.com, year not given).
  it.each([
    ['124', '138', 'make one', 138],
    ['55', '38', 'knit two together', 38],
    ['112', '128', 'make one', 128],
    ['120', '180', 'kfb', 180],
  ])('%s to %s in the round by %s, knitted as it is written', (from, to, by, end) => {
    const row = rowOf(round(from, to, by));
    expect(Needle.castOn(Number(from), 'round').written(row).count).toBe(end);
  });

  it('leaves borders of four alone: a pinafore of 136 loses 54', () => {
    const row = rowOf(flat('136', '82', 'k2tog', '4'));
    expect([row[0], row.at(-1)]).toEqual(Array(2).fill({ kind: 'edge', stitches: 4 }));
    expect(Needle.castOn(136, 'flat').written(row).count).toBe(82);
  });

  it('offers several rows and double changes where one row is too short, each knitted to its count', () => {
    const [choice] = instructed(planOf('spread', flat('40', '100', 'm1', '2')), 'choose one');
    const ends = choice?.ways.map(({ instead }) => {
      const needle = Needle.castOn(40, 'flat');
      for (const i of instead) if (i.do === 'work row') needle.written(i.row);
      return needle.count;
    });
    expect(ends).toEqual([100, 100, 75]);
  });

  it('writes the usual way where the way is not known, and says so', () => {
    const plan = planOf('spread', round('40', '50', "I don't know"));
    expect(instructed(plan, 'work row')).toHaveLength(1);
    expect(plan.assumed.map((a) => a.question)).toEqual(['How to change']);
  });

  it.each([
    [flat('80', '80', 'm1'), 'there is nothing to add or to lose'],
    [flat('80', '70', 'm1'), 'You chose an increase, but 70 stitches is less than 80 stitches'],
    [flat('80', '90', 'k2tog'), 'You chose a decrease, but 90 stitches is more than 80 stitches'],
    [flat('20', '24', 'm1', '10'), 'Two borders of 10 stitches leave nothing of 20 stitches'],
  ])('says in words why nothing can be written: %o', (typed, words) => {
    const cannot = cannotOf('spread', typed);
    expect(textOf(cannot)).toContain(words);
    expectSound(cannot);
  });

  it.each([
    flat('80', '70', 'k2tog'),
    flat('40', '100', 'm1', '2'),
    round('134', '160', 'kfb'),
    round('40', '10', 'k2tog'),
  ])('states no number that its workings do not hold: %o', (typed) => {
    expectSound(planOf('spread', typed));
  });
});
