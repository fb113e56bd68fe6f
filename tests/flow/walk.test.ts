/** A walk through every state and every transition of every compiled flow. */
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { adjacencyMapToArray, getAdjacencyMap } from 'xstate/graph';
import { hear } from '../../src/dialogue/hear.ts';
import type { Answer, Answers } from '../../src/flow/answer.ts';
import type { CompiledFlow, InterviewEvent, Stop } from '../../src/flow/compile.ts';
import { holds, leaves, subject } from '../../src/flow/condition.ts';
import type { Condition } from '../../src/flow/schema.ts';
import { loadFlows } from '../../src/library.ts';

const flows = [...loadFlows().values()];

/** Answers that tell conditions apart: each choice, or one figure; and 'I don't know'. */
function answersTo(flow: CompiledFlow, stop: Stop, answers: Answers): Answer[] {
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
function telling(flow: CompiledFlow, answers: Answers, at: unknown): string {
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

function eventsAt(
  flow: CompiledFlow,
  state: { value: unknown; context: { answers: Answers } },
): InterviewEvent[] {
  const stop = flow.stops.find((s) => s.state === state.value);
  if (stop !== undefined) {
    return answersTo(flow, stop, state.context.answers).map((answer) => ({
      type: 'ANSWER',
      question: stop.id,
      answer,
    }));
  }
  return state.value === 'review' ? [{ type: 'CONFIRM' }] : [];
}

function walk(flow: CompiledFlow) {
  const [start] = initialTransition(flow.machine, { answers: {} });
  const map = getAdjacencyMap(flow.machine, {
    fromState: start,
    events: (state) => eventsAt(flow, state as never),
    serializeState: (state) =>
      `${JSON.stringify(state.value)} ${telling(flow, state.context.answers, state.value)}`,
    limit: 200_000,
  });
  return adjacencyMapToArray(map);
}

describe.each(flows.map((flow) => ({ id: flow.file.id, flow })))('the flow $id, walked', ({ flow }) => {
  const steps = walk(flow);

  it('reaches every question and at least one end', () => {
    const reached = new Set<unknown>(steps.flatMap(({ state, nextState }) => [state.value, nextState.value]));
    expect(
      flow.stops
        .filter((s) => !reached.has(s.state) && !otherwiseAsked(flow, s, reached))
        .map((s) => s.state),
    ).toEqual([]);
    expect([...reached].filter((s) => s === 'plan' || s === 'cannot')).not.toEqual([]);
  });

  it('takes every transition: each question answered and not known, the review confirmed', () => {
    const taken = new Set(steps.map(({ state, event }) => `${String(state.value)} ${event.type}`));
    for (const stop of flow.stops) {
      if (taken.has(`${stop.state} ANSWER`)) continue;
      expect(otherwiseAsked(flow, stop, new Set(steps.map((s) => s.state.value)))).toBe(true);
    }
    expect(taken.has('review CONFIRM')).toBe(true);
  });

  it('reaches an end from every state', () => {
    const ends = new Set<unknown>(['plan', 'cannot', 'cancelled']);
    const next = new Map<string, Set<string>>();
    const key = (s: { value: unknown; context: { answers: Answers } }) =>
      `${JSON.stringify(s.value)} ${telling(flow, s.context.answers, s.value)}`;
    const back = new Map<string, Set<string>>();
    const good: string[] = [];
    for (const { state, nextState } of steps) {
      const [from, to] = [key(state), key(nextState)];
      next.set(from, (next.get(from) ?? new Set()).add(to));
      back.set(to, (back.get(to) ?? new Set()).add(from));
      if (ends.has(nextState.value)) good.push(to);
    }
    const reaches = new Set(good);
    while (good.length > 0) {
      for (const from of back.get(good.pop() ?? '') ?? []) {
        if (!reaches.has(from)) {
          reaches.add(from);
          good.push(from);
        }
      }
    }
    expect([...next.keys()].filter((k) => !reaches.has(k))).toEqual([]);
  });

  it('can ask any answered question again, and be cancelled anywhere', () => {
    const [start] = initialTransition(flow.machine, { answers: {} });
    const { state } = steps.find(({ nextState }) => nextState.value === 'review') ?? { state: start };
    const event = steps.find((s) => s.state === state)?.event;
    const reviewed =
      event === undefined ? state : transition(flow.machine, state as never, event as never)[0];
    for (const id of Object.keys(reviewed.context.answers)) {
      const again = transition(flow.machine, reviewed as never, { type: 'REVISIT', question: id })[0];
      const asked = flow.stops.find((s) => s.state === again.value);
      const stillAsked = flow.inForce(reviewed.context.answers)[id] !== undefined;
      if (stillAsked) expect(asked?.id).toBe(id);
    }
    expect(transition(flow.machine, start, { type: 'CANCEL' })[0].value).toBe('cancelled');
  });
});

/** Questions of a chapter that the whole way never asks, since its other answers tell. */
const TOLD_BY_OTHERS: readonly string[] = [
  'armhole_top',
  'hem_middle',
  'neck_after',
  'neck_base',
  'neck_how',
  'neck_middle',
];

/**
 * A question that stands at several stops of a flow is asked at the first whose condition holds; one reached stop is
 * enough. A chapter within the whole way leaves out what is told otherwise.
 */
function otherwiseAsked(flow: CompiledFlow, stop: Stop, reached: ReadonlySet<unknown>): boolean {
  if (flow.file.id === 'whole' && TOLD_BY_OTHERS.includes(stop.id)) return true;
  return flow.stops.some((s) => s !== stop && s.id === stop.id && reached.has(s.state));
}

it('finds flows that end in a plan and flows that end in a clear cannot', () => {
  const ends = flows.flatMap((flow) => walk(flow).map(({ nextState }) => nextState.value));
  expect(ends).toContain('plan');
  expect(ends).toContain('cannot');
});
