/** What a person has answered: values as data, ready to be stored and replayed. */
import type { Count } from '../fit/gauge.ts';
import type { Cm, LengthUnit } from '../fit/units.ts';

/** Kinds of answer that a question may ask for. */
export const ANSWER_KINDS = [
  'choice',
  'choices',
  'length',
  'ease',
  'stitches',
  'rows',
  'stitch gauge',
  'row gauge',
  'gauge',
  'sizes',
  'size',
  'new count',
  'multiple',
  'number',
  'counts',
  'shaping line',
  'yarn length',
  'yarn weight',
] as const;
export type AnswerKind = (typeof ANSWER_KINDS)[number];

/** The figure and unit as they were typed, for showing them back. */
export interface Typed {
  readonly value: number;
  readonly unit: LengthUnit;
}

/** A count of stitches to come: itself, or by how many it changes, fewer below nought. */
export interface NewCount {
  readonly how: 'to' | 'by';
  readonly count: number;
}

export type Value =
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'choices'; readonly choices: readonly string[] }
  | { readonly kind: 'length'; readonly cm: Cm; readonly typed: Typed }
  | { readonly kind: 'ease'; readonly cm: Cm; readonly typed: Typed }
  | { readonly kind: 'stitches'; readonly count: number }
  | { readonly kind: 'rows'; readonly count: number }
  | { readonly kind: 'stitch gauge'; readonly stitches: Count }
  | { readonly kind: 'row gauge'; readonly rows: Count }
  | { readonly kind: 'gauge'; readonly stitches: Count; readonly rows: Count }
  /** A row of finished measurements, one a size; null where the pattern has no figure for a size. */
  | {
      readonly kind: 'sizes';
      readonly lengths: readonly (Cm | null)[];
      readonly unit: LengthUnit;
      readonly labels: readonly string[] | null;
    }
  /** One of the pattern's sizes, by its label. */
  | { readonly kind: 'size'; readonly label: string }
  | ({ readonly kind: 'new count' } & NewCount)
  | { readonly kind: 'multiple'; readonly multiple: number; readonly plus: number }
  /** A whole number of anything. */
  | { readonly kind: 'number'; readonly count: number }
  /** A row of counts, one a size, or all of one where the question says so; null where the pattern has no figure for a size. */
  | {
      readonly kind: 'counts';
      readonly counts: readonly (number | null)[];
      readonly labels: readonly string[] | null;
    }
  /** A shaping line as the pattern prints it, of one size. */
  | { readonly kind: 'shaping line'; readonly text: string }
  | { readonly kind: 'yarn length'; readonly metres: number; readonly typed: 'm' | 'yd' }
  | { readonly kind: 'yarn weight'; readonly grams: number; readonly typed: 'g' | 'oz' };

/** `unknown`: 'I don't know'; a default is used where one exists. `skipped`: left out, and treated as not answered. */
export type Answer =
  | {
      readonly given: 'value';
      readonly value: Value;
      /** Kept although unusual, on the person's word. */
      readonly confirmed?: true;
      /** The pattern's size that she reads, where the figure is one of a pattern in several sizes. */
      readonly size?: string;
    }
  | { readonly given: 'unknown' }
  | { readonly given: 'skipped' };

/** Answers by question id. */
export type Answers = Readonly<Record<string, Answer>>;

/** The value of an answer, where it is one of this kind. */
export function valueGiven<K extends AnswerKind>(
  answers: Answers,
  question: string,
  kind: K,
): Extract<Value, { kind: K }> | undefined {
  const answer = answers[question];
  if (answer?.given !== 'value' || answer.value.kind !== kind) return undefined;
  return answer.value as Extract<Value, { kind: K }>;
}

export function choiceOf(answers: Answers, question: string): string | undefined {
  return valueGiven(answers, question, 'choice')?.choice;
}
