/** Short-row wedges in the body of a garment: knitted where they lie, and measured stitch by stitch. */
import { type BustDartAsk, bustDart } from '../../src/fit/bust-dart.ts';
import { hemWedge } from '../../src/fit/hem-wedge.ts';
import { neckWedge } from '../../src/fit/neck-wedge.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { verticalDarts } from '../../src/fit/vertical-dart.ts';
import { type CannotWedge, extraRowsAt, type NoRoom, type Wedge } from '../../src/fit/wedge.ts';
import type { Rates } from '../../src/fit/wedge-base.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { KnittedBody } from './knit-body.ts';
import type { Sweater } from './sweaters.ts';

export function ratesOf({ body }: Pick<Sweater, 'body'>): Rates {
  return { stitchesPerCm: body.stitches.perCm, rowsPerCm: body.rows.perCm };
}

/** Knits a wedge on the needle: every stitch grows by the rows that the engine says, none is lost. */
export function knitWedgeOn(needle: Needle, wedge: Wedge, findings: Findings): void {
  findings.same(wedge.needle, needle.count, 'stitches on the needle of a wedge');
  const before = needle.heights;
  findings.knit(() => knitWedge(needle, wedge));
  const beside = wedge.closing.ordinaryRows + (wedge.firstRow === 'wrong side' ? 1 : 0);
  const grown = needle.heights.map((height, i) => height - (before[i] ?? 0) - beside);
  findings.same(wedge.needle, grown.length, 'stitches after a wedge');
  findings.same(wedge.rows, Math.max(...grown), 'rows of a wedge where it is deepest');
  findings.same(0, Math.min(...grown), 'rows of a wedge beside it');
  findings.must(
    grown.every((height, i) => height === extraRowsAt(wedge, i)),
    'a stitch grows by other rows than are stated',
  );
  const turns = Object.fromEntries(wedge.turns.map((turn) => [`turn of row ${turn.row}`, turn.stitches]));
  findings.states({ rows: wedge.rows, depth: wedge.depth, ...turns }, wedge.workings);
}

/** The wedge, or each way in its place, on needles like this one. */
export function tryWedge(
  name: string,
  found: Wedge | CannotWedge | NoRoom,
  needle: Needle,
  rates: Rates,
  findings: Findings,
): void {
  findings.meet(`${name}: ${found.kind}`);
  const wedges = found.kind === 'wedge' ? [found] : found.alternatives.flatMap((way) => way.wedges);
  findings.workings(found.workings);
  for (const wedge of wedges) {
    knitWedgeOn(Needle.join([needle], wedge.worked), wedge, findings);
    findings.near(wedge.depth, wedge.rows / rates.rowsPerCm, 'depth of a wedge');
  }
}

/** A dipping hem and bust darts, on a body that stands at its underarm. */
export function knitBodyWedges(sweater: Sweater, body: KnittedBody, findings: Findings): void {
  const { needle, shaping } = body;
  const rates = ratesOf(sweater);
  const { worked } = sweater.body;
  const half = worked === 'round' ? needle.count / 2 : needle.count;
  const start = worked === 'round' ? half : 0;
  const [tossed = 0] = sweater.toss;
  findings.at('hem wedge');
  const lower = Needle.castOn(shaping.sections[0]?.from ?? 1, worked);
  const allRound = worked === 'round' && tossed < 0.5;
  const hem = hemWedge({
    depth: cm(sweater.wedge.depth),
    gauge: rates,
    worked,
    direction: sweater.direction,
    edging: rows(Math.round(sweater.edging * rates.rowsPerCm)),
    needle: stitches(lower.count),
    over: allRound
      ? { across: 'all round', deepest: Math.floor(lower.count / 4) }
      : {
          across: 'between the sides',
          start: 0,
          stitches: stitches(Math.floor(lower.count / (worked === 'round' ? 2 : 1))),
        },
    middle: cm((sweater.bust / 2) * sweater.wedge.middle),
  });
  tryWedge('hem wedge', hem, lower, rates, findings);
  findings.at('bust dart');
  const ask: BustDartAsk = {
    depth:
      tossed < 0.5
        ? { from: 'lengths', front: cm(40 + sweater.wedge.depth), back: cm(40.5) }
        : {
            from: 'girths',
            bust: cm(sweater.bust + 2 + sweater.wedge.depth),
            upperBust: cm(sweater.bust - 3),
          },
    gauge: rates,
    worked,
    direction: sweater.direction,
    sides: 'both',
    needle: stitches(needle.count),
    front: { start, stitches: stitches(half) },
    bustSpan: cm(sweater.bust * 0.19),
  };
  const dart = bustDart(ask);
  findings.workings(dart.workings);
  if (dart.kind === 'bust dart') tryWedge('bust dart', dart.wedge, needle, rates, findings);
  else if (dart.kind === 'not needed') findings.meet('bust dart: not needed');
  else tryWedge('bust dart', dart, needle, rates, findings);
  findings.at('vertical darts');
  knitVerticalDarts(sweater, half, findings);
}

/** Two darts that run up over the bust points of a front: it widens, and narrows again. */
function knitVerticalDarts(sweater: Sweater, front: number, findings: Findings): void {
  const { toss, wedge, body } = sweater;
  const rates = ratesOf(sweater);
  const length = Math.round(sweater.length * rates.rowsPerCm);
  const found = verticalDarts({
    extra: { from: 'width', width: cm(wedge.depth) },
    gauge: rates,
    front: stitches(front),
    bustSpan: cm(sweater.bust * 0.19),
    perRow: (toss[3] ?? 0) < 0.5 ? 2 : 4,
    carriers: body.worked === 'flat' ? 'odd rows' : 'every row',
    widenOver: rows(2 * Math.floor(length / 6)),
    narrowOver: (toss[4] ?? 0) < 0.5 ? null : rows(2 * Math.floor(length / 10)),
  });
  findings.meet(`vertical darts: ${found.kind}`);
  findings.workings(found.workings);
  if (found.kind !== 'vertical darts') return;
  const needle = Needle.castOn(front, 'flat');
  findings.near(found.width, found.added / rates.stitchesPerCm, 'width that darts add');
  findings.states({ added: found.added, width: found.width, fromSide: found.fromSide }, found.workings);
  for (const part of found.narrow === null ? [found.widen] : [found.widen, found.narrow]) {
    findings.runs(part);
    const shaped = new Map(part.shaping.map((s) => [s.row as number, s.after]));
    for (let row = 1; row <= part.rows; row++) {
      const after = shaped.get(row);
      if (after === undefined) needle.finish();
      else findings.knit(() => darted(needle, found.fromSide, (after - needle.count) / 2));
      if (after !== undefined) findings.same(after, needle.count, `stitches after row ${row} of the darts`);
    }
  }
  findings.same(front + (found.narrow === null ? found.added : 0), needle.count, 'stitches after the darts');
}

function darted(needle: Needle, fromSide: number, change: number): void {
  const taken = change < 0 ? 1 - change : 0;
  needle.shaped({ at: [fromSide, needle.count - fromSide - taken].map((before) => ({ before, change })) });
}

/** A raised back neck on the stitches of a yoke's neck, counted from the middle of the back. */
export function knitNeckWedge(sweater: Sweater, needle: Needle, centre: number, findings: Findings): void {
  findings.at('back neck');
  const rates = ratesOf(sweater);
  const around = needle.count / rates.stitchesPerCm;
  const found = neckWedge({
    purpose: (sweater.toss[5] ?? 0) < 0.5 ? 'back neck raise' : 'lower front neck',
    depth: cm(sweater.wedge.depth / 2),
    gauge: rates,
    worked: 'round',
    direction: sweater.direction,
    needle: stitches(needle.count),
    centre,
    base: cm(around * (0.4 + (sweater.toss[6] ?? 0) * 0.7)),
    middle: cm(around * 0.25),
    after: rows(0),
  });
  tryWedge('neck wedge', found, needle, rates, findings);
}
