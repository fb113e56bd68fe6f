import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDifference } from '../../../src/dialogue/read/difference.ts';
import { cm, formatLength, LENGTH_UNITS, type LengthUnit } from '../../../src/fit/units.ts';

const read = (text: string, unit: LengthUnit | undefined) =>
  readDifference(text, { unit, more: 'longer', less: 'shorter' });

describe('A difference', () => {
  it.each<[string, LengthUnit, number, string]>([
    ['+2 in', 'cm', 5.08, '5.1 cm (2 in) longer'],
    ['5 cm longer', 'in', 5, '2 in (5 cm) longer'],
    ['2" shorter', 'in', -5.08, '2 in (5.1 cm) shorter'],
    ['-1½', 'in', -3.81, '1½ in (3.8 cm) shorter'],
    ['take 2 in off', 'in', -5.08, '2 in (5.1 cm) shorter'],
    ['make it 3" shorter please', 'in', -7.62, '3 in (7.6 cm) shorter'],
    ['2 in / 5 cm longer', 'cm', 5, '5 cm (2 in) longer'],
    ['0', 'cm', 0, 'no change (0 cm)'],
  ])('“%s” where the unit is %s is heard', (text, unit, value, echo) => {
    const heard = read(text, unit);
    expect(heard).toMatchObject({ kind: 'heard', echo });
    if (heard.kind === 'heard') expect(heard.value.cm).toBeCloseTo(value, 9);
  });

  it('without sign or direction is put back', () => {
    expect(read('2', 'in')).toMatchObject({
      why: 'more or less',
      question: 'Do you mean 2 in (5.1 cm) longer?',
    });
  });

  it('as a range is two to choose from', () => {
    expect(read('2-3 in shorter', 'in')).toMatchObject({
      kind: 'which',
      options: [{ echo: '3 in (7.6 cm) shorter' }, { echo: '2 in (5.1 cm) shorter' }],
    });
  });

  it('that points both ways is refused', () => {
    expect(read('-2 in longer', 'in')).toMatchObject({ kind: 'refused', reason: 'not understood' });
  });

  it('that is formatted and read again is the same, with its minus', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LENGTH_UNITS), fc.integer({ min: 1, max: 900 }), (unit, millimetres) => {
        const heard = read(formatLength(cm(-millimetres / 10), 'cm'), unit);
        if (heard.kind !== 'heard') throw new Error('not heard');
        expect(heard.value.cm).toBeCloseTo(-millimetres / 10, 9);
      }),
    );
  });
});
