/** Parts that the schemas of a plan and of what it shapes have in common. */
import * as z from 'zod';
import { EDGES } from './edge-shaping.ts';

export const cm = z.number().describe('centimetres');
export const stitches = z.int().min(0).describe('stitches');
export const rows = z.int().min(0).describe('rows, or rounds where the piece is knitted in the round');

export const rates = z.strictObject({ stitchesPerCm: z.number(), rowsPerCm: z.number() });

export const edgeEvent = z.strictObject({
  row: rows.describe('counted from 1, a right-side row'),
  edge: z.enum(EDGES).describe('right: where right-side rows begin'),
  by: z.enum(['bind off', 'decrease', 'increase']),
  change: z.int().describe('stitches gained, or lost where negative, at each edge that is named'),
  after: stitches.describe('on the needle after it'),
});
