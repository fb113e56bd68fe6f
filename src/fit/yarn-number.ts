/**
 * Yarn on cones is named by a number for its fineness: size and plies (2/24 in worsted count, 16/2 in cotton count).
 * Length to the pound = size / plies × base; 560 yd in the worsted count, 840 yd in the cotton count.
 */

import { quantity, type WorkingLine, workOut } from './working.ts';
import { METRES_PER_YARD } from './yarn.ts';

export const YARN_COUNTS = { worsted: 560, cotton: 840 } as const;
export type YarnCount = keyof typeof YARN_COUNTS;

/** Exactly, by the international yard and pound agreement of 1959. */
export const GRAMS_PER_POUND = 453.59237;

/** Metres in a gram of so many strands held together. Throws where size, plies or strands are not positive. */
export function metresPerGram(system: YarnCount, size: number, plies: number, strands = 1): WorkingLine {
  if (![size, plies, strands].every((n) => n > 0))
    throw new RangeError(`a yarn of size ${size}, ${plies} plies, ${strands} strands cannot be`);
  return workOut(
    'metres to the gram',
    's / p * b * y / g / n',
    {
      s: quantity('size', size, 'times'),
      p: quantity('plies', plies, 'times'),
      b: quantity('yards to the pound of size 1', YARN_COUNTS[system], 'ratio'),
      y: quantity('metres to the yard', METRES_PER_YARD, 'm'),
      g: quantity('grams to the pound', GRAMS_PER_POUND, 'g'),
      n: quantity('strands', strands, 'times'),
    },
    { unit: 'ratio' },
  );
}
