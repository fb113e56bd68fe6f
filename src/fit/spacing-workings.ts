/** The workings of a spacing: stitches to change, rows to share out, and the two intervals that come of them. */
import type { Run, SpacingAsk } from './spacing.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

/** Rows that may carry shaping lie at `base + step`, `base + 2 × step` … `last`. `base` is −1 where the row before counts. */
export interface Frame {
  readonly base: number;
  readonly step: number;
  readonly last: number;
}

export function explainSpacing(ask: SpacingAsk, frame: Frame, runs: readonly Run[]): WorkingLine[] {
  const [change, shapings] = changes(ask);
  if (runs.length === 0) {
    const plain = { a: quantity('rows of the section', ask.rows, 'rows') };
    return [change, shapings, workOut('rows to work plain', 'a', plain, { unit: 'rows' })];
  }
  const shared = sharedRows(frame);
  const after = {
    a: quantity('rows of the section', ask.rows, 'rows'),
    b: quantity('last shaping row', frame.last, 'rows'),
  };
  return [
    change,
    shapings,
    shared,
    ...intervals(shared.result, shapings.result, frame.step),
    workOut('plain rows after the last shaping row', 'a - b', after, { unit: 'rows' }),
    ...explainStart(frame.base, runs),
  ];
}

function changes(ask: SpacingAsk): [WorkingLine, WorkingLine] {
  const widening = ask.to >= ask.from;
  const counts = {
    a: quantity('stitches at the start', ask.from, 'stitches'),
    b: quantity('stitches at the end', ask.to, 'stitches'),
  };
  const change = workOut(
    widening ? 'stitches to gain' : 'stitches to lose',
    widening ? 'b - a' : 'a - b',
    counts,
    { unit: 'stitches' },
  );
  const each = { a: change.result, b: quantity('stitches a shaping row', ask.perRow, 'stitches') };
  return [change, workOut('shaping rows', 'a / b', each, { unit: 'times' })];
}

function sharedRows({ base, last }: Frame): WorkingLine {
  const end = quantity('last row that may carry shaping', last, 'rows');
  const label = 'rows from the first interval to the last shaping row';
  const given = { a: end, b: before(base) };
  return workOut(label, base < 0 ? 'a + b' : 'a - b', given, { unit: 'rows' });
}

/** What lies before the first interval: plain rows, or the row before the section where that counts in. */
function before(base: number): Quantity {
  return base < 0
    ? quantity('the row before the section', -base, 'rows')
    : quantity('plain rows before the first interval', base, 'rows');
}

/** On right-side rows alone, rows are shared out in pairs. */
function intervals(shared: Quantity, times: Quantity, step: number): WorkingLine[] {
  const pairs = step === 2;
  const shortest = workOut(
    pairs ? 'pairs of rows to a shorter interval' : 'rows to a shorter interval',
    pairs ? 'a / 2 / b' : 'a / b',
    { a: shared, b: times },
    { unit: pairs ? 'times' : 'rows', rounding: { to: 'whole down' } },
  );
  const rest = { a: shared, b: times, c: shortest.result };
  const longer = workOut('longer intervals', pairs ? 'a / 2 - b * c' : 'a - b * c', rest, { unit: 'times' });
  const shorter = workOut('shorter intervals', 'a - b', { a: times, b: longer.result }, { unit: 'times' });
  const short = workOut(
    'a shorter interval',
    pairs ? '2 * a' : 'a',
    { a: shortest.result },
    { unit: 'rows' },
  );
  if (longer.result.value === 0) return [shortest, longer, shorter, short];
  const stepped = { a: short.result, b: quantity('one step', step, 'rows') };
  return [shortest, longer, shorter, short, workOut('a longer interval', 'a + b', stepped, { unit: 'rows' })];
}

/** Where the first interval does not begin with the section: its first shaping row, and what comes before it. */
function explainStart(base: number, runs: readonly Run[]): WorkingLine[] {
  const [first] = runs;
  if (first === undefined || base === 0) return [];
  const given = { a: quantity('first interval', first.every, 'rows'), b: before(base) };
  const row = workOut('first shaping row', base < 0 ? 'a - b' : 'a + b', given, { unit: 'rows' });
  const itself = { a: row.result, b: quantity('itself', 1, 'rows') };
  const more = {
    a: quantity('shaping rows in the first run', first.times, 'times'),
    b: quantity('the first', 1, 'times'),
  };
  return [
    row,
    workOut('plain rows before it', 'a - b', itself, { unit: 'rows' }),
    workOut('shaping rows after it in the first run', 'a - b', more, { unit: 'times' }),
  ];
}
