import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../../src/dialogue/read/length.ts';
import { CM_PER, cm, formatLength, LENGTH_UNITS, type LengthUnit, lengthIn } from '../../../src/fit/units.ts';

describe('A length', () => {
  it.each<[string, LengthUnit | undefined, number, LengthUnit]>([
    ['38', 'cm', 38, 'cm'],
    ['38', 'in', 38, 'in'],
    ['38½', 'in', 38.5, 'in'],
    ['38 ½ in', 'cm', 38.5, 'in'],
    ['8.5-inches', 'cm', 8.5, 'in'],
    ['17-inch', 'cm', 17, 'in'],
    ['14cm.', 'in', 14, 'cm'],
    ['cm: 38', 'in', 38, 'cm'],
    ['38, in inches please', 'cm', 38, 'in'],
    ['38 (in)', 'cm', 38, 'in'],
    ['1.63 m', 'in', 163, 'cm'],
    ['1m63', 'in', 163, 'cm'],
    ['1 m 63 cm', 'in', 163, 'cm'],
    ['965 mm', 'in', 96.5, 'cm'],
    ['5 ft 4', 'cm', 64, 'in'],
    ["5'4", 'cm', 64, 'in'],
    ['5\' 4 1/2"', 'cm', 64.5, 'in'],
    ['5 foot 4 inches', 'cm', 64, 'in'],
    ['half an inch', 'cm', 0.5, 'in'],
    ['seven and a half inches', 'cm', 7.5, 'in'],
    ['my bust is about 38"', 'cm', 38, 'in'],
    ['38½ cm', 'cm', 38.5, 'cm'],
    ['36 in (91 cm)', 'cm', 91, 'cm'],
    ['36 in (91 cm)', 'in', 36, 'in'],
    ['91 cm / 36"', 'in', 36, 'in'],
    ['91/36"', 'cm', 91, 'cm'],
  ])('“%s” where the unit is %s is heard as %f %s', (text, unit, value, typed) => {
    expect(readLength(text, { unit })).toMatchObject({
      kind: 'heard',
      value: { cm: lengthIn(value, typed), typed: { value, unit: typed } },
    });
  });

  it.each<[string, LengthUnit | undefined, string]>([
    ['5 ft 4', 'cm', '162.6 cm (64 in)'],
    ['162.6 cm', 'in', '64 in (162.6 cm)'],
    ['18¾ in', undefined, '18¾ in (47.6 cm)'],
    ['10.25 cm', 'cm', '10.25 cm (4 in)'],
    ['5.12 in', 'in', '5.12 in (13 cm)'],
  ])('“%s” is shown to a reader of %s as “%s”', (text, unit, echo) => {
    expect(readLength(text, { unit })).toMatchObject({ kind: 'heard', echo });
  });

  it.each<[string, LengthUnit | undefined, string, string]>([
    ['18¾', 'cm', 'unit missing', 'Do you mean inches: 18¾ in (47.6 cm)?'],
    ['1/2', 'cm', 'unit missing', 'Do you mean inches: ½ in (1.3 cm)?'],
    ["26'", 'cm', 'foot mark', 'Do you mean inches: 26 in (66 cm)?'],
    ['241/2"', 'in', 'space lost', 'Do you mean 24½ in (62.2 cm)?'],
    ['1,234 cm', 'cm', 'comma unclear', 'Do you mean 1.234 cm (0.5 in)?'],
    ['38 around my tummy', 'in', 'extra words', 'Do you mean 38 in (96.5 cm)?'],
    ['size 38', 'in', 'extra words', 'Do you mean 38 in (96.5 cm)?'],
    ['not 38', 'in', 'extra words', 'Do you mean 38 in (96.5 cm)?'],
  ])('“%s” where the unit is %s is put back: %s', (text, unit, why, question) => {
    expect(readLength(text, { unit })).toMatchObject({ kind: 'ask back', why, question });
  });

  it('of another part of the body is put back with both names', () => {
    expect(readLength('49 inch waist', { unit: 'in', measurement: 'bust' })).toMatchObject({
      why: 'other measurement',
      question: 'You wrote waist. Is 49 in (124.5 cm) the bust?',
    });
    expect(readLength('38" chest', { unit: 'in', measurement: 'bust' })).toMatchObject({ kind: 'heard' });
    expect(readLength('36" high bust', { unit: 'in', measurement: 'upper bust' })).toMatchObject({
      kind: 'heard',
    });
  });

  it('of a whole person, so small that it must be in metres, is put back', () => {
    expect(readLength('1,75', { unit: 'cm', measurement: 'height' })).toMatchObject({
      kind: 'ask back',
      why: 'unit missing',
      value: { cm: 175 },
    });
  });

  it('without a unit, where none was chosen, is offered in both', () => {
    expect(readLength('38', { unit: undefined })).toMatchObject({
      kind: 'which',
      options: [{ value: { cm: 96.52 } }, { value: { cm: 38 } }],
    });
  });

  it('that contradicts itself is offered twice', () => {
    expect(readLength('38 in / 90 cm', { unit: 'cm' })).toMatchObject({
      kind: 'which',
      options: [{ value: { cm: 96.52 } }, { value: { cm: 90 } }],
    });
  });

  it.each([
    ['-5 cm', 'negative'],
    ['0', 'out of range'],
    ['0 cm', 'out of range'],
    ['11 m', 'out of range'],
    ['38 sts', 'other kind'],
    ['38 rows', 'other kind'],
    ['10 1/2 needles', 'other kind'],
    ['5 4', 'several numbers'],
    ['10 x 10 cm', 'several numbers'],
    ['36 38 40', 'several numbers'],
    ['1e308', 'several numbers'],
    ['38%', 'not understood'],
    ['M', 'no number'],
    ['1.234,5 cm', 'thousands'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readLength(text, { unit: 'cm' })).toMatchObject({ kind: 'refused', reason });
  });

  it('that is formatted and read again is the same length, in both units and whatever the interview’s unit', () => {
    const grid = { cm: 0.1, in: 1 / 8 } as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...LENGTH_UNITS),
        fc.constantFrom<LengthUnit | undefined>(...LENGTH_UNITS, undefined),
        fc.integer({ min: 1, max: 3000 }),
        (unit, interview, steps) => {
          const length = lengthIn(steps * grid[unit], unit);
          const read = readLength(formatLength(length, unit), { unit: interview });
          if (read.kind !== 'heard') throw new Error(`${formatLength(length, unit)} was not heard`);
          expect(read.value.cm).toBeCloseTo(length, 9);
          expect(read.value.typed.unit).toBe(unit);
        },
      ),
    );
  });

  it('of any size comes back within half of the last digit that was printed', () => {
    const half = { cm: 0.05, in: 0.05 } as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...LENGTH_UNITS),
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        (unit, value) => {
          const read = readLength(formatLength(cm(value), unit), { unit });
          if (read.kind !== 'heard') throw new Error('not heard');
          expect(Math.abs(read.value.cm - value)).toBeLessThanOrEqual(half[unit] * CM_PER[unit] + 1e-9);
        },
      ),
    );
  });

  it('is heard again from its own echo', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LENGTH_UNITS),
        fc.constantFrom(...LENGTH_UNITS),
        fc.integer({ min: 8, max: 1500 }),
        (unit, interview, eighths) => {
          const read = readLength(`${eighths / 8} ${unit}`, { unit: interview });
          if (read.kind !== 'heard') throw new Error('not heard');
          const again = readLength(read.echo, { unit: interview });
          if (again.kind !== 'heard') throw new Error(`${read.echo} was not heard`);
          expect(Math.abs(again.value.cm - read.value.cm)).toBeLessThanOrEqual(0.13);
        },
      ),
    );
  });

  it('with a unit reads the same in every interview', () => {
    const typed = fc.tuple(
      fc.integer({ min: 1, max: 390 }),
      fc.constantFrom('cm', 'in', '"', ' inches', 'cms'),
    );
    fc.assert(
      fc.property(typed, ([value, unit]) => {
        const [first, ...others] = [...LENGTH_UNITS, undefined].map((u) =>
          readLength(`${value}${unit}`, { unit: u }),
        );
        for (const read of [first, ...others]) {
          if (read?.kind !== 'heard' || first?.kind !== 'heard') throw new Error('not heard');
          expect(read.value).toEqual(first.value);
        }
      }),
    );
  });
});
