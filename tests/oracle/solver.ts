/** Integer programs for HiGHS, a general optimiser that knows nothing of knitting: the second opinion on the engine's own searches. */
import { createRequire } from 'node:module';
import type highsBuild from 'highs';

// The package describes its CommonJS build, not the one that an import would load.
const { default: loadHighs } = createRequire(import.meta.url)('highs') as typeof highsBuild;
const highs = await loadHighs();

/** A sum of variables, each with its factor. */
export type Terms = Readonly<Record<string, number>>;

export interface Program {
  readonly aim: 'least' | 'most';
  readonly of: Terms;
  readonly where: readonly Constraint[];
  /** Variables that are whole numbers; all are nought at least. */
  readonly whole: readonly string[];
}

export interface Constraint {
  readonly sum: Terms;
  readonly is: '<=' | '>=' | '=';
  readonly than: number;
}

export type Solved =
  | { readonly kind: 'best'; readonly value: number; readonly at: (variable: string) => number }
  | { readonly kind: 'none' };

export function must(sum: Terms, is: Constraint['is'], than: number): Constraint {
  return { sum, is, than };
}

/** The proven best, or that there is none. Throws where the solver stops with anything else. */
export function solve(program: Program): Solved {
  const found = highs.solve(written(program), { mip_rel_gap: 0, mip_abs_gap: 1e-9 });
  if (found.Status === 'Infeasible') return { kind: 'none' };
  if (found.Status !== 'Optimal') throw new Error(`the solver ended with '${found.Status}'`);
  const columns: Readonly<Record<string, { readonly Primal: number }>> = found.Columns;
  return { kind: 'best', value: found.ObjectiveValue, at: (name) => columns[name]?.Primal ?? 0 };
}

/** The program in the LP file format: one constraint a line. */
function written({ aim, of, where, whole }: Program): string {
  const constraints = where.map(({ sum, is, than }, i) => ` c${i}: ${terms(sum)} ${is} ${than}`);
  return [
    aim === 'least' ? 'Minimize' : 'Maximize',
    ` aim: ${terms(of)}`,
    'Subject To',
    ...constraints,
    'General',
    ` ${whole.join(' ')}`,
    'End',
  ].join('\n');
}

function terms(sum: Terms): string {
  return Object.entries(sum)
    .map(([name, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
    .join(' ');
}
