import { describe, expect, it } from 'vitest';
import { line, point, type Shape, text } from '../../src/present/draw/drawing.ts';
import { faultsOf } from './geometry.ts';

describe('the checks on a drawing', () => {
  const word = text('waist', point(10, 30), { size: 12 });
  const drawn = (...shapes: readonly Shape[]) => faultsOf({ width: 120, height: 60, shapes });

  it('find nothing where all is in its place', () => {
    expect(drawn(word, line('yours', point(10, 40), point(110, 40)))).toEqual([]);
  });

  it.each([
    ['a text off the picture', text('waist', point(100, 30), { size: 12 }), "'waist' leaves the page"],
    [
      'a line off the picture',
      line('yours', point(10, 50), point(130, 50)),
      "the line 'yours' leaves the page",
    ],
    ['a text upon another', text('hip', point(20, 34), { size: 12 }), "'waist' lies upon 'hip'"],
    [
      'a line through a text',
      line('leader', point(0, 26), point(80, 26)),
      "the line 'leader' goes through 'waist'",
    ],
    [
      'a text wider than its room',
      { ...word, y: 50, box: { ...word.box, y: 39, width: 10 } },
      "'waist' is wider than its box",
    ],
  ])('find %s', (_, shape, fault) => {
    expect(drawn(word, shape)).toContain(fault);
  });
});
