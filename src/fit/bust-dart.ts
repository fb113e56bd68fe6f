/**
 * Short-row bust darts: length added to the front over the bust; the back is never lengthened.
 * The first turn stands 2.5 cm in from the side, the last 2.5 cm outside the bust point, and the dart lies no higher
 * than the bust point: common practice, as in 'How to Knit Better: Short-Row Bust Darts' (a knitting weblog, year not
 * given), which has 1 in for both.
 */
import { type Cm, cm, rows, type Stitches, stitches } from './units.ts';
import { type CannotWedge, layWedge, type NoRoom, type Wedge, type WedgeAlternative } from './wedge.ts';
import type { Rates, WedgeAsk, WedgeSides } from './wedge-base.ts';
import type { Direction, Worked } from './words.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

/** What the dart's depth is taken from. */
export type DartDepth =
  /** From the shoulder's highest point to the waist, in front over the fullest point, and behind. */
  | { readonly from: 'lengths'; readonly front: Cm; readonly back: Cm }
  | { readonly from: 'girths'; readonly bust: Cm; readonly upperBust: Cm };

export interface BustDartAsk {
  readonly depth: DartDepth;
  readonly gauge: Rates;
  readonly worked: Worked;
  readonly direction: Direction;
  /** Both on a whole front; for a cardigan's front the side on which its side seam lies. */
  readonly sides: WedgeSides;
  readonly needle: Stitches;
  /** The front between its side markers, or one front between side marker and front edge. */
  readonly front: { readonly start: number; readonly stitches: Stitches };
  /** From bust point to bust point. */
  readonly bustSpan: Cm;
}

export interface BustDart {
  readonly kind: 'bust dart';
  readonly wedge: Wedge;
  /** A rule of thumb gives a likely range; lengths that were measured give none. */
  readonly thumb: { readonly low: Cm; readonly high: Cm } | null;
  readonly workings: readonly WorkingLine[];
}

/** The front needs no more length than the back. */
export interface NoDart {
  readonly kind: 'not needed';
  readonly depth: Cm;
  readonly workings: readonly WorkingLine[];
}

const CLEARANCE = quantity('clearance', 2.5, 'cm');

/** The dart for these measurements, or why there is none, with what can be done instead. */
export function bustDart(ask: BustDartAsk): BustDart | NoDart | CannotWedge | NoRoom {
  const { depth, thumb, workings: depthLines } = depthOf(ask.depth);
  if (depth <= 0) return { kind: 'not needed', depth, workings: depthLines };
  const inset = insetOf(ask.gauge);
  const flat = flatOf(ask, CLEARANCE);
  const placed = wedgeAsk(ask, depth, inset.result.value, flat.result.value);
  const laid = [...depthLines, inset, flat];
  const room = roomFor(ask, inset, flat);
  if (room.result.value > ask.front.stitches) return noRoom(ask, placed, inset, [...laid, room]);
  const wedge = layWedge(placed);
  const workings = [...laid, ...wedge.workings];
  return wedge.kind === 'wedge' ? { kind: 'bust dart', wedge, thumb, workings } : { ...wedge, workings };
}

/** A turn needs a stitch beside it, however wide the stitches are. */
function insetOf(gauge: Rates): WorkingLine {
  const label = 'first turn, stitches in from the side';
  const inset = toStitches(label, 'a * b', { a: CLEARANCE }, gauge);
  if (inset.result.value > 0) return inset;
  return workOut(
    label,
    'a',
    { a: quantity('least stitches beside a turn', 1, 'stitches') },
    { unit: 'stitches' },
  );
}

/** In cm of dart for each cm beyond, and the difference from which it counts. */
const THUMB = {
  low: quantity('least dart for each further cm', 0.75, 'ratio'),
  middle: quantity('dart for each further cm', 0.875, 'ratio'),
  high: quantity('most dart for each further cm', 1, 'ratio'),
  from: quantity('difference for which patterns are drawn', 5.08, 'cm'),
};

/**
 * Lengths: front − back. Girths only: a rule of thumb, 3/4 to 1 in of dart for a C cup and as much again for each
 * further cup (the source above), a cup being 1 in of full minus upper bust and C 3 in (dressmaking, from memory);
 * the middle of that range is taken.
 */
function depthOf(from: DartDepth): { depth: Cm; thumb: BustDart['thumb']; workings: WorkingLine[] } {
  if (from.from === 'lengths') {
    const given = {
      a: quantity('front length over the bust', from.front, 'cm'),
      b: quantity('back length', from.back, 'cm'),
    };
    const line = workOut('depth of the dart', 'a - b', given, { unit: 'cm' });
    return { depth: cm(line.result.value), thumb: null, workings: [line] };
  }
  const bust = quantity('full bust', from.bust, 'cm');
  const upper = quantity('upper bust', from.upperBust, 'cm');
  const rule = (label: string, k: Quantity) =>
    workOut(label, 'a * (b - c - d)', { a: k, b: bust, c: upper, d: THUMB.from }, { unit: 'cm' });
  const [low, middle, high] = [
    rule('least depth by the rule of thumb', THUMB.low),
    rule('depth of the dart, by a rule of thumb', THUMB.middle),
    rule('greatest depth by the rule of thumb', THUMB.high),
  ];
  const thumb = { low: cm(low.result.value), high: cm(high.result.value) };
  return { depth: cm(middle.result.value), thumb, workings: [low, middle, high] };
}

/** From clearance to clearance over both bust points; on one front from its edge, half of that. */
function flatOf({ bustSpan, gauge, sides }: BustDartAsk, clearance: Quantity): WorkingLine {
  const span = quantity('from bust point to bust point', bustSpan, 'cm');
  const formula = sides === 'both' ? '(a + 2 * c) * b' : '(a / 2 + c) * b';
  return toStitches('stitches of the full depth', formula, { a: span, c: clearance }, gauge);
}

/** The formula's `b` is the stitches to the centimetre. */
function toStitches(
  label: string,
  formula: string,
  given: Record<string, Quantity>,
  gauge: Rates,
): WorkingLine {
  const b = quantity('stitches', gauge.stitchesPerCm, 'stitches/cm');
  return workOut(label, formula, { ...given, b }, { unit: 'stitches', rounding: { to: 'whole' } });
}

/** Bottom-up the dart is complete where the bust point is reached; top-down it begins there. */
function wedgeAsk(ask: BustDartAsk, depth: Cm, inset: number, flat: number): WedgeAsk {
  return {
    purpose: 'bust dart',
    place: { level: 'bust', rows: rows(0), point: ask.direction === 'up' ? 'is complete' : 'begins' },
    worked: ask.worked,
    sides: ask.sides,
    order: 'shortening',
    depth,
    gauge: ask.gauge,
    needle: ask.needle,
    span: ask.front,
    inset: stitches(inset),
    flat: stitches(flat),
    outer: 'turn',
    counted: 'from the sides',
  };
}

function roomFor({ sides }: BustDartAsk, inset: WorkingLine, flat: WorkingLine): WorkingLine {
  const given = { a: flat.result, b: inset.result };
  return workOut('stitches that the dart needs', sides === 'both' ? 'a + 2 * b' : 'a + b', given, {
    unit: 'stitches',
  });
}

/** Turns right up to the bust points, where those leave room. */
function noRoom(ask: BustDartAsk, placed: WedgeAsk, inset: WorkingLine, workings: WorkingLine[]): NoRoom {
  const needed = stitches(workings.at(-1)?.result.value ?? 0);
  const closer = flatOf(ask, quantity('no clearance', 0, 'cm'));
  const fits = roomFor(ask, inset, closer).result.value <= ask.front.stitches;
  const wedge = fits ? layWedge({ ...placed, flat: stitches(closer.result.value) }) : undefined;
  const alternatives: WedgeAlternative[] =
    wedge?.kind === 'wedge' ? [{ way: 'closer turns', wedges: [wedge] }] : [];
  return { kind: 'no room', needed, available: ask.front.stitches, alternatives, workings };
}
