/** A set-in sleeve's cap, knitted on the sleeve's own needle and measured against the armholes that it is sewn into. */
import { changeDepth } from '../../src/fit/armhole-depth.ts';
import { type Cap, type CapAsk, cap } from '../../src/fit/cap.ts';
import type { Gauge } from '../../src/fit/gauge.ts';
import { cm, type Stitches, stitches } from '../../src/fit/units.ts';
import { edgeOf, knitEdges, knitEdgesOn } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { KnittedBody } from './knit-body.ts';
import type { KnittedSleeve } from './knit-sleeve.ts';
import { armholeAsk, flat, knitUpper, type Upper } from './knit-upper.ts';
import type { Sweater } from './sweaters.ts';

export function knitSetIn(
  sweater: Sweater,
  body: KnittedBody,
  sleeve: KnittedSleeve | undefined,
  findings: Findings,
): void {
  const gauge: Gauge = { ...sweater.body, worked: 'flat' };
  const [back, front] = halves(body.needle, sweater);
  const above = {
    back: knitUpper(sweater, 'back', back, gauge, findings),
    front: knitUpper(sweater, 'front', front, gauge, findings),
  };
  if (above.back === undefined || above.front === undefined) return;
  deeper(sweater, above.back, gauge, findings);
  if (sleeve !== undefined) knitCap(sweater, above.back, above.front, sleeve, findings);
}

/** Back and front: the two halves of a round, or two pieces alike. */
function halves(needle: Needle, { body }: Sweater): readonly [Needle, Needle] {
  if (body.worked === 'flat') return [flat(needle), flat(needle)];
  const front = needle.takeOff(needle.count / 2, needle.count);
  return [flat(needle), front];
}

function knitCap(
  sweater: Sweater,
  back: Upper,
  front: Upper,
  sleeve: KnittedSleeve,
  findings: Findings,
): void {
  findings.at('cap');
  const ask: CapAsk = {
    upperArm: stitches(sleeve.needle.count),
    armhole: { front: front.armhole.edge, back: back.armhole.edge },
    depth: back.armhole.depth,
    bindOff: back.armhole.bindOffs[0] ?? stitches(1),
    gauge: { ...sweater.sleeves, worked: 'flat' },
    ...((sweater.toss[11] ?? 0) < 0.3 ? { ease: cm(1) } : {}),
  };
  const made = cap(ask);
  findings.meet(`cap: ${made.kind}`);
  if (made.kind === 'cap') holdCap(made, ask, flat(sleeve.needle), findings);
  else
    for (const { way, cap: other, by } of made.alternatives) {
      findings.meet(`cap, way out: ${way}`);
      holdCap(other, altered(ask, way, other, by ?? cm(0)), Needle.castOn(other.upperArm, 'flat'), findings);
    }
  const fuller = { ...ask, upperArm: stitches(ask.upperArm + 4) };
  const over = cap(fuller);
  if (over.kind === 'cap') holdCap(over, fuller, Needle.castOn(fuller.upperArm, 'flat'), findings);
}

/** The ask that a way out answers. */
function altered(ask: CapAsk, way: string, other: Cap, by: number): CapAsk {
  const armhole = { front: cm(ask.armhole.front + by), back: cm(ask.armhole.back + by) };
  if (way === 'deeper armhole') return { ...ask, armhole };
  if (way === 'ease the cap in') return { ...ask, ease: cm((ask.ease ?? 0) + by) };
  const first: Stitches = stitches(-(other.events[0]?.change ?? 0));
  return way === 'bind off less' ? { ...ask, bindOff: first } : { ...ask, upperArm: other.upperArm };
}

function holdCap(made: Cap, ask: CapAsk, needle: Needle, findings: Findings): void {
  const { gauge } = ask;
  const begun = needle.heights[0] ?? 0;
  const staged = findings.knit(() => fromStages(made));
  findings.knit(() => knitEdgesOn(needle, made.events, made.rows));
  findings.same(made.top, needle.count, 'stitches of the top');
  findings.same(
    staged?.counts.join(),
    needle.counts.slice(-made.rows).join(),
    'rows in words and in figures',
  );
  for (const height of new Set(needle.heights)) findings.same(begun + made.rows, height, 'rows to the top');
  const side = edgeOf(made.events, made.rows, gauge.stitches.perCm, gauge.rows.perCm);
  const edge = 2 * side + made.top / gauge.stitches.perCm;
  const wanted = ask.armhole.front + ask.armhole.back + (ask.ease ?? 0);
  findings.near(made.edge, edge, 'edge of the cap');
  findings.near(made.wanted, wanted, 'edge wanted');
  findings.must(Math.abs(made.difference - (edge - wanted)) < 1e-9, 'cap less armhole');
  findings.must(
    Math.abs(edge - wanted) <= 1 / gauge.rows.perCm + 1e-9,
    `the edge is off by ${edge - wanted} cm`,
  );
  findings.near(made.height, made.rows / gauge.rows.perCm, 'height of the cap');
  findings.near(made.shoulderFromCentre, (ask.armhole.front - ask.armhole.back) / 2, 'shoulder seam');
  findings.same(-ask.bindOff, made.events[0]?.change, 'first bind-off');
  for (const stage of made.stages) if (stage.stage === 'decreases') findings.runs(stage.spaced);
  const { rows, height, top, difference, shoulderFromCentre } = made;
  findings.states(
    { rows, height, top, edge: made.edge, wanted: made.wanted, difference, shoulderFromCentre },
    made.workings,
  );
}

/** Knitted again from the stages, as a knitter reads them. */
function fromStages(made: Cap): Needle {
  const needle = Needle.castOn(made.upperArm, 'flat');
  for (const stage of made.stages) {
    if (stage.stage === 'bind off') needle.bindOff(stage.stitches).finish().bindOff(stage.stitches).finish();
    if (stage.stage === 'steps')
      for (let i = 0; i < 2 * stage.times; i++) needle.bindOff(stage.stitches).finish();
    if (stage.stage === 'decreases') {
      const shaped = new Set<number>(stage.spaced.shaping.map((s) => s.row));
      for (let row = 1; row <= stage.spaced.rows; row++) {
        if (shaped.has(row)) needle.shaped({ start: -1, end: -1 });
        else needle.finish();
      }
    }
    if (stage.stage === 'top' && stage.stitches !== needle.count)
      throw new Error(`${stage.stitches} stitches to bind off, ${needle.count} on the needle`);
  }
  return needle;
}

/** The armhole an inch deeper, and what hangs on it. */
function deeper(sweater: Sweater, { armhole: made }: Upper, gauge: Gauge, findings: Findings): void {
  findings.at('deeper armhole');
  const ask = {
    ...armholeAsk(sweater, made.bust, gauge),
    crossBack: made.crossBack,
    bindOffs: made.bindOffs,
  };
  const sleeves: Gauge = { ...sweater.sleeves, worked: 'flat' };
  const change = changeDepth(
    {
      construction: 'set-in',
      front: ask,
      back: ask,
      sleeve: { upperArm: stitches(Math.round(sweater.upperArm * sleeves.stitches.perCm)), gauge: sleeves },
    },
    cm(sweater.depth + 2.54),
    cm(sweater.neckDepth),
  );
  if (change.kind === 'cannot' || change.top.construction !== 'set-in') {
    findings.meet(`deeper armhole: ${change.kind === 'cannot' ? change.part : change.kind}`);
    return;
  }
  findings.meet('deeper armhole: changed');
  const { back, cap: caps } = change.top;
  findings.meet(
    `deeper armhole: the pattern's ${back.before === null ? 'not in the usual shape' : 'as usual'}`,
  );
  findings.same(change.rows.after, back.after.rows, 'rows of the deeper armhole');
  if (back.before !== null)
    findings.same(change.rows.before, back.before.rows, "rows of the pattern's armhole");
  findings.same(change.later, back.after.rows - change.rows.before, 'rows later');
  findings.same(
    change.neckBegins.after - change.neckBegins.before,
    change.later,
    'rows by which the neck begins later',
  );
  for (const { events, rows, bust, crossBack } of [back.before ?? back.after, back.after])
    findings.same(crossBack, findings.knit(() => knitEdges(bust, events, rows))?.count, 'cross back');
  for (const one of [caps.before ?? caps.after, caps.after])
    findings.same(
      one.top,
      findings.knit(() => knitEdges(one.upperArm, one.events, one.rows))?.count,
      'top of the cap',
    );
  findings.states({ later: change.later, begins: change.neckBegins.after }, change.workings);
}
