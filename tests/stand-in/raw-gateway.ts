/** A bare gateway connection, for what a well-behaved library never sends. */
import { WebSocket } from 'ws';
import { isObject, type JsonObject } from './json.ts';
import { later, within } from './later.ts';
import type { StandIn } from './stand-in.ts';

/** One frame from the gateway; `t` and `s` are set on events (op 0). */
export interface Frame {
  readonly op: number;
  readonly t?: string;
  readonly s?: number;
  readonly d: unknown;
}

export class RawGateway {
  readonly frames: Frame[] = [];
  /** The code with which the stand-in closed the connection. */
  readonly closed: Promise<number>;
  private readonly socket: WebSocket;
  private readonly token: string;
  private readonly news = new Set<() => void>();

  constructor(standIn: StandIn) {
    this.token = standIn.token;
    this.socket = new WebSocket(
      `${standIn.api.replace('http', 'ws').replace('/api', '/')}?v=10&encoding=json`,
    );
    this.socket.on('message', (data) => {
      this.frames.push(JSON.parse(`${data}`));
      for (const tell of [...this.news]) tell();
    });
    this.closed = new Promise((resolve) => this.socket.on('close', resolve));
  }

  /** The next frame that is so, those already there included. */
  async frame(isSo: (frame: Frame) => boolean, what = 'a frame'): Promise<Frame> {
    const coming = later<Frame>();
    const look = () => {
      const found = this.frames.find(isSo);
      if (found) coming.resolve(found);
    };
    this.news.add(look);
    look();
    const nothing = () =>
      new Error(`No ${what} came; ${JSON.stringify(this.frames.map(({ op, t }) => t ?? op))}`);
    return within(coming.promise, 5000, nothing).finally(() => this.news.delete(look));
  }

  /** The first, second ... interaction the app hears of. */
  async interaction(number = 1): Promise<JsonObject> {
    const all = () => this.frames.filter((frame) => frame.t === 'INTERACTION_CREATE');
    await this.frame(() => all().length >= number, `interaction ${number}`);
    const data = all()[number - 1]?.d;
    return isObject(data) ? data : {};
  }

  event(name: string): Promise<Frame> {
    return this.frame((frame) => frame.t === name, name);
  }

  opcode(op: number): Promise<Frame> {
    return this.frame((frame) => frame.op === op, `opcode ${op}`);
  }

  send(op: number, d: unknown): void {
    this.socket.send(JSON.stringify({ op, d }));
  }

  async identify(own: JsonObject = {}): Promise<void> {
    await this.opcode(10);
    this.send(2, { token: this.token, intents: 1, properties: { os: 'linux' }, ...own });
  }

  /** Identifies and returns the session id. */
  async ready(own: JsonObject = {}): Promise<string> {
    await this.identify(own);
    const { d } = await this.event('READY');
    return isObject(d) ? `${d.session_id}` : '';
  }

  async resume(session: string, seq: number): Promise<void> {
    await this.opcode(10);
    this.send(6, { token: this.token, session_id: session, seq });
  }

  close(code: number): void {
    this.socket.close(code);
  }
}
