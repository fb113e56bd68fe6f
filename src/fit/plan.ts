/**
 * The plan: a numbered list in the order of knitting, as a value. Text, pictures and sheets are made from it.
 * Words are left to `present`; a plan holds phrases by name with the quantities that go into them.
 */
import type { ButtonAsk, ButtonsPlaced } from './buttons.ts';
import type { ContradictionCode } from './contradiction.ts';
import type { DartPoint } from './dart-lines.ts';
import type { EdgeEvent } from './edge-shaping.ts';
import type { Range } from './gauge.ts';
import type { Piece } from './outline.ts';
import type { PhraseName } from './phrases.ts';
import type { PickedUp } from './pickup.ts';
import type { RaglanShape } from './raglan-shape.ts';
import type { Measure } from './recheck-measures.ts';
import type { CountFigure } from './regauge-counts.ts';
import type { RowFigure } from './regauge-rows.ts';
import type { Segment } from './row.ts';
import type { ShapedPart } from './shaped.ts';
import type { Effort } from './size.ts';
import type { Spaced } from './spacing.ts';
import type { Cm, LengthUnit, PerCm, Rows, Stitches } from './units.ts';
import type { Wedge } from './wedge.ts';
import type { Fit, Measurement, PieceName, Region, Worked } from './words.ts';
import type { Quantity, WorkingLine } from './working.ts';

/** A sentence by name, with what goes into its gaps: quantities, or words such as a size's label. */
export interface Phrase {
  readonly say: PhraseName;
  readonly with: Readonly<Record<string, Quantity | string>>;
}

export function phrase(say: PhraseName, gaps: Phrase['with'] = {}): Phrase {
  return { say, with: gaps };
}

/** Where the stitches of one shaping row are gained or lost. */
export const SHAPED_AT = [
  'both edges',
  'both sides of the underarm line',
  'both sides of both side lines',
  'both sides of both dart lines',
  'both sides of all four dart lines',
  'one edge',
] as const;
export type ShapedAt = (typeof SHAPED_AT)[number];

/** At how many places of a shaping row its stitches are gained or lost. */
export const PLACES: Readonly<Record<ShapedAt, number>> = {
  'both edges': 2,
  'both sides of the underarm line': 2,
  'both sides of both side lines': 4,
  'both sides of both dart lines': 4,
  'both sides of all four dart lines': 8,
  'one edge': 1,
};

/** One thing to do, complete enough that another program could knit it. */
export type Instruction =
  | { readonly do: 'say'; readonly phrase: Phrase }
  | { readonly do: 'cast on'; readonly stitches: Stitches }
  /** Stitches that are there already: picked up, or live from another piece. */
  | { readonly do: 'begin with'; readonly stitches: Stitches }
  | { readonly do: 'work edging'; readonly rows: Rows; readonly length: Cm; readonly stitches: Stitches }
  | { readonly do: 'work plain'; readonly rows: Rows; readonly length: Cm; readonly stitches: Stitches }
  | { readonly do: 'bind off'; readonly stitches: Stitches }
  | { readonly do: 'shape'; readonly spaced: Spaced; readonly at: ShapedAt }
  /** One row with its changes written out. */
  | {
      readonly do: 'work row';
      readonly row: readonly Segment[];
      readonly before: Stitches;
      readonly after: Stitches;
    }
  | { readonly do: 'short rows'; readonly wedge: TurnedWedge }
  /** A right-side row over one part, the middle bound off, and on over the other part. */
  | {
      readonly do: 'divide';
      readonly first: Stitches;
      readonly bindOff: Stitches;
      readonly last: Stitches;
      /** Decreased at either edge in the same row: stitches of the first part, and of the last. */
      readonly atEdges: Stitches;
    }
  | { readonly do: 'shape edges'; readonly schedule: EdgeSchedule }
  | { readonly do: 'shape raglan'; readonly raglan: RaglanLines }
  /** What was asked for cannot be done; each of these can. */
  | { readonly do: 'choose one'; readonly ways: readonly Way[] }
  /** Rows that shape as a pattern's line says them; null where the line or the counts do not tell. */
  | {
      readonly do: 'shape rows';
      readonly rows: Rows;
      readonly start: Stitches | null;
      readonly shaping: readonly LineRow[];
    }
  | {
      readonly do: 'note contradiction';
      readonly code: ContradictionCode;
      /** Null where it holds for all sizes. */
      readonly size: string | null;
      readonly figures: readonly Quantity[];
      /** Each of these alone, in place of the figure of that name, would agree. */
      readonly wouldAgree: readonly Quantity[];
    }
  | {
      readonly do: 'compare counts';
      readonly counts: readonly Omit<CountFigure, 'workings'>[];
      readonly rows: readonly Omit<RowFigure, 'workings'>[];
      /** Stitches to bind off at each underarm, and to decrease after that on each side of the back. */
      readonly armhole: { readonly boundOff: Stitches; readonly decreased: Stitches } | null;
    }
  /** Along so many rows of an edge: in turn `pick` stitches in as many rows, then what lies between. */
  | ({ readonly do: 'pick up'; readonly stitches: Stitches; readonly rows: Rows } & Pick<
      PickedUp,
      'ratio' | 'between' | 'runs'
    >)
  /** Along a band, counted from the end where it is begun. */
  | ({ readonly do: 'place buttonholes'; readonly unit: ButtonAsk['unit']; readonly length: number } & Pick<
      ButtonsPlaced,
      'holes' | 'gaps'
    >)
  | { readonly do: 'compare measures'; readonly measures: readonly Measure[] }
  | { readonly do: 'compare sizes'; readonly sizes: readonly ComparedSize[] }
  | { readonly do: 'compare fits'; readonly fits: readonly ComparedFit[] }
  | { readonly do: 'note measurements'; readonly measurements: readonly NotedMeasurement[] };

/** A wedge as it is knitted: its turns, counted from its markers. */
export type TurnedWedge = Omit<Wedge, 'workings'>;

/** The edge that is shaped where only one is. */
export const NAMED_EDGES = ['neck edge', 'armhole edge'] as const;
export type NamedEdge = (typeof NAMED_EDGES)[number];

/** Shaping at the edges of a section of so many rows; row 1 is a right-side row. */
export interface EdgeSchedule {
  readonly from: Stitches;
  readonly to: Stitches;
  readonly rows: Rows;
  readonly at: NamedEdge | 'both edges';
  readonly events: readonly EdgeEvent[];
}

/** The lines of a raglan, row by row: what each part changes at both its edges, and all stitches after it. */
export interface RaglanLines extends Pick<RaglanShape, 'direction' | 'rows' | 'shaping'> {
  readonly from: Stitches;
  readonly to: Stitches;
  readonly lines: Readonly<Record<keyof RaglanShape['lines'], Spaced>>;
}

/** A way that works in place of what was asked for. */
export interface Way {
  readonly name: Phrase;
  readonly instead: readonly Instruction[];
}

export interface LineRow {
  /** Counted from the first row of the line. */
  readonly row: Rows;
  /** Stitches gained or (negative) lost. */
  readonly change: number | null;
  readonly after: Stitches | null;
}

/** A size beside what is wanted, at the knitter's gauge. */
export interface ComparedSize {
  readonly label: string;
  /** Lower is better: what its differences would cost to change. */
  readonly price: number;
  readonly regions: readonly {
    readonly region: Region;
    readonly knitted: Cm;
    readonly wanted: Cm;
    readonly difference: Cm;
    readonly effort: Effort;
  }[];
}

/** What one fit would measure around the bust, and the size that comes nearest. */
export interface ComparedFit {
  readonly fit: Fit;
  readonly low: Cm;
  /** Null where there is no upper end. */
  readonly high: Cm | null;
  readonly nearest: { readonly label: string; readonly bust: Cm } | null;
}

export interface NotedMeasurement {
  readonly name: Measurement;
  readonly value: Cm;
  /** True where a table's figure stands in. */
  readonly assumed: boolean;
}

export interface Step {
  readonly piece: PieceName | 'all';
  /** How that piece is knitted: whether it has rows or rounds. Null where the step concerns no one piece. */
  readonly worked: Worked | null;
  readonly where: Phrase;
  /** What the pattern says there; null where it says nothing. */
  readonly pattern: Phrase | null;
  readonly instead: readonly Instruction[];
  /** How to check it with a tape. */
  readonly check: Phrase | null;
  readonly notes: readonly Phrase[];
  /** To be drawn to scale; null where what the step shapes is no shape of its own, or is drawn elsewhere. */
  readonly shaped: ShapedPart | null;
  readonly workings: readonly WorkingLine[];
}

/** A finished measurement: as the pattern has it, and as it will come out, with its range where the gauge is a swatch's. */
export interface Finished {
  readonly name: string;
  readonly pattern: Cm | null;
  readonly range: Range;
  /** The gauge that makes it unsure; null where it is taken as printed. */
  readonly hangsOn: 'stitch gauge' | 'row gauge' | null;
  /** How what was counted is knitted, where that is rows or rounds; null where it is stitches. */
  readonly worked: Worked | null;
  readonly workings: readonly WorkingLine[];
}

/** One piece before and after; `before` is null where the pattern's figures are not known. */
export interface PieceChange {
  readonly before: Piece | null;
  readonly after: Piece;
  readonly gauge: { readonly stitchesPerCm: PerCm; readonly rowsPerCm: PerCm; readonly worked: Worked };
  /** Stitches of the piece that its seams swallow, left out of every width; 0 in the round. */
  readonly edge: number;
  /** The two dart lines of the piece, or in the round of its front or back, in the order of knitting. */
  readonly darts?: readonly DartPoint[];
}

/** A figure that was not known and stands in for an answer, with what it could change. */
export interface Assumption {
  readonly question: string;
  readonly used: string;
  readonly effect: string;
}

/** What one alteration brings to a plan. */
export interface Part {
  readonly steps: readonly Step[];
  readonly finished: readonly Finished[];
  readonly pieces: readonly PieceChange[];
}

export interface Plan {
  readonly schema: 'easewright plan';
  readonly version: 1;
  readonly flow: string;
  readonly unit: LengthUnit;
  /** The outcome in one or two sentences. */
  readonly summary: readonly Phrase[];
  readonly steps: readonly Step[];
  readonly finished: readonly Finished[];
  readonly pieces: readonly PieceChange[];
  readonly assumed: readonly Assumption[];
  /** Parts of the plan that wait for an answer, in the words of the question. */
  readonly waiting: readonly string[];
  readonly cautions: readonly Phrase[];
}

/** Nothing can be planned from these answers, because; and what can be done instead. */
export interface Cannot {
  readonly kind: 'cannot';
  readonly unit: LengthUnit;
  readonly because: readonly Phrase[];
  readonly instead: readonly Phrase[];
  /** The figures of both, so that they can be checked by hand. */
  readonly workings: readonly WorkingLine[];
}

export type Outcome = { readonly kind: 'plan'; readonly plan: Plan } | Cannot;
