/** The back-neck chapter: what is typed, the turns that come of it, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

/** The gauge is ours, chosen to give the published stitches and rows. */
const PUBLISHED: Typed = {
  unit: 'cm',
  body_made: 'from the neck, in the round',
  gauge: '20 sts and 25 rows to 10 cm',
  neck_needle: '120',
  neck_raise: '4 cm',
  neck_middle: '30 cm',
  neck_base: '44 cm',
  neck_after: '0',
};
const IN_PIECES: Typed = {
  ...PUBLISHED,
  body_made: 'from the hem, in pieces',
  gauge: '20 sts and 28 rows to 4 in',
  neck_needle: '91',
  neck_raise: '1 in',
  neck_base: '12 in',
  neck_middle: '6 in',
  neck_after: '2',
};

function wedgeOf(typed: Typed) {
  const [found] = instructed(planOf('back_neck', typed), 'short rows');
  if (found === undefined) throw new Error(textOf(planOf('back_neck', typed)));
  return found.wedge;
}

describe('a back neck raised by short rows', () => {
  it('asks eight questions', () => {
    expect(Object.keys(PUBLISHED)).toHaveLength(8);
    expect(wedgeOf(PUBLISHED).worked).toBe('round');
  });

  // 'Why 120 stitches' (miclasouris.over-blog.com, 2019): the first turn 30 from the centre back, 10 short rows.
  it('has the turns of a published yoke of 120', () => {
    const wedge = wedgeOf(PUBLISHED);
    expect([wedge.rows, wedge.turns[0]?.stitches]).toEqual([10, 30]);
    const { heights } = knitWedge(Needle.castOn(120, 'round'), wedge);
    expect((heights[0] ?? 0) - (heights[60] ?? 0)).toBe(10);
  });

  it('is deepest in the middle of a flat back, and nothing at its edges', () => {
    const wedge = wedgeOf(IN_PIECES);
    const { heights } = knitWedge(Needle.castOn(91, 'flat'), wedge);
    expect([heights[0], heights[45], heights[90]]).toEqual([1, 1 + wedge.rows, 1]);
  });

  it('spreads over shares of the stitches where widths are not known', () => {
    const plan = planOf('back_neck', {
      ...IN_PIECES,
      neck_middle: "I don't know",
      neck_base: "I don't know",
    });
    expect(plan.assumed.map((a) => a.question).sort()).toEqual([
      'Neck, all of the short rows',
      'Neck, full height',
    ]);
  });

  it('offers the widest base where the one asked for is wider than the back', () => {
    const wide = { ...IN_PIECES, neck_base: '40 in', neck_middle: '10 in' };
    const [choice] = instructed(planOf('back_neck', wide), 'choose one');
    expect(choice?.ways).toHaveLength(1);
    expectSound(planOf('back_neck', wide));
  });

  it('says what waits where nothing can stand in', () => {
    const cannot = cannotOf('back_neck', { ...PUBLISHED, neck_needle: "I don't know" });
    expect(textOf(cannot)).toContain('The short rows wait for it');
  });

  it('is the same to the stitch from inches', () => {
    const inches = {
      ...PUBLISHED,
      unit: 'in',
      neck_raise: '1.5748',
      neck_middle: '11.811',
      neck_base: '17.3228',
    };
    expect(wedgeOf(inches).turns).toEqual(wedgeOf(PUBLISHED).turns);
  });

  it.each([PUBLISHED, IN_PIECES, { ...IN_PIECES, unit: 'in' }])(
    'states no number that its workings do not hold: %o',
    (typed) => {
      expectSound(planOf('back_neck', typed));
    },
  );
});
