import { expect, it } from 'vitest';
import { budget, tell } from '../../campaign/budget.ts';
import { crowd } from './crowd.ts';

const { seed } = budget();
const PEOPLE = 500;
const SLOWNESS = Number(process.env.EASEWRIGHT_SLOWNESS ?? 1);

it(`${PEOPLE} people at once are served through failing calls and a gateway that is cut`, async () => {
  tell(`crowd: EASEWRIGHT_SEED=${seed}`);
  if (SLOWNESS !== 1)
    tell(
      `  EASEWRIGHT_SLOWNESS=${SLOWNESS}: all times are so many times as long, three seconds are ${3 * SLOWNESS}`,
    );
  const met = await crowd({ people: PEOPLE, seed, cutEvery: 3000 * SLOWNESS, slowness: SLOWNESS });
  for (const [what, times] of Object.entries(met)) tell(`  ${String(times).padStart(7)}  ${what}`);
  expect(met.unexcused).toBe(0);
  expect(met.answers).toBe(PEOPLE * 5);
  expect(met.cuts).toBeGreaterThan(2);
});
