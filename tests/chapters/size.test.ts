/** The size chapter: the same size by another needle, with figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import { expectSound, planOf, type Typed, textOf } from './scripted.ts';

const SAMPLE: Typed = {
  unit: 'cm',
  pattern: 'Pennywhin, in the round',
  gauge: '22 sts and 30 rows to 10 cm',
  table: 'women',
  bust: '96.5 cm',
  upper_bust: '91 cm',
  fit: 'classic',
};
const NAMES = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'];

describe('another needle for a size', () => {
  // Size 4 is 100 cm at 22 stitches, and 96.08 + 7.62 = 103.7 cm are wanted: 22 × 100 ÷ 103.7 = 21.22 stitches.
  it('is told with the gauge that gives the width, and with all that it changes', () => {
    const plan = planOf('size', SAMPLE);
    const text = textOf(plan);
    expect(text).toContain(
      'At a gauge of 21.22 stitches per 10 cm the counts of size 4, as printed, come to 103.7 cm',
    );
    expect(text).toContain('The fabric stays much the same.');
    // 32.7 × 1.037 = 33.9 cm; 60 rows of armhole at 3 to the centimetre are 20 cm, and become 20.7.
    expect(text).toContain('The upper arm becomes 33.9 cm too, where the pattern prints 32.7 cm.');
    expect(text).toContain('The length of the armhole becomes 20.7 cm where it is counted in rows.');
    expectSound(plan, NAMES);
    expectSound(planOf('size', { ...SAMPLE, unit: 'in' }), NAMES);
  });

  it('is not told where the size comes within a centimetre of what is wanted', () => {
    // 100.5 cm: an upper bust of 87.8 cm, and 5.08 and 7.62 more.
    const text = textOf(planOf('size', { ...SAMPLE, upper_bust: '87.8 cm', bust: '92.9 cm' }));
    expect(text).toContain('size 4');
    expect(text).not.toContain('another needle');
  });

  it('is said to make another fabric where a tenth of the stitches is not enough', () => {
    const own: Typed = {
      ...SAMPLE,
      pattern: 'my own',
      body_made: 'from the hem, in the round',
      pattern_gauge: '22 sts and 30 rows to 10 cm',
      sizes_bust: '70 (80) cm',
    };
    const plan = planOf('size', own);
    expect(textOf(plan)).toContain('The fabric becomes much looser, another one.');
    expectSound(plan, NAMES);
    const small = planOf('size', { ...own, sizes_bust: '130 (140) cm' });
    expect(textOf(small)).toContain('The fabric becomes much denser, another one.');
  });
});
