import { expect, it } from 'vitest';
import { killAgainAndAgain } from './kills.ts';

const SEED = 20_261_125;

it('the bot killed at random moments loses no answer and doubles none, and every interview goes on from its last message', {
  timeout: 300_000,
}, async () => {
  const met = await killAgainAndAgain({ times: 5, seed: SEED, people: 6, longestLife: 60 });
  expect(met.answers).toBeGreaterThan(20);
});
