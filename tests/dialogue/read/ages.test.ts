import { describe, expect, it } from 'vitest';
import { readAges } from '../../../src/dialogue/read/ages.ts';

describe('An age', () => {
  it.each([
    ['9 months', '9 months'],
    ['18-24m', '18–24 months'],
    ['3 years', '3 years'],
    ['two years old', '2 years'],
    ['7/8 yrs', '7–8 years'],
    ['4 (6, 8, 10) years', '4 (6, 8, 10) years'],
    ['6 Monate', '6 months'],
  ])('“%s” is heard as %s', (text, echo) => {
    expect(readAges(text)).toMatchObject({ kind: 'heard', echo });
  });

  it('without a unit is put back in years', () => {
    expect(readAges('3')).toMatchObject({
      kind: 'ask back',
      why: 'unit missing',
      question: 'Do you mean 3 years?',
    });
    expect(readAges('2 - 4 - 6 - 8')).toMatchObject({ kind: 'ask back', echo: '2 (4, 6, 8) years' });
  });

  it.each([
    ['6-4 yrs', 'out of range'],
    ['200 years', 'out of range'],
    ['-3 years', 'negative'],
    ['3 cm', 'other kind'],
    ['6 months to 2 years', 'several numbers'],
    ['toddler', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readAges(text)).toMatchObject({ kind: 'refused', reason });
  });
});
