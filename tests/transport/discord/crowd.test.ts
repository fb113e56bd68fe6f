import { expect, it } from 'vitest';
import { crowd } from './crowd.ts';

it('a crowd is served through failing calls and a gateway that is cut: no answer is lost or doubled', {
  timeout: 120_000,
}, async () => {
  // How quick the bot is, the campaign asks.
  const met = await crowd({ people: 40, seed: 7, cutEvery: 700, slowness: 10 });
  expect(met.unexcused).toBe(0);
  expect(met.answers).toBe(200);
  expect(met.callsThatFailed).toBeGreaterThan(5);
  expect(met.cuts).toBeGreaterThan(0);
});
