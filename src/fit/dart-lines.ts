/** Where a waist's dart lines lie on their piece, level by level: for drawings. */
import { type BodyShaping, perBodyRow, toDartLine } from './body-shaping.ts';
import { type Rows, rows } from './units.ts';

export interface DartPoint {
  /** Rows from the start of the piece. */
  readonly row: Rows;
  /** Stitches from the middle of front or back to the line on either side of it; may end in a half. */
  readonly fromMiddle: number;
}

/** From the first shaped section to the last, in the order of knitting; none where the sides are shaped. */
export function dartPoints({ ask, sections }: BodyShaping): readonly DartPoint[] {
  const first = sections.findIndex(({ spacing }) => spacing !== null);
  const last = sections.findLastIndex(({ spacing }) => spacing !== null);
  const begun = sections[first]?.from;
  if (ask.lines === undefined || ask.lines === 'sides' || begun === undefined) return [];
  const half = ask.gauge.worked === 'round' ? begun / 4 : (begun - ask.edge) / 2;
  const begins = half - toDartLine(begun, ask).result.value;
  const at = (row: number, count: number): DartPoint => ({
    row: rows(row),
    fromMiddle: begins - (begun - count) / perBodyRow(ask.gauge, ask.lines),
  });
  const ends = sections.map((_, i) =>
    sections.slice(0, i + 1).reduce((sum, { stretch }) => sum + stretch.rows, 0),
  );
  const darted = sections.slice(first, last + 1);
  return [at(ends[first - 1] ?? 0, begun), ...darted.map(({ to }, i) => at(ends[first + i] ?? 0, to))];
}
