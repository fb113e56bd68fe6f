/** A body in pieces that is drawn in at the waist: 110 stitches to 50 cm, over 120 rows. */
import type { PiecesAsk } from '../../src/fit/body-pieces.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

/** The waist lies at row 66, its plain rows from 62 to 70. */
export const DRAWN_IN: PiecesAsk = {
  gauge: over10cm(22, 30, 'flat'),
  direction: 'up',
  edge: 2,
  pattern: { hem: stitches(112), bust: stitches(112), length: cm(40), edging: cm(6) },
  length: cm(40),
  waist: { around: cm(88), belowUnderarm: cm(18) },
  hip: null,
};

/** With another count at the hem. */
export function withHem(hem: number): PiecesAsk {
  return { ...DRAWN_IN, pattern: { ...DRAWN_IN.pattern, hem: stitches(hem) } };
}
