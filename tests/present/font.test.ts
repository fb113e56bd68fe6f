import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawable, shortened, textWidth, WEIGHTS, wrapText } from '../../src/present/draw/font.ts';
import { laidOut, measured } from './geometry.ts';

/** Everything that plans print: letters of Latin scripts, figures, fractions, signs. */
const letters = fc.constantFrom(
  ...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789⅛¼⅜½⅝¾⅞×÷−√°.,:;()/-—… éàüñøßÅ▸◂↕↑•',
);
const texts = fc.array(letters, { minLength: 1, maxLength: 60 }).map((l) => l.join(''));

describe('the width of a text', () => {
  it('is what another reader of the same font measures', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom(...WEIGHTS), (text, weight) => {
        expect(textWidth(text, 13, weight)).toBeCloseTo(measured(text, 13, weight), 9);
      }),
    );
  });

  it('is never less than the text takes once kerning has drawn its letters together', () => {
    // Kerning that moves letters apart is at most a thousandth of such a text: hundredths of a pixel.
    fc.assert(
      fc.property(texts, fc.constantFrom(...WEIGHTS), (text, weight) => {
        expect(textWidth(text, 13, weight) * 1.001 + 0.5).toBeGreaterThanOrEqual(laidOut(text, 13, weight));
      }),
      { numRuns: 60 },
    );
  });
});

describe('a text that is wrapped', () => {
  it('loses no word, and no line is wider than its room', () => {
    fc.assert(
      fc.property(texts, fc.integer({ min: 40, max: 400 }), (text, room) => {
        const lines = wrapText(text, room, 13);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(room);
      }),
    );
  });

  it('keeps a figure and its unit on one line, where there is room for both', () => {
    const room = textWidth('bind off 18 sts', 13) + 1;
    expect(wrapText('bind off the 18 sts in the middle', room, 13)).toEqual([
      'bind off the',
      '18 sts in the',
      'middle',
    ]);
    expect(wrapText('18 sts', textWidth('sts', 13) + 1, 13)).toEqual(['18', 'sts']);
  });

  it('is shortened with an ellipsis where it may have one line only', () => {
    expect(shortened('a sweater for the long winter', 60, 13)).toMatch(/^a sweat.*…$/);
    expect(textWidth(shortened('a sweater for the long winter', 60, 13), 13)).toBeLessThanOrEqual(60);
    expect(shortened('short', 60, 13)).toBe('short');
  });
});

describe('what a person calls her project', () => {
  it.each([
    ['Birthday sweater 🎂', 'Birthday sweater'],
    ['Łódź\u0007 jumper', 'Łódź jumper'],
    ['日本のセーター', ''],
    ['  two   spaces ', 'two spaces'],
  ])('%j is printed as %j: without what the font cannot draw', (typed, printed) => {
    expect(drawable(typed)).toBe(printed);
  });
});
