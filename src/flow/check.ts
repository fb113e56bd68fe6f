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
  for (const sheet of sheets) {
    const report: Report = (path, code, message) => faults.push(sheet.faultAt(path, code, message));
    checkQuestions(sheet.flow, calculations, report);
    checkSteps(sheet.flow, flows, questions, report);
    if (!(sheet.flow.result in calculations.results)) {
      report(['result'], 'unknown calculation', `no result is called '${sheet.flow.result}'`);
    }
  }
  return faults;
}

function checkQuestions(flow: FlowFile, calculations: Calculations, report: Report): void {
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
  report: Report,
): void {
  const before = new Set<string>();
  flow.steps.forEach((step, i) => {
    const path = ['steps', i];
    if (step.when !== undefined)
      checkCondition(step.when, before, questions, (c, m) => report([...path, 'when'], c, m));
    if ('ask' in step) {
      if (!questions.has(step.ask))
        report([...path, 'ask'], 'unknown question', `no question is called '${step.ask}'`);
      before.add(step.ask);
      return;
    }
    if (!flows.has(step.include))
      report([...path, 'include'], 'unknown flow', `no flow is called '${step.include}'`);
    else if (asks(step.include, flows).has(flow.id))
      report(
        [...path, 'include'],
        'includes itself',
        `'${flow.id}' comes round again through '${step.include}'`,
      );
    else for (const id of asks(step.include, flows)) before.add(id);
  });
}

/** Ids of all questions that a flow may ask, and of all flows in it (the two never share a name in a step). */
function asks(id: string, flows: ReadonlyMap<string, FlowFile>, seen = new Set<string>()): Set<string> {
  if (seen.has(id)) return seen;
  seen.add(id);
  for (const step of flows.get(id)?.steps ?? []) {
    if ('ask' in step) seen.add(step.ask);
    else asks(step.include, flows, seen);
  }
  return seen;
}

function checkCondition(
  condition: Condition,
  before: ReadonlySet<string>,
  questions: ReadonlyMap<string, Question>,
  report: (code: Fault['code'], message: string) => void,
): void {
  for (const leaf of leaves(condition)) {
    const id = subject(leaf);
    const question = questions.get(id);
    if (question === undefined) report('unknown question', `no question is called '${id}'`);
    else if (!before.has(id)) report('condition too early', `'${id}' is not asked before this step`);
    if (question === undefined || !('question' in leaf)) continue;
    const kind = 'is' in leaf ? 'choice' : 'choices';
    if (question.kind !== kind) report('wrong condition', `'${id}' is a ${question.kind} question`);
    const named = 'is' in leaf ? [leaf.is].flat() : [leaf.has];
    const offered = new Set(question.choices?.map((c) => c.id));
    for (const choice of named) {
      if (!offered.has(choice)) report('unknown choice', `'${id}' has no choice '${choice}'`);
    }
  }
}
