/** The pieces of one garment while it is knitted from its plan, each on a needle of its own. */
import type { Worked } from '../../src/fit/words.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';

/** The two sides of a divided front are called by which of them the dividing row knits first. */
export type Place = 'body' | 'back' | 'front' | 'first side' | 'last side' | 'sleeve' | 'yoke' | 'darts';

export interface OnNeedle {
  readonly needle: Needle;
  /** Rows knitted before its stitches came onto this needle. */
  readonly below: number;
  /** Whether the plan told of all that lies below; else it is the pattern's. */
  readonly whole: boolean;
}

/** Rows that reach the side of a piece: short rows do not. */
export function rowsOf({ needle, below }: OnNeedle): number {
  return below + needle.log.filter((row) => !row.short).length;
}

/** The same stitches on a needle of their own. */
export function copied(on: OnNeedle, worked: Worked): OnNeedle {
  return { needle: Needle.join([on.needle], worked), below: rowsOf(on), whole: on.whole };
}

export class Bench {
  private readonly places = new Map<Place, OnNeedle>();
  /** A choice is left to the knitter here: what follows is held against the pattern's counts. */
  private readonly open = new Set<Place>();

  /** Rows of a piece up to its underarm, where an armhole is told. */
  readonly marks = new Map<Place, number>();
  /** Of a body without short rows, its back or its front: the stitches after each row up to the underarm. */
  readonly counts = new Map<Place, readonly number[]>();
  /** Least stitches of the front beside its darts: what it has more there the darts have added. */
  dartFront: number | undefined;
  /** Decreased at each armhole edge in the row that divides the front. */
  atEdges = 0;
  /** Rows of a piece, and its stitches, when a step of this name was done; and by how much each had grown in it. */
  readonly done = new Map<
    string,
    { readonly rows: number; readonly count: number; readonly grown: readonly number[] }
  >();

  /** Every needle on which something of a piece was knitted. */
  readonly needles = new Map<Needle, Place>();
  /** Where each step of a piece ended, in the order of knitting. */
  readonly ends: { readonly place: Place; readonly rows: number; readonly count: number }[] = [];

  /** Pieces of which something above the armhole was told. */
  readonly necks = new Set<Place>();
  /** Rows of a body so far, of its back or of its front: what lies above the underarm left out. */
  readonly lengths = new Map<Place, number>();

  constructor(readonly findings: Findings) {}

  at(place: Place): OnNeedle | undefined {
    return this.places.get(place);
  }

  put(place: Place, on: OnNeedle): OnNeedle {
    this.places.set(place, on);
    this.needles.set(on.needle, place);
    return on;
  }

  /** Rows that were knitted but do not count at the side. */
  lower(on: OnNeedle, by: number): void {
    for (const [place, there] of this.places)
      if (there === on) this.places.set(place, { ...on, below: on.below - by });
  }

  drop(place: Place): void {
    this.places.delete(place);
  }

  leave(place: Place): void {
    this.open.add(place);
    this.places.delete(place);
  }

  /** Whether what is told of this piece may be added up. */
  sure(place: Place): boolean {
    return !this.open.has(place);
  }

  /** The piece as far as it is told; one that begins here has as many stitches as the pattern gives it. */
  on(place: Place, count: number, worked: Worked, printed: number, what: string): OnNeedle {
    const there = this.at(place);
    if (there !== undefined) {
      this.findings.same(count, there.needle.count, what);
      return there;
    }
    if (this.sure(place)) this.findings.same(count, printed, `${what}, of the pattern`);
    return this.put(place, { needle: Needle.castOn(count, worked), below: 0, whole: false });
  }
}
