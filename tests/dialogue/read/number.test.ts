import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NumberAsked, readNumber } from '../../../src/dialogue/read/number.ts';

const ASKED: NumberAsked = { what: 'a number', example: '7', least: 0, most: 500 };

describe('A plain number', () => {
  it.each([
    ['5.5', 5.5],
    ['5,5', 5.5],
    ['.5', 0.5],
    ['5½', 5.5],
    ['5 ½', 5.5],
    ['5 1/2', 5.5],
    ['5-1/2', 5.5],
    ['5 & 1/2', 5.5],
    ['3 and 5/8ths', 3.625],
    ['5⅜', 5.375],
    ['5⅓', 5 + 1 / 3],
    ['1/2', 0.5],
    ['five and a half', 5.5],
    ['three quarters', 0.75],
    ['thirty six and a quarter', 36.25],
    ['+7', 7],
    ['7.', 7],
    ['  7 ! ', 7],
  ])('“%s” is %f', (text, value) => {
    expect(readNumber(text, ASKED)).toMatchObject({ kind: 'heard', value });
  });

  it.each([
    ['1.234,5', 'thousands'],
    ['1,234.5', 'thousands'],
    ['1.234.567', 'thousands'],
    ['12.03.2024', 'thousands'],
    ['1 234', 'several numbers'],
    ['501', 'out of range'],
    ['-1', 'negative'],
    ['1000000', 'number too large'],
    ['7 cm', 'other kind'],
    ['NaN', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readNumber(text, ASKED)).toMatchObject({ kind: 'refused', reason });
  });

  it('with three digits behind a comma is put back, as a decimal', () => {
    expect(readNumber('1,234', ASKED)).toMatchObject({
      kind: 'ask back',
      why: 'comma unclear',
      value: 1.234,
    });
  });

  it('whose space was lost is put back', () => {
    expect(readNumber('241/2', ASKED)).toMatchObject({ kind: 'ask back', why: 'space lost', value: 24.5 });
  });

  it('with a decimal comma is the one with a decimal point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 499 }), fc.integer({ min: 0, max: 99 }), (whole, part) => {
        const digits = `${part}`.padStart(2, '0');
        const read = readNumber(`${whole},${digits}`, ASKED);
        expect(read).toEqual(readNumber(`${whole}.${digits}`, ASKED));
        expect(read).toMatchObject({ kind: 'heard', value: Number(`${whole}.${digits}`) });
      }),
    );
  });

  it('in any eighths is what its fraction says', () => {
    const SIGNS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 499 }), fc.integer({ min: 0, max: 7 }), (whole, eighths) => {
        expect(readNumber(`${whole}${SIGNS[eighths]}`, ASKED)).toMatchObject({ value: whole + eighths / 8 });
        if (eighths % 2 === 1) {
          expect(readNumber(`${whole} ${eighths}/8`, ASKED)).toMatchObject({ value: whole + eighths / 8 });
        }
      }),
    );
  });
});
