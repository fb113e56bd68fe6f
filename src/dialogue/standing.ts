/** Where an interview stands: what replaying its log through the flow's machine gives. */
import { transition } from 'xstate';
import type { Answers } from '../flow/answer.ts';
import type { CompiledFlow, Stop } from '../flow/compile.ts';
import { answersOf, type Session } from './session.ts';
import { type OpenSum, openSum } from './sums.ts';

export type Standing =
  | { readonly at: 'question'; readonly stop: Stop }
  | { readonly at: 'review' }
  | OpenSum
  | { readonly at: 'outcome' }
  | { readonly at: 'cancelled' };

/** The same object for the same session and flow: sessions are never changed, only replaced. */
export function standing(flow: CompiledFlow, session: Session): Standing {
  const known = STANDING.get(session);
  if (known?.flow === flow) return known.standing;
  const found = findStanding(flow, session);
  STANDING.set(session, { flow, standing: found });
  return found;
}

const STANDING = new WeakMap<Session, { readonly flow: CompiledFlow; readonly standing: Standing }>();

function findStanding(flow: CompiledFlow, { log, place }: Session): Standing {
  if (place.rest === 'cancelled') return { at: 'cancelled' };
  const replayed = flow.replayed(answersOf(log));
  const revisited =
    place.revisiting === null
      ? replayed
      : transition(flow.machine, replayed, { type: 'REVISIT', question: place.revisiting })[0];
  const state =
    place.confirmed && revisited.value === 'review'
      ? transition(flow.machine, revisited, { type: 'CONFIRM' })[0]
      : revisited;
  const stop = flow.stops.find((s) => s.state === state.value);
  if (stop !== undefined) return { at: 'question', stop };
  if (state.value === 'review') return { at: 'review' };
  return openSum(log, () => flow.outcome(answersOf(log))) ?? { at: 'outcome' };
}

/** The name of what she looks at, under which its buttons are sent: a question, a sum, the review, the outcome. */
export function screenOf(now: Standing): string {
  if (now.at === 'question') return now.stop.id;
  return now.at === 'sum' ? now.id : now.at;
}

/** The questions that are asked as things stand, each once, in order. */
export function askedStops(flow: CompiledFlow, answers: Answers): Stop[] {
  const seen = new Set<string>();
  return flow.stops.filter((stop) => {
    if (seen.has(stop.id) || !flow.asks(stop, answers)) return false;
    seen.add(stop.id);
    return true;
  });
}
