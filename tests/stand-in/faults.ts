/** Things that go wrong on demand, once or by a seeded plan. */
import { chance } from './chance.ts';
import type { RecordedRequest } from './record.ts';
import type { Refusal } from './refusal.ts';

/** What can happen to a request of the app. */
export type RequestFault =
  /** It is worked `ms` later. */
  | { readonly kind: 'delay'; readonly ms: number }
  /** It is never worked; the connection breaks. */
  | { readonly kind: 'request lost' }
  /** It is worked, but the connection breaks before the answer. */
  | { readonly kind: 'answer lost' }
  /** 429; 'user' limits this route, 'global' everything, 'shared' is everybody's limit on the resource. */
  | {
      readonly kind: 'rate limit';
      readonly retryAfterMs: number;
      readonly scope: 'user' | 'global' | 'shared';
    }
  | { readonly kind: 'server error'; readonly status: 500 | 502 | 503 | 504 }
  /** An answer of the platform's own, for example `cannotMessageUser()` or `missingPermissions()`. */
  | { readonly kind: 'refusal'; readonly refusal: Refusal };

/** What can happen to an event on its way to the app. */
export type EventFault =
  | { readonly kind: 'delay'; readonly ms: number }
  | { readonly kind: 'twice' }
  /** It comes after the next event, or alone after 200 ms when none follows. */
  | { readonly kind: 'after the next' };

/** A route as `record.to` names it, or a test of the request. */
export type RequestMatch = string | ((request: RecordedRequest) => boolean);
/** An event's name (`INTERACTION_CREATE`), or 'any'. */
export type EventMatch = string;

export interface RandomFaults {
  readonly seed: number;
  /** Share of requests, and of events, that suffer one of the faults listed. */
  readonly rate: number;
  readonly requests?: readonly RequestFault[];
  readonly events?: readonly EventFault[];
}

interface Planned<Match, Fault> {
  readonly match: Match;
  readonly fault: Fault;
  left: number;
}

export class Faults {
  private requests: Planned<RequestMatch, RequestFault>[] = [];
  private events: Planned<EventMatch, EventFault>[] = [];
  private random: { readonly plan: RandomFaults; readonly next: () => number } | undefined;

  /** The next `times` requests that match suffer the fault (Infinity: all of them). */
  onRequest(match: RequestMatch, fault: RequestFault, times = 1): void {
    this.requests.push({ match, fault, left: times });
  }

  onEvent(match: EventMatch, fault: EventFault, times = 1): void {
    this.events.push({ match, fault, left: times });
  }

  atRandom(plan: RandomFaults): void {
    this.random = { plan, next: chance(plan.seed) };
  }

  clear(): void {
    this.requests = [];
    this.events = [];
    this.random = undefined;
  }

  forRequest(request: RecordedRequest): RequestFault | undefined {
    const matches = ({ match }: Planned<RequestMatch, RequestFault>) =>
      typeof match === 'string' ? match === request.route : match(request);
    return spend(this.requests, matches) ?? this.draw(this.random?.plan.requests);
  }

  forEvent(name: string): EventFault | undefined {
    const matches = ({ match }: Planned<EventMatch, EventFault>) => match === 'any' || match === name;
    return spend(this.events, matches) ?? this.draw(this.random?.plan.events);
  }

  private draw<Fault>(faults: readonly Fault[] | undefined): Fault | undefined {
    if (!this.random || !faults || faults.length === 0) return undefined;
    if (this.random.next() >= this.random.plan.rate) return undefined;
    return faults[Math.floor(this.random.next() * faults.length)];
  }
}

function spend<Match, Fault>(
  plans: Planned<Match, Fault>[],
  matches: (plan: Planned<Match, Fault>) => boolean,
): Fault | undefined {
  const plan = plans.find((candidate) => candidate.left > 0 && matches(candidate));
  if (plan) plan.left -= 1;
  return plan?.fault;
}
