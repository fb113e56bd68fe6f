import { expect, it } from 'vitest';
import { budget, tell } from './budget.ts';
import { walkCampaign } from './campaign.ts';

const { runs, seed } = budget();
/** A walk of some forty turns takes about as long as ten garments. */
const walks = Math.ceil(runs / 10);

it(`walks ${walks} times through the interviews, whatever is said, from seed ${seed}`, () => {
  tell(`walks: EASEWRIGHT_RUNS=${runs} EASEWRIGHT_SEED=${seed}`);
  const met = walkCampaign({ runs: walks, seed });
  for (const [what, times] of [...met].sort()) tell(`  ${String(times).padStart(7)}  ${what}`);
  expect(met.get('outcome: plan')).toBeGreaterThan(0);
});
