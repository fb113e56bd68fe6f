/** The shoulder chapter: a slope by short rows or stepped bind-offs, for the back and for each front shoulder. */
import { type Outcome, type Phrase, phrase } from '../fit/plan.ts';
import { type ShoulderAsk, type ShoulderSlope, shoulderSlope } from '../fit/shoulder-slope.ts';
import { type ShoulderOn, shoulderPart } from '../fit/shoulder-steps.ts';
import type { Stitches } from '../fit/units.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type Ledger, ledger, takeChoice, takeLength } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { bodyMade, countOf } from './upper-figures.ts';

export function shoulderResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const drop = takeLength(book, 'shoulder_drop');
  const gaps = drop === undefined ? {} : { drop: quantity('drop of the shoulder', drop, 'cm') };
  return outcomeOf(book, shoulderAltered(book), [phrase('summary: shoulder', gaps)]);
}

/** Stitches of one shoulder, and of the back between both. */
export interface ShoulderCounts {
  readonly shoulder: Stitches | undefined;
  readonly neck: Stitches | undefined;
}

function shoulderCounts(book: Ledger): ShoulderCounts {
  return {
    shoulder: countOf(book, 'p_shoulder', 'shoulder'),
    neck: countOf(book, 'p_back_neck', 'back neck'),
  };
}

/** Shoulders are knitted back and forth, on a body in the round too. `counts`: those of a neck that was shaped anew. */
export function shoulderAltered(book: Ledger, counts: ShoulderCounts = shoulderCounts(book)): Altered {
  const found = slopeAsked(book, counts);
  if (found === undefined) return undefined;
  const { of, chosen } = found;
  const { neck } = counts;
  const parts = [
    ...(neck === undefined ? [] : [shoulderPart(of({ sides: 'both', neck }), 'back')]),
    ...(['start', 'end'] as const).map((sides) => shoulderPart(of({ sides }), 'front')),
  ];
  const [first] = parts;
  const slopes = shoulderSlope(of({ sides: 'start' }));
  if (slopes.kind !== 'short-row shoulder' && slopes.kind !== 'stepped shoulder') return first;
  const { how } = of({ sides: 'start' });
  return joined(parts, how === chosen ? [] : [phrase('note: nothing to bind off from the neck down')]);
}

/** The slope of one shoulder, where it can be made. */
export function slopeOf(book: Ledger, counts: ShoulderCounts): ShoulderSlope | undefined {
  const slope = slopeAsked(book, counts);
  const found = slope && shoulderSlope(slope.of({ sides: 'start' }));
  return found?.kind === 'short-row shoulder' || found?.kind === 'stepped shoulder' ? found : undefined;
}

function slopeAsked(book: Ledger, { shoulder }: ShoulderCounts) {
  const made = bodyMade(book);
  const drop = takeLength(book, 'shoulder_drop');
  const chosen: ShoulderAsk['how'] =
    takeChoice(book, 'shoulder_how') === 'bind_offs' ? 'bind-offs' : 'short rows';
  const gauge = made && ownGauge(book, 'flat');
  if (made === undefined || gauge === undefined || shoulder === undefined || drop === undefined)
    return undefined;
  const how = made.direction === 'down' ? 'short rows' : chosen;
  const of = (on: ShoulderOn): ShoulderAsk => ({
    how,
    direction: made.direction,
    drop,
    gauge: ratesOf(gauge),
    shoulder,
    on,
  });
  return { of, chosen };
}

/** One part of all of them; the notes stand at the first step. */
function joined(parts: readonly ReturnType<typeof shoulderPart>[], notes: readonly Phrase[]): Altered {
  const steps = parts
    .flatMap((part) => ('kind' in part ? [] : part.steps))
    .map((step, i) => (i === 0 ? { ...step, notes: [...notes, ...step.notes] } : step));
  return { steps, finished: [], pieces: [] };
}
