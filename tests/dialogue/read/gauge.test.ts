import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGauge } from '../../../src/dialogue/read/gauge.ts';
import { LENGTH_UNITS, type LengthUnit, lengthIn } from '../../../src/fit/units.ts';

const read = (text: string, unit: LengthUnit | undefined) => readGauge(text, { unit, asked: 'stitch' });

describe('A gauge', () => {
  it.each<[string, LengthUnit, string]>([
    ['22/10cm', 'in', '22 stitches over 10 cm'],
    ['22/4"', 'cm', '22 stitches over 4 in'],
    ['21/4"', 'in', '21 stitches over 4 in'],
    ['5.5 spi 7 rpi', 'cm', '5.5 stitches and 7 rows per inch'],
    ['5.5 sts/in & 7 rows/in', 'cm', '5.5 stitches and 7 rows per inch'],
    ['2.2 sts per cm', 'in', '2.2 stitches per centimetre'],
    ['4in. = 23 rows, 17 st', 'cm', '17 stitches and 23 rows over 4 in'],
    ['10 cm = 22 sts', 'in', '22 stitches over 10 cm'],
    ['4in = 17 st, 10cm = 23 rows', 'in', '17 stitches over 4 in and 23 rows over 10 cm'],
    ['20 mailles et 27 rangs 10 x 10 cm', 'in', '20 stitches and 27 rows over 10 cm'],
    ['4" x 4" = 20 sts x 28 rows', 'cm', '20 stitches and 28 rows over 4 in'],
    ['22 sts over 10cm²', 'in', '22 stitches over 10 cm'],
    ["18 sts to 4'", 'in', '18 stitches over 4 in'],
    ['5mm needles, was 14st = 4"', 'in', '14 stitches over 4 in'],
    [
      '22 sts and 30 rows in stockinette on 4 mm needles over 10 cm',
      'cm',
      '22 stitches and 30 rows over 10 cm',
    ],
    ['twenty two stitches to four inches', 'cm', '22 stitches over 4 in'],
    ['5½ sts to the inch', 'cm', '5.5 stitches per inch'],
    ['22 sts / 10 cm (5.5 spi)', 'cm', '22 stitches over 10 cm'],
  ])('“%s” where the unit is %s is heard as %s', (text, unit, echo) => {
    expect(read(text, unit)).toMatchObject({ kind: 'heard', echo });
  });

  it('keeps the unit it was counted in: 22 over 4 in are not 22 over 10 cm', () => {
    expect(read('22 sts to 4"', 'cm')).toMatchObject({ value: { stitches: { span: 10.16, unit: 'in' } } });
    expect(read('22 sts to 10 cm', 'in')).toMatchObject({ value: { stitches: { span: 10, unit: 'cm' } } });
  });

  it('printed over 4 in and 10 cm at once is read in the unit of the interview', () => {
    expect(read('26 sts per 4" (10 cm)', 'in')).toMatchObject({
      kind: 'heard',
      echo: '26 stitches over 4 in',
    });
    expect(read('26 sts per 4" (10 cm)', 'cm')).toMatchObject({
      kind: 'heard',
      echo: '26 stitches over 10 cm',
    });
  });

  it('over the span that the question named needs none of its own', () => {
    const asked = { unit: 'cm', asked: 'stitch', over: { value: 10, unit: 'cm' } } as const;
    expect(readGauge('22', asked)).toMatchObject({ kind: 'heard', echo: '22 stitches over 10 cm' });
    expect(readGauge('22.5', { ...asked, asked: 'row' })).toMatchObject({ echo: '22.5 rows over 10 cm' });
    expect(readGauge('22 to 4"', asked)).toMatchObject({ kind: 'heard', echo: '22 stitches over 4 in' });
  });

  it.each<[string, LengthUnit, string, string]>([
    ['22', 'cm', 'span missing', 'Do you mean 22 stitches over 10 cm?'],
    ['22', 'in', 'span missing', 'Do you mean 22 stitches over 4 in?'],
    ['22 sts', 'in', 'span missing', 'Do you mean 22 stitches over 4 in?'],
    ['22/30', 'cm', 'span missing', 'Do you mean 22 stitches and 30 rows over 10 cm?'],
    ['22x30', 'in', 'span missing', 'Do you mean 22 stitches and 30 rows over 4 in?'],
    ['17 Maschen', 'in', 'span missing', 'Do you mean 17 stitches over 10 cm?'],
    ['22/10', 'cm', 'extra words', 'Do you mean 22 stitches over 10 cm?'],
    ['22 sts x 30 = 4"', 'in', 'extra words', 'Do you mean 22 stitches and 30 rows over 4 in?'],
    ['20 st./in.', 'in', 'unlikely', 'Do you mean 20 stitches over 4 in?'],
    ['22 sts per cm', 'cm', 'unlikely', 'Do you mean 22 stitches over 10 cm?'],
    ['5 sts over 4 in', 'in', 'unlikely', 'Do you mean 5 stitches per inch?'],
    ['5 in per st', 'in', 'turned round', 'Do you mean 5 stitches per inch?'],
    ['22 sts, my aunt says, to 4"', 'in', 'extra words', 'Do you mean 22 stitches over 4 in?'],
  ])('“%s” where the unit is %s is put back: %s', (text, unit, why, question) => {
    expect(read(text, unit)).toMatchObject({ kind: 'ask back', why, question });
  });

  it('with more stitches than rows is put back as it was typed', () => {
    expect(read('19 sts and 16 rows to 4"', 'in')).toMatchObject({
      kind: 'ask back',
      why: 'unlikely',
      value: { stitches: { count: 19 }, rows: { count: 16 } },
    });
  });

  it('with equal stitches and rows, as in some fabrics, is heard', () => {
    expect(read('20 sts and 20 rows to 4"', 'in')).toMatchObject({ kind: 'heard' });
  });

  it('roughly counted is put back', () => {
    expect(read('about 22 sts to 4"', 'in')).toMatchObject({ kind: 'ask back', why: 'approximate' });
  });

  it.each<[string, readonly string[]]>([
    ['21-22 sts over 10 cm', ['21 stitches over 10 cm', '22 stitches over 10 cm']],
    ['20 sts over 4 in or 5.5', ['20 stitches over 4 in', '5.5 stitches per inch']],
    ['between 5 and 5.5 per inch', ['5 stitches per inch', '5.5 stitches per inch']],
    ['8', ['8 stitches over 4 in', '8 stitches per inch']],
    ['5.5', ['5.5 stitches over 4 in', '5.5 stitches per inch']],
  ])('“%s” is offered as %s', (text, echoes) => {
    expect(read(text, 'in')).toMatchObject({ kind: 'which', options: echoes.map((echo) => ({ echo })) });
  });

  it.each([
    ['0 sts = 4"', 'out of range'],
    ['22 sts = 0 cm', 'out of range'],
    ['-22 sts to 4"', 'negative'],
    ['22 balls', 'other kind'],
    ['30 rows to 10 cm', 'other kind'],
    ['1 2 3 4', 'several numbers'],
    ['inch per stitch', 'no number'],
    ['tight', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(read(text, 'in')).toMatchObject({ kind: 'refused', reason });
  });

  it('of which half is missing is refused where both are needed', () => {
    expect(readGauge('22 sts to 4"', { unit: 'in', asked: 'both' })).toMatchObject({
      kind: 'refused',
      reason: 'incomplete',
    });
  });

  it('of stitches and rows over any span is heard exactly as typed, in every interview', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 24, max: 120 }),
        fc.integer({ min: 100, max: 220 }),
        fc.constantFrom(...LENGTH_UNITS),
        fc.constantFrom<LengthUnit | undefined>(...LENGTH_UNITS, undefined),
        (quarters, percent, unit, interview) => {
          const span = unit === 'in' ? 4 : 10;
          const [stitches, rows] = [quarters / 4, Math.round((quarters * percent) / 100) / 4];
          const heard = read(`${stitches} sts and ${rows} rows = ${span} ${unit}`, interview);
          const over = { span: lengthIn(span, unit), unit };
          expect(heard).toMatchObject({
            kind: 'heard',
            value: { stitches: { count: stitches, ...over }, rows: { count: rows, ...over } },
          });
        },
      ),
    );
  });

  it('is heard again from its own echo', () => {
    for (const text of [
      '22 sts x 30 rows to 4"',
      '5.5spi',
      '36 Reihen und 24 Maschen auf 10 cm',
      '7 sts and 9rows =2"',
    ]) {
      const first = read(text, undefined);
      if (first.kind !== 'heard') throw new Error(`${text} was not heard`);
      expect(read(first.echo, undefined)).toEqual(first);
    }
  });
});
