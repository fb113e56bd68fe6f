import { describe, expect, it } from 'vitest';
import { readWhole } from '../../../src/dialogue/read/count.ts';
import { readYarnLength, readYarnWeight } from '../../../src/dialogue/read/yarn.ts';

describe('a whole number of anything', () => {
  it.each([
    ['7', 7],
    ['7 buttons', 7],
    ['98 sts', 98],
    ['31 rows', 31],
    ['13 balls', 13],
    ['seven', 7],
  ])('is heard: %s', (text, value) => {
    expect(readWhole(text, '7')).toMatchObject({ kind: 'heard', value });
  });

  it.each([
    ['', 'empty'],
    ['buttons', 'no number'],
    ['-3', 'negative'],
    ['2.5', 'not whole'],
    ['100000', 'number too large'],
    ['12345', 'out of range'],
    ['7 cm', 'other kind'],
  ])('is refused: %s', (text, reason) => {
    expect(readWhole(text, '7')).toMatchObject({ kind: 'refused', reason, example: '7' });
  });

  it('is put back where two were typed', () => {
    expect(readWhole('7 or 8', '7')).toMatchObject({ kind: 'which', options: [{ value: 7 }, { value: 8 }] });
  });
});

describe('yarn', () => {
  it('is heard by length, in metres or yards', () => {
    expect(readYarnLength('91 m')).toMatchObject({ kind: 'heard', value: { metres: 91, typed: 'm' } });
    expect(readYarnLength('100 yds')).toMatchObject({ kind: 'heard', value: { metres: 91.44, typed: 'yd' } });
  });

  it('is heard by weight, in grams or ounces', () => {
    expect(readYarnWeight('50g')).toMatchObject({ kind: 'heard', value: { grams: 50, typed: 'g' } });
    expect(readYarnWeight('2 oz')).toMatchObject({
      kind: 'heard',
      value: { grams: 56.69904625, typed: 'oz' },
    });
  });

  it('is refused where the other is typed, with what is needed', () => {
    expect(readYarnLength('50 g')).toMatchObject({ kind: 'refused', reason: 'other kind', example: '120 m' });
    expect(readYarnWeight('7 balls')).toMatchObject({
      kind: 'refused',
      reason: 'other kind',
      example: '50 g',
    });
    expect(readYarnWeight('50')).toMatchObject({ kind: 'refused', reason: 'incomplete', example: '50 g' });
  });
});
