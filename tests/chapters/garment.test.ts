import { describe, expect, it } from 'vitest';
import { expectSound, planOf, textOf } from './scripted.ts';

/** Four sizes at 22 stitches to 10 cm, and a knitter whose gauge is the pattern's. */
const OWN = {
  unit: 'cm',
  pattern: 'my own',
  body_made: 'from the hem, in the round',
  pattern_gauge: '22 sts and 30 rows to 10 cm',
  sizes_bust: '91 (97, 102, 108) cm',
  gauge: '22 sts and 30 rows to 10 cm',
};

describe('a sweater that fits, measured in place of the body', () => {
  it('leads to the size that is as wide, with no ease added: 102 cm are 102 cm', () => {
    const plan = planOf('garment', { ...OWN, garment_bust: '102 cm' });
    expect(textOf(plan)).toContain(
      'Follow size 3: at your gauge it measures 102 cm around the bust, and 102 cm is wanted.',
    );
    expectSound(plan, ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10']);
  });

  it('weighs sleeves and length too where the pattern tells them', () => {
    const plan = planOf('garment', {
      unit: 'cm',
      pattern: 'Pennywhin, in the round',
      gauge: '22 sts and 30 rows to 10 cm',
      garment_bust: '100 cm',
      garment_upper_arm: '36 cm',
      garment_length: '38 cm',
    });
    const text = textOf(plan);
    for (const wanted of ['100 cm wanted', '36 cm wanted', '38 cm wanted']) expect(text).toContain(wanted);
    expectSound(plan, ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10']);
  });

  it('waits for its width, and for nothing else', () => {
    const known = planOf('garment', {
      unit: 'cm',
      pattern: 'Pennywhin, in the round',
      gauge: '22 sts and 30 rows to 10 cm',
      garment_bust: '100 cm',
      garment_upper_arm: "I don't know",
      garment_length: "I don't know",
    });
    expect(textOf(known)).toContain('100 cm wanted');
  });
});
