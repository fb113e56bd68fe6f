/** What is known of the bust, the front and their ease, and the shaping that suits them. */
import { type BustAdvice, bustAdvice } from '../fit/bust-advice.ts';
import type { DartDepth } from '../fit/bust-dart.ts';
import type { AdviceFigures } from '../fit/bust-steps.ts';
import type { Gauge } from '../fit/gauge.ts';
import { widthLine } from '../fit/steps.ts';
import { STANDARD_BUST_DIFFERENCE } from '../fit/tables/fit-ease.ts';
import { type Cm, cm, inches, type Stitches } from '../fit/units.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import { type Made, SEAM_STITCHES } from './figures.ts';
import { type Ledger, takeChoice, takeLength } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { bodyMade, countOf } from './upper-figures.ts';

export interface BustFigures {
  readonly made: Made;
  readonly gauge: Gauge;
  /** All round, or of the front alone in pieces. */
  readonly needle: Stitches;
  readonly bust: Cm;
  readonly upperBust: Cm;
  readonly depth: DartDepth;
  readonly advice: BustAdvice;
  readonly figures: AdviceFigures;
}

/** Undefined where figures are missing; they are entered as waiting. */
export function bustFigures(book: Ledger): BustFigures | undefined {
  const made = bodyMade(book);
  const needle = countOf(book, 'p_bust', 'bust');
  const bust = takeLength(book, 'bust');
  const upperBust = takeLength(book, 'upper_bust');
  const fabric = takeChoice(book, 'bust_fabric') === 'patterned' ? 'patterned' : 'plain';
  const gauge = made && ownGauge(book, made.worked);
  if (made === undefined || gauge === undefined || needle === undefined) return undefined;
  if (bust === undefined || upperBust === undefined) return undefined;
  const depth = depthFrom(book, bust, upperBust);
  const figures = adviceFigures(bust, upperBust, depth, finishedBust(needle, gauge));
  const advice = bustAdvice({
    length: figures.length === null ? null : cm(figures.length.value),
    width: cm(figures.width.value),
    ease: cm(figures.ease.value),
    fabric,
  });
  return { made, gauge, needle, bust, upperBust, depth, advice, figures };
}

/** From both lengths where both were measured, else from the girths, which is entered as assumed. */
function depthFrom(book: Ledger, bust: Cm, upperBust: Cm): DartDepth {
  const measured = ['front_length', 'back_length'].every((id) => book.sheet.answers[id]?.given === 'value');
  const [front, back] = measured ? [takeLength(book, 'front_length'), takeLength(book, 'back_length')] : [];
  if (front !== undefined && back !== undefined) return { from: 'lengths', front, back };
  const question = 'Front and back length';
  if (!book.assumed.some((a) => a.question === question)) {
    book.assumed.push({
      question,
      used: 'bust and upper bust',
      effect: 'Length over the bust is judged by the girths. Measuring front and back is surer.',
    });
  }
  return { from: 'girths', bust, upperBust };
}

function finishedBust(needle: Stitches, gauge: Gauge): WorkingLine {
  const flat = gauge.worked === 'flat';
  return widthLine('bust', needle, gauge, flat ? SEAM_STITCHES : 0, flat ? 2 : 1);
}

function adviceFigures(bust: Cm, upperBust: Cm, depth: DartDepth, finished: WorkingLine): AdviceFigures {
  const full = quantity('full bust', bust, 'cm');
  const width = workOut(
    'full bust less upper bust',
    'a - b',
    { a: full, b: quantity('upper bust', upperBust, 'cm') },
    { unit: 'cm' },
  );
  const ease = workOut('ease at the bust', 'a - b', { a: finished.result, b: full }, { unit: 'cm' });
  const lines = [width, finished, ease];
  if (depth.from === 'girths')
    return { length: null, width: width.result, ease: ease.result, workings: lines };
  const length = workOut(
    'front length less back length',
    'a - b',
    { a: quantity('front length', depth.front, 'cm'), b: quantity('back length', depth.back, 'cm') },
    { unit: 'cm' },
  );
  return { length: length.result, width: width.result, ease: ease.result, workings: [length, ...lines] };
}

/** How much wider the front may become: what the full bust has beyond what patterns are drafted for. */
export function moreForTheFront(bust: Cm, upperBust: Cm): Cm {
  return cm(Math.max(0, bust - upperBust - inches(STANDARD_BUST_DIFFERENCE)));
}
