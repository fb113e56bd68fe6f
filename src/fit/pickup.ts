/**
 * Stitches picked up along an edge of rows: the band must measure what the edge measures, so the two gauges give the
 * ratio. A straight edge is meant; a sloping one is longer than its rows and wants more (4 of 5 for 3 of 4, common
 * practice). Along bound-off or cast-on stitches one is picked up in each.
 */
import { type CountRule, type NoSuchCount, stitchesFor } from './gauge.ts';
import { type Cm, cm, type PerCm, type Rows, type Stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface PickUpAsk {
  /** Rows of the edge, and their gauge. */
  readonly rows: Rows;
  readonly rowsPerCm: PerCm;
  /** Gauge of the band that is knitted from the stitches picked up. */
  readonly stitchesPerCm: PerCm;
  /** What the band's count must fit, its rib for instance. */
  readonly rule: CountRule;
}

/** `stitches` in every `rows` rows. */
export interface Ratio {
  readonly stitches: number;
  readonly rows: number;
}

/** Picked up in turn: `pick` stitches in as many rows, then a row skipped (or one stitch more), `times` times. */
export interface PickRun {
  readonly pick: number;
  readonly times: number;
}

export interface PickedUp {
  readonly kind: 'picked up';
  readonly stitches: Stitches;
  /** Width of the band's stitches without edge stitches: to be compared with `edge`. */
  readonly band: Cm;
  readonly edge: Cm;
  readonly ratio: Ratio;
  /** What the ratio alone, kept up over the whole edge, would give. */
  readonly byRatio: number;
  /** Between the runs a row is skipped, or a stitch more is picked up between two rows. */
  readonly between: 'a row skipped' | 'a stitch more' | 'nothing';
  readonly runs: readonly PickRun[];
  readonly workings: readonly WorkingLine[];
}

export function pickUp(
  ask: PickUpAsk,
): PickedUp | { readonly kind: 'no such count'; readonly why: NoSuchCount } {
  const edge = workOut(
    'length of the edge',
    'a / b',
    { a: quantity('rows of the edge', ask.rows, 'rows'), b: quantity('rows', ask.rowsPerCm, 'rows/cm') },
    { unit: 'cm' },
  );
  const choice = stitchesFor(cm(edge.exact), ask.stitchesPerCm, ask.rule);
  if ('impossible' in choice) return { kind: 'no such count', why: choice };
  const count = workOut(
    'stitches to pick up',
    ask.rule.edge === 0 ? 'a * b' : 'a * b + e',
    {
      a: edge.result,
      b: quantity('stitches of the band', ask.stitchesPerCm, 'stitches/cm'),
      ...(ask.rule.edge === 0 ? {} : { e: quantity('edge stitches', ask.rule.edge, 'stitches') }),
    },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: choice.step, plus: choice.start } },
  );
  const share = workOut(
    'stitches to a row',
    'a / b',
    {
      a: quantity('stitches of the band', ask.stitchesPerCm, 'stitches/cm'),
      b: quantity('rows', ask.rowsPerCm, 'rows/cm'),
    },
    { unit: 'ratio' },
  );
  const ratio = smallRatio(share.exact);
  const kept = workOut(
    'stitches by the ratio alone',
    'a * p / q',
    {
      a: quantity('rows of the edge', ask.rows, 'rows'),
      p: quantity('stitches of the ratio', ratio.stitches, 'stitches'),
      q: quantity('rows of the ratio', ratio.rows, 'rows'),
    },
    { unit: 'stitches', rounding: { to: 'whole' } },
  );
  return {
    kind: 'picked up',
    stitches: choice.chosen,
    band: choice.width,
    edge: cm(edge.exact),
    ratio,
    byRatio: kept.result.value,
    ...runsFor(choice.chosen, ask.rows),
    workings: [edge, count, share, kept],
  };
}

/** A ratio is near enough within a fortieth: half a centimetre on an edge of 20, which is not seen (common practice). */
export const RATIO_WITHIN = 1 / 40;
/** A longer count than this is lost track of. */
const MOST_ROWS = 12;

/** The ratio of the smallest whole numbers that is near enough; where none is, the nearest. */
export function smallRatio(share: number): Ratio {
  const tried = Array.from({ length: MOST_ROWS }, (_, i) => ({
    stitches: Math.max(1, Math.round(share * (i + 1))),
    rows: i + 1,
  }));
  const off = (r: Ratio) => Math.abs(r.stitches / r.rows / share - 1);
  const best = tried.reduce((a, b) => (off(b) < off(a) - 1e-12 ? b : a));
  return tried.find((r) => off(r) <= RATIO_WITHIN) ?? best;
}

/** The exact count shared out over the rows: stretches between skipped rows differ by at most one. */
export function runsFor(count: number, edge: number): Pick<PickedUp, 'between' | 'runs'> {
  if (count === edge) return { between: 'nothing', runs: [{ pick: count, times: 1 }] };
  const between = count < edge ? 'a row skipped' : 'a stitch more';
  const breaks = Math.abs(edge - count);
  const shared = Math.min(count, edge);
  const shorter = Math.floor(shared / breaks);
  const longer = shared - shorter * breaks;
  const runs = [
    { pick: shorter + 1, times: longer },
    { pick: shorter, times: breaks - longer },
  ].filter((run) => run.times > 0);
  return { between, runs };
}
