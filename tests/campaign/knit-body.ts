/** A body from its lower edge to the underarm, or from the underarm down: the plan, its ways out, its outline. */
import { type BodyAsk, type BodyShaping, shapeBody } from '../../src/fit/body-shaping.ts';
import { bodyPart } from '../../src/fit/body-steps.ts';
import type { PieceChange } from '../../src/fit/plan.ts';
import type { Spacing } from '../../src/fit/spacing.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import { type Fabric, finishedAs, knitPart } from './knit-plan.ts';
import { counted, type Sweater } from './sweaters.ts';

export interface KnittedBody {
  readonly shaping: BodyShaping;
  readonly fabric: Fabric;
  /** At the underarm where it was knitted up, else at the lower edge. */
  readonly needle: Needle;
  /** Stitches before the first row and after each. */
  readonly counts: readonly number[];
}

/** Stitches of the pattern at the bust: all round, or of the back with its edge stitches. */
export function bustOf({ body, bust }: Sweater): number {
  const round = body.worked === 'round';
  // In the round an even count, so that back and front are alike.
  return round ? 2 * counted(bust / 2, body) : counted(bust / 2, body) + 2;
}

/** `start`: the live stitches of a yoke that the body goes on from. */
export function knitBody(
  sweater: Sweater,
  bust: number,
  findings: Findings,
  start?: Needle,
): KnittedBody | undefined {
  findings.at('body');
  const ask = bodyAskFor(sweater, bust);
  const shaping = shapeBody(ask);
  if (shaping.kind === 'cannot') {
    findings.meet(`body: ${shaping.why}`);
    return undefined;
  }
  const fabric: Fabric = { gauge: ask.gauge, edge: ask.edge, pieces: ask.gauge.worked === 'round' ? 1 : 2 };
  const part = bodyPart(shaping, null);
  const knitted = knitPart(part, fabric, findings, start);
  for (const section of shaping.sections)
    if (section.spacing !== null) waysOut(section.spacing, fabric, findings);
  if (knitted === undefined || knitted.stopped) {
    findings.meet('body: a section with ways out');
    return undefined;
  }
  findings.meet('body knitted');
  const rows = knitted.needle.log.length;
  const up = ask.direction === 'up';
  const ends = [shaping.sections[0]?.from, knitted.needle.count];
  const [lower, upper] = up ? ends : [...ends].reverse();
  const waist = knitted.after.get('where: at the waist')?.stitches;
  finishedAs(part, 'lower edge', { of: 'stitches', count: lower ?? 0 }, fabric, findings);
  finishedAs(part, 'bust', { of: 'stitches', count: upper ?? 0 }, fabric, findings);
  if (shaping.waist !== null)
    finishedAs(part, 'waist', { of: 'stitches', count: waist ?? 0 }, fabric, findings);
  finishedAs(part, 'body, lower edge to underarm', { of: 'rows', count: rows }, fabric, findings);
  findings.same(bust, upper, 'stitches at the underarm');
  findings.must(
    Math.abs(rows - ask.length * ask.gauge.rows.perCm) <= 1 + 1e-6,
    `${rows} rows are not the length asked for`,
  );
  for (const piece of part.pieces) outlined(piece, knitted.needle, ends[0] ?? 0, findings);
  return { shaping, fabric, needle: knitted.needle, counts: [ends[0] ?? 0, ...knitted.needle.counts] };
}

export function bodyAskFor(sweater: Sweater, bust: number): BodyAsk {
  const { body: gauge, direction, waist, hip, flare } = sweater;
  return {
    gauge,
    direction,
    edge: gauge.worked === 'flat' ? 2 : 0,
    pattern: {
      hem: stitches(Math.max(20, bust + flare)),
      bust: stitches(bust),
      length: cm(sweater.patternLength),
      edging: cm(sweater.edging),
    },
    length: cm(sweater.length),
    waist: waist === null ? null : { around: cm(waist.around), belowUnderarm: cm(waist.below) },
    hip: hip === null ? null : cm(hip),
  };
}

/** Every level of the drawn outline lies where that many rows and stitches were knitted. */
export function outlined({ after }: PieceChange, needle: Needle, begun: number, findings: Findings): void {
  const counts = [begun, ...needle.counts];
  for (const level of after.levels)
    findings.same(level.stitches, counts[level.row], `outline at row ${level.row}, ${level.name}`);
  findings.same(after.levels.at(-1)?.row, needle.log.length, 'rows of the outline');
}

/** Ways out of a section are knitted too, each from the count that the section begins with. */
export function waysOut(spacing: Spacing, { gauge, edge }: Fabric, findings: Findings): void {
  if (spacing.kind === 'spaced') return;
  findings.must(spacing.alternatives.length > 0, `${spacing.kind}, and no way out`);
  for (const { way, spaced, width } of spacing.alternatives) {
    findings.meet(`way out: ${way}`);
    const needle = Needle.castOn(spaced.from, gauge.worked);
    for (const fault of findings.knit(() => knitSection(needle, spaced, gauge.worked)) ?? [])
      findings.must(false, `${way}: ${fault}`);
    findings.same(spaced.to, needle.count, `${way}, stitches`);
    findings.workings(spaced.workings);
    findings.runs(spaced);
    // The count is a section's, edge stitches and all: the width of its fabric is told where the plan says it.
    if (width !== undefined && edge === 0)
      findings.near(width, needle.count / gauge.stitches.perCm, `${way}, width`);
  }
}
