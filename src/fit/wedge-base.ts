/** The base of a short-row wedge: what is asked for, and how its stitches are divided between the turns. */
import { type Gauge, rowsFor } from './gauge.ts';
import type { Cm, PerCm, Rows, Stitches } from './units.ts';
import type { LevelName, Worked } from './words.ts';

export const WEDGES = ['bust dart', 'back neck raise', 'lower front neck', 'shoulder slope', 'hem'] as const;
export type WedgePurpose = (typeof WEDGES)[number];

/** The side on which right-side rows start, the side on which they end, or both. */
export const WEDGE_SIDES = ['both', 'start', 'end'] as const;
export type WedgeSides = (typeof WEDGE_SIDES)[number];

/** Each short row shorter than the one before, or longer. */
export type TurnOrder = 'shortening' | 'lengthening';

export interface Rates {
  readonly stitchesPerCm: PerCm;
  readonly rowsPerCm: PerCm;
}

export function ratesOf(gauge: Gauge): Rates {
  return { stitchesPerCm: gauge.stitches.perCm, rowsPerCm: gauge.rows.perCm };
}

/** Where the wedge begins, or is complete: so many rows after the level is reached, before it where negative. */
export interface Place {
  readonly level: LevelName;
  readonly rows: Rows;
  readonly point: 'begins' | 'is complete';
}

/** Boundaries are counted in stitches from where right-side rows, or rounds, begin. */
export interface WedgeAsk {
  readonly purpose: WedgePurpose;
  readonly place: Place;
  readonly worked: Worked;
  readonly sides: WedgeSides;
  readonly order: TurnOrder;
  readonly depth: Cm;
  readonly gauge: Rates;
  readonly needle: Stitches;
  /** The stitches between the markers in which the wedge lies; in the round they may run across the join. */
  readonly span: { readonly start: number; readonly stitches: Stitches };
  /** Stitches from a marker to the outer end of the base. */
  readonly inset: Stitches;
  /** Stitches that get the full depth: in the middle, or at the side that is not sloped. */
  readonly flat: Stitches;
  /** Whether the first turn stands at the outer end of the base, or one step inside it. */
  readonly outer: 'turn' | 'step';
  readonly counted: 'from the sides' | 'from the centre';
  /** Where the larger steps lie; outermost where nothing is said. */
  readonly larger?: 'outermost' | 'innermost';
}

/** The base of one wedge in stitches; `steps` and `distances` hold for either side alike. */
export interface Base {
  readonly stitches: number;
  /** On each sloped side. */
  readonly slope: number;
  readonly flat: number;
  /** Steps at the ends of the slope, beyond the outermost turn and within the innermost. */
  readonly endSteps: number;
  /** Outermost first. */
  readonly steps: readonly number[];
  /** Of each turn from the outer end of the base, outermost first. */
  readonly distances: readonly number[];
}

/** Turns on each side: half the rows, which are even. */
export function turnsOf({ depth, gauge }: Pick<WedgeAsk, 'depth' | 'gauge'>): number {
  return rowsFor(depth, gauge.rowsPerCm, 'even') / 2;
}

/** The most turns on each side when every step is one stitch. */
export function mostTurns(ask: WedgeAsk): number {
  const { slope, endSteps } = slopeOf(ask);
  return Math.max(0, slope + 1 - endSteps);
}

export function divide(ask: WedgeAsk, turns: number): Base {
  const { slope, endSteps, ...rest } = slopeOf(ask);
  const pieces = turns - 1 + endSteps;
  const short = pieces === 0 ? 0 : Math.floor(slope / pieces);
  const longer = slope - short * pieces;
  const isLonger = (i: number) => (ask.larger === 'innermost' ? i >= pieces - longer : i < longer);
  const steps = Array.from({ length: pieces }, (_, i) => (isLonger(i) ? short + 1 : short));
  const gaps = ask.outer === 'step' ? steps : [0, ...steps];
  const distances = Array.from({ length: turns }, (_, i) =>
    gaps.slice(0, i + 1).reduce((sum, n) => sum + n, 0),
  );
  return { ...rest, slope, endSteps, steps, distances };
}

/** What is sloped. Where the flat part is nothing, the innermost step lies within the last turn. */
export function slopeOf(ask: WedgeAsk) {
  const sloped = ask.sides === 'both' ? 2 : 1;
  const stitches = ask.span.stitches - sloped * ask.inset;
  const slope = Math.floor((stitches - ask.flat) / sloped);
  const endSteps = (ask.outer === 'step' ? 1 : 0) + (ask.flat === 0 ? 1 : 0);
  return { stitches, slope, flat: stitches - sloped * slope, endSteps };
}

/** The boundaries of the span; in the round it may begin before the join, so that it does not run past it. */
export function spanOf({ span, needle, worked }: WedgeAsk): { start: number; end: number } {
  const over = worked === 'round' && span.start + span.stitches > needle;
  const start = over ? span.start - needle : span.start;
  return { start, end: start + span.stitches };
}

/**
 * Throws where the wedge lies outside its needle, or has its outermost turn at the very end of a row (in the round:
 * its two outermost turns in one place), which is no turn. A fault of the caller.
 */
export function checkAsk(ask: WedgeAsk): void {
  const { start, end } = spanOf(ask);
  const base = slopeOf(ask).stitches;
  const flat = ask.worked === 'flat';
  const within = flat ? start >= 0 && end <= ask.needle : end - start <= ask.needle;
  if (!within || ask.inset < 0 || ask.flat < 0 || base < Math.max(1, ask.flat)) {
    throw new RangeError(`the wedge does not fit: ${JSON.stringify(ask)}`);
  }
  const atEdge = { start: start + ask.inset === 0, end: end - ask.inset === ask.needle };
  const runsOut = ask.sides === 'both' || (ask.sides === 'end' ? start === 0 : end === ask.needle);
  if (flat && !runsOut) throw new RangeError(`a wedge sloped at its ${ask.sides} runs to the other edge`);
  const turnAtEdge = flat
    ? (ask.sides !== 'end' && atEdge.start) || (ask.sides !== 'start' && atEdge.end)
    : ask.sides === 'both' && base === ask.needle;
  if (ask.outer === 'turn' && turnAtEdge)
    throw new RangeError('a wedge needs a stitch outside its outermost turn');
}
