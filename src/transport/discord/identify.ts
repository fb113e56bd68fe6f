/** The platform's limit on opening sessions, kept by all processes together through a gate in the database. */
import { setTimeout as wait } from 'node:timers/promises';
import type { IIdentifyThrottler } from 'discord.js';
import type { Chat } from './parts.ts';

/** `buckets`: how many shards may identify at once, each in its own bucket (events/gateway, max_concurrency). */
export function identifyGate(
  chat: Pick<Chat, 'passAt'>,
  clock: () => number,
  buckets: number,
  apart: number,
): IIdentifyThrottler {
  return {
    waitForIdentify: async (shard, signal) => {
      const at = chat.passAt(`identify ${shard % buckets}`, apart, clock());
      await wait(at - clock(), undefined, { signal });
    },
  };
}
