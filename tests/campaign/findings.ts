/** What a campaign finds: the figures that do not hold, and how often each kind of thing was met. */
import type { Spaced } from '../../src/fit/spacing.ts';
import type { WorkingLine } from '../../src/fit/working.ts';

/** Figures that two ways of reckoning give may differ in the last digits of a double, no more. */
const LAST_DIGITS = 1e-9;

export class Findings {
  readonly faults: string[] = [];
  readonly met = new Map<string, number>();
  private place = 'garment';

  /** The part of the garment that what follows is about. */
  at(place: string): this {
    this.place = place;
    return this;
  }

  must(holds: boolean, what: string): boolean {
    if (!holds) this.faults.push(`${this.place}: ${what}`);
    return holds;
  }

  /** A count to the stitch or row, or a name: stated and found. */
  same<T>(stated: T, found: T, what: string): boolean {
    return this.must(stated === found, `${what}: ${stated} stated, ${found} knitted`);
  }

  /** A length: stated and measured on what was knitted. */
  near(stated: number, found: number, what: string): boolean {
    const off = Math.abs(stated - found);
    return this.must(
      off <= LAST_DIGITS * Math.max(1, Math.abs(found)),
      `${what}: ${stated} stated, ${found} found`,
    );
  }

  /** Keeps account of a thing that was tried, so that a campaign shows that it was not empty. */
  meet(what: string): void {
    this.met.set(what, (this.met.get(what) ?? 0) + 1);
  }

  /** Does something that throws where it cannot be knitted. */
  knit<T>(doing: () => T): T | undefined {
    try {
      return doing();
    } catch (error) {
      this.must(false, error instanceof Error ? error.message : String(error));
      return undefined;
    }
  }

  /** Every line of workings, reckoned again by JavaScript's own arithmetic, and its rounding by its own rule. */
  workings(lines: readonly WorkingLine[]): void {
    for (const line of lines) {
      this.near(line.exact, reckoned(line), `${line.label} = ${line.formula}`);
      this.must(
        roundedAsSaid(line),
        `${line.label}: ${line.exact} is not ${line.result.value} by its rounding`,
      );
    }
  }

  /** Every figure of a result stands in its workings, as a quantity put in or as a result. */
  states(figures: Readonly<Record<string, number>>, lines: readonly WorkingLine[]): void {
    this.workings(lines);
    const shown = lines.flatMap((line) => [line.result, ...Object.values(line.given)].map((q) => q.value));
    for (const [name, figure] of Object.entries(figures))
      this.must(
        shown.some((value) => Math.abs(value - figure) < LAST_DIGITS),
        `${name} ${figure}, which no working shows`,
      );
  }

  /** The runs of a spacing, counted off row by row as a knitter does, are its shaping rows, and fill its rows. */
  runs({ base, runs, plainAfter, rows, shaping }: Spaced): void {
    const counted: number[] = [];
    let row = base;
    for (const { every, times } of runs)
      for (let i = 0; i < times; i++) {
        row += every;
        counted.push(row);
      }
    this.same(shaping.map((shaped) => shaped.row).join(), counted.join(), 'shaping rows and their runs');
    this.same(rows, row + plainAfter, 'rows of a section and its runs');
  }
}

const reckoners = new Map<string, (...values: number[]) => unknown>();

function reckoned({ formula, given }: WorkingLine): number {
  const letters = Object.keys(given);
  const key = `${letters.join()}:${formula}`;
  let reckon = reckoners.get(key);
  if (reckon === undefined) {
    reckon = new Function(...letters, `return ${formula.replaceAll('√', 'Math.sqrt')}`) as () => unknown;
    reckoners.set(key, reckon);
  }
  return Number(reckon(...Object.values(given).map((q) => q.value)));
}

function roundedAsSaid({ exact, rounding, result: { value } }: WorkingLine): boolean {
  if (rounding === undefined) return value === exact;
  if (!Number.isInteger(value)) return false;
  const within = (least: number, most: number) =>
    value - exact >= least - 1e-6 && value - exact <= most + 1e-6;
  switch (rounding.to) {
    case 'whole':
      return within(-0.5, 0.5);
    case 'whole down':
      return within(-1, 0);
    case 'whole up':
      return within(0, 1);
    case 'even':
      return value % 2 === 0 && within(-1, 1);
    case 'multiple':
      return (
        (value - rounding.plus) % rounding.multiple === 0 &&
        within(-rounding.multiple / 2, rounding.multiple / 2)
      );
    default:
      return rounding satisfies never;
  }
}
