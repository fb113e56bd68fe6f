/** The answer key of a plan: the answers it starts from, then every working once, numbered in the order of the steps. */
import type { Instruction, Outcome, Plan, Step } from '../fit/plan.ts';
import { stepTitle } from './pictures/words.ts';
import { instructionText, scheduleLines } from './plan-text.ts';
import type { Dialect } from './terms.ts';
import type { Voice } from './wording.ts';
import { wordWorking } from './workings-text.ts';

/** An answer as it was understood: 'Bust', '96 cm'. */
export interface StartingFigure {
  readonly label: string;
  readonly shown: string;
  /** True where a stand-in is used for it. */
  readonly assumed: boolean;
}

/** The workings of one step. A line that stands in an earlier part is named by its number. */
export interface KeyPart {
  readonly title: string;
  readonly lines: readonly { readonly number: number; readonly text: string }[];
  /** Numbers of lines above that this step uses too. */
  readonly also: readonly number[];
  /** Rows that are written out one by one, which are their own working. */
  readonly rows: readonly string[];
}

export interface AnswerKey {
  readonly from: readonly string[];
  readonly parts: readonly KeyPart[];
}

export const SHOWN_ROUNDED = 'Numbers are shown rounded; they were worked with the whole figures.';

export function answerKey(outcome: Outcome, answers: readonly StartingFigure[], dialect: Dialect): AnswerKey {
  const from = answers.map(({ label, shown, assumed }) => `${label}: ${shown}${assumed ? ' (assumed)' : ''}`);
  return {
    from,
    parts: outcome.kind === 'plan' ? keyParts(outcome.plan, dialect) : whyNot(outcome, dialect),
  };
}

/** Steps without any working have no part. */
export function keyParts(plan: Plan, dialect: Dialect): KeyPart[] {
  const view = { unit: plan.unit, dialect };
  const steps = plan.steps.map((step, i): Unnumbered => {
    const voice = { ...view, worked: step.worked };
    return {
      title: `${i + 1}. ${stepTitle(step, view)}`,
      workings: step.workings.map((w) => wordWorking(w, voice)),
      rows: rowsOf(step, voice),
    };
  });
  const workings = plan.finished.flatMap(({ worked, workings: lines }) =>
    lines.map((w) => wordWorking(w, { ...view, worked })),
  );
  return numbered([...steps, { title: 'The measurements', workings, rows: [] }]);
}

function whyNot({ workings, unit }: Extract<Outcome, { kind: 'cannot' }>, dialect: Dialect): KeyPart[] {
  const voice = { unit, dialect, worked: null };
  const lines = workings.map((w) => wordWorking(w, voice));
  return numbered([{ title: 'Why it cannot be planned', workings: lines, rows: [] }]);
}

interface Unnumbered {
  readonly title: string;
  readonly workings: readonly string[];
  readonly rows: readonly string[];
}

function numbered(parts: readonly Unnumbered[]): KeyPart[] {
  const numbers = new Map<string, number>();
  return parts.flatMap(({ title, workings, rows }) => {
    const also = [...new Set(workings)].flatMap((text) => numbers.get(text) ?? []).sort((a, b) => a - b);
    const lines = [...new Set(workings)]
      .filter((text) => !numbers.has(text))
      .map((text, i) => ({ number: numbers.size + 1 + i, text }));
    for (const { text, number } of lines) numbers.set(text, number);
    const empty = lines.length + also.length + rows.length === 0;
    return empty ? [] : [{ title, lines, also, rows }];
  });
}

function rowsOf(step: Step, voice: Voice): string[] {
  return step.instead.flatMap((instruction) => writtenOut(instruction, voice));
}

function writtenOut(instruction: Instruction, voice: Voice): string[] {
  switch (instruction.do) {
    case 'work row':
    case 'place buttonholes':
      return [instructionText(instruction, voice).join(' ')];
    case 'choose one':
      return instruction.ways.flatMap(({ instead }) => instead.flatMap((i) => writtenOut(i, voice)));
    default:
      return scheduleLines(instruction, voice);
  }
}

/** 'Lines 2 and 5 are used here too.' */
export function wordAlso(also: readonly number[]): string {
  const [first] = also;
  if (also.length < 2) return `Line ${first ?? ''} is used here too.`;
  return `Lines ${also.slice(0, -1).join(', ')} and ${also.at(-1)} are used here too.`;
}
