/** The HTTP side: receives a request, plays faults on it, finds its route, and records what became of it. */
import { setMaxListeners } from 'node:events';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { setTimeout as wait } from 'node:timers/promises';
import { Call, type Route } from './call.ts';
import type { Faults, RequestFault } from './faults.ts';
import { type Answer, limitHeaders, playedAnswer, rateLimited, refusalOf, send } from './http-answers.ts';
import type { Messages } from './messages.ts';
import { RateLimits, type Taken } from './rate-limits.ts';
import type { RecordedRequest, RequestRecord } from './record.ts';
import { noSuchRoute, Refusal, tooLarge, unauthorized } from './refusal.ts';
import { type Found, Router } from './router.ts';
import { REQUEST_LIMIT } from './rules/files.ts';
import type { Settings } from './settings.ts';
import { type Body, readBody } from './uploads.ts';

export class HttpSide {
  private readonly router: Router;
  private readonly global: RateLimits;
  private readonly perRoute: RateLimits;
  private readonly closing = new AbortController();
  private readonly token: string;
  private readonly record: RequestRecord;
  private readonly faults: Faults;
  private readonly messages: Messages;

  constructor(
    routes: readonly Route[],
    parts: { settings: Settings; token: string; record: RequestRecord; faults: Faults; messages: Messages },
  ) {
    this.router = new Router(routes);
    // Each delayed request waits on the one signal, and there may be hundreds.
    setMaxListeners(0, this.closing.signal);
    this.global = new RateLimits({ limit: parts.settings.requestsPerSecond, windowMs: 1000 });
    this.perRoute = new RateLimits(parts.settings.perRoute);
    this.token = parts.token;
    this.record = parts.record;
    this.faults = parts.faults;
    this.messages = parts.messages;
  }

  /** Works one request; never throws, whatever the app sent. */
  async serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://stand-in');
    if (url.pathname.startsWith('/attachments/')) return this.serveFile(url.pathname, response);
    const arrival = await this.receive(request, url);
    if (arrival === undefined) return;
    const fault = this.faults.forRequest(arrival.entry);
    if (fault?.kind === 'delay') await this.wait(fault.ms);
    if (this.closing.signal.aborted) return;
    const played = fault && playedAnswer(fault);
    if (played) {
      arrival.entry.verdict = { kind: 'faulted', fault: fault.kind, worked: false };
      return send(response, played);
    }
    if (fault?.kind === 'request lost') return breakOff(arrival.entry, fault, response, false);
    const answer = this.work(arrival, request.headers.authorization);
    if (fault?.kind === 'answer lost') return breakOff(arrival.entry, fault, response, true);
    send(response, answer);
  }

  close(): void {
    this.closing.abort();
  }

  /** Reads the request whole and enters it in the record; undefined where the app ended in the middle of it. */
  private async receive(request: IncomingMessage, url: URL): Promise<Arrival | undefined> {
    const method = request.method ?? 'GET';
    const bytes = await readAll(request);
    if (bytes === undefined) return undefined;
    const body = await readBody(request.headers['content-type'], bytes).catch(refusalOf);
    const read: Body = body instanceof Refusal ? { json: undefined, files: [], violations: [] } : body;
    const found = this.router.find(method, url.pathname);
    const path = url.pathname.replace(/^\/api\/v10/, '');
    const query = url.search.slice(1);
    const route = found?.route.pattern;
    const entry = this.record.add({
      at: Date.now(),
      method,
      path,
      query,
      route,
      body: read.json,
      files: read.files,
    });
    this.record.breach(entry, read.violations);
    if (!found) this.record.breach(entry, [{ code: 'unknown-route', path: '', says: `${method} ${path}` }]);
    if (body instanceof Refusal) return { entry, found, problem: body };
    if (bytes.length <= REQUEST_LIMIT) return { entry, found, problem: undefined };
    this.record.breach(entry, [{ code: 'too-large', path: '', says: 'The request is over 25 MiB.' }]);
    return { entry, found, problem: tooLarge() };
  }

  private work({ entry, found, problem }: Arrival, authorization: string | undefined): Answer {
    let headers: Readonly<Record<string, string>> = {};
    try {
      if (problem) throw problem;
      if (!found) throw noSuchRoute();
      if (found.route.needsToken && authorization !== `Bot ${this.token}`) throw unauthorized();
      const limited = this.limit(found);
      if (limited.status === 429) return noted(entry, limited);
      headers = limited.headers;
      return noted(entry, { ...found.route.handler(new Call(entry, found.params, this.record)), headers });
    } catch (error) {
      const { status, code, message, body } = refusalOf(error);
      entry.verdict = { kind: 'refused', status, code, message };
      return { status, body, headers };
    }
  }

  /** Counts the request in its windows: a 429 where it came too early, else the headers that tell of them. */
  private limit(found: Found): Answer {
    const now = Date.now();
    const all: Taken | undefined = found.route.needsToken ? this.global.take('', now) : undefined;
    if (all && all.waitMs > 0) return rateLimited(all.waitMs, 'global');
    const one = this.perRoute.take(found.bucket, now);
    if (one.waitMs > 0) return rateLimited(one.waitMs, 'user');
    return { status: 200, headers: limitHeaders(found.route.pattern, this.perRoute.allowance.limit, one) };
  }

  private wait(ms: number): Promise<void> {
    return wait(ms, undefined, { signal: this.closing.signal }).catch(() => {});
  }

  private serveFile(path: string, response: ServerResponse): void {
    const file = this.messages.file(path.split('/')[3] ?? '');
    response.writeHead(file ? 200 : 404, { 'content-type': file?.contentType ?? 'text/plain' });
    response.end(file?.bytes);
  }
}

/** A request as it came in; `problem` is what is wrong with it as a whole. */
interface Arrival {
  readonly entry: RecordedRequest;
  readonly found: Found | undefined;
  readonly problem: Refusal | undefined;
}

function noted(entry: RecordedRequest, answer: Answer): Answer {
  const { status } = answer;
  entry.verdict =
    status === 429
      ? { kind: 'refused', status, code: 0, message: 'You are being rate limited.' }
      : { kind: 'accepted', status };
  return answer;
}

function breakOff(
  entry: RecordedRequest,
  fault: RequestFault,
  response: ServerResponse,
  worked: boolean,
): void {
  entry.verdict = { kind: 'faulted', fault: fault.kind, worked };
  response.destroy();
}

/** Undefined where the connection was broken off before the end. */
async function readAll(request: IncomingMessage): Promise<Buffer | undefined> {
  const chunks: Buffer[] = [];
  try {
    for await (const chunk of request) chunks.push(chunk as Buffer);
  } catch (error) {
    if (request.complete) throw error;
    return undefined;
  }
  return Buffer.concat(chunks);
}
