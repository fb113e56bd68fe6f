/**
 * Yarn on cones is named by a number for its fineness: size and plies (2/24 in worsted count, 16/2 in cotton count).
 * Length of a weight = size / plies × the length of size 1.
 */
import { quantity, type WorkingLine, workOut } from './working.ts';
import { METRES_PER_YARD } from './yarn.ts';

/** Exactly, by the international yard and pound agreement of 1959. */
export const GRAMS_PER_POUND = 453.59237;

/**
 * What size 1 is, as a single: 560 yd to the pound in the worsted count, 840 in the cotton count (mypollywogs.com, Yarn
 * count systems), 1000 m to the kilogram in the metric count, Nm (georgeweil.com, Understanding yarn count measurements).
 */
export const YARN_COUNTS = {
  worsted: { metres: 560 * METRES_PER_YARD, grams: GRAMS_PER_POUND },
  cotton: { metres: 840 * METRES_PER_YARD, grams: GRAMS_PER_POUND },
  metric: { metres: 1000, grams: 1000 },
} as const;
export type YarnCount = keyof typeof YARN_COUNTS;

/** Metres in a gram of so many strands held together. Throws where size, plies or strands are not positive. */
export function metresPerGram(count: YarnCount, size: number, plies: number, strands = 1): WorkingLine {
  if (![size, plies, strands].every((n) => n > 0))
    throw new RangeError(`a yarn of size ${size}, ${plies} plies, ${strands} strands cannot be`);
  const { metres, grams } = YARN_COUNTS[count];
  return workOut(
    'metres to the gram',
    's / p * m / g / n',
    {
      s: quantity('size', size, 'times'),
      p: quantity('plies', plies, 'times'),
      m: quantity('length of size 1', metres, 'm'),
      g: quantity('weight of that length', grams, 'g'),
      n: quantity('strands', strands, 'times'),
    },
    { unit: 'ratio' },
  );
}
