/** The gateway: opens sessions, hands out events, and can be cut, deafened or made to forget. */
import type { Server } from 'node:http';
import { type WebSocket, WebSocketServer } from 'ws';
import { Connection, type Switchboard } from './connection.ts';
import type { Faults } from './faults.ts';
import { IdentifyLimit } from './identify-limit.ts';
import type { JsonObject } from './json.ts';
import type { Session, ShardPlace } from './session.ts';
import type { Settings } from './settings.ts';
import { shardOf } from './snowflake.ts';
import { guildOnWire, userOnWire } from './wire.ts';
import type { World } from './world.ts';

/** How long an event waits for another one to come before it. */
const HOLD_MS = 200;
const GUILDS_INTENT = 1 << 0;
const MESSAGE_CONTENT_INTENT = 1 << 15;

export interface GatewayEvent {
  readonly name: string;
  readonly data: JsonObject;
  /** The data for sessions without the message content intent, where they differ. */
  readonly withoutContent?: JsonObject;
  /** The server it happened in; everything else is heard by shard 0. */
  readonly guildId?: string | undefined;
  /** The intent that must be on; interactions need none. */
  readonly intent?: number;
}

/** Something the app sent over the gateway. */
export interface ReceivedFrame {
  readonly op: number;
  readonly at: number;
  readonly data: unknown;
  readonly shard: ShardPlace | undefined;
}

export class Gateway {
  readonly identifyLimit: IdentifyLimit;
  /** Every frame of the app, heartbeats (1), identifies (2) and resumes (6) among them. */
  readonly received: ReceivedFrame[] = [];
  private readonly settings: Settings;
  private readonly world: World;
  private readonly faults: Faults;
  private readonly sockets: WebSocketServer;
  private readonly sessions = new Map<string, Session>();
  private readonly timers = new Set<NodeJS.Timeout>();
  private held: GatewayEvent[] = [];
  private deaf = false;
  private address = '';

  constructor(server: Server, settings: Settings, world: World, faults: Faults) {
    this.settings = settings;
    this.world = world;
    this.faults = faults;
    this.identifyLimit = new IdentifyLimit(settings.identify);
    this.sockets = new WebSocketServer({ server });
    this.sockets.on('connection', (socket) => this.connect(socket));
  }

  /** The address apps are told to connect to. */
  listensAt(address: string): void {
    this.address = address;
  }

  /** Hands an event to the sessions that hear it, unless a fault holds it up. */
  dispatch(event: GatewayEvent): void {
    const fault = this.faults.forEvent(event.name);
    switch (fault?.kind) {
      case undefined:
        this.deliver(event);
        break;
      case 'twice':
        this.deliver(event);
        this.deliver(event);
        break;
      case 'delay':
        this.after(fault.ms, () => this.deliver(event));
        break;
      case 'after the next':
        this.held.push(event);
        this.after(HOLD_MS, () => this.release());
        break;
      default:
        fault satisfies undefined;
    }
  }

  /** Closes the connections with a code; the app may resume after most (not 4004 and 4010 to 4014). */
  cut(code = 4000, shardId?: number): void {
    for (const session of this.connected(shardId)) session.cut(code);
  }

  /** Breaks the connections off without a closing word. */
  breakOff(): void {
    for (const socket of this.sockets.clients) socket.terminate();
  }

  /** Asks the app to reconnect (opcode 7). */
  askToReconnect(shardId?: number): void {
    for (const session of this.connected(shardId)) session.tell(7, null);
  }

  /** Tells the app its session is invalid (opcode 9); one that is not resumable is forgotten. */
  invalidate(resumable: boolean, shardId?: number): void {
    for (const session of this.connected(shardId)) {
      if (!resumable) this.sessions.delete(session.id);
      session.tell(9, resumable);
    }
  }

  /** Forgets the sessions that are cut off now, so that their resume is refused. */
  forgetSessions(): void {
    for (const session of this.sessions.values()) if (!session.isConnected) this.sessions.delete(session.id);
  }

  /** Leaves heartbeats unanswered, or answers them again. */
  ignoreHeartbeats(deaf: boolean): void {
    this.deaf = deaf;
  }

  connected(shardId?: number): readonly Session[] {
    return [...this.sessions.values()].filter(
      (session) => session.isConnected && (shardId === undefined || session.shard.id === shardId),
    );
  }

  close(): void {
    for (const timer of this.timers) clearTimeout(timer);
    for (const socket of this.sockets.clients) socket.terminate();
    this.sockets.close();
  }

  private deliver(event: GatewayEvent): void {
    for (const session of this.sessions.values()) {
      if (!hears(session, event)) continue;
      const masked = event.withoutContent && !(session.intents & MESSAGE_CONTENT_INTENT);
      session.dispatch(event.name, masked ? (event.withoutContent ?? {}) : event.data);
    }
    this.release();
  }

  private release(): void {
    const waiting = this.held;
    this.held = [];
    for (const event of waiting) this.deliver(event);
  }

  private after(ms: number, work: () => void): void {
    const timer = setTimeout(() => {
      this.timers.delete(timer);
      work();
    }, ms);
    this.timers.add(timer);
  }

  private connect(socket: WebSocket): void {
    const board: Switchboard = {
      token: this.world.token,
      grantedIntents: this.settings.grantedIntents,
      heartbeatMs: this.settings.heartbeatMs,
      answersHeartbeats: () => !this.deaf,
      mayIdentify: (shardId) => this.identifyLimit.take(shardId, Date.now()),
      opened: (session) => this.open(session),
      sessionOf: (id) => this.sessions.get(id),
      ended: (session) => this.sessions.delete(session.id),
      received: (op, data, shard) => this.received.push({ op, at: Date.now(), data, shard }),
    };
    new Connection(socket, board);
  }

  private open(session: Session): void {
    for (const old of this.sessions.values()) {
      if (old.shard.id === session.shard.id && !old.isConnected) this.sessions.delete(old.id);
    }
    this.sessions.set(session.id, session);
    const guilds = [...this.world.guilds.values()].filter(
      (guild) => guild.hasApp && shardOf(guild.id, session.shard.of) === session.shard.id,
    );
    session.dispatch('READY', {
      v: 10,
      user: userOnWire(this.world.bot),
      guilds: guilds.map((guild) => ({ id: guild.id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: this.address,
      shard: [session.shard.id, session.shard.of],
      application: { id: this.world.appId, flags: 0 },
    });
    if (!(session.intents & GUILDS_INTENT)) return;
    for (const guild of guilds) session.dispatch('GUILD_CREATE', guildOnWire(guild, this.world.bot));
  }
}

function hears(session: Session, event: GatewayEvent): boolean {
  const shard = event.guildId === undefined ? 0 : shardOf(event.guildId, session.shard.of);
  const wanted = event.intent === undefined || (session.intents & event.intent) !== 0;
  return shard === session.shard.id && wanted;
}
