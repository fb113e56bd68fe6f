/** The bust chapter: which shaping suits, and the shaping that was chosen, in the order of knitting. */
import type { BustShaping } from '../fit/bust-advice.ts';
import { advicePart, dartPart } from '../fit/bust-steps.ts';
import { rowAt } from '../fit/heights.ts';
import { type Outcome, type Part, phrase, type Step } from '../fit/plan.ts';
import { step } from '../fit/steps.ts';
import { type Cm, stitches } from '../fit/units.ts';
import { type FrontDarts, type FrontDartsAsk, frontDarts } from '../fit/vertical-dart-steps.ts';
import type { Impossible } from '../fit/ways.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type BustFigures, bustFigures } from './bust-figures.ts';
import { type Ledger, ledger, takeChoice, takeLength, waitFor } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function bustResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, bustAltered(book), [phrase('summary: bust')]);
}

/** As the choices of the question name them. */
const CHOICES: Readonly<Record<string, Chosen>> = {
  none: 'none',
  short_rows: 'short rows',
  vertical_darts: 'vertical darts',
  both: 'both',
  front_stitches: 'front stitches',
};
type Chosen = BustShaping | 'front stitches';

export function bustAltered(book: Ledger): Altered {
  const known = bustFigures(book);
  const chosen = CHOICES[takeChoice(book, 'bust_shaping') ?? ''];
  if (known === undefined || chosen === undefined) return undefined;
  const advice = advicePart(known.advice, known.figures, chosen);
  if (chosen === 'none') return advice;
  const below = takeLength(book, 'bust_below_underarm');
  const span = takeLength(book, 'bust_span');
  if (below === undefined || span === undefined) return undefined;
  const place = { below: rowAt('bust point', below, known.gauge), span };
  const darts = chosen === 'short rows' ? NO_DARTS : verticalDarts(book, known, place, chosen);
  if (darts === undefined) return undefined;
  const added = darts.kind === 'darts' ? darts.added : 0;
  const dart = DARTED.has(chosen) ? shortRows(known, place, added) : NO_DART;
  if (chosen !== 'both') {
    if (darts.kind === 'cannot') return darts;
    if ('kind' in dart) return dart;
  }
  const [before, after] = darts.kind === 'darts' ? [darts.before, darts.after] : [[why(darts)], []];
  const middle = 'kind' in dart ? [why(dart)] : dart.steps;
  return partOf([...advice.steps, ...before, ...middle, ...after]);
}

const DARTED: ReadonlySet<Chosen> = new Set(['short rows', 'both']);

/** Of two shapings the one that cannot be: a step that says why. */
function why({ because, instead, workings }: Impossible): Step {
  return step('front', phrase('where: what cannot be'), { notes: [...because, ...instead], workings });
}

/** The bust point in rows below the underarm, and from one bust point to the other. */
interface BustPlace {
  readonly below: WorkingLine;
  readonly span: Cm;
}

const NO_DARTS: FrontDarts = { kind: 'darts', before: [], after: [], added: 0 };
const NO_DART = partOf([]);

function partOf(steps: readonly Step[]): Part {
  return { steps, finished: [], pieces: [] };
}

/** Up, the front widens from the waist and narrows to the underarm; down, the other way about. */
function verticalDarts(
  book: Ledger,
  known: BustFigures,
  { below, span }: BustPlace,
  chosen: Chosen,
): FrontDarts | Impossible | undefined {
  const { made, gauge } = known;
  const width = takeLength(book, 'bust_extra');
  const above = chosen === 'front stitches' ? null : takeLength(book, 'bust_above_waist');
  if (width === undefined) waitFor(book, 'bust_extra', 'The width of the front waits for it.');
  if (width === undefined || above === undefined) return undefined;
  const toWaist = above === null ? null : rowAt('waist, from the bust point', above, gauge);
  const [widen, narrow] = made.direction === 'up' ? [toWaist, below] : [below, toWaist];
  const ask: FrontDartsAsk = {
    extra: { from: 'width', width },
    gauge: ratesOf(gauge),
    front: frontOf(known).front,
    bustSpan: span,
    perRow: 4,
    carriers: made.worked === 'flat' ? 'odd rows' : 'every row',
    worked: made.worked,
    direction: made.direction,
    widen,
    narrow,
  };
  return frontDarts(ask, gauge);
}

function shortRows(known: BustFigures, { below, span }: BustPlace, added: number): Part | Impossible {
  const { made, gauge, needle, depth } = known;
  const { front, workings } = frontOf(known);
  const wide = stitches(front + added);
  const all = workOut(
    'stitches on the needle at the bust',
    'a + b',
    { a: quantity('stitches', needle, 'stitches'), b: quantity('stitches added', added, 'stitches') },
    { unit: 'stitches' },
  );
  const ask = {
    ...made,
    depth,
    gauge: ratesOf(gauge),
    sides: 'both',
    needle: stitches(all.result.value),
    front: { start: 0, stitches: wide },
    bustSpan: span,
  } as const;
  return dartPart(ask, gauge, below, [...workings, all]);
}

/** In the round the front is half of all; an odd stitch goes to the back. */
function frontOf({ made, needle }: BustFigures) {
  if (made.worked === 'flat') return { front: needle, workings: [] };
  const half = workOut(
    'stitches of the front',
    'a / 2',
    { a: quantity('stitches all round', needle, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  return { front: stitches(half.result.value), workings: [half] };
}
