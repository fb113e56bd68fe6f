/** Likely answers and stand-ins of the chapters on necks, armholes, sleeve tops and yokes. */
import { cm } from '../fit/units.ts';
import { valueGiven } from '../flow/answer.ts';
import { ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { fixedChoice, lengthOn, type Suggestions } from './suggest.ts';
import { countOf, lengthOf } from './upper-figures.ts';

/** `all` are the suggestions of every chapter, among which the stand-ins of other questions are looked up. */
export const topSuggestions = (all: () => Suggestions): Suggestions => ({
  'shaped neck': fixedChoice('shaped', 'a common way'),
  'armhole straight': fixedChoice('straight', 'a common way'),
  'right-side rows': fixedChoice('every_2', 'a common way'),
  'round neck': fixedChoice('round', 'a common way'),
  'neck of the pattern': (sheet) => {
    const book = ledger(sheet, all());
    const count = countOf(book, 'p_neck_stitches', 'back neck');
    const gauge = ownGauge(book, 'flat');
    if (count === undefined || gauge === undefined) return [];
    return [lengthOn(sheet, cm(count / gauge.stitches.perCm), "the pattern's")];
  },
  'back neck in front': (sheet) => {
    const back = valueGiven(sheet.answers, 'p_back_neck', 'stitches');
    return back === undefined ? [] : [{ value: back, from: 'as many as behind' }];
  },
  'three rounds': fixedChoice('three', 'a published scheme'),
  'set in': fixedChoice('set_in', 'a common way'),
  'armhole of the pattern': (sheet) => {
    const typed = valueGiven(sheet.answers, 'p_armhole', 'length');
    if (typed !== undefined) return [{ value: typed, from: "the pattern's" }];
    const depth = lengthOf(ledger(sheet, all()), 'p_armhole', (size) => size.finished['armhole depth']);
    return depth === undefined ? [] : [lengthOn(sheet, depth, "the pattern's")];
  },
  'neck depth of the pattern': (sheet) => {
    const typed = valueGiven(sheet.answers, 'p_neck_depth', 'length');
    if (typed !== undefined) return [{ value: typed, from: "the pattern's" }];
    const depth = lengthOf(ledger(sheet, all()), 'p_neck_depth', (size) => size.neckDepth);
    return depth === undefined ? [] : [lengthOn(sheet, depth, "the pattern's")];
  },
});
