import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap } from '../../../src/transport/terminal/wrap.ts';

describe('wrapping', () => {
  it('breaks between words, and leaves lines that fit as they are', () => {
    expect(wrap('Cast on 48 stitches and join\nfor  knitting in the round.', 20)).toEqual([
      'Cast on 48 stitches',
      'and join',
      'for knitting in the',
      'round.',
    ]);
    expect(wrap('a  table   of figures', 40)).toEqual(['a  table   of figures']);
  });

  it('keeps empty lines', () => {
    expect(wrap('one\n\ntwo', 20)).toEqual(['one', '', 'two']);
  });

  it.each([
    [
      'a list',
      '- every 6th row twice, then every 8th row',
      ['- every 6th row', '  twice, then', '  every 8th row'],
    ],
    ['a numbered step', '12. every 6th row twice, then', ['12. every 6th', '    row twice,', '    then']],
    ['a numbered sum', '(7) rows = 20 ÷ 2 pairs', ['(7) rows = 20 ÷', '    2 pairs']],
    ['an indented line', '   You: work 20 rows', ['   You: work 20', '   rows']],
  ])('indents the continued lines of %s to where the text began', (_, text, lines) => {
    expect(wrap(text, 16)).toEqual(lines);
  });

  it('cuts a word that is longer than a line', () => {
    expect(wrap('see abcdefghijklmnopqrstuvwxyz', 10)).toEqual(['see', 'abcdefghij', 'klmnopqrst', 'uvwxyz']);
  });

  it('never makes a line wider than the window, and loses no word', () => {
    const word = fc.string({
      unit: fc.constantFrom('a', 'b', '½', '.', '-', '9'),
      minLength: 1,
      maxLength: 30,
    });
    const text = fc.array(word, { maxLength: 40 }).map((words) => words.join(' '));
    fc.assert(
      fc.property(text, fc.integer({ min: 8, max: 60 }), (written, width) => {
        const lines = wrap(written, width);
        expect(lines.filter((line) => [...line].length > width)).toEqual([]);
        expect(lines.join('').replaceAll(' ', '')).toBe(written.replaceAll(' ', ''));
      }),
    );
  });
});
