/** Where several ways remain for an armhole, a cap, a yoke or a neck, what is told after it says on which figures it rests. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const START: Typed = {
  unit: 'cm',
  pattern: 'Pennywhin, in pieces',
  swatch_made: 'flat',
  swatch_washed: 'yes',
  swatch_stitches: '22 sts over 10 cm',
  swatch_stitches_2: 'skip',
  swatch_stitches_3: 'skip',
  swatch_rows: '30 rows over 10 cm',
  swatch_rows_2: 'skip',
  table: 'women',
  bust: '96.5 cm',
  upper_bust: '91 cm',
  fit: 'classic',
  size: '4',
};
const UPPER: Typed = {
  wishes: 'sleeve, top, front neck, shoulder, back neck',
  upper_arm: '33 cm',
  wrist: '16 cm',
  sleeve_length: '45 cm',
  armhole_wanted: '22 cm',
  neck_width: '18 cm',
  neck_depth: '10 cm',
  shoulder_how: 'short rows',
  shoulder_drop: '3 cm',
  neck_raise: '2.5 cm',
};
const NAMES = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'];

/** The notes of the first step that tells what to do there. */
function notesAt(plan: Plan, ...wheres: readonly string[]): string[] {
  const at = plan.steps.find(({ where, instead }) => wheres.includes(where.say) && instead.length > 0);
  if (at === undefined) throw new Error(textOf(plan));
  return at.notes.map(({ say }) => say);
}

describe('after a choice that is still open', () => {
  it('of the cap, neck, shoulders and sleeve say so', () => {
    const plan = planOf('whole', { ...START, ...UPPER, armhole_wanted: '12 cm' });
    expect(instructed(plan, 'choose one').length).toBeGreaterThan(0);
    for (const where of ['where: front neck', 'where: back of the neck', 'where: shoulders of the back'])
      expect(notesAt(plan, where)).toContain('note: armhole is open');
    expect(notesAt(plan, 'where: cast-on and cuff')).toContain('note: sleeve top is open');
    expect(notesAt(plan, 'where: front neck')).toContain('note: armhole may go on beside the neck');
    expect(textOf(plan)).toContain('The armhole is still open.');
    expectSound(plan, NAMES);
  });

  it('of a front neck, the shoulders say so', () => {
    const plan = planOf('whole', { ...START, ...UPPER, neck_width: '60 cm' });
    expect(notesAt(plan, 'where: shoulders of the back')).toContain('note: neck is open');
    expect(notesAt(plan, 'where: shoulders of the back')).not.toContain('note: armhole is open');
    expectSound(plan, NAMES);
  });

  it('of nothing, no step says so', () => {
    const plan = planOf('whole', { ...START, ...UPPER });
    expect(instructed(plan, 'choose one')).toEqual([]);
    expect(textOf(plan)).not.toContain('still open');
  });
});

describe('a yoke of which several ways remain', () => {
  const own: Typed = {
    ...START,
    pattern: 'my own',
    pattern_gauge: '22 sts and 30 rows over 10 cm',
    body_made: 'from the hem, in the round',
    sizes_bust: '91 (100, 109) cm',
    size: '2',
    wishes: 'top, back neck',
    checking_joined: 'yoke',
    yoke_depth: '22 cm',
    p_yoke_underarm: '270',
    p_yoke_neck: '80',
    yoke_rounds: 'three',
    yoke_repeat: 'multiple of 4',
    neck_raise: '2.5 cm',
  };

  it('says at its short rows that they rest on the neck of the pattern', () => {
    const plan = planOf('whole', own);
    expect(notesAt(plan, 'where: back of the neck')).toContain('note: yoke is open');
    expect(notesAt(planOf('whole', { ...own, yoke_repeat: '1' }), 'where: back of the neck')).not.toContain(
      'note: yoke is open',
    );
    expectSound(plan, ['1', '2', '3']);
  });

  it('says the same where its rounds as printed contradict its counts, so that none can be planned', () => {
    const plan = planOf('whole', {
      ...own,
      yoke_rounds: 'as my pattern has them',
      yoke_own_depth: '66',
      yoke_own_rounds: '33, 50, 66',
      yoke_own_counts: '180, 121, 84',
      yoke_repeat: '1',
    });
    expect(textOf(plan)).toContain('the pattern has 84 stitches, and the yoke ends with 80');
    expect(notesAt(plan, 'where: back of the neck')).toContain('note: yoke is open');
    expectSound(plan, ['1', '2', '3']);
  });
});
