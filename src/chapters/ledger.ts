/** Reads answers for a calculation, and keeps account of what stood in for an unknown one and of what waits. */

import type { Count } from '../fit/gauge.ts';
import type { Assumption } from '../fit/plan.ts';
import { type Cm, formatLength, type Rows, rows, type Stitches, stitches } from '../fit/units.ts';
import type { AnswerKind, Value } from '../flow/answer.ts';
import type { Sheet, Suggestion } from '../flow/calculations.ts';

export interface Ledger {
  readonly sheet: Sheet;
  readonly standIn: (question: string) => Suggestion | undefined;
  readonly assumed: Assumption[];
  readonly waiting: string[];
}

export function ledger(
  sheet: Sheet,
  suggestions: Readonly<Record<string, (sheet: Sheet) => readonly Suggestion[]>>,
): Ledger {
  const standIn = (id: string): Suggestion | undefined => {
    const unknown = sheet.questions.get(id)?.unknown;
    return unknown !== undefined && 'use' in unknown ? suggestions[unknown.use]?.(sheet)[0] : undefined;
  };
  return { sheet, standIn, assumed: [], waiting: [] };
}

/**
 * The value of an answer. Where it is not known, its stand-in, entered as assumed; where there is none, undefined,
 * entered as waiting. A question that was never asked gives undefined and leaves no trace.
 */
export function take<K extends AnswerKind>(
  book: Ledger,
  id: string,
  kind: K,
): Extract<Value, { kind: K }> | undefined {
  const answer = book.sheet.answers[id];
  const question = book.sheet.questions.get(id);
  if (answer === undefined || question === undefined) return undefined;
  if (answer.given === 'value') return ofKind(answer.value, kind);
  if ('waits' in question.unknown) {
    note(book.waiting, `${question.short}: ${question.unknown.waits}`);
    return undefined;
  }
  return assumed(book, id, kind);
}

/** The same; and where the interview did not ask, since it can be worked out, what stands in. */
export function takeUsual<K extends AnswerKind>(
  book: Ledger,
  id: string,
  kind: K,
): Extract<Value, { kind: K }> | undefined {
  return book.sheet.answers[id] === undefined ? assumed(book, id, kind) : take(book, id, kind);
}

function assumed<K extends AnswerKind>(
  book: Ledger,
  id: string,
  kind: K,
): Extract<Value, { kind: K }> | undefined {
  const question = book.sheet.questions.get(id);
  if (question === undefined || 'waits' in question.unknown) return undefined;
  const stands = book.standIn(id);
  const value = stands === undefined ? undefined : ofKind(stands.value, kind);
  const used = stands === undefined ? 'nothing stands in' : `${shown(stands.value, book)} (${stands.from})`;
  if (!book.assumed.some((a) => a.question === question.short)) {
    book.assumed.push({ question: question.short, used, effect: question.unknown.effect });
  }
  return value;
}

/** Enters that a part of the plan waits for an answer, where nothing stood in for it. A question never asked is passed over. */
export function waitFor(book: Ledger, id: string, what: string): void {
  const question = book.sheet.questions.get(id);
  if (question !== undefined && book.sheet.answers[id] !== undefined)
    note(book.waiting, `${question.short}: ${what}`);
}

function ofKind<K extends AnswerKind>(value: Value, kind: K): Extract<Value, { kind: K }> | undefined {
  return value.kind === kind ? (value as Extract<Value, { kind: K }>) : undefined;
}

function note(list: string[], line: string): void {
  if (!list.includes(line)) list.push(line);
}

function shown(value: Value, { sheet }: Ledger): string {
  switch (value.kind) {
    case 'length':
    case 'ease':
      return formatLength(value.cm, sheet.unit);
    case 'stitches':
    case 'rows':
      return `${value.count} ${value.kind}`;
    case 'choice':
      return labelOf(value.choice, sheet);
    case 'choices':
      return value.choices.map((c) => labelOf(c, sheet)).join(', ');
    case 'size':
      return `size ${value.label}`;
    case 'gauge':
      return `${value.stitches.count} stitches over ${formatLength(value.stitches.span, value.stitches.unit)}`;
    case 'stitch gauge':
      return `${value.stitches.count} stitches over ${formatLength(value.stitches.span, value.stitches.unit)}`;
    case 'row gauge':
      return `${value.rows.count} rows over ${formatLength(value.rows.span, value.rows.unit)}`;
    case 'number':
      return String(value.count);
    case 'shaping line':
      return value.text;
    case 'sizes':
    case 'counts':
    case 'new count':
    case 'multiple':
    case 'yarn length':
    case 'yarn weight':
      return 'as printed';
    default:
      return value satisfies never;
  }
}

function labelOf(choice: string, { questions }: Sheet): string {
  for (const { choices } of questions.values()) {
    const found = choices?.find((c) => c.id === choice);
    if (found !== undefined) return found.label;
  }
  return choice;
}

export function takeLength(book: Ledger, id: string): Cm | undefined {
  return take(book, id, 'length')?.cm;
}

export function takeStitches(book: Ledger, id: string): Stitches | undefined {
  const count = take(book, id, 'stitches')?.count;
  return count === undefined ? undefined : stitches(count);
}

export function takeRows(book: Ledger, id: string): Rows | undefined {
  const count = take(book, id, 'rows')?.count;
  return count === undefined ? undefined : rows(count);
}

export function takeChoice(book: Ledger, id: string): string | undefined {
  return take(book, id, 'choice')?.choice;
}

/** The counts of the places that were counted, in order; places left out leave no gap. */
export function takeCounts(
  book: Ledger,
  ids: readonly string[],
  kind: 'stitch gauge' | 'row gauge',
): Count[] {
  return ids.flatMap((id) => {
    const value = take(book, id, kind);
    if (value === undefined) return [];
    return [value.kind === 'stitch gauge' ? value.stitches : value.rows];
  });
}
