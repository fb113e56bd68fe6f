/**
 * A short-row wedge: a stretch of fabric that is deeper in one place than in another, as a list of turns.
 * Rows = depth × rows/cm to the nearest even number, since each turn is followed by a row back; turns on each side =
 * rows / 2; the stitches of the base are divided between the turns in steps that differ by at most one. These rules
 * are common practice of the trade. All kinds of wedge share this schedule.
 *
 *   side marker                    centre
 *   |<-inset->|<-step->|<-step->|<- flat …   height: 0, then 2 rows more at each turn
 *             turn 1   turn 2   turn 3
 */
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import {
  type Base,
  checkAsk,
  divide,
  mostTurns,
  type Place,
  type Rates,
  spanOf,
  type TurnOrder,
  turnsOf,
  type WedgeAsk,
  type WedgePurpose,
  type WedgeSides,
} from './wedge-base.ts';
import { explainMost, explainRows, explainTurns } from './wedge-workings.ts';
import type { Worked } from './words.ts';
import type { WorkingLine } from './working.ts';

export type MarkerName = 'start' | 'end' | 'centre';

export interface Marker {
  readonly name: MarkerName;
  /** The boundary at which it hangs; negative in the round: so many stitches before the join. */
  readonly at: number;
}

/** Knit to so many stitches before a side marker, or past the centre marker, and turn. */
export interface Turn {
  /** Short row that ends with it, counted from 1. */
  readonly row: Rows;
  readonly side: 'start' | 'end';
  readonly marker: MarkerName;
  readonly way: 'before' | 'past';
  readonly stitches: Stitches;
  /** The boundary of the turn. */
  readonly at: number;
}

export interface Closing {
  /** How far the row after the last turn goes. */
  readonly to: 'end of the row' | 'join';
  /** Rows that the stitches beside the wedge have grown by then. */
  readonly ordinaryRows: 0 | 1;
  /** Gaps to close, one for each turn: as the next row passes it, or all after the last turn. */
  readonly gaps: number;
  readonly closed: 'row by row' | 'after the last turn';
}

export interface Wedge {
  readonly kind: 'wedge';
  readonly purpose: WedgePurpose;
  readonly place: Place;
  readonly worked: Worked;
  readonly gauge: Rates;
  readonly sides: WedgeSides;
  readonly order: TurnOrder;
  readonly needle: Stitches;
  readonly markers: readonly Marker[];
  readonly firstRow: 'right side' | 'wrong side';
  /** Short rows, and by how many rows the deepest part outgrows the rest. */
  readonly rows: Rows;
  readonly asked: Cm;
  readonly depth: Cm;
  /** In the order of knitting. */
  readonly turns: readonly Turn[];
  /** Into which the base is divided on each sloped side, outermost first; at a turn-less end a step lies outside the turns. */
  readonly steps: readonly Stitches[];
  readonly flat: Stitches;
  readonly closing: Closing;
  readonly workings: readonly WorkingLine[];
}

/** The base has too few stitches for the turns that the depth needs. */
export interface TooManyTurns {
  readonly kind: 'too many turns';
  readonly asked: number;
  readonly most: number;
  readonly alternatives: readonly WedgeAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** The depth is less than half of the two rows that a turn needs. */
export interface TooFlat {
  readonly kind: 'too flat';
  readonly depth: Cm;
  readonly alternatives: readonly WedgeAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** In the round every short row is turned at both ends. */
export interface OneSideInRound {
  readonly kind: 'one side in the round';
  readonly alternatives: readonly WedgeAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** The stitches have no room for the widths that were asked for. */
export interface NoRoom {
  readonly kind: 'no room';
  readonly needed: Stitches;
  readonly available: Stitches;
  readonly alternatives: readonly WedgeAlternative[];
  readonly workings: readonly WorkingLine[];
}

export type CannotWedge = TooManyTurns | TooFlat | OneSideInRound;

/** A way that works, with its wedges worked out; none where the wedge is left out. */
export interface WedgeAlternative {
  readonly way:
    | 'shallower'
    | 'two wedges'
    | 'narrower middle'
    | 'two rows'
    | 'both sides'
    | 'closer turns'
    | 'widest base'
    | 'leave it out';
  readonly wedges: readonly Wedge[];
}

/** Lays the turns of a wedge, or says why that cannot be done and offers what can. */
export function layWedge(ask: WedgeAsk): Wedge | CannotWedge {
  checkAsk(ask);
  const workings = explainRows(ask);
  if (ask.worked === 'round' && ask.sides !== 'both') {
    return { kind: 'one side in the round', alternatives: offer('both sides', [bothSides(ask)]), workings };
  }
  const turns = turnsOf(ask);
  if (turns === 0) return { kind: 'too flat', depth: ask.depth, alternatives: flatWays(ask), workings };
  const most = mostTurns(ask);
  if (turns > most) {
    const shown = [...workings, ...explainMost(ask)];
    return {
      kind: 'too many turns',
      asked: turns,
      most,
      alternatives: steepWays(ask, most),
      workings: shown,
    };
  }
  return lay(ask, turns);
}

/** By how many rows a stitch of the needle outgrows those beside the wedge. */
export function extraRowsAt(
  wedge: Pick<Wedge, 'turns' | 'worked' | 'needle' | 'rows'>,
  stitch: number,
): number {
  const lies = (turn: Turn, at: number) => (turn.side === 'end' ? at < turn.at : at >= turn.at);
  const covers = (row: number) => {
    const pair = wedge.turns.filter((turn) => Math.ceil(turn.row / 2) === row);
    const places = wedge.worked === 'round' ? [stitch, stitch - wedge.needle] : [stitch];
    return places.some((at) => pair.every((turn) => lies(turn, at)));
  };
  const pairs = Array.from({ length: wedge.rows / 2 }, (_, i) => i + 1);
  return 2 * pairs.filter(covers).length;
}

function lay(ask: WedgeAsk, count: number): Wedge {
  const base = divide(ask, count);
  const span = spanOf(ask);
  const markers = markersOf(ask, span);
  const turns = turnsFor(ask, base, span, markers);
  return {
    kind: 'wedge',
    purpose: ask.purpose,
    place: ask.place,
    worked: ask.worked,
    gauge: ask.gauge,
    sides: ask.sides,
    order: ask.order,
    needle: ask.needle,
    markers,
    firstRow: ask.sides === 'start' ? 'wrong side' : 'right side',
    rows: rows(2 * count),
    asked: ask.depth,
    depth: cm((2 * count) / ask.gauge.rowsPerCm),
    turns,
    steps: base.steps.map(stitches),
    flat: stitches(base.flat),
    closing: closingOf(ask, turns),
    workings: [...explainRows(ask), ...explainTurns(ask, base)],
  };
}

type Span = ReturnType<typeof spanOf>;

function markersOf({ counted, sides }: WedgeAsk, { start, end }: Span): Marker[] {
  if (counted === 'from the centre') return [{ name: 'centre', at: start + Math.floor((end - start) / 2) }];
  const both: Marker[] = [
    { name: 'start', at: start },
    { name: 'end', at: end },
  ];
  return sides === 'both' ? both : both.filter((marker) => marker.name === sides);
}

function turnsFor(ask: WedgeAsk, base: Base, span: Span, markers: readonly Marker[]): Turn[] {
  const outward = ask.order === 'shortening' ? base.distances : [...base.distances].reverse();
  const sides = ask.sides === 'both' ? (['end', 'start'] as const) : ([ask.sides] as const);
  return outward.flatMap((distance, i) =>
    sides.map((side, k): Turn => {
      const at = side === 'end' ? span.end - ask.inset - distance : span.start + ask.inset + distance;
      const marker = markers.find(({ name }) => name === side || name === 'centre') as Marker;
      return {
        row: rows(2 * i + k + 1),
        side,
        marker: marker.name,
        way: marker.name === 'centre' ? 'past' : 'before',
        stitches: stitches(Math.abs(at - marker.at)),
        at,
      };
    }),
  );
}

/** In the round the stitches beside a wedge are passed once on the way to it and back to the join, unless the join lies in it or at its end. */
function closingOf(ask: WedgeAsk, turns: readonly Turn[]): Closing {
  const [first, last] = [turns[0], turns.at(-1)];
  const joinWithin = (first?.at ?? 0) >= 0 && (last?.at ?? 0) <= 0;
  return {
    to: ask.worked === 'round' ? 'join' : 'end of the row',
    ordinaryRows: ask.worked === 'round' && joinWithin ? 0 : 1,
    gaps: turns.length,
    closed: ask.order === 'lengthening' ? 'row by row' : 'after the last turn',
  };
}

function steepWays(ask: WedgeAsk, most: number): WedgeAlternative[] {
  const turns = turnsOf(ask);
  const middle = ask.span.stitches - (ask.sides === 'both' ? 2 : 1) * (ask.inset + turns);
  const halves = [Math.ceil(turns / 2), Math.floor(turns / 2)];
  return [
    ...offer(
      'two wedges',
      halves.map((half) => ofTurns(ask, half)),
    ),
    ...(middle >= 1 ? offer('narrower middle', [{ ...ask, flat: stitches(middle) }]) : []),
    ...offer('shallower', [ofTurns(ask, most)]),
  ];
}

function flatWays(ask: WedgeAsk): WedgeAlternative[] {
  return [...offer('two rows', [ofTurns(ask, 1)]), { way: 'leave it out', wedges: [] }];
}

/** The same wedge with so many turns on each side. */
function ofTurns(ask: WedgeAsk, turns: number): WedgeAsk {
  return { ...ask, depth: cm((2 * turns) / ask.gauge.rowsPerCm) };
}

/** Sloped on both sides over the same stitches, with what then is left of the flat part. */
function bothSides(ask: WedgeAsk): WedgeAsk {
  const slope = ask.span.stitches - ask.inset - ask.flat;
  const flat = Math.max(0, ask.span.stitches - 2 * (ask.inset + slope));
  return { ...ask, sides: 'both', flat: stitches(flat) };
}

/** The alternative where all its wedges can be knitted, else none. */
function offer(way: WedgeAlternative['way'], asks: readonly WedgeAsk[]): WedgeAlternative[] {
  const wedges = asks.flatMap((ask) =>
    turnsOf(ask) > 0 && turnsOf(ask) <= mostTurns(ask) ? [lay(ask, turnsOf(ask))] : [],
  );
  return wedges.length === asks.length ? [{ way, wedges }] : [];
}
