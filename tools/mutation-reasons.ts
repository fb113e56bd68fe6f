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
    fits: ({ was, becomes }) => was === "ask.carriers === 'every row'" && becomes === 'false',
    reason: 'equivalent: too many rows for every row are too many still, so that this way is never offered',
  },
];

/** What a mutant that a test comes by, and does not notice, has in common with others: where to look for the test that lacks. */
const UNNOTICED: readonly { readonly fits: (alive: Alive) => boolean; readonly reason: string }[] = [
  { fits: isTie, reason: 'decides only where both are equal; no test has that case' },
  {
    fits: ({ was, becomes }) => was.includes('?.') && was.replaceAll('?.', '.') === becomes,
    reason: 'the types ask for it; no test has it undefined',
  },
  {
    fits: ({ was, becomes }) =>
      /[!=]== (?:undefined|null)/.test(was) && (becomes === 'false' || becomes === 'true'),
    reason: 'no test has a figure missing here, or its lack changes nothing',
  },
  {
    fits: ({ was, becomes }) => was.startsWith('{ unit') && becomes === '{}',
    reason: 'the unit of a line of workings that no test of it reads',
  },
  {
    fits: ({ was, becomes }) => becomes === '[]' && /[wW]orkings|Line|line/.test(was),
    reason: 'workings that no test reads line by line',
  },
];

export function reasonFor(alive: Alive): string {
  const known = REASONS.find(
    ({ file, fits }) => (file === undefined || alive.file.endsWith(`/${file}`)) && fits(alive),
  );
  if (known !== undefined) return known.reason;
  if (!alive.reached) return 'no test comes here';
  return UNNOTICED.find(({ fits }) => fits(alive))?.reason ?? 'no test tells the two apart';
}
