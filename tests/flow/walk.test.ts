/** A walk through every state and every transition of every compiled flow. */
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { adjacencyMapToArray, getAdjacencyMap } from 'xstate/graph';
import type { Answers } from '../../src/flow/answer.ts';
import type { CompiledFlow, InterviewEvent, Stop } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';
import { answersTo, telling } from './telling.ts';

const flows = [...loadFlows().values()];

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
