/** The published shape of what a step shapes, for programs that draw it to scale. */
import * as z from 'zod';
import { cm, edgeEvent, rates, rows, stitches } from './schema-parts.ts';
import { DIRECTIONS } from './words.ts';

const events = z.array(edgeEvent);
const spaced = z.strictObject({
  rows,
  from: stitches,
  to: stitches,
  shaping: z.array(z.strictObject({ row: rows.describe('counted from 1'), after: stitches })),
});
const cap = z.strictObject({ upperArm: stitches, rows, height: cm, top: stitches, edge: cm, events });
const armhole = z.strictObject({ rows, edge: cm, events });
const neck = z.strictObject({
  stitches,
  width: cm,
  rows,
  depth: cm,
  centre: stitches,
  steps: z.array(stitches),
  shoulder: stitches,
  edge: cm,
  events: events.describe('of the side with its neck edge at the right'),
});
const dropped = z.strictObject({
  armholeRows: rows,
  depth: cm.describe('of the armhole'),
  top: stitches.describe('of the sleeve, edge stitches included'),
  topWidth: cm.describe('of the sleeve, edge stitches left out'),
});
const raglanPart = z.strictObject({ spaced, edge: cm });

export const shapedPart = z
  .discriminatedUnion('shape', [
    z.strictObject({
      shape: z.literal('cap'),
      gauge: rates,
      after: cap,
      before: cap.nullable(),
      armhole: z.strictObject({ gauge: rates, front: armhole, back: armhole }),
    }),
    z.strictObject({
      shape: z.literal('neck'),
      gauge: rates,
      after: neck,
      before: neck.nullable(),
      slope: rows.describe('of the shoulders, on top of the neck'),
    }),
    z.strictObject({
      shape: z.literal('drop shoulder'),
      gauge: rates,
      back: cm.describe('width of the back, flat'),
      overhang: cm.describe('by which the shoulder hangs over the arm, at each side'),
      after: dropped,
      before: dropped.nullable(),
    }),
    z.strictObject({
      shape: z.literal('raglan'),
      gauge: rates,
      after: z.strictObject({
        direction: z.enum(DIRECTIONS),
        rows,
        depth: cm,
        parts: z.strictObject({ back: raglanPart, front: raglanPart, sleeve: raglanPart }),
        neck: z.strictObject({ stitches, around: cm }),
      }),
    }),
    z.strictObject({
      shape: z.literal('yoke'),
      gauge: rates,
      after: z.strictObject({
        direction: z.enum(DIRECTIONS),
        rows,
        depth: cm,
        plateaus: z.array(z.strictObject({ stitches, rounds: rows, height: cm })),
        neckAround: cm,
        shaping: z.array(z.strictObject({ round: rows, before: stitches, after: stitches })),
      }),
    }),
    z.strictObject({
      shape: z.literal('stepped shoulders'),
      gauge: rates,
      after: z.strictObject({
        from: stitches,
        events,
        shoulder: stitches.describe('of one shoulder'),
        steps: z.array(stitches).describe('from the armhole edge to the neck'),
        rows,
        drop: cm,
      }),
    }),
    z.strictObject({
      shape: z.literal('front darts'),
      gauge: rates,
      after: z.strictObject({
        direction: z.enum(DIRECTIONS),
        spaced: spaced.describe('of the front'),
        fromSide: stitches.describe('from either side to its dart line, before the first shaping row'),
      }),
    }),
  ])
  .meta({ id: 'shaped', description: 'to be drawn to scale; `before` is the pattern’s own' });
