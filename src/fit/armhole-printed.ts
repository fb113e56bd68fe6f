/** An armhole as a pattern prints it, measured at the knitter's gauge: what a cap that is altered must still fit. */
import { edgeLength } from './edge-length.ts';
import { asPrinted, boundOff, countAfter, type EdgeEvent, together } from './edge-shaping.ts';
import type { Gauge } from './gauge.ts';
import type { Run } from './spacing.ts';
import { type Cm, type Rows, rows, type Stitches } from './units.ts';
import type { WorkingLine } from './working.ts';

export interface PrintedArmholeAsk {
  readonly bust: Stitches;
  /** At each side, two rows apart. */
  readonly bindOffs: readonly Stitches[];
  /** Decreases at both edges after that; the first lies in the next row. */
  readonly decreases: readonly Pick<Run, 'every' | 'times'>[];
  readonly rows: Rows;
  readonly gauge: Gauge;
}

export interface PrintedArmhole {
  readonly kind: 'armhole as printed';
  readonly crossBack: Stitches;
  readonly events: readonly EdgeEvent[];
  readonly edge: Cm;
  readonly workings: readonly WorkingLine[];
}

/** The shaping as printed runs on past the rows of the armhole, or takes more stitches than there are. */
export interface PrintedWrong {
  readonly kind: 'does not come out';
  readonly lastShapingRow: Rows;
  readonly rows: Rows;
  readonly left: number;
}

export function printedArmhole(ask: PrintedArmholeAsk): PrintedArmhole | PrintedWrong {
  const off = boundOff(ask.bust, ask.bindOffs, 0);
  const next = 2 * ask.bindOffs.length + 1;
  const from = countAfter(ask.bust, off);
  const events = together(ask.bust, off, asPrinted('both', from, next, ask.decreases, -1));
  const left = countAfter(ask.bust, events);
  const last = events.at(-1)?.row ?? rows(0);
  if (last > ask.rows || left < 1)
    return { kind: 'does not come out', lastShapingRow: last, rows: ask.rows, left };
  const edge = edgeLength('armhole edge as printed', events, ask.rows, ask.gauge);
  return {
    kind: 'armhole as printed',
    crossBack: left,
    events,
    edge: edge.length,
    workings: edge.workings,
  };
}
