/** Sessions and lines for the tests of the store. */
import fc from 'fast-check';
import { AT_THE_START, type LogLine, type Place, type Session } from '../../src/dialogue/session.ts';
import { MISTAKES } from '../../src/fit/mistake.ts';
import { cm } from '../../src/fit/units.ts';
import type { Answer, Value } from '../../src/flow/answer.ts';

export function session(id: string, owner = 'ada', given: readonly LogLine[] = []): Session {
  return { id, owner, flow: 'sleeve', version: 1, log: given, place: AT_THE_START };
}

/** A length in centimetres, answered at a time. */
export function lengthLine(question: string, length: number, at: number): LogLine {
  const value = { kind: 'length', cm: cm(length), typed: { value: length, unit: 'cm' } } as const;
  return { line: 'answer', question, answer: { given: 'value', value }, typed: `${length} cm`, at };
}

export function choiceLine(question: string, choice: string, at: number): LogLine {
  const value = { kind: 'choice', choice } as const;
  return { line: 'answer', question, answer: { given: 'value', value }, typed: choice, at };
}

const text = fc.string({ unit: 'binary', maxLength: 40 });
const unit = fc.constantFrom('cm' as const, 'in' as const);
/** JSON knows no −0; no answer is one. */
const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => (n === 0 ? 0 : n));
const length = number.map((n) => cm(n));
const typed = fc.record({ value: number, unit });
const count = fc.record({ count: number, span: length, unit });

const value: fc.Arbitrary<Value> = fc.oneof(
  fc.record({ kind: fc.constant('choice' as const), choice: text }),
  fc.record({ kind: fc.constant('choices' as const), choices: fc.array(text, { maxLength: 4 }) }),
  fc.record({ kind: fc.constantFrom('length' as const, 'ease' as const), cm: length, typed }),
  fc.record({ kind: fc.constantFrom('stitches' as const, 'rows' as const), count: number }),
  fc.record({ kind: fc.constant('stitch gauge' as const), stitches: count }),
  fc.record({ kind: fc.constant('row gauge' as const), rows: count }),
  fc.record({ kind: fc.constant('gauge' as const), stitches: count, rows: count }),
  fc.record({
    kind: fc.constant('sizes' as const),
    lengths: fc.array(fc.option(length), { maxLength: 12 }),
    unit,
    labels: fc.option(fc.array(text, { maxLength: 4 })),
  }),
  fc.record({ kind: fc.constant('size' as const), label: text }),
  fc.record({ kind: fc.constant('multiple' as const), multiple: number, plus: number }),
);

const answer: fc.Arbitrary<Answer> = fc.oneof(
  fc.record({ given: fc.constant('value' as const), value }),
  fc.record({ given: fc.constant('value' as const), value, confirmed: fc.constant(true as const) }),
  fc.record({ given: fc.constantFrom('unknown' as const, 'skipped' as const) }),
);

const at = fc.nat(4_000_000_000_000);

/** Any line that a log may hold. */
export const anyLine: fc.Arbitrary<LogLine> = fc.oneof(
  fc.record({ line: fc.constant('answer' as const), question: text, answer, typed: text, at }),
  fc.record({ line: fc.constant('start over' as const), at }),
  fc.record({
    line: fc.constant('sums' as const),
    did: fc.constantFrom('begin' as const, 'stop' as const),
    at,
  }),
  fc.record({
    line: fc.constant('sum' as const),
    sum: text,
    came: fc.constantFrom('right' as const, 'wrong' as const, 'shown' as const, 'passed' as const),
    slips: fc.array(fc.constantFrom(...MISTAKES), { maxLength: 2 }),
    typed: text,
    at,
  }),
);

export const anyPlace: fc.Arbitrary<Place> = fc.record({
  revisiting: fc.option(text),
  pending: fc.option(
    fc.record({
      question: text,
      text,
      yesNo: fc.boolean(),
      options: fc.array(fc.record({ label: text, answer, echo: text }), { maxLength: 3 }),
    }),
  ),
  confirmed: fc.boolean(),
  rest: fc.constantFrom('none' as const, 'paused' as const, 'cancelled' as const),
});
