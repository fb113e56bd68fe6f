/** Conditions of a flow file: whether they hold, and which questions they rest on. */
import type { Answers } from './answer.ts';
import type { Condition } from './schema.ts';

/** Whether the condition holds. A question not answered, skipped or not known meets no `is`, `has` or `known`. */
export function holds(condition: Condition, answers: Answers): boolean {
  if ('all' in condition) return condition.all.every((c) => holds(c, answers));
  if ('any' in condition) return condition.any.some((c) => holds(c, answers));
  if ('not' in condition) return !holds(condition.not, answers);
  if ('known' in condition) return answers[condition.known]?.given === 'value';
  if ('unknown' in condition) return answers[condition.unknown]?.given === 'unknown';
  const answer = answers[condition.question];
  if (answer?.given !== 'value') return false;
  if ('is' in condition) {
    return answer.value.kind === 'choice' && [condition.is].flat().includes(answer.value.choice);
  }
  return answer.value.kind === 'choices' && answer.value.choices.includes(condition.has);
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
