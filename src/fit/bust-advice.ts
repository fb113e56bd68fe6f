/**
 * Which shaping suits a full bust: short rows add length and no width, vertical darts width and no length, and short
 * rows cut across a stitch pattern. So 'Tutorial: bust shaping', its parts on horizontal and on vertical bust darts
 * (lavisch.com, year not given).
 */
import type { Cm } from './units.ts';

export const BUST_SHAPINGS = ['none', 'short rows', 'vertical darts', 'both'] as const;
export type BustShaping = (typeof BUST_SHAPINGS)[number];

export type BustReason =
  | 'the front needs length'
  | 'the front needs width'
  | 'the ease takes up the little length that is wanting'
  | 'length and width are nearly those of the back'
  | 'short rows would break the pattern, and width also stops the front from riding up'
  | 'short rows would break the pattern, and nothing else adds the length';

export interface BustAdviceAsk {
  /** Front length minus back length; null where only girths are known. */
  readonly length: Cm | null;
  /** Full bust minus upper bust. */
  readonly width: Cm;
  /** At the full bust. */
  readonly ease: Cm;
  /** Whether rows may be put in without harm to colour or stitch pattern. */
  readonly fabric: 'plain' | 'patterned';
}

export interface BustAdvice {
  readonly suits: BustShaping;
  readonly because: readonly BustReason[];
}

/** From this much on, dressmaking gives the difference between full and upper bust to the front: 2 in, in round cm. */
const WIDE = 5;
/** Less than this is within what a tape reads twice over the same body; from memory. */
const NO_LENGTH = 0.5;
/** Below 1 in of length, 3 in of ease make up for it: common practice. */
const LITTLE_LENGTH = 2.54;
const MUCH_EASE = 7.62;

/** Advice with its reasons. */
export function bustAdvice({ length, width, ease, fabric }: BustAdviceAsk): BustAdvice {
  const wide = width >= WIDE;
  const eased = length !== null && length >= NO_LENGTH && length < LITTLE_LENGTH && ease >= MUCH_EASE;
  const long = length === null ? wide : length >= NO_LENGTH && !eased;
  const broken = long && fabric === 'patterned';
  const needs: BustReason[] = [
    ...(long ? (['the front needs length'] as const) : []),
    ...(wide ? (['the front needs width'] as const) : []),
  ];
  if (broken && wide) {
    const why = 'short rows would break the pattern, and width also stops the front from riding up';
    return { suits: 'vertical darts', because: [...needs, why] };
  }
  if (broken) {
    const why = 'short rows would break the pattern, and nothing else adds the length';
    return { suits: 'short rows', because: [...needs, why] };
  }
  if (long && wide) return { suits: 'both', because: needs };
  if (long) return { suits: 'short rows', because: needs };
  const slack = eased ? (['the ease takes up the little length that is wanting'] as const) : [];
  if (wide) return { suits: 'vertical darts', because: [...needs, ...slack] };
  const enough: BustReason[] = ['length and width are nearly those of the back'];
  return { suits: 'none', because: eased ? slack : enough };
}
