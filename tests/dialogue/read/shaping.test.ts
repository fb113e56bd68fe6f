import { describe, expect, it } from 'vitest';
import { readShaping } from '../../../src/dialogue/read/shaping.ts';

describe('A shaping phrase', () => {
  it.each([
    ['every other row for 9 times', 'every 2nd row, 9 times'],
    ['every RS row 5 times', 'every 2nd row, 5 times'],
    ['foll 10 alt rows', 'every 2nd row, 10 times'],
    ['next and 5 foll 4th rows', 'every 4th row, 5 times more'],
    ['every 10 rows', 'every 10th row'],
    ['every row', 'every row'],
    ['next 3 rows', 'every row, 3 times'],
    ['2sts 2 times', '2 times, 2 stitches each time'],
    ['dec 1 st at each end of every 6th row 12 times', 'every 6th row, 12 times, 1 stitch each time'],
    ['Rep Dec Row every 6th (8th, 6th, 4th) row', 'every 6th (8th, 6th, 4th) row'],
    ['– (3, 9, 2, --, 5, 12) times', '– (3, 9, 2, –, 5, 12) times'],
    ['in jeder 4. und 6. Reihe beidseitig', 'every 4th and 6th row in turn'],
    ['tous les 6 rangs 8 fois', 'every 6th row, 8 times'],
    ['every 21st row twice', 'every 21st row, 2 times'],
    ['every 11th (12th, 13th, 23rd) row', 'every 11th (12th, 13th, 23rd) row'],
  ])('“%s” is heard as %s', (text, echo) => {
    expect(readShaping(text)).toMatchObject({ kind: 'heard', echo });
  });

  it('with a comma missing is put back', () => {
    expect(readShaping('every 6th row 5 (6, 7 8) times')).toMatchObject({
      kind: 'ask back',
      why: 'comma missing',
    });
  });

  it.each([
    ['every 6th row, then every 8th row', 'several numbers'],
    ['every 6th (8th, 6th) row 5 (6) times', 'uneven rows'],
    ['every 0th row', 'out of range'],
    ['every 2.5 rows', 'not whole'],
    ['12', 'not understood'],
    ['38 cm', 'not understood'],
    ['now and then', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readShaping(text)).toMatchObject({ kind: 'refused', reason });
  });
});
