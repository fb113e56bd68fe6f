/** What a deed led to, in the eyes of the person who did it. */
import type { Interaction, Outcome } from './interactions.ts';
import { type JsonObject, numberIn, textIn } from './json.ts';
import type { CallbackType } from './rules/callbacks.ts';
import { SeenMessage, SeenModal } from './seen.ts';

export interface Choice {
  readonly name: string;
  readonly value: string | number;
}

/** What a deed led to, as the person saw it. */
export type Answer =
  /** A new message: a reply, a deferred one once filled in, or the first message after a silent acknowledgement. */
  | { readonly kind: 'message'; readonly message: SeenMessage; readonly interaction: Interaction }
  /** The message she pressed on (or another of the app's) has changed. */
  | { readonly kind: 'update'; readonly message: SeenMessage; readonly interaction: Interaction }
  | { readonly kind: 'removed'; readonly message: SeenMessage; readonly interaction: Interaction }
  | { readonly kind: 'modal'; readonly modal: SeenModal; readonly interaction: Interaction }
  | { readonly kind: 'choices'; readonly choices: readonly Choice[]; readonly interaction: Interaction }
  /** Only with `until: 'acknowledged'`: the callback's type. */
  | { readonly kind: 'acknowledged'; readonly type: CallbackType; readonly interaction: Interaction };

export interface Manner {
  /** 'answered' (the default) waits past a deferral for what then shows; 'acknowledged' does not. */
  readonly until?: 'answered' | 'acknowledged';
  /** Press a control that is gone, disabled or vanished by now, as a client that lags behind does. */
  readonly evenIfGone?: boolean;
}

/** The app acknowledged, and then showed nothing for as long as people wait. */
export class NeverAnswered extends Error {}

export function seenOutcome(outcome: Outcome, interaction: Interaction): Answer {
  switch (outcome.kind) {
    case 'modal':
      return { kind: 'modal', modal: new SeenModal(outcome.modal, interaction), interaction };
    case 'choices':
      return { kind: 'choices', choices: outcome.choices.map(choice), interaction };
    default:
      return { kind: outcome.kind, message: new SeenMessage(outcome.message), interaction };
  }
}

function choice(given: JsonObject): Choice {
  return { name: textIn(given, 'name'), value: numberIn(given, 'value') ?? textIn(given, 'value') };
}

/** The message an answer brought; any other answer is not what the test meant. */
export function messageOf(answer: Answer): SeenMessage {
  if (answer.kind === 'message' || answer.kind === 'update') return answer.message;
  throw new Error(`A message was expected, the answer was: ${answer.kind}.`);
}

/** The form an answer opened; any other answer is not what the test meant. */
export function modalOf(answer: Answer): SeenModal {
  if (answer.kind === 'modal') return answer.modal;
  throw new Error(`A form was expected, the answer was: ${answer.kind}.`);
}
