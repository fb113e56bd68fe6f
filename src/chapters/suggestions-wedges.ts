/** Likely answers and stand-ins of the chapters on written rows and short rows. */
import { cm } from '../fit/units.ts';
import { valueGiven } from '../flow/answer.ts';
import { bustFigures, moreForTheFront } from './bust-figures.ts';
import { type Ledger, ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { spreadCounts } from './spread-counts.ts';
import { fixedChoice, fixedLength, lengthOn, type Suggest, type Suggestions, table } from './suggest.ts';
import { bodyMade, constructionOf, countOf, neckNeedle } from './upper-figures.ts';

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
  'third of the back': shareOf(all, backAtTheHem, 1 / 3, 'a third of the back'),
  'third of the needle': shareOf(all, atTheNeck, 1 / 3, 'a third of the stitches'),
  'two thirds of the needle': shareOf(all, atTheNeck, 2 / 3, 'two thirds of the stitches'),
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

/** The width of a share of so many stitches. */
function shareOf(
  all: () => Suggestions,
  count: (book: Ledger) => number | undefined,
  share: number,
  from: string,
): Suggest {
  return (sheet) => {
    const book = ledger(sheet, all());
    const made = bodyMade(book);
    const gauge = made && ownGauge(book, made.worked);
    const whole = count(book);
    if (gauge === undefined || whole === undefined) return [];
    return [lengthOn(sheet, cm((whole * share) / gauge.stitches.perCm), from)];
  };
}

/** In the round the back is half of all. */
function backAtTheHem(book: Ledger): number | undefined {
  const hem = countOf(book, 'p_hem_stitches', 'body cast-on');
  return hem === undefined || bodyMade(book)?.worked === 'flat' ? hem : hem / 2;
}

/** The back alone where sleeves are sewn to it, else all round. */
function atTheNeck(book: Ledger): number | undefined {
  const asked = valueGiven(book.sheet.answers, 'neck_needle', 'stitches')?.count;
  const construction = constructionOf(book);
  if (asked !== undefined) return asked;
  if (construction === 'raglan' || construction === 'round yoke') return neckNeedle(book, construction);
  return countOf(book, 'p_cross', 'cross back');
}
