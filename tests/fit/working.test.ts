import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyRounding, quantity, workOut } from '../../src/fit/working.ts';

const given = { a: quantity('a', 12, 'cm'), b: quantity('b', 5, 'cm') };

describe('a working line', () => {
  it('keeps the exact value beside the rounded one', () => {
    const line = workOut('stitches at the bust', 'a * b', given, {
      unit: 'stitches',
      rounding: { to: 'even' },
    });
    expect(line.exact).toBe(60);
    expect(line.rounding).toEqual({ to: 'even' });
    const third = workOut('stitches', 'a / b', given, { unit: 'stitches', rounding: { to: 'whole' } });
    expect([third.exact, third.result.value]).toEqual([2.4, 2]);
    expect(workOut('width', 'a * b', given, { unit: 'cm' })).not.toHaveProperty('rounding');
    expect(line.result).toEqual({ name: 'stitches at the bust', value: 60, unit: 'stitches' });
  });

  it('always shows the value of its own formula', () => {
    const number = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        const q = { a: quantity('a', a, 'cm'), b: quantity('b', b, 'cm'), c: quantity('c', c, 'times') };
        expect(workOut('x', '(a + b) * c / a', q, { unit: 'cm' }).exact).toBe(((a + b) * c) / a);
      }),
    );
  });
});

describe('rounding of a working line', () => {
  it.each([
    [178.5, { to: 'whole' }, 179],
    [7.9999999999, { to: 'whole down' }, 8],
    [7.9, { to: 'whole down' }, 7],
    [8.0000000001, { to: 'whole up' }, 8],
    [8.1, { to: 'whole up' }, 9],
    [-0.4, { to: 'whole up' }, 0],
    [9, { to: 'even' }, 10],
    [8.9, { to: 'even' }, 8],
    [76.8, { to: 'multiple', multiple: 6, plus: 0 }, 78],
    [100, { to: 'multiple', multiple: 4, plus: 2 }, 102],
    [99.9, { to: 'multiple', multiple: 4, plus: 2 }, 98],
  ] as const)('%d %o gives %d', (exact, rounding, rounded) => {
    expect(applyRounding(exact, rounding)).toBe(rounded);
  });
});
