/** The waist's own chapter: darts in the back alone of a body in pieces, from what is typed to two pieces that can be sewn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, Step } from '../../src/fit/plan.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, outcomeOf, planOf, type Typed, textOf, workingNamed } from './scripted.ts';

const BACK_ALONE: Typed = {
  unit: 'cm',
  body_made: 'from the hem, in pieces',
  gauge: '22 sts and 30 rows to 10 cm',
  p_body_length: '40 cm',
  p_bust: '112',
  p_hem: '6 cm',
  table: 'women',
  waist: '80 cm',
  waist_ease: '8 cm',
  underarm_to_waist: '18 cm',
  p_hem_stitches: '112',
  waist_lines: 'in darts, the back alone',
};

/** One piece from its steps alone, with the stitches before the first row and after each. */
function knitted(steps: readonly Step[]): { rows: number; counts: readonly number[] } {
  const instructions = steps.flatMap(({ instead }) => instead);
  const [first] = instructions;
  if (first?.do !== 'cast on' && first?.do !== 'begin with') throw new Error('nothing to begin with');
  const needle = Needle.castOn(first.stitches, 'flat');
  for (const one of instructions.slice(1)) {
    if (one.do === 'shape') expect(knitSection(needle, one.spaced, 'flat')).toEqual([]);
    else if (one.do === 'work plain' || one.do === 'work edging') {
      expect(needle.count).toBe(one.stitches);
      needle.plain(one.rows);
    } else if (one.do === 'bind off') expect(needle.count).toBe(one.stitches);
    else expect(one.do).toBe('say');
  }
  return { rows: needle.log.length, counts: [first.stitches, ...needle.counts] };
}

const pieceOf = (plan: Plan, piece: Step['piece']) =>
  knitted(plan.steps.filter((step) => step.piece === piece));

describe('darts in the back alone of a body in pieces', () => {
  // The front is 50 cm wide, which leaves 38 cm to the back: 83.6 and 2 stitches, in fours 84. 82 stitches are 37.3 cm.
  it('take the whole difference in the back, and say what both measure together', () => {
    const plan = planOf('waist', BACK_ALONE);
    const text = textOf(plan);
    expect(text).toContain('Hang two markers'.toLowerCase());
    expect(text).toContain(
      'The front is 50 cm wide in the middle of these rows. Together they measure 87.3 cm all round.',
    );
    expect(text).toContain('The front has no darts. It has 120 rows in all, as many as the back');
    expect(text).toContain('- waist: 87.3 cm');
    expect(text).not.toContain('Knit the front to match the back here.');
    expectSound(plan);
    const [back, front] = [pieceOf(plan, 'back'), pieceOf(plan, 'front')];
    expect([back.rows, front.rows]).toEqual([120, 120]);
    expect([back.counts[66], front.counts[66]]).toEqual([84, 112]);
    expect(workingNamed(plan, 'width at the waist').result.value).toBeCloseTo((82 + 110) / 2.2, 9);
  });

  it('are refused where they would meet, with what can be had instead', () => {
    const refused = cannotOf('waist', { ...BACK_ALONE, waist: '60 cm', waist_ease: '-9 cm' });
    expect(textOf(refused)).toBe(
      [
        'This cannot be planned.',
        'Because: Darts that take in so much would meet before the waist is reached.',
        'What you can do: Shape it in darts of front and back. The waist then measures 52.7 cm all round.',
        'What you can do: Keep to these darts for a waist of 61.8 cm all round, or wider.',
        '',
      ].join('\n'),
    );
    expectSound(refused);
    const tried = planOf('waist', { ...BACK_ALONE, waist: '62 cm', waist_ease: '-0.2 cm' });
    expect(workingNamed(tried, 'width at the waist').result.value).toBeCloseTo((26 + 110) / 2.2, 9);
  });

  it('are refused where rows are too few, with what can be had instead', () => {
    const refused = cannotOf('waist', {
      ...BACK_ALONE,
      p_body_length: '26 cm',
      waist: '72 cm',
      waist_ease: '2 cm',
      underarm_to_waist: '12 cm',
    });
    expect(textOf(refused)).toContain('it needs 14 shaping rows, and only 10 rows here may carry them');
    expect(textOf(refused)).toContain(
      'Shape it in darts of front and back. The waist then measures 74.5 cm all round.',
    );
    expectSound(refused);
  });

  it('are two pieces with the same rows that measure what is stated, whatever is typed', () => {
    const outcomes = { plan: 0, cannot: 0 };
    const many = (min: number, max: number) => fc.integer({ min, max });
    const asked = fc.record({
      unit: fc.constantFrom('cm', 'in'),
      made: fc.constantFrom('from the hem, in pieces', 'from the neck, in pieces'),
      stitches: many(14, 30),
      taller: many(125, 145),
      length: many(30, 50),
      bust: many(60, 180),
      flare: many(-9, 15),
      edging: many(2, 8),
      waist: many(68, 110),
      ease: many(-4, 12),
      below: many(30, 60),
    });
    fc.assert(
      fc.property(asked, (a) => {
        const outcome = outcomeOf('waist', {
          unit: a.unit,
          body_made: a.made,
          gauge: `${a.stitches} sts and ${Math.round((a.stitches * a.taller) / 100)} rows to 10 cm`,
          p_body_length: `${a.length} cm`,
          p_bust: `${a.bust}`,
          p_hem: `${a.edging} cm`,
          table: 'women',
          waist: `${a.waist} cm`,
          waist_ease: `${a.ease} cm`,
          underarm_to_waist: `${Math.round((a.length * a.below) / 100)} cm`,
          p_hem_stitches: `${a.bust + a.flare}`,
          waist_lines: 'in darts, the back alone',
        });
        outcomes[outcome.kind] += 1;
        if (outcome.kind === 'cannot') return expectSound(outcome);
        const { plan } = outcome;
        expectSound(plan);
        const [back, front] = [pieceOf(plan, 'back'), pieceOf(plan, 'front')];
        expect(back.rows).toBe(front.rows);
        const row = workingNamed(plan, 'rows to the waist').result.value;
        const around = ((back.counts[row] ?? 0) + (front.counts[row] ?? 0) - 4) / (a.stitches / 10);
        const stated = plan.finished.find(({ name }) => name === 'waist')?.range.expected;
        expect(stated).toBeCloseTo(around, 9);
      }),
      { numRuns: 60 },
    );
    expect(outcomes.plan).toBeGreaterThan(10);
    expect(outcomes.cannot).toBeGreaterThan(0);
  });
});
