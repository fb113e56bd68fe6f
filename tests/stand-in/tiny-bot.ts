/** A small real discord.js client, logged in to a stand-in. */
import { setTimeout as wait } from 'node:timers/promises';
import {
  Client,
  type ClientOptions,
  Events,
  GatewayIntentBits,
  type Interaction,
  Partials,
} from 'discord.js';
import type { StandIn } from './stand-in.ts';

export interface TinyBot {
  readonly client: Client<true>;
  /** What its handler threw, in order. */
  readonly errors: unknown[];
  stop(): Promise<void>;
}

/** Logs in, answers interactions with `work`, and keeps what `work` throws instead of dying of it. */
export async function tinyBot(
  standIn: Pick<StandIn, 'api' | 'token'>,
  work: (interaction: Interaction) => Promise<unknown>,
  options: Partial<ClientOptions> = {},
): Promise<TinyBot> {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.DirectMessages],
    partials: [Partials.Channel],
    allowedMentions: { parse: [] },
    // A crowd on a loaded machine may wait longer than the library's fifteen seconds, after which it sends a call twice.
    rest: { api: standIn.api, version: '10', timeout: 60_000 },
    ...options,
  });
  const errors: unknown[] = [];
  client.on(Events.Error, (error) => errors.push(error));
  client.on(Events.InteractionCreate, (interaction) => {
    work(interaction).catch((error: unknown) => errors.push(error));
  });
  const ready = new Promise<Client<true>>((isReady) => client.once(Events.ClientReady, isReady));
  await client.login(standIn.token);
  return { client: await ready, errors, stop: () => stop(client) };
}

/** The library never finishes destroying a client that is not ready, so it gets a second for it. */
async function stop(client: Client): Promise<void> {
  await Promise.race([client.destroy(), wait(1000, undefined, { ref: false })]);
}
