/** Answers and headers of the HTTP side, those of played faults among them (page `topics/rate-limits`). */
import { createHash } from 'node:crypto';
import type { ServerResponse } from 'node:http';
import type { Reply } from './call.ts';
import type { RequestFault } from './faults.ts';
import type { Taken } from './rate-limits.ts';
import { Refusal } from './refusal.ts';

export interface Answer extends Reply {
  readonly headers: Readonly<Record<string, string>>;
}

export function limitHeaders(route: string, limit: number, taken: Taken): Record<string, string> {
  return {
    'x-ratelimit-limit': `${limit}`,
    'x-ratelimit-remaining': `${taken.remaining}`,
    'x-ratelimit-reset': `${(Date.now() + taken.resetMs) / 1000}`,
    'x-ratelimit-reset-after': `${taken.resetMs / 1000}`,
    'x-ratelimit-bucket': createHash('md5').update(route).digest('hex'),
  };
}

export function rateLimited(retryAfterMs: number, scope: 'user' | 'global' | 'shared'): Answer {
  const seconds = retryAfterMs / 1000;
  return {
    status: 429,
    body: { message: 'You are being rate limited.', retry_after: seconds, global: scope === 'global' },
    headers: {
      'retry-after': `${seconds}`,
      'x-ratelimit-scope': scope,
      ...(scope === 'global'
        ? { 'x-ratelimit-global': 'true' }
        : { 'x-ratelimit-remaining': '0', 'x-ratelimit-reset-after': `${seconds}` }),
    },
  };
}

/** The answer a fault gives in place of the platform's, for faults that are answers. */
export function playedAnswer(fault: RequestFault): Answer | undefined {
  switch (fault.kind) {
    case 'rate limit':
      return rateLimited(fault.retryAfterMs, fault.scope);
    case 'server error':
      return {
        status: fault.status,
        body: { message: `${fault.status}: Server Error`, code: 0 },
        headers: {},
      };
    case 'refusal':
      return { status: fault.refusal.status, body: fault.refusal.body, headers: {} };
    case 'delay':
    case 'request lost':
    case 'answer lost':
      return undefined;
    default:
      return fault satisfies never;
  }
}

/** An error of the platform as it is; any other is a mistake in the stand-in and says so. */
export function refusalOf(error: unknown): Refusal {
  if (error instanceof Refusal) return error;
  const stack = error instanceof Error ? error.stack : error;
  return new Refusal(400, 0, `The stand-in itself broke: ${stack}`);
}

export function send(response: ServerResponse, { status, body, headers }: Answer): void {
  response.writeHead(status, {
    ...headers,
    ...(body !== undefined && { 'content-type': 'application/json' }),
  });
  response.end(body === undefined ? undefined : JSON.stringify(body));
}
