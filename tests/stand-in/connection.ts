/** One connection of the app to the gateway: what it may send, and how it is answered (page `events/gateway`). */
import type { RawData, WebSocket } from 'ws';
import { isObject, type JsonObject, numberIn, objectIn, textIn } from './json.ts';
import { RateLimits } from './rate-limits.ts';
import { Session, type ShardPlace } from './session.ts';

/** Close codes of page `topics/opcodes-and-status-codes`. */
const CLOSE = {
  unknownOpcode: 4001,
  decodeError: 4002,
  notAuthenticated: 4003,
  authenticationFailed: 4004,
  alreadyAuthenticated: 4005,
  invalidSequence: 4007,
  rateLimited: 4008,
  sessionTimedOut: 4009,
  invalidShard: 4010,
  invalidIntents: 4013,
  disallowedIntents: 4014,
} as const;

/** Bytes of one event that an app sends. */
const LARGEST_FRAME = 4096;
/** Events an app sends over one connection. */
const SENDING = { limit: 120, windowMs: 60_000 };
/** Guild presences, guild members, message content. */
const PRIVILEGED_INTENTS = (1 << 8) | (1 << 1) | (1 << 15);
/** Intents 0 to 16, 20, 21, 24 and 25 exist. */
const ALL_INTENTS = 0x1ffff | (1 << 20) | (1 << 21) | (1 << 24) | (1 << 25);

/** What a connection needs of the gateway behind it. */
export interface Switchboard {
  readonly token: string;
  readonly grantedIntents: number;
  readonly heartbeatMs: number;
  /** False while heartbeats are left unanswered on purpose. */
  answersHeartbeats(): boolean;
  mayIdentify(shardId: number): 'allowed' | 'too soon' | 'spent';
  opened(session: Session): void;
  sessionOf(id: string): Session | undefined;
  ended(session: Session): void;
  received(op: number, data: unknown, shard: ShardPlace | undefined): void;
}

export class Connection {
  private readonly socket: WebSocket;
  private readonly board: Switchboard;
  private readonly sending = new RateLimits(SENDING);
  private session: Session | undefined;
  private heartbeatDue: NodeJS.Timeout | undefined;

  constructor(socket: WebSocket, board: Switchboard) {
    this.socket = socket;
    this.board = board;
    socket.on('message', (data) => this.hear(data));
    socket.on('close', (code) => this.closed(code));
    this.send(10, { heartbeat_interval: board.heartbeatMs });
    this.awaitHeartbeat();
  }

  private hear(data: RawData): void {
    const bytes = Buffer.isBuffer(data) ? data : Buffer.from(data as ArrayBuffer);
    const frame = bytes.length > LARGEST_FRAME ? undefined : parse(bytes.toString('utf8'));
    const op = frame ? numberIn(frame, 'op') : undefined;
    const problem = this.sending.take('', Date.now()).waitMs > 0 ? CLOSE.rateLimited : undefined;
    if (problem || !frame || op === undefined) this.socket.close(problem ?? CLOSE.decodeError);
    else {
      const close = this.work(op, frame);
      this.board.received(op, frame.d, this.session?.shard);
      if (close) this.socket.close(close);
    }
  }

  /** Works one event of the app; returns the code to close with where it was out of place. */
  private work(op: number, frame: JsonObject): number | undefined {
    switch (op) {
      case 1:
        return this.heartbeat(frame.d);
      case 2:
        return this.identify(objectIn(frame, 'd'));
      case 6:
        return this.resume(objectIn(frame, 'd'));
      case 3:
        return this.session ? undefined : CLOSE.notAuthenticated;
      default:
        return this.session ? CLOSE.unknownOpcode : CLOSE.notAuthenticated;
    }
  }

  private heartbeat(sequence: unknown): undefined {
    if (!this.board.answersHeartbeats()) return;
    this.awaitHeartbeat();
    if (typeof sequence === 'number') this.session?.confirm(sequence);
    this.send(11, undefined);
  }

  /** An app that misses two heartbeats in a row has lost its connection. */
  private awaitHeartbeat(): void {
    clearTimeout(this.heartbeatDue);
    const close = () => this.socket.close(CLOSE.sessionTimedOut);
    this.heartbeatDue = setTimeout(close, this.board.heartbeatMs * 2);
  }

  private identify(data: JsonObject): number | undefined {
    const problem = this.problemOf(data);
    if (problem) return problem;
    const shard = shardPlace(data);
    switch (this.board.mayIdentify(shard.id)) {
      case 'spent':
        return CLOSE.authenticationFailed;
      case 'too soon':
        this.send(9, false);
        return undefined;
      case 'allowed':
        this.session = new Session(shard, numberIn(data, 'intents') ?? 0, this.socket);
        this.board.opened(this.session);
        return undefined;
    }
  }

  private problemOf(data: JsonObject): number | undefined {
    if (this.session) return CLOSE.alreadyAuthenticated;
    const intents = numberIn(data, 'intents');
    if (intents === undefined || !isObject(data.properties)) return CLOSE.decodeError;
    if (textIn(data, 'token') !== this.board.token) return CLOSE.authenticationFailed;
    const shard = shardPlace(data);
    if (!(shard.id >= 0 && shard.id < shard.of)) return CLOSE.invalidShard;
    if (intents & ~ALL_INTENTS) return CLOSE.invalidIntents;
    return intents & PRIVILEGED_INTENTS & ~this.board.grantedIntents ? CLOSE.disallowedIntents : undefined;
  }

  private resume(data: JsonObject): number | undefined {
    if (this.session) return CLOSE.alreadyAuthenticated;
    if (textIn(data, 'token') !== this.board.token) return CLOSE.authenticationFailed;
    const session = this.board.sessionOf(textIn(data, 'session_id'));
    const sequence = numberIn(data, 'seq') ?? -1;
    if (!session) {
      this.send(9, false);
      return undefined;
    }
    if (sequence < 0 || sequence > session.sequence) return CLOSE.invalidSequence;
    this.session = session;
    session.resume(this.socket, sequence);
    return undefined;
  }

  /** Closing with 1000 or 1001 ends the session; any other close leaves it to be resumed. */
  private closed(code: number): void {
    clearTimeout(this.heartbeatDue);
    if (!this.session?.belongsTo(this.socket)) return;
    this.session.cut(code);
    if (code === 1000 || code === 1001) this.board.ended(this.session);
  }

  private send(op: number, d: unknown): void {
    this.socket.send(JSON.stringify({ op, d }));
  }
}

function shardPlace(data: JsonObject): ShardPlace {
  const given: readonly unknown[] = Array.isArray(data.shard) ? data.shard : [0, 1];
  return { id: Number(given[0]), of: Number(given[1]) };
}

function parse(text: string): JsonObject | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isObject(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
