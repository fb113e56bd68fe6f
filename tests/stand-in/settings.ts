/** What a test may set about the stand-in; the defaults are the platform's own figures. */

export interface Settings {
  /** Time for the first answer to an interaction, in milliseconds. */
  readonly acknowledgeWithinMs: number;
  /** How long an interaction's token serves edits and follow-ups, in milliseconds. */
  readonly tokenLifetimeMs: number;
  /** How long people wait for what follows an acknowledgement, in milliseconds; not the platform's. */
  readonly patienceMs: number;
  /** 'demanded': text without `allowed_mentions: { parse: [] }` is a violation; mentions that fire are recorded either way. */
  readonly silence: 'demanded' | 'not demanded';
  /** Privileged intents the app was granted, as bits. */
  readonly grantedIntents: number;
  /** Identifies at once per bucket, the bucket's length, and identifies in a day. */
  readonly identify: { readonly maxConcurrency: number; readonly bucketMs: number; readonly perDay: number };
  /** Shards recommended by `GET /gateway/bot`. */
  readonly shards: number;
  readonly heartbeatMs: number;
  /** Requests with the bot's token in one second; those with an interaction's do not count. */
  readonly requestsPerSecond: number;
  /** Requests to one route and channel (or webhook) in one window, as told in the `X-RateLimit` headers. */
  readonly perRoute: { readonly limit: number; readonly windowMs: number };
}

/** Figures of the developer documentation, 2026-08-06; `perRoute` is not documented and is set wide. */
export const PLATFORM_SETTINGS: Settings = {
  acknowledgeWithinMs: 3000,
  tokenLifetimeMs: 15 * 60_000,
  patienceMs: 15_000,
  silence: 'demanded',
  grantedIntents: 0,
  identify: { maxConcurrency: 1, bucketMs: 5000, perDay: 1000 },
  shards: 1,
  heartbeatMs: 41_250,
  requestsPerSecond: 50,
  perRoute: { limit: 50, windowMs: 1000 },
};
