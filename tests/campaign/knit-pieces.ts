/** A body in pieces whose waist lies in darts of the back alone: both pieces knitted, and measured together. */
import { type PiecesAsk, shapePieces } from '../../src/fit/body-pieces.ts';
import { piecesPart } from '../../src/fit/body-pieces-steps.ts';
import type { Part } from '../../src/fit/plan.ts';
import { otherWaists } from '../../src/fit/waist-ways.ts';
import type { Findings } from './findings.ts';
import { bodyAskFor, outlined } from './knit-body.ts';
import { type Fabric, knitPart } from './knit-plan.ts';
import type { Sweater } from './sweaters.ts';

export function knitBackDarts(sweater: Sweater, bust: number, findings: Findings): void {
  const { waist, ...asked } = bodyAskFor(sweater, bust);
  if (asked.gauge.worked === 'round' || waist === null) return;
  findings.at('darts in the back alone');
  const ask: PiecesAsk = { ...asked, waist };
  const made = shapePieces(ask);
  if (made.kind === 'cannot') {
    findings.meet(`darts in the back alone: ${made.why}`);
    if (made.why === 'too few rows' || made.why === 'darts meet')
      findings.workings(otherWaists({ ...ask, lines: 'back darts' }, null).workings);
    return;
  }
  const part = piecesPart(made, null);
  const fabric: Fabric = { gauge: ask.gauge, edge: ask.edge, pieces: 2 };
  const [back, front] = (['back', 'front'] as const).map((name) => knitOne(part, name, fabric, findings));
  if (!findings.must(back !== undefined && front !== undefined, 'a piece that is not told to its end'))
    return;
  if (back === undefined || front === undefined) return;
  findings.meet('darts in the back alone knitted');
  findings.same(back.length, front.length, 'rows of back and front');
  const row = made.atWaist.workings[0]?.result.value ?? 0;
  const lower = ask.direction === 'up' ? 0 : back.length - 1;
  const around = (at: number) =>
    ((back[at] ?? 0) + (front[at] ?? 0) - 2 * ask.edge) / ask.gauge.stitches.perCm;
  const measured = {
    waist: around(row),
    'lower edge': around(lower),
    bust: around(back.length - 1 - lower),
    'body, lower edge to underarm': (back.length - 1) / ask.gauge.rows.perCm,
  };
  for (const [name, found] of Object.entries(measured)) {
    const finished = part.finished.find((one) => one.name === name);
    findings.near(finished?.range.expected ?? Number.NaN, found, `finished ${name}`);
    findings.workings(finished?.workings ?? []);
  }
}

/** Stitches before the first row and after each. */
function knitOne(
  { steps, pieces }: Part,
  name: 'back' | 'front',
  fabric: Fabric,
  findings: Findings,
): readonly number[] | undefined {
  const own = { steps: steps.filter(({ piece }) => piece === name), finished: [], pieces: [] };
  const knitted = knitPart(own, fabric, findings);
  const change = pieces.find(({ after }) => after.name === name);
  const begun = change?.after.levels[0]?.stitches;
  if (knitted === undefined || knitted.stopped || change === undefined || begun === undefined)
    return undefined;
  outlined(change, knitted.needle, begun, findings);
  return [begun, ...knitted.needle.counts];
}
