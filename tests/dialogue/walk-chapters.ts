/** A tenth of the campaign's walks (npm run campaign:walks), the same each time, so that it fails for what was changed alone. */
import { expect, it } from 'vitest';
import { loadFlows } from '../../src/library.ts';
import { budget } from '../campaign/budget.ts';
import { walkCampaign } from '../campaign/campaign.ts';

const WALKS_A_CHAPTER = 1000;
/** Files that share the walking, so that it is spread over the processors. */
const FILES = 4;

/** Walks through every fourth chapter; `file` counts from nought. */
export function walkChapters(file: number): void {
  const chapters = [...loadFlows()].filter((_, place) => place % FILES === file);
  it.each(chapters)(
    '%s goes on whatever is typed, loses nothing and comes to an end',
    (_, flow) => {
      const met = walkCampaign({ runs: WALKS_A_CHAPTER, seed: budget(1).seed }, [flow]);
      for (const what of ['ask', 'review', 'refused', 'outcome: plan'])
        expect([what, (met.get(what) ?? 0) > 0]).toEqual([what, true]);
      const ends = (met.get('outcome: plan') ?? 0) + (met.get('outcome: cannot') ?? 0);
      expect(ends).toBeGreaterThanOrEqual(WALKS_A_CHAPTER);
    },
    600_000,
  );
}
