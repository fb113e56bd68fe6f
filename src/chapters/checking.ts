/** The checking chapter: a pattern's rows of figures, and what in them cannot all be right. */
import { checkingPart } from '../fit/checking-steps.ts';
import { contradictions } from '../fit/contradictions.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import type { Sheet } from '../flow/calculations.ts';
import { edgeOf } from './figures.ts';
import { ledger, take, takeChoice } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { patternOf } from './pattern-of.ts';
import { printedRows, type RowsAsked } from './printed-rows.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { JOINED } from './upper-figures.ts';

const ROWS: RowsAsked = {
  counts: [
    ['checking_bust', 'bust'],
    ['checking_cross_back', 'cross back'],
    ['checking_shoulder', 'shoulder'],
    ['checking_neck', 'back neck'],
    ['checking_upper_arm_stitches', 'upper arm'],
    ['checking_wrist_stitches', 'wrist'],
  ],
  lengths: [
    ['sizes_bust', 'bust'],
    ['checking_upper_arm', 'upper arm'],
    ['checking_sleeve_length', 'sleeve length'],
  ],
};

export function checkingResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const base = patternOf(book);
  const construction = JOINED[takeChoice(book, 'checking_joined') ?? ''];
  const repeat = take(book, 'checking_repeat', 'multiple');
  if (base === undefined || construction === undefined || repeat === undefined) return missing(book);
  const { sizes, names, uneven } = printedRows(book, ROWS);
  const edge = edgeOf(book, { worked: base.body });
  const found = contradictions({
    ...base,
    construction,
    edge: { body: edge, sleeves: edge },
    repeat: { multiple: repeat.multiple, plus: repeat.plus },
    sizes,
  });
  const summary = phrase(found.length === 0 ? 'summary: no contradiction' : 'summary: contradictions');
  return planOf(book, [summary], [checkingPart(found, { sizes: sizes.length, rows: names, uneven })]);
}
