/** A tenth of the campaign's walks (npm run campaign:walks), the same each time, so that it fails for what was changed alone. */
import type { CompiledFlow } from '../../src/flow/compile.ts';
import { loadFlows } from '../../src/library.ts';
import { budget } from '../campaign/budget.ts';
import { walkCampaign } from '../campaign/campaign.ts';

const WALKS_A_CHAPTER = 1000;
/** Files that share the walking, so that it is spread over the processors. */
const FILES = 4;

/** Every fourth chapter with its name; `file` counts from nought. */
export function chaptersOf(file: number): [string, CompiledFlow][] {
  return [...loadFlows()].filter((_, place) => place % FILES === file);
}

/** What a thousand walks through a chapter never met though they must, and how many came to no outcome. */
export function lackingIn(flow: CompiledFlow): { readonly neverMet: string[]; readonly unended: number } {
  const met = walkCampaign({ runs: WALKS_A_CHAPTER, seed: budget(1).seed }, [flow]);
  const times = (what: string) => met.get(what) ?? 0;
  const ended = times('outcome: plan') + times('outcome: cannot');
  return {
    neverMet: ['ask', 'review', 'refused', 'outcome: plan'].filter((what) => times(what) === 0),
    unended: Math.max(0, WALKS_A_CHAPTER - ended),
  };
}

/** In milliseconds: the longest chapter walks for a minute, on a busy machine for several. */
export const PATIENCE = 600_000;
