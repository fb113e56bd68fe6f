/**
 * Workings: how a figure came about, line by line, so that a learner can check each line by hand.
 * A line's result is computed from its own formula; the two can never tell different stories.
 */
import { evaluate } from './formula.ts';
import { roundHalfUp } from './units.ts';

/** What a quantity is counted in. `cm` and the `/cm` rates are shown in the reader's own unit. */
export const QUANTITY_UNITS = [
  'cm',
  'cm²',
  'g',
  'm',
  'stitches',
  'rows',
  'stitches/cm',
  'rows/cm',
  'g/cm²',
  '/cm',
  'times',
  'ratio',
] as const;
export type QuantityUnit = (typeof QUANTITY_UNITS)[number];

export interface Quantity {
  /** In words, as it is printed: `finished bust`. */
  readonly name: string;
  readonly value: number;
  readonly unit: QuantityUnit;
}

/** How an exact value became the one that is used. */
export type Rounding =
  | { readonly to: 'whole' }
  | { readonly to: 'whole down' }
  | { readonly to: 'whole up' }
  | { readonly to: 'even' }
  /** The nearest number that is `plus` more than a multiple of `multiple`. A tie goes to the larger. */
  | { readonly to: 'multiple'; readonly multiple: number; readonly plus: number };

export interface WorkingLine {
  /** What is worked out: `stitches at the bust`. */
  readonly label: string;
  /** Arithmetic over the letters of `given`: `a * b`, `(a - b) / 2`, `√(a * a + b * b)`. */
  readonly formula: string;
  /** Letters, in the order in which the quantities of the formula are listed. */
  readonly given: Readonly<Record<string, Quantity>>;
  /** The value of the formula, before rounding. */
  readonly exact: number;
  readonly rounding?: Rounding;
  readonly result: Quantity;
}

/**
 * Works a line out. Letters in the formula are keys of `given`; `+ - * / ( ) √` and whole or decimal numbers are known.
 * Throws where the formula names a letter that is not given.
 */
export function workOut(
  label: string,
  formula: string,
  given: Readonly<Record<string, Quantity>>,
  result: { readonly name?: string; readonly unit: QuantityUnit; readonly rounding?: Rounding },
): WorkingLine {
  const exact = evaluate(formula, given);
  const value = result.rounding === undefined ? exact : applyRounding(exact, result.rounding);
  return {
    label,
    formula,
    given,
    exact,
    ...(result.rounding === undefined ? {} : { rounding: result.rounding }),
    result: { name: result.name ?? label, value, unit: result.unit },
  };
}

export function quantity(name: string, value: number, unit: QuantityUnit): Quantity {
  return { name, value, unit };
}

export function applyRounding(exact: number, rounding: Rounding): number {
  switch (rounding.to) {
    case 'whole':
      return roundHalfUp(exact);
    case 'whole down':
      return Math.floor(exact + 1e-9);
    case 'whole up':
      // Nought added turns the −0 that Math.ceil makes of a nought into 0.
      return Math.ceil(exact - 1e-9) + 0;
    case 'even':
      return 2 * Math.floor(exact / 2 + 0.5 + 1e-9);
    case 'multiple':
      return (
        rounding.plus +
        rounding.multiple * Math.floor((exact - rounding.plus) / rounding.multiple + 0.5 + 1e-9)
      );
    default:
      return rounding satisfies never;
  }
}
