/** Walks through each chapter at length: EASEWRIGHT_RUNS walks a chapter, 10,000 where nothing is said. */
import { loadavg } from 'node:os';
import { expect, it } from 'vitest';
import { loadFlows } from '../../src/library.ts';
import { budget, tell } from './budget.ts';
import { walkCampaign } from './campaign.ts';

const { runs, seed } = budget();

it.each([...loadFlows()])('walks through %s whatever is said, and comes to an end each time', (id, flow) => {
  const began = Date.now();
  const met = walkCampaign({ runs, seed }, [flow]);
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  const count = (what: string) => `${met.get(what) ?? 0} ${what}`;
  const account = ['ask', 'refused', 'outcome: plan', 'outcome: cannot'].map(count).join(', ');
  tell(
    `${id}: ${runs} walks from seed ${seed} in ${seconds} s (load ${(loadavg()[0] ?? 0).toFixed(1)}): ${account}`,
  );
  expect(met.get('ask')).toBeGreaterThan(0);
  expect((met.get('outcome: plan') ?? 0) + (met.get('outcome: cannot') ?? 0)).toBe(runs);
});
