import { expect, it } from 'vitest';
import { budget } from '../campaign/budget.ts';
import { walkCampaign } from '../campaign/campaign.ts';

/** A small share of the campaign (npm run campaign), the same each time, so that it fails for what was changed alone. */
const WALKS = 60;

it('whatever is typed, an interview goes on, loses nothing and comes to an end', () => {
  const met = walkCampaign({ runs: WALKS, seed: budget(1).seed });
  for (const what of ['ask', 'review', 'refused', 'outcome: plan'])
    expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
}, 180_000);
