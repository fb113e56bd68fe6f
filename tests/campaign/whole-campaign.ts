/** Knits random whole plans and keeps account of what was met in them. */
import fc from 'fast-check';
import { loadFlows } from '../../src/library.ts';
import type { Budget } from './budget.ts';
import { Findings } from './findings.ts';
import { knitWhole } from './knit-whole.ts';
import { printedFor } from './printed.ts';
import { answersOf } from './wearer-answers.ts';
import { wearers } from './wearers.ts';

/** How often each kind of thing was met. Throws, with the smallest garment that shows it, where a figure does not hold. */
export function wholeCampaign({ runs, seed }: Budget): ReadonlyMap<string, number> {
  const flow = loadFlows().get('whole');
  if (flow === undefined) throw new Error('there is no whole way to walk');
  const met = new Map<string, number>();
  fc.assert(
    fc.property(wearers, (wearer) => {
      const findings = new Findings();
      const answers = answersOf(wearer, flow);
      const outcome = flow.outcome(answers);
      findings.meet(`whole way: ${outcome.kind}`);
      if (outcome.kind === 'plan') knitWhole(outcome.plan, answers, printedFor(wearer), findings);
      for (const [what, times] of findings.met) met.set(what, (met.get(what) ?? 0) + times);
      if (findings.faults.length > 0) throw new Error(findings.faults.join('\n'));
    }),
    { numRuns: runs, seed },
  );
  return met;
}
