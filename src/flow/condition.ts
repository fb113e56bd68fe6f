/** Conditions of a flow file: whether they hold, and which questions they rest on. */
import type { Answers, Value } from './answer.ts';
import type { Condition } from './schema.ts';

/** What is taken for a question that was left out or whose answer is not known; undefined where nothing is. */
export type Taken = (question: string) => Value | undefined;

/**
 * Whether the condition holds. A question not asked yet meets no `is` or `has`; one that was left out or is not known
 * meets those that its stand-in meets, for the plan is made with it. Neither is `known`.
 */
export function holds(condition: Condition, answers: Answers, taken: Taken): boolean {
  if ('all' in condition) return condition.all.every((c) => holds(c, answers, taken));
  if ('any' in condition) return condition.any.some((c) => holds(c, answers, taken));
  if ('not' in condition) return !holds(condition.not, answers, taken);
  if ('known' in condition) return answers[condition.known]?.given === 'value';
  if ('unknown' in condition) return answers[condition.unknown]?.given === 'unknown';
  const answer = answers[condition.question];
  if (answer === undefined) return false;
  const value = answer.given === 'value' ? answer.value : taken(condition.question);
  if ('is' in condition) return value?.kind === 'choice' && [condition.is].flat().includes(value.choice);
  return value?.kind === 'choices' && value.choices.includes(condition.has);
}

/** The simple conditions inside, in order. */
export function leaves(
  condition: Condition,
): Exclude<Condition, { all: unknown } | { any: unknown } | { not: unknown }>[] {
  if ('all' in condition) return condition.all.flatMap(leaves);
  if ('any' in condition) return condition.any.flatMap(leaves);
  if ('not' in condition) return leaves(condition.not);
  return [condition];
}

/** The question that a simple condition looks at. */
export function subject(leaf: ReturnType<typeof leaves>[number]): string {
  if ('known' in leaf) return leaf.known;
  if ('unknown' in leaf) return leaf.unknown;
  return leaf.question;
}

/** Both conditions, where both are given. */
export function both(a: Condition | undefined, b: Condition | undefined): Condition | undefined {
  if (a === undefined) return b;
  if (b === undefined) return a;
  return { all: [a, b] };
}
