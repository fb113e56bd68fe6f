/** The neck by short rows: a back that is raised, or, seen from the other side, a front that is lowered. */
import { neckWedgePart } from '../fit/neck-wedge-steps.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { rows } from '../fit/units.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { madeOf } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, takeStitches } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function backNeckResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const depth = takeLength(book, 'neck_raise');
  const gaps = depth === undefined ? {} : { depth: quantity('raise', depth, 'cm') };
  return outcomeOf(book, neckWedgeAltered(book, 'back neck raise'), [phrase('summary: back neck', gaps)]);
}

/** The wedge at the back of a yoke, or of a back that is knitted flat. */
export function neckWedgeAltered(book: Ledger, purpose: 'back neck raise' | 'lower front neck'): Altered {
  const made = madeOf(takeChoice(book, 'body_made'));
  const needle = takeStitches(book, 'neck_needle');
  const depth = takeLength(book, purpose === 'back neck raise' ? 'neck_raise' : 'neck_lower');
  const [base, middle] = [takeLength(book, 'neck_base'), takeLength(book, 'neck_middle')];
  const after = take(book, 'neck_after', 'rows')?.count;
  const gauge = made && ownGauge(book, made.worked);
  if (made === undefined || gauge === undefined || needle === undefined || depth === undefined)
    return undefined;
  if (base === undefined || middle === undefined || after === undefined) return undefined;
  const centre = workOut(
    'stitches from the edge to the centre of the back',
    'a / 2',
    { a: quantity('stitches of the back', needle, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const round = made.worked === 'round';
  return neckWedgePart(
    {
      ...made,
      purpose,
      depth,
      gauge: ratesOf(gauge),
      needle,
      centre: round ? 0 : centre.result.value,
      base,
      middle,
      after: rows(after),
    },
    gauge,
    round ? [] : [centre],
  );
}
