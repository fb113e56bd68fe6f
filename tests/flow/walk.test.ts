/** A walk through every state and every transition of every compiled flow. */
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { adjacencyMapToArray, getAdjacencyMap } from 'xstate/graph';
import { hear } from '../../src/dialogue/hear.ts';
import type { Answer, Answers } from '../../src/flow/answer.ts';
import type { CompiledFlow, InterviewEvent, Stop } from '../../src/flow/compile.ts';
import { leaves, subject } from '../../src/flow/condition.ts';
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
 * What later states hang on: the answers to the questions that conditions look at, which others are answered at all, and
 * whether any of them is unknown with nothing to stand in.
 */
function telling(flow: CompiledFlow, answers: Answers): string {
  const waits = flow.stops.some((s) => 'waits' in s.question.unknown && answers[s.id]?.given === 'unknown');
  const rests = new Set(flow.stops.flatMap((s) => (s.when === undefined ? [] : leaves(s.when).map(subject))));
  return flow.stops
    .map(({ id }) => {
      const answer = answers[id];
      if (answer === undefined) return '-';
      if (!rests.has(id)) return 'x';
      return answer.given !== 'value'
        ? '?'
        : JSON.stringify(
            'choice' in answer.value
              ? answer.value.choice
              : 'choices' in answer.value
                ? answer.value.choices
                : 'x',
          );
    })
    .join(' ')
    .concat(waits ? ' waits' : '');
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
    serializeState: (state) => `${JSON.stringify(state.value)} ${telling(flow, state.context.answers)}`,
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
      `${JSON.stringify(s.value)} ${telling(flow, s.context.answers)}`;
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

/** A question that stands at several stops of a flow is asked at the first whose condition holds; one reached stop is enough. */
function otherwiseAsked(flow: CompiledFlow, stop: Stop, reached: ReadonlySet<unknown>): boolean {
  return flow.stops.some((s) => s !== stop && s.id === stop.id && reached.has(s.state));
}

it('finds flows that end in a plan and flows that end in a clear cannot', () => {
  const ends = flows.flatMap((flow) => walk(flow).map(({ nextState }) => nextState.value));
  expect(ends).toContain('plan');
  expect(ends).toContain('cannot');
});
