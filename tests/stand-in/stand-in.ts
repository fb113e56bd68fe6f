/**
 * A stand-in for Discord's HTTP and gateway interfaces, for tests: on the loopback address alone, stricter
 * than the platform, with people who use the app. Figures from the developer documentation, 2026-08-06.
 *
 * A client of discord.js logs in to it with `rest: { api: standIn.api, version: '10' }` and `standIn.token`.
 */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { messageEvent } from './events.ts';
import { Faults } from './faults.ts';
import { Gateway } from './gateway.ts';
import { HttpSide } from './http.ts';
import { Interactions } from './interactions.ts';
import { Messages } from './messages.ts';
import { Patience } from './patience.ts';
import { Person } from './person.ts';
import type { Platform } from './platform.ts';
import { RequestRecord } from './record.ts';
import { Registry } from './registry.ts';
import { applicationRoutes } from './routes/application.ts';
import { callbackRoutes } from './routes/callbacks.ts';
import { channelRoutes } from './routes/channels.ts';
import { webhookRoutes } from './routes/webhooks.ts';
import { PLATFORM_SETTINGS, type Settings } from './settings.ts';
import { type Channel, type Guild, World } from './world.ts';

export async function startStandIn(settings: Partial<Settings> = {}): Promise<StandIn> {
  // Connections break only where a fault breaks them: no time limits, and room for a crowd to connect at once.
  const server = createServer({ keepAliveTimeout: 0, requestTimeout: 0, headersTimeout: 0 });
  const standIn = new StandIn(server, { ...PLATFORM_SETTINGS, ...settings });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', 4096, listening));
  const { port } = server.address() as AddressInfo;
  standIn.listensAt(port);
  return standIn;
}

export class StandIn {
  readonly world = new World();
  readonly record = new RequestRecord();
  readonly faults = new Faults();
  readonly gateway: Gateway;
  readonly interactions: Interactions;
  readonly registry = new Registry();
  /** A server with the app in it and a channel 'general', there from the start. */
  readonly guild: Guild;
  private readonly patience: Patience;
  private readonly server: Server;
  private readonly http: HttpSide;
  private readonly platform: Platform;

  constructor(server: Server, settings: Settings) {
    const { world, registry, record, faults } = this;
    this.server = server;
    this.gateway = new Gateway(server, settings, world, faults);
    this.interactions = new Interactions(settings);
    this.patience = new Patience(settings.patienceMs);
    const { gateway, interactions, patience } = this;
    const messages = new Messages((change) => {
      const event = messageEvent(this.platform, change);
      if (event) gateway.dispatch(event);
    });
    const address = { http: '', gateway: '' };
    this.platform = { settings, world, messages, interactions, patience, registry, gateway, address };
    const routes = [callbackRoutes, webhookRoutes, channelRoutes, applicationRoutes].flatMap((make) =>
      make(this.platform),
    );
    this.http = new HttpSide(routes, { settings, token: world.token, record, faults, messages });
    server.on('request', (request, response) => void this.http.serve(request, response));
    this.guild = world.addGuild('a knitting circle');
  }

  /** Base address for the client's option `rest.api`, without the version. */
  get api(): string {
    return `${this.platform.address.http}/api`;
  }

  /** The bot token this stand-in takes. */
  get token(): string {
    return this.world.token;
  }

  get appId(): string {
    return this.world.appId;
  }

  /** The first channel of a server. */
  channelOf(guild = this.guild): Channel {
    const [channel] = guild.channels;
    if (!channel) throw new Error(`The server '${guild.name}' has no channel.`);
    return channel;
  }

  /** A new person, to begin with in the first server's channel. */
  person(name: string, locale = 'en-US'): Person {
    return new Person(this.platform, this.world.addAccount(name, locale), this.channelOf());
  }

  listensAt(port: number): void {
    this.platform.address.http = `http://127.0.0.1:${port}`;
    this.platform.address.gateway = `ws://127.0.0.1:${port}`;
    this.gateway.listensAt(this.platform.address.gateway);
  }

  /** The app is gone for good: nobody waits for what it may have been about to answer. */
  giveUp(): void {
    this.interactions.lapse();
    this.patience.giveUp();
  }

  async close(): Promise<void> {
    this.http.close();
    this.interactions.close();
    this.gateway.close();
    const closed = new Promise((done) => this.server.close(done));
    this.server.closeAllConnections();
    await closed;
  }
}
