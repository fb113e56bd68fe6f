/** Ids of the platform: milliseconds since its epoch in the upper 42 bits, a counter in the lower 22. */

/** First millisecond of 2015, the platform's epoch (documentation page `reference`, Snowflakes). */
const EPOCH_MS = 1_420_070_400_000n;

let previous = 0n;

/** A new id, larger than every id made before it in this process. */
export function newId(): string {
  const fromClock = (BigInt(Date.now()) - EPOCH_MS) << 22n;
  previous = fromClock > previous ? fromClock : previous + 1n;
  return previous.toString();
}

/** The shard that hears of a guild: `(guild_id >> 22) % num_shards` (documentation page `events/gateway`). */
export function shardOf(guildId: string, shards: number): number {
  return Number((BigInt(guildId) >> 22n) % BigInt(shards));
}
