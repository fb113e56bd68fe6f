/** The neck by short rows: a back that is raised, or, seen from the other side, a front that is lowered. */
import { neckWedgePart } from '../fit/neck-wedge-steps.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { heightLine, plain } from '../fit/steps.ts';
import { type Rows, rows, type Stitches } from '../fit/units.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type Made, madeOf } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, takeStitches, takeUsual } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function backNeckResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const depth = takeLength(book, 'neck_raise');
  const gaps = depth === undefined ? {} : { depth: quantity('raise', depth, 'cm') };
  return outcomeOf(book, neckWedgeAltered(book, 'back neck raise'), [phrase('summary: back neck', gaps)]);
}

export type NeckPurpose = 'back neck raise' | 'lower front neck';

/** The wedge at the back of a yoke, or of a back that is knitted flat. */
export function neckWedgeAltered(book: Ledger, purpose: NeckPurpose): Altered {
  const needle = takeStitches(book, 'neck_needle');
  const made = madeOf(takeChoice(book, 'body_made'));
  const after = take(book, 'neck_after', 'rows')?.count;
  if (made === undefined || needle === undefined || after === undefined) return undefined;
  return neckWedgeOn(book, purpose, { made, needle, after: rows(after) });
}

/** Where the wedge lies: how the piece is knitted there, its stitches, the rows between wedge and neck edge. */
export interface NeckWedgeOn {
  readonly made: Made;
  readonly needle: Stitches;
  readonly after: Rows;
}

/** On a flat back that is knitted up, rows that are left before the neck edge are worked after the wedge. */
export function neckWedgeOn(
  book: Ledger,
  purpose: NeckPurpose,
  { made, needle, after }: NeckWedgeOn,
): Altered {
  const depth = takeLength(book, purpose === 'back neck raise' ? 'neck_raise' : 'neck_lower');
  const [base, middle] = [
    takeUsual(book, 'neck_base', 'length')?.cm,
    takeUsual(book, 'neck_middle', 'length')?.cm,
  ];
  const gauge = ownGauge(book, made.worked);
  if (gauge === undefined || depth === undefined || base === undefined || middle === undefined)
    return undefined;
  const centre = workOut(
    'stitches from the edge to the centre of the back',
    'a / 2',
    { a: quantity('stitches of the back', needle, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const round = made.worked === 'round';
  const left = made.direction === 'up' && !round ? after - 1 : 0;
  const then = left > 0 ? [plain(left, needle, gauge)] : [];
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
      after,
    },
    gauge,
    [
      ...(round ? [] : [centre]),
      ...(left > 0 ? [heightLine('height of the plain rows after them', left, gauge)] : []),
    ],
    then,
  );
}
