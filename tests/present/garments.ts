/** Plans of random garments: a body and a sleeve, thick to fine, small to large, up or down, flat or in the round. */
import fc from 'fast-check';
import { shapeBody } from '../../src/fit/body-shaping.ts';
import { bodyPart } from '../../src/fit/body-steps.ts';
import type { Part, Plan } from '../../src/fit/plan.ts';
import { shapeSleeve } from '../../src/fit/sleeve.ts';
import { sleevePart } from '../../src/fit/sleeve-steps.ts';
import { LENGTH_UNITS, type LengthUnit } from '../../src/fit/units.ts';
import { bodyAsks, sleeveAsks } from '../fit/arbitrary.ts';

export function planOf(parts: readonly Part[], unit: LengthUnit): Plan {
  return {
    schema: 'easewright plan',
    version: 1,
    flow: 'test',
    unit,
    summary: [],
    steps: parts.flatMap((p) => p.steps),
    finished: parts.flatMap((p) => p.finished),
    pieces: parts.flatMap((p) => p.pieces),
    assumed: [],
    waiting: [],
    cautions: [],
  };
}

export const garments: fc.Arbitrary<Plan> = fc
  .tuple(bodyAsks, sleeveAsks, fc.constantFrom(...LENGTH_UNITS))
  .map(([bodyAsk, sleeveAsk, unit]) => {
    const body = shapeBody(bodyAsk);
    const sleeve = shapeSleeve(sleeveAsk);
    const parts = [
      ...(body.kind === 'body' ? [bodyPart(body, null)] : []),
      ...(sleeve.kind === 'sleeve' ? [sleevePart(sleeve, { wrist: null, upperArm: null })] : []),
    ];
    return planOf(parts, unit);
  });
