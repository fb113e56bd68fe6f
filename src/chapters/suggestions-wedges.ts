/** Likely answers and stand-ins of the chapters on written rows and short rows. */
import { cm } from '../fit/units.ts';
import { choiceOf, valueGiven } from '../flow/answer.ts';
import type { Sheet } from '../flow/calculations.ts';
import { madeOf } from './figures.ts';
import { ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { fixedChoice, fixedLength, lengthOn, type Suggest, table } from './suggest.ts';

export const WEDGE_SUGGESTIONS: Readonly<Record<string, Suggest>> = {
  'flat row': fixedChoice('flat', 'to be on the safe side'),
  'usual change': (sheet) => {
    const [before, after] = ['spread_from', 'spread_to'].map((id) => countOf(sheet, id));
    if (before === undefined || after === undefined) return [];
    return [{ value: { kind: 'choice', choice: after < before ? 'k2tog' : 'm1' }, from: 'the usual way' }];
  },
  // Shares and amounts below: common practice of the trade, from memory.
  'an inch': fixedLength(2.5, 1, 'a common amount'),
  'two inches': fixedLength(5, 2, 'a common amount'),
  'hem across the back': fixedChoice('back', 'the usual way'),
  'third of the back': shareOf('p_hem_stitches', 1 / 3, 'a third of the back'),
  'third of the needle': shareOf('neck_needle', 1 / 3, 'a third of the stitches', 'all'),
  'two thirds of the needle': shareOf('neck_needle', 2 / 3, 'two thirds of the stitches', 'all'),
  'shoulder by short rows': fixedChoice('short_rows', 'the smoother way'),
  'usual bust span': table('bust span'),
};

/** The width of a share of a count; of half a count in the round where the back alone is meant. */
function shareOf(question: string, share: number, from: string, of: 'back' | 'all' = 'back'): Suggest {
  return (sheet) => {
    const made = madeOf(choiceOf(sheet.answers, 'body_made'));
    const gauge = made && ownGauge(ledger(sheet, {}), made.worked);
    const count = countOf(sheet, question);
    if (gauge === undefined || count === undefined) return [];
    const whole = of === 'back' && gauge.worked === 'round' ? count / 2 : count;
    return [lengthOn(sheet, cm((whole * share) / gauge.stitches.perCm), from)];
  };
}

function countOf(sheet: Sheet, question: string): number | undefined {
  return valueGiven(sheet.answers, question, 'stitches')?.count;
}
