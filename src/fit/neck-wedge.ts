/**
 * A back neck raised by short rows, or, seen from the other side, a front neck lowered: one and the same wedge at the
 * back of a yoke. The sloped edge is the neck: top-down it lies where the wedge begins, so the short rows lengthen,
 * bottom-up where it ends, so they shorten.
 */
import { type Cm, type Rows, type Stitches, stitches } from './units.ts';
import { type CannotWedge, layWedge, type NoRoom, type Wedge, type WedgeAlternative } from './wedge.ts';
import type { Rates, WedgeAsk } from './wedge-base.ts';
import type { Direction, Worked } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface NeckWedgeAsk {
  readonly purpose: 'back neck raise' | 'lower front neck';
  readonly depth: Cm;
  readonly gauge: Rates;
  readonly worked: Worked;
  readonly direction: Direction;
  readonly needle: Stitches;
  /** The boundary at the centre of the back, from which turns are counted. */
  readonly centre: number;
  /** Between the outermost turns: the width over which the neck rises. */
  readonly base: Cm;
  /** Between the innermost turns: the width that is raised in full, as a rule the back of the neck. */
  readonly middle: Cm;
  /** Rows from the neck to the wedge, as `Place` counts them. */
  readonly after: Rows;
}

/** The wedge at the back of the neck, or why it cannot be knitted so. */
export function neckWedge(ask: NeckWedgeAsk): Wedge | CannotWedge | NoRoom {
  const base = toStitches('stitches between the outermost turns', ask.base, ask.gauge);
  const middle = toStitches('stitches between the innermost turns', ask.middle, ask.gauge);
  const room = roomIn(ask);
  const workings = [base, middle, room];
  const wide = stitches(base.result.value);
  const flat = stitches(middle.result.value);
  const most = stitches(room.result.value);
  if (wide > most) {
    const alternatives = offer('widest base', ask, most, stitches(Math.min(flat, most)));
    return { kind: 'no room', needed: wide, available: most, alternatives, workings };
  }
  if (flat > wide) {
    const alternatives = offer('narrower middle', ask, wide, stitches(0));
    return { kind: 'no room', needed: flat, available: wide, alternatives, workings };
  }
  const found = layWedge(wedgeAsk(ask, wide, flat));
  return { ...found, workings: [...workings, ...found.workings] };
}

function toStitches(label: string, width: Cm, { stitchesPerCm }: Rates): WorkingLine {
  const given = {
    a: quantity(label.replace('stitches', 'width'), width, 'cm'),
    b: quantity('stitches', stitchesPerCm, 'stitches/cm'),
  };
  return workOut(label, 'a * b', given, { unit: 'stitches', rounding: { to: 'whole' } });
}

/** One stitch at least stays outside the outermost turn on each side. */
function roomIn({ worked, needle, centre }: NeckWedgeAsk): WorkingLine {
  const label = 'stitches that the turns may lie between';
  const unit = { unit: 'stitches' } as const;
  if (worked === 'round')
    return workOut(label, 'a - 2', { a: quantity('stitches on the needle', needle, 'stitches') }, unit);
  const side = quantity(
    'stitches from the centre to the nearer edge',
    Math.min(centre, needle - centre),
    'stitches',
  );
  return workOut(label, '2 * (a - 1)', { a: side }, unit);
}

function wedgeAsk(ask: NeckWedgeAsk, base: Stitches, flat: Stitches): WedgeAsk {
  return {
    purpose: ask.purpose,
    place: { level: 'neck', rows: ask.after, point: ask.direction === 'down' ? 'begins' : 'is complete' },
    worked: ask.worked,
    sides: 'both',
    order: ask.direction === 'down' ? 'lengthening' : 'shortening',
    depth: ask.depth,
    gauge: ask.gauge,
    needle: ask.needle,
    span: { start: ask.centre - Math.floor(base / 2), stitches: base },
    inset: stitches(0),
    flat,
    outer: 'turn',
    counted: 'from the centre',
  };
}

function offer(
  way: WedgeAlternative['way'],
  ask: NeckWedgeAsk,
  base: Stitches,
  flat: Stitches,
): WedgeAlternative[] {
  const found = base < 1 ? undefined : layWedge(wedgeAsk(ask, base, flat));
  return found?.kind === 'wedge' ? [{ way, wedges: [found] }] : [];
}
