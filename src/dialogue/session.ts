/** An interview as it is stored: its flow and its log. Where it stands is what replaying the log gives. */
import type { Mistake } from '../fit/mistake.ts';
import type { Dialect } from '../fit/terms.ts';
import type { Cm } from '../fit/units.ts';
import type { Measurement } from '../fit/words.ts';
import type { Answer, Answers, Typed } from '../flow/answer.ts';
import type { Earlier } from './earlier.ts';

/** One line of the log. The log only ever grows; a changed answer is a further line. */
export type LogLine =
  | {
      readonly line: 'answer';
      readonly question: string;
      readonly answer: Answer;
      /** As it was typed. */
      readonly typed: string;
      /** Milliseconds since 1970. */
      readonly at: number;
    }
  | { readonly line: 'start over'; readonly at: number }
  /** She began to work the sums of the plan herself, or left them. */
  | { readonly line: 'sums'; readonly did: 'begin' | 'stop'; readonly at: number }
  | SumLine;

/** A figure that she tried for a sum of the plan, or how she went past it. */
export interface SumLine {
  readonly line: 'sum';
  /** What is worked out, as the workings call it. */
  readonly sum: string;
  readonly came: 'right' | 'wrong' | 'shown' | 'passed';
  /** What a wrong figure came of, where that is known. */
  readonly slips: readonly Mistake[];
  /** As it was typed. */
  readonly typed: string;
  readonly at: number;
}

/** A reading that waits for a yes, or for one of several options. */
export interface Pending {
  readonly question: string;
  /** The question that is put back. */
  readonly text: string;
  /** True where a yes means the first option; else one of them is to be picked. */
  readonly yesNo: boolean;
  readonly options: readonly PendingOption[];
}

export interface PendingOption {
  /** The words of the button, and what it means. */
  readonly label: string;
  readonly answer: Answer;
  readonly echo: string;
}

/** What is not in the log: it may be lost without losing an answer. */
export interface Place {
  /** A question that is asked again although it has an answer. */
  readonly revisiting: string | null;
  readonly pending: Pending | null;
  /** Set when she has read the review and asked for the plan. */
  readonly confirmed: boolean;
  readonly rest: 'none' | 'paused' | 'cancelled';
  /** Another chapter that is offered to her, until she says yes or no or anything else. */
  readonly elsewhere?: Elsewhere;
  /** Answers to one question that could not be taken, one after the other. */
  readonly refused?: { readonly question: string; readonly times: number };
}

/** A chapter by its flow; null: one that is still to be chosen. */
export interface Elsewhere {
  readonly flow: string | null;
}

export const AT_THE_START: Place = { revisiting: null, pending: null, confirmed: false, rest: 'none' };

export interface Session {
  readonly id: string;
  readonly owner: string;
  readonly flow: string;
  /** Version of the flow's file when the interview began. */
  readonly version: number;
  readonly log: readonly LogLine[];
  readonly place: Place;
  /** An exercise on figures that are not hers: none of them is kept as hers. */
  readonly practice?: true;
  /** What the owner measured in earlier interviews, by the name of the measurement: offered again with its date. */
  readonly measured?: ReadonlyMap<Measurement, Measured>;
  /** The terms in which she reads; US terms where nothing else is known. */
  readonly terms?: Dialect;
  /** What can be taken along from the owner's other interviews; worked out when it is asked for. */
  readonly earlier?: () => readonly Earlier[];
}

/** A body measurement as it was last given; `at`: milliseconds since 1970. */
export interface Measured {
  readonly cm: Cm;
  readonly typed: Typed;
  readonly at: number;
}

/** The last answer to each question since the last start over; the same object for the same log. */
export function answersOf(log: readonly LogLine[]): Answers {
  const known = ANSWERS.get(log);
  if (known !== undefined) return known;
  const answers: Record<string, Answer> = {};
  for (const line of log.slice(log.findLastIndex((l) => l.line === 'start over') + 1)) {
    if (line.line === 'answer') answers[line.question] = line.answer;
  }
  ANSWERS.set(log, answers);
  return answers;
}

/** Logs are never changed, only replaced; what rests on the answers can be kept beside them. */
const ANSWERS = new WeakMap<readonly LogLine[], Answers>();
