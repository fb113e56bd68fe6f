/** The papers and the sizes of type in which sheets are printed. */
import type { LengthUnit } from '../../fit/units.ts';

/** In points, 1/72 in: ISO 216, and 8½ by 11 in. */
export const PAPERS = {
  A4: { width: 595.28, height: 841.89 },
  Letter: { width: 612, height: 792 },
} as const;
export type Paper = keyof typeof PAPERS;
export const PAPER_NAMES = ['A4', 'Letter'] as const satisfies readonly Paper[];

export const TYPE_SIZES = ['normal', 'large'] as const;
export type TypeSize = (typeof TYPE_SIZES)[number];

/** What is usual where people measure so. */
export function usualPaper(unit: LengthUnit): Paper {
  return unit === 'in' ? 'Letter' : 'A4';
}
