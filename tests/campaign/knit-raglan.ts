/** Raglan lines, knitted over back, sleeves and front together; every round and every part counted. */
import type { Joined } from '../../src/fit/join.ts';
import { type RaglanAsk, type RaglanShape, raglan } from '../../src/fit/raglan.ts';
import { RAGLAN_PARTS } from '../../src/fit/raglan-shape.ts';
import { CARRIERS } from '../../src/fit/spacing.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { edgeOf } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { Sweater } from './sweaters.ts';
import { type KnittedTop, ORDER } from './yoke-top.ts';

/** On the joined needle where it is knitted up; on stitches cast on at the neck where there is none. */
export function knitRaglan(
  sweater: Sweater,
  joined: Joined,
  start: Needle | null,
  findings: Findings,
): KnittedTop | undefined {
  findings.at('raglan');
  const ask = askFor(sweater, joined);
  const made = raglan(ask);
  findings.meet(`raglan: ${made.kind === 'raglan' ? `neck ${made.neck.verdict}` : made.kind}`);
  if (made.kind === 'cannot')
    for (const { fault } of made.faults) findings.meet(`raglan fault: ${fault.kind}`);
  for (const { way, raglan: other } of made.alternatives) {
    findings.meet(`raglan, way out: ${way}`);
    holdRaglan(other, ask, castOnFor(other), findings);
    if (way === 'neck as wanted') findings.same('as wanted', other.neck.verdict, way);
  }
  const shape =
    made.kind === 'raglan' ? made : made.alternatives.find((way) => keeps(way.raglan, ask))?.raglan;
  if (shape === undefined) return undefined;
  const needle = start ?? castOnFor(shape);
  holdRaglan(shape, ask, needle, findings);
  const back = ask.direction === 'up' ? shape.lines.back.spaced.to : shape.lines.back.spaced.from;
  return { needle, rows: shape.rows, neck: shape.neck.stitches, centre: Math.floor(back / 2) };
}

function askFor(sweater: Sweater, joined: Joined): RaglanAsk {
  const { toss, body: gauge } = sweater;
  const part = (underarm: number, share: number) => {
    const near = Math.max(2, Math.round(underarm * share));
    const odd = (toss[3] ?? 0) < 0.08;
    return {
      underarm: stitches(underarm),
      neck: stitches((near - underarm) % 2 === 0 || odd ? near : near + 1),
    };
  };
  const share = 0.3 + 0.25 * (toss[4] ?? 0);
  const parts = {
    back: part(joined.back, share),
    front: part(joined.front, share * (0.85 + 0.15 * (toss[5] ?? 0))),
    sleeve: part(joined.sleeve, 0.35 * (toss[6] ?? 0)),
  };
  const around = (parts.back.neck + parts.front.neck + 2 * parts.sleeve.neck) / gauge.stitches.perCm;
  return {
    direction: sweater.direction,
    gauge,
    depth: cm(sweater.depth * 1.15),
    parts,
    carriers: CARRIERS[Math.floor(5 * (toss[7] ?? 0))] ?? 'every row',
    plain: rows(Math.floor(4 * (toss[8] ?? 0))),
    neckWanted: cm(around * (0.9 + 0.2 * (toss[9] ?? 0))),
  };
}

/** Whether it begins at the stitches that are there. */
function keeps(shape: RaglanShape, { direction, parts }: RaglanAsk): boolean {
  return RAGLAN_PARTS.every((part) => {
    const { from, to } = shape.lines[part].spaced;
    return (direction === 'up' ? from : to) === parts[part].underarm;
  });
}

function castOnFor({ lines }: RaglanShape): Needle {
  return Needle.castOn(
    ORDER.reduce((sum, part) => sum + lines[part].spaced.from, 0),
    'round',
  );
}

function holdRaglan(made: RaglanShape, ask: RaglanAsk, needle: Needle, findings: Findings): void {
  const begun = Math.max(...needle.heights);
  const counts = ORDER.map((part) => made.lines[part].spaced.from as number);
  const shaped = new Map(made.shaping.map((row) => [row.row as number, row]));
  for (let row = 1; row <= made.rows; row++) {
    const shaping = shaped.get(row);
    if (shaping === undefined) {
      needle.plain(1);
      continue;
    }
    findings.knit(() => needle.shaped({ at: placesOf(counts, shaping.change) }));
    for (const [i, part] of ORDER.entries()) counts[i] = (counts[i] ?? 0) + shaping.change[part];
    findings.same(shaping.after, needle.count, `stitches after round ${row}`);
    for (const [i, part] of ORDER.entries()) {
      const after = made.lines[part].spaced.shaping.find((s) => s.row === row)?.after;
      if (after !== undefined)
        findings.same(after, counts[i] ?? 0, `stitches of the ${part} after round ${row}`);
    }
  }
  const { stitches: rate, rows: rowRate } = ask.gauge;
  const neck = ask.direction === 'up' ? needle.count : castOnFor(made).count;
  findings.same(made.neck.stitches, neck, 'stitches at the neck');
  findings.near(made.neck.around, neck / rate.perCm, 'neck around');
  const off = neck / rate.perCm - ask.neckWanted;
  findings.must(Math.abs(made.neck.difference - off) < 1e-9, 'neck less neck wanted');
  findings.near(made.depth, made.rows / rowRate.perCm, 'yoke depth');
  for (const part of RAGLAN_PARTS) {
    const { spaced, events, edge } = made.lines[part];
    findings.runs(spaced);
    findings.same(spaced.to, counts[ORDER.indexOf(part)], `stitches of the ${part} at the end`);
    findings.near(edge, edgeOf(events, made.rows, rate.perCm, rowRate.perCm), `raglan edge of the ${part}`);
  }
  const tallest = Math.max(...needle.heights) - begun;
  findings.same(made.rows, tallest, 'rows of the yoke');
  const { around, difference } = made.neck;
  const edges = Object.fromEntries(
    RAGLAN_PARTS.map((part) => [`edge of the ${part}`, made.lines[part].edge]),
  );
  findings.states({ rows: made.rows, depth: made.depth, neck, around, difference, ...edges }, made.workings);
}

/** Each part is shaped at both its edges. */
function placesOf(counts: readonly number[], change: RaglanShape['shaping'][number]['change']) {
  return ORDER.flatMap((part, i) => {
    const from = counts.slice(0, i).reduce((sum, n) => sum + n, 0);
    const to = from + (counts[i] ?? 0);
    const each = change[part] / 2;
    if (each === 0) return [];
    return [
      { before: from, change: each },
      { before: each < 0 ? to - 2 : to, change: each },
    ];
  });
}
