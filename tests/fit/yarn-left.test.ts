/** Whether the yarn lasts, sum by sum: 200 g have made 4000 cm², so 1000 cm² take 50 g, and with a tenth more 55 g. */
import { describe, expect, it } from 'vitest';
import { rowsLeft, yarnLeft } from '../../src/fit/yarn-left.ts';
import { told } from './told.ts';

const asked = (left: number, margin = 0.1, used = { amount: 200, area: 4000 }) =>
  yarnLeft({ unit: 'g', left, used, rest: 1000, margin });

describe('yarn that is left', () => {
  it('lasts where it is no less than the rest takes with the margin', () => {
    const found = asked(60);
    expect(found).toMatchObject({ kind: 'lasts', needed: { unit: 'g' }, over: { unit: 'g' } });
    expect(told(found.workings)).toEqual([
      'yarn for the rest, with the margin: r * u / k * (1 + m) = 55 g',
      'yarn over: a - b = 5 g',
    ]);
    // With half as much again 75 g.
    expect(asked(75, 0.5)).toMatchObject({ kind: 'lasts', over: { value: 0 } });
  });

  it('runs short by what is lacking, and is enough for so much: 44 g less a tenth are 40, for 800 cm²', () => {
    const found = asked(44);
    expect(found.kind).toBe('runs short');
    expect(told(found.workings)).toEqual([
      'yarn for the rest, with the margin: r * u / k * (1 + m) = 55 g',
      'yarn short: b - a = 11 g',
      'area that the yarn left is enough for: a / (1 + m) * k / u = 800 cm²',
    ]);
  });

  it('cannot be told before anything is knitted', () => {
    for (const used of [
      { amount: 0, area: 4000 },
      { amount: 200, area: 0 },
      { amount: 0, area: 0 },
    ])
      expect(() => asked(60, 0.1, used)).toThrow(RangeError);
  });

  it('gives whole rows, less those that are kept back: 40 g at 1.25 are 32', () => {
    const found = rowsLeft('g', 40, 1.25, 1);
    expect(found.rows).toBe(31);
    expect(told(found.workings)).toEqual([
      'rows in the yarn left: a / b = 32 rows',
      'rows to work: a - k = 31 rows',
    ]);
    expect(rowsLeft('g', 2.5, 1.25, 2)).toMatchObject({ rows: 0, bindsOff: true });
    expect(rowsLeft('g', 2.4, 1.25, 2)).toMatchObject({ rows: 0, bindsOff: false });
    for (const none of [0, -1, Number.NaN]) expect(() => rowsLeft('g', 40, none, 1)).toThrow(RangeError);
  });
});
