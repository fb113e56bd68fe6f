import { expect, it } from 'vitest';
import { loadFlows } from '../../src/library.ts';
import { budget } from '../campaign/budget.ts';
import { walkCampaign } from '../campaign/campaign.ts';

/**
 * A small share of the campaign (npm run campaign:walks, 10,000 a chapter), the same each time, so that it fails for what
 * was changed alone. A tenth of it would take over twenty minutes here: a walk of some forty turns takes about 50 ms.
 */
const WALKS_A_CHAPTER = 3;
const WALKS = WALKS_A_CHAPTER * loadFlows().size;

it('whatever is typed, an interview goes on, loses nothing and comes to an end', () => {
  const met = walkCampaign({ runs: WALKS, seed: budget(1).seed });
  for (const what of ['ask', 'review', 'refused', 'outcome: plan'])
    expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
}, 180_000);
