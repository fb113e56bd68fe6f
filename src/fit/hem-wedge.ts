/**
 * A hem that dips: rows added across the back (or the front), or all round and tapering to nothing opposite.
 * The sloped edge is the hem: bottom-up it lies where the wedge begins, so the short rows lengthen; top-down where it
 * ends, so they shorten. The edging is knitted along the slope.
 */
import { type Cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { type CannotWedge, layWedge, type NoRoom, type Wedge } from './wedge.ts';
import type { Rates, WedgeAsk } from './wedge-base.ts';
import type { Direction, Worked } from './words.ts';
import { quantity, workOut } from './working.ts';

export interface HemAsk {
  readonly depth: Cm;
  readonly gauge: Rates;
  readonly worked: Worked;
  readonly direction: Direction;
  /** Of the edging, which comes before the wedge bottom-up and after it top-down. */
  readonly edging: Rows;
  readonly needle: Stitches;
  readonly over: HemSpan;
  /** Width in the middle that gets the full depth. */
  readonly middle: Cm;
}

export type HemSpan =
  /** Between two side markers. */
  | { readonly across: 'between the sides'; readonly start: number; readonly stitches: Stitches }
  /** Deepest at this boundary, and at nothing opposite. */
  | { readonly across: 'all round'; readonly deepest: number };

/** The wedge of a dipping hem, or why it cannot be knitted so. */
export function hemWedge(ask: HemAsk): Wedge | CannotWedge | NoRoom {
  const given = {
    a: quantity('width of the full depth', ask.middle, 'cm'),
    b: quantity('stitches', ask.gauge.stitchesPerCm, 'stitches/cm'),
  };
  const middle = workOut('stitches of the full depth', 'a * b', given, {
    unit: 'stitches',
    rounding: { to: 'whole' },
  });
  const span = spanFor(ask);
  const flat = stitches(middle.result.value);
  if (flat > span.stitches) {
    const alternatives = widest(wedgeAsk(ask, stitches(0)));
    return { kind: 'no room', needed: flat, available: span.stitches, alternatives, workings: [middle] };
  }
  const found = layWedge(wedgeAsk(ask, flat));
  return { ...found, workings: [middle, ...found.workings] };
}

function widest(ask: WedgeAsk): NoRoom['alternatives'] {
  const found = layWedge(ask);
  return found.kind === 'wedge' ? [{ way: 'narrower middle', wedges: [found] }] : [];
}

function wedgeAsk(ask: HemAsk, flat: Stitches): WedgeAsk {
  const up = ask.direction === 'up';
  return {
    purpose: 'hem',
    place: {
      level: 'hem',
      rows: rows(up ? ask.edging : -ask.edging),
      point: up ? 'begins' : 'is complete',
    },
    worked: ask.worked,
    sides: 'both',
    order: up ? 'lengthening' : 'shortening',
    depth: ask.depth,
    gauge: ask.gauge,
    needle: ask.needle,
    span: spanFor(ask),
    inset: stitches(0),
    flat,
    outer: 'step',
    counted: ask.over.across === 'all round' ? 'from the centre' : 'from the sides',
  };
}

/** All round, an odd stitch opposite the deepest place lies on the end side. */
function spanFor({ over, needle, worked }: HemAsk): WedgeAsk['span'] {
  if (over.across === 'between the sides') return { start: over.start, stitches: over.stitches };
  return { start: worked === 'flat' ? 0 : over.deepest - Math.floor(needle / 2), stitches: needle };
}
