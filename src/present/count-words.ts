/** Counts and rows of a pattern beside those at another gauge, in words. */

import type { Rowed } from '../fit/pattern.ts';
import type { Instruction } from '../fit/plan.ts';
import { quantity } from '../fit/working.ts';
import { formatQuantity } from './quantity.ts';
import { inDialect } from './terms.ts';
import type { Voice } from './wording.ts';

type Counts = Extract<Instruction, { do: 'compare counts' }>;

/** 'bust: 200 stitches for 220. They measure 100 cm; 220 stitches would measure 110 cm.' */
export function wordCounts({ counts, rows, armhole }: Counts, voice: Voice): string[] {
  const wide = (cm: number) => formatQuantity(quantity('width', cm, 'cm'), voice);
  const sts = (count: number) => formatQuantity(quantity('stitches', count, 'stitches'), voice);
  return [
    ...counts.map(({ place, pattern, stitches, width, widthUnchanged }) =>
      pattern === stitches
        ? `${place}: ${sts(stitches)}, as in the pattern. They measure ${wide(width)}.`
        : `${place}: ${stitches} stitches in place of ${pattern}. They measure ${wide(width)}; the pattern's count would measure ${wide(widthUnchanged)}.`,
    ),
    ...(armhole === null
      ? []
      : [
          inDialect(
            `armhole: [bind off] ${sts(armhole.boundOff)} at each underarm, then decrease ${sts(armhole.decreased)} at each side of the back.`,
            voice.dialect,
          ),
        ]),
    ...rows.map(({ stretch, pattern, length, rows: own, lengthUnchanged }) => {
      const counted = (n: number) =>
        formatQuantity(quantity('rows', n, 'rows'), {
          ...voice,
          worked: FLAT.has(stretch) ? 'flat' : voice.worked,
        });
      return pattern === own
        ? `${stretch}: ${counted(own)}, as in the pattern. They are ${wide(lengthUnchanged)} long.`
        : `${stretch}: ${counted(own)} in place of ${pattern}, for ${wide(length)}. The pattern's number would be ${wide(lengthUnchanged)} long.`;
    }),
  ];
}

/** Knitted back and forth even on a garment in the round. */
const FLAT: ReadonlySet<Rowed> = new Set(['armhole', 'cap']);
