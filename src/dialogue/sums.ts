/** Where the sums of a plan stand that a knitter works herself, as the log tells it. */
import type { Mistake } from '../fit/mistake.ts';
import type { Outcome } from '../fit/plan.ts';
import { type Sum, sumsOf } from '../fit/sum.ts';
import type { Tally } from '../fit/tried.ts';
import type { Progress } from './message.ts';
import type { LogLine, SumLine } from './session.ts';

/** A sum that waits for her figure; `id` is what her words answer. */
export interface OpenSum {
  readonly at: 'sum';
  readonly id: string;
  readonly sum: Sum;
  readonly progress: Progress;
}

/** What happened since she began; undefined where she has not, or has left them. Another answer makes another plan. */
export function sumLines(log: readonly LogLine[]): readonly SumLine[] | undefined {
  const last = log.findLastIndex(
    (l) => l.line === 'sums' || l.line === 'start over' || (l.line === 'answer' && l.question !== 'unit'),
  );
  const begun = log[last];
  if (begun?.line !== 'sums' || begun.did === 'stop') return undefined;
  return log.slice(last + 1).flatMap((l) => (l.line === 'sum' ? [l] : []));
}

/** The same ones for the same outcome. */
export function sumsIn(outcome: Outcome): readonly Sum[] {
  const known = SUMS.get(outcome) ?? (outcome.kind === 'plan' ? sumsOf(outcome.plan) : []);
  SUMS.set(outcome, known);
  return known;
}

/** Outcomes are never changed. */
const SUMS = new WeakMap<Outcome, readonly Sum[]>();

/** The first that she has not come past; undefined where there is none. */
export function openSum(log: readonly LogLine[], outcome: () => Outcome): OpenSum | undefined {
  const lines = sumLines(log);
  if (lines === undefined) return undefined;
  const past = new Set(lines.filter(({ came }) => came !== 'wrong').map((l) => l.sum));
  const sums = sumsIn(outcome());
  const open = sums.filter(({ line }) => !past.has(line.label));
  const [sum] = open;
  if (sum === undefined) return undefined;
  const number = sums.indexOf(sum) + 1;
  return { at: 'sum', id: `sum_${number}`, sum, progress: { number, toGo: open.length - 1 } };
}

export function tallyOf(lines: readonly SumLine[]): Tally {
  const count = (which: (l: SumLine) => boolean) => lines.filter(which).length;
  const wrong = new Set(lines.filter(({ came }) => came === 'wrong').map((l) => l.sum));
  return {
    atOnce: count(({ came, sum }) => came === 'right' && !wrong.has(sum)),
    later: count(({ came, sum }) => came === 'right' && wrong.has(sum)),
    shown: count(({ came }) => came === 'shown'),
    passed: count(({ came }) => came === 'passed'),
    slips: oftenest(lines.flatMap(({ slips }) => slips)),
  };
}

/** Each once; the first seen goes before another that came as often. */
function oftenest(slips: readonly Mistake[]): Mistake[] {
  const often = (slip: Mistake) => slips.filter((s) => s === slip).length;
  return [...new Set(slips)].sort((a, b) => often(b) - often(a));
}
