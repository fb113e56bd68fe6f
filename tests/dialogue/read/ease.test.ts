import { describe, expect, it } from 'vitest';
import { readEase } from '../../../src/dialogue/read/ease.ts';
import type { LengthUnit } from '../../../src/fit/units.ts';

describe('Ease', () => {
  it.each<[string, LengthUnit, number, number, string]>([
    ['2', 'in', 5.08, 5.08, '2 in (5.1 cm) of positive ease'],
    ['+5', 'cm', 5, 5, '5 cm (2 in) of positive ease'],
    ['-1', 'in', -2.54, -2.54, '1 in (2.5 cm) of negative ease'],
    ['−1 cm', 'in', -1, -1, '0.4 in (1 cm) of negative ease'],
    ['– 1"', 'cm', -2.54, -2.54, '2.5 cm (1 in) of negative ease'],
    ['minus two inches', 'in', -5.08, -5.08, '2 in (5.1 cm) of negative ease'],
    ['2" negative ease', 'in', -5.08, -5.08, '2 in (5.1 cm) of negative ease'],
    ['-2" negative ease', 'in', -5.08, -5.08, '2 in (5.1 cm) of negative ease'],
    ['2" smaller than me', 'in', -5.08, -5.08, '2 in (5.1 cm) of negative ease'],
    ['2-4', 'in', 5.08, 10.16, '2–4 in (5.1–10.2 cm) of positive ease'],
    ['5 to 10 cm', 'cm', 5, 10, '5–10 cm (2–3.9 in) of positive ease'],
    ['-2 to -4 in', 'in', -10.16, -5.08, '2–4 in (5.1–10.2 cm) of negative ease'],
    ['2-4 in of negative ease', 'in', -10.16, -5.08, '2–4 in (5.1–10.2 cm) of negative ease'],
    ['-1 to 1 in', 'in', -2.54, 2.54, '−1 in (−2.5 cm) to 1 in (2.5 cm) of ease'],
    ['0', 'cm', 0, 0, 'no ease (0 cm)'],
    ['zero', 'in', 0, 0, 'no ease (0 in)'],
    ['2 in / 5 cm', 'cm', 5, 5, '5 cm (2 in) of positive ease'],
  ])('“%s” where the unit is %s is heard', (text, unit, low, high, echo) => {
    const read = readEase(text, unit);
    expect(read).toMatchObject({ kind: 'heard', echo });
    if (read.kind !== 'heard') return;
    expect(read.value.low.cm).toBeCloseTo(low, 9);
    expect(read.value.high.cm).toBeCloseTo(high, 9);
  });

  it('of nought carries no minus', () => {
    expect(readEase('-0', 'cm')).toMatchObject({ kind: 'heard', value: { low: { cm: 0 } } });
  });

  it('as a fraction in a metric interview is put back in inches', () => {
    expect(readEase('-½', 'cm')).toMatchObject({
      kind: 'ask back',
      why: 'unit missing',
      value: { low: { cm: -1.27 } },
    });
  });

  it('whose minus may go with one figure or both is offered both ways', () => {
    expect(readEase('-2-4 in', 'in')).toMatchObject({
      kind: 'which',
      options: [
        { value: { low: { cm: -10.16 }, high: { cm: -5.08 } } },
        { value: { low: { cm: -5.08 }, high: { cm: 10.16 } } },
      ],
    });
  });

  it.each([
    ['+2 in smaller', 'not understood'],
    ['2 in bigger or smaller', 'not understood'],
    ['500 cm', 'out of range'],
    ['10%', 'not understood'],
    ['2 sts', 'other kind'],
    ['a bit', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readEase(text, 'in')).toMatchObject({ kind: 'refused', reason });
  });
});
