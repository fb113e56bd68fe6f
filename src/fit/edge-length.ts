/**
 * The length of a shaped edge in centimetres at the knitter's gauge, along the stitches as they are knitted.
 * A change in a row narrows that row, so its corner lies at the top of the row before. The edge runs from corner to
 * corner: a bind-off in the first row lies flat, a step or a decrease is a slope over the rows since the corner before
 * it, the rows after the last corner stand upright.
 *
 *        │   upright: rows / (rows per cm)
 *       ╱    slope: the root of (stitches / per cm)² + (rows / per cm)²
 *   ___╱     flat: stitches / (stitches per cm)
 *
 * Measured at the right edge. The left edge lies one row higher where bind-offs take turns; that row is part of the
 * side seam, on the sleeve as on the body, and the two edges count as equal.
 */
import type { EdgeEvent } from './edge-shaping.ts';
import type { Gauge } from './gauge.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** So many equal pieces of the edge, one after another. */
export interface Leg {
  readonly stitches: Stitches;
  readonly rows: Rows;
  readonly times: number;
}

export interface EdgeLength {
  readonly length: Cm;
  readonly legs: readonly Leg[];
  /** One line a leg, then their sum. */
  readonly workings: readonly WorkingLine[];
}

/** The length of the right edge of a section of so many rows. */
export function edgeLength(
  label: string,
  events: readonly EdgeEvent[],
  sectionRows: Rows,
  gauge: Gauge,
): EdgeLength {
  const found = legs(events, sectionRows);
  const lines = found.map((leg) => measure(label, leg, gauge));
  const given = Object.fromEntries(lines.map((line, i) => [`e${i + 1}`, line.result]));
  const total = workOut(label, Object.keys(given).join(' + ') || '0', given, { unit: 'cm' });
  return { length: cm(total.result.value), legs: found, workings: [...lines, total] };
}

/** The pieces between the corners of the right edge, equal neighbours taken together. */
export function legs(events: readonly EdgeEvent[], sectionRows: Rows): readonly Leg[] {
  const found: { stitches: Stitches; rows: Rows; times: number }[] = [];
  const add = (across: number, up: number) => {
    const last = found.at(-1);
    if (last?.stitches === across && last.rows === up) last.times += 1;
    else if (across > 0 || up > 0) found.push({ stitches: stitches(across), rows: rows(up), times: 1 });
  };
  let height = 0;
  for (const event of events) {
    if (event.edge === 'left') continue;
    add(Math.abs(event.change), event.row - 1 - height);
    height = event.row - 1;
  }
  add(0, sectionRows - height);
  return found;
}

function measure(label: string, leg: Leg, gauge: Gauge): WorkingLine {
  const across = {
    a: quantity('stitches', leg.stitches, 'stitches'),
    b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
  };
  const up = {
    c: quantity('rows', leg.rows, 'rows'),
    d: quantity('rows', gauge.rows.perCm, 'rows/cm'),
  };
  const times = leg.times === 1 ? {} : { n: quantity('times', leg.times, 'times') };
  const often = leg.times === 1 ? '' : ' * n';
  if (leg.rows === 0)
    return workOut(`${label}, flat`, `a / b${often}`, { ...across, ...times }, { unit: 'cm' });
  if (leg.stitches === 0)
    return workOut(`${label}, upright`, `c / d${often}`, { ...up, ...times }, { unit: 'cm' });
  const slope = `√((a / b) * (a / b) + (c / d) * (c / d))${often}`;
  return workOut(`${label}, sloping`, slope, { ...across, ...up, ...times }, { unit: 'cm' });
}
