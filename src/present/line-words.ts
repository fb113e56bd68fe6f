/** A shaping line laid out in rows, in words. */
import type { Instruction } from '../fit/plan.ts';
import { formatDecimal } from '../fit/units.ts';
import type { Worked } from '../fit/words.ts';

type ShapeRows = Extract<Instruction, { do: 'shape rows' }>;

/** 'Each decreases 2 stitches.' Nothing where the line does not say, or where rows differ. */
export function wordEach({ shaping }: ShapeRows): string[] {
  const change = alike(shaping);
  if (change === null || change === 0) return [];
  const by = Math.abs(change);
  return [`Each ${change < 0 ? 'decreases' : 'increases'} ${by} ${by === 1 ? 'stitch' : 'stitches'}.`];
}

/** 'Rows that shape, with the count after each: 6 (50), 12 (48).' Where rows differ, the change stands with each. */
export function wordShapedRows(line: ShapeRows, worked: Worked): string {
  const word = worked === 'round' ? 'Rounds' : 'Rows';
  const each = alike(line.shaping) === null && line.shaping.some((s) => s.change !== null);
  const counted = line.shaping.some((s) => s.after !== null);
  const title = [each ? 'the change' : '', counted ? 'the count after each' : ''].filter((t) => t !== '');
  const rows = line.shaping.map(({ row, change, after }) => {
    const beside = [each && change !== null ? signed(change) : '', after === null ? '' : String(after)];
    const shown = beside.filter((t) => t !== '').join(', ');
    return shown === '' ? String(row) : `${row} (${shown})`;
  });
  return `${word} that shape${title.length === 0 ? '' : `, with ${title.join(' and ')}`}: ${rows.join(', ')}.`;
}

/** What every row changes, where all change the same; else null. */
function alike(shaping: ShapeRows['shaping']): number | null {
  const [first] = shaping;
  if (first === undefined) return null;
  return shaping.every((s) => s.change === first.change) ? first.change : null;
}

function signed(change: number): string {
  return change > 0 ? `+${change}` : formatDecimal(change, 0);
}
