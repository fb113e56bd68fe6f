/** What passes between a person and the dialogue. Any transport can render it; nothing here knows of one. */
import type { Outcome } from '../fit/plan.ts';
import type { Sum } from '../fit/sum.ts';
import type { Dialect } from '../fit/terms.ts';
import type { Tally, Tried } from '../fit/tried.ts';
import type { Elsewhere } from './session.ts';

/**
 * What a person said. A button is the same as its text, typed; `to` is the question that the button stood under, so that
 * a press on an old question is not taken for an answer to the present one.
 */
export interface Message {
  readonly text: string;
  readonly to?: string;
}

/** A button: what it says, and what it means as typed text. */
export interface Button {
  readonly label: string;
  readonly send: string;
  /** A small print beside it: where a likely answer comes from. */
  readonly note?: string;
}

export interface Progress {
  /** Number of this question, counted from 1. */
  readonly number: number;
  /** About how many follow, as things stand. */
  readonly toGo: number;
}

export interface ReviewLine {
  readonly question: string;
  readonly label: string;
  readonly shown: string;
  /** True where a default stands in for an answer. */
  readonly assumed: boolean;
}

/** What became of her figure, how the sum is put together, or its whole working. */
export type SaidOfSum = Tried | { readonly kind: 'hint' | 'worked' };

export type Reply =
  /** A sentence or two. `heard`: what was understood. `refused`: the answer could not be used. */
  | { readonly reply: 'say'; readonly tone: 'heard' | 'note' | 'refused' | 'explain'; readonly text: string }
  | {
      readonly reply: 'ask';
      readonly question: string;
      readonly text: string;
      readonly progress: Progress;
      /** Choices or likely answers. */
      readonly buttons: readonly Button[];
      /** True where several choices may be picked together. */
      readonly several: boolean;
      readonly example: string;
      /** Commands that help here, as buttons: back, why, how, I don't know, pause. */
      readonly help: readonly Button[];
    }
  /** One reading to be confirmed, or one of several to be picked. */
  | {
      readonly reply: 'check';
      readonly question: string;
      readonly text: string;
      readonly buttons: readonly Button[];
    }
  | { readonly reply: 'review'; readonly lines: readonly ReviewLine[]; readonly buttons: readonly Button[] }
  /**
   * `workings`: how every figure came about is to be shown too. `key`: in place of the plan its answer key is to be shown,
   * which begins with these answers.
   */
  | {
      readonly reply: 'outcome';
      readonly outcome: Outcome;
      readonly workings?: true;
      readonly key?: readonly ReviewLine[];
      readonly buttons: readonly Button[];
    }
  /** `elsewhere`: where she wants to go on instead. */
  | {
      readonly reply: 'rest';
      readonly how: 'paused' | 'cancelled';
      readonly text: string;
      readonly elsewhere?: Elsewhere;
    }
  /** A sum of the plan that she works herself. `question` is what her figure answers. */
  | {
      readonly reply: 'sum';
      readonly question: string;
      readonly sum: Sum;
      /** The terms in which she reads. */
      readonly terms: Dialect;
      readonly progress: Progress;
      readonly example: string;
      readonly help: readonly Button[];
    }
  /** About a sum: what became of her figure, how it is put together, or its whole working. */
  | {
      readonly reply: 'sum said';
      readonly sum: Sum;
      readonly said: SaidOfSum;
      readonly terms: Dialect;
    }
  /** How it went with the sums, when they are at their end. */
  | { readonly reply: 'tally'; readonly tally: Tally; readonly buttons: readonly Button[] };
