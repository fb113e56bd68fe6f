/**
 * The armhole of a flat back or front: bind-offs at the underarm, steps, decreases, then straight to the shoulder.
 * Its depth is measured straight up from the underarm bind-off to the first shoulder row, in an even number of rows.
 * Common practice of the trade, where the knitter says nothing: 2.5 cm (1 in) bound off at each side, and all
 * shaping done by half the depth.
 */
import { decreaseLine } from './decrease-line.ts';
import { edgeLength } from './edge-length.ts';
import { boundOff, countAfter, type EdgeEvent, spacedAt, together } from './edge-shaping.ts';
import { type Gauge, heightOf } from './gauge.ts';
import type { Spaced } from './spacing.ts';
import { type Cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface ArmholeAsk {
  /** Of this piece: at the underarm, and above the armhole shaping. Edge stitches are in both. */
  readonly bust: Stitches;
  readonly crossBack: Stitches;
  readonly depth: Cm;
  readonly gauge: Gauge;
  /** Stitches bound off at each side: the underarm's first, then steps. One bind-off of 2.5 cm where left out. */
  readonly bindOffs?: readonly Stitches[];
  /** Height above the underarm by which all shaping is done; half the depth where left out. */
  readonly shapedBy?: Cm;
  /** On every right-side row, or evenly over all the rows up to `shapedBy`. */
  readonly decreases?: 'quick' | 'spread';
}

export interface Armhole {
  readonly kind: 'armhole';
  readonly bust: Stitches;
  readonly crossBack: Stitches;
  readonly rows: Rows;
  /** The depth as it will be knitted, in whole pairs of rows. */
  readonly depth: Cm;
  readonly bindOffs: readonly Stitches[];
  /** After the bind-offs, at both edges. */
  readonly decreases: Spaced;
  /** Rows without shaping at the top. */
  readonly straight: Rows;
  readonly events: readonly EdgeEvent[];
  /** Length of one armhole edge of this piece. */
  readonly edge: Cm;
  readonly workings: readonly WorkingLine[];
}

/** Why an armhole cannot be shaped as asked. */
export type Hindrance =
  /** The two sides cannot be shaped alike: the stitches to lose are odd. */
  | { readonly kind: 'odd loss'; readonly loss: Stitches }
  /** The cross back is wider than the bust: an armhole only narrows. */
  | { readonly kind: 'cross back wider'; readonly by: Stitches }
  /** The bind-offs take more stitches than there are to lose at a side. */
  | { readonly kind: 'bind-offs exceed the loss'; readonly boundOff: Stitches; readonly loss: Stitches }
  /** Bind-offs and decreases need more rows than there are up to the height by which shaping is done. */
  | { readonly kind: 'too few rows'; readonly needed: Rows; readonly available: Rows };

/** The armhole as asked for, or what stands against it. */
export function shapeArmhole(ask: ArmholeAsk): Armhole | Hindrance {
  const loss = ask.bust - ask.crossBack;
  if (loss < 0) return { kind: 'cross back wider', by: stitches(-loss) };
  if (loss % 2 !== 0) return { kind: 'odd loss', loss: stitches(loss) };
  const figures = frame(ask);
  const taken = figures.bindOffs.reduce((sum, count) => sum + count, 0);
  if (taken > loss / 2)
    return { kind: 'bind-offs exceed the loss', boundOff: stitches(taken), loss: stitches(loss / 2) };
  const decreased = loss / 2 - taken;
  const needed = 2 * figures.bindOffs.length + decreased;
  const available = Math.min(figures.shapedBy, figures.rows);
  if (needed > available) return { kind: 'too few rows', needed: rows(needed), available: rows(available) };
  const room = available - 2 * figures.bindOffs.length;
  return build(ask, figures, decreased, room);
}

interface Frame {
  readonly rows: Rows;
  readonly shapedBy: Rows;
  readonly bindOffs: readonly Stitches[];
  readonly workings: readonly WorkingLine[];
}

function frame(ask: ArmholeAsk): Frame {
  const perCm = quantity('rows', ask.gauge.rows.perCm, 'rows/cm');
  const depth = workOut(
    'rows of the armhole',
    'a * b',
    { a: quantity('armhole depth', ask.depth, 'cm'), b: perCm },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const by =
    ask.shapedBy === undefined
      ? workOut(
          'rows by which shaping is done',
          'a / 2',
          { a: depth.result },
          { unit: 'rows', rounding: { to: 'even' } },
        )
      : workOut(
          'rows by which shaping is done',
          'a * b',
          { a: quantity('height by which shaping is done', ask.shapedBy, 'cm'), b: perCm },
          { unit: 'rows', rounding: { to: 'even' } },
        );
  const { bindOffs, workings } = bindOffsOf(ask);
  return {
    rows: rows(depth.result.value),
    shapedBy: rows(by.result.value),
    bindOffs,
    workings: [depth, by, ...workings],
  };
}

/** Bind-offs at each side: those asked for, else 2.5 cm, or all that is to be lost where that is less. */
export function bindOffsOf(ask: ArmholeAsk): Pick<Frame, 'bindOffs' | 'workings'> {
  if (ask.bindOffs !== undefined) return { bindOffs: ask.bindOffs, workings: [] };
  const loss = Math.floor((ask.bust - ask.crossBack) / 2);
  const line = workOut(
    'stitches bound off at each underarm',
    'a * b',
    {
      a: quantity('usual underarm bind-off', 2.5, 'cm'),
      b: quantity('stitches', ask.gauge.stitches.perCm, 'stitches/cm'),
    },
    { unit: 'stitches', rounding: { to: 'whole' } },
  );
  if (loss === 0) return { bindOffs: [], workings: [] };
  if (line.result.value > loss) return { bindOffs: [stitches(loss)], workings: [] };
  return { bindOffs: [stitches(line.result.value)], workings: [line] };
}

function build(ask: ArmholeAsk, figures: Frame, decreased: number, room: number): Armhole {
  const off = boundOff(ask.bust, figures.bindOffs, 0);
  const from = countAfter(ask.bust, off);
  const pace = ask.decreases ?? 'quick';
  const decreases = decreaseLine({ from, to: ask.crossBack, perRow: 2, room, pace });
  const offRows = 2 * figures.bindOffs.length;
  const events = together(ask.bust, off, spacedAt('both', decreases, offRows));
  const edge = edgeLength('armhole edge', events, figures.rows, ask.gauge);
  const straight = rows(figures.rows - (events.at(-1)?.row ?? 0));
  return {
    kind: 'armhole',
    bust: ask.bust,
    crossBack: ask.crossBack,
    rows: figures.rows,
    depth: heightOf(figures.rows, ask.gauge),
    bindOffs: figures.bindOffs,
    decreases,
    straight,
    events,
    edge: edge.length,
    workings: [
      ...figures.workings,
      ...explain(ask, figures, decreased, straight),
      ...decreases.workings,
      ...edge.workings,
    ],
  };
}

function explain(ask: ArmholeAsk, figures: Frame, decreased: number, straight: Rows): WorkingLine[] {
  const lose = workOut(
    'stitches to lose at each side',
    '(a - b) / 2',
    {
      a: quantity('stitches at the underarm', ask.bust, 'stitches'),
      b: quantity('stitches across the back', ask.crossBack, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const taken = figures.bindOffs.reduce((sum, count) => sum + count, 0);
  const left = workOut(
    'decreases at each side',
    'a - b',
    { a: lose.result, b: quantity('stitches bound off at each side', taken, 'stitches') },
    { unit: 'times' },
  );
  const plain = workOut(
    'straight rows to the shoulder',
    'a - b',
    {
      a: quantity('rows of the armhole', figures.rows, 'rows'),
      b: quantity('last shaping row', figures.rows - straight, 'rows'),
    },
    { unit: 'rows' },
  );
  const depth = workOut(
    'armhole depth as knitted',
    'a / b',
    {
      a: quantity('rows of the armhole', figures.rows, 'rows'),
      b: quantity('rows', ask.gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'cm' },
  );
  return decreased === 0 ? [lose, plain, depth] : [lose, left, plain, depth];
}
