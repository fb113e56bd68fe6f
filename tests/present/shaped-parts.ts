/** Random shapes of steps from the engine itself: what a knitter may ask for, as far as it can be knitted. */
import fc from 'fast-check';
import { armhole } from '../../src/fit/armhole.ts';
import { cap } from '../../src/fit/cap.ts';
import { dropShoulder } from '../../src/fit/drop-shoulder.ts';
import { ANY_COUNT, type Gauge } from '../../src/fit/gauge.ts';
import { neck } from '../../src/fit/neck.ts';
import type { Step } from '../../src/fit/plan.ts';
import { raglan } from '../../src/fit/raglan.ts';
import {
  neckOutline,
  raglanOutline,
  type ShapedPart,
  shapedCap,
  shapedDrop,
  yokeOutline,
} from '../../src/fit/shaped.ts';
import { shoulderPart } from '../../src/fit/shoulder-steps.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { frontDarts } from '../../src/fit/vertical-dart-steps.ts';
import { ratesOf } from '../../src/fit/wedge-base.ts';
import { DIRECTIONS, type Direction } from '../../src/fit/words.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { yoke } from '../../src/fit/yoke.ts';
import { evenly } from '../../src/fit/yoke-scheme.ts';
import { gauges } from '../fit/arbitrary.ts';

/** Half the bust and depths in centimetres, shares of them between nought and one. */
interface Garment {
  readonly gauge: Gauge;
  readonly direction: Direction;
  readonly half: number;
  readonly depth: number;
  readonly share: number;
  readonly small: number;
}

const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((mm) => mm / 10);

const garments: fc.Arbitrary<Garment> = fc.record({
  gauge: gauges,
  direction: fc.constantFrom(...DIRECTIONS),
  half: tenths(24, 80),
  depth: tenths(10, 30),
  share: fc.double({ min: 0.2, max: 0.5, noNaN: true }),
  small: tenths(1, 9),
});

const count = (width: number, { stitches: rate }: Gauge) =>
  stitches(Math.max(2, Math.round(width * rate.perCm)));
/** Both odd or both even. */
const like = (wanted: number, other: number) =>
  stitches(Math.max(2, wanted + (Math.abs(wanted - other) % 2)));

const MAKERS: Readonly<Record<ShapedPart['shape'], (garment: Garment) => ShapedPart | null>> = {
  cap: ({ gauge, half, depth, share }) => {
    const flat: Gauge = { ...gauge, worked: 'flat' };
    const bust = count(half, flat);
    const crossBack = like(Math.round(bust * (1 - share / 2)), bust);
    const edge = armhole({ bust, crossBack, depth: cm(depth), gauge: flat });
    if (edge.kind !== 'armhole') return null;
    const made = cap({
      upperArm: count(depth * (1.3 + share), flat),
      armhole: { front: edge.edge, back: edge.edge },
      depth: edge.depth,
      bindOff: edge.bindOffs[0] ?? stitches(0),
      gauge: flat,
    });
    return made.kind === 'cap' ? shapedCap(made, null, { front: edge, back: edge }, ratesOf(flat)) : null;
  },
  'drop shoulder': ({ gauge, half, depth, share, small }) => {
    const flat: Gauge = { ...gauge, worked: 'flat' };
    const of = (deep: number) =>
      dropShoulder({
        depth: cm(deep),
        back: cm(half),
        // Wider than the back now and then, so that nothing hangs over.
        crossBack: cm(half * (1.1 - share)),
        upperArm: cm(1.8 * depth),
        body: flat,
        sleeve: flat,
        rule: ANY_COUNT,
      });
    const [after, before] = [of(depth), of(depth + small - 4)];
    if (after.kind !== 'drop shoulder') return null;
    return shapedDrop(after, before.kind === 'drop shoulder' ? before : null, ratesOf(flat));
  },
  neck: ({ gauge, half, share, small }) => {
    const flat: Gauge = { ...gauge, worked: 'flat' };
    const across = count(half * 0.8, flat);
    const made = neck({ stitches: across, width: cm(half * 0.8 * share), depth: cm(2 + small), gauge: flat });
    if (made.kind !== 'neck') return null;
    return { shape: 'neck', gauge: ratesOf(flat), after: neckOutline(made), before: null, slope: rows(0) };
  },
  raglan: ({ gauge, direction, half, depth, share }) => {
    const part = (width: number, at: number) => {
      const underarm = count(width, gauge);
      return { underarm, neck: like(Math.round(underarm * at), underarm) };
    };
    const made = raglan({
      direction,
      gauge,
      depth: cm(depth),
      parts: { back: part(half, share), front: part(half, share * 0.9), sleeve: part(half * 0.6, share / 2) },
      carriers: 'every row',
      plain: rows(0),
      neckWanted: cm(40),
    });
    return made.kind === 'raglan'
      ? { shape: 'raglan', gauge: ratesOf(gauge), after: raglanOutline(made) }
      : null;
  },
  yoke: ({ gauge, direction, half, depth, share, small }) => {
    const round: Gauge = { ...gauge, worked: 'round' };
    const underarm = count(3 * half, round);
    const made = yoke({
      direction,
      gauge: round,
      depth: cm(depth),
      underarm,
      neck: stitches(Math.round(underarm * share)),
      scheme: evenly(Math.ceil(small)),
    });
    return made.kind === 'yoke' ? { shape: 'yoke', gauge: ratesOf(round), after: yokeOutline(made) } : null;
  },
  'stepped shoulders': ({ gauge, half, share, small }) => {
    const shoulder = count(half * 0.8 * (0.5 - share / 2), gauge);
    const side = small < 3 ? 'start' : 'end';
    const on =
      small < 5
        ? ({ sides: 'both', neck: count(half * 0.8 * share, gauge) } as const)
        : ({ sides: side } as const);
    const part = shoulderPart(
      { how: 'bind-offs', direction: 'up', drop: cm(small / 2), gauge: ratesOf(gauge), shoulder, on },
      'back',
    );
    return 'kind' in part ? null : shapedIn(part.steps);
  },
  'front darts': ({ gauge, direction, half, depth, small }) => {
    const over = workOut(
      'rows',
      'a',
      { a: quantity('rows', Math.round(4 * depth), 'rows') },
      { unit: 'rows' },
    );
    const made = frontDarts(
      {
        extra: { from: 'width', width: cm(small) },
        gauge: ratesOf(gauge),
        front: count(half, gauge),
        bustSpan: cm(half * 0.35),
        perRow: 4,
        carriers: gauge.worked === 'flat' ? 'odd rows' : 'every row',
        worked: gauge.worked,
        direction,
        sides: null,
        edge: gauge.worked === 'flat' ? 2 : 0,
        widen: over,
        narrow: over,
      },
      gauge,
    );
    return made.kind === 'darts' ? shapedIn(small < 5 ? made.before : made.after) : null;
  },
};

function shapedIn(steps: readonly Step[]): ShapedPart | null {
  return steps.find((step) => step.shaped !== null)?.shaped ?? null;
}

/** Every shape as often as the others. */
export const shapedParts: fc.Arbitrary<ShapedPart> = fc.oneof(
  ...Object.values(MAKERS).map((make) =>
    garments.map(make).filter((shaped): shaped is ShapedPart => shaped !== null),
  ),
);
