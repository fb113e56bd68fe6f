/** The shoulder chapter: a slope by short rows or stepped bind-offs, for the back and for each front shoulder. */
import { type Outcome, type Phrase, phrase } from '../fit/plan.ts';
import { type ShoulderAsk, shoulderSlope } from '../fit/shoulder-slope.ts';
import { type ShoulderOn, shoulderPart } from '../fit/shoulder-steps.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { madeOf } from './figures.ts';
import { type Ledger, ledger, takeChoice, takeLength, takeStitches } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function shoulderResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const drop = takeLength(book, 'shoulder_drop');
  const gaps = drop === undefined ? {} : { drop: quantity('drop of the shoulder', drop, 'cm') };
  return outcomeOf(book, shoulderAltered(book), [phrase('summary: shoulder', gaps)]);
}

/** Shoulders are knitted back and forth, on a body in the round too. */
export function shoulderAltered(book: Ledger): Altered {
  const made = madeOf(takeChoice(book, 'body_made'));
  const shoulder = takeStitches(book, 'p_shoulder');
  const neck = takeStitches(book, 'p_back_neck');
  const drop = takeLength(book, 'shoulder_drop');
  const chosen = takeChoice(book, 'shoulder_how') === 'bind_offs' ? 'bind-offs' : 'short rows';
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
  const parts = [
    ...(neck === undefined ? [] : [shoulderPart(of({ sides: 'both', neck }), 'back')]),
    ...(['start', 'end'] as const).map((sides) => shoulderPart(of({ sides }), 'front')),
  ];
  const [first] = parts;
  const slopes = shoulderSlope(of({ sides: 'start' }));
  if (slopes.kind !== 'short-row shoulder' && slopes.kind !== 'stepped shoulder') return first;
  return joined(parts, how === chosen ? [] : [phrase('note: nothing to bind off from the neck down')]);
}

/** One part of all of them; the notes stand at the first step. */
function joined(parts: readonly ReturnType<typeof shoulderPart>[], notes: readonly Phrase[]): Altered {
  const steps = parts
    .flatMap((part) => ('kind' in part ? [] : part.steps))
    .map((step, i) => (i === 0 ? { ...step, notes: [...notes, ...step.notes] } : step));
  return { steps, finished: [], pieces: [] };
}
