import { expect, it } from 'vitest';
import { budget } from '../campaign/budget.ts';
import { walkCampaign } from '../campaign/campaign.ts';

/** A small share of the campaign (npm run campaign), from a new seed each time; a failure names its seed. */
const WALKS = 60;

it('whatever is typed, an interview goes on, loses nothing and comes to an end', () => {
  const met = walkCampaign({ runs: WALKS, seed: budget().seed });
  for (const what of ['ask', 'review', 'refused', 'outcome: plan'])
    expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
}, 180_000);
