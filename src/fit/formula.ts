/** Formulas of workings: arithmetic over letters, read from its text. */

/** What the letters stand for. */
export type Given = Readonly<Record<string, { readonly value: number }>>;
type Formula = (given: Given) => number;

/** Formulas read so far: a plan works the same few hundred out again and again. */
const known = new Map<string, Formula>();

/** The value of a formula with the quantities put in. Throws where it names a letter that is not given. */
export function evaluate(text: string, given: Given): number {
  let formula = known.get(text);
  if (formula === undefined) {
    formula = readFormula(text);
    known.set(text, formula);
  }
  return formula(given);
}

/**
 * A recursive-descent reader for sums of products: one function a level of binding strength.
 * Throws where the text is no formula, and says why.
 */
export function readFormula(text: string): Formula {
  // Every character is a token, so that one that means nothing here is refused and never skipped.
  const tokens = text.match(/[A-Za-z][A-Za-z0-9]*|\d+(?:\.\d+)?|\S/g) ?? [];
  let at = 0;

  function sum(): Formula {
    let left = product();
    while (tokens[at] === '+' || tokens[at] === '-') {
      const minus = tokens[at++] === '-';
      const [l, r] = [left, product()];
      left = minus ? (g) => l(g) - r(g) : (g) => l(g) + r(g);
    }
    return left;
  }

  function product(): Formula {
    let left = atom();
    while (tokens[at] === '*' || tokens[at] === '/') {
      const over = tokens[at++] === '/';
      const [l, r] = [left, atom()];
      left = over ? (g) => l(g) / r(g) : (g) => l(g) * r(g);
    }
    return left;
  }

  function atom(): Formula {
    const token = tokens[at++];
    if (token === undefined) throw new Error(`the formula '${text}' ends too early`);
    if (token === '(') {
      const inside = sum();
      if (tokens[at++] !== ')') throw new Error(`the formula '${text}' lacks a closing bracket`);
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
      if (q === undefined) throw new Error(`the formula '${text}' needs '${token}', which is not given`);
      return q.value;
    };
  }

  const whole = sum();
  if (at !== tokens.length) throw new Error(`the formula '${text}' cannot be read from '${tokens[at]}' on`);
  return whole;
}
