import { describe, expect, it } from 'vitest';
import { loadFlows } from '../../src/library.ts';
import { countQuestions, keepsTo } from '../../tools/counts.ts';

describe('the questions of the longest way', () => {
  const counted = countQuestions(loadFlows());

  it.each(counted)('keep to their limits: $wish', (row) => {
    expect(row).toSatisfy(keepsTo);
  });

  it('are counted for every flow, and never more for a knitter who comes back', () => {
    expect(new Set(counted.map(({ flow }) => flow))).toEqual(new Set(loadFlows().keys()));
    expect(counted.filter(({ fresh, returning }) => returning > fresh)).toEqual([]);
  });
});
