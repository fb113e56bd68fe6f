/** An app without a library: sends what it likes, so that the stand-in can refuse it. */
import { type JsonObject, textIn } from './json.ts';
import type { RawGateway } from './raw-gateway.ts';
import type { RecordedRequest } from './record.ts';
import type { StandIn } from './stand-in.ts';

export interface RawFile {
  readonly part: string;
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The HTTP status, the body, and what the stand-in recorded of the request. */
export interface RawAnswer {
  readonly status: number;
  readonly body: JsonObject;
  readonly recorded: RecordedRequest;
  /** Violations as 'code path'. */
  readonly breaches: readonly string[];
}

export class RawApp {
  private readonly standIn: StandIn;

  constructor(standIn: StandIn) {
    this.standIn = standIn;
  }

  async send(
    method: string,
    path: string,
    body?: unknown,
    files: readonly RawFile[] = [],
  ): Promise<RawAnswer> {
    const { requests } = this.standIn.record;
    const place = requests.length;
    const response = await fetch(`${this.standIn.api}/v10${path}`, {
      method,
      headers: {
        authorization: `Bot ${this.standIn.token}`,
        ...(files.length === 0 && { 'content-type': 'application/json' }),
      },
      ...(body !== undefined && { body: files.length === 0 ? JSON.stringify(body) : form(body, files) }),
    });
    const text = await response.text();
    const recorded = requests[place];
    if (!recorded) throw new Error('The request was not recorded.');
    const breaches = recorded.violations.map(({ code, path: where }) => `${code} ${where}`.trim());
    return { status: response.status, body: text === '' ? {} : JSON.parse(text), recorded, breaches };
  }

  /** Registers a command and returns once it can be used. */
  async register(...commands: readonly JsonObject[]): Promise<void> {
    const all = commands.map((command) => ({ description: 'A command.', ...command }));
    const answer = await this.send('PUT', `/applications/${this.standIn.appId}/commands`, all);
    if (answer.status !== 200) throw new Error(`Refused: ${textIn(answer.body, 'message')}`);
  }

  /** Answers what a deed made the gateway tell of, and gives the person's own promise back. */
  async answering<T>(gateway: RawGateway, deed: Promise<T>, body: unknown, number = 1): Promise<T> {
    deed.catch(() => {});
    const { id, token } = await gateway.interaction(number);
    await this.answer({ id: `${id}`, token: `${token}` }, body);
    return deed;
  }

  answer(interaction: { readonly id: string; readonly token: string }, body: unknown): Promise<RawAnswer> {
    return this.send('POST', `/interactions/${interaction.id}/${interaction.token}/callback`, body);
  }
}

function form(body: unknown, files: readonly RawFile[]): FormData {
  const data = new FormData();
  for (const file of files) data.append(file.part, new Blob([file.bytes]), file.name);
  data.append('payload_json', JSON.stringify(body));
  return data;
}
