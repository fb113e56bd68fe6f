/**
 * An armhole made deeper or shallower, with what hangs on it: front neck and shoulders begin later or earlier by the
 * same rows, and the sleeve's top is solved anew, a set-in cap to the new edges, a drop shoulder to twice the depth.
 */
import { type Armhole, type ArmholeAsk, armhole, type CannotArmhole } from './armhole.ts';
import { type CannotCap, type Cap, type CapAsk, cap } from './cap.ts';
import {
  type ArmholeTooNarrow,
  type DropShoulder,
  type DropShoulderAsk,
  dropShoulder,
} from './drop-shoulder.ts';
import type { Gauge } from './gauge.ts';
import { type Cm, type Rows, rows, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Before and after the change; `before` is null where the pattern's own depth cannot be shaped in the usual way. */
export interface Moved<T> {
  readonly before: T | null;
  readonly after: T;
}

export interface MovedRows {
  readonly before: Rows;
  readonly after: Rows;
}

export interface SetInAsk {
  readonly construction: 'set-in';
  readonly front: ArmholeAsk;
  readonly back: ArmholeAsk;
  readonly sleeve: Omit<CapAsk, 'armhole' | 'depth' | 'bindOff'>;
}

export interface DropAsk {
  readonly construction: 'drop shoulder';
  readonly shoulder: DropShoulderAsk;
}

export interface DepthChange {
  readonly kind: 'depth changed';
  readonly top:
    | {
        readonly construction: 'set-in';
        readonly front: Moved<Armhole>;
        readonly back: Moved<Armhole>;
        readonly cap: Moved<Cap>;
      }
    | { readonly construction: 'drop shoulder'; readonly shoulder: Moved<DropShoulder> };
  /** Of the armhole. */
  readonly rows: MovedRows;
  /** Rows by which shoulders and front neck come later; negative where they come earlier. */
  readonly later: number;
  /** Rows above the underarm after which the front neck begins. */
  readonly neckBegins: MovedRows;
  readonly workings: readonly WorkingLine[];
}

/** One part cannot be shaped; its own reason and ways out are within. */
export type CannotChangeDepth =
  | { readonly kind: 'cannot'; readonly part: 'front' | 'back'; readonly because: CannotArmhole }
  | { readonly kind: 'cannot'; readonly part: 'cap'; readonly because: CannotCap }
  | { readonly kind: 'cannot'; readonly part: 'sleeve top'; readonly because: ArmholeTooNarrow }
  /** The front neck would begin below the underarm. */
  | { readonly kind: 'cannot'; readonly part: 'neck'; readonly neckRows: Rows; readonly armholeRows: Rows };

/** Changes the depth to `to` on front and back alike; the front neck keeps its own depth. */
export function changeDepth(ask: SetInAsk | DropAsk, to: Cm, neckDepth: Cm): DepthChange | CannotChangeDepth {
  const top = ask.construction === 'set-in' ? setIn(ask, to) : dropped(ask, to);
  if ('kind' in top) return top;
  const gauge = ask.construction === 'set-in' ? ask.front.gauge : ask.shoulder.body;
  const { moved, lines } = bothRows(ask, top, gauge);
  const begins = neckBegins(moved, neckDepth, gauge);
  if (begins.after.result.value < 0)
    return {
      kind: 'cannot',
      part: 'neck',
      neckRows: rows(begins.neck.result.value),
      armholeRows: moved.after,
    };
  const later = workOut(
    'rows by which shoulders and neck come later',
    'a - b',
    { a: quantity('after', moved.after, 'rows'), b: quantity('before', moved.before, 'rows') },
    { unit: 'rows' },
  );
  return {
    kind: 'depth changed',
    top,
    rows: moved,
    later: later.result.value,
    neckBegins: { before: rows(begins.before.result.value), after: rows(begins.after.result.value) },
    workings: [...workingsOf(top), ...lines, later, begins.neck, begins.before, begins.after],
  };
}

type Top = DepthChange['top'];

function setIn(ask: SetInAsk, to: Cm): Top | CannotChangeDepth {
  const found = sewn(ask);
  const before = 'kind' in found ? null : found;
  const after = sewn({ ...ask, front: { ...ask.front, depth: to }, back: { ...ask.back, depth: to } });
  if ('kind' in after) return after;
  return {
    construction: 'set-in',
    front: { before: before?.front ?? null, after: after.front },
    back: { before: before?.back ?? null, after: after.back },
    cap: { before: before?.cap ?? null, after: after.cap },
  };
}

interface Sewn {
  readonly front: Armhole;
  readonly back: Armhole;
  readonly cap: Cap;
}

/** Both armholes and the cap that is sewn into them. */
function sewn(ask: SetInAsk): Sewn | CannotChangeDepth {
  const front = armhole(ask.front);
  if (front.kind !== 'armhole') return { kind: 'cannot', part: 'front', because: front };
  const back = armhole(ask.back);
  if (back.kind !== 'armhole') return { kind: 'cannot', part: 'back', because: back };
  const made = cap({
    ...ask.sleeve,
    armhole: { front: front.edge, back: back.edge },
    depth: back.depth,
    bindOff: back.bindOffs[0] ?? stitches(0),
  });
  if (made.kind !== 'cap') return { kind: 'cannot', part: 'cap', because: made };
  return { front, back, cap: made };
}

function dropped(ask: DropAsk, to: Cm): Top | CannotChangeDepth {
  const found = dropShoulder(ask.shoulder);
  const before = found.kind === 'drop shoulder' ? found : null;
  const after = dropShoulder({ ...ask.shoulder, depth: to });
  if (after.kind !== 'drop shoulder') return { kind: 'cannot', part: 'sleeve top', because: after };
  return { construction: 'drop shoulder', shoulder: { before, after } };
}

/** Where the pattern's own shape is not known, its rows follow from its depth. */
function bothRows(
  ask: SetInAsk | DropAsk,
  top: Top,
  gauge: Gauge,
): { moved: MovedRows; lines: readonly WorkingLine[] } {
  const { before, after } = top.construction === 'set-in' ? top.front : top.shoulder;
  const of = (made: Armhole | DropShoulder) => (made.kind === 'armhole' ? made.rows : made.armholeRows);
  if (before !== null) return { moved: { before: of(before), after: of(after) }, lines: [] };
  const depth = ask.construction === 'set-in' ? ask.front.depth : ask.shoulder.depth;
  const line = workOut(
    "rows of the pattern's armhole",
    'a * b',
    {
      a: quantity("the pattern's depth", depth, 'cm'),
      b: quantity('rows', gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  return { moved: { before: rows(line.result.value), after: of(after) }, lines: [line] };
}

function neckBegins(moved: MovedRows, neckDepth: Cm, gauge: Gauge) {
  const neck = workOut(
    'rows of the front neck',
    'a * b',
    {
      a: quantity('front neck depth', neckDepth, 'cm'),
      b: quantity('rows', gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const from = (when: 'before' | 'after') =>
    workOut(
      `rows from the underarm to the front neck, ${when}`,
      'a - b',
      { a: quantity(`rows of the armhole, ${when}`, moved[when], 'rows'), b: neck.result },
      { unit: 'rows' },
    );
  return { neck, before: from('before'), after: from('after') };
}

function workingsOf(top: Top): readonly WorkingLine[] {
  const parts =
    top.construction === 'set-in'
      ? [top.front.before, top.front.after, top.back.before, top.back.after, top.cap.before, top.cap.after]
      : [top.shoulder.before, top.shoulder.after];
  return parts.flatMap((part) => part?.workings ?? []);
}
