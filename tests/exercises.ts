/** The exercises of practice, taken as they stand in their files. */
import type { ReviewLine } from '../src/dialogue/message.ts';
import type { Plan } from '../src/fit/plan.ts';
import { LENGTH_UNITS, type LengthUnit } from '../src/fit/units.ts';
import type { CompiledFlow } from '../src/flow/compile.ts';
import type { Exercise } from '../src/flow/practice.ts';
import { loadFlows } from '../src/library.ts';
import { runScript } from '../src/transport/script/run.ts';

export const practised = [...loadFlows().values()].flatMap((flow) => {
  const exercise = flow.book.exercises.get(flow.file.id);
  return exercise === undefined ? [] : [{ flow, exercise }];
});

export interface Worked {
  readonly plan: Plan;
  readonly answers: readonly ReviewLine[];
}

const WORKED = new Map<string, Worked>();

/** Throws where the exercise comes to no plan: an answer is refused or put back, a question open, a figure impossible. */
export function workedExercise(flow: CompiledFlow, exercise: Exercise, unit: LengthUnit): Worked {
  const name = `${flow.file.id} in ${unit}`;
  const known = WORKED.get(name);
  if (known !== undefined) return known;
  const answers = [...exercise.answers].filter(([question]) => flow.questions.has(question));
  const units = flow.questions.has('unit') ? { unit: [unit] } : {};
  const typed = Object.fromEntries(answers.map(([question, answer]) => [question, [answer[unit]]]));
  const run = runScript(flow, { ...units, ...typed });
  if (run.result !== 'outcome' || run.outcome.kind !== 'plan')
    throw new Error(`${name}: ${JSON.stringify(run)}`);
  const worked = { plan: run.outcome.plan, answers: run.answers };
  WORKED.set(name, worked);
  return worked;
}

/** Each in each unit. */
export const exercises = practised.flatMap(({ flow, exercise }) =>
  LENGTH_UNITS.map((unit) => [flow.file.id, unit, () => workedExercise(flow, exercise, unit)] as const),
);
