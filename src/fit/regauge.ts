/**
 * Another gauge than the pattern's: every count and every number of rows of one size worked out anew for the same
 * centimetres, so that the repeat fits, shaping at both sides stays even, and armhole and shoulders still add up.
 */
import type { Gauge } from './gauge.ts';
import type { Pattern, PatternSize } from './pattern.ts';
import { backLine, type CountFigure, type CountFigures, regaugedCounts } from './regauge-counts.ts';
import { type RowFigure, regaugedRows } from './regauge-rows.ts';
import { stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface Regauged {
  /** The size with all its counts and rows at the knitter's gauge. Finished measurements stay the pattern's. */
  readonly size: PatternSize;
  readonly counts: readonly CountFigure[];
  readonly rows: readonly RowFigure[];
  /** How bind-offs and decreases at the armhole came about. */
  readonly armhole: readonly WorkingLine[];
  readonly workings: readonly WorkingLine[];
}

/** Works one size of a pattern out for another gauge. Throws where the pattern does not have the size. */
export function regauge(pattern: Pattern, label: string, own: Gauge): Regauged {
  const size = pattern.sizes.find((s) => s.label === label);
  if (size === undefined) throw new RangeError(`${pattern.name} has no size '${label}'`);
  const figures = regaugedCounts({ pattern, size, own });
  const counts = Object.values(figures);
  const rowFigures = regaugedRows(pattern, size, own.rows.perCm);
  const armhole = armholeOf(pattern, size, figures, own);
  return {
    size: {
      label,
      finished: size.finished,
      counts: Object.fromEntries(counts.map((c) => [c.place, c.stitches])),
      ...(size.rows === undefined
        ? {}
        : { rows: Object.fromEntries(rowFigures.map((r) => [r.stretch, r.rows])) }),
      ...(armhole === undefined ? {} : { armhole: armhole.armhole }),
    },
    counts,
    rows: rowFigures,
    armhole: armhole?.workings ?? [],
    workings: [...counts, ...rowFigures].flatMap((f) => f.workings).concat(armhole?.workings ?? []),
  };
}

/** The bind-off keeps its width; decreases take what is then left between back and cross back. */
function armholeOf(pattern: Pattern, size: PatternSize, figures: CountFigures, own: Gauge) {
  if (size.armhole === undefined) return undefined;
  const { count, span } = pattern.gauge.stitches;
  const scaled = (what: string, stitchCount: number) =>
    workOut(
      `${what} at each side of the back`,
      'a * b / c',
      {
        a: quantity(`${what} at each side, pattern`, stitchCount, 'stitches'),
        b: quantity('own gauge', own.stitches.perCm, 'stitches/cm'),
        c: quantity('gauge of the pattern', count / span, 'stitches/cm'),
      },
      { unit: 'stitches', rounding: { to: 'whole' } },
    );
  const off = scaled('stitches bound off', size.armhole.boundOff);
  const [bust, cross] = [figures.bust?.stitches, figures['cross back']?.stitches];
  if (bust === undefined || cross === undefined) {
    const decreased = scaled('stitches decreased', size.armhole.decreased);
    return armholeFrom(off.result.value, decreased.result.value, [off, decreased]);
  }
  const back = backLine(bust, pattern);
  const side = workOut(
    'stitches to lose at each side of the back',
    '(a - b) / 2',
    { a: back.result, b: quantity('stitches at the cross back', cross, 'stitches') },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const left = workOut(
    'stitches decreased at each side of the back',
    'a - b',
    { a: side.result, b: off.result },
    { unit: 'stitches' },
  );
  const boundOff = Math.min(off.result.value, side.result.value);
  return armholeFrom(boundOff, side.result.value - boundOff, [off, back, side, left]);
}

function armholeFrom(boundOff: number, decreased: number, workings: readonly WorkingLine[]) {
  return { armhole: { boundOff: stitches(boundOff), decreased: stitches(decreased) }, workings };
}
