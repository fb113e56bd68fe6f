/**
 * The area of a garment from the outlines of its pieces: every stitch of every row of them. What the neck takes away its
 * band adds again (common practice). Short rows come on top.
 */
import { changeOf, type EdgeEvent } from './edge-shaping.ts';
import { type Piece, sections } from './outline.ts';
import type { SpacedOutline } from './shaped.ts';
import type { Rows, Stitches } from './units.ts';
import type { Wedge } from './wedge.ts';
import type { Rates } from './wedge-base.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import type { Area } from './yarn-garment.ts';

/** Pieces that are alike, or parts of them. */
export interface Fabric {
  readonly name: FabricName;
  readonly pieces: 1 | 2;
  /** Of all rows of one of them together. */
  readonly stitches: number;
  readonly gauge: Rates;
}

/** What the area of short rows is worked out from. */
export type ShortRows = Pick<Wedge, 'sides' | 'flat' | 'steps' | 'depth' | 'gauge'>;

/** Up to the underarms, and above them. */
export type FabricName =
  | 'body'
  | 'sleeve'
  | 'darts'
  | 'body from the underarm'
  | 'front from the underarm'
  | 'back from the underarm'
  | 'shoulders'
  | 'sleeve cap';

/** In square centimetres, with a line for each part and the sum of them. */
export function fabricArea(parts: readonly Fabric[], wedges: readonly ShortRows[]): Area {
  const lines = [...parts.map(areaOf), ...wedges.map(wedgeArea)];
  const given = Object.fromEntries(lines.map(({ result }, i) => [`p${i + 1}`, result]));
  const all = workOut('area in all', Object.keys(given).join(' + '), given, { unit: 'cm²' });
  return { area: all.exact, workings: [...lines, all] };
}

function areaOf({ name, pieces, stitches, gauge }: Fabric): WorkingLine {
  return workOut(
    `area of the ${name}`,
    pieces === 1 ? 'a / (b * c)' : 'n * a / (b * c)',
    {
      ...(pieces === 1 ? {} : { n: quantity('pieces', pieces, 'times') }),
      a: quantity('stitches of all rows', stitches, 'stitches'),
      b: quantity('stitches', gauge.stitchesPerCm, 'stitches/cm'),
      c: quantity('rows', gauge.rowsPerCm, 'rows/cm'),
    },
    { unit: 'cm²' },
  );
}

/** As deep as it is told over its flat part, and tapering to nothing where its base ends. */
function wedgeArea({ sides, flat, steps, depth, gauge }: ShortRows): WorkingLine {
  const slope = steps.reduce((sum, step) => sum + step, 0);
  return workOut(
    'area that short rows add',
    sides === 'both' ? '(a + b) * c / d' : '(a + b / 2) * c / d',
    {
      a: quantity('stitches that get the full depth', flat, 'stitches'),
      b: quantity('stitches of a slope', slope, 'stitches'),
      c: quantity('depth', depth, 'cm'),
      d: quantity('stitches', gauge.stitchesPerCm, 'stitches/cm'),
    },
    { unit: 'cm²' },
  );
}

/** Stitches of all rows of a piece whose sections change evenly. */
export function stitchesOfPiece(piece: Piece): number {
  return sections(piece).reduce(
    (sum, { from, to, rows }) => sum + ((from.stitches + to.stitches) / 2) * rows,
    0,
  );
}

/** Stitches of all rows of what is shaped at its edges: of each row as many as it leaves on the needle. */
export function stitchesOfEdges(
  from: Stitches,
  { rows, events }: { readonly rows: Rows; readonly events: readonly EdgeEvent[] },
): number {
  return events.reduce((sum, event) => sum + changeOf(event) * (rows - event.row + 1), from * rows);
}

/** The same of a section that is spaced over its rows. */
export function stitchesOfSpacing({ rows, from, to, shaping }: SpacedOutline): number {
  const change = shaping.length === 0 ? 0 : (to - from) / shaping.length;
  return shaping.reduce((sum, { row }) => sum + change * (rows - row + 1), from * rows);
}
