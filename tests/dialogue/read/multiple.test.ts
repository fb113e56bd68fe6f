import { describe, expect, it } from 'vitest';
import { readMultiple } from '../../../src/dialogue/read/multiple.ts';

describe('A stitch multiple', () => {
  it.each([
    ['multiple of 4 + 2', 4, 2],
    ['multiple of 4 sts plus 2 extra', 4, 2],
    ['mult of 8 sts + 1', 8, 1],
    ['4+2', 4, 2],
    ['4n+2', 4, 2],
    ['divisible by 4', 4, 0],
    ['6', 6, 0],
    ['multiple of 4 + 5', 4, 5],
  ])('“%s” is %i plus %i', (text, multiple, plus) => {
    expect(readMultiple(text)).toMatchObject({ kind: 'heard', value: { multiple, plus } });
  });

  it('less some allows the same counts as the multiple plus the others', () => {
    expect(readMultiple('multiple of 8 minus 1')).toMatchObject({
      kind: 'heard',
      value: { multiple: 8, plus: 7 },
      echo: 'a multiple of 8 stitches plus 7',
    });
  });

  it.each([
    ['4.5', 'not whole'],
    ['0', 'out of range'],
    ['-4', 'negative'],
    ['4 2', 'several numbers'],
    ['4 cm', 'other kind'],
    ['seed stitch', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readMultiple(text)).toMatchObject({ kind: 'refused', reason });
  });
});
