/** The hem chapter: how much lower the back is to hang, and across how much of it. */

import { hemPart } from '../fit/hem-steps.ts';
import type { HemAsk } from '../fit/hem-wedge.ts';
import { type Outcome, type Part, phrase } from '../fit/plan.ts';
import { type Cm, rows, type Stitches, stitches } from '../fit/units.ts';
import type { Impossible } from '../fit/ways.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type Made, sampleSize } from './figures.ts';
import { type Ledger, ledger, takeChoice, takeLength, takeUsual, waitFor } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { bodyMade, countOf } from './upper-figures.ts';

export function hemResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const depth = takeLength(book, 'hem_drop');
  const gaps = depth === undefined ? {} : { depth: quantity('drop of the hem', depth, 'cm') };
  return outcomeOf(book, hemAltered(book), [phrase('summary: hem', gaps)]);
}

export function hemAltered(book: Ledger): Altered {
  const needle = countOf(book, 'p_hem_stitches', 'body cast-on');
  if (needle === undefined) waitFor(book, 'p_hem_stitches', 'The hem waits for it.');
  const on = hemOn(book, 'alone');
  return needle === undefined ? undefined : on?.(needle);
}

/** The short rows of the hem on so many stitches; undefined where figures are missing. */
export function hemOn(
  book: Ledger,
  lies: 'alone' | 'in the body',
): ((needle: Stitches) => Part | Impossible) | undefined {
  const made = bodyMade(book);
  const [depth, deep] = [takeLength(book, 'hem_drop'), edgingOf(book)];
  const middle = takeUsual(book, 'hem_middle', 'length')?.cm;
  const gauge = made && ownGauge(book, made.worked);
  if (made === undefined || gauge === undefined) return undefined;
  if (depth === undefined || deep === undefined || middle === undefined) return undefined;
  const edging = workOut(
    'rows of the edging',
    'a * b',
    { a: quantity('edging', deep, 'cm'), b: quantity('rows', gauge.rows.perCm, 'rows/cm') },
    { unit: 'rows', rounding: { to: made.worked === 'flat' ? 'even' : 'whole' } },
  );
  const round = takeChoice(book, 'hem_over') === 'all_round';
  return (needle) => {
    const span = spanOf(made, needle, round);
    const ask: HemAsk = {
      ...made,
      depth,
      gauge: ratesOf(gauge),
      edging: rows(edging.result.value),
      needle,
      over: span.over,
      middle,
    };
    return hemPart(ask, gauge, [edging, ...span.workings], lies);
  };
}

function edgingOf(book: Ledger): Cm | undefined {
  return sampleSize(book)?.pattern.edging.hem ?? takeLength(book, 'p_hem');
}

/** In the round the back is half of all, counted from the side where it begins; an odd stitch goes to the front. */
function spanOf(
  { worked }: Made,
  needle: Stitches,
  round: boolean,
): { over: HemAsk['over']; workings: WorkingLine[] } {
  if (worked === 'flat')
    return { over: { across: 'between the sides', start: 0, stitches: needle }, workings: [] };
  if (round) return { over: { across: 'all round', deepest: 0 }, workings: [] };
  const half = workOut(
    'stitches of the back',
    'a / 2',
    { a: quantity('stitches all round', needle, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const over = { across: 'between the sides', start: 0, stitches: stitches(half.result.value) } as const;
  return { over, workings: [half] };
}
