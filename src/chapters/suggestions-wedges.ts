/** Likely answers and stand-ins of the chapters on written rows and short rows. */
import { cm } from '../fit/units.ts';
import { valueGiven } from '../flow/answer.ts';
import type { Sheet } from '../flow/calculations.ts';
import { bustFigures, moreForTheFront } from './bust-figures.ts';
import { madeOf } from './figures.ts';
import { ledger, takeChoice } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { spreadCounts } from './spread-counts.ts';
import { fixedChoice, fixedLength, lengthOn, type Suggest, type Suggestions, table } from './suggest.ts';

/** `all` are the suggestions of every chapter, among which the stand-ins of other questions are looked up. */
export const wedgeSuggestions = (all: () => Suggestions): Suggestions => ({
  'flat row': fixedChoice('flat', 'to be on the safe side'),
  'usual change': (sheet) => {
    const [before, after] = spreadCounts(ledger(sheet, all()));
    if (before === undefined || after === undefined) return [];
    return [{ value: { kind: 'choice', choice: after < before ? 'k2tog' : 'm1' }, from: 'the usual way' }];
  },
  // Shares and amounts below: common practice of the trade, from memory.
  'an inch': fixedLength(2.5, 1, 'a common amount'),
  'two inches': fixedLength(5, 2, 'a common amount'),
  'hem across the back': fixedChoice('back', 'the usual way'),
  'third of the back': shareOf(all, 'p_hem_stitches', 1 / 3, 'a third of the back'),
  'third of the needle': shareOf(all, 'neck_needle', 1 / 3, 'a third of the stitches', 'all'),
  'two thirds of the needle': shareOf(all, 'neck_needle', 2 / 3, 'two thirds of the stitches', 'all'),
  'shoulder by short rows': fixedChoice('short_rows', 'the smoother way'),
  'usual bust span': table('bust span'),
  'plain fabric': fixedChoice('plain', 'to be on the safe side'),
  'shaping advised': (sheet) => {
    const suits = bustFigures(ledger(sheet, all()))?.advice.suits;
    return suits === undefined
      ? []
      : [{ value: { kind: 'choice', choice: suits.replace(' ', '_') }, from: 'suits your figures' }];
  },
  'more for the front': (sheet) => {
    const [bust, upper] = ['bust', 'upper_bust'].map((id) => valueGiven(sheet.answers, id, 'length')?.cm);
    const more = bust === undefined || upper === undefined ? 0 : moreForTheFront(bust, upper);
    return more < LEAST_MORE ? [] : [lengthOn(sheet, cm(more), 'your bust beyond what patterns allow')];
  },
});

/** Less than this more for the front is lost in any knitted fabric. */
const LEAST_MORE = 0.5;

/** The width of a share of a count; of half a count in the round where the back alone is meant. */
function shareOf(
  all: () => Suggestions,
  question: string,
  share: number,
  from: string,
  of: 'back' | 'all' = 'back',
): Suggest {
  return (sheet) => {
    const book = ledger(sheet, all());
    const made = madeOf(takeChoice(book, 'body_made'));
    const gauge = made && ownGauge(book, made.worked);
    const count = countOf(sheet, question);
    if (gauge === undefined || count === undefined) return [];
    const whole = of === 'back' && gauge.worked === 'round' ? count / 2 : count;
    return [lengthOn(sheet, cm((whole * share) / gauge.stitches.perCm), from)];
  };
}

function countOf(sheet: Sheet, question: string): number | undefined {
  return valueGiven(sheet.answers, question, 'stitches')?.count;
}
