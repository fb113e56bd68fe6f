/** A plan, or why there can be none, as plain text: short lines, words beside every symbol, nothing in colour alone. */
import type { Cannot, Finished, Instruction, Outcome, Plan, Step } from '../fit/plan.ts';
import { formatLength } from '../fit/units.ts';
import { wordSchedule, wordShaping } from './shaping-words.ts';
import type { Dialect } from './terms.ts';
import { type Voice, wordPhrase } from './wording.ts';
import { wordWorking } from './workings-text.ts';

export interface TextOptions {
  readonly dialect: Dialect;
  readonly workings: boolean;
}

/** The whole text, ending with a line break. */
export function outcomeText(outcome: Outcome, options: TextOptions): string {
  return outcome.kind === 'plan' ? planText(outcome.plan, options) : cannotText(outcome, options);
}

export function planText(plan: Plan, options: TextOptions): string {
  const voice = voiceOf(plan, options);
  const parts = [
    plan.summary.map((p) => wordPhrase(p, voice)).join(' '),
    ...plan.steps.map((step, i) => stepText(step, i + 1, { ...voice, worked: step.worked }, options)),
    finishedText(plan),
    listText(
      'Taken for granted',
      plan.assumed.map((a) => `${a.question}: ${a.used}. ${a.effect}`),
    ),
    listText('Still waiting', plan.waiting),
    listText(
      'Take care',
      plan.cautions.map((c) => wordPhrase(c, voice)),
    ),
  ];
  return `${parts.filter((p) => p !== '').join('\n\n')}\n`;
}

/** One step as it stands in the plan, so that a long plan can be split between steps. */
export function stepText(step: Step, number: number, voice: Voice, options: TextOptions): string {
  const piece = step.piece === 'all' ? '' : `${step.piece.slice(0, 1).toUpperCase()}${step.piece.slice(1)}: `;
  const lines = [
    `${number}. ${piece}${wordPhrase(step.where, voice)}`,
    ...(step.pattern === null ? [] : [`The pattern: ${wordPhrase(step.pattern, voice)}`]),
    ...(step.instead.length === 0
      ? []
      : [`You: ${step.instead.flatMap((i) => instructionText(i, voice)).join(' ')}`]),
    ...step.instead.flatMap((i) =>
      i.do === 'shape' && i.spaced.shaping.length > 0 ? [wordSchedule(i.spaced, voice.worked ?? 'flat')] : [],
    ),
    ...(step.check === null ? [] : [`Check: ${wordPhrase(step.check, voice)}`]),
    ...step.notes.map((n) => `Note: ${wordPhrase(n, voice)}`),
    ...(options.workings && step.workings.length > 0
      ? ['Workings:', ...unique(step.workings.map((w) => `- ${wordWorking(w, voice)}`))]
      : []),
  ];
  return lines.join('\n   ');
}

function instructionText(instruction: Instruction, voice: Voice): string[] {
  switch (instruction.do) {
    case 'say':
      return [wordPhrase(instruction.phrase, voice)];
    case 'cast on':
      return [`Cast on ${instruction.stitches} stitches.`];
    case 'work plain': {
      const word = voice.worked === 'round' ? 'round' : 'row';
      const length = formatLength(instruction.length, voice.unit);
      return [
        `Work ${instruction.rows} ${word}${instruction.rows === 1 ? '' : 's'} plain (${length}) on ${instruction.stitches} stitches.`,
      ];
    }
    case 'shape':
      return [wordShaping(instruction.spaced, instruction.at, voice.worked ?? 'flat')];
    default:
      return instruction satisfies never;
  }
}

function finishedText(plan: Plan): string {
  return listText(
    'It will measure',
    plan.finished.map((f) => finishedLine(f, plan)),
  );
}

function finishedLine({ name, pattern, range }: Finished, { unit }: Plan): string {
  const sure =
    range.low === range.high
      ? ''
      : ` (between ${formatLength(range.low, unit)} and ${formatLength(range.high, unit)})`;
  const before = pattern === null ? '' : `; the pattern's counts give ${formatLength(pattern, unit)}`;
  return `${name}: ${formatLength(range.expected, unit)}${sure}${before}`;
}

export function cannotText(cannot: Cannot, options: TextOptions): string {
  const voice: Voice = { unit: cannot.unit, worked: null, dialect: options.dialect };
  return `${[
    'This cannot be planned.',
    ...cannot.because.map((p) => `Because: ${wordPhrase(p, voice)}`),
    ...cannot.instead.map((p) => `What you can do: ${wordPhrase(p, voice)}`),
  ].join('\n')}\n`;
}

function listText(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [`${title}:`, ...lines.map((l) => `- ${l}`)].join('\n');
}

function voiceOf(plan: Plan, options: TextOptions): Voice {
  return { unit: plan.unit, worked: null, dialect: options.dialect };
}

function unique(lines: readonly string[]): string[] {
  return [...new Set(lines)];
}
