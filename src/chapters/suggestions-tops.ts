/** Likely answers and stand-ins of the chapters on necks, armholes, sleeve tops and yokes. */
import { cm } from '../fit/units.ts';
import { valueGiven } from '../flow/answer.ts';
import { ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { fixedChoice, lengthOn, type Suggestions } from './suggest.ts';

/** `all` are the suggestions of every chapter, among which the stand-ins of other questions are looked up. */
export const topSuggestions = (all: () => Suggestions): Suggestions => ({
  'shaped neck': fixedChoice('shaped', 'a common way'),
  'neck of the pattern': (sheet) => {
    const count = valueGiven(sheet.answers, 'p_neck_stitches', 'stitches')?.count;
    const gauge = ownGauge(ledger(sheet, all()), 'flat');
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
    const depth = valueGiven(sheet.answers, 'p_armhole', 'length');
    return depth === undefined ? [] : [{ value: depth, from: "the pattern's" }];
  },
  'neck depth of the pattern': (sheet) => {
    const depth = valueGiven(sheet.answers, 'p_neck_depth', 'length');
    return depth === undefined ? [] : [{ value: depth, from: "the pattern's" }];
  },
});
