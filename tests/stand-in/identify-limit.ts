/** How many sessions an app may open: one per bucket and five seconds, a thousand a day (page `events/gateway`). */

export interface IdentifyAllowance {
  readonly maxConcurrency: number;
  readonly bucketMs: number;
  readonly perDay: number;
}

export class IdentifyLimit {
  readonly allowance: IdentifyAllowance;
  private readonly buckets = new Map<number, number>();
  private used = 0;

  constructor(allowance: IdentifyAllowance) {
    this.allowance = allowance;
  }

  /** Counts an identify. 'spent' ends every session of the app on the platform and resets its token. */
  take(shardId: number, now: number): 'allowed' | 'too soon' | 'spent' {
    const { maxConcurrency, bucketMs, perDay } = this.allowance;
    if (this.used >= perDay) return 'spent';
    const bucket = shardId % maxConcurrency;
    const last = this.buckets.get(bucket) ?? Number.NEGATIVE_INFINITY;
    if (now - last < bucketMs) return 'too soon';
    this.buckets.set(bucket, now);
    this.used += 1;
    return 'allowed';
  }

  get remaining(): number {
    return this.allowance.perDay - this.used;
  }
}
