/** The stitches for a width, from a counted swatch and the stitch pattern's multiple. */
import { rateFrom } from '../fit/gauge.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { stitchesPart } from '../fit/stitches-steps.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import { ledger, take, takeLength, takeStitches } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function stitchesResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const counted = take(book, 'swatch_stitches', 'stitch gauge');
  const width = takeLength(book, 'stitches_width');
  const multiple = take(book, 'stitches_multiple', 'multiple');
  const edge = takeStitches(book, 'stitches_edge');
  if (counted === undefined || width === undefined || multiple === undefined || edge === undefined)
    return missing(book);
  const rate = rateFrom([counted.stitches]);
  const wanted = quantity('width at the cast-on', width, 'cm');
  const rule = { multiple: multiple.multiple, plus: multiple.plus, edge };
  return planOf(book, [phrase('summary: stitches', { width: wanted })], [stitchesPart(width, rate, rule)]);
}
