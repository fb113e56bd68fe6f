/**
 * What a technical editor marks in a pattern: figures that cannot all be right. A value, never a sentence.
 */
import type { Counted, Rowed } from './pattern.ts';
import type { Region } from './words.ts';
import { type Quantity, quantity, type Rounding, type WorkingLine, workOut } from './working.ts';

/** Every kind of contradiction that is looked for. */
export const CONTRADICTIONS = [
  'gauge out of bounds',
  'rows fewer than stitches',
  'label twice',
  'sizes out of order',
  'count and width disagree',
  'four inches for ten centimetres',
  'inches for centimetres',
  'rows and length disagree',
  'repeat not fitted',
  'edge stitches left out',
  'edge stitches in the round',
  'odd change',
  'armhole does not add up',
  'shoulders do not add up',
  'sleeve narrows upward',
  'wider above the armhole',
  'sleeve top and armhole disagree',
  'lengths out of order',
  'shaping out of reach',
  'shaping misses the count',
] as const;
export type ContradictionCode = (typeof CONTRADICTIONS)[number];

export interface Contradiction {
  readonly code: ContradictionCode;
  /** Label of the size; absent where the figures hold for all sizes. */
  readonly size?: string;
  /** The printed figures that cannot all be right. */
  readonly figures: readonly Quantity[];
  /** Each of these alone, in place of the printed figure of that name, would agree. Empty where nothing can be named. */
  readonly wouldAgree: readonly Quantity[];
  /** How both came about. */
  readonly workings: readonly WorkingLine[];
}

/** A contradiction with the lines that lead to figures which would agree. */
export function contradiction({
  agreeing,
  workings,
  ...found
}: Omit<Contradiction, 'wouldAgree'> & { readonly agreeing: readonly WorkingLine[] }): Contradiction {
  return {
    ...found,
    wouldAgree: agreeing.map((line) => line.result),
    workings: [...workings, ...agreeing],
  };
}

/** A figure of the name that is printed, worked out such that it agrees with the others. */
export function agrees(
  { name, unit }: Omit<Quantity, 'value'>,
  formula: string,
  given: Readonly<Record<string, Quantity>>,
  rounding?: Rounding,
): WorkingLine {
  return workOut(`${name} that would agree`, formula, given, {
    name,
    unit,
    ...(rounding === undefined ? {} : { rounding }),
  });
}

export function stitchCount(place: Counted, value: number): Quantity {
  return quantity(`${place} stitches`, value, 'stitches');
}

export function finishedLength(region: Region, value: number): Quantity {
  return quantity(`finished ${region}`, value, 'cm');
}

export function rowCount(stretch: Rowed, value: number): Quantity {
  return quantity(`${stretch} rows`, value, 'rows');
}
