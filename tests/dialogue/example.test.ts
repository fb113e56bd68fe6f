import { describe, expect, it } from 'vitest';
import { exampleFor } from '../../src/dialogue/example.ts';
import { hear } from '../../src/dialogue/hear.ts';
import type { Answers } from '../../src/flow/answer.ts';
import { loadFlows } from '../../src/library.ts';

const stops = [...loadFlows().values()].flatMap((flow) => flow.stops.map((stop) => ({ flow, stop })));

describe.each(['cm', 'in'] as const)('the example of a question, read in %s', (unit) => {
  const answers: Answers = { unit: { given: 'value', value: { kind: 'choice', choice: unit } } };

  it.each([...new Map(stops.map((s) => [s.stop.id, s])).values()].map((s) => ({ id: s.stop.id, ...s })))(
    '$id: would be heard',
    ({ flow, stop }) => {
      // A size is one of those that are ranked, which depends on earlier answers.
      if (stop.question.kind === 'size') return expect(stop.question.offer).toBeDefined();
      const example = exampleFor(stop.question, unit);
      expect(hear(flow.asked(stop, answers), example).kind).toBe('heard');
      if (unit === 'in') expect(example).not.toMatch(/\d ?cm/);
    },
  );

  it.each(
    stops
      .filter(({ stop }) => !['size', 'shaping line'].includes(stop.question.kind))
      .map((s) => ({ id: s.stop.id, ...s })),
  )('$id: is what is named where an answer is refused', ({ flow, stop }) => {
    expect(hear(flow.asked(stop, answers), '…')).toMatchObject({
      kind: 'refused',
      example: exampleFor(stop.question, unit),
    });
  });
});
