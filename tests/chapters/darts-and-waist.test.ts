/** Darts that run up and down beside a shaped waist: both schedules added up by hand, row by row. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const GAUGE: Typed = {
  swatch_washed: 'yes',
  swatch_stitches: '22 sts over 10 cm',
  swatch_stitches_2: 'skip',
  swatch_stitches_3: 'skip',
  swatch_rows: '30 rows over 10 cm',
  swatch_rows_2: 'skip',
  table: 'women',
  bust: '104 cm',
  upper_bust: '91 cm',
  fit: 'classic',
};
const BUST: Typed = {
  front_length: '46 cm',
  back_length: '42 cm',
  bust_fabric: 'plain',
  bust_shaping: 'vertical darts',
  bust_span: '19 cm',
  bust_below_underarm: '5 cm',
};
const WAIST: Typed = { waist: '80 cm', waist_ease: '8 cm', underarm_to_waist: '18 cm' };
const ROUND: Typed = {
  unit: 'cm',
  pattern: 'Pennywhin, in the round',
  swatch_made: 'in the round',
  ...GAUGE,
  size: '4',
  wishes: 'waist, bust',
  ...WAIST,
  ...BUST,
};
const NAMES = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'];
const notesOf = (plan: Plan) => plan.steps.flatMap(({ notes }) => notes.map(({ say }) => say));

describe('darts up and down beside a shaped waist', () => {
  const plan = planOf('whole', ROUND);
  const text = textOf(plan);
  const [widen, narrow, , toUnderarm] = instructed(plan, 'shape').map(({ spaced }) => spaced);

  // 88 cm are 193.6 stitches, 192 as 220 less a multiple of 4: a front of 96. The waist lies 54 of 114 rounds down.
  it('begin at the waist with the stitches that the front has there', () => {
    expect(text).toContain('The darts begin after 60 rounds of the body, where the front has 96 stitches.');
    // 19 cm are 42 stitches: (96 - 42) / 2 at each side.
    expect(text).toContain('Hang a dart marker 27 stitches in from each side of the front.');
    // 7.92 cm are 17.4 stitches, 16 as a multiple of 4.
    expect([widen?.from, widen?.to, widen?.rows, narrow?.to, narrow?.rows]).toEqual([96, 112, 39, 96, 15]);
    expect(text).toContain('All 16 stitches of the darts are gone again.');
  });

  // The sides gain 2 in each of rounds 6, 12 … 42 of the 50 above the waist, which end at round 114: five of them by round 99.
  it('add up with the sides in a row in which both have been shaped', () => {
    expect([toUnderarm?.from, toUnderarm?.to, toUnderarm?.rows]).toEqual([192, 220, 50]);
    const gained = toUnderarm?.shaping.filter(({ row }) => 64 + row <= 60 + 39).length ?? 0;
    expect(gained).toBe(5);
    expect(text).toContain(
      'At the fullest point of the bust the front has 122 stitches: 112 stitches with the darts, and 10 stitches more from its sides.',
    );
    expect(96 + 16 + 2 * gained).toBe(122);
  });

  it('say that either leaves out the other, and nothing of a back as the pattern has it', () => {
    expect(notesOf(plan)).toContain('note: darts leave out the sides');
    expect(notesOf(plan)).toContain('note: darts within the body');
    expect(notesOf(plan)).not.toContain('note: back stays as it is');
    expectSound(plan, NAMES);
  });

  it.each([
    ['in pieces', { pattern: 'Pennywhin, in pieces', swatch_made: 'flat' }],
    ['with short rows in the same body', { bust_shaping: 'both' }],
    ['with stitches that are cast on for the front', { bust_shaping: 'front stitches' }],
    ['in inches', { unit: 'in' }],
  ])('are planned %s too', (_, other) => {
    const found = planOf('whole', { ...ROUND, ...other });
    expect(notesOf(found)).toContain('note: darts leave out the sides');
    expectSound(found, NAMES);
  });

  it('in a body from the neck down begin at the underarm, and the sides lose what they lose', () => {
    const found = planOf('whole', {
      ...ROUND,
      pattern: 'my own',
      pattern_gauge: '22 sts and 30 rows over 10 cm',
      body_made: 'from the neck, in the round',
      sizes_bust: '91 (100, 109) cm',
      size: '2',
      p_bust: '220',
      p_hem: '6 cm',
      p_hem_stitches: '220',
      p_body_length: '38 cm',
    });
    const [wider] = instructed(found, 'shape').map(({ spaced }) => spaced);
    expect([wider?.from, wider?.to]).toEqual([110, 126]);
    // Rounds 9, 15 … from the underarm lose 2 each after 8 plain ones: at round 15, two of them at most.
    expect(textOf(found)).toMatch(
      /the front has 12\d stitches: 126 stitches with the darts, and [24] stitches fewer/,
    );
    expectSound(found, ['1', '2', '3']);
  });

  it.each(['208', '220'])('are refused where they would begin in the edging, from a hem of %s', (hem) => {
    const found = planOf('whole', {
      ...ROUND,
      pattern: 'my own',
      pattern_gauge: '22 sts and 30 rows over 10 cm',
      body_made: 'from the hem, in the round',
      sizes_bust: '91 (100, 109) cm',
      size: '2',
      wishes: 'length, bust',
      p_bust: '220',
      p_hem: '6 cm',
      p_hem_stitches: hem,
      p_body_length: '38 cm',
      body_length: '30 cm',
      bust_above_waist: '24 cm',
    });
    expect(textOf(found)).toMatch(/would begin in the edging[\s\S]*Take short rows for the bust/);
    expectSound(found, ['1', '2', '3']);
  });
});
