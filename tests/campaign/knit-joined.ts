/** Body and sleeves joined for a raglan or a round yoke, knitted from the hem to the neck or from the neck down. */
import { type Joined, join } from '../../src/fit/join.ts';
import { stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import { bustOf, type KnittedBody, knitBody } from './knit-body.ts';
import { knitRaglan } from './knit-raglan.ts';
import { type KnittedSleeve, knitSleeve } from './knit-sleeve.ts';
import { knitBodyWedges, knitNeckWedge } from './knit-wedges.ts';
import { knitYoke } from './knit-yoke.ts';
import { counted, type Sweater } from './sweaters.ts';

export interface KnittedPieces {
  readonly body: KnittedBody | undefined;
  readonly sleeve: KnittedSleeve | undefined;
}

/** From the hem: body and sleeves, then the yoke over both. */
export function knitToNeck(sweater: Sweater, findings: Findings): KnittedPieces {
  const body = knitBody(sweater, bustOf(sweater), findings);
  const sleeve = knitSleeve(sweater, null, findings);
  if (body !== undefined) knitBodyWedges(sweater, body, findings);
  if (body === undefined || sleeve === undefined) return { body, sleeve };
  const around = sleeve.needle.count - sleeve.fabric.edge;
  const joined = joinFor(sweater, body.needle.count, around, findings);
  if (joined === undefined) return { body, sleeve };
  const needle = onOneNeedle(body, sleeve, joined);
  findings.same(joined.yoke, needle.count, 'stitches of the yoke');
  const top = (sweater.construction === 'raglan' ? knitRaglan : knitYoke)(sweater, joined, needle, findings);
  if (top === undefined) return { body, sleeve };
  findings.meet(`${sweater.construction} knitted to the neck`);
  findings.same(top.neck, needle.count, 'stitches at the neck');
  knitNeckWedge(sweater, needle, top.centre, findings);
  return { body, sleeve };
}

/** From the neck: the yoke, then body and sleeves from its stitches and those cast on at the underarms. */
export function knitFromNeck(sweater: Sweater, findings: Findings): KnittedPieces {
  const bust = bustOf(sweater);
  const joined = joinFor(sweater, bust, counted(sweater.patternUpperArm, sweater.body), findings);
  if (joined === undefined) return { body: undefined, sleeve: undefined };
  const top = (sweater.construction === 'raglan' ? knitRaglan : knitYoke)(sweater, joined, null, findings);
  if (top === undefined) return { body: undefined, sleeve: undefined };
  knitNeckWedge(sweater, Needle.castOn(top.neck, 'round'), top.centre, findings);
  const yoke = top.needle;
  findings.at('divided yoke').same(joined.yoke, yoke.count, 'stitches to divide');
  const underarm = (bust - joined.back - joined.front) / 2;
  const other = yoke.takeOff(joined.back + joined.sleeve + joined.front, yoke.count);
  const front = yoke.takeOff(joined.back + joined.sleeve, yoke.count);
  const sleeve = yoke.takeOff(joined.back, yoke.count);
  findings.same(sleeve.count, other.count, 'stitches of the two sleeves');
  const castOn = (count: number) => Needle.castOn(count, 'flat');
  const round = Needle.join([yoke, castOn(underarm), front, castOn(underarm)], 'round');
  const body = knitBody(sweater, bust, findings, round);
  if (body !== undefined) knitBodyWedges(sweater, body, findings);
  const edge = sweater.sleeves.worked === 'flat' ? 2 : 0;
  const arm = Needle.join([sleeve, castOn(underarm), castOn(edge)], sweater.sleeves.worked);
  findings.meet(`${sweater.construction} knitted from the neck`);
  return { body, sleeve: knitSleeve(sweater, arm.count, findings, arm) };
}

function joinFor(sweater: Sweater, body: number, sleeve: number, findings: Findings): Joined | undefined {
  findings.at('underarm');
  const underarm = stitches(counted(sweater.underarm, sweater.body));
  const made = join({ body: stitches(body), sleeve: stitches(sleeve), underarm });
  if (made.kind === 'joined') {
    const { yoke, front, back } = made;
    findings.states({ yoke, front, back, sleeve: made.sleeve }, made.workings);
    findings.same(body, made.back + made.front + 2 * underarm, 'stitches of the body');
    findings.same(sleeve, made.sleeve + underarm, 'stitches of a sleeve');
    return made;
  }
  findings.meet(`join: ${made.kind}`);
  if (made.most > 0) {
    const less = join({ body: stitches(body), sleeve: stitches(sleeve), underarm: made.most });
    findings.same('joined', less.kind, 'the most that may be set aside');
  }
  return undefined;
}

/** Back, one sleeve, front, other sleeve; the underarms stay behind, and so do a flat sleeve's edge stitches. */
function onOneNeedle(body: KnittedBody, sleeve: KnittedSleeve, joined: Joined): Needle {
  const back = Needle.join([body.needle], 'round');
  const underarm = (back.count - joined.back - joined.front) / 2;
  back.takeOff(back.count - underarm, back.count);
  const front = back.takeOff(joined.back + underarm, back.count);
  back.takeOff(joined.back, back.count);
  const { edge } = sleeve.fabric;
  const [one, other] = [0, 1].map(() => {
    const arm = Needle.join([sleeve.needle], 'flat');
    return arm.takeOff(edge / 2, edge / 2 + joined.sleeve);
  });
  return Needle.join(one === undefined || other === undefined ? [] : [back, one, front, other], 'round');
}
