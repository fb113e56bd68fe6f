/**
 * Figures of those who slipped, worked by hand. 'Of memory': how knitters slip, as common practice of the trade has it;
 * the figures are plain arithmetic and stand beside each slip.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MISTAKES, type Mistake, variantsOf } from '../../src/fit/mistake.ts';
import { isRight } from '../../src/fit/right.ts';
import { type Sum, sumsOf, workedAsShown } from '../../src/fit/sum.ts';
import { figureOf, slipsTo, tryFigure } from '../../src/fit/tried.ts';
import { quantity, type WorkingLine, workOut } from '../../src/fit/working.ts';
import { garments } from '../present/garments.ts';
import { inches, planWith, sumNamed } from './sums.ts';

const stitchesPerInch = inches('gauge', 5.5, 'stitches/cm');
const rowsPerInch = inches('row gauge', 7.5, 'rows/cm');

/** 40 in at 5.5 stitches to the inch are 220 stitches. */
const around = workOut(
  'stitches all round',
  'a * b',
  { a: inches('width all round', 40, 'cm'), b: stitchesPerInch },
  { unit: 'stitches', rounding: { to: 'whole' } },
);
/** 16 in at 7.5 rows to the inch are 120 rows. */
const upward = workOut(
  'rows to the underarm',
  'a * b',
  { a: inches('underarm, from the start', 16, 'cm'), b: rowsPerInch },
  { unit: 'rows', rounding: { to: 'whole' } },
);
/** A body of 38 in with 3 in of ease is 41 in; at 5.5 to the inch 225.5 stitches, to a multiple of 8 and 2: 226. */
const eased = workOut(
  'finished bust',
  'a + b',
  { a: inches('bust of the body', 38, 'cm'), b: inches('ease', 3, 'cm') },
  { unit: 'cm' },
);
const repeated = workOut(
  'stitches at the bust',
  'a * b',
  { a: inches('width at the bust', 41, 'cm'), b: stitchesPerInch },
  { unit: 'stitches', rounding: { to: 'multiple', multiple: 8, plus: 2 } },
);
/** 17 cm at 2.2 stitches to the centimetre and 2 edge stitches: 39.4, to a multiple of 4 and 2: 38. */
const cuff = workOut(
  'stitches at the wrist',
  'a * b + c',
  {
    a: quantity('width at the wrist', 17, 'cm'),
    b: quantity('gauge', 2.2, 'stitches/cm'),
    c: quantity('edge stitches', 2, 'stitches'),
  },
  { unit: 'stitches', rounding: { to: 'multiple', multiple: 4, plus: 2 } },
);
/** 31 stitches to gain, 2 in a shaping row … 32 / 2 = 16 shaping rows. */
const shapings = workOut(
  'shaping rows',
  'a / b',
  {
    a: quantity('stitches to gain', 32, 'stitches'),
    b: quantity('stitches a shaping row', 2, 'stitches'),
  },
  { unit: 'times' },
);
/** 135 rows less the 18 of the edging are 117. */
const section = workOut(
  'rows of this section',
  'b - a',
  { a: quantity('rows to the edging', 18, 'rows'), b: quantity('rows to the underarm', 135, 'rows') },
  { unit: 'rows' },
);
/** 117 rows for 16 shaping rows: 7.3, so 7 rows to a shorter interval. */
const interval = workOut(
  'rows to a shorter interval',
  'a / b',
  { a: quantity('rows for the intervals', 117, 'rows'), b: quantity('shaping rows', 16, 'times') },
  { unit: 'rows', rounding: { to: 'whole down' } },
);
/** (82 − 40) / 2 = 21 stitches for each shoulder. */
const shoulder = workOut(
  'stitches of each shoulder',
  '(a - b) / 2',
  {
    a: quantity('stitches across', 82, 'stitches'),
    b: quantity('stitches of the neck', 40, 'stitches'),
  },
  { unit: 'stitches' },
);
/** 9.5 cm at 3 rows to the centimetre: 28.5, to the nearest even number 28. */
const neck = workOut(
  'rows of the neck',
  'a * b',
  { a: quantity('neck depth', 9.5, 'cm'), b: quantity('row gauge', 3, 'rows/cm') },
  { unit: 'rows', rounding: { to: 'even' } },
);
/** 97 cm at 2.27 stitches to the centimetre: 220.19, so 220 stitches. */
const fine = workOut(
  'stitches of the hem',
  'a * b',
  { a: quantity('width of the hem', 97, 'cm'), b: quantity('gauge', 2.27, 'stitches/cm') },
  { unit: 'stitches', rounding: { to: 'whole' } },
);
/** 22 stitches counted over 10 cm: 2.2 to the centimetre. */
const gauge = workOut(
  'stitches of your gauge',
  'a / b',
  { a: quantity('stitches counted', 22, 'stitches'), b: quantity('span', 10, 'cm') },
  { unit: 'stitches/cm' },
);

interface Row {
  readonly line: WorkingLine;
  readonly beside?: readonly WorkingLine[];
  readonly unit: 'cm' | 'in';
  readonly typed: number;
  readonly mistake: Mistake;
}

const ROWS: readonly Row[] = [
  // 40 / 5.5
  { line: around, unit: 'in', typed: 7.27, mistake: 'gauge turned round' },
  // 10 / 22
  { line: gauge, unit: 'cm', typed: 0.45, mistake: 'gauge turned round' },
  // 40 × 7.5
  { line: around, beside: [upward], unit: 'in', typed: 300, mistake: 'other gauge' },
  // 16 × 5.5
  { line: upward, beside: [around], unit: 'in', typed: 88, mistake: 'other gauge' },
  // 40 × 22, the stitches of four inches
  { line: around, unit: 'in', typed: 880, mistake: 'gauge of the whole swatch' },
  // 20 × 5.5
  { line: around, unit: 'in', typed: 110, mistake: 'half a width' },
  { line: around, unit: 'in', typed: 440, mistake: 'whole width for a part' },
  // 32 / 1: one side of the sleeve
  { line: shapings, unit: 'cm', typed: 32, mistake: 'one side only' },
  // 82 − 40
  { line: shoulder, unit: 'cm', typed: 42, mistake: 'one side only' },
  // 101.6 cm × 5.5 = 558.8
  { line: around, unit: 'in', typed: 559, mistake: 'inches and centimetres mixed' },
  { line: eased, unit: 'in', typed: 38, mistake: 'ease forgotten' },
  { line: eased, unit: 'in', typed: 44, mistake: 'ease twice' },
  { line: eased, unit: 'in', typed: 35, mistake: 'ease the wrong way' },
  // 38 × 5.5 = 209, to a multiple of 8 and 2: 210
  { line: repeated, beside: [eased], unit: 'in', typed: 210, mistake: 'ease forgotten' },
  { line: section, unit: 'cm', typed: 135, mistake: 'edging forgotten' },
  // 17 × 2.2 = 37.4, without the edge stitches: to a multiple of 4 and 2 again 38, so to the exact figure
  { line: cuff, unit: 'cm', typed: 37.4, mistake: 'edge stitches forgotten' },
  { line: cuff, unit: 'cm', typed: 39, mistake: 'repeat forgotten' },
  { line: cuff, unit: 'cm', typed: 40, mistake: 'extra stitches forgotten' },
  // 28.5 is 29 to the nearest whole number
  { line: neck, unit: 'cm', typed: 29, mistake: 'odd rows' },
  { line: interval, unit: 'cm', typed: 8, mistake: 'rounded the wrong way' },
  { line: interval, unit: 'cm', typed: 7.31, mistake: 'not rounded' },
  // 97 × 2.3 = 223.1
  { line: fine, unit: 'cm', typed: 223, mistake: 'rounded too early' },
  { line: shapings, unit: 'cm', typed: 17, mistake: 'off by one' },
  { line: section, unit: 'cm', typed: 118, mistake: 'off by one' },
  // 32 × 2
  { line: shapings, unit: 'cm', typed: 64, mistake: 'multiplied for divided' },
  // 135 + 18
  { line: section, unit: 'cm', typed: 153, mistake: 'added for taken away' },
];

/** The sum of this line, in a plan that holds nothing else. */
const alone = (line: WorkingLine): Sum => ({
  line,
  read: line,
  leads: [],
  unit: 'cm',
  worked: null,
  rates: { stitches: null, rows: null },
});
const slipsFor = (line: WorkingLine, figure: number) =>
  slipsTo(alone(line), figure).map(({ mistake }) => mistake);

const sumOf = ({ line, beside = [], unit }: Row): Sum =>
  sumNamed(planWith([...beside, line], unit), line.label);

describe('a figure that was come by with a slip', () => {
  it.each(ROWS)('$typed for the $line.label: $mistake', (row) => {
    const tried = tryFigure(sumOf(row), row.typed);
    expect(tried.kind === 'slip' ? tried.slips.map(({ mistake }) => mistake) : tried).toContain(row.mistake);
  });

  it('names the line before, where the slip lies there', () => {
    const sum = sumNamed(planWith([eased, repeated], 'in'), 'stitches at the bust');
    expect(tryFigure(sum, 210)).toEqual({
      kind: 'slip',
      slips: [{ mistake: 'ease forgotten', at: 'finished bust', about: 'ease' }],
    });
  });

  it('names the slip alone where no other gives the figure', () => {
    const sum = sumNamed(planWith([around], 'in'), around.label);
    expect(tryFigure(sum, 7)).toMatchObject({ kind: 'slip', slips: [{ mistake: 'gauge turned round' }] });
  });

  it('may come of either of two slips', () => {
    // 135 rows less one of the edging are 134.
    const line = workOut(
      'rows of this section',
      'b - a',
      { a: quantity('rows to the edging', 1, 'rows'), b: quantity('rows to the underarm', 135, 'rows') },
      { unit: 'rows' },
    );
    expect(slipsFor(line, 135)).toEqual(['edging forgotten', 'off by one']);
    expect(tryFigure(alone(line), 135)).toMatchObject({
      kind: 'slip',
      slips: [{ mistake: 'edging forgotten' }, { mistake: 'off by one' }],
    });
  });

  it('is not put down to any where three would give it', () => {
    // (4 − 2) / 2 = 1; 4 − 2 = 2, 4 / 2 = 2, 1 + 1 = 2.
    const line = workOut(
      'rows of each half',
      '(b - a) / 2',
      { a: quantity('rows of the edging', 2, 'rows'), b: quantity('rows', 4, 'rows') },
      { unit: 'rows' },
    );
    expect(slipsFor(line, 2)).toEqual(['one side only', 'edging forgotten', 'off by one']);
    expect(tryFigure(alone(line), 2)).toEqual({ kind: 'parted', from: 'rows of each half', begin: 'b - a' });
  });

  it('that is whole has been rounded, though the line would give as much without', () => {
    // 40 × 2 = 80, to a multiple of 12: 84.
    const line = workOut(
      'stitches at the hem',
      'a * b',
      { a: quantity('width at the hem', 40, 'cm'), b: quantity('gauge', 2, 'stitches/cm') },
      { unit: 'stitches', rounding: { to: 'multiple', multiple: 12, plus: 0 } },
    );
    expect(slipsFor(line, 80)).toEqual(['repeat forgotten']);
  });

  it('that is broken has not been rounded, to whatever it should have been', () => {
    expect(slipsFor(cuff, 39.4)).toEqual(['not rounded']);
  });

  it('is named in the unit that is read: the same sum in centimetres', () => {
    const sum = sumNamed(planWith([around], 'cm'), around.label);
    // 101.6 cm × 2.165 stitches a centimetre; a swatch of ten centimetres has 21.65
    expect(tryFigure(sum, 220)).toEqual({ kind: 'right' });
    expect(tryFigure(sum, 2200)).toMatchObject({ slips: [{ mistake: 'gauge of the whole swatch' }] });
  });
});

describe('a figure that no known slip gives', () => {
  it('is held against the line itself where nothing goes into it', () => {
    const sum = sumNamed(planWith([around], 'in'), around.label);
    expect(tryFigure(sum, 231)).toEqual({ kind: 'parted', from: 'stitches all round', begin: null });
  });

  it('is held against the first line that goes into it', () => {
    const sum = sumNamed(planWith([eased, repeated], 'in'), 'stitches at the bust');
    expect(tryFigure(sum, 500)).toMatchObject({ kind: 'parted', from: 'finished bust' });
  });

  it.each([
    ['(a + b) * c', 'a + b'],
    ['c * ((a + b) / 2)', 'a + b'],
    ['√(a * a + b * b)', 'a * a + b * b'],
    ['a * b + c', 'a * b'],
    ['a + b1 / c10', 'b1 / c10'],
    ['a10 * b1 - c', 'a10 * b1'],
    ['a - b - c', 'a - b'],
    ['e10 + e11 + e12', 'e10 + e11'],
    ['a / b', null],
    ['a10 + b1', null],
    ['a', null],
  ])(
    'of %s is begun with %s: brackets first, then what is multiplied or divided, then the first two',
    (formula, begin) => {
      const letters = ['a', 'b', 'c', 'a10', 'b1', 'c10', 'e10', 'e11', 'e12'];
      const given = Object.fromEntries(
        letters
          .filter((letter) => new RegExp(`\\b${letter}\\b`).test(formula))
          .map((letter) => [letter, quantity(letter, 7, 'g')]),
      );
      const line = workOut('weight', formula, given, { unit: 'g' });
      expect(tryFigure(alone(line), 999_983)).toMatchObject({ kind: 'parted', begin });
    },
  );

  it('is begun with what stands in brackets', () => {
    const sum = sumNamed(planWith([shoulder], 'cm'), shoulder.label);
    expect(tryFigure(sum, 5)).toMatchObject({ kind: 'parted', begin: 'a - b' });
  });
});

describe('the right figure', () => {
  it('is taken as a tape is read: to the millimetre, or to an eighth of an inch', () => {
    const width = workOut(
      'width at the waist',
      'a / b',
      { a: quantity('stitches', 196, 'stitches'), b: quantity('gauge', 2.2, 'stitches/cm') },
      { unit: 'cm' },
    );
    // 196 / 2.2 = 89.0909 cm = 35.0752 in
    const metric = sumNamed(planWith([width], 'cm'), width.label);
    expect(tryFigure(metric, 89.1)).toEqual({ kind: 'right' });
    expect(tryFigure(metric, 89.3).kind).not.toBe('right');
    const imperial = sumNamed(planWith([width], 'in'), width.label);
    expect(tryFigure(imperial, 35.125)).toEqual({ kind: 'right' });
    expect(tryFigure(imperial, 35.25).kind).not.toBe('right');
  });

  it('is a count to the stitch', () => {
    const sum = sumNamed(planWith([around], 'in'), around.label);
    expect(tryFigure(sum, 220)).toEqual({ kind: 'right' });
    expect(tryFigure(sum, 221).kind).not.toBe('right');
  });
});

/** Some slips make no difference in some sums, and nobody leaves a whole number unrounded. */
function leadsAstray(figure: number, sum: Sum, mistake: Mistake): boolean {
  const whole = Math.abs(figure - Math.round(figure)) < 1e-6;
  if (mistake === 'not rounded' && whole) return false;
  return figure > 0 && Number.isFinite(figure) && !isRight(sum.read, figure, sum.unit);
}

describe('the sums of any garment', () => {
  const RUNS = { numRuns: 150 };
  const ofAll = (check: (sum: Sum) => void) =>
    fc.assert(
      fc.property(garments, (plan) => {
        for (const sum of sumsOf(plan)) check(sum);
      }),
      RUNS,
    );

  it('take their own result for right, and what is worked from the figures that are shown', () => {
    ofAll((sum) => {
      expect(tryFigure(sum, sum.read.result.value)).toEqual({ kind: 'right' });
      expect(tryFigure(sum, workedAsShown(sum.read))).toEqual({ kind: 'right' });
    });
  });

  it('know every slip again wherever it leads astray', () => {
    const seen = new Set<Mistake>();
    ofAll((sum) => {
      for (const mistake of MISTAKES) {
        for (const variant of variantsOf(mistake, sum)) {
          const figure = figureOf(variant);
          if (!leadsAstray(figure, sum, mistake)) continue;
          const known = slipsTo(sum, figure).map((slip) => slip.mistake);
          expect(known).toContain(mistake);
          expect(tryFigure(sum, figure).kind).toBe(known.length <= 2 ? 'slip' : 'parted');
          seen.add(mistake);
        }
      }
    });
    // These garments are planned without ease.
    const unseen = MISTAKES.filter((mistake) => !seen.has(mistake));
    expect(unseen).toEqual(['ease forgotten', 'ease twice', 'ease the wrong way']);
  });

  it('are ten at most, each kind once, in the order of the plan', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        const sums = sumsOf(plan);
        const all = [...plan.steps.flatMap((s) => s.workings), ...plan.finished.flatMap((f) => f.workings)];
        const places = sums.map(({ line }) => all.indexOf(line));
        expect(sums.length).toBeLessThanOrEqual(10);
        expect(new Set(sums.map(({ line }) => line.label)).size).toBe(sums.length);
        expect(places).toEqual([...places].sort((a, b) => a - b));
      }),
      RUNS,
    );
  });
});
