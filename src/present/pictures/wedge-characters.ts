/** A wedge in plain characters: a line a short row, the first one lowest, seen from the right side. */
import type { TurnedWedge } from '../../fit/plan.ts';
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { extent } from './wedge-picture.ts';

/** Columns of a label on one side. */
const LABEL = 9;

export function wedgeCharacters(
  wedge: TurnedWedge,
  title: string,
  words: readonly string[],
  columns: number,
): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  const room = Math.min(60, wide - 2 * LABEL);
  const { low, high } = extent(wedge);
  const x = (boundary: number) => Math.round((room - 1) * (1 - (boundary - low) / Math.max(1, high - low)));
  const pairs = Array.from({ length: wedge.rows / 2 }, (_, i) => 2 * i + 1);
  const lines = pairs.map((row) => {
    const turn = (side: 'start' | 'end') =>
      wedge.turns.find((t) => t.side === side && (t.row === row || t.row === row + 1));
    const [left, right] = [turn('end'), turn('start')];
    const [from, to] = [x(left?.at ?? high), x(right?.at ?? low)];
    const cells = Array.from({ length: room }, (_, i) => (i < from || i > to ? ' ' : '='));
    const said = (t: typeof left) => (t === undefined ? '' : `${t.row}: ${t.stitches}`);
    return `${said(left).padEnd(LABEL)}${cells.join('')} ${said(right)}`;
  });
  return sheetOfCharacters([
    [...wrapColumns(title, wide), ...words.flatMap((w) => wrapColumns(w, wide))],
    lines.reverse(),
    wrapColumns(
      'Seen from the right side; read upwards. At each end: the short row, and the stitches from the marker at which it turns.',
      wide,
    ),
  ]);
}
