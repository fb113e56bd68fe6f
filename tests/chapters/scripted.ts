/** Interviews answered from a script, and what their plans state. */
import { expect } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { inUnit } from '../../src/fit/in-unit.ts';
import type { Cannot, Instruction, Outcome, Plan, Step } from '../../src/fit/plan.ts';
import { parsePlan } from '../../src/fit/plan-schema.ts';
import type { Segment } from '../../src/fit/row.ts';
import { QUANTITY_UNITS, type WorkingLine } from '../../src/fit/working.ts';
import { loadFlows } from '../../src/library.ts';
import { cannotText, planText } from '../../src/present/plan-text.ts';
import { formatNumber } from '../../src/present/quantity.ts';
import { runScript } from '../../src/transport/script/run.ts';

const flows = loadFlows();
const PLAIN = { dialect: 'us', workings: false } as const;

/** What is typed at each question; a list where a reading is confirmed. */
export type Typed = Readonly<Record<string, string | readonly string[]>>;

export function flowOf(id: string) {
  const flow = flows.get(id);
  if (flow === undefined) throw new Error(`there is no flow '${id}'`);
  return flow;
}

export function outcomeOf(id: string, typed: Typed): Outcome {
  const script = Object.fromEntries(Object.entries(typed).map(([k, v]) => [k, [v].flat()]));
  const run = runScript(flowOf(id), script);
  if (run.result !== 'outcome') throw new Error(`no outcome: ${JSON.stringify(run)}`);
  return run.outcome;
}

export function planOf(id: string, typed: Typed): Plan {
  const outcome = outcomeOf(id, typed);
  if (outcome.kind !== 'plan') throw new Error(cannotText(outcome, PLAIN));
  return outcome.plan;
}

export function cannotOf(id: string, typed: Typed): Cannot {
  const outcome = outcomeOf(id, typed);
  if (outcome.kind !== 'cannot') throw new Error(planText(outcome.plan, PLAIN));
  return outcome;
}

export function textOf(outcome: Plan | Cannot): string {
  return 'steps' in outcome ? planText(outcome, PLAIN) : cannotText(outcome, PLAIN);
}

/** Instructions of one kind, in order. */
export function instructed<D extends Instruction['do']>(
  plan: Plan,
  kind: D,
): Extract<Instruction, { do: D }>[] {
  return plan.steps
    .flatMap((s) => s.instead)
    .filter((i): i is Extract<Instruction, { do: D }> => i.do === kind);
}

export function workingNamed(plan: Plan, label: string): WorkingLine {
  const found = workingsOf(plan).find((w) => w.label === label);
  if (found === undefined)
    throw new Error(
      `no working '${label}' among ${workingsOf(plan)
        .map((w) => w.label)
        .join('; ')}`,
    );
  return found;
}

export function workingsOf(outcome: Plan | Cannot): WorkingLine[] {
  if (!('steps' in outcome)) return [...outcome.workings];
  return [...outcome.steps.flatMap((s) => s.workings), ...outcome.finished.flatMap((f) => f.workings)];
}

/** Numbers as they are printed: with a fraction, a decimal point, or neither. */
const NUMBER = /\d+(?:\.\d+)?[⅛¼⅜½⅝¾⅞]?|[⅛¼⅜½⅝¾⅞]/g;

/**
 * Every number of the text is in the workings, the sums hold in the reader's unit, and the plan follows its schema.
 * `names` are figures that are names: sizes, dates.
 */
export function expectSound(outcome: Plan | Cannot, names: readonly string[] = []): void {
  const known = new Set(names);
  const reader = { unit: outcome.unit, worked: null };
  for (const line of workingsOf(outcome)) {
    expect(QUANTITY_UNITS, line.label).toContain(line.result.unit);
    for (const q of [...Object.values(line.given), line.result])
      known.add(formatNumber(q, reader).replace('−', ''));
    const given = Object.entries(line.given).map(
      ([k, q]) => [k, { ...q, value: inUnit(q.value, q.unit, outcome.unit) }] as const,
    );
    const exact = inUnit(line.exact, line.result.unit, outcome.unit);
    expect(evaluate(line.formula, Object.fromEntries(given)), line.label).toBeCloseTo(exact, 6);
  }
  if ('steps' in outcome) {
    for (const step of outcome.steps) for (const n of schedules(step)) known.add(n);
    // What stands in for an answer is a figure given, as an answer is.
    for (const { used } of outcome.assumed) for (const n of used.match(NUMBER) ?? []) known.add(n);
    const data = JSON.parse(JSON.stringify(outcome));
    expect(parsePlan(data)).toEqual(data);
  }
  const stated =
    textOf(outcome)
      .replace(/^\d+\. /gm, '')
      .replaceAll(' per 10 cm', '')
      .replace(/\b(?:m1|k2tog)\b/g, '')
      // The row after the first, which the wording names whatever the figures are.
      .replaceAll('row 2, a wrong-side row', '')
      .match(NUMBER) ?? [];
  expect([...new Set(stated)].filter((n) => !known.has(n))).toEqual([]);
}

/** The rows of a schedule and the counts after them are the schedule's own workings, and so is a row that is written out. */
function schedules({ instead }: Step): string[] {
  return instead.flatMap(numbersOf).map(String);
}

function numbersOf(instruction: Instruction): number[] {
  switch (instruction.do) {
    case 'shape':
      return instruction.spaced.shaping.flatMap((s) => [s.row, s.after]);
    case 'shape rows':
      return instruction.shaping.flatMap((s) => [
        s.row,
        ...[s.change, s.after].flatMap((n) => (n === null ? [] : [Math.abs(n)])),
      ]);
    case 'work row':
      return written(instruction.row);
    case 'place buttonholes':
      return instruction.holes.flatMap((h) => [h.from, h.to]);
    case 'short rows':
      return instruction.wedge.turns.map((turn) => turn.row);
    case 'shape edges':
      return instruction.schedule.events.flatMap((e) => [e.row, e.after]);
    case 'shape raglan':
      return [...instruction.raglan.shaping.flatMap((s) => [s.row, s.after])];
    case 'choose one':
      return instruction.ways.flatMap((way) => way.instead.flatMap(numbersOf));
    default:
      return [];
  }
}

function written(row: readonly Segment[]): number[] {
  return row.flatMap((s) => {
    if (s.kind === 'repeat') return [s.times, ...written(s.of)];
    return s.kind === 'change' ? [] : [s.stitches];
  });
}
