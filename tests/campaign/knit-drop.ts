/** A drop shoulder: the body goes straight up, the sleeve begins with what is picked up along the whole armhole. */
import { dropShoulder } from '../../src/fit/drop-shoulder.ts';
import { type CountRule, type Gauge, widthOf } from '../../src/fit/gauge.ts';
import { cm, rows } from '../../src/fit/units.ts';
import { pickUpAlong } from './bands.ts';
import type { Findings } from './findings.ts';
import type { KnittedBody } from './knit-body.ts';
import { knitSleeve } from './knit-sleeve.ts';
import { flat } from './knit-upper.ts';
import type { Sweater } from './sweaters.ts';

export function knitDrop(sweater: Sweater, body: KnittedBody, findings: Findings): void {
  findings.at('drop shoulder');
  const gauge: Gauge = { ...sweater.body, worked: 'flat' };
  const [round, edge] = [sweater.body.worked === 'round', sweater.sleeves.worked === 'flat' ? 2 : 0];
  const across = round ? body.needle.count / 2 : body.needle.count - 2;
  const back = widthOf(across, gauge);
  const rule: CountRule = { multiple: 1, plus: 0, edge, parity: 'even' };
  const ask = {
    depth: cm(sweater.depth),
    back,
    crossBack: cm(back * (1 - 2 * sweater.loss)),
    upperArm: cm(sweater.upperArm * 1.1),
    body: gauge,
    sleeve: sweater.sleeves,
    rule,
  };
  const found = dropShoulder(ask);
  findings.meet(`drop shoulder: ${found.kind}`);
  const all = found.kind === 'drop shoulder' ? [found] : found.alternatives.map((way) => way.shoulder);
  for (const made of all) {
    const needle = flat(body.needle);
    const begun = needle.heights[0] ?? 0;
    needle.plain(made.armholeRows);
    findings.same(begun + made.armholeRows, needle.heights[0], 'rows to the shoulder');
    findings.near(made.depth, made.armholeRows / gauge.rows.perCm, 'armhole depth');
    findings.near(
      made.topWidth,
      (made.top - edge) / sweater.sleeves.stitches.perCm,
      'width of the sleeve top',
    );
    const off = Math.abs(made.topWidth - 2 * made.depth) * sweater.sleeves.stitches.perCm;
    findings.must(off <= 1 + 1e-6, `the sleeve top is ${off} stitches off twice the armhole`);
    findings.near(made.overhang, (back - ask.crossBack) / 2, 'overhang');
    const { armholeRows, depth, top, topWidth, overhang } = made;
    findings.states({ armholeRows, depth, top, topWidth, overhang }, made.workings);
    // The whole armhole is an edge of twice its rows.
    const picked = pickUpAlong(rows(2 * made.armholeRows), gauge, sweater.sleeves, rule, findings);
    findings.same(made.top, picked, 'stitches picked up for the sleeve');
    knitSleeve({ ...sweater, direction: 'down' }, made.top, findings);
  }
}
