import { expect, it } from 'vitest';
import { budget } from '../campaign/budget.ts';
import { garmentCampaign } from '../campaign/campaign.ts';

/** A small share of the campaign (npm run campaign), the same each time, so that it fails for what was changed alone. */
const RUNS = 120;

it('garments of every construction come out of the needle as the engine states them, to the stitch and row', () => {
  const met = garmentCampaign({ runs: RUNS, seed: budget(1).seed });
  for (const what of ['body knitted', 'sleeve knitted', 'cap: cap', 'half way: mend ahead', 'yoke: yoke'])
    expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
}, 180_000);
