/** One gateway session: its numbered events, kept until the app has confirmed them. */
import { randomUUID } from 'node:crypto';
import { WebSocket } from 'ws';
import type { JsonObject } from './json.ts';

export interface ShardPlace {
  readonly id: number;
  readonly of: number;
}

interface Kept {
  readonly sequence: number;
  readonly frame: string;
}

export class Session {
  readonly id = randomUUID().replaceAll('-', '');
  readonly shard: ShardPlace;
  readonly intents: number;
  sequence = 0;
  private kept: Kept[] = [];
  private socket: WebSocket | undefined;

  constructor(shard: ShardPlace, intents: number, socket: WebSocket) {
    this.shard = shard;
    this.intents = intents;
    this.socket = socket;
  }

  get isConnected(): boolean {
    return this.socket?.readyState === WebSocket.OPEN;
  }

  /** Sends an event with the next number, or keeps it for the resume while nobody is connected. */
  dispatch(name: string, data: JsonObject): void {
    this.sequence += 1;
    const frame = JSON.stringify({ op: 0, t: name, s: this.sequence, d: data });
    this.kept.push({ sequence: this.sequence, frame });
    if (this.isConnected) this.socket?.send(frame);
  }

  /** Goes on over a new socket: everything after `sequence` again, then RESUMED. */
  resume(socket: WebSocket, sequence: number): void {
    this.cut(4000);
    this.socket = socket;
    this.confirm(sequence);
    for (const { frame } of this.kept) socket.send(frame);
    this.dispatch('RESUMED', {});
  }

  /** Events up to this number have arrived and are forgotten. */
  confirm(sequence: number): void {
    if ((this.kept[0]?.sequence ?? Number.POSITIVE_INFINITY) > sequence) return;
    this.kept = this.kept.filter((event) => event.sequence > sequence);
  }

  /** Sends something other than an event. */
  tell(op: number, d: unknown): void {
    if (this.isConnected) this.socket?.send(JSON.stringify({ op, d }));
  }

  cut(code: number): void {
    this.socket?.close(code);
    this.socket = undefined;
  }

  belongsTo(socket: WebSocket): boolean {
    return this.socket === socket;
  }
}
