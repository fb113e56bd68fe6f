import { describe, expect, it } from 'vitest';
import { readShapingText } from '../../../src/dialogue/read/shaping-text.ts';

describe('a pasted shaping line', () => {
  it.each([
    'decrease 1 st at each end of every 6th row 5 times',
    'inc 1 st at each end of next and every foll 8th row 6 times',
    '12 x 1 Masche in jeder 4. und 6. Reihe beidseitig zunehmen',
    // Counts before and after are asked for next.
    'increase 1 st at each end of every 6th row to 74 sts',
  ])('is heard: %s', (text) => {
    expect(readShapingText(text)).toMatchObject({ kind: 'heard', value: text });
  });

  it('is taken over line breaks', () => {
    expect(readShapingText('dec 1 st at each end of\n  every 6th row\n5 times ')).toMatchObject({
      kind: 'heard',
      value: 'dec 1 st at each end of every 6th row 5 times',
    });
  });

  it('that lists all sizes is put back as one line a size (a question met in knitting talk)', () => {
    const read = readShapingText(
      'Rep Dec Row every 6th (8th, 6th, 6th, 4th, 4th, 4th) row 5 (2, 1, 6, 12, 10, 7) more times',
    );
    if (read.kind !== 'which') throw new Error(read.kind);
    expect(read.options).toHaveLength(7);
    expect(read.options[1]).toEqual({
      value: 'Rep Dec Row every 8th row 2 more times',
      echo: 'size 2 of 7: Rep Dec Row every 8th row 2 more times',
    });
  });

  it.each([
    ['', 'There was nothing in that answer. I need one shaping line, as the pattern prints it.'],
    ['dec on every 6th row', 'The line does not say how often.'],
    ['decrease 5 times', 'The line does not say on which rows.'],
    ['decrease every 6th blurb 5 times', 'I do not know what ‘blurb’ means in a shaping line.'],
    ['every 6th (8th, 6th) row 5 (2, 1, 6) times', 'I could not match those figures size by size.'],
    ['x'.repeat(401), 'That is more than I can read at once.'],
  ])('is refused with a reason and a line that can be read: %s', (text, why) => {
    const read = readShapingText(text);
    if (read.kind !== 'refused') throw new Error(read.kind);
    expect(read.message).toContain(why);
    expect(readShapingText(read.example).kind).toBe('heard');
  });
});
