/** Faults between practice files and flows: an exercise for no flow, an answer to nothing, a question without an answer. */
import type { Fault } from './fault.ts';
import type { PracticeSheet, Sheet } from './load.ts';
import type { PracticeFile } from './practice.ts';
import type { FlowFile } from './schema.ts';

/** The unit is her own choice, in an exercise too. */
const HER_OWN = 'unit';

type Report = (path: readonly PropertyKey[], code: Fault['code'], message: string) => void;

/** All such faults of all files. */
export function checkPractice(practices: readonly PracticeSheet[], sheets: readonly Sheet[]): Fault[] {
  const faults: Fault[] = [];
  const flows = new Map(sheets.map(({ flow }) => [flow.id, flow]));
  const practised = new Set<string>();
  for (const { practice, faultAt } of practices) {
    const report: Report = (path, code, message) => faults.push(faultAt(path, code, message));
    const asked = new Set<string>();
    for (const id of Object.keys(practice.exercises)) {
      const path = ['exercises', id];
      if (practised.has(id)) report(path, 'two of one id', `there are two exercises for the flow '${id}'`);
      practised.add(id);
      const flow = flows.get(id);
      if (flow === undefined) report(path, 'unknown flow', `no flow is called '${id}'`);
      else for (const question of checkExercise(flow, practice, flows, report)) asked.add(question);
    }
    reportStrangers(Object.keys(practice.answers), asked, ['answers'], report);
  }
  return faults;
}

/** Gives the questions that the flow may ask. */
function checkExercise(
  flow: FlowFile,
  { answers: shared, exercises }: PracticeFile,
  flows: ReadonlyMap<string, FlowFile>,
  report: Report,
): Set<string> {
  const path = ['exercises', flow.id];
  const own = exercises[flow.id]?.answers ?? {};
  for (const question of questionsOf(flow, flows, 'always'))
    if (question !== HER_OWN && !(question in own) && !(question in shared))
      report(path, 'answer missing', `'${flow.id}' always asks '${question}', and nothing answers it`);
  const asked = questionsOf(flow, flows, 'ever');
  reportStrangers(Object.keys(own), asked, [...path, 'answers'], report);
  return asked;
}

function reportStrangers(
  answered: readonly string[],
  asked: ReadonlySet<string>,
  path: readonly PropertyKey[],
  report: Report,
): void {
  for (const question of answered)
    if (!asked.has(question))
      report([...path, question], 'answer to nothing', `no flow practised here asks '${question}'`);
}

/** What a flow asks, in the flows that it includes too: whatever was answered before, or at some time. */
function questionsOf(
  flow: FlowFile,
  flows: ReadonlyMap<string, FlowFile>,
  when: 'always' | 'ever',
  within: readonly string[] = [],
): Set<string> {
  if (within.includes(flow.id)) return new Set();
  const steps = flow.steps.filter((step) => when === 'ever' || step.when === undefined);
  const found = steps.flatMap((step) => {
    if ('ask' in step) return [step.ask];
    const included = flows.get(step.include);
    return included === undefined ? [] : [...questionsOf(included, flows, when, [...within, flow.id])];
  });
  return new Set(found);
}
