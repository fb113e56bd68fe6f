/** Faults that lie between files: names that nobody defines, conditions that can never be met. */
import type { Calculations } from './calculations.ts';
import { leaves, subject } from './condition.ts';
import type { Fault } from './fault.ts';
import type { Sheet } from './load.ts';
import type { Condition, FlowFile, Question } from './schema.ts';

type Path = readonly PropertyKey[];
type Report = (path: Path, code: Fault['code'], message: string) => void;

/** All such faults of all files. */
export function checkBook(sheets: readonly Sheet[], calculations: Calculations): Fault[] {
  const faults: Fault[] = [];
  const flows = new Map<string, FlowFile>();
  const questions = new Map<string, Question>();
  for (const sheet of sheets) {
    const report: Report = (path, code, message) => faults.push(sheet.faultAt(path, code, message));
    if (flows.has(sheet.flow.id))
      report(['id'], 'two of one id', `the flow '${sheet.flow.id}' is defined twice`);
    flows.set(sheet.flow.id, sheet.flow);
    for (const [id, question] of Object.entries(sheet.flow.questions)) {
      if (questions.has(id))
        report(['questions', id], 'two of one id', `the question '${id}' is defined twice`);
      questions.set(id, question);
    }
  }
  const reached = reachedBefore(flows);
  for (const sheet of sheets) {
    const report: Report = (path, code, message) => faults.push(sheet.faultAt(path, code, message));
    checkQuestions(sheet.flow, questions, calculations, report);
    checkSteps(sheet.flow, flows, questions, reached, report);
    if (!(sheet.flow.result in calculations.results)) {
      report(['result'], 'unknown calculation', `no result is called '${sheet.flow.result}'`);
    }
  }
  return faults;
}

function checkQuestions(
  flow: FlowFile,
  questions: ReadonlyMap<string, Question>,
  calculations: Calculations,
  report: Report,
): void {
  for (const [id, question] of Object.entries(flow.questions)) {
    const path = ['questions', id];
    const wants = question.kind === 'choice' || question.kind === 'choices';
    if (wants !== (question.choices !== undefined)) {
      report(
        path,
        'choices missing',
        wants ? `'${id}' lists no choices` : `'${id}' is no choice but lists choices`,
      );
    }
    if (question.of_size !== undefined && questions.get(question.of_size)?.kind !== 'size') {
      report([...path, 'of_size'], 'unknown question', `'${question.of_size}' is no question about a size`);
    }
    if (question.rows_too !== undefined && questions.get(question.rows_too)?.kind !== 'row gauge') {
      report([...path, 'rows_too'], 'unknown question', `'${question.rows_too}' is no question about rows`);
    }
    const named = [
      ['offer', question.offer],
      ['unknown', 'use' in question.unknown ? question.unknown.use : undefined],
    ] as const;
    for (const [key, name] of named) {
      if (name !== undefined && !(name in calculations.suggestions)) {
        report([...path, key], 'unknown calculation', `no suggestion is called '${name}'`);
      }
    }
  }
}

function checkSteps(
  flow: FlowFile,
  flows: ReadonlyMap<string, FlowFile>,
  questions: ReadonlyMap<string, Question>,
  reached: Reached,
  report: Report,
): void {
  flow.steps.forEach((step, i) => {
    const path = ['steps', i];
    if (step.when !== undefined) {
      const early = (id: string) => !(reached.get(step)?.has(id) ?? false);
      checkCondition(step.when, early, questions, (code, message) =>
        report([...path, 'when'], code, message),
      );
    }
    if ('ask' in step) {
      if (!questions.has(step.ask))
        report([...path, 'ask'], 'unknown question', `no question is called '${step.ask}'`);
    } else if (!flows.has(step.include)) {
      report([...path, 'include'], 'unknown flow', `no flow is called '${step.include}'`);
    } else if (includes(step.include, flow.id, flows)) {
      report(
        [...path, 'include'],
        'includes itself',
        `'${flow.id}' comes round again through '${step.include}'`,
      );
    }
  });
}

/** For each step, the questions that some flow asks before it. */
type Reached = Map<FlowFile['steps'][number], Set<string>>;

/** Walks every flow with its inclusions: a chapter's condition may rest on a question of a flow that includes it. */
function reachedBefore(flows: ReadonlyMap<string, FlowFile>): Reached {
  const reached: Reached = new Map();
  const walk = (flow: FlowFile, before: Set<string>, within: readonly string[]): void => {
    if (within.includes(flow.id)) return;
    for (const step of flow.steps) {
      const known = reached.get(step) ?? new Set();
      for (const id of before) known.add(id);
      reached.set(step, known);
      if ('ask' in step) before.add(step.ask);
      else {
        const included = flows.get(step.include);
        if (included !== undefined) walk(included, before, [...within, flow.id]);
      }
    }
  };
  for (const flow of flows.values()) walk(flow, new Set(), []);
  return reached;
}

function includes(
  from: string,
  wanted: string,
  flows: ReadonlyMap<string, FlowFile>,
  seen = new Set<string>(),
): boolean {
  if (from === wanted) return true;
  if (seen.has(from)) return false;
  seen.add(from);
  return (flows.get(from)?.steps ?? []).some(
    (s) => 'include' in s && includes(s.include, wanted, flows, seen),
  );
}

function checkCondition(
  condition: Condition,
  early: (question: string) => boolean,
  questions: ReadonlyMap<string, Question>,
  report: (code: Fault['code'], message: string) => void,
): void {
  for (const leaf of leaves(condition)) {
    const id = subject(leaf);
    const question = questions.get(id);
    if (question === undefined) {
      report('unknown question', `no question is called '${id}'`);
      continue;
    }
    if (early(id)) report('condition too early', `'${id}' is not asked before this step`);
    if (!('question' in leaf)) continue;
    const kind = 'is' in leaf ? 'choice' : 'choices';
    if (question.kind !== kind)
      report('wrong condition', `'${id}' is a question of the kind '${question.kind}'`);
    const named = 'is' in leaf ? [leaf.is].flat() : [leaf.has];
    const offered = new Set(question.choices?.map((c) => c.id));
    for (const choice of named) {
      if (!offered.has(choice)) report('unknown choice', `'${id}' has no choice '${choice}'`);
    }
  }
}
