/** The workings of a spread row: every figure that it states, from the counts that were asked for. */
import type { Ends, Stretches } from './stretches.ts';
import type { Worked } from './words.ts';
import { type Quantity, type QuantityUnit, quantity, type WorkingLine, workOut } from './working.ts';

/** The counts that were asked for. */
export interface SpreadCounts {
  readonly before: number;
  /** Gained (positive) or lost (negative). */
  readonly change: number;
  readonly edge: number;
  readonly repeat: number;
  /** Stitches that one change takes, and by how many it alters the count. */
  readonly takes: number;
  readonly each: number;
  readonly worked: Worked;
}

export interface SpreadFigures extends SpreadCounts {
  readonly ends: Ends;
  readonly laid: Stretches;
}

export function explainSpread(figures: SpreadFigures): readonly WorkingLine[] {
  const { change, each, laid } = figures;
  const before = quantity('stitches on the needle', figures.before, 'stitches');
  const altered = quantity(
    change < 0 ? 'stitches to lose' : 'stitches to gain',
    Math.abs(change),
    'stitches',
  );
  const after = workOut(
    'stitches after the row',
    change < 0 ? 'a - b' : 'a + b',
    { a: before, b: altered },
    { unit: 'stitches' },
  );
  if (change === 0) return [after];
  const inner = betweenEdges(figures, before);
  const changes = workOut(
    'changes in the row',
    'a / b',
    { a: altered, b: quantity('stitches by which a change alters the count', each, 'stitches') },
    { unit: 'times' },
  );
  const interval = workOut(
    'stitches to a change',
    'a / b',
    { a: inner.result, b: changes.result },
    { unit: 'stitches' },
  );
  const units = toShare(figures, inner.result, changes.result);
  const ends = explainEnds(figures, units.result, changes.result);
  return [
    ...(figures.edge > 0 ? [inner] : []),
    changes,
    interval,
    units,
    ...ends,
    ...explainShared(figures, laid, ends.at(-1)?.result ?? units.result, changes.result),
    after,
  ];
}

function betweenEdges({ edge }: SpreadFigures, before: Quantity): WorkingLine {
  const given = { a: before, b: quantity('edge stitches on each side', edge, 'stitches') };
  return workOut('stitches between the edges', 'a - 2 * b', given, { unit: 'stitches' });
}

/** What is shared out: plain stitches, or whole repeats. */
function toShare({ repeat, takes }: SpreadFigures, inner: Quantity, changes: Quantity): WorkingLine {
  if (repeat > 1) {
    const given = { a: inner, b: quantity('stitches of a repeat', repeat, 'stitches') };
    return workOut('pattern repeats', 'a / b', given, { unit: 'times' });
  }
  const given = { a: inner, b: changes, c: quantity('stitches that a change takes', takes, 'stitches') };
  return workOut('plain stitches', 'a - b * c', given, { unit: 'stitches' });
}

/** The two ends of a flat row and, last, what lies between them. None where the ends are stretches like the others. */
function explainEnds(figures: SpreadFigures, units: Quantity, changes: Quantity): WorkingLine[] {
  const { laid, repeat } = figures;
  if (laid.ends === null) return [];
  const { first, last } = laid.ends;
  const unit: QuantityUnit = repeat > 1 ? 'times' : 'stitches';
  const what = repeat > 1 ? 'repeats' : 'plain stitches';
  const start = firstEnd(figures, first, `${what} before the first change`, unit, { a: units, b: changes });
  const more = quantity('more than before the first', last - first, unit);
  const end = workOut(`${what} after the last change`, 'a + b', { a: start.result, b: more }, { unit });
  const given = { a: units, b: start.result, c: end.result };
  return [start, end, workOut(`${what} between the changes`, 'a - b - c', given, { unit })];
}

function firstEnd(
  { ends, laid }: SpreadFigures,
  first: number,
  label: string,
  unit: QuantityUnit,
  given: { a: Quantity; b: Quantity },
): WorkingLine {
  const fixed = workOut(label, 'a', { a: quantity('fewest at the edge', first, unit) }, { unit });
  const halved = ends === 'half' || given.b.value === 1;
  if (!halved && ends === 'none') return fixed;
  const uneven = laid.symmetry === 'last end one longer';
  const rounding = { to: uneven || !halved ? 'whole down' : 'whole' } as const;
  const shared = workOut(label, halved ? 'a / b / 2' : 'a / (b + 1)', given, { unit, rounding });
  return shared.result.value === first ? shared : fixed;
}

function explainShared(
  { worked, repeat, takes }: SpreadFigures,
  { shared, ends }: Stretches,
  units: Quantity,
  changes: Quantity,
): WorkingLine[] {
  if (shared.stretches === 0) return [];
  const unit: QuantityUnit = repeat > 1 ? 'times' : 'stitches';
  const what = repeat > 1 ? 'repeats' : 'plain stitches';
  const formula = worked === 'round' ? 'a' : ends === null ? 'a + 1' : 'a - 1';
  const stretches = workOut('stretches', formula, { a: changes }, { unit: 'times' });
  const short = workOut(
    `${what} of a shorter stretch`,
    'a / b',
    { a: units, b: stretches.result },
    { unit, rounding: { to: 'whole down' } },
  );
  const longer = workOut(
    'longer stretches',
    'a - b * c',
    { a: units, b: short.result, c: stretches.result },
    { unit: 'times' },
  );
  const shorter = workOut(
    'shorter stretches',
    'a - b',
    { a: stretches.result, b: longer.result },
    { unit: 'times' },
  );
  const long = workOut(`${what} of a longer stretch`, 'a + 1', { a: short.result }, { unit });
  const both = [short, ...(shared.longer > 0 ? [long] : [])];
  const inStitches = both.map((line) => stretchInStitches(line, repeat, takes));
  return [stretches, longer, shorter, ...both, ...(repeat > 1 ? inStitches : [])];
}

/** The last stitches of a repeat are those that its change takes. */
function stretchInStitches(line: WorkingLine, repeat: number, takes: number): WorkingLine {
  const given = {
    a: line.result,
    b: quantity('stitches of a repeat', repeat, 'stitches'),
    c: quantity('stitches that a change takes', takes, 'stitches'),
  };
  return workOut(line.label.replace('repeats', 'plain stitches'), 'a * b - c', given, { unit: 'stitches' });
}

/** The count after the row, the changes asked for, the most that one row holds, and the stitches over after whole repeats. */
export function explainFault(counts: SpreadCounts): readonly WorkingLine[] {
  const before = quantity('stitches on the needle', counts.before, 'stitches');
  const change = quantity('stitches to gain (negative: to lose)', counts.change, 'stitches');
  const after = workOut('stitches after the row', 'a + b', { a: before, b: change }, { unit: 'stitches' });
  const altered = quantity('stitches to gain or lose', Math.abs(counts.change), 'stitches');
  const each = quantity('stitches by which a change alters the count', counts.each, 'stitches');
  const asked = workOut('changes asked for', 'a / b', { a: altered, b: each }, { unit: 'times' });
  const edge = quantity('edge stitches on each side', counts.edge, 'stitches');
  const inner = workOut(
    'stitches between the edges',
    'a - 2 * b',
    { a: before, b: edge },
    { unit: 'stitches' },
  );
  return [after, asked, inner, ...explainMost(counts, inner.result)];
}

/** Changes between stitches or repeats need one on either side in a flat row; others need the stitches that they take. */
function explainMost({ repeat, takes, worked }: SpreadCounts, inner: Quantity): WorkingLine[] {
  const between = repeat > 1 || takes === 0;
  const per = between
    ? quantity('stitches of a repeat', repeat, 'stitches')
    : quantity('stitches that a change takes', takes, 'stitches');
  const places = workOut(
    between ? 'stitches or repeats to place changes between' : 'most changes in one row',
    'a / b',
    { a: inner, b: per },
    { unit: 'times', rounding: { to: 'whole down' } },
  );
  const over = workOut(
    'stitches over',
    'a - b * c',
    { a: inner, b: places.result, c: per },
    { unit: 'stitches' },
  );
  const ends = quantity('less at the edges of a flat row', worked === 'flat' ? 1 : 0, 'times');
  const most = workOut('most changes in one row', 'a - b', { a: places.result, b: ends }, { unit: 'times' });
  return [places, ...(repeat > 1 ? [over] : []), ...(between ? [most] : [])];
}
