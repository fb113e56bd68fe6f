/** A sleeve from cuff to underarm: counts at wrist and upper arm, its length, and the shaping between, spaced anew. */
import { carriersOf } from './body-shaping.ts';
import { type Counted, countFor } from './count.ts';
import type { Gauge } from './gauge.ts';
import { plainRows, rowAt, type Stretch, stretch } from './heights.ts';
import { level, type Piece, piece } from './outline.ts';
import { type Spacing, space } from './spacing.ts';
import { type Cm, cm, rows, type Stitches } from './units.ts';
import type { Direction } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Common practice of the trade: at least an inch of plain fabric below the underarm. */
export const PLAIN_AT_UNDERARM: Cm = cm(2.54);

export interface SleeveAsk {
  readonly gauge: Gauge;
  readonly direction: Direction;
  /** Edge stitches of a flat sleeve, swallowed by its seam; 0 in the round. */
  readonly edge: number;
  /** The pattern's own figures in the size that is followed. */
  readonly pattern: {
    readonly wrist: Stitches;
    readonly upperArm: Stitches;
    /** Null where it is not known; then there is no outline to compare with. */
    readonly length: Cm | null;
    readonly cuff: Cm;
  };
  /** Finished widths around, where they are to differ from the pattern's. */
  readonly wrist: Cm | null;
  readonly upperArm: Cm | null;
  /** Cuff edge to underarm, finished. */
  readonly length: Cm;
  /** Stitch repeat of the cuff's edging, edge stitches left out; a multiple of 1 where any count will do. */
  readonly cuffRepeat: { readonly multiple: number; readonly plus: number };
}

export interface SleeveShaping {
  readonly kind: 'sleeve';
  readonly ask: SleeveAsk;
  readonly before: Piece | null;
  readonly after: Piece;
  readonly wrist: Counted | null;
  readonly upperArm: Counted | null;
  readonly counts: { readonly wrist: Stitches; readonly upperArm: Stitches };
  readonly cuff: Stretch;
  readonly arm: Stretch;
  readonly plain: WorkingLine;
  readonly spacing: Spacing;
  readonly inAll: WorkingLine;
  /** Stitches that the sleeve's top has more (or fewer, negative) than the pattern's; null where it has as many. */
  readonly topDifference: WorkingLine | null;
}

export interface SleeveCannot {
  readonly kind: 'cannot';
  readonly why: 'edging longer than the piece';
  /** The one wanted, or the pattern's own where that is too short for the edging. */
  readonly length: Cm;
  readonly edging: Cm;
}

/** Draws the sleeve anew. Where its shaping cannot be spaced, `spacing` says so and holds what can. */
export function shapeSleeve(ask: SleeveAsk): SleeveShaping | SleeveCannot {
  const shortest = cm(Math.min(ask.length, ask.pattern.length ?? ask.length));
  if (shortest <= ask.pattern.cuff) {
    return {
      kind: 'cannot',
      why: 'edging longer than the piece',
      length: shortest,
      edging: ask.pattern.cuff,
    };
  }
  const wrist = ask.wrist === null ? null : countFor('wrist', ask.wrist, ask.gauge, cuffRule(ask));
  const low = wrist?.stitches ?? ask.pattern.wrist;
  const upperArm = upperArmCount(ask, low);
  const high = upperArm?.stitches ?? ask.pattern.upperArm;
  const up = ask.direction === 'up';
  const turn = up ? ask.pattern.cuff : cm(ask.length - ask.pattern.cuff);
  const first = rowAt(up ? 'cuff' : 'start of the cuff', turn, ask.gauge);
  const inAll = rowAt(up ? 'underarm' : 'cuff edge', ask.length, ask.gauge);
  const [lower, upper] = [
    stretch('rows of the first part', null, first),
    stretch('rows of this section', first, inAll),
  ];
  const [cuff, arm] = up ? [lower, upper] : [upper, lower];
  const plain = plainRows('below the underarm', PLAIN_AT_UNDERARM, ask.gauge);
  const spacing = space({
    rows: arm.rows,
    from: up ? low : high,
    to: up ? high : low,
    perRow: 2,
    carriers: carriersOf(ask.gauge),
    lead: rows(up ? 0 : plain.result.value),
    trail: rows(up ? plain.result.value : 0),
    order: 'grouped',
    stitchesPerCm: ask.gauge.stitches.perCm,
  });
  return {
    kind: 'sleeve',
    ask,
    before:
      ask.pattern.length === null
        ? null
        : outline(ask, ask.pattern.wrist, ask.pattern.upperArm, ask.pattern.length),
    after: outline(ask, low, high, ask.length),
    wrist,
    upperArm,
    counts: { wrist: low, upperArm: high },
    cuff,
    arm,
    plain,
    spacing,
    inAll,
    topDifference: high === ask.pattern.upperArm ? null : difference(ask, high),
  };
}

function cuffRule(ask: SleeveAsk) {
  return { ...ask.cuffRepeat, edge: ask.edge, parity: 'any' as const };
}

/** The count nearest to the wanted width that paired shaping can reach from the wrist. */
function upperArmCount(ask: SleeveAsk, wrist: Stitches): Counted | null {
  const even = (ask.pattern.upperArm - wrist) % 2 === 0;
  if (ask.upperArm === null && even) return null;
  const width = ask.upperArm ?? cm((ask.pattern.upperArm - ask.edge) / ask.gauge.stitches.perCm);
  const plus = (wrist - ask.edge) % 2;
  return countFor('upper arm', width, ask.gauge, { multiple: 2, plus, edge: ask.edge, parity: 'any' });
}

function difference(ask: SleeveAsk, count: Stitches): WorkingLine {
  const [mine, theirs] = [
    quantity('stitches at the upper arm', count, 'stitches'),
    quantity("the pattern's stitches there", ask.pattern.upperArm, 'stitches'),
  ];
  const more = count > ask.pattern.upperArm;
  return workOut(
    more ? 'stitches more than the pattern' : 'stitches fewer than the pattern',
    'a - b',
    more ? { a: mine, b: theirs } : { a: theirs, b: mine },
    { unit: 'stitches' },
  );
}

function outline(ask: SleeveAsk, wrist: Stitches, upperArm: Stitches, length: Cm): Piece {
  const up = ask.direction === 'up';
  const end = rowAt('end', length, ask.gauge).result.value;
  const turn = rowAt('cuff', up ? ask.pattern.cuff : cm(length - ask.pattern.cuff), ask.gauge).result.value;
  const levels = up
    ? [level('cast-on', 0, wrist), level('cuff', turn, wrist), level('upper arm', end, upperArm)]
    : [level('upper arm', 0, upperArm), level('cuff', turn, wrist), level('wrist', end, wrist)];
  return piece('sleeve', ask.gauge.worked, ask.direction, levels);
}
