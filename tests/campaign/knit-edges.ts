/** Edges, divided fronts, short rows and raglan lines of a plan, knitted where they lie. */
import type { EdgeSchedule, Instruction, TurnedWedge } from '../../src/fit/plan.ts';
import { knitEdgesOn } from '../simulator/edges.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { copied, type OnNeedle, type Place, rowsOf } from './bench.ts';
import { type Knitting, startOf } from './knitting.ts';

/** Beside darts that run up and down the front has their stitches more, which the counts of the body leave out. */
export function aside(knitting: Knitting, place: Place, wedge: TurnedWedge): boolean {
  const added = asideOf(knitting, wedge);
  if (added === 0) return false;
  const wide = Needle.castOn(wedge.needle, wedge.worked);
  shortRows(knitting, { needle: wide, below: 0, whole: true }, wedge);
  const on = startOf(knitting, place, wedge.needle - added, wedge.worked);
  on.needle.plain(wedge.closing.ordinaryRows + (wedge.firstRow === 'wrong side' ? 1 : 0));
  return true;
}

/** Stitches that darts have added where these short rows lie. */
export function asideOf({ bench }: Knitting, wedge: TurnedWedge): number {
  const darts = bench.at('darts');
  if (darts === undefined || wedge.purpose !== 'bust dart') return 0;
  const least = bench.dartFront ?? darts.needle.count;
  return Math.max(darts.needle.count, ...darts.needle.counts) - least;
}

/** Every stitch grows by the rows that are stated where the wedge is deepest and beside it. */
export function shortRows({ bench, printed, findings }: Knitting, on: OnNeedle, wedge: TurnedWedge): void {
  const { needle } = on;
  const before = needle.heights;
  const rows = rowsOf(on);
  knitWedge(needle, wedge);
  const beside = wedge.closing.ordinaryRows + (wedge.firstRow === 'wrong side' ? 1 : 0);
  const grown = needle.heights.map((height, i) => height - (before[i] ?? 0));
  findings.same(beside, Math.min(...grown), 'rows beside short rows');
  findings.same(beside + wedge.rows, Math.max(...grown), 'rows of short rows where they are deepest');
  findings.near(wedge.depth, wedge.rows / printed.rowsPerCm, 'depth of short rows');
  bench.lower(on, rowsOf(on) - rows - beside);
}

/** Edges row by row; the dividing row of a front is the first of each side, and may decrease at its armhole. */
export function edges(knitting: Knitting, { from, to, rows, events }: EdgeSchedule, place: Place): void {
  const { bench, findings } = knitting;
  const there = bench.at(place);
  if (place === 'sleeve' && there !== undefined) bench.put(place, copied(there, 'flat'));
  const first = place === 'first side' || place === 'last side' ? bench.atEdges : 0;
  const on = startOf(knitting, place, from + first, 'flat');
  findings.same('right side', on.needle.next.side, 'the side of row 1');
  const edge = place === 'first side' ? 'right' : 'left';
  const dividing =
    first === 0 ? [] : [{ row: 1, edge, by: 'decrease', change: -first, after: from } as const];
  knitEdgesOn(on.needle, [...dividing, ...events], rows);
  findings.same(to, on.needle.count, 'stitches at the end of an edge');
  if (first > 0) bench.atEdges = place === 'last side' ? first : 0;
}

/** The dividing row is row 1 of both sides; the side that it knits last stays on the needle. */
export function divide(
  knitting: Knitting,
  { first, bindOff, last, atEdges }: Extract<Instruction, { do: 'divide' }>,
  place: Place,
): void {
  const { bench, findings } = knitting;
  const on = startOf(knitting, place, first + bindOff + last, 'flat');
  findings.same('right side', on.needle.next.side, 'the side of the dividing row');
  const tried = copied(on, 'flat').needle.knit(first).bindOff(bindOff).finish();
  findings.same(first + last, tried.count, 'stitches beside the middle');
  const all = copied(on, 'flat');
  const rest = all.needle.takeOff(first, all.needle.count);
  const other = rest.takeOff(bindOff, rest.count);
  bench.atEdges = atEdges;
  bench.put('first side', { ...all, below: rowsOf(on) });
  bench.put('last side', { ...all, needle: other, below: rowsOf(on) });
}

/** Each part on a needle of its own, shaped at both its edges; all together have the stitches that are stated. */
export function raglan(
  { bench, findings }: Knitting,
  { lines, shaping, rows, from, to }: Extract<Instruction, { do: 'shape raglan' }>['raglan'],
  worked: 'flat' | 'round',
): void {
  findings.same(from, bench.at('yoke')?.needle.count, 'stitches of the yoke');
  const parts = (['back', 'front', 'sleeve'] as const).map((part) => {
    const spaced = lines[part];
    findings.runs(spaced);
    const needle = Needle.castOn(spaced.from, 'flat');
    for (let row = 1; row <= rows; row++) {
      const change = shaping.find((one) => one.row === row)?.change[part] ?? 0;
      needle.shaped({ start: change / 2, end: change / 2 });
      const after = spaced.shaping.find((one) => one.row === row)?.after;
      if (after !== undefined) findings.same(after, needle.count, `${part} after row ${row}`);
    }
    findings.same(spaced.to, needle.count, `${part} at the end`);
    return needle;
  });
  for (const { row, after } of shaping) {
    const [back, front, sleeve] = parts.map((needle) => needle.counts[row - 1] ?? 0);
    findings.same(after, (back ?? 0) + (front ?? 0) + 2 * (sleeve ?? 0), `all stitches after row ${row}`);
  }
  const [back, front, sleeve] = parts;
  if (back === undefined || front === undefined || sleeve === undefined) return;
  const yoke = Needle.join([back, sleeve, front, sleeve], worked);
  findings.same(to, yoke.count, 'stitches at the end of the yoke');
  bench.put('yoke', { needle: yoke, below: rows, whole: true });
}
