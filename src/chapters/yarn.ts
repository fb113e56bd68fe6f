/** The yarn chapter: another yarn or size than the pattern's, a sweater from a swatch, or what is left. */
import { type Outcome, phrase } from '../fit/plan.ts';
import { quantity, workOut } from '../fit/working.ts';
import { type BallUnknown, replaceBalls, USUAL_MARGIN, type YarnNeed, yarnFromSwatch } from '../fit/yarn.ts';
import { sweaterArea } from '../fit/yarn-garment.ts';
import { rowsLeft } from '../fit/yarn-left.ts';
import { rowsLeftPart, yarnPart } from '../fit/yarn-steps.ts';
import type { Sheet } from '../flow/calculations.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, takeRows } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { resized, restOfSweater, sweaterAsked } from './yarn-sweater.ts';

/**
 * Rows whose yarn is kept back to bind off. A plain bind-off takes as much as two (blacksquirrelberkeley.com, Yarn Chicken:
 * three widths for a row, six to bind off), one and a half (forum.knittinghelp.com, How much yarn is needed for casting
 * off) or one (100milewear.blogspot.com, 2014); up to five widths (nimble-needles.com, How much yarn do you need for a
 * bind off). The safest of these: what is left over is less of a loss than an edge that cannot be bound off.
 */
const KEPT_BACK = 2;

export function yarnResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  switch (takeChoice(book, 'yarn_wish')) {
    case 'swatch':
      return fromSwatch(book);
    case 'left':
      return fromRest(book);
    case 'resized':
      return resized(book);
    case 'rest':
      return restOfSweater(book);
    default:
      return fromPattern(book);
  }
}

/** The balls of another yarn for those of the pattern; undefined where figures are missing. */
export function needOfBalls(book: Ledger): YarnNeed | BallUnknown | undefined {
  const balls = take(book, 'yarn_balls', 'number')?.count;
  const theirs = take(book, 'yarn_band', 'yarn length')?.metres;
  const own = take(book, 'yarn_own_band', 'yarn length')?.metres;
  if (balls === undefined || theirs === undefined || own === undefined) return undefined;
  return replaceBalls(balls, { metres: theirs }, { metres: own }, USUAL_MARGIN);
}

function fromPattern(book: Ledger): Outcome {
  const need = needOfBalls(book);
  if (need === undefined) return missing(book);
  return planOf(book, [phrase('summary: yarn')], [yarnPart(need, [], [])]);
}

/** The yarn for an area, from a swatch that was weighed; undefined where figures are missing. */
export function needFromSwatch(book: Ledger, area: number): YarnNeed | BallUnknown | undefined {
  const weighed = takeSwatch(book);
  return weighed && yarnFromSwatch(area, weighed.swatch, weighed.ball, USUAL_MARGIN);
}

function takeSwatch(book: Ledger) {
  const grams = take(book, 'yarn_swatch', 'yarn weight')?.grams;
  const [width, height] = [takeLength(book, 'yarn_swatch_width'), takeLength(book, 'yarn_swatch_height')];
  const ball = take(book, 'yarn_ball', 'yarn weight')?.grams;
  if (grams === undefined || width === undefined || height === undefined) return undefined;
  const swatch = { amount: { value: grams, unit: 'g' as const }, width, height };
  return { swatch, ball: ball === undefined ? {} : { grams: ball } };
}

function fromSwatch(book: Ledger): Outcome {
  const sweater = sweaterAsked(book);
  const weighed = takeSwatch(book);
  if (weighed === undefined || sweater === undefined) return missing(book);
  const area = sweaterArea(sweater);
  const need = yarnFromSwatch(area.area, weighed.swatch, weighed.ball, USUAL_MARGIN);
  const rough = [phrase('note: area is reckoned roughly')];
  return planOf(book, [phrase('summary: yarn')], [yarnPart(need, area.workings, rough)]);
}

function fromRest(book: Ledger): Outcome {
  const left = take(book, 'yarn_left', 'yarn weight')?.grams;
  const used = take(book, 'yarn_used', 'yarn weight')?.grams;
  const [rows, wanted] = [takeRows(book, 'yarn_used_rows'), takeRows(book, 'yarn_rows')];
  if (left === undefined || used === undefined || rows === undefined || wanted === undefined)
    return missing(book);
  const perRow = workOut(
    'yarn a row takes',
    'a / b',
    { a: quantity('yarn used', used, 'g'), b: quantity('rows', rows, 'rows') },
    { unit: 'g' },
  );
  const told = rowsLeftPart(rowsLeft('g', left, perRow.exact, KEPT_BACK), wanted, perRow);
  return planOf(book, [phrase(told.lasts ? 'summary: yarn lasts' : 'summary: yarn runs short')], [told.part]);
}
