/** The hem chapter: what is typed, the turns that come of it, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const ASKED: Typed = {
  unit: 'cm',
  body_made: 'from the hem, in the round',
  gauge: '20 sts and 28 rows to 10 cm',
  p_hem_stitches: '200',
  p_hem: '5 cm',
  hem_drop: '4 cm',
  hem_over: 'across the back',
  hem_middle: '17 cm',
};

function wedgeOf(typed: Typed) {
  const [found] = instructed(planOf('hem', typed), 'short rows');
  if (found === undefined) throw new Error(textOf(planOf('hem', typed)));
  return found.wedge;
}

function heightsOf(typed: Typed): readonly number[] {
  const wedge = wedgeOf(typed);
  return knitWedge(Needle.castOn(wedge.needle, wedge.worked), wedge).heights;
}

describe('a hem lower at the back', () => {
  it('asks eight questions, seven of a back in pieces', () => {
    expect(Object.keys(ASKED)).toHaveLength(8);
    const { hem_over: _, ...pieces } = ASKED;
    expect(wedgeOf({ ...pieces, body_made: 'from the hem, in pieces' }).needle).toBe(200);
  });

  it('is 12 rounds deeper in the middle of the back and none at the front', () => {
    const heights = heightsOf(ASKED);
    expect([heights[50], heights[150]]).toEqual([13, 1]);
  });

  // 'How to lower the bottom edge on the back of a handknit sweater' (a designer's tutorial, year not given): 5 cm at 22
  // rounds to 10 cm are 11, so 12 short rows and six turns a side.
  it('has the rows of a published example', () => {
    const published = {
      ...ASKED,
      gauge: '20 sts and 22 rows to 10 cm',
      p_hem_stitches: '240',
      hem_drop: '5 cm',
    };
    expect([wedgeOf(published).rows, wedgeOf(published).turns.length]).toEqual([12, 12]);
  });

  it('tapers all round to the centre of the front, from the neck down too', () => {
    const down = { ...ASKED, body_made: 'top down', hem_over: 'all round' };
    const heights = heightsOf(down);
    expect([heights[0], heights[100]]).toEqual([12, 0]);
    expect(textOf(planOf('hem', down))).toContain('when only the edging (14 rounds) is left to do');
  });

  it('is the same to the stitch from inches', () => {
    const inches = {
      ...ASKED,
      unit: 'in',
      gauge: '20 sts and 28 rows to 10 cm',
      p_hem: '1.9685 in',
      hem_drop: '1.5748 in',
      hem_middle: '6.6929 in',
    };
    expect(wedgeOf(inches).turns).toEqual(wedgeOf(ASKED).turns);
  });

  it('takes a third of the back as lowest where that is not known, and says so', () => {
    const plan = planOf('hem', { ...ASKED, hem_middle: "I don't know" });
    expect(plan.assumed).toMatchObject([
      { question: 'Hem, lowest part', used: '16.7 cm (a third of the back)' },
    ]);
  });

  it('offers ways where the turns do not fit: each can be knitted', () => {
    const steep = { ...ASKED, p_hem_stitches: '80', hem_drop: '30 cm', hem_middle: '19 cm' };
    const [choice] = instructed(planOf('hem', steep), 'choose one');
    const deep = choice?.ways.map(({ instead }) => {
      const needle = Needle.castOn(80, 'round');
      for (const i of instead) {
        if (i.do === 'short rows') knitWedge(needle, i.wedge);
        if (i.do === 'work plain') needle.plain(i.rows);
      }
      return Math.max(...needle.heights) - Math.min(...needle.heights);
    });
    expect(deep).toEqual([2]);
    expectSound(planOf('hem', steep));
  });

  it('says what waits where the stitches are not known', () => {
    const cannot = cannotOf('hem', { ...ASKED, p_hem_stitches: "I don't know" });
    expect(textOf(cannot)).toContain('The hem waits for it');
  });

  it.each([
    ASKED,
    { ...ASKED, hem_over: 'all round', p_hem_stitches: '201' },
    { ...ASKED, unit: 'in', body_made: 'top down', hem_over: 'all round' },
    { ...ASKED, hem_drop: '0.5 cm', gauge: '8 sts and 10 rows to 10 cm' },
  ])('states no number that its workings do not hold: %o', (typed) => {
    expectSound(planOf('hem', typed));
  });
});
