/**
 * Workings: how a figure came about, line by line, so that a learner can check each line by hand.
 * A line's result is computed from its own formula; the two can never tell different stories.
 */
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
  readonly given: Readonly<Record<string, Quantity>>;
  /** The value of the formula, before rounding. */
  readonly exact: number;
  readonly rounding?: Rounding;
  readonly result: Quantity;
}

/** Letters, in the order in which the quantities of a formula are listed. */
type Given = Readonly<Record<string, Quantity>>;

/**
 * Works a line out. Letters in the formula are keys of `given`; `+ - * / ( ) √` and whole or decimal numbers are known.
 * Throws where the formula names a letter that is not given.
 */
export function workOut(
  label: string,
  formula: string,
  given: Given,
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

type Node = (given: Given) => number;
const parsed = new Map<string, Node>();

/** The value of a formula with the quantities put in. */
export function evaluate(formula: string, given: Given): number {
  let node = parsed.get(formula);
  if (node === undefined) {
    node = parseFormula(formula);
    parsed.set(formula, node);
  }
  return node(given);
}

/** A recursive-descent reader for sums of products: one function a level of binding strength. */
function parseFormula(formula: string): Node {
  // Every character is a token, so that one that means nothing here is refused and never skipped.
  const tokens = formula.match(/[A-Za-z][A-Za-z0-9]*|\d+(?:\.\d+)?|\S/g) ?? [];
  let at = 0;

  function sum(): Node {
    let left = product();
    while (tokens[at] === '+' || tokens[at] === '-') {
      const minus = tokens[at++] === '-';
      const [l, r] = [left, product()];
      left = minus ? (g) => l(g) - r(g) : (g) => l(g) + r(g);
    }
    return left;
  }

  function product(): Node {
    let left = atom();
    while (tokens[at] === '*' || tokens[at] === '/') {
      const over = tokens[at++] === '/';
      const [l, r] = [left, atom()];
      left = over ? (g) => l(g) / r(g) : (g) => l(g) * r(g);
    }
    return left;
  }

  function atom(): Node {
    const token = tokens[at++];
    if (token === undefined) throw new Error(`the formula '${formula}' ends too early`);
    if (token === '(') {
      const inside = sum();
      if (tokens[at++] !== ')') throw new Error(`the formula '${formula}' lacks a closing bracket`);
      return inside;
    }
    if (token === '√') {
      const under = atom();
      return (g) => Math.sqrt(under(g));
    }
    if (/^\d/.test(token)) {
      const value = Number(token);
      return () => value;
    }
    return (g) => {
      const q = g[token];
      if (q === undefined) throw new Error(`the formula '${formula}' needs '${token}', which is not given`);
      return q.value;
    };
  }

  const whole = sum();
  if (at !== tokens.length)
    throw new Error(`the formula '${formula}' cannot be read from '${tokens[at]}' on`);
  return whole;
}
