/** How long people wait for what they see no sign of: as long as is set, or until all of them give up at once. */
import { within } from './later.ts';

export class Patience {
  private readonly ms: number;
  private readonly waiting = new Set<() => void>();

  constructor(ms: number) {
    this.ms = ms;
  }

  /** The promise's value, or the error when she waits no longer. */
  async wait<T>(promise: Promise<T>, error: () => Error): Promise<T> {
    let stop = () => {};
    const givenUp = new Promise<never>((_, reject) => {
      stop = () => reject(error());
    });
    this.waiting.add(stop);
    return within(Promise.race([promise, givenUp]), this.ms, error).finally(() => this.waiting.delete(stop));
  }

  giveUp(): void {
    for (const stop of this.waiting) stop();
  }
}
