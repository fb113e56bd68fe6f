/** Random sweaters: bodies from small children to large adults, thick to fine yarn, every construction, and what is wished. */
import fc from 'fast-check';
import type { Gauge } from '../../src/fit/gauge.ts';
import { CONSTRUCTIONS, type Construction, type Direction, type Worked } from '../../src/fit/words.ts';
import { gauges } from '../fit/arbitrary.ts';

/** All lengths in centimetres; shares are fractions of what they hang on. Whether it can be made is for the engine to say. */
export interface Sweater {
  readonly construction: Construction;
  readonly direction: Direction;
  readonly body: Gauge;
  readonly sleeves: Gauge;
  readonly bust: number;
  /** Stitches that the pattern's hem has more than its bust, over the whole piece. */
  readonly flare: number;
  readonly waist: { readonly around: number; readonly below: number } | null;
  readonly hip: number | null;
  readonly length: number;
  readonly patternLength: number;
  readonly edging: number;
  readonly depth: number;
  /** Stitches lost at each side of the armhole, as a share of the back. */
  readonly loss: number;
  readonly neckWidth: number;
  readonly neckDepth: number;
  readonly drop: number;
  readonly upperArm: number;
  readonly patternUpperArm: number;
  readonly wrist: number;
  readonly patternWrist: number;
  readonly sleeveLength: number;
  readonly cuff: number;
  readonly cuffRepeat: { readonly multiple: number; readonly plus: number };
  /** Stitches set aside at each underarm, in centimetres. */
  readonly underarm: number;
  /** How deep a short-row wedge is, and how wide its middle. */
  readonly wedge: { readonly depth: number; readonly middle: number };
  readonly band: { readonly stitches: number; readonly buttons: number; readonly multiple: number };
  /** Where knitting is checked half way, as a share of the rows, and how the gauge has changed by then. */
  readonly check: {
    readonly at: number;
    readonly stitches: number;
    readonly rows: number;
    readonly slip: number;
  };
  /** Decides between things that are equally good: every draw from nought to one. */
  readonly toss: readonly number[];
}

const between = (least: number, most: number) =>
  fc
    .integer({ min: Math.round(least * 100), max: Math.round(most * 100) })
    .map((hundredth) => hundredth / 100);
const tenths = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 10), max: Math.round(most * 10) }).map((tenth) => tenth / 10);

const shares = fc.record({
  construction: fc.constantFrom(...CONSTRUCTIONS),
  down: fc.boolean(),
  gauge: gauges,
  sleeves: fc.constantFrom<Worked>('flat', 'round'),
  bust: tenths(48, 150),
  flare: fc.constantFrom(0, 0, 0, 4, -4, 8, 6, 3),
  waist: fc.option(between(0.72, 1.05), { nil: null }),
  waistHeight: fc.oneof(
    { weight: 4, arbitrary: between(0.3, 0.6) },
    { weight: 1, arbitrary: between(0.02, 1) },
  ),
  hip: fc.option(between(0.85, 1.2), { nil: null, freq: 2 }),
  length: between(0.3, 0.55),
  patternLength: between(0.9, 1.1),
  edging: fc.oneof({ weight: 9, arbitrary: tenths(0, 7) }, { weight: 1, arbitrary: tenths(0, 40) }),
  depth: between(0.16, 0.24),
  loss: between(0.04, 0.14),
  neckWidth: between(0.28, 0.42),
  neckDepth: between(0.2, 0.45),
  drop: tenths(0, 5),
  upperArm: between(1.25, 1.8),
  patternArm: between(0.9, 1.1),
  wrist: between(0.45, 0.8),
  patternWrist: between(0.9, 1.1),
  sleeveLength: between(1.2, 2.6),
  cuff: fc.oneof({ weight: 9, arbitrary: tenths(0, 7) }, { weight: 1, arbitrary: tenths(0, 20) }),
  cuffRepeat: fc.constantFrom({ multiple: 1, plus: 0 }, { multiple: 2, plus: 0 }, { multiple: 4, plus: 2 }),
  underarm: between(0.03, 0.1),
  wedge: fc.record({ depth: tenths(0.2, 9), middle: between(0, 0.5) }),
  band: fc.record({
    stitches: between(0.85, 1.15),
    buttons: fc.integer({ min: 1, max: 11 }),
    multiple: fc.constantFrom(1, 2, 4, 6),
  }),
  check: fc.record({
    at: between(0, 1),
    stitches: fc.constantFrom(1, 1, 1.02, 0.97, 1.06, 0.92),
    rows: fc.constantFrom(1, 1, 1.03, 0.96, 1.1, 0.88),
    slip: fc.constantFrom(0, 0, 0, 1, -2, 4, -6),
  }),
  toss: fc.array(fc.noBias(between(0, 0.99)), { minLength: 12, maxLength: 12 }),
});

export const sweaters: fc.Arbitrary<Sweater> = shares.map((s): Sweater => {
  const depth = s.bust * s.depth;
  const upperArm = Math.max(15, depth * s.upperArm);
  const wrist = Math.max(10, upperArm * s.wrist);
  const length = s.bust * s.length + 8;
  const joined = s.construction === 'raglan' || s.construction === 'round yoke';
  return {
    construction: s.construction,
    direction: joined && s.down ? 'down' : 'up',
    // Raglans and yokes close the round over the body; the other two are split at the underarm.
    body: joined ? { ...s.gauge, worked: 'round' } : s.gauge,
    sleeves: { ...s.gauge, worked: s.sleeves },
    bust: s.bust,
    flare: s.flare,
    waist: s.waist === null ? null : { around: s.bust * s.waist, below: length * s.waistHeight },
    hip: s.hip === null ? null : s.bust * s.hip,
    length,
    patternLength: length * s.patternLength,
    edging: s.edging,
    depth,
    loss: s.loss,
    neckWidth: (s.bust / 2) * s.neckWidth,
    neckDepth: depth * s.neckDepth,
    drop: s.drop,
    upperArm,
    patternUpperArm: upperArm * s.patternArm,
    wrist,
    patternWrist: wrist * s.patternWrist,
    sleeveLength: depth * s.sleeveLength + Math.min(s.cuff, 8),
    cuff: s.cuff,
    cuffRepeat: s.cuffRepeat,
    underarm: s.bust * s.underarm,
    wedge: s.wedge,
    band: s.band,
    check: s.check,
    toss: s.toss,
  };
});

/** Stitches of a width at a gauge, to the nearest. */
export function counted(width: number, gauge: Gauge): number {
  return Math.max(1, Math.round(width * gauge.stitches.perCm));
}
