/** The sums of a plan that a knitter may work herself: which lines of its workings are worth a try, in her unit. */

import { evaluate } from './formula.ts';
import { decimalsOf, inUnit } from './in-unit.ts';
import type { Plan } from './plan.ts';
import { isRight, roundedAs } from './right.ts';
import { type LengthUnit, roundHalfUp } from './units.ts';
import type { Worked } from './words.ts';
import type { Quantity, QuantityUnit, WorkingLine } from './working.ts';

export interface Sum {
  /** As it stands in the plan. */
  readonly line: WorkingLine;
  /** The same with every figure in the reader's unit: what is called cm is inches where she reads inches. */
  readonly read: WorkingLine;
  /** The lines of the plan whose results go into it, in her unit too. */
  readonly leads: readonly WorkingLine[];
  readonly unit: LengthUnit;
  readonly worked: Worked | null;
  /** The gauges of the plan in her unit; null where the plan has none. */
  readonly rates: { readonly stitches: number | null; readonly rows: number | null };
}

/** Names of quantities that no knitter works with: they say how sure a figure is, or how hard a change. */
const NOT_HERS = /standard error|^price\b|printed/;
/** Lines that only compare: the counts on either side, the pattern's own, the ends of a range. */
const COMPARING =
  /smaller count$|larger count$|pattern's count$|least likely|greatest likely|give or take$|^price\b/;
/** More quantities than this are a column to add up, not a sum. */
const MOST_QUANTITIES = 6;
/** Adding or taking away no more than this needs no trying. */
const TRIVIAL = 2;

/** So many are an exercise; more would be a chore. */
const MOST_SUMS = 10;

/** The sums that matter most, in the order of the plan, one of each kind. */
export function sumsOf({ steps, finished, unit }: Plan): readonly Sum[] {
  const placed = [
    ...steps.flatMap(({ workings, worked }) => workings.map((line) => ({ line, worked }))),
    ...finished.flatMap(({ workings }) => workings.map((line) => ({ line, worked: null }))),
  ].map((one, place) => ({ ...one, place, read: readIn(one.line, unit) }));
  const lines = placed.map(({ read }) => read);
  const rates = { stitches: rateAmong(lines, 'stitches/cm'), rows: rateAmong(lines, 'rows/cm') };
  return firstOfEach(
    placed.filter(({ read }) => isWorthATry(read, unit)),
    ({ read }) => [read.label, kindOf(read)],
  )
    .sort((one, other) => rankOf(one.read) - rankOf(other.read) || one.place - other.place)
    .slice(0, MOST_SUMS)
    .sort((one, other) => one.place - other.place)
    .map(({ line, read, worked, place }) => ({
      line,
      read,
      leads: leadsTo(read, lines.slice(0, place)),
      unit,
      worked,
      rates,
    }));
}

/** Those that share no name with one before them. */
function firstOfEach<T>(all: readonly T[], namesOf: (one: T) => readonly string[]): T[] {
  const known = new Set<string>();
  return all.filter((one) => {
    const names = namesOf(one);
    if (names.some((name) => known.has(name))) return false;
    for (const name of names) known.add(name);
    return true;
  });
}

/** Sums of one kind put the same units together in the same way. */
function kindOf({ formula, given, rounding, result }: WorkingLine): string {
  const units = Object.values(given).map((q) => `${q.unit}${isEase(q) ? ' of ease' : ''}`);
  return [formula.replace(/[a-z]\w*/gi, 'x'), ...units, result.unit, rounding?.to].join(' ');
}

export function isEase({ name, unit }: Quantity): boolean {
  return unit === 'cm' && /\bease\b/.test(name);
}

/** Lower comes first: what a knitter does for every garment, other products and quotients, mere adding up. */
function rankOf({ formula, given, result, label }: WorkingLine): number {
  const quantities = Object.values(given);
  const counts = result.unit === 'stitches' || result.unit === 'rows';
  if (isRate(result) || quantities.some(isEase)) return 0;
  if (counts && quantities.some(isRate)) return 0;
  if (/[*/]/.test(formula)) return /shaping rows|interval|short rows|stretch|turns/.test(label) ? 0 : 1;
  return 2;
}

export function isRate({ unit }: Quantity): boolean {
  return unit === 'stitches/cm' || unit === 'rows/cm';
}

function readIn(line: WorkingLine, unit: LengthUnit): WorkingLine {
  const turned = (q: Quantity): Quantity => ({ ...q, value: inUnit(q.value, q.unit, unit) });
  return {
    ...line,
    given: Object.fromEntries(Object.entries(line.given).map(([letter, q]) => [letter, turned(q)])),
    exact: inUnit(line.exact, line.result.unit, unit),
    result: turned(line.result),
  };
}

function rateAmong(lines: readonly WorkingLine[], of: QuantityUnit): number | null {
  const given = lines.flatMap((line) => Object.values(line.given));
  return given.find(({ unit }) => unit === of)?.value ?? null;
}

/** Lines whose results go in: the same figure of the same unit, by its name where figures are whole and often alike. */
function leadsTo({ given }: WorkingLine, before: readonly WorkingLine[]): WorkingLine[] {
  const quantities = Object.values(given);
  return before.filter(
    ({ result, label }) =>
      !/\d/.test(label) &&
      quantities.some((q) => isSame(q, result) && (q.unit === 'cm' || [result.name, label].includes(q.name))),
  );
}

export function isSame(one: Quantity, other: Quantity): boolean {
  return one.unit === other.unit && Math.abs(one.value - other.value) < 1e-9;
}

function isWorthATry(line: WorkingLine, unit: LengthUnit): boolean {
  const quantities = Object.values(line.given);
  const names = [line.label, ...quantities.map(({ name }) => name)];
  return (
    /[-+*/]/.test(line.formula) &&
    !line.formula.includes('√') &&
    quantities.length <= MOST_QUANTITIES &&
    !COMPARING.test(line.label) &&
    !names.some((name) => NOT_HERS.test(name) || /\d/.test(name)) &&
    !(line.rounding !== undefined && line.result.unit === 'cm') &&
    quantities.every((q) => q.value !== 0 && !(isOnlyAdded(line) && isFew(q))) &&
    line.result.value > 0 &&
    !showsItself(line) &&
    isRight(line, workedAsShown(line), unit)
  );
}

function isOnlyAdded({ formula }: WorkingLine): boolean {
  return !/[*/]/.test(formula);
}

function isFew({ value, unit }: Quantity): boolean {
  return Number.isInteger(value) && unit !== 'cm' && Math.abs(value) <= TRIVIAL;
}

/** Whether the figure that is asked for stands in the question or in its formula. */
function showsItself({ given, formula, rounding, result }: WorkingLine): boolean {
  const written = (formula.match(/\b\d+/g) ?? []).map(Number);
  const grid = rounding?.to === 'multiple' ? [rounding.multiple, rounding.plus] : [];
  const figures = [...Object.values(given).map(shown), ...written, ...grid];
  return figures.some((figure) => Math.abs(figure) === Math.abs(shown(result)));
}

function shown({ value, unit }: Quantity): number {
  return roundHalfUp(value, decimalsOf(unit));
}

/** The figure of one who works with what she is shown, which is rounded. */
export function workedAsShown(line: WorkingLine): number {
  const given = Object.fromEntries(
    Object.entries(line.given).map(([letter, q]) => [letter, { ...q, value: shown(q) }]),
  );
  return roundedAs(line, evaluate(line.formula, given));
}
