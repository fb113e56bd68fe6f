/** The bust chapter: which shaping suits, and the shaping that was chosen, in the order of knitting. */

import type { BodyShaping } from '../fit/body-shaping.ts';
import type { BustShaping } from '../fit/bust-advice.ts';
import { advicePart, dartPart } from '../fit/bust-steps.ts';
import { rowAt } from '../fit/heights.ts';
import { type Outcome, type Part, phrase, type Step } from '../fit/plan.ts';
import { step } from '../fit/steps.ts';
import { type Cm, cm, type Stitches, stitches } from '../fit/units.ts';
import { type FrontDarts, type FrontDartsAsk, frontDarts } from '../fit/vertical-dart-steps.ts';
import type { Impossible } from '../fit/ways.ts';
import { ratesOf } from '../fit/wedge-base.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type BustFigures, bustFigures, moreForTheFront } from './bust-figures.ts';
import { besideDarts, frontOf } from './bust-sides.ts';
import { SEAM_STITCHES } from './figures.ts';
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
  const found = bustShapings(book);
  if (found === undefined) return undefined;
  const { advice, darts, dart, needle } = found;
  const across = dart?.on(needle, 'before the front', addedBy(darts)) ?? NO_DART;
  if (darts === null || dart === null) {
    if (darts?.kind === 'cannot') return darts;
    if ('kind' in across) return across;
  }
  const middle = 'kind' in across ? [why(across)] : across.steps;
  return partOf([...advice.steps, ...stepsOf(darts, 'before'), ...middle, ...stepsOf(darts, 'after')]);
}

/** What is planned for the bust, each shaping by itself; null where it was not chosen. */
export interface BustShapings {
  readonly advice: Part;
  readonly made: BustFigures['made'];
  /** Stitches at the bust, all round, or of the front alone in pieces. */
  readonly needle: Stitches;
  readonly darts: FrontDarts | Impossible | null;
  /** Short rows on the stitches of the body, so many rows from the underarm. */
  readonly dart: { readonly below: number; readonly on: DartOn } | null;
}

/**
 * A round that begins before the front, for short rows alone; or before the back, where the whole body is told.
 * `added`: stitches that the front has more there.
 */
type DartOn = (
  needle: Stitches,
  begins: 'before the front' | 'before the back',
  added: number,
) => Part | Impossible;

/** Stitches that the front has more at its fullest. */
export function addedBy(darts: BustShapings['darts']): number {
  return darts?.kind === 'darts' ? darts.added : 0;
}

/** `body`: the one in which all of it lies, where it is told. Undefined where figures are missing. */
export function bustShapings(book: Ledger, body: BodyShaping | null = null): BustShapings | undefined {
  const known = bustFigures(book);
  const chosen = CHOICES[takeChoice(book, 'bust_shaping') ?? ''];
  if (known === undefined || chosen === undefined) return undefined;
  const { made, needle } = known;
  const advice = advicePart(known.advice, known.figures, chosen);
  if (chosen === 'none') return { advice, made, needle, darts: null, dart: null };
  const below = takeLength(book, 'bust_below_underarm');
  const span = takeLength(book, 'bust_span');
  if (below === undefined || span === undefined) return undefined;
  const place = { below: rowAt('bust point', below, known.gauge), span };
  const darts = chosen === 'short rows' ? null : verticalDarts(book, known, place, { chosen, body });
  if (darts === undefined) return undefined;
  const low = { ...place, below: belowUnderarm(known, place.below) };
  const on: DartOn = (all, begins, added) => shortRows(known, { needle: all, begins }, low, added);
  return {
    advice,
    made,
    needle,
    darts,
    dart: DARTED.has(chosen) ? { below: low.below.result.value, on } : null,
  };
}

/** The steps of darts that run up and down, or why there can be none. */
export function stepsOf(darts: BustShapings['darts'], part: 'before' | 'after'): readonly Step[] {
  if (darts === null) return [];
  if (darts.kind === 'darts') return darts[part];
  return part === 'before' ? [why(darts)] : [];
}

/** Knitted up, the row that short rows take at the side, and on a flat piece the row back, lie below the underarm. */
function belowUnderarm({ made }: BustFigures, below: WorkingLine): WorkingLine {
  const least = made.worked === 'flat' ? 2 : 1;
  if (made.direction === 'down' || below.result.value >= least) return below;
  return workOut(
    'rows that the short rows take before the underarm',
    'a',
    { a: quantity('rows', least, 'rows') },
    { unit: 'rows' },
  );
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

const NO_DART = partOf([]);

function partOf(steps: readonly Step[]): Part {
  return { steps, finished: [], pieces: [] };
}

/** Up, the front widens from the waist and narrows to the underarm; down, the other way about. */
function verticalDarts(
  book: Ledger,
  known: BustFigures,
  { below, span }: BustPlace,
  { chosen, body }: { readonly chosen: Chosen; readonly body: BodyShaping | null },
): FrontDarts | Impossible | undefined {
  const { made, gauge } = known;
  const width = moreWidth(book, known);
  const above = chosen === 'front stitches' ? null : aboveWaist(book);
  if (width === undefined) waitFor(book, 'bust_extra', 'The width of the front waits for it.');
  if (width === undefined || above === undefined) return undefined;
  const toWaist = above === null ? null : rowAt('waist, from the bust point', above, gauge);
  const [widen, narrow] = made.direction === 'up' ? [toWaist, below] : [below, toWaist];
  const beside = body && besideDarts(body, made, { below, toWaist, withShortRows: DARTED.has(chosen) });
  if (beside === undefined) return NO_ROOM;
  const ask: FrontDartsAsk = {
    extra: { from: 'width', width },
    gauge: ratesOf(gauge),
    front: beside?.front ?? frontOf(made, known.needle).front,
    sides: beside?.sides ?? null,
    bustSpan: span,
    perRow: 4,
    carriers: made.worked === 'flat' ? 'odd rows' : 'every row',
    worked: made.worked,
    direction: made.direction,
    edge: made.worked === 'flat' ? SEAM_STITCHES : 0,
    widen,
    narrow,
  };
  return frontDarts(ask, gauge);
}

const NO_ROOM: Impossible = {
  kind: 'cannot',
  because: [phrase('cannot: darts in rows that shape')],
  instead: [phrase('instead: one of two shapings')],
  workings: [],
};

/** Where it was not asked, what the full bust has beyond the upper bust and what patterns allow. */
function moreWidth(book: Ledger, { bust, upperBust }: BustFigures): Cm | undefined {
  const asked = book.sheet.answers.bust_extra !== undefined;
  return asked ? takeLength(book, 'bust_extra') : moreForTheFront(bust, upperBust);
}

/** Where the waist's height was asked for, the bust point's height above it follows. */
function aboveWaist(book: Ledger): Cm | undefined {
  const asked = takeLength(book, 'bust_above_waist');
  const waist = takeLength(book, 'underarm_to_waist');
  const below = takeLength(book, 'bust_below_underarm');
  if (asked !== undefined || waist === undefined || below === undefined) return asked;
  return cm(Math.max(0, waist - below));
}

function shortRows(
  known: BustFigures,
  { needle, begins }: { readonly needle: Stitches; readonly begins: Parameters<DartOn>[1] },
  { below, span }: BustPlace,
  added: number,
): Part | Impossible {
  const { made, gauge, depth } = known;
  const { front, workings } = frontOf(made, needle);
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
    front: {
      start: made.worked === 'round' && begins === 'before the back' ? needle - front : 0,
      stitches: wide,
    },
    bustSpan: span,
  } as const;
  return dartPart(ask, gauge, below, [...workings, all]);
}
