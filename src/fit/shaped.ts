/** What a step shapes, with all that a picture of it to scale needs, at the gauge at which it is knitted. */
import type { Armhole } from './armhole.ts';
import type { Cap } from './cap.ts';
import type { DropShoulder } from './drop-shoulder.ts';
import type { EdgeEvent } from './edge-shaping.ts';
import type { Neck } from './neck.ts';
import { type ByPart, byPart, type RaglanShape } from './raglan-shape.ts';
import type { Spaced } from './spacing.ts';
import type { Cm, Rows, Stitches } from './units.ts';
import type { Rates } from './wedge-base.ts';
import type { Direction } from './words.ts';
import type { YokeShape } from './yoke-shape.ts';

/** `before` is the pattern's own shape; null where its figures are not known. */
export type ShapedPart =
  | ShapedCap
  | {
      readonly shape: 'neck';
      readonly gauge: Rates;
      readonly after: NeckEdges;
      readonly before: NeckEdges | null;
      /** Rows of the shoulders' slope that come on top of it. */
      readonly slope: Rows;
    }
  | ShapedDrop
  | { readonly shape: 'raglan'; readonly gauge: Rates; readonly after: RaglanOutline }
  | { readonly shape: 'yoke'; readonly gauge: Rates; readonly after: YokeOutline }
  | { readonly shape: 'stepped shoulders'; readonly gauge: Rates; readonly after: ShoulderOutline }
  | { readonly shape: 'front darts'; readonly gauge: Rates; readonly after: DartsOutline };

export interface ShapedCap {
  readonly shape: 'cap';
  readonly gauge: Rates;
  readonly after: CapOutline;
  readonly before: CapOutline | null;
  /** The edges that it is sewn into. */
  readonly armhole: {
    readonly gauge: Rates;
    readonly front: ArmholeOutline;
    readonly back: ArmholeOutline;
  };
}

/** A body that goes straight up beyond where the arm begins, and the sleeve along its armhole. */
export interface ShapedDrop extends Pick<DropShoulder, 'back' | 'overhang'> {
  readonly shape: 'drop shoulder';
  readonly gauge: Rates;
  readonly after: DropOutline;
  readonly before: DropOutline | null;
}

export type DropOutline = Pick<DropShoulder, 'armholeRows' | 'depth' | 'top' | 'topWidth'>;
export type CapOutline = Pick<Cap, 'upperArm' | 'rows' | 'height' | 'top' | 'edge' | 'events'>;
export type ArmholeOutline = Pick<Armhole, 'rows' | 'edge' | 'events'>;

/** `events`: of the side that a right-side row knits last, its neck edge at the right. */
export interface NeckEdges
  extends Pick<Neck, 'stitches' | 'width' | 'rows' | 'depth' | 'centre' | 'steps' | 'shoulder' | 'edge'> {
  readonly events: readonly EdgeEvent[];
}

export type SpacedOutline = Pick<Spaced, 'rows' | 'from' | 'to' | 'shaping'>;

export interface RaglanOutline extends Pick<RaglanShape, 'direction' | 'rows' | 'depth'> {
  readonly parts: ByPart<{ readonly spaced: SpacedOutline; readonly edge: Cm }>;
  readonly neck: { readonly stitches: Stitches; readonly around: Cm };
}

/** `shaping`: the rounds that shape, with the counts before and after each. */
export interface YokeOutline
  extends Pick<YokeShape, 'direction' | 'rows' | 'depth' | 'plateaus' | 'neckAround'> {
  readonly shaping: readonly {
    readonly round: Rows;
    readonly before: Stitches;
    readonly after: Stitches;
  }[];
}

/** Bind-offs from the armhole edges to the neck: of both shoulders on one needle, or of one. */
export interface ShoulderOutline {
  readonly from: Stitches;
  readonly events: readonly EdgeEvent[];
  /** Stitches of one shoulder, and of each step from the armhole edge to the neck. */
  readonly shoulder: Stitches;
  readonly steps: readonly Stitches[];
  readonly rows: Rows;
  readonly drop: Cm;
}

/** The front while its two dart lines are shaped. */
export interface DartsOutline {
  readonly direction: Direction;
  readonly spaced: SpacedOutline;
  /** Stitches from either side to its dart line before the first shaping row. */
  readonly fromSide: Stitches;
}

export function capOutline({ upperArm, rows, height, top, edge, events }: Cap): CapOutline {
  return { upperArm, rows, height, top, edge, events };
}

/** A cap beside the armhole that it is sewn into, knitted at one gauge. */
export function shapedCap(
  after: Cap,
  before: Cap | null,
  armhole: { readonly front: Armhole; readonly back: Armhole },
  gauge: Rates,
): ShapedCap {
  const outline = ({ rows, edge, events }: Armhole): ArmholeOutline => ({ rows, edge, events });
  return {
    shape: 'cap',
    gauge,
    after: capOutline(after),
    before: before === null ? null : capOutline(before),
    armhole: { gauge, front: outline(armhole.front), back: outline(armhole.back) },
  };
}

export function shapedDrop(after: DropShoulder, before: DropShoulder | null, gauge: Rates): ShapedDrop {
  const outline = ({ armholeRows, depth, top, topWidth }: DropShoulder): DropOutline => {
    return { armholeRows, depth, top, topWidth };
  };
  return {
    shape: 'drop shoulder',
    gauge,
    back: after.back,
    overhang: after.overhang,
    after: outline(after),
    before: before === null ? null : outline(before),
  };
}

export function neckOutline(neck: Neck): NeckEdges {
  const { stitches, width, rows, depth, centre, steps, shoulder, edge, sides } = neck;
  return { stitches, width, rows, depth, centre, steps, shoulder, edge, events: sides.last.events };
}

export function spacedOutline({ rows, from, to, shaping }: Spaced): SpacedOutline {
  return { rows, from, to, shaping };
}

export function raglanOutline({ direction, rows, depth, lines, neck }: RaglanShape): RaglanOutline {
  const parts = byPart((part) => ({ spaced: spacedOutline(lines[part].spaced), edge: lines[part].edge }));
  return { direction, rows, depth, parts, neck: { stitches: neck.stitches, around: neck.around } };
}

export function yokeOutline({
  direction,
  rows,
  depth,
  plateaus,
  neckAround,
  shaping,
}: YokeShape): YokeOutline {
  const rounds = shaping.map(({ round, spread }) => ({ round, before: spread.before, after: spread.after }));
  return { direction, rows, depth, plateaus, neckAround, shaping: rounds };
}
