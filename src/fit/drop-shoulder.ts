/**
 * A drop shoulder: the body goes straight up, and the sleeve is sewn, or picked up, along the whole armhole.
 * The sleeve's top is twice as wide as the armhole is deep. The shoulder hangs over the arm by half of what the body
 * is wider than the cross back; the sleeve is shorter by that.
 */
import { countFor } from './count.ts';
import type { CountRule, Gauge } from './gauge.ts';
import { type Cm, cm, type Rows, rows, type Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface DropShoulderAsk {
  readonly depth: Cm;
  /** Width of the back, flat, and the body's own measurement across the back. */
  readonly back: Cm;
  readonly crossBack: Cm;
  /** Finished width that the upper arm needs at least, ease included. */
  readonly upperArm: Cm;
  readonly body: Gauge;
  readonly sleeve: Gauge;
  readonly rule: CountRule;
}

export interface DropShoulder {
  readonly kind: 'drop shoulder';
  readonly depth: Cm;
  /** From the underarm marker to the shoulder, in an even number of rows. */
  readonly armholeRows: Rows;
  readonly top: Stitches;
  readonly topWidth: Cm;
  /** Width of the back, flat. */
  readonly back: Cm;
  /** How far the shoulder hangs over the arm; the sleeve is shorter by it. */
  readonly overhang: Cm;
  readonly workings: readonly WorkingLine[];
}

/** Twice the armhole is less than the upper arm needs. */
export interface ArmholeTooNarrow {
  readonly kind: 'armhole narrower than the arm';
  readonly top: Cm;
  readonly upperArm: Cm;
  readonly alternatives: readonly DropShoulderAlternative[];
}

export interface DropShoulderAlternative {
  readonly way: 'deeper armhole';
  readonly shoulder: DropShoulder;
}

/** The sleeve's top from the armhole's depth. Throws where the count rule can never be met. */
export function dropShoulder(ask: DropShoulderAsk): DropShoulder | ArmholeTooNarrow {
  const made = build(ask);
  if (made.topWidth >= ask.upperArm - 1e-9) return made;
  return {
    kind: 'armhole narrower than the arm',
    top: made.topWidth,
    upperArm: ask.upperArm,
    alternatives: [{ way: 'deeper armhole', shoulder: deepEnough(ask) }],
  };
}

/** The least depth, in pairs of rows, whose sleeve top is wide enough for the arm. */
function deepEnough(ask: DropShoulderAsk): DropShoulder {
  const perCm = ask.body.rows.perCm;
  let pairs = Math.floor((ask.depth * perCm) / 2);
  for (;;) {
    pairs += 1;
    const made = build({ ...ask, depth: cm((2 * pairs) / perCm) });
    if (made.topWidth >= ask.upperArm - 1e-9) return made;
  }
}

function build(ask: DropShoulderAsk): DropShoulder {
  const height = workOut(
    'rows of the armhole',
    'a * b',
    {
      a: quantity('armhole depth', ask.depth, 'cm'),
      b: quantity('rows of the body', ask.body.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const depth = workOut(
    'armhole depth as knitted',
    'a / b',
    { a: height.result, b: quantity('rows of the body', ask.body.rows.perCm, 'rows/cm') },
    { unit: 'cm' },
  );
  const wanted = workOut('width of the sleeve top', '2 * a', { a: depth.result }, { unit: 'cm' });
  const counted = countFor('sleeve top', cm(wanted.result.value), ask.sleeve, ask.rule);
  const overhang = workOut(
    'shoulder over the arm',
    '(a - b) / 2',
    { a: quantity('width of the back', ask.back, 'cm'), b: quantity('cross back', ask.crossBack, 'cm') },
    { unit: 'cm' },
  );
  return {
    kind: 'drop shoulder',
    depth: cm(depth.result.value),
    armholeRows: rows(height.result.value),
    top: counted.stitches,
    topWidth: counted.choice.width,
    back: ask.back,
    overhang: cm(overhang.result.value),
    workings: [height, depth, wanted, ...counted.workings, overhang],
  };
}
