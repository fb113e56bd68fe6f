/** Above the underarm of a flat back or front: armhole, neck and shoulders, on the needle that the body left. */
import { type Armhole, type ArmholeAsk, armhole } from '../../src/fit/armhole.ts';
import type { Gauge } from '../../src/fit/gauge.ts';
import { type Neck, type NeckAsk, neck } from '../../src/fit/neck.ts';
import { type ShoulderAsk, type ShoulderSlope, shoulderSlope } from '../../src/fit/shoulder-slope.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { type Event, edgeOf, knitEdgesOn } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import { knitWedgeOn } from './knit-wedges.ts';
import type { Sweater } from './sweaters.ts';

export interface Upper {
  readonly armhole: Armhole;
  readonly neck: Neck;
}

/** The same stitches at the same heights on a needle of their own, for rows to and fro. */
export function flat(needle: Needle): Needle {
  return Needle.join([needle], 'flat');
}

export function armholeAsk(sweater: Sweater, across: number, gauge: Gauge): ArmholeAsk {
  const { toss, depth, loss } = sweater;
  const odd = (toss[3] ?? 0) < 0.05 ? 1 : 0;
  const lost = Math.max(0, Math.round(across * loss));
  const steps = [2, 1].slice(0, Math.floor((toss[4] ?? 0) * 3)).map(stitches);
  const own = (toss[5] ?? 0) < 0.3;
  return {
    bust: stitches(across),
    crossBack: stitches(Math.max(2, across - 2 * lost - odd)),
    depth: cm(depth),
    gauge,
    decreases: (toss[6] ?? 0) < 0.5 ? 'quick' : 'spread',
    ...(own ? { bindOffs: [stitches(Math.max(1, Math.floor(lost / 3))), ...steps] } : {}),
    ...((toss[7] ?? 0) < 0.2 ? { shapedBy: cm(depth * 0.7) } : {}),
  };
}

/** The armhole as asked for, or the first way that works in its place; every way is knitted. */
export function armholeOf(ask: ArmholeAsk, findings: Findings): Armhole | undefined {
  const made = armhole(ask);
  if (made.kind === 'armhole') return made;
  findings.meet(`armhole: ${made.kind}`);
  for (const { way, armhole: other } of made.alternatives) {
    findings.meet(`armhole, way out: ${way}`);
    holdArmhole(other, ask.gauge, findings);
  }
  return made.alternatives.find((way) => way.armhole.bust === ask.bust)?.armhole;
}

function holdArmhole(made: Armhole, gauge: Gauge, findings: Findings): void {
  const needle = findings.knit(() => knitEdgesOn(Needle.castOn(made.bust, 'flat'), made.events, made.rows));
  findings.same(made.crossBack, needle?.count, 'cross back');
  findings.same(made.rows, made.straight + lastRow(made.events), 'straight rows');
  findings.near(made.depth, made.rows / gauge.rows.perCm, 'armhole depth');
  findings.near(
    made.edge,
    edgeOf(made.events, made.rows, gauge.stitches.perCm, gauge.rows.perCm),
    'armhole edge',
  );
  findings.runs(made.decreases);
  const { bust, crossBack, rows, depth, straight, edge } = made;
  findings.states({ bust, crossBack, rows, depth, straight, edge }, made.workings);
}

function lastRow(events: readonly Event[]): number {
  return events.at(-1)?.row ?? 0;
}

/** Knits a back or a front from the underarm to its shoulders; undefined where armhole or neck cannot be made. */
export function knitUpper(
  sweater: Sweater,
  piece: 'back' | 'front',
  needle: Needle,
  gauge: Gauge,
  findings: Findings,
): Upper | undefined {
  findings.at(`armhole of the ${piece}`);
  const begun = needle.heights[0] ?? 0;
  const shaped = armholeOf(armholeAsk(sweater, needle.count, gauge), findings);
  if (shaped === undefined) return undefined;
  holdArmhole(shaped, gauge, findings);
  findings.at(`neck of the ${piece}`);
  const ask = neckAsk(sweater, piece, shaped.crossBack, gauge);
  const round = neckOf(ask, findings);
  if (round === undefined) return undefined;
  const begins = shaped.rows - round.rows;
  if (begins < lastRow(shaped.events)) {
    findings.meet('neck that begins within the armhole shaping');
    return { armhole: shaped, neck: round };
  }
  findings.knit(() => knitEdgesOn(needle, shaped.events, begins));
  const [first, last] = findings.knit(() => knitNeck(needle, round, findings)) ?? [];
  if (first === undefined || last === undefined) return undefined;
  for (const shoulder of [first, last]) {
    findings.same(round.shoulder, shoulder.count, 'stitches of a shoulder');
    for (const height of new Set(shoulder.heights))
      findings.same(begun + shaped.rows, height, 'rows to a shoulder');
  }
  findings.meet(`${piece} knitted to the shoulders`);
  findings.at(`shoulders of the ${piece}`);
  knitShoulder(sweater, first, 'start', gauge, findings);
  knitShoulder(sweater, last, 'end', gauge, findings);
  return { armhole: shaped, neck: round };
}

function neckAsk(sweater: Sweater, piece: 'back' | 'front', across: number, gauge: Gauge): NeckAsk {
  const depth = piece === 'front' ? sweater.neckDepth : 2.5;
  const [tossed = 0] = sweater.toss.slice(8);
  return {
    stitches: stitches(across),
    width: cm(sweater.neckWidth),
    depth: cm(depth),
    gauge,
    ...(tossed < 0.15 ? { centre: stitches(Math.max(1, Math.round(across / 8))) } : {}),
    ...(tossed > 0.9 ? { steps: [stitches(2), stitches(1)] } : {}),
  };
}

function neckOf(ask: NeckAsk, findings: Findings): Neck | undefined {
  const made = neck(ask);
  if (made.kind === 'neck') {
    holdNeck(made, ask, findings);
    return made;
  }
  findings.meet(`neck: ${made.kind}`);
  for (const { way, neck: other } of made.alternatives) {
    findings.meet(`neck, way out: ${way}`);
    holdNeck(other, ask, findings);
    const needle = Needle.castOn(ask.stitches, 'flat');
    findings.knit(() => knitNeck(needle, other, findings));
  }
  return made.alternatives[0]?.neck;
}

function holdNeck(made: Neck, { stitches: across, gauge }: NeckAsk, findings: Findings): void {
  const { perCm } = gauge.stitches;
  findings.same(across, 2 * made.shoulder + made.stitches, 'shoulders and neck');
  findings.near(made.width, made.stitches / perCm, 'neck width');
  findings.near(made.depth, made.rows / gauge.rows.perCm, 'neck depth');
  const side = edgeOf(made.sides.last.events, made.rows, perCm, gauge.rows.perCm);
  findings.near(made.edge, made.centre / perCm + 2 * side, 'neck edge');
  findings.runs(made.decreases);
  const { stitches: ofNeck, width, rows, depth, centre, straight, shoulder, edge } = made;
  findings.states({ ofNeck, width, rows, depth, centre, straight, shoulder, edge }, made.workings);
}

/** The two shoulders after the neck, first the part that a right-side row knits first. */
function knitNeck(needle: Needle, made: Neck, findings: Findings): readonly [Needle, Needle] {
  const { first, last } = made.sides;
  const across = flat(needle).knit(first.from).bindOff(made.centre).finish();
  findings.same(first.from + last.from, across.count, 'stitches beside the centre');
  const other = needle.takeOff(first.from + made.centre, needle.count);
  const centre = needle.takeOff(first.from, first.from + made.centre);
  findings.same(made.centre, centre.count, 'stitches of the centre');
  return [knitEdgesOn(needle, first.events, made.rows), knitEdgesOn(other, last.events, made.rows)];
}

/** A shoulder whose armhole edge lies on that side. */
function knitShoulder(
  { drop, toss }: Sweater,
  needle: Needle,
  side: 'start' | 'end',
  gauge: Gauge,
  findings: Findings,
): void {
  const ask: ShoulderAsk = {
    how: (toss[9] ?? 0) < 0.5 ? 'short rows' : 'bind-offs',
    direction: 'up',
    drop: cm(drop),
    gauge: { stitchesPerCm: gauge.stitches.perCm, rowsPerCm: gauge.rows.perCm },
    shoulder: stitches(needle.count),
    on: { sides: side },
    ...((toss[10] ?? 0) < 0.2 ? { larger: 'innermost' as const } : {}),
  };
  const made = shoulderSlope(ask);
  const sloped = made.kind === 'short-row shoulder' || made.kind === 'stepped shoulder';
  findings.meet(`shoulder: ${made.kind}`);
  const slopes = sloped ? [made] : made.alternatives.flatMap(({ slope }) => (slope === null ? [] : [slope]));
  for (const slope of slopes) findings.knit(() => knitSlope(slope, flat(needle), side, gauge, findings));
}

function knitSlope(
  slope: ShoulderSlope,
  needle: Needle,
  side: 'start' | 'end',
  gauge: Gauge,
  findings: Findings,
): void {
  findings.states({ rows: slope.rows, drop: slope.drop }, slope.workings);
  findings.near(slope.drop, slope.rows / gauge.rows.perCm, 'drop of the shoulder');
  findings.same(
    slope.steps.reduce((sum, step) => sum + step, 0),
    needle.count,
    'stitches of all steps',
  );
  const heights =
    slope.kind === 'short-row shoulder' ? grown(slope, needle, findings) : stepped(slope, needle, side);
  // From the armhole edge: each step lies two rows above the one outside it.
  const outward = side === 'start' ? heights : [...heights].reverse();
  const expected = slope.steps.flatMap((step, i) => Array<number>(step).fill(2 * i));
  findings.same(
    expected.join(),
    outward.map((height) => height - (outward[0] ?? 0)).join(),
    'heights of the shoulder',
  );
}

function grown(
  slope: Extract<ShoulderSlope, { kind: 'short-row shoulder' }>,
  needle: Needle,
  findings: Findings,
): readonly number[] {
  knitWedgeOn(needle, slope.wedge, findings);
  return needle.heights;
}

/** Heights at which the stitches were bound off, from where right-side rows begin. */
function stepped(
  slope: Extract<ShoulderSlope, { kind: 'stepped shoulder' }>,
  needle: Needle,
  side: 'start' | 'end',
): readonly number[] {
  if (side === 'end') needle.finish();
  let row = 1;
  for (const off of slope.bindOffs) {
    for (; row < off.row; row++) needle.finish();
    const begins = needle.next.side === 'right side' ? 'start' : 'end';
    if (begins !== off.side) throw new Error(`row ${off.row} begins at its ${begins}, not its ${off.side}`);
    needle.bindOff(off.stitches);
  }
  const heights = needle.boundOff.flatMap((off) => off.heights);
  return side === 'start' ? heights : [...heights].reverse();
}
