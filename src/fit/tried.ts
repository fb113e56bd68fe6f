/** A knitter's own figure for a sum, held against the workings: right, parted by a slip that is known, or by another. */

import { evaluate } from './formula.ts';
import { MISTAKES, type Mistake, ROUNDING_SLIPS, variantsOf } from './mistake.ts';
import type { Variant } from './mistake-variants.ts';
import { isClose, isRight } from './right.ts';
import type { Sum } from './sum.ts';
import { applyRounding } from './working.ts';

export interface Slip {
  readonly mistake: Mistake;
  /** The line at which her figure parts from the workings. */
  readonly at: string;
  /** The quantity that was taken wrongly, where it is one. */
  readonly about: string | null;
}

export type Tried =
  | { readonly kind: 'right' }
  /** One slip gives exactly her figure, or either of two. */
  | { readonly kind: 'slip'; readonly slips: readonly [Slip] | readonly [Slip, Slip] }
  /**
   * No known slip gives it, or so many that none can be named. `from`: the line on which to compare first; `begin`: the
   * part of the sum's formula to work first, null where it has but one.
   */
  | { readonly kind: 'parted'; readonly from: string; readonly begin: string | null };

/** `figure` is in the reader's unit. */
export function tryFigure(sum: Sum, figure: number): Tried {
  if (isRight(sum.read, figure, sum.unit)) return { kind: 'right' };
  const [one, two, ...more] = slipsTo(sum, figure);
  if (one === undefined || more.length > 0)
    return {
      kind: 'parted',
      from: sum.leads[0]?.label ?? sum.line.label,
      begin: firstPart(sum.line.formula),
    };
  return { kind: 'slip', slips: two === undefined ? [one] : [one, two] };
}

/** Each known slip that gives exactly this figure, in the order of the list. */
export function slipsTo(sum: Sum, figure: number): Slip[] {
  return MISTAKES.flatMap((mistake) => {
    const found = variantsOf(mistake, sum).find((variant) => gives(variant, sum, figure, mistake));
    return found === undefined ? [] : [{ mistake, at: found.at, about: found.about }];
  });
}

/** A broken figure is held against what comes before rounding; not where the slip lies in the rounding itself. */
function gives(variant: Variant, { read, unit }: Sum, figure: number, mistake: Mistake): boolean {
  const broken = !Number.isInteger(figure);
  // A whole number was rounded, in one way or another.
  if (mistake === 'not rounded' && !broken) return false;
  const unrounded = broken && !inRounding(mistake);
  const came = unrounded ? evaluate(variant.formula, variant.given) : figureOf(variant);
  const counted = variant.rounding !== undefined && !unrounded;
  return isClose(figure, came, read.result.unit, unit, counted);
}

function inRounding(mistake: Mistake): boolean {
  return ROUNDING_SLIPS.some((slip) => slip === mistake);
}

/** What one gets who works the line so. */
export function figureOf({ formula, given, rounding }: Variant): number {
  const exact = evaluate(formula, given);
  return rounding === undefined ? exact : applyRounding(exact, rounding);
}

/** What stands in the innermost brackets, or else the first product, or else the first two; null where that is all. */
function firstPart(formula: string): string | null {
  const part =
    /\(([^()]+)\)/.exec(formula)?.[1] ??
    /\w+ [*/] \w+/.exec(formula)?.[0] ??
    /\w+ [-+] \w+/.exec(formula)?.[0] ??
    null;
  return part === formula ? null : part;
}

/** How it went with the sums of a plan. */
export interface Tally {
  /** Right at the first try, and after others. */
  readonly atOnce: number;
  readonly later: number;
  readonly shown: number;
  readonly passed: number;
  /** Slips that came up, most often first. */
  readonly slips: readonly Mistake[];
}
