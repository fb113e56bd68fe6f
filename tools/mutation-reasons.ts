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
  {
    file: 'formula.ts',
    fits: ({ was, becomes }) => was === 'formula === undefined' && becomes === 'true',
    reason: 'equivalent: a formula read again is the same, only slower',
  },
  {
    file: 'formula.ts',
    fits: ({ was }) => was === 'formula === undefined' || was.includes('readFormula(text)'),
    reason: 'out of reach: every formula has been read, and is remembered, before a mutant is tried',
  },
  {
    file: 'plan-schema.ts',
    fits: () => true,
    reason: 'out of reach: read when the first plan is held against the schema, before a mutant is tried',
  },
  {
    file: 'body-lay.ts',
    fits: ({ was }) => was === 'section.to >= section.from',
    reason: 'equivalent: equal counts have no shaping row, so that its direction decides nothing',
  },
  {
    file: 'body-lay.ts',
    fits: ({ was }) => was === 'before + own',
    reason: 'equivalent: only whether it is even counts, which a sum and a difference are alike',
  },
  {
    file: 'raglan.ts',
    fits: ({ was }) => was === 'underarm - wanted',
    reason: 'equivalent: only whether it is even counts, which a sum and a difference are alike',
  },
  {
    file: 'raglan.ts',
    fits: ({ was, becomes }) => was === "fault.kind === 'too few rows'" && becomes === 'true',
    reason: 'equivalent: counts that pairs of stitches reach have no other fault',
  },
  {
    file: 'raglan.ts',
    fits: ({ was, becomes }) => was === "o.way === 'longer section'" && becomes === 'true',
    reason: 'equivalent: no other way has more rows, and the most are taken',
  },
  {
    file: 'raglan.ts',
    fits: ({ was, becomes }) => was === "ask.carriers === 'every row'" && becomes === 'false',
    reason: 'equivalent: the same rows are too few again, so that this way is never offered',
  },
  {
    file: 'cap.ts',
    fits: ({ was }) => was === 'count > 0' || was === 'count <= 2 * ask.upperArm + 40',
    reason: 'the end of a search: at its limit there is no cap to be found',
  },
  {
    file: 'cap.ts',
    fits: ({ was }) => was === 'ask.bindOff - 1',
    reason:
      'equivalent: with more bound off there is even less left for a cap, so that the first to do is the same',
  },
  {
    file: 'wedge-base.ts',
    fits: ({ was, becomes }) => was === 'pieces === 0' && becomes === 'false',
    reason: 'equivalent: without steps nothing is made of their length',
  },
  {
    file: 'wedge-base.ts',
    fits: ({ was, becomes }) => was === "worked === 'round'" && becomes === 'true',
    reason: 'equivalent: a flat wedge that runs past its needle throws, whichever end is beyond it',
  },
  {
    file: 'recheck.ts',
    fits: ({ was, becomes }) => was.startsWith('reached ') && (becomes === 'true' || becomes.includes('=')),
    reason:
      'equivalent: a row before the last level, or not yet knitted, is refused by the measures that come of it',
  },
  {
    file: 'recheck.ts',
    fits: ({ was, becomes }) => /^(?:last|first) === undefined$/.test(was) && becomes === 'false',
    reason: 'the types ask for it: a piece has a level at its first row',
  },
  {
    file: 'tried.ts',
    fits: ({ was, becomes }) => was === 'variant.rounding !== undefined && !unrounded' && becomes === 'false',
    reason: 'equivalent: what is rounded in sums are counts, which are held to the stitch anyway',
  },
  {
    file: 'sleeve.ts',
    fits: ({ was }) => was === 'count > ask.pattern.upperArm',
    reason: 'equivalent: asked only where the two differ',
  },
  {
    file: 'spread.ts',
    fits: ({ was }) => was === 'series === undefined' || was === 'series !== undefined',
    reason: 'the types ask for it: a rule whose parity is never met is not asked for',
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
