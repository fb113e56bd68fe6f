import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MISTAKES, variantsOf } from '../../src/fit/mistake.ts';
import { isRight } from '../../src/fit/right.ts';
import { type Sum, sumsOf } from '../../src/fit/sum.ts';
import { figureOf, tryFigure } from '../../src/fit/tried.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { formatNumber } from '../../src/present/quantity.ts';
import { sumQuestion, sumSaid, wordTally } from '../../src/present/sum-text.ts';
import { planWith, sumNamed } from '../fit/sums.ts';
import { garments } from './garments.ts';

/** Rows of a section between an edging and an underarm, and stitches of a waist: figures of our own. */
const waist = workOut(
  'stitches at the waist',
  'a * b',
  { a: quantity('width at the waist', 88, 'cm'), b: quantity('stitches', 2.2, 'stitches/cm') },
  { unit: 'stitches', rounding: { to: 'multiple', multiple: 4, plus: 0 } },
);
const sum = sumNamed(planWith([waist], 'cm'), waist.label);

describe('a sum in words', () => {
  it('is asked with what she has and how it is rounded', () => {
    expect(sumQuestion(sum, 'us')).toBe(
      'Stitches at the waist: what do you get? You have 88 cm (width at the waist) and 2.2 stitches per cm. Give it to the nearest multiple of 4.',
    );
  });

  it('is hinted at in names alone', () => {
    expect(sumSaid(sum, { kind: 'hint' }, 'us')).toBe(
      'Stitches at the waist = width at the waist × stitches per cm.',
    );
  });

  it('is shown whole once it is asked for', () => {
    expect(sumSaid(sum, { kind: 'worked' }, 'us')).toBe(
      'This is how it goes: stitches at the waist = 88 cm (width at the waist) × 2.2 stitches per cm = 193.6, to the nearest multiple of 4: 192 stitches.',
    );
  });

  it('tells her who divided by the gauge at which line and why, without a figure', () => {
    expect(sumSaid(sum, tryFigure(sum, 40), 'us')).toBe(
      'Yours parts from the workings at "stitches at the waist". The stitches per cm went in the wrong way round: divided where it multiplies, or multiplied where it divides.',
    );
  });
});

/** Numbers as they are printed. */
const NUMBER = /\d+(?:\.\d+)?/g;

function tells(text: string, { line, unit }: Sum): boolean {
  const right = formatNumber(line.result, { unit, worked: null, fine: true });
  const figures: readonly string[] = text.match(NUMBER) ?? [];
  return figures.includes(right);
}

it('holds the right figure in no question, no hint and no word on a wrong figure, for any garment', () => {
  fc.assert(
    fc.property(garments, fc.integer({ min: 1, max: 400 }), (plan, guess) => {
      for (const one of sumsOf(plan)) {
        expect(tells(sumQuestion(one, 'us'), one)).toBe(false);
        expect(tells(sumSaid(one, { kind: 'hint' }, 'us'), one)).toBe(false);
        const slips = MISTAKES.flatMap((mistake) => variantsOf(mistake, one).map(figureOf));
        for (const figure of [guess, ...slips]) {
          if (isRight(one.read, figure, one.unit)) continue;
          expect(tells(sumSaid(one, tryFigure(one, figure), 'us'), one)).toBe(false);
        }
        expect(tells(sumSaid(one, { kind: 'worked' }, 'us'), one)).toBe(true);
      }
    }),
    { numRuns: 100 },
  );
});

describe('the end of the sums', () => {
  const none = { atOnce: 0, later: 0, shown: 0, passed: 0, slips: [] };

  it('counts what was right at once and later, and names two slips to watch', () => {
    const tally = {
      ...none,
      atOnce: 3,
      later: 1,
      shown: 1,
      slips: ['gauge turned round', 'off by one', 'odd rows'],
    } as const;
    expect(wordTally(tally)).toBe(
      '3 of 5 right at once, 1 after another try and 1 shown. That is well worked. What to watch: which way round the stitches or rows per length go in and what lies between and what stands at the ends.',
    );
  });

  it('is kind to her who did none', () => {
    expect(wordTally(none)).toBe('No sum is done yet. They are there whenever you like.');
  });
});
