/** How much a campaign tries and from which seed, as the environment says. */

/** Random garments of a run, and how many a person's own run tries. */
const USUAL_RUNS = 10_000;

export interface Budget {
  readonly runs: number;
  readonly seed: number;
}

/** EASEWRIGHT_RUNS garments from EASEWRIGHT_SEED; where none is set from `seed`, or else from the clock. */
export function budget(seed = Date.now() % 2 ** 31): Budget {
  return {
    runs: whole('EASEWRIGHT_RUNS') ?? USUAL_RUNS,
    seed: whole('EASEWRIGHT_SEED') ?? seed,
  };
}

function whole(name: string): number | undefined {
  const text = process.env[name];
  if (text === undefined || text === '') return undefined;
  const value = Number(text);
  if (!Number.isSafeInteger(value) || value < 0)
    throw new RangeError(`${name} is a whole number, such as 1000; it is '${text}'`);
  return value;
}

/** Prints a line of a campaign's account. */
export function tell(line: string): void {
  process.stdout.write(`${line}\n`);
}
