/** Bands: stitches picked up along an edge of rows, and buttonholes along a band; laid out one by one. */
import { placeButtons } from '../../src/fit/buttons.ts';
import type { CountRule, Gauge } from '../../src/fit/gauge.ts';
import { pickUp } from '../../src/fit/pickup.ts';
import type { Rows } from '../../src/fit/units.ts';
import type { Findings } from './findings.ts';
import type { Sweater } from './sweaters.ts';

/** Picks up row by row as the runs say; how many stitches lie on the needle then. */
export function pickUpAlong(
  edge: Rows,
  of: Gauge,
  band: Gauge,
  rule: CountRule,
  findings: Findings,
): number | undefined {
  const made = pickUp({ rows: edge, rowsPerCm: of.rows.perCm, stitchesPerCm: band.stitches.perCm, rule });
  if (made.kind === 'no such count') {
    findings.must(false, 'a band that no count fits');
    return undefined;
  }
  findings.meet(`picked up: ${made.between} between`);
  let [stitches, rows] = [0, 0];
  for (const { pick, times } of made.runs)
    for (let i = 0; i < times; i++) {
      stitches += pick + (made.between === 'a stitch more' ? 1 : 0);
      rows += pick + (made.between === 'a row skipped' ? 1 : 0);
    }
  findings.same(made.stitches, stitches, 'stitches picked up');
  findings.same(edge, rows, 'rows along which they are picked up');
  findings.near(made.edge, edge / of.rows.perCm, 'length of the edge');
  findings.near(made.band, (stitches - rule.edge) / band.stitches.perCm, 'length of the band');
  const byRatio = (edge * made.ratio.stitches) / made.ratio.rows;
  findings.must(Math.abs(made.byRatio - byRatio) <= 0.5 + 1e-9, 'stitches by the ratio alone');
  findings.states({ stitches, edge: made.edge, byRatio: made.byRatio }, made.workings);
  return stitches;
}

/** A front band of a cardigan over the whole front, with its buttonholes. */
export function knitBand(sweater: Sweater, frontRows: number, findings: Findings): void {
  findings.at('front band');
  const { multiple, buttons } = sweater.band;
  const rule: CountRule = { multiple, plus: multiple > 1 ? 1 : 0, edge: 2, parity: 'any' };
  const denser = sweater.band.stitches;
  const { stitches } = sweater.body;
  const gauge: Gauge = {
    ...sweater.body,
    stitches: { ...stitches, perCm: (stitches.perCm * denser) as typeof stitches.perCm },
  };
  const length = pickUpAlong(frontRows as Rows, sweater.body, gauge, rule, findings);
  if (length === undefined) return;
  const inset = Math.floor(3 * (sweater.toss[0] ?? 0)) + 1;
  const hole = 1 + Math.floor(3 * (sweater.toss[1] ?? 0));
  const ask = { unit: 'stitches', length, buttons, first: inset, last: inset, hole } as const;
  const placed = placeButtons(ask);
  findings.meet(`buttons: ${placed.kind}`);
  findings.workings(placed.workings);
  if (placed.kind === 'no room') {
    findings.must(placed.needed > length, `${placed.needed} stitches are needed and there are ${length}`);
    if (placed.most > 0)
      findings.same(
        'placed',
        placeButtons({ ...ask, buttons: placed.most }).kind,
        'the most buttons that go in',
      );
    return;
  }
  const band = Array<string>(length).fill('band');
  for (const { from, to } of placed.holes)
    for (let at = from; at <= to; at++) {
      findings.same('band', band[at - 1], 'what lies under a buttonhole');
      band[at - 1] = 'hole';
    }
  const plain = band
    .join(' ')
    .split(/(?: ?hole ?)+/)
    .map((run) => (run.trim() === '' ? 0 : run.trim().split(' ').length));
  findings.same(
    buttons * hole,
    band.filter((stitch) => stitch === 'hole').length,
    'stitches of all buttonholes',
  );
  findings.same([inset, ...placed.gaps].join(), plain.slice(0, -1).join(), 'stitches before each buttonhole');
  if (buttons > 1) findings.same(inset, plain.at(-1), 'stitches after the last buttonhole');
}
