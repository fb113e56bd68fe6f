/** Everything the app sent over HTTP, in order, with what became of it. */
import { EventEmitter } from 'node:events';
import type { FilePart } from './rules/files.ts';
import type { Violation } from './rules/spot.ts';

export type Verdict =
  | { readonly kind: 'pending' }
  | { readonly kind: 'accepted'; readonly status: number }
  | { readonly kind: 'refused'; readonly status: number; readonly code: number; readonly message: string }
  /** A fault was played instead of an answer; its `kind`, and whether the request was worked all the same. */
  | { readonly kind: 'faulted'; readonly fault: string; readonly worked: boolean };

export interface RecordedRequest {
  readonly number: number;
  /** When it had arrived whole, in milliseconds since 1970. */
  readonly at: number;
  readonly method: string;
  /** The path after `/api/v10`, without its query. */
  readonly path: string;
  readonly query: string;
  /** Method and pattern, `POST /channels/:channel/messages`; undefined for an address that does not exist. */
  readonly route: string | undefined;
  readonly body: unknown;
  readonly files: readonly FilePart[];
  readonly violations: Violation[];
  /** Mentions in the message that would have called somebody. */
  readonly mentions: string[];
  verdict: Verdict;
}

/** A violation together with the request that committed it. */
export interface Breach extends Violation {
  readonly request: RecordedRequest;
}

type Arrival = Omit<RecordedRequest, 'number' | 'violations' | 'mentions' | 'verdict'>;

export class RequestRecord {
  readonly requests: RecordedRequest[] = [];
  readonly violations: Breach[] = [];
  /** Mentions that would have fired, each with its request. */
  readonly mentions: { readonly mention: string; readonly request: RecordedRequest }[] = [];
  private readonly arrivals = new EventEmitter();
  private readonly routes = new Map<string, RecordedRequest[]>();

  add(arrival: Arrival): RecordedRequest {
    const number = this.requests.length + 1;
    const request: RecordedRequest = {
      ...arrival,
      number,
      violations: [],
      mentions: [],
      verdict: { kind: 'pending' },
    };
    this.requests.push(request);
    if (request.route) this.of(request.route).push(request);
    this.arrivals.emit('request');
    return request;
  }

  breach(request: RecordedRequest, found: readonly Violation[]): void {
    request.violations.push(...found);
    for (const violation of found) this.violations.push({ ...violation, request });
  }

  fired(request: RecordedRequest, mentions: readonly string[]): void {
    request.mentions.push(...mentions);
    for (const mention of mentions) this.mentions.push({ mention, request });
  }

  /** The requests to one route, such as `PATCH /webhooks/:app/:token/messages/:message`. */
  to(route: string): readonly RecordedRequest[] {
    return this.of(route);
  }

  /** Resolves when so many more requests have arrived. */
  further(count: number): Promise<void> {
    const wanted = this.requests.length + count;
    return new Promise((arrived) => {
      const look = () => {
        if (this.requests.length < wanted) return;
        this.arrivals.off('request', look);
        arrived();
      };
      this.arrivals.on('request', look);
    });
  }

  private of(route: string): RecordedRequest[] {
    const known = this.routes.get(route);
    if (known) return known;
    const list: RecordedRequest[] = [];
    this.routes.set(route, list);
    return list;
  }
}
