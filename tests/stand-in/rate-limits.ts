/** Counts requests in fixed windows and says when one comes too early (page `topics/rate-limits`). */

export interface Allowance {
  readonly limit: number;
  readonly windowMs: number;
}

/** `waitMs` is 0 while the request fits its window; `remaining` counts what still does. */
export interface Taken {
  readonly waitMs: number;
  readonly remaining: number;
  readonly resetMs: number;
}

interface Window {
  start: number;
  used: number;
}

export class RateLimits {
  readonly allowance: Allowance;
  private readonly windows = new Map<string, Window>();

  constructor(allowance: Allowance) {
    this.allowance = allowance;
  }

  /** Counts one request under a key; a request that must wait is not counted. */
  take(key: string, now: number): Taken {
    const { limit, windowMs } = this.allowance;
    const known = this.windows.get(key);
    const window = known && now - known.start < windowMs ? known : { start: now, used: 0 };
    this.windows.set(key, window);
    const resetMs = window.start + windowMs - now;
    if (window.used >= limit) return { waitMs: resetMs, remaining: 0, resetMs };
    window.used += 1;
    return { waitMs: 0, remaining: limit - window.used, resetMs };
  }
}
