/** The bust chapter: what is typed, the advice, and the shaping that comes of it, knitted. */
import { describe, expect, it } from 'vitest';
import { knitSection } from '../simulator/garment.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const COMMON: Typed = {
  unit: 'cm',
  body_made: 'from the hem, in the round',
  gauge: '22 sts and 30 rows to 10 cm',
  p_bust: '220',
  bust: '104 cm',
  upper_bust: '93 cm',
  front_length: '47.2 cm',
  back_length: '42 cm',
  bust_fabric: 'plain',
  bust_span: '21 cm',
  bust_below_underarm: '6 cm',
};
const SHORT_ROWS: Typed = { ...COMMON, bust_shaping: 'short rows' };
const FRONT_STITCHES: Typed = { ...COMMON, bust_shaping: 'more stitches for the front', bust_extra: '6 cm' };
const DARTS: Typed = {
  ...COMMON,
  bust_shaping: 'vertical darts',
  bust_extra: '6 cm',
  bust_above_waist: '15 cm',
};
const BOTH: Typed = { ...DARTS, bust_shaping: 'both' };
const SLENDER = { bust: '90 cm', upper_bust: '88 cm', front_length: '42 cm' };

/** 'How to Add Short Rows (for the bust)' (knotions.com, year not given); the bust points are not given there: 8 in. */
const PUBLISHED: Typed = {
  ...SHORT_ROWS,
  unit: 'in',
  body_made: 'from the hem, in pieces',
  gauge: '20 sts and 24 rows to 4 in',
  p_bust: '95',
  bust: '40',
  upper_bust: '36',
  front_length: '16',
  back_length: '13',
  bust_span: '8',
  bust_below_underarm: '2',
};

function wedgeOf(typed: Typed) {
  const [found] = instructed(planOf('bust', typed), 'short rows');
  if (found === undefined) throw new Error(textOf(planOf('bust', typed)));
  return found.wedge;
}

function depthOf(typed: Typed): number {
  const wedge = wedgeOf(typed);
  const { heights } = knitWedge(Needle.castOn(wedge.needle, wedge.worked), wedge);
  return Math.max(...heights) - Math.min(...heights);
}

describe('the bust chapter', () => {
  it.each([
    [SHORT_ROWS, 12],
    [FRONT_STITCHES, 13],
    [DARTS, 14],
    [BOTH, 14],
  ])('asks at most fourteen questions', (typed, count) => {
    expect(Object.keys(typed)).toHaveLength(count);
    expect(planOf('bust', typed).steps.length).toBeGreaterThanOrEqual(2);
  });

  it.each([
    [{ ...BOTH }, 'Both suit you'],
    [{ ...BOTH, bust_fabric: 'cables' }, 'Vertical darts suit you'],
    [{ ...BOTH, bust: '96 cm', bust_extra: '1 cm' }, 'Short rows suit you'],
    [{ ...BOTH, front_length: '42 cm' }, 'Vertical darts suit you'],
  ])('advises by length, width and fabric', (typed, words) => {
    expect(textOf(planOf('bust', typed))).toContain(words);
  });

  it('takes the shaping that suits where none was chosen, and says so', () => {
    const plan = planOf('bust', { ...BOTH, bust_shaping: "I don't know" });
    expect(plan.assumed.map((a) => a.used)).toEqual(['Short rows and vertical darts (suits your figures)']);
    expect(textOf(plan)).not.toContain('You chose another way');
  });

  it('says where no shaping is needed, and asks no more', () => {
    const { bust_span: _, bust_below_underarm: __, ...rest } = COMMON;
    const plan = planOf('bust', { ...rest, ...SLENDER, bust_shaping: 'none' });
    expect(textOf(plan)).toContain(
      'Your figures ask for no shaping at the bust. Knit the front as the pattern has it.',
    );
    expectSound(plan);
  });
});

describe('a short-row bust dart', () => {
  it('has the 18 rows and the inch at the side of a published example, from inches', () => {
    const wedge = wedgeOf(PUBLISHED);
    expect([wedge.rows, wedge.turns.length, wedge.turns[0]?.stitches]).toEqual([18, 18, 5]);
    expect(depthOf(PUBLISHED)).toBe(18);
    expectSound(planOf('bust', PUBLISHED));
  });

  it('lies on the front alone: 5.2 cm are 15.6 rows, made 16', () => {
    const wedge = wedgeOf(SHORT_ROWS);
    const { heights } = knitWedge(Needle.castOn(220, 'round'), wedge);
    expect([heights[55], heights[165]]).toEqual([17, 1]);
  });

  it('goes by the girths where front and back were not measured, with the range of the rule of thumb', () => {
    const { back_length: _, ...rest } = SHORT_ROWS;
    const plan = planOf('bust', { ...rest, front_length: "I don't know" });
    expect(textOf(plan)).toContain('anything from 4.4 cm to 5.9 cm may be right');
    expect(plan.assumed.map((a) => a.question)).toEqual(['Front and back length']);
    expectSound(plan);
  });

  it('does not take a table for the back where only the front was measured', () => {
    const plan = planOf('bust', { ...SHORT_ROWS, back_length: "I don't know" });
    expect(plan.assumed.map((a) => a.question)).toEqual(['Front and back length']);
  });

  it('is not planned where the front is no longer than the back', () => {
    const cannot = cannotOf('bust', { ...SHORT_ROWS, ...SLENDER });
    expect(textOf(cannot)).toContain('The front needs no more length than the back');
    expectSound(cannot);
  });

  it('is the same to the stitch from inches', () => {
    const inInches = {
      ...SHORT_ROWS,
      unit: 'in',
      bust: '40.9449',
      upper_bust: '36.6142',
      front_length: '18.5827',
      back_length: '16.5354',
      bust_span: '8.2677',
      bust_below_underarm: '2.3622',
    };
    expect(wedgeOf(inInches).turns).toEqual(wedgeOf(SHORT_ROWS).turns);
  });
});

describe('darts that run up and down', () => {
  it.each([
    'from the hem, in the round',
    'from the hem, in pieces',
    'from the neck, in the round',
    'from the neck, in pieces',
  ])('widen and narrow the front back to the count of the pattern: %s', (body_made) => {
    const flat = body_made.endsWith('pieces');
    const typed = { ...DARTS, body_made, ...(flat ? { p_bust: '112' } : {}) };
    const worked = flat ? 'flat' : 'round';
    const needle = Needle.castOn(flat ? 112 : 110, 'round');
    const sections = instructed(planOf('bust', typed), 'shape').map((i) => i.spaced);
    expect(sections).toHaveLength(2);
    const ends = sections.map((spaced) => {
      expect(knitSection(needle, spaced, 'round')).toEqual([]);
      if (worked === 'flat') expect(spaced.shaping.every(({ row }) => row % 2 === 1)).toBe(true);
      return needle.count;
    });
    expect(ends).toEqual(flat ? [124, 112] : [122, 110]);
  });

  // 'Bust Dart Math' (Knitting Daily, interweave.com, 2008): 10 in more at 4 stitches to the inch and 4 to a round: 10 rounds.
  it('has the shaping rounds of a published example', () => {
    const published = {
      ...DARTS,
      unit: 'in',
      gauge: '16 sts and 24 rows to 4 in',
      p_bust: '128',
      bust: ['42', 'yes'],
      upper_bust: ['32', 'yes'],
      front_length: '18',
      back_length: '17',
      bust_span: ['8', 'yes'],
      bust_below_underarm: '4',
      bust_extra: '10',
      bust_above_waist: '7',
    };
    const [widen] = instructed(planOf('bust', published), 'shape');
    expect(widen?.spaced.shaping).toHaveLength(10);
  });

  it('may be left out below the bust: the front begins with its stitches and narrows above', () => {
    const plan = planOf('bust', FRONT_STITCHES);
    expect(textOf(plan)).toContain('Begin the front with 12 stitches more than the pattern: 122 stitches.');
    expect(instructed(plan, 'shape').map(({ spaced }) => [spaced.from, spaced.to])).toEqual([[122, 110]]);
  });

  it('from the neck down, keep the stitches that they gained where none are lost again', () => {
    const plan = planOf('bust', { ...FRONT_STITCHES, body_made: 'from the neck, in the round' });
    expect(instructed(plan, 'shape').map(({ spaced }) => [spaced.from, spaced.to])).toEqual([[110, 122]]);
    expect(textOf(plan)).toContain('The front keeps 122 stitches from here on');
    expectSound(plan);
  });

  it('are not planned in too few rows; what would fit is named', () => {
    const cannot = cannotOf('bust', { ...DARTS, bust_below_underarm: '0.5 cm', bust_extra: '15 cm' });
    expect(textOf(cannot)).toContain('it needs 8 shaping rows, and only 2 rows here may carry them');
    expectSound(cannot);
  });

  it('leave the edge stitches of a flat front out of the width of a way out', () => {
    const flat = { ...DARTS, body_made: 'from the hem, in pieces', p_bust: '112', bust_extra: '15 cm' };
    const { instead } = cannotOf('bust', { ...flat, bust_below_underarm: '0.5 cm' });
    const [way] = instead.filter(({ say }) => say === 'note: way out, count within reach');
    // 2.2 stitches to a centimetre; one stitch at each edge goes into the seams.
    expect(way?.with).toMatchObject({ end: { value: 140 }, width: { value: expect.closeTo(138 / 2.2, 9) } });
  });

  it('leave the short rows standing where only one of both can be', () => {
    const plan = planOf('bust', { ...BOTH, bust_below_underarm: '0.5 cm', bust_extra: '15 cm' });
    expect(instructed(plan, 'short rows')).toHaveLength(1);
    expect(plan.steps.map((s) => s.where.say)).toContain('where: what cannot be');
    expectSound(plan);
  });

  it.each([
    SHORT_ROWS,
    FRONT_STITCHES,
    DARTS,
    BOTH,
    { ...BOTH, unit: 'in' },
    { ...BOTH, body_made: 'from the neck, in pieces' },
  ])('state no number that their workings do not hold: %o', (typed) => {
    expectSound(planOf('bust', typed));
  });
});
