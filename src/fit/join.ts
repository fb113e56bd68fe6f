/** Body and sleeves joined for a yoke: at each underarm the same stitches of body and sleeve are set aside. */
import { type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface JoinAsk {
  /** All round. */
  readonly body: Stitches;
  /** Each sleeve, all round. */
  readonly sleeve: Stitches;
  /** Set aside at each underarm, of the body and of the sleeve. */
  readonly underarm: Stitches;
}

export interface Joined {
  readonly kind: 'joined';
  readonly yoke: Stitches;
  readonly front: Stitches;
  readonly back: Stitches;
  readonly sleeve: Stitches;
  readonly workings: readonly WorkingLine[];
}

/** The underarms leave nothing of a sleeve or of the body; the most that may be set aside at each. */
export interface NothingLeft {
  readonly kind: 'underarms take all';
  readonly most: Stitches;
}

/** An odd body leaves the front one stitch more. */
export function join(ask: JoinAsk): Joined | NothingLeft {
  const left = Math.min(ask.sleeve, Math.floor(ask.body / 2)) - ask.underarm;
  if (left < 1) return { kind: 'underarms take all', most: stitches(ask.underarm + left - 1) };
  const underarm = quantity('stitches set aside at each underarm', ask.underarm, 'stitches');
  const body = quantity('stitches of the body', ask.body, 'stitches');
  const ofSleeve = quantity('stitches of a sleeve', ask.sleeve, 'stitches');
  const yoke = workOut(
    'stitches of the yoke',
    'a + 2 * b - 4 * c',
    { a: body, b: ofSleeve, c: underarm },
    { unit: 'stitches' },
  );
  const half = { a: body, b: underarm };
  const back = workOut('stitches of the back', 'a / 2 - b', half, {
    unit: 'stitches',
    rounding: { to: 'whole down' },
  });
  const front = workOut('stitches of the front', 'a / 2 - b', half, {
    unit: 'stitches',
    rounding: { to: 'whole up' },
  });
  const sleeve = workOut(
    'stitches of each sleeve in the yoke',
    'a - b',
    { a: ofSleeve, b: underarm },
    { unit: 'stitches' },
  );
  return {
    kind: 'joined',
    yoke: stitches(yoke.result.value),
    front: stitches(front.result.value),
    back: stitches(back.result.value),
    sleeve: stitches(sleeve.result.value),
    workings: [yoke, back, front, sleeve],
  };
}
