import { describe, expect, it } from 'vitest';
import { readYarn } from '../../../src/dialogue/read/yarn.ts';

describe('An amount of yarn', () => {
  it.each([
    ['1200 m', '1200 m (1312 yd)'],
    ['about 124 meters', 'about 124 m (136 yd)'],
    ['2000 yds', '2000 yd (1829 m)'],
    ['450 g', '450 g (15.9 oz)'],
    ['16 oz', '16 oz (454 g)'],
    ['7 balls', '7 balls'],
    ['1 skein', '1 ball'],
    ['7½ skeins of wool', '7.5 balls'],
  ])('“%s” is heard as %s', (text, echo) => {
    expect(readYarn(text)).toMatchObject({ kind: 'heard', echo });
  });

  // Exact: 16 oz = 1 lb = 453.59237 g (international yard and pound agreement, 1959).
  it('in ounces is exact in grams', () => {
    const read = readYarn('16 oz');
    if (read.kind !== 'heard' || read.value.in !== 'grams') throw new Error('not heard in grams');
    expect(read.value.grams).toBeCloseTo(453.59237, 9);
  });

  it('with a thousands mark is put back', () => {
    expect(readYarn('2,000 yards')).toMatchObject({ kind: 'ask back', echo: '2000 yd (1829 m)' });
    expect(readYarn('1.200 m')).toMatchObject({ kind: 'ask back', echo: '1200 m (1312 yd)' });
  });

  it.each([
    ['1200', 'incomplete'],
    ['-3 balls', 'negative'],
    ['0 g', 'out of range'],
    ['7 balls of 50 g', 'several numbers'],
    ['plenty', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readYarn(text)).toMatchObject({ kind: 'refused', reason });
  });
});
