/** What is worked in the round has rounds in every sum; what is worked back and forth has rows. */
import { describe, expect, it } from 'vitest';
import { planText } from '../../src/present/plan-text.ts';
import { inRounds } from '../../src/present/workings-text.ts';
import { planOf, type Typed } from '../chapters/scripted.ts';

const LENGTH: Typed = {
  unit: 'cm',
  gauge: '22 sts and 30 rows to 10 cm',
  p_bust: '220',
  p_body_length: '38 cm',
  p_hem: '6 cm',
  p_hem_stitches: '220',
  body_length: '42 cm',
};
const told = (made: string) =>
  planText(planOf('length', { ...LENGTH, body_made: made }), { dialect: 'us', workings: true });

describe('workings of a body', () => {
  it('in the round speak of rounds, at its steps and in its measurements', () => {
    const text = told('from the hem, in the round');
    expect(text).not.toMatch(/\brows?\b/);
    expect(text).toContain('rounds to the underarm = 42 cm (underarm, from the start) × 3 rounds per cm');
    expect(text).toContain('body, lower edge to underarm = 126 rounds ÷ 3 rounds per cm = 42 cm');
  });

  it('in pieces speak of rows', () => {
    const text = told('from the hem, in pieces');
    expect(text).not.toMatch(/\brounds?\b/);
    expect(text).toContain('body, lower edge to underarm = 126 rows ÷ 3 rows per cm = 42 cm');
  });

  it.each([
    ['rows of this section', 'rounds of this section'],
    ['last row that may carry shaping', 'last round that may carry shaping'],
    ['rows of this section before the short rows', 'rounds of this section before the short rows'],
    ['right-side rows after the steps', 'right-side rows after the steps'],
    ['narrower', 'narrower'],
  ])('%s: short rows stay rows', (rows, rounds) => {
    expect(inRounds(rows, { worked: 'round' })).toBe(rounds);
    expect(inRounds(rows, { worked: 'flat' })).toBe(rows);
    expect(inRounds(rows, { worked: null })).toBe(rows);
  });
});
