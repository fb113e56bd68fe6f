/** An armhole shaped as asked, or the reason why not with ways that work, each worked out. */
import { type Armhole, type ArmholeAsk, bindOffsOf, type Hindrance, shapeArmhole } from './armhole-shape.ts';
import { heightOf } from './gauge.ts';
import { type Cm, cm, type Stitches, stitches } from './units.ts';

export type { Armhole, ArmholeAsk } from './armhole-shape.ts';

export type CannotArmhole = Hindrance & { readonly alternatives: readonly ArmholeAlternative[] };

export interface ArmholeAlternative {
  readonly way:
    | 'nearest cross back'
    | 'straight'
    | 'bind off less'
    | 'bind off more'
    | 'shape higher'
    | 'deeper'
    | 'wider cross back';
  readonly armhole: Armhole;
}

export function armhole(ask: ArmholeAsk): Armhole | CannotArmhole {
  const found = shapeArmhole(ask);
  return found.kind === 'armhole' ? found : { ...found, alternatives: waysOut(ask, found) };
}

function waysOut(ask: ArmholeAsk, hindrance: Hindrance): readonly ArmholeAlternative[] {
  switch (hindrance.kind) {
    case 'odd loss':
      return [ask.crossBack - 1, ask.crossBack + 1].flatMap((count) =>
        across('nearest cross back', ask, count),
      );
    case 'cross back wider':
      return across('straight', { ...ask, bindOffs: [] }, ask.bust);
    case 'bind-offs exceed the loss':
      return [
        ...offer('bind off less', { ...ask, bindOffs: trimmed(bindOffsOf(ask).bindOffs, hindrance.loss) }),
        ...across('nearest cross back', ask, ask.bust - 2 * hindrance.boundOff),
      ];
    case 'too few rows':
      return moreRoom(ask, hindrance.needed - hindrance.available);
    default:
      return hindrance satisfies never;
  }
}

function moreRoom(ask: ArmholeAsk, missing: number): readonly ArmholeAlternative[] {
  const bindOffs = raised(bindOffsOf(ask).bindOffs, missing);
  return [
    ...offer('shape higher', { ...ask, shapedBy: ask.depth }),
    ...offer('bind off more', { ...ask, bindOffs }),
    ...across('wider cross back', ask, ask.crossBack + 2 * missing),
    ...deeper(ask),
  ];
}

/** The least further depth that gives the rows, the height by which shaping is done growing with it: there always is one. */
function deeper(ask: ArmholeAsk): readonly ArmholeAlternative[] {
  for (let more = 2; ; more += 2) {
    const added = heightOf(more, ask.gauge);
    const by = ask.shapedBy === undefined ? {} : { shapedBy: plus(ask.shapedBy, added) };
    const found = offer('deeper', { ...ask, depth: plus(ask.depth, added), ...by });
    if (found.length > 0) return found;
  }
}

function plus(a: Cm, b: Cm): Cm {
  return cm(a + b);
}

/** The bind-offs shortened from the last one until they take no more than the loss. */
function trimmed(bindOffs: readonly Stitches[], loss: Stitches): readonly Stitches[] {
  let left: number = loss;
  return bindOffs.flatMap((count) => {
    const kept = Math.min(count, left);
    left -= kept;
    return kept > 0 ? [stitches(kept)] : [];
  });
}

/** A first bind-off where there was none takes two rows itself, so two stitches more. */
function raised([first, ...steps]: readonly Stitches[], by: number): readonly Stitches[] {
  return first === undefined ? [stitches(by + 2)] : [stitches(first + by), ...steps];
}

function across(
  way: ArmholeAlternative['way'],
  ask: ArmholeAsk,
  count: number,
): readonly ArmholeAlternative[] {
  return count < 1 ? [] : offer(way, { ...ask, crossBack: stitches(count) });
}

function offer(way: ArmholeAlternative['way'], ask: ArmholeAsk): readonly ArmholeAlternative[] {
  const found = shapeArmhole(ask);
  return found.kind === 'armhole' ? [{ way, armhole: found }] : [];
}
