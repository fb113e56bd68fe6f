import { expect, it } from 'vitest';
import { budget, tell } from './budget.ts';
import { garmentCampaign } from './campaign.ts';

const chosen = budget();

it(`knits ${chosen.runs} random garments to the stitch and row, from seed ${chosen.seed}`, () => {
  tell(`garments: EASEWRIGHT_RUNS=${chosen.runs} EASEWRIGHT_SEED=${chosen.seed}`);
  const met = garmentCampaign(chosen);
  for (const [what, times] of [...met].sort()) tell(`  ${String(times).padStart(7)}  ${what}`);
  expect(met.get('body knitted')).toBeGreaterThan(0);
});
