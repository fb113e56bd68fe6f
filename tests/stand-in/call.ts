/** One request of the app while it is worked: its parts, and the checks of its body. */
import { isObject, type JsonObject } from './json.ts';
import type { RecordedRequest, RequestRecord } from './record.ts';
import { invalidForm } from './refusal.ts';
import type { FilePart } from './rules/files.ts';
import { firingMentions } from './rules/mentions.ts';
import { textsWithMentions } from './rules/messages.ts';
import { inspect, type Rule } from './rules/spot.ts';

export interface Reply {
  readonly status: number;
  readonly body?: unknown;
}

export type Handler = (call: Call) => Reply;

/** A route: method and pattern; names after a colon become `params`. */
export interface Route {
  readonly pattern: string;
  /** Interactions and webhooks carry their own token in the address; all else needs the bot's. */
  readonly needsToken: boolean;
  readonly handler: Handler;
}

export class Call {
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  private readonly request: RecordedRequest;
  private readonly record: RequestRecord;

  constructor(request: RecordedRequest, params: Readonly<Record<string, string>>, record: RequestRecord) {
    this.request = request;
    this.params = params;
    this.query = new URLSearchParams(request.query);
    this.record = record;
  }

  get files(): readonly FilePart[] {
    return this.request.files;
  }

  get body(): unknown {
    return this.request.body;
  }

  /** The body as an object; anything else reads as an empty one (the rules say what is wrong with it). */
  get form(): JsonObject {
    return isObject(this.body) ? this.body : {};
  }

  param(name: string): string {
    return this.params[name] ?? '';
  }

  /** Records every breach of the rule; `refuseIfWrong` then refuses, after what else stands against the call. */
  check(rule: Rule): void {
    this.record.breach(this.request, inspect(this.body, rule));
  }

  refuseIfWrong(): void {
    if (this.request.violations.length > 0) throw invalidForm(this.request.violations);
  }

  /** Records the mentions of a message that call somebody. */
  noteMentions(message: JsonObject): void {
    const firing = firingMentions(textsWithMentions(message), message.allowed_mentions);
    this.record.fired(this.request, firing);
  }
}
