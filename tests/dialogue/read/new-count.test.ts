import { describe, expect, it } from 'vitest';
import { readNewCount } from '../../../src/dialogue/read/new-count.ts';

describe('A new count of stitches', () => {
  it.each([
    ['94', 'to', 94, '94 stitches'],
    ['to 94', 'to', 94, '94 stitches'],
    ['increase to 94 sts', 'to', 94, '94 stitches'],
    ['94 in all', 'to', 94, '94 stitches'],
    ['+10', 'by', 10, '10 stitches more'],
    ['+ 1 st', 'by', 1, '1 stitch more'],
    ['10 more', 'by', 10, '10 stitches more'],
    ['inc 10 sts', 'by', 10, '10 stitches more'],
    ['add ten', 'by', 10, '10 stitches more'],
    ['-8', 'by', -8, '8 stitches fewer'],
    ['−8', 'by', -8, '8 stitches fewer'],
    ['8 fewer', 'by', -8, '8 stitches fewer'],
    ['Dec 8', 'by', -8, '8 stitches fewer'],
    ['lose 8 stitches', 'by', -8, '8 stitches fewer'],
  ])('“%s” is heard', (text, how, count, echo) => {
    expect(readNewCount(text)).toEqual({ kind: 'heard', value: { how, count }, echo });
  });

  it.each([
    ['', 'empty'],
    ['more', 'empty'],
    ['10 more, 8 fewer', 'not understood'],
    ['+10.5', 'not whole'],
    ['+10 cm', 'other kind'],
    ['+99999', 'out of range'],
  ])('“%s” is refused with an example that would be heard', (text, reason) => {
    const read = readNewCount(text);
    expect(read).toMatchObject({ kind: 'refused', reason });
    expect(read.kind === 'refused' && readNewCount(read.example).kind).toBe('heard');
  });

  it('of two figures is put back in full', () => {
    expect(readNewCount('add 10 or 12')).toMatchObject({
      kind: 'which',
      options: [{ echo: '10 stitches more' }, { echo: '12 stitches more' }],
    });
  });
});
