/**
 * The published shape of a plan. `plan.schema.json` beside this file is made from it (npm run schemas), for programs that
 * read plans: for every section its rows, the shaping rows, and the counts before and after.
 */
import * as z from 'zod';
import { CONTRADICTIONS } from './contradiction.ts';
import { COUNTED, ROWED } from './pattern.ts';
import { PHRASES } from './phrases.ts';
import { NAMED_EDGES, type Plan, SHAPED_AT } from './plan.ts';
import { CHANGES } from './row.ts';
import { cm, edgeEvent, rates, rows, stitches } from './schema-parts.ts';
import { shapedPart } from './shaped-schema.ts';
import { EFFORTS } from './size.ts';
import { CARRIERS } from './spacing.ts';
import { LENGTH_UNITS } from './units.ts';
import { WEDGE_SIDES, WEDGES } from './wedge-base.ts';
import { DIRECTIONS, FITS, LEVELS, MEASUREMENTS, PIECES, REGIONS, WORKED } from './words.ts';
import { QUANTITY_UNITS } from './working.ts';

const quantity = z.strictObject({ name: z.string(), value: z.number(), unit: z.enum(QUANTITY_UNITS) });

const rounding = z.union([
  z.strictObject({ to: z.enum(['whole', 'whole down', 'whole up', 'even']) }),
  z.strictObject({ to: z.literal('multiple'), multiple: z.int().min(1), plus: z.int() }),
]);

const working = z
  .strictObject({
    label: z.string(),
    formula: z.string().describe('arithmetic over the letters of `given`'),
    given: z.record(z.string(), quantity),
    exact: z.number().describe('value of the formula, before rounding'),
    rounding: rounding.optional(),
    result: quantity,
  })
  .meta({ id: 'working' });

const phrase = z
  .strictObject({ say: z.enum(PHRASES), with: z.record(z.string(), z.union([quantity, z.string()])) })
  .meta({ id: 'phrase' });

const spaced = z
  .strictObject({
    kind: z.literal('spaced'),
    rows,
    from: stitches.describe('count before the section'),
    to: stitches.describe('count after it'),
    perRow: z.int().min(1).describe('stitches that one shaping row changes'),
    carriers: z.enum(CARRIERS),
    base: z.int().describe('plain rows before the first interval is counted'),
    runs: z.array(z.strictObject({ every: rows, times: z.int().min(1) })),
    plainAfter: rows,
    shaping: z.array(z.strictObject({ row: rows.describe('counted from 1'), after: stitches })),
    workings: z.array(working),
  })
  .meta({ id: 'spaced' });

const range = z.strictObject({ low: cm, expected: cm, high: cm });

const measure = z.strictObject({
  level: z.enum(LEVELS),
  of: z.enum(['width', 'length']),
  planned: cm,
  expected: range,
  off: cm.describe('expected less planned'),
  within: z.boolean().describe('near enough to what was planned'),
  sure: z.boolean(),
  knitted: z.boolean(),
});

const comparedSize = z.strictObject({
  label: z.string(),
  price: z.number(),
  regions: z.array(
    z.strictObject({
      region: z.enum(REGIONS),
      knitted: cm,
      wanted: cm,
      difference: cm,
      effort: z.enum(EFFORTS),
    }),
  ),
});

const comparedFit = z.strictObject({
  fit: z.enum(FITS),
  low: cm,
  high: cm.nullable(),
  nearest: z.strictObject({ label: z.string(), bust: cm }).nullable(),
});

const segment: z.ZodType = z
  .lazy(() =>
    z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('edge'), stitches }),
      z.strictObject({ kind: z.literal('plain'), stitches }),
      z.strictObject({ kind: z.literal('change'), change: z.enum(CHANGES) }),
      z.strictObject({ kind: z.literal('repeat'), times: z.int().min(1), of: z.array(segment) }),
    ]),
  )
  .meta({ id: 'segment', description: 'a part of one row, in the order of knitting' });

const boundary = z
  .int()
  .describe('stitches before it, from where right-side rows or rounds begin; negative: before the join');
const marker = z.enum(['start', 'end', 'centre']);

const wedge = z
  .strictObject({
    kind: z.literal('wedge'),
    purpose: z.enum(WEDGES),
    place: z.strictObject({
      level: z.enum(LEVELS),
      rows: z.int().describe('rows after the level is reached; before it where negative'),
      point: z.enum(['begins', 'is complete']),
    }),
    worked: z.enum(WORKED),
    gauge: rates,
    sides: z.enum(WEDGE_SIDES),
    order: z.enum(['shortening', 'lengthening']),
    needle: stitches,
    markers: z.array(z.strictObject({ name: marker, at: boundary })),
    firstRow: z.enum(['right side', 'wrong side']),
    rows: rows.describe('short rows, and by how many rows the deepest part outgrows the rest'),
    asked: cm,
    depth: cm,
    turns: z.array(
      z.strictObject({
        row: rows.describe('short row that ends with this turn, counted from 1'),
        side: z.enum(['start', 'end']),
        marker,
        way: z.enum(['before', 'past']),
        stitches,
        at: boundary,
      }),
    ),
    steps: z.array(stitches).describe('on each sloped side, outermost first'),
    flat: stitches.describe('stitches that get the full depth'),
    closing: z.strictObject({
      to: z.enum(['end of the row', 'join']),
      ordinaryRows: z.union([z.literal(0), z.literal(1)]),
      gaps: z.int(),
      closed: z.enum(['row by row', 'after the last turn']),
    }),
  })
  .meta({ id: 'wedge' });

const raglanParts = z.strictObject({ back: z.int(), front: z.int(), sleeve: z.int() });

const instruction: z.ZodType = z
  .discriminatedUnion('do', [
    z.strictObject({ do: z.literal('say'), phrase }),
    z.strictObject({ do: z.literal('cast on'), stitches }),
    z.strictObject({ do: z.literal('begin with'), stitches }),
    z.strictObject({ do: z.literal('work edging'), rows, length: cm, stitches }),
    z.strictObject({ do: z.literal('work plain'), rows, length: cm, stitches }),
    z.strictObject({ do: z.literal('bind off'), stitches }),
    z.strictObject({ do: z.literal('shape'), spaced, at: z.enum(SHAPED_AT) }),
    z.strictObject({ do: z.literal('work row'), row: z.array(segment), before: stitches, after: stitches }),
    z.strictObject({ do: z.literal('short rows'), wedge }),
    z.strictObject({
      do: z.literal('divide'),
      first: stitches,
      bindOff: stitches,
      last: stitches,
      atEdges: stitches,
    }),
    z.strictObject({
      do: z.literal('shape edges'),
      schedule: z.strictObject({
        from: stitches,
        to: stitches,
        rows,
        at: z.enum([...NAMED_EDGES, 'both edges']),
        events: z.array(edgeEvent),
      }),
    }),
    z.strictObject({
      do: z.literal('shape raglan'),
      raglan: z.strictObject({
        direction: z.enum(DIRECTIONS),
        rows,
        from: stitches.describe('all parts together, both sleeves counted'),
        to: stitches,
        lines: z.strictObject({ back: spaced, front: spaced, sleeve: spaced }),
        shaping: z.array(z.strictObject({ row: rows, change: raglanParts, after: stitches })),
      }),
    }),
    z.strictObject({
      do: z.literal('choose one'),
      ways: z.array(z.strictObject({ name: phrase, instead: z.array(z.lazy(() => instruction)) })),
    }),
    z.strictObject({
      do: z.literal('shape rows'),
      rows,
      start: stitches.nullable(),
      shaping: z.array(
        z.strictObject({
          row: rows.describe('counted from 1'),
          change: z.int().nullable().describe('stitches gained, or lost where negative'),
          after: stitches.nullable(),
        }),
      ),
    }),
    z.strictObject({
      do: z.literal('note contradiction'),
      code: z.enum(CONTRADICTIONS),
      size: z.string().nullable().describe('null where it holds for all sizes'),
      figures: z.array(quantity).describe('as printed'),
      wouldAgree: z.array(quantity).describe('each alone would agree'),
    }),
    z.strictObject({
      do: z.literal('compare counts'),
      counts: z.array(
        z.strictObject({
          place: z.enum(COUNTED),
          pattern: stitches,
          stitches: stitches.describe('at the knitter’s gauge'),
          width: cm.describe('of one piece, without its edge stitches'),
          widthUnchanged: cm.describe("of the pattern's count at the knitter's gauge"),
          below: stitches,
          above: stitches,
        }),
      ),
      rows: z.array(
        z.strictObject({ stretch: z.enum(ROWED), pattern: rows, length: cm, rows, lengthUnchanged: cm }),
      ),
      armhole: z.strictObject({ boundOff: stitches, decreased: stitches }).nullable(),
    }),
    z.strictObject({
      do: z.literal('pick up'),
      stitches,
      rows: rows.describe('of the edge'),
      ratio: z.strictObject({ stitches: z.int().min(1), rows: z.int().min(1) }),
      between: z.enum(['a row skipped', 'a stitch more', 'nothing']),
      runs: z.array(z.strictObject({ pick: z.int().min(0), times: z.int().min(1) })),
    }),
    z.strictObject({
      do: z.literal('place buttonholes'),
      unit: z.enum(['rows', 'stitches']),
      length: z.int().min(1),
      holes: z.array(z.strictObject({ from: z.int().min(1), to: z.int().min(1) })),
      gaps: z.array(z.int().min(1)),
    }),
    z.strictObject({ do: z.literal('compare measures'), measures: z.array(measure) }),
    z.strictObject({ do: z.literal('compare sizes'), sizes: z.array(comparedSize) }),
    z.strictObject({ do: z.literal('compare fits'), fits: z.array(comparedFit) }),
    z.strictObject({
      do: z.literal('note measurements'),
      measurements: z.array(z.strictObject({ name: z.enum(MEASUREMENTS), value: cm, assumed: z.boolean() })),
    }),
  ])
  .meta({ id: 'instruction' });

const step = z
  .strictObject({
    piece: z.enum([...PIECES, 'all']),
    worked: z.enum(WORKED).nullable(),
    where: phrase,
    pattern: phrase.nullable(),
    instead: z.array(instruction),
    check: phrase.nullable(),
    notes: z.array(phrase),
    shaped: shapedPart.nullable(),
    workings: z.array(working),
  })
  .meta({ id: 'step' });

const piece = z
  .strictObject({
    name: z.enum(PIECES),
    worked: z.enum(WORKED),
    direction: z.enum(DIRECTIONS),
    levels: z.array(z.strictObject({ name: z.enum(LEVELS), row: rows, stitches })),
  })
  .meta({ id: 'piece' });

export const planSchema = z
  .strictObject({
    schema: z.literal('easewright plan'),
    version: z.literal(1),
    flow: z.string(),
    unit: z
      .enum(LENGTH_UNITS)
      .describe('the unit that the reader chose; every length here is in centimetres'),
    summary: z.array(phrase),
    steps: z.array(step),
    finished: z.array(
      z.strictObject({
        name: z.string(),
        pattern: cm.nullable(),
        range,
        hangsOn: z
          .enum(['stitch gauge', 'row gauge'])
          .nullable()
          .describe('the gauge that makes it unsure; null where it is taken as printed'),
        worked: z
          .enum(WORKED)
          .nullable()
          .describe('whether rows or rounds were counted; null where it was stitches'),
        workings: z.array(working),
      }),
    ),
    pieces: z.array(
      z.strictObject({
        before: piece.nullable(),
        after: piece,
        gauge: z.strictObject({ stitchesPerCm: z.number(), rowsPerCm: z.number(), worked: z.enum(WORKED) }),
        edge: stitches.describe('swallowed by the seams, left out of every width; 0 in the round'),
        darts: z
          .array(
            z.strictObject({
              row: rows,
              fromMiddle: z
                .number()
                .describe('stitches from the middle to the dart line on either side of it'),
            }),
          )
          .optional()
          .describe('the dart lines of a waist, in the order of knitting'),
      }),
    ),
    assumed: z.array(z.strictObject({ question: z.string(), used: z.string(), effect: z.string() })),
    waiting: z.array(z.string()),
    cautions: z.array(phrase),
  })
  .meta({
    title: 'An Easewright plan',
    description: 'A numbered list of changes to a sweater pattern, in the order of knitting.',
  });

/** A plan as read from outside; throws ZodError where it does not follow the schema. */
export function parsePlan(value: unknown): Plan {
  return planSchema.parse(value) as unknown as Plan;
}
