/** Holds a body answer against the tables, and puts the verdict into words. */
import { type Body, checkMeasurement, type Impossible, type Improbable } from '../fit/body.ts';
import { type Cm, formatLength, type LengthUnit, lengthIn } from '../fit/units.ts';
import type { Measurement, Table } from '../fit/words.ts';
import { TABLES } from '../fit/words.ts';
import { type Answer, type Answers, choiceOf, type Typed, valueGiven } from '../flow/answer.ts';
import type { Question } from '../flow/schema.ts';
import { exampleFor } from './example.ts';
import type { PendingOption } from './session.ts';

export type BodyVerdict =
  | { readonly kind: 'fine' }
  | { readonly kind: 'refused'; readonly text: string }
  | { readonly kind: 'ask back'; readonly text: string; readonly options: readonly PendingOption[] };

/** What is known of the body from the other answers in force. */
export function bodyKnown(answers: Answers, questions: ReadonlyMap<string, Question>, except: string): Body {
  const table = TABLES.find((t) => t === choiceOf(answers, 'table')) ?? ('women' satisfies Table);
  const known: { -readonly [M in Measurement]?: Cm } = {};
  for (const [id, { measurement }] of questions) {
    const length = valueGiven(answers, id, 'length');
    if (measurement !== undefined && length !== undefined && id !== except) known[measurement] = length.cm;
  }
  return { table, known };
}

export function checkBody(
  question: Question & { measurement: Measurement },
  typed: Typed,
  body: Body,
  unit: LengthUnit,
): BodyVerdict {
  const verdict = checkMeasurement(question.measurement, typed, body);
  switch (verdict.kind) {
    case 'fine':
      return { kind: 'fine' };
    case 'impossible':
      return { kind: 'refused', text: impossible(question, verdict, unit) };
    case 'improbable':
      return { kind: 'ask back', text: improbable(verdict, unit), options: [kept(typed, unit)] };
    case 'wrong unit': {
      const meant: Typed = { value: typed.value, unit: verdict.as };
      const stands = verdict.asTyped.kind === 'impossible' ? [] : [kept(typed, unit)];
      return {
        kind: 'ask back',
        text: `${formatLength(verdict.value, unit)} would be unusual here. Do you mean ${formatLength(verdict.meant, verdict.as)}, that is ${formatLength(verdict.meant, unit)}?`,
        options: [{ ...kept(meant, unit), answer: lengthAnswer(meant) }, ...stands],
      };
    }
    default:
      return verdict satisfies never;
  }
}

function impossible(question: Question, { value, low, high }: Impossible, unit: LengthUnit): string {
  return `${formatLength(value, unit)} cannot be right for this: ${lower(question.short)} lies between ${formatLength(low, unit)} and ${formatLength(high, unit)} in the published tables, widened. Please measure again and type it like this: ${exampleFor(question, unit)}`;
}

function improbable({ value, because, usual }: Improbable, unit: LengthUnit): string {
  const shown = formatLength(value, unit);
  const range = `${formatLength(usual.low, unit)} to ${formatLength(usual.high, unit)}`;
  return because.of === 'itself'
    ? `${shown} is unusual: most people have ${range} here. Bodies differ, so shall I keep ${shown}?`
    : `${shown} is unusual beside the ${because.beside.other} you gave: ${range} would be usual. Bodies differ, so shall I keep ${shown}?`;
}

function kept(typed: Typed, unit: LengthUnit): PendingOption {
  const length = lengthIn(typed.value, typed.unit);
  const other = unit === 'cm' ? 'in' : 'cm';
  const shown = formatLength(length, unit);
  return {
    label: shown,
    echo: `${shown} (${formatLength(length, other)})`,
    answer: { ...lengthAnswer(typed), confirmed: true },
  };
}

function lengthAnswer(typed: Typed): Extract<Answer, { given: 'value' }> {
  return { given: 'value', value: { kind: 'length', cm: lengthIn(typed.value, typed.unit), typed } };
}

function lower(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}
