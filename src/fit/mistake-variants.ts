/** A line of workings with something in it changed, as one works it who slips. */

import { evaluate } from './formula.ts';
import { isSame, type Sum } from './sum.ts';
import type { Quantity, Rounding, WorkingLine } from './working.ts';

export interface Variant {
  /** The line at which it parts from the workings, and the quantity that was taken wrongly, where it is one. */
  readonly at: string;
  readonly about: string | null;
  readonly formula: string;
  readonly given: WorkingLine['given'];
  /** Undefined: nothing is rounded. */
  readonly rounding: Rounding | undefined;
}

export function variant(
  { label, formula, given, rounding }: WorkingLine,
  change: Partial<Omit<Variant, 'at'>>,
): Variant {
  return { at: label, about: null, formula, given, rounding, ...change };
}

type Which = (q: Quantity, letter: string) => boolean;
/** The figure that is taken instead; null where there is none. */
type Instead = (q: Quantity) => number | null;

/** The line with each of these quantities changed alone, and with all of them changed. */
export function subsets(line: WorkingLine, which: Which, instead: Instead): readonly Variant[] {
  const letters = Object.entries(line.given).flatMap(([letter, q]) => (which(q, letter) ? [letter] : []));
  const each = letters.map((letter) => [letter]);
  return [...each, ...(letters.length > 1 ? [letters] : [])].flatMap((some) => {
    const given = changedIn(line.given, some, instead);
    const about = line.given[some[0] ?? '']?.name ?? null;
    return given === null ? [] : [variant(line, { given, about })];
  });
}

function changedIn(given: WorkingLine['given'], letters: readonly string[], instead: Instead) {
  const changed: Record<string, Quantity> = { ...given };
  for (const letter of letters) {
    const q = given[letter];
    const value = q === undefined ? null : instead(q);
    if (q === undefined || value === null) return null;
    changed[letter] = { ...q, value };
  }
  return changed;
}

/** The slip in the line itself, or in one whose result goes into it. */
export function withLeads({ read, leads }: Sum, which: Which, instead: Instead): readonly Variant[] {
  const within = leads.flatMap((lead) =>
    subsets(lead, which, instead).flatMap((slipped) => {
      const came = evaluate(slipped.formula, slipped.given);
      return subsets(
        read,
        (q) => isSame(q, lead.result),
        () => came,
      ).map((v) => ({
        ...v,
        at: lead.label,
        about: slipped.about,
      }));
    }),
  );
  return [...subsets(read, which, instead), ...within];
}

/** The formula without its halving or doubling. */
export function withoutTwo(line: WorkingLine): readonly Variant[] {
  const formula = line.formula.replace(/ \/ 2\b/, '').replace(/\b2 \* /, '');
  return formula === line.formula ? [] : [variant(line, { formula })];
}
