/** The table of names that a flow may use. `main` fills it; `flow` only checks names and calls. */
import type { Outcome } from '../fit/plan.ts';
import type { LengthUnit } from '../fit/units.ts';
import type { Answers, Value } from './answer.ts';
import type { Question } from './schema.ts';

/** A likely answer, with where it comes from in a few words: 'the industry's table for this bust'. */
export interface Suggestion {
  readonly value: Value;
  readonly from: string;
}

/** What a calculation may look at. */
export interface Sheet {
  readonly answers: Answers;
  readonly questions: ReadonlyMap<string, Question>;
  readonly unit: LengthUnit;
  /** The flow that asks. */
  readonly flow: string;
}

export interface Calculations {
  /** From the answers to a plan, or to why there can be none. */
  readonly results: Readonly<Record<string, (sheet: Sheet) => Outcome>>;
  /** Likely answers, best first; the first is also the default for 'I don't know'. */
  readonly suggestions: Readonly<Record<string, (sheet: Sheet) => readonly Suggestion[]>>;
}

/** The unit that the person reads; centimetres until she has said. */
export function unitOf(answers: Answers): LengthUnit {
  const unit = answers.unit;
  return unit?.given === 'value' && unit.value.kind === 'choice' && unit.value.choice === 'in' ? 'in' : 'cm';
}
