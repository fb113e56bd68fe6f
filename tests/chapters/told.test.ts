/**
 * What is answered and what the plan then tells, beside each other in a file of `told/`, which holds a case: the flow in
 * its name, the answers, a line of dashes, the facts of the plan. The engine wrote them: they show what a change alters,
 * not that it is right, which the simulator, the properties and the published figures do. After a change that was meant,
 * `node --import tsx tools/told.ts` writes them anew: read the difference.
 */
import { describe, expect, it } from 'vitest';
import { outcomeTold } from './told.ts';
import { CASES, outcomeOfCase } from './told-cases.ts';

describe('a plan, fact by fact', () => {
  it.each(CASES.map((one) => [one.name, one] as const))('%s', (_, one) => {
    expect(outcomeTold(outcomeOfCase(one))).toEqual(one.told);
  });
});
