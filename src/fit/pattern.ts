/**
 * A pattern's figures: what a designer prints, size by size. All counts are as knitted; all lengths are finished ones.
 */
import type { Count } from './gauge.ts';
import type { Cm, Rows, Stitches } from './units.ts';
import type { Construction, Direction, Region, Worked } from './words.ts';

/** Places where a pattern states a stitch count. On a body in flat pieces the count is that of the back. */
export const COUNTED = [
  'body cast-on',
  'hip',
  'waist',
  'bust',
  'cross back',
  'back neck',
  'shoulder',
  'sleeve cast-on',
  'wrist',
  'upper arm',
  'cap top',
] as const;
export type Counted = (typeof COUNTED)[number];

/** Stretches for which a pattern states rows instead of, or besides, a length. */
export const ROWED = ['body', 'armhole', 'sleeve', 'cap'] as const;
export type Rowed = (typeof ROWED)[number];

export interface PatternSize {
  readonly label: string;
  /**
   * Bust, waist, hip, upper arm and wrist all round; neck: the opening all round. Body length from hem to underarm,
   * sleeve length from wrist edge to underarm, edgings included.
   */
  readonly finished: Partial<Readonly<Record<Region, Cm>>>;
  readonly counts: Partial<Readonly<Record<Counted, Stitches>>>;
  readonly rows?: Partial<Readonly<Record<Rowed, Rows>>>;
  /** Stitches bound off at each underarm, and decreased after that, on each side of the back. */
  readonly armhole?: { readonly boundOff: Stitches; readonly decreased: Stitches };
  /** From the middle of the front neck straight up to the shoulder. */
  readonly neckDepth?: Cm;
}

export interface Pattern {
  readonly name: string;
  readonly construction: Construction;
  readonly direction: Direction;
  readonly body: Worked;
  readonly sleeves: Worked;
  readonly gauge: { readonly stitches: Count; readonly rows: Count };
  /** Edge stitches of one flat piece that seams swallow, both edges together; 0 in the round. */
  readonly edge: { readonly body: number; readonly sleeves: number };
  /** Stitch repeat that the body's count must fit; a multiple of 1 where any will do. */
  readonly repeat: { readonly multiple: number; readonly plus: number };
  /** Depth of the edging at hem and cuff, knitted before any shaping. */
  readonly edging: { readonly hem: Cm; readonly cuff: Cm };
  readonly sizes: readonly PatternSize[];
}

/** How many pieces go round the body: one in the round, a back and a front where flat. */
export function piecesAround(pattern: Pick<Pattern, 'body'>): 1 | 2 {
  return pattern.body === 'round' ? 1 : 2;
}
