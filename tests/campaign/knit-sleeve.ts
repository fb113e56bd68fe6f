/** A sleeve between cuff and underarm, from its plan. */
import { type SleeveAsk, type SleeveShaping, shapeSleeve } from '../../src/fit/sleeve.ts';
import { sleevePart } from '../../src/fit/sleeve-steps.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import { outlined, waysOut } from './knit-body.ts';
import { type Fabric, finishedAs, knitPart } from './knit-plan.ts';
import { counted, type Sweater } from './sweaters.ts';

export interface KnittedSleeve {
  readonly shaping: SleeveShaping;
  readonly fabric: Fabric;
  readonly needle: Needle;
  /** Stitches before the first row and after each. */
  readonly counts: readonly number[];
}

/** `top`: stitches of the upper arm where what the sleeve hangs on gives them; `start`: these, live from a yoke. */
export function knitSleeve(
  sweater: Sweater,
  top: number | null,
  findings: Findings,
  start?: Needle,
): KnittedSleeve | undefined {
  findings.at('sleeve');
  const ask = askFor(sweater, top);
  const shaping = shapeSleeve(ask);
  if (shaping.kind === 'cannot') {
    findings.meet(`sleeve: ${shaping.why}`);
    return undefined;
  }
  const fabric: Fabric = { gauge: ask.gauge, edge: ask.edge, pieces: 1 };
  const part = sleevePart(shaping, { wrist: null, upperArm: null });
  const knitted = knitPart(part, fabric, findings, start && withDifference(start, shaping, findings));
  waysOut(shaping.spacing, fabric, findings);
  if (knitted === undefined || knitted.stopped) {
    findings.meet('sleeve: ways out');
    return undefined;
  }
  findings.meet('sleeve knitted');
  const { needle } = knitted;
  const up = ask.direction === 'up';
  const { wrist, upperArm } = shaping.counts;
  findings.same(up ? upperArm : wrist, needle.count, 'stitches at the end');
  finishedAs(part, 'wrist', { of: 'stitches', count: up ? wrist : needle.count }, fabric, findings);
  finishedAs(part, 'upper arm', { of: 'stitches', count: up ? needle.count : upperArm }, fabric, findings);
  finishedAs(part, 'sleeve, cuff to underarm', { of: 'rows', count: needle.log.length }, fabric, findings);
  const off = needle.log.length - ask.length * ask.gauge.rows.perCm;
  findings.must(Math.abs(off) <= 1 + 1e-6, `${needle.log.length} rows are not the length asked for`);
  for (const piece of part.pieces) outlined(piece, needle, up ? wrist : upperArm, findings);
  return { shaping, fabric, needle, counts: [up ? wrist : upperArm, ...needle.counts] };
}

/** The live stitches with those more or fewer that the plan says the sleeve's top takes up. */
function withDifference(
  start: Needle,
  { ask, counts, topDifference }: SleeveShaping,
  findings: Findings,
): Needle {
  const more = counts.upperArm - start.count;
  findings.same(topDifference?.result.value ?? 0, Math.abs(more), 'stitches that the sleeve top takes up');
  if (more < 0) start.takeOff(start.count + more, start.count);
  return more > 0 ? Needle.join([start, Needle.castOn(more, 'flat')], ask.gauge.worked) : start;
}

function askFor(sweater: Sweater, top: number | null): SleeveAsk {
  const { sleeves: gauge, direction, toss } = sweater;
  const edge = gauge.worked === 'flat' ? 2 : 0;
  const given = top !== null;
  return {
    gauge,
    direction,
    edge,
    pattern: {
      wrist: stitches(counted(sweater.patternWrist, gauge) + edge),
      upperArm: stitches(top ?? counted(sweater.patternUpperArm, gauge) + edge),
      length: (toss[0] ?? 0) < 0.3 ? null : cm(sweater.sleeveLength * 1.05),
      cuff: cm(sweater.cuff),
    },
    wrist: (toss[1] ?? 0) < 0.3 ? null : cm(sweater.wrist),
    upperArm: given || (toss[2] ?? 0) < 0.3 ? null : cm(sweater.upperArm),
    length: cm(sweater.sleeveLength),
    cuffRepeat: sweater.cuffRepeat,
  };
}
