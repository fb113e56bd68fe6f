/** The chapters on rows, short rows and tops under answers of any kind, sensible or not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cm, lengthIn } from '../../src/fit/units.ts';
import type { Answer, Answers, Value } from '../../src/flow/answer.ts';
import type { Question } from '../../src/flow/schema.ts';
import { expectSound, flowOf } from './scripted.ts';

const FLOWS = ['spread', 'hem', 'back_neck', 'front_neck', 'shoulder', 'bust', 'armhole', 'raglan', 'yoke'];

/** Answers within what a question takes, most of them of middling size; 'I don't know' now and then. */
function answersTo(id: string, question: Question): fc.Arbitrary<Answer> {
  const value = valueFor(id, question).map((v): Answer => ({ given: 'value', value: v }));
  return fc.oneof(
    { weight: 7, arbitrary: value },
    { weight: 1, arbitrary: fc.constant<Answer>({ given: 'unknown' }) },
  );
}

function valueFor(id: string, question: Question): fc.Arbitrary<Value> {
  const { least = 8, most = 120 } = question;
  const middling = Math.min(most, Math.max(4 * least, 40));
  switch (question.kind) {
    case 'choice':
      return fc
        .constantFrom(...(question.choices ?? []).map((c) => c.id))
        .map((choice) => ({ kind: 'choice', choice }));
    case 'length':
      return tenths(id, least, most, middling).map((value) => ({
        kind: 'length',
        cm: cm(value),
        typed: { value, unit: 'cm' },
      }));
    case 'stitches':
    case 'rows': {
      const kind = question.kind;
      return fc
        .oneof(
          fc.integer({ min: least, max: most }),
          fc.integer({ min: least, max: Math.max(least, middling) }),
        )
        .map((count) => ({ kind, count }));
    }
    case 'gauge':
      return fc
        .record({ across: fc.integer({ min: 40, max: 140 }), more: fc.integer({ min: 11, max: 18 }) })
        .map(({ across, more }) => ({
          kind: 'gauge',
          stitches: { count: across / 4, span: lengthIn(10, 'cm'), unit: 'cm' },
          rows: { count: Math.round((across * more) / 10) / 4, span: lengthIn(10, 'cm'), unit: 'cm' },
        }));
    case 'multiple':
      return fc.integer({ min: 1, max: 12 }).map((multiple) => ({ kind: 'multiple', multiple, plus: 0 }));
    case 'counts':
      return fc
        .array(fc.option(fc.integer({ min: 0, max: 300 }), { freq: 9 }), { minLength: 1, maxLength: 4 })
        .map((counts) => ({ kind: 'counts', counts, labels: null }));
    case 'new count':
      return fc.oneof(
        fc.integer({ min: 0, max: 300 }).map((count) => ({ kind: 'new count', how: 'to', count }) as const),
        fc.integer({ min: -99, max: 99 }).map((count) => ({ kind: 'new count', how: 'by', count }) as const),
      );
    default:
      throw new Error(`no answers are made for a question of the kind '${question.kind}'`);
  }
}

/** Bodies are measured within what they are; other lengths within their bounds. */
function tenths(id: string, least: number, most: number, middling: number): fc.Arbitrary<number> {
  const [low, high] = BODY[id] ?? [least, middling];
  const usual = fc.integer({ min: Math.ceil(low * 10), max: Math.floor(high * 10) });
  const any = fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) });
  return (BODY[id] === undefined ? fc.oneof(usual, any) : usual).map((n) => n / 10);
}

const BODY: Readonly<Record<string, readonly [number, number]>> = {
  bust: [75, 150],
  upper_bust: [72, 135],
  front_length: [36, 58],
  back_length: [34, 50],
  bust_span: [13, 28],
  cross_back: [30, 48],
  upper_arm: [22, 50],
};

function anyAnswers(flow: string): fc.Arbitrary<Answers> {
  const { stops } = flowOf(flow);
  return fc.record(Object.fromEntries(stops.map(({ id, question }) => [id, answersTo(id, question)])));
}

describe.each(FLOWS)('whatever is answered, the chapter %s', (id) => {
  it('gives a plan, or says why not, whose every number is in its workings', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(anyAnswers(id), (answers) => {
        const outcome = flowOf(id).outcome(answers);
        kinds.add(outcome.kind);
        if (outcome.kind === 'plan') expectSound({ ...outcome.plan, assumed: [], waiting: [] });
        else expectSound(outcome);
      }),
      { numRuns: 60 },
    );
    expect([...kinds].sort()).toEqual(['cannot', 'plan']);
  });
});
