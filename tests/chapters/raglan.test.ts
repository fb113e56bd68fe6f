/** The raglan chapter: what is typed, the lines of each part, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

/** The back is that of a published example; the other counts are our own. */
const UP: Typed = {
  unit: 'cm',
  body_made: 'from the hem, in the round',
  gauge: '20 sts and 30 rows to 10 cm',
  yoke_depth: '24 cm',
  p_back_yoke: '90',
  p_sleeve_yoke: '66',
  p_back_neck: '30',
  p_front_neck: '30',
  p_sleeve_neck: '14',
  neck_around: '44 cm',
};
const DOWN_FLAT: Typed = {
  ...UP,
  body_made: 'from the neck, in pieces',
  gauge: '20 sts and 32 rows to 10 cm',
};

function linesOf(typed: Typed) {
  const [found] = instructed(planOf('raglan', typed), 'shape raglan');
  if (found === undefined) throw new Error(textOf(planOf('raglan', typed)));
  return found.raglan;
}

describe('raglan lines', () => {
  it('ask ten questions', () => {
    expect(Object.keys(UP)).toHaveLength(10);
    expect(planOf('raglan', UP).steps).toHaveLength(2);
  });

  // 'How to Calculate Raglan Construction' (yarnsville.com, year not given): of a back of 90, 30 stay, each line takes 30.
  it('take thirty stitches of each side of a back of 90', () => {
    expect(linesOf(UP).lines.back.shaping).toHaveLength(30);
    expect(linesOf(UP).rows).toBe(72);
  });

  it.each([UP, DOWN_FLAT])('are knitted part by part to their counts, and add up row by row: %o', (typed) => {
    const { lines, shaping, from, to, rows } = linesOf(typed);
    const worked = typed === UP ? 'round' : 'flat';
    const parts = [lines.back, lines.front, lines.sleeve, lines.sleeve];
    const needles = parts.map((spaced) => {
      const needle = Needle.castOn(spaced.from, 'flat');
      expect(knitSection(needle, spaced, 'flat')).toEqual([]);
      if (worked === 'flat') expect(spaced.shaping.every(({ row }) => row % 2 === 1)).toBe(true);
      return needle;
    });
    const countAt = (row: number) => needles.reduce((sum, needle) => sum + (needle.counts[row - 1] ?? 0), 0);
    for (const { row, after } of shaping) expect(countAt(row)).toBe(after);
    expect([countAt(rows), parts.reduce((sum, p) => sum + p.from, 0)]).toEqual([to, from]);
  });

  it('say how near the neck comes to the one wanted, and offer counts that come nearer', () => {
    expect(textOf(planOf('raglan', UP))).toContain('The neck has 88 stitches, 44 cm around.');
    expect(textOf(planOf('raglan', UP))).toContain('That is the neck you want');
    const wider = planOf('raglan', { ...UP, neck_around: '48 cm' });
    expect(textOf(wider)).toContain('You want 48 cm: it is 4 cm too narrow.');
    const [choice] = instructed(wider, 'choose one');
    expect(choice?.ways.flatMap((w) => w.instead).map((i) => i.do)).toEqual(['begin with', 'shape raglan']);
    expectSound(wider);
  });

  it('say nothing of a neck that was not asked for, and take the front like the back', () => {
    const plan = planOf('raglan', { ...UP, neck_around: "I don't know", p_front_neck: "I don't know" });
    expect(textOf(plan)).not.toContain('You want');
    expect(plan.assumed.map((a) => a.question)).toContain('Front neck stitches');
  });

  // 'The Pits' (knittingsitting.blogspot.com, 2014): from an even count 33 is never reached two at a time, but 32 or 34.
  it('name every part that cannot be shaped, and the counts that can', () => {
    const plan = planOf('raglan', { ...UP, p_sleeve_neck: '33' });
    expect(textOf(plan)).toContain('Sleeve: a change of 33 stitches cannot be shared by two edges.');
    const [choice] = instructed(plan, 'choose one');
    const ends = choice?.ways.flatMap((w) =>
      w.instead.flatMap((i) => (i.do === 'shape raglan' ? [i.raglan.lines.sleeve.to] : [])),
    );
    expect(ends).toEqual([32, 34]);
    expectSound(plan);
  });

  it('offer a deeper yoke where its rows are too few', () => {
    const plan = planOf('raglan', { ...DOWN_FLAT, yoke_depth: '12 cm' });
    expect(textOf(plan)).toContain('Back: it needs 30 shaping rows, and only 19 may carry them.');
    expect(textOf(plan)).toContain('A deeper yoke of');
    expectSound(plan);
  });

  it('wait for the counts at the neck', () => {
    const cannot = cannotOf('raglan', { ...UP, p_back_neck: "I don't know" });
    expect(textOf(cannot)).toContain('The raglan lines wait for it');
  });

  it('are the same to the row from inches', () => {
    const inches = { ...UP, unit: 'in', yoke_depth: '9.4488', neck_around: '17.3228' };
    expect(linesOf(inches).shaping).toEqual(linesOf(UP).shaping);
  });

  it.each([UP, DOWN_FLAT, { ...UP, unit: 'in' }])(
    'state no number that their workings do not hold: %o',
    (typed) => {
      expectSound(planOf('raglan', typed));
    },
  );
});
