import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

/** A sleeve from the cuff, flat: 48 to 78 stitches over 40 cm, for 22 stitches and 30 rows to 10 cm. */
const SLEEVE = {
  unit: 'cm',
  recheck_piece: 'sleeve from the cuff, flat',
  recheck_from: '48',
  recheck_to: '78',
  recheck_length: '40 cm',
  recheck_gauge: '22 sts and 30 rows to 10 cm',
  recheck_rows: '60',
  recheck_stitches: '62',
  recheck_counted: '44 sts over 20 cm',
  recheck_counted_rows: '60 rows over 20 cm',
};

/** Knits every shape instruction of a step on, from the count at which it begins. */
function knitted(plan: Plan, step: number, from: number): Needle {
  const { instead, worked } = plan.steps[step] ?? {};
  const way = worked ?? 'flat';
  const needle = Needle.castOn(from, way);
  for (const i of instead ?? []) if (i.do === 'shape') expect(knitSection(needle, i.spaced, way)).toEqual([]);
  return needle;
}

/** A measure of a plan as it stands last in it. */
function measured(plan: Plan, level: string, of: string): number {
  const all = instructed(plan, 'compare measures').flatMap((i) => i.measures);
  const found = all.findLast((m) => m.level === level && m.of === of);
  if (found === undefined) throw new Error(`no ${of} at the ${level}`);
  return found.expected.expected;
}

describe('a recheck in mid-project', () => {
  it('asks ten questions', () => {
    expect(flowOf('recheck').stops).toHaveLength(10);
  });

  it('says that a piece is on track, with what it will measure and how surely', () => {
    const plan = planOf('recheck', SLEEVE);
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: on track']);
    const text = textOf(plan);
    expect(text).toContain('length to the end: 40 cm, give or take 0.2 cm; 40 cm planned. Near enough.');
    expect(instructed(plan, 'shape')).toEqual([]);
    expectSound(plan);
  });

  describe('of a body that is too long already', () => {
    const BODY = {
      ...SLEEVE,
      recheck_piece: 'body from the hem, in the round',
      recheck_from: '220',
      recheck_to: '220',
      recheck_stitches: '220',
    };
    const ripped = (typed: Parameters<typeof planOf>[1]) => {
      const plan = planOf('recheck', { ...BODY, ...typed });
      expectSound(plan);
      return textOf(plan);
    };

    it('rips back to the round in which the length was reached, not to the start', () => {
      // 40 cm at 2.8 rounds to the centimetre are 112.
      const text = ripped({ recheck_rows: '120', recheck_counted_rows: '28 rows over 10 cm' });
      expect(text).toContain('length to the end, knitted already: 42.9 cm');
      expect(text).toContain('One way: leave it as it is');
      expect(text).toContain('Rip back 8 rounds, to round 112. Begin with 220 stitches.');
    });

    it('counts the rounds that were knitted beyond the planned end', () => {
      const text = ripped({ recheck_rows: '130' });
      expect(text).toContain('length to the end, knitted already: 43.3 cm');
      expect(text).toContain('Rip back 10 rounds, to round 120.');
    });

    it('leaves room for the shaping that comes out with the rounds, and says that it takes it as even', () => {
      const shaped = { recheck_from: '180', recheck_rows: '120', recheck_counted_rows: '28 rows over 10 cm' };
      const text = ripped(shaped);
      // Ten increases over 120 rounds: the tenth lies in round 120. It is worked again in round 112.
      expect(text).toContain('Rip back 9 rounds, to round 111. Begin with 216 stitches.');
      expect(text).toContain('Rounds that shape, with the count after each: 1 (220).');
      expect(text).toContain('Have you another count there? Then check again from there with your own.');
    });
  });

  it('asks for another count where that of the knitting would leave next to nothing to shape', () => {
    const body = { ...SLEEVE, recheck_piece: 'body from the hem, in the round', recheck_to: '38' };
    const cannot = cannotOf('recheck', { ...body, recheck_counted: ['1 stitch over 4 in', 'yes'] });
    // 38 stitches at 1 over 10.16 cm for 22 over 10 cm are 1.70, and a shaping round changes four.
    expect(textOf(cannot)).toContain('only 2 stitches would be left at one end. That is too few to shape.');
    expect(textOf(cannot)).toContain('Count the stitches of the knitting once more');
  });

  it('spaces the rest anew where the rows are off, and every stitch of it can be knitted', () => {
    const plan = planOf('recheck', { ...SLEEVE, recheck_counted_rows: '50 rows over 16 cm' });
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: mend ahead']);
    const needle = knitted(plan, 1, 62);
    expect(needle.count).toBe(78);
    // 40 cm at 3.125 rows to the centimetre are 125, of which an even number is knitted.
    expect(needle.heights[0]).toBe(126 - 60);
    expect(textOf(plan)).toContain('length to the end: 38.4 cm');
    expectSound(plan);
  });

  it('keeps right-side rows where an odd number of rows is knitted', () => {
    const plan = planOf('recheck', {
      ...SLEEVE,
      recheck_rows: '61',
      recheck_counted_rows: '50 rows over 16 cm',
    });
    const [shape] = instructed(plan, 'shape');
    expect(shape?.spaced.shaping.map((s) => (s.row + 61) % 2)).toEqual(Array(8).fill(1));
    expectSound(plan);
  });

  it('mends a count that is not the plan’s', () => {
    const plan = planOf('recheck', { ...SLEEVE, recheck_stitches: '56' });
    expect(textOf(plan)).toContain('Only the count on your needle is not the plan’s');
    expect(knitted(plan, 1, 56).count).toBe(78);
    expectSound(plan);
  });

  it('leaves the choice where what is knitted is off: the price of going on, and of ripping back', () => {
    const plan = planOf('recheck', { ...SLEEVE, recheck_counted: '40 sts over 20.5 cm' });
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: decide']);
    const text = textOf(plan);
    expect(text).toContain('One way: knit on');
    expect(text).toContain('Rip back all 60 rows and begin this part again, with another count.');
    const [begin] = instructed(plan, 'begin with');
    expect(knitted(plan, 1, 62).count).toBe(70);
    expect(knitted(plan, 2, begin?.stitches ?? 0).count).toBe(70);
    expectSound(plan);
  });

  it('says so where the rows that are left are too few', () => {
    const plan = planOf('recheck', { ...SLEEVE, recheck_rows: '114', recheck_stitches: '58' });
    const text = textOf(plan);
    expect(text).toContain('it needs 10 shaping rows, and only 3 rows here may carry them');
    expectSound(plan);
  });

  it('waits for what it cannot do without', () => {
    const text = textOf(cannotOf('recheck', { ...SLEEVE, recheck_counted: "don't know" }));
    expect(text).toContain('Stitches of the knitting: The check waits for it.');
  });

  it('is the same plan from inches and from centimetres', () => {
    const inches = planOf('recheck', {
      ...SLEEVE,
      unit: 'in',
      recheck_length: `${40 / 2.54} in`,
      recheck_counted_rows: '50 rows over 16 cm',
    });
    const metric = planOf('recheck', { ...SLEEVE, recheck_counted_rows: '50 rows over 16 cm' });
    expect(instructed(inches, 'shape').map((i) => i.spaced.shaping)).toEqual(
      instructed(metric, 'shape').map((i) => i.spaced.shaping),
    );
    expectSound(inches);
  });
});

describe('rechecks that were published or asked', () => {
  it('Why’d you lie, swatch?, cowtownknits, 2013: 7 rows for 8 to the inch come out 14.3 % longer and need 98 for 112', () => {
    const plan = planOf('recheck', {
      unit: 'in',
      recheck_piece: 'body from the hem, in the round',
      recheck_from: '200',
      recheck_to: '200',
      recheck_length: '14 in',
      recheck_gauge: '5 sts and 8 rows = 1"',
      recheck_rows: '56',
      recheck_stitches: '200',
      recheck_counted: '20 sts = 4"',
      recheck_counted_rows: '28 rows = 4"',
    });
    const [plain] = instructed(plan, 'work plain');
    expect(plain?.rows).toBe(98 - 56);
    expect(textOf(plan)).toContain('length to the end: 16 in');
    expectSound(plan);
  });

  it('a question met in knitting talk: 156 stitches planned at 13 to 4 in come out 34.7 in at 18, and 216 would be needed', () => {
    const plan = planOf('recheck', {
      unit: 'in',
      recheck_piece: 'body from the hem, in the round',
      recheck_from: '156',
      recheck_to: '156',
      recheck_length: '15 in',
      recheck_gauge: '13 sts and 18 rows = 4"',
      recheck_rows: '40',
      recheck_stitches: '156',
      recheck_counted: '18 sts = 4"',
      recheck_counted_rows: '18 rows = 4"',
    });
    expect(textOf(plan)).toContain('width at the beginning, knitted already: 34.7 in');
    expect(instructed(plan, 'begin with')[0]?.stitches).toBe(216);
    expectSound(plan);
  });

  it('a question met in knitting talk: at row 47 of a sleeve of 8 in, 5 rows are left for two more increases', () => {
    const plan = planOf('recheck', {
      unit: 'in',
      recheck_piece: 'sleeve from the cuff, flat',
      recheck_from: '47',
      recheck_to: '59',
      recheck_length: '8 in',
      recheck_gauge: '20 sts and 28 rows = 4"',
      recheck_rows: '47',
      recheck_stitches: '55',
      recheck_counted: '20 sts = 4"',
      recheck_counted_rows: '47 rows over 7.25 in',
    });
    const [shape] = instructed(plan, 'shape');
    expect(shape?.spaced.rows).toBe(5);
    expect(shape?.spaced.shaping).toHaveLength(2);
    expect(measured(plan, 'end', 'length') / 2.54).toBeCloseTo(8, 1);
    expectSound(plan);
  });
});
