/** The answers that tell the ways through a flow apart, and what a way still hangs on. */
import { hear } from '../../src/dialogue/hear.ts';
import type { Answer, Answers } from '../../src/flow/answer.ts';
import type { CompiledFlow, Stop } from '../../src/flow/compile.ts';
import { holds, leaves, subject } from '../../src/flow/condition.ts';
import type { Condition } from '../../src/flow/schema.ts';

/** Answers that tell conditions apart: each choice, or one figure; and 'I don't know'. */
export function answersTo(flow: CompiledFlow, stop: Stop, answers: Answers): Answer[] {
  const { question, id } = stop;
  const unknown: Answer = { given: 'unknown' };
  const rests = flow.stops.flatMap((s) => (s.when === undefined ? [] : leaves(s.when).map(subject)));
  if (question.kind === 'choice') {
    const choices = question.choices ?? [];
    const told = rests.includes(id) ? choices : choices.slice(0, 1);
    return [
      ...told.map((c): Answer => ({ given: 'value', value: { kind: 'choice', choice: c.id } })),
      unknown,
    ];
  }
  if (question.kind === 'choices') {
    const ids = question.choices?.map((c) => c.id) ?? [];
    const sets = [[], ...ids.map((c) => [c]), ids];
    return [
      ...sets.map((choices): Answer => ({ given: 'value', value: { kind: 'choices', choices } })),
      unknown,
    ];
  }
  const asked = flow.asked(stop, answers);
  const offered = asked.offered()[0]?.value;
  if (question.kind === 'size')
    return offered === undefined ? [unknown] : [{ given: 'value', value: offered }, unknown];
  const example = hear(asked, question.example);
  if (example.kind !== 'heard') throw new Error(`the example of '${id}' is not heard: ${question.example}`);
  return [{ given: 'value', value: example.value }, unknown];
}

/**
 * What later states hang on: which questions may still be asked, as far as the answers tell, and whether any answer is
 * unknown with nothing to stand in.
 */
export function telling(flow: CompiledFlow, answers: Answers, at: unknown): string {
  const waits = flow.stops.some((s) => 'waits' in s.question.unknown && answers[s.id]?.given === 'unknown');
  const now = flow.stops.findIndex((s) => s.state === at);
  if (now < 0) return waits ? 'waits' : '';
  const ahead = flow.stops.slice(now);
  const open = new Set(ahead.map((s) => s.id).filter((id) => answers[id] === undefined));
  const left = ahead.map((s) =>
    answers[s.id] !== undefined ? 'x' : s.when === undefined ? '' : leftOf(s.when, { flow, answers, open }),
  );
  return `${left.map((c) => (typeof c === 'boolean' ? Number(c) : c)).join(' ')}${waits ? ' waits' : ''}`;
}

interface Known {
  readonly flow: CompiledFlow;
  readonly answers: Answers;
  readonly open: ReadonlySet<string>;
}

/** Whether a condition holds, or what of it hangs on questions that are still to come. */
function leftOf(condition: Condition, known: Known): boolean | string {
  if ('not' in condition) {
    const inner = leftOf(condition.not, known);
    return typeof inner === 'boolean' ? !inner : `not(${inner})`;
  }
  if ('all' in condition || 'any' in condition) {
    const all = 'all' in condition;
    const parts = ('all' in condition ? condition.all : condition.any).map((c) => leftOf(c, known));
    if (parts.includes(!all)) return !all;
    const rest = parts.filter((part) => typeof part === 'string');
    return rest.length === 0 ? all : `${all ? 'all' : 'any'}(${rest.join()})`;
  }
  const { flow, answers, open } = known;
  if (open.has(subject(condition))) return JSON.stringify(condition);
  return holds(condition, answers, (id) => {
    const question = flow.questions.get(id);
    return question && flow.standIn(question, answers)?.value;
  });
}
