/** Half way through a piece the gauge is counted again: what is said then of the rest is knitted too. */
import { type Gauge, type Rate, rateFrom } from '../../src/fit/gauge.ts';
import type { Piece } from '../../src/fit/outline.ts';
import { type RecheckAsk, recheck } from '../../src/fit/recheck.ts';
import type { Ahead, Shaped } from '../../src/fit/recheck-ahead.ts';
import { type Measure, TOLERANCE } from '../../src/fit/recheck-measures.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import type { Findings } from './findings.ts';
import type { Sweater } from './sweaters.ts';

/** `counts`: stitches after each row of the piece as it was knitted, those of its start first. */
export function knitRest(
  { check }: Sweater,
  piece: Piece,
  counts: readonly number[],
  gauge: Gauge,
  edge: number,
  findings: Findings,
): void {
  findings.at(`${piece.name}, half way`);
  const row = Math.floor(check.at * (counts.length - 1));
  const count = Math.max(10, (counts[row] ?? 0) + check.slip);
  const round = piece.worked === 'round';
  const shaped: Shaped = {
    perRow: round && piece.name === 'body' ? 4 : 2,
    carriers: round ? 'every row' : 'odd rows',
    edge,
  };
  const real = counted(gauge, check);
  const ask: RecheckAsk = {
    piece,
    planned: gauge,
    real,
    now: { row: rows(row), stitches: stitches(count) },
    shaped,
  };
  const found = recheck(ask);
  findings.meet(`half way: ${found.kind}`);
  findings.workings(found.workings);
  if (found.kind === 'on track') {
    holdMeasures(found.measures, piece, new Map(), ask, findings);
    return;
  }
  const rest = found.kind === 'mend ahead' ? found.rest : found.goOn.rest;
  const measures = found.kind === 'mend ahead' ? found.measures : found.goOn.measures;
  holdMeasures(measures, piece, knitAhead(rest, row, count, ask, findings), ask, findings);
  if (found.kind === 'mend ahead')
    findings.must(
      measures.every((m) => m.within),
      'mended, and yet off',
    );
  if (found.kind === 'mend ahead') findings.must(rest.possible, 'mended by what cannot be knitted');
  if (found.kind !== 'decide') return;
  const { ripBack } = found;
  findings.same(row - ripBack.from.row, ripBack.rows, 'rows to rip back');
  knitAhead(ripBack.rest, ripBack.from.row, ripBack.from.stitches, ask, findings);
}

/** The gauge as it really is, counted over 20 cm. */
function counted(gauge: Gauge, { stitches: wider, rows: taller }: Sweater['check']): Gauge {
  const rate = ({ perCm }: Rate, factor: number) =>
    rateFrom([{ count: perCm * factor * 20, span: cm(20), unit: 'cm' }]);
  return { ...gauge, stitches: rate(gauge.stitches, wider), rows: rate(gauge.rows, taller) };
}

/** Knits all sections of the rest; stitches and rows of each level, by its name. */
function knitAhead(
  rest: Ahead,
  row: number,
  count: number,
  { piece, shaped }: RecheckAsk,
  findings: Findings,
): ReadonlyMap<string, { readonly row: number; readonly stitches: number }> {
  const reached = new Map<string, { row: number; stitches: number }>();
  if (!rest.possible) {
    findings.must(
      rest.sections.some((section) => section.kind !== 'spaced' && section.alternatives.length > 0) ||
        rest.sections.every((section) => section.kind === 'spaced'),
      'a rest that cannot be knitted has no way out',
    );
    return reached;
  }
  const needle = Needle.castOn(count, piece.worked);
  // A flat piece stands before a wrong-side row after an odd number of rows.
  const before = piece.worked === 'flat' ? row % 2 : 0;
  if (before === 1) needle.finish();
  for (const [i, section] of rest.sections.entries()) {
    if (section.kind !== 'spaced') continue;
    for (const fault of findings.knit(() => knitSection(needle, section, piece.worked)) ?? [])
      findings.must(false, fault);
    findings.runs(section);
    const level = rest.levels[i];
    const knitted = { row: row + needle.log.length - before, stitches: needle.count };
    findings.same(level?.row, knitted.row, `rows to the ${level?.planned.name}`);
    findings.same(level?.stitches, knitted.stitches, `stitches at the ${level?.planned.name}`);
    if (level !== undefined) reached.set(level.planned.name, knitted);
  }
  if (shaped.carriers === 'odd rows') rightSide(needle, before, count, findings);
  return reached;
}

function rightSide(needle: Needle, before: number, count: number, findings: Findings): void {
  const counts = [count, ...needle.counts.slice(before)];
  for (const [i, { side }] of needle.log.slice(before).entries())
    findings.must(side === 'right side' || counts[i] === counts[i + 1], 'a wrong-side row is shaped');
}

/** Each measure at the gauge as it is, against the plan; levels that were knitted on to are measured as they were reached. */
function holdMeasures(
  measures: readonly Measure[],
  piece: Piece,
  reached: ReadonlyMap<string, { readonly row: number; readonly stitches: number }>,
  { planned, real, shaped: { edge } }: RecheckAsk,
  findings: Findings,
): void {
  for (const measure of measures) {
    const levels = piece.levels.filter((level) => level.name === measure.level);
    // A waist stands at two levels of one name: only what has a name of its own can be told apart.
    const [level] = levels;
    if (level === undefined || levels.length > 1) continue;
    const now = reached.get(measure.level) ?? level;
    const width = measure.of === 'width';
    const was = width ? (level.stitches - edge) / planned.stitches.perCm : level.row / planned.rows.perCm;
    const is = width ? (now.stitches - edge) / real.stitches.perCm : now.row / real.rows.perCm;
    findings.near(measure.planned, was, `planned ${measure.of} at the ${measure.level}`);
    if (!measure.knitted && reached.size === 0) continue;
    findings.near(measure.expected.expected, is, `${measure.of} at the ${measure.level}`);
    const allowed = width ? Math.max(TOLERANCE.leastWidth, was * TOLERANCE.shareOfWidth) : TOLERANCE.length;
    findings.same(
      Math.abs(is - was) <= allowed + 1e-9,
      measure.within,
      `${measure.of} at the ${measure.level} within`,
    );
  }
}
