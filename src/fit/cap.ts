/** A set-in cap solved to its armhole, or the reason why not with ways that work, each worked out. */
import { type Cap, type CapAsk, type CapHindrance, shapeCap } from './cap-shape.ts';
import { heightOf } from './gauge.ts';
import { type Cm, cm, stitches } from './units.ts';

export type { Cap, CapAsk, CapStage } from './cap-shape.ts';

export type CannotCap = CapHindrance & { readonly alternatives: readonly CapAlternative[] };

export interface CapAlternative {
  readonly way:
    | 'bind off less'
    | 'nearest top'
    | 'narrower upper arm'
    | 'wider upper arm'
    | 'deeper armhole'
    | 'ease the cap in';
  readonly cap: Cap;
  /** By how much the armhole is to be deeper, on front and back; or the length to be eased in. */
  readonly by?: Cm;
}

/** Most that a cap's edge is eased into an armhole; common practice of the trade, from memory. */
const MOST_EASE = cm(3);

export function cap(ask: CapAsk): Cap | CannotCap {
  const found = shapeCap(ask);
  return found.kind === 'cap' ? found : { ...found, alternatives: waysOut(ask, found) };
}

function waysOut(ask: CapAsk, hindrance: CapHindrance): readonly CapAlternative[] {
  switch (hindrance.kind) {
    case 'nothing left for a cap':
      return [...bindOffLess(ask), ...upperArm('wider upper arm', ask, 1)];
    case 'top of the wrong parity':
      return [-1, 1].flatMap((by) => offer('nearest top', { ...ask, top: stitches(hindrance.top + by) }));
    case 'armhole too shallow':
      return [...deeper(ask), ...upperArm('narrower upper arm', ask, -2)];
    case 'armhole edge too short':
      return [
        ...easedIn(ask, hindrance.shortest - hindrance.wanted),
        ...deeper(ask),
        ...upperArm('narrower upper arm', ask, -2),
      ];
    case 'armhole edge too long':
      return upperArm('wider upper arm', ask, 2);
    case 'no whole rows agree':
      return [
        ...easedIn(ask, hindrance.nearest - hindrance.wanted),
        ...upperArm('wider upper arm', ask, 2),
        ...upperArm('narrower upper arm', ask, -2),
      ];
    default:
      return hindrance satisfies never;
  }
}

/** The nearest count on one side that works; within as many stitches again as there are. */
function upperArm(way: CapAlternative['way'], ask: CapAsk, step: number): readonly CapAlternative[] {
  for (let count = ask.upperArm + step; count > 0 && count <= 2 * ask.upperArm + 40; count += step) {
    const found = offer(way, { ...ask, upperArm: stitches(count) });
    if (found.length > 0) return found;
  }
  return [];
}

function bindOffLess(ask: CapAsk): readonly CapAlternative[] {
  for (let count = ask.bindOff - 1; count >= 1; count -= 1) {
    const found = offer('bind off less', { ...ask, bindOff: stitches(count) });
    if (found.length > 0) return found;
  }
  return [];
}

/** The least further depth of the armhole, in pairs of rows; both its edges grow straight up by it. */
function deeper(ask: CapAsk): readonly CapAlternative[] {
  for (let more = 2; more <= 100; more += 2) {
    const by = heightOf(more, ask.gauge);
    const armhole = { front: cm(ask.armhole.front + by), back: cm(ask.armhole.back + by) };
    const found = offer('deeper armhole', { ...ask, armhole, depth: cm(ask.depth + by) }, by);
    if (found.length > 0) return found;
  }
  return [];
}

function easedIn(ask: CapAsk, by: number): readonly CapAlternative[] {
  const ease = cm((ask.ease ?? 0) + by);
  return by <= 0 || ease > MOST_EASE ? [] : offer('ease the cap in', { ...ask, ease }, cm(by));
}

function offer(way: CapAlternative['way'], ask: CapAsk, by?: Cm): readonly CapAlternative[] {
  const found = shapeCap(ask);
  return found.kind === 'cap' ? [{ way, cap: found, ...(by === undefined ? {} : { by }) }] : [];
}
