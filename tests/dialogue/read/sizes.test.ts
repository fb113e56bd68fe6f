import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLengthRow, readRowRow, readStitchRow } from '../../../src/dialogue/read/sizes.ts';
import type { LengthUnit } from '../../../src/fit/units.ts';

describe('A row of lengths', () => {
  it.each<[string, LengthUnit, string]>([
    ['34 (36, 38, 40)', 'in', '4 sizes: 34 (36, 38, 40) in'],
    ['34 (36,38,40)', 'in', '4 sizes: 34 (36, 38, 40) in'],
    ['34,36,38', 'in', '3 sizes: 34 (36, 38) in'],
    ['34-36-38', 'in', '3 sizes: 34 (36, 38) in'],
    ['34 36 38 40', 'in', '4 sizes: 34 (36, 38, 40) in'],
    ['34(36)38(40)42', 'in', '5 sizes: 34 (36, 38, 40, 42) in'],
    ['36 {38} [40] <42>', 'in', '4 sizes: 36 (38, 40, 42) in'],
    [
      'Finished bust: 34 (36, 38, 40)"',
      'cm',
      '4 sizes: 86.4 (91.4, 96.5, 101.6) cm, typed as 34 (36, 38, 40) in',
    ],
    ['cm: 81 (86, 91)', 'cm', '3 sizes: 81 (86, 91) cm'],
    ['14,5 (15,5, 16,5, 17) cm', 'cm', '4 sizes: 14.5 (15.5, 16.5, 17) cm'],
    ['14,5 (15,5 - 16,5 - 17)', 'cm', '4 sizes: 14.5 (15.5, 16.5, 17) cm'],
    ['34 in / 86 cm (36 in / 91 cm)', 'cm', '2 sizes: 86 (91) cm'],
    ['34" (86 cm), 36" (91 cm)', 'in', '2 sizes: 34 (36) in'],
    ['13 cm (14) (16) / 5" (5½) (6¼)', 'cm', '3 sizes: 13 (14, 16) cm'],
    ['34 (36, 38) in / 86 (91, 97) cm', 'cm', '3 sizes: 86 (91, 97) cm'],
    ['S (M, L, 2XL) 34 (36, 38, 40)"', 'in', '4 sizes: S 34, M 36, L 38, 2XL 40 in'],
    ['S: 34, M: 36, L: 38', 'in', '3 sizes: S 34, M 36, L 38 in'],
    ['XL 42, extra large 44', 'in', '2 sizes: XL 42, XL 44 in'],
    ['– (36, 38)', 'in', '3 sizes: – (36, 38) in'],
    ['34 (--, 38)', 'in', '3 sizes: 34 (–, 38) in'],
    ["38' (40', 42')", 'in', '3 sizes: 38 (40, 42) in'],
    ['34', 'in', '1 size: 34 in'],
  ])('“%s” where the unit is %s is heard as %s', (text, unit, echo) => {
    expect(readLengthRow(text, unit)).toMatchObject({ kind: 'heard', echo });
  });

  it.each<[string, LengthUnit, string]>([
    ['34 (36, 38 40)', 'in', 'comma missing'],
    ['34 36', 'in', 'comma missing'],
    ['34,36', 'in', 'comma unclear'],
    ['34,5', 'cm', 'comma unclear'],
    ['34 (36, 34, 38)', 'in', 'unlikely'],
    ['34 (36½, 38)', 'cm', 'unit missing'],
    ['341/2 (36, 38)', 'in', 'space lost'],
    ['34 and a bit 36 not 38', 'in', 'extra words'],
  ])('“%s” where the unit is %s is put back: %s', (text, unit, why) => {
    expect(readLengthRow(text, unit)).toMatchObject({ kind: 'ask back', why });
  });

  it('without a unit, where none was chosen, is offered in both', () => {
    expect(readLengthRow('34 (36, 38)', undefined)).toMatchObject({
      kind: 'which',
      options: [{ echo: '3 sizes: 34 (36, 38) in' }, { echo: '3 sizes: 34 (36, 38) cm' }],
    });
  });

  it('whose units contradict each other is offered twice', () => {
    expect(readLengthRow('34 (36, 38) in / 86 (91, 120) cm', 'cm')).toMatchObject({ kind: 'which' });
  });

  it.each([
    ['32-34 (36-38, 40-42) in', 'ranges'],
    ['34 (36, 38) in / 86 (91) cm', 'uneven rows'],
    ['S (M, L) 34 (36, 38, 40)', 'uneven rows'],
    ['34 (-2, 38)', 'negative'],
    ['34 (36, 38) sts', 'other kind'],
    ['1.5 (2, 3) m', 'other kind'],
    ['S M L', 'no number'],
    ['0 (36, 38)', 'out of range'],
    ['1 '.repeat(200), 'too long'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readLengthRow(text, 'cm')).toMatchObject({ kind: 'refused', reason });
  });

  it('is the same row in every punctuation that patterns use', () => {
    const sizes = fc
      .uniqueArray(fc.integer({ min: 120, max: 260 }), { minLength: 3, maxLength: 12 })
      .map((quarters) => quarters.sort((a, b) => a - b).map((n) => n / 4));
    fc.assert(
      fc.property(sizes, ([first = 0, ...others]) => {
        const row = [first, ...others];
        const printed = [
          `${first} (${others.join(', ')}) in`,
          `${first} [${others.join(':')}] in`,
          `${first}(${others.join(')(')})"`,
          `${row.join(' / ')} inches`,
          `${first} in (${others.join('; ')})`,
          `${first} (${others.join(' - ')}) in`,
          `${row.map((n, i) => (i % 2 === 0 ? `(${n})` : n)).join(' ')} in`,
        ];
        for (const text of printed) {
          const read = readLengthRow(text, 'cm');
          if (read.kind !== 'heard') throw new Error(`${text}: ${JSON.stringify(read)}`);
          expect(read.value.lengths.map((l) => l?.typed)).toEqual(
            row.map((value) => ({ value, unit: 'in' })),
          );
        }
      }),
    );
  });
});

describe('A row of counts', () => {
  it.each<[string, readonly (number | null)[]]>([
    ['84 (92, 100)', [84, 92, 100]],
    ['Cast on 84 (92, 100) sts', [84, 92, 100]],
    ['84 (92; 100) m', [84, 92, 100]],
    ['84,92,100', [84, 92, 100]],
    ['80 (84, 88, 92) [96, 100, 104] sts', [80, 84, 88, 92, 96, 100, 104]],
    ['118/122/126 Maschen', [118, 122, 126]],
    ['–, 4, 6', [null, 4, 6]],
    ['5 (2, 1, 6)', [5, 2, 1, 6]],
  ])('“%s” is heard', (text, counts) => {
    expect(readStitchRow(text)).toMatchObject({ kind: 'heard', value: { counts } });
  });

  it.each([
    ['84.5 (90)', 'not whole'],
    ['84 (92 cm)', 'other kind'],
    ['28 (30) rows', 'other kind'],
    ['10000 (10001)', 'out of range'],
  ])('“%s” is refused as stitches: %s', (text, reason) => {
    expect(readStitchRow(text)).toMatchObject({ kind: 'refused', reason });
  });

  it.each(['218 stitches to 164 stitches', 'size 11: 14 sts', '84 then 92'])('“%s” is put back', (text) => {
    expect(readStitchRow(text)).toMatchObject({ kind: 'ask back', why: 'extra words' });
  });

  it('of rows is shown back as rows', () => {
    expect(readRowRow('28 (30, 30) rnds')).toMatchObject({
      kind: 'heard',
      echo: '3 sizes: 28 (30, 30) rows',
    });
  });

  it('with a comma between two figures and nothing else is put back', () => {
    expect(readStitchRow('84,92')).toMatchObject({ why: 'comma unclear', value: { counts: [84, 92] } });
  });
});
