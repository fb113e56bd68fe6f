/** The connection to Discord: what is listened to, and how it is kept. */
import { Client, type ClientOptions, Events, GatewayIntentBits, Options, Partials } from 'discord.js';
import { identifyGate } from './identify.ts';
import { factsOf } from './log.ts';
import type { DiscordParts } from './parts.ts';

export interface Connecting {
  readonly api: string;
  readonly token: string;
  /** Which part of the servers this process answers. */
  readonly shard: { readonly id: number; readonly of: number };
  /** Between two identifies, in milliseconds. */
  readonly identifyApart: number;
}

/** How the connection stands. `refused`: Discord takes us no more, and trying again does not help. */
export type Line = 'connecting' | 'ready' | 'lost' | 'refused';

/**
 * Deeds come without any intent; of messages only the direct ones are heard. No intent needs the platform's leave.
 * Nothing of people, servers or messages is remembered.
 */
export function makeClient({ chat, clock }: DiscordParts, { api, shard, identifyApart }: Connecting): Client {
  const options: ClientOptions = {
    intents: [GatewayIntentBits.DirectMessages],
    partials: [Partials.Channel],
    allowedMentions: { parse: [] },
    rest: { api, version: '10' },
    shards: [shard.id],
    shardCount: shard.of,
    makeCache: Options.cacheWithLimits({
      MessageManager: 0,
      GuildMemberManager: 0,
      UserManager: { maxSize: 0, keepOverLimit: (user) => user.id === user.client.user.id },
      DMMessageManager: 0,
    }),
    ws: {
      buildIdentifyThrottler: async (manager) => {
        const { session_start_limit: limit } = await manager.fetchGatewayInformation();
        return identifyGate(chat, clock, limit.max_concurrency, identifyApart);
      },
    },
  };
  return new Client(options);
}

/**
 * Tells of every change of the line, until the function that it gives is called. The library reconnects and resumes by
 * itself.
 */
export function watchLine(client: Client, { log }: DiscordParts, told: (line: Line) => void): () => void {
  let watching = true;
  const change = (line: Line, facts = {}) => {
    if (!watching) return;
    log.info('line', { line, ...facts });
    told(line);
  };
  client.on(Events.ShardReady, () => change('ready'));
  client.on(Events.ShardResume, () => change('ready', { resumed: true }));
  client.on(Events.ShardReconnecting, () => change('lost'));
  client.on(Events.ShardDisconnect, ({ code }) => change('refused', { code }));
  client.on(Events.ShardError, (error) => log.warn('line failed', factsOf(error)));
  client.on(Events.Error, (error) => log.error('client failed', factsOf(error)));
  client.rest.on('rateLimited', ({ global, scope, timeToReset }) =>
    log.info('rate limit', { global, scope, wait: timeToReset }),
  );
  return () => {
    watching = false;
  };
}
