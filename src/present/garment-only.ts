/**
 * A plan as it may be shown to others: figures of the garment, none of the body. A finished measurement is the garment's;
 * what it was wanted to be is body and ease by a published table, so it is left out with the body itself.
 */
import type { PhraseName } from '../fit/phrases.ts';
import { type Assumption, type Instruction, type Phrase, type Plan, phrase, type Step } from '../fit/plan.ts';
import { MEASUREMENTS } from '../fit/words.ts';
import type { Quantity, WorkingLine } from '../fit/working.ts';

/** Quantities measured on a body, or one sum away from it, by their names in workings. */
const OF_THE_BODY: ReadonlySet<string> = new Set([
  ...MEASUREMENTS,
  'full bust',
  'from bust point to bust point',
  'front length over the bust',
  'bust to choose the size by',
  'more for the front',
  'bust wanted',
]);

/** Instructions that tell body and wish beside each other. */
const TELLS_BODY: ReadonlySet<Instruction['do']> = new Set([
  'compare sizes',
  'compare fits',
  'note measurements',
]);

/** Phrases that tell by how much the target lies beyond the sizes. */
const TELLS_TARGET: ReadonlySet<PhraseName> = new Set([
  'note: beyond the largest',
  'note: below the smallest',
]);

/** Without any step where the plan holds nothing but measurements. */
export function garmentOnly(plan: Plan): Plan {
  return {
    ...plan,
    summary: plan.summary.flatMap(summaryShown),
    steps: plan.steps.flatMap(stepShown),
    finished: plan.finished.map((finished) => ({ ...finished, workings: shown(finished.workings) })),
    assumed: plan.assumed.map(assumedShown),
    cautions: plan.cautions.filter(isShown),
  };
}

/** Whether the quantity was measured on a body, or gives it away. */
export function isOfBody({ name, unit }: Quantity): boolean {
  return unit === 'cm' && (OF_THE_BODY.has(name) || name.endsWith(' of the body'));
}

function summaryShown(told: Phrase): Phrase[] {
  const size = told.with.size;
  if (told.say === 'summary: size and bust' && size !== undefined) return [phrase('summary: size', { size })];
  return isShown(told) ? [told] : [];
}

function stepShown(step: Step): Step[] {
  const instead = step.instead.flatMap(instructionShown);
  if (instead.length === 0 && step.instead.length > 0) return [];
  const tellsBody = step.instead.some((instruction) => TELLS_BODY.has(instruction.do));
  return [
    {
      ...step,
      instead,
      pattern: step.pattern !== null && isShown(step.pattern) ? step.pattern : null,
      check: step.check !== null && isShown(step.check) ? step.check : null,
      notes: step.notes.filter(isShown),
      workings: tellsBody ? [] : shown(step.workings),
    },
  ];
}

function instructionShown(instruction: Instruction): Instruction[] {
  if (TELLS_BODY.has(instruction.do)) return [];
  if (instruction.do === 'say') return isShown(instruction.phrase) ? [instruction] : [];
  if (instruction.do !== 'choose one') return [instruction];
  const ways = instruction.ways.map((way) => ({ ...way, instead: way.instead.flatMap(instructionShown) }));
  return [{ ...instruction, ways }];
}

function isShown({ say, with: gaps }: Phrase): boolean {
  if (TELLS_TARGET.has(say)) return false;
  return Object.values(gaps).every((gap) => typeof gap === 'string' || !isOfBody(gap));
}

function shown(lines: readonly WorkingLine[]): WorkingLine[] {
  return lines.filter(({ given, result }) => ![...Object.values(given), result].some(isOfBody));
}

/** A table's figure is chosen by the body: that it stood in is told, not what it was. */
function assumedShown({ question, used, effect }: Assumption): Assumption {
  return { question, used: /\d/.test(used) ? 'a stand-in' : used, effect };
}
