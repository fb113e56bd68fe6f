import { expect, it } from 'vitest';
import { budget, tell } from './budget.ts';
import { wholeCampaign } from './whole-campaign.ts';

const chosen = budget();

it(`knits ${chosen.runs} plans of the whole way to the stitch and row, from seed ${chosen.seed}`, () => {
  tell(`whole plans: EASEWRIGHT_RUNS=${chosen.runs} EASEWRIGHT_SEED=${chosen.seed}`);
  const met = wholeCampaign(chosen);
  for (const [what, times] of [...met].sort()) tell(`  ${String(times).padStart(7)}  ${what}`);
  expect(met.get('back and front knitted to the shoulders')).toBeGreaterThan(0);
});
