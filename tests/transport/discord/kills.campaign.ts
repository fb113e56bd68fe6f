import { expect, it } from 'vitest';
import { budget, tell } from '../../campaign/budget.ts';
import { killAgainAndAgain } from './kills.ts';

const { seed } = budget();
const TIMES = 200;

it(`the bot killed ${TIMES} times loses no answer and doubles none`, async () => {
  tell(`kills: EASEWRIGHT_SEED=${seed}`);
  const met = await killAgainAndAgain({ times: TIMES, seed, people: 20, longestLife: 120 });
  for (const [what, times] of Object.entries(met)) tell(`  ${String(times).padStart(7)}  ${what}`);
  expect(met.interrupted).toBeGreaterThan(TIMES / 10);
  expect(met.keptUnseen).toBeGreaterThan(0);
});
