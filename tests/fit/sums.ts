/** Plans that hold nothing but lines of workings, for the tests of sums. */
import { type Plan, phrase } from '../../src/fit/plan.ts';
import { type Sum, sumsOf } from '../../src/fit/sum.ts';
import type { LengthUnit } from '../../src/fit/units.ts';
import {
  type Quantity,
  type QuantityUnit,
  quantity,
  type Rounding,
  type WorkingLine,
  workOut,
} from '../../src/fit/working.ts';
import { planOf } from '../present/garments.ts';

export function planWith(workings: readonly WorkingLine[], unit: LengthUnit): Plan {
  const step = {
    piece: 'all' as const,
    worked: null,
    where: phrase('where: the band'),
    pattern: null,
    instead: [],
    check: null,
    notes: [],
    shaped: null,
    workings,
  };
  return planOf([{ steps: [step], finished: [], pieces: [] }], unit);
}

export function sumNamed(plan: Plan, label: string): Sum {
  const sums = sumsOf(plan);
  const found = sums.find(({ line }) => line.label === label);
  if (found === undefined)
    throw new Error(`no sum '${label}' among ${sums.map(({ line }) => line.label).join('; ')}`);
  return found;
}

const PER_INCH = new Set<QuantityUnit>(['stitches/cm', 'rows/cm', '/cm']);

/** A quantity as it is said in inches, kept in centimetres as the engine keeps it. */
export function inches(name: string, value: number, unit: QuantityUnit): Quantity {
  const factor = PER_INCH.has(unit) ? 1 / 2.54 : unit === 'cm' ? 2.54 : 1;
  return quantity(name, value * factor, unit);
}

/** A line of workings on one line. */
export function line(
  label: string,
  formula: string,
  given: Readonly<Record<string, Quantity>>,
  unit: QuantityUnit,
  rounding?: Rounding,
): WorkingLine {
  return workOut(label, formula, given, { unit, ...(rounding === undefined ? {} : { rounding }) });
}
