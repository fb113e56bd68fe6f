/** An armhole as a pattern prints it, at the knitter's gauge: what is altered beside it must still fit it. */
import { type Armhole, bindOffsOf, type Hindrance } from './armhole-shape.ts';
import { edgeLength } from './edge-length.ts';
import { asPrinted, boundOff, countAfter, type EdgeEvent, together } from './edge-shaping.ts';
import type { Gauge } from './gauge.ts';
import type { Run } from './spacing.ts';
import { type Cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface PrintedArmholeAsk {
  readonly bust: Stitches;
  /** At each side, two rows apart. */
  readonly bindOffs: readonly Stitches[];
  /** Decreases at both edges after that; the first lies in the next row. */
  readonly decreases: readonly Pick<Run, 'every' | 'times'>[];
  readonly rows: Rows;
  readonly gauge: Gauge;
}

export interface PrintedArmhole extends Pick<Armhole, 'bust' | 'bindOffs' | 'rows'> {
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
    bust: ask.bust,
    bindOffs: ask.bindOffs,
    rows: ask.rows,
    crossBack: left,
    events,
    edge: edge.length,
    workings: edge.workings,
  };
}

/** The figures by which a pattern tells its armhole: one bind-off, and decreases at both edges `every` so many rows. */
export interface ArmholeFigures {
  readonly bust: Stitches;
  readonly crossBack: Stitches;
  readonly depth: Cm;
  /** At each side; about 2.5 cm where it is not known. */
  readonly boundOff?: Stitches;
  readonly every: Rows;
  readonly gauge: Gauge;
}

/** Figures that contradict one another. */
export type FiguresWrong =
  | PrintedWrong
  | Extract<Hindrance, { kind: 'odd loss' | 'bind-offs exceed the loss' }>;

/** The armhole that these figures tell, in an even number of rows. */
export function armholeOfFigures(ask: ArmholeFigures): PrintedArmhole | FiguresWrong {
  const { bust, crossBack, every, gauge } = ask;
  const loss = bust - crossBack;
  if (loss % 2 !== 0) return { kind: 'odd loss', loss: stitches(Math.abs(loss)) };
  const usual = bindOffsOf({ bust, crossBack, depth: ask.depth, gauge });
  const boundOff = ask.boundOff ?? usual.bindOffs[0] ?? stitches(0);
  if (boundOff > loss / 2)
    return { kind: 'bind-offs exceed the loss', boundOff, loss: stitches(Math.max(0, loss / 2)) };
  const deep = workOut(
    "rows of the pattern's armhole",
    'a * b',
    {
      a: quantity("the pattern's depth", ask.depth, 'cm'),
      b: quantity('rows', gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const times = workOut(
    'decreases at each side of the armhole',
    '(a - b) / 2 - c',
    {
      a: quantity('stitches at the underarm', bust, 'stitches'),
      b: quantity('stitches across', crossBack, 'stitches'),
      c: quantity('stitches bound off at each side', boundOff, 'stitches'),
    },
    { unit: 'times' },
  );
  const made = printedArmhole({
    bust,
    bindOffs: boundOff === 0 ? [] : [boundOff],
    decreases: [{ every, times: times.result.value }],
    rows: rows(deep.result.value),
    gauge,
  });
  return made.kind === 'armhole as printed'
    ? {
        ...made,
        workings: [deep, ...(ask.boundOff === undefined ? usual.workings : []), times, ...made.workings],
      }
    : made;
}
