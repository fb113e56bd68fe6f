/** Why a mutant is left alive, where it was read and found to do no harm. */

export interface Alive {
  /** `src/fit/spacing.ts` */
  readonly file: string;
  /** The text that was mutated, and what stood in its stead. */
  readonly was: string;
  readonly becomes: string;
  /** Whether any test comes by. */
  readonly reached: boolean;
}

/** Undefined for a file: holds wherever the text fits. */
interface Reason {
  readonly file?: string;
  readonly fits: (alive: Alive) => boolean;
  readonly reason: string;
}

const TIE: readonly [string, string][] = [
  ['>=', '>'],
  ['>', '>='],
  ['<=', '<'],
  ['<', '<='],
];

/** Only the case in which both sides are equal is decided otherwise. */
function isTie({ was, becomes }: Alive): boolean {
  return TIE.some(([one, other]) => was.replace(` ${one} `, ` ${other} `) === becomes && was !== becomes);
}

const REASONS: readonly Reason[] = [
  {
    fits: ({ was }) => was.includes('satisfies never') && was.startsWith('default:'),
    reason: 'cannot be reached: the types leave no such case',
  },
  {
    fits: ({ was }) => was.startsWith('throw new '),
    reason: 'a programmer’s mistake, which no plan makes',
  },
  {
    fits: ({ was, becomes }) => was.includes('1e-') && becomes.includes('1e-') && was !== becomes,
    reason: 'what decimals leave over: no figure of a test lies so near the limit',
  },
  {
    file: 'spacing.ts',
    fits: ({ was }) => was === 'ask.to >= ask.from',
    reason: 'equivalent: equal counts have no shaping row, so that its direction decides nothing',
  },
  {
    file: 'spacing.ts',
    fits: ({ was, becomes }) => was === 'times === 0' && becomes === 'false',
    reason: 'equivalent: without shaping rows the interval is never used',
  },
  {
    file: 'spacing.ts',
    fits: ({ was }) => was === 'ask.to < 1',
    reason: 'a count of nought at the end is refused before it gets here',
  },
];

export function reasonFor(alive: Alive): string {
  const known = REASONS.find(
    ({ file, fits }) => (file === undefined || alive.file.endsWith(`/${file}`)) && fits(alive),
  );
  if (known !== undefined) return known.reason;
  if (!alive.reached) return 'no test comes here';
  return isTie(alive)
    ? 'decides only where both are equal; no test has that case'
    : 'no test tells the two apart';
}
