import { describe, expect, it } from 'vitest';
import { readRows, readStitches } from '../../../src/dialogue/read/count.ts';

describe('A number of stitches', () => {
  it.each([
    ['84', 84],
    ['84 sts', 84],
    ['84sts.', 84],
    ['84 m', 84],
    ['84 Maschen', 84],
    ['84 mailles', 84],
    ['I have 84 stitches on the needles', 84],
    ['eighty-four', 84],
    ['a hundred and five', 105],
    ['two dozen', 24],
    ['about 84 sts', 84],
    ['٨٤', 84],
    ['0', 0],
  ])('“%s” is heard as %i', (text, count) => {
    expect(readStitches(text)).toMatchObject({ kind: 'heard', value: count });
  });

  it('is shown back with its noun', () => {
    expect(readStitches('84')).toMatchObject({ echo: '84 stitches' });
    expect(readStitches('1')).toMatchObject({ echo: '1 stitch' });
  });

  it.each([
    ['84.5', 'not whole'],
    ['84½ sts', 'not whole'],
    ['-84', 'negative'],
    ['−84', 'negative'],
    ['84 rows', 'other kind'],
    ['124 meters', 'other kind'],
    ['84 cm', 'other kind'],
    ['84 in', 'other kind'],
    ['84"', 'other kind'],
    ['12000', 'out of range'],
    ['42 x 2', 'several numbers'],
    ['84 85 86', 'several numbers'],
    ['none', 'no number'],
    ['84%', 'not understood'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readStitches(text)).toMatchObject({ kind: 'refused', reason });
  });

  it.each([
    ['1,234', 1234, 'comma unclear'],
    ['1.234', 1234, 'comma unclear'],
    ['84 sts each side', 84, 'extra words'],
  ])('“%s” is put back as %i: %s', (text, count, why) => {
    expect(readStitches(text)).toMatchObject({ kind: 'ask back', value: count, why });
  });

  it('offers both of two numbers', () => {
    expect(readStitches('84-86')).toMatchObject({ kind: 'which', options: [{ value: 84 }, { value: 86 }] });
  });
});

describe('A number of rows', () => {
  it.each(['28', '28 rows', '28 rnds', '28 rounds', '28 R', '28 Reihen', '28 rangs'])(
    '“%s” is heard',
    (text) => {
      expect(readRows(text)).toMatchObject({ kind: 'heard', value: 28, echo: '28 rows' });
    },
  );

  it('is not a number of stitches', () => {
    expect(readRows('28 sts')).toMatchObject({ kind: 'refused', reason: 'other kind' });
  });
});
