/** When work is done: in turn, at leisure, or not again. */
import { setImmediate, setTimeout as wait } from 'node:timers/promises';

/** One thing at a time for each person, so that what she sees last is what was answered last. */
export class Turns {
  private readonly last = new Map<string, Promise<void>>();

  /** Does the work when everything begun before for the same person is done. Its failures are the caller's. */
  async of(person: string, work: () => Promise<void>): Promise<void> {
    const before = this.last.get(person) ?? Promise.resolve();
    const mine = before.then(work);
    const settled = mine.catch(() => {});
    this.last.set(person, settled);
    await mine.finally(() => {
      if (this.last.get(person) === settled) this.last.delete(person);
    });
  }
}

/**
 * Lets work begin one piece at a time, with whatever has come in between: where many do something at once, all of it is
 * acknowledged before the first of it is worked out.
 */
export class Pace {
  private last: Promise<void> = Promise.resolve();

  next(): Promise<void> {
    this.last = this.last.then(() => setImmediate());
    return this.last;
  }
}

/** Work that may wait, one after another with a pause between, so that it takes little of what is allowed in a second. */
export class Leisure {
  private last: Promise<void> = Promise.resolve();
  private ended = false;
  private readonly pause: number;

  /** `pause` in milliseconds. */
  constructor(pause: number) {
    this.pause = pause;
  }

  /** The work never rejects. */
  do(work: () => Promise<void>): void {
    this.last = this.last.then(() => this.next(work));
  }

  /** What has not begun by now is left undone. */
  end(): void {
    this.ended = true;
  }

  private async next(work: () => Promise<void>): Promise<void> {
    if (this.ended) return;
    await work();
    await wait(this.pause, undefined, { ref: false });
  }
}

/** Remembers the newest ids, so that what the platform delivers twice is done once. */
export class SeenBefore {
  private readonly ids = new Set<string>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  /** True at the first call with this id. */
  isNew(id: string): boolean {
    if (this.ids.has(id)) return false;
    this.ids.add(id);
    const [oldest] = this.ids;
    if (this.ids.size > this.most && oldest !== undefined) this.ids.delete(oldest);
    return true;
  }
}
