/** The front-neck chapter: shaped on the front, or lowered by short rows at the back of a yoke. */
import type { NeckAsk } from '../fit/neck.ts';
import { neckPart, type PatternNeck } from '../fit/neck-steps.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { type Cm, cm } from '../fit/units.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type Ledger, ledger, takeChoice, takeLength, waitFor } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { UNKNOWN_BESIDE } from './neck-beside.ts';
import { neckWedgeAltered } from './neck-wedges.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { countOf, lengthOf } from './upper-figures.ts';

export function frontNeckResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const gaps = (lengths: Readonly<Record<string, Cm | undefined>>) =>
    Object.fromEntries(
      Object.entries(lengths).flatMap(([name, value]) =>
        value === undefined ? [] : [[name, quantity(name, value, 'cm')]],
      ),
    );
  if (takeChoice(book, 'neck_how') === 'yoke') {
    const lower = gaps({ depth: takeLength(book, 'neck_lower') });
    return outcomeOf(book, neckWedgeAltered(book, 'lower front neck'), [
      phrase('summary: front neck by short rows', lower),
    ]);
  }
  const wanted = gaps({ width: takeLength(book, 'neck_width'), depth: takeLength(book, 'neck_depth') });
  return outcomeOf(book, shapedNeck(book), [phrase('summary: front neck', wanted)]);
}

/** The front is knitted back and forth where its neck is shaped. */
function shapedNeck(book: Ledger): Altered {
  const asked = neckAsked(book);
  return asked && neckPart(asked.ask, asked.pattern, null, UNKNOWN_BESIDE);
}

export interface NeckAsked {
  readonly ask: NeckAsk;
  readonly pattern: PatternNeck;
}

/** Undefined where figures are missing; they are entered as waiting. */
export function neckAsked(book: Ledger): NeckAsked | undefined {
  const across = countOf(book, 'p_cross', 'cross back');
  const [width, depth] = [takeLength(book, 'neck_width'), takeLength(book, 'neck_depth')];
  const theirs = {
    count: countOf(book, 'p_neck_stitches', 'back neck'),
    depth: lengthOf(book, 'p_neck_depth', (size) => size.neckDepth),
  };
  const gauge = ownGauge(book, 'flat');
  if (width === undefined) waitFor(book, 'neck_width', 'The neck waits for it.');
  if (depth === undefined) waitFor(book, 'neck_depth', 'The neck waits for it.');
  if (across === undefined || width === undefined || depth === undefined || gauge === undefined)
    return undefined;
  const pattern =
    theirs.count === undefined || theirs.depth === undefined
      ? null
      : { width: cm(theirs.count / gauge.stitches.perCm), depth: theirs.depth };
  const shape = takeChoice(book, 'neck_shape') === 'v' ? 'V' : 'round';
  return { ask: { stitches: across, width, depth, gauge, shape }, pattern };
}
