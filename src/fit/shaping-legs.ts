/** The clauses of a shaping line laid out as rows, under one choice of how the trade's wording is read. */
import { type Clause, type Effect, type Line, type Often, Unreadable } from './shaping-clause.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

export interface Choice {
  /** Where the first shaping row falls. 'As named' where the line leaves no doubt. */
  readonly first: 'at the end of the interval' | 'on the next row' | 'as named';
  /** Whether the times stated include the row named before them. */
  readonly counting: 'after the first row' | 'with the first row' | 'as named';
}

export interface Needle {
  readonly start: number | undefined;
  /** +1 where the counts stated say that stitches are gained, −1 where lost, 0 where they do not say. */
  readonly direction: number;
  readonly perRow: number | undefined;
}

/** One clause as rows. */
export interface Leg {
  /** Shaping rows, counted from the start of the line. */
  readonly rows: readonly number[];
  /** Row that is worked when the leg is over. */
  readonly end: number;
  /** Stitches gained or (negative) lost on each; undefined where not known. */
  readonly change: number | undefined;
  /** The rows that the leg takes, as terms of a sum; `anew` where it names a row from the start of the line. */
  readonly terms: readonly Term[];
  readonly anew: boolean;
}

/** `rows × times`, or rows alone. */
interface Term {
  readonly name: string;
  readonly rows: number;
  readonly times?: number;
}

/** Lays a line out. Throws `Unreadable` where a count is needed and missing, or cannot be reached. */
export function legsOf(line: Line, choice: Choice, needle: Needle): readonly Leg[] {
  const legs: Leg[] = [];
  let at = 0;
  let shaped = 0;
  let count = needle.start;
  for (const clause of line.clauses) {
    const change = clause.kind === 'plain' ? 0 : changeOf(clause.effect, needle);
    const sooner = legs.length === 0 && choice.first === 'on the next row' && !line.goesOn;
    const leg = legOf(clause, { at, shaped, count, change, perRow: needle.perRow, sooner, choice });
    legs.push(leg);
    at = leg.end;
    shaped += leg.rows.length;
    count =
      count === undefined || leg.change === undefined ? undefined : count + leg.rows.length * leg.change;
  }
  return legs;
}

interface Here {
  /** Row that was worked last. */
  readonly at: number;
  /** Shaping rows so far. */
  readonly shaped: number;
  readonly count: number | undefined;
  readonly change: number | undefined;
  readonly perRow: number | undefined;
  /** The first interval shrinks to one row. */
  readonly sooner: boolean;
  readonly choice: Choice;
}

function legOf(clause: Clause, here: Here): Leg {
  switch (clause.kind) {
    case 'plain':
      return { rows: [], end: here.at + clause.rows, change: 0, terms: [plain(clause.rows)], anew: false };
    case 'next': {
      const next = Array.from({ length: clause.rows }, (_, i) => here.at + 1 + i);
      const terms = [{ name: 'rows in succession', rows: clause.rows }];
      return { rows: next, end: here.at + clause.rows, change: here.change, terms, anew: false };
    }
    case 'row':
      if (clause.row <= here.at) throw new Unreadable('rows run backward', `${clause.row}`);
      return {
        rows: [clause.row],
        end: clause.row,
        change: here.change,
        terms: [{ name: 'row of that number', rows: clause.row }],
        anew: true,
      };
    case 'run':
      return runOf(clause, here);
    default:
      return clause satisfies never;
  }
}

function runOf(clause: Extract<Clause, { kind: 'run' }>, here: Here): Leg {
  const change = directed(clause, here);
  const times = timesNeeded(clause.often, clause.every, { ...here, change });
  const intervals = Array.from({ length: times }, (_, i) =>
    here.sooner && i === 0 ? 1 : (clause.every[i % clause.every.length] ?? 1),
  );
  let row = here.at;
  const worked = intervals.map((interval) => {
    row += interval;
    return row;
  });
  const terms = [...new Set(intervals)].map((interval) => ({
    name: 'interval',
    rows: interval,
    times: intervals.filter((i) => i === interval).length,
  }));
  const left = clause.often.count === 'within' ? Math.max(0, clause.often.rows - row) : 0;
  const after = left === 0 ? [] : [plain(left)];
  return { rows: worked, end: row + left, change, terms: [...terms, ...after], anew: false };
}

function plain(count: number): Term {
  return { name: 'plain rows', rows: count };
}

/** 'To 74 sts' says itself which way the stitches go. */
function directed({ often, effect }: Extract<Clause, { kind: 'run' }>, here: Here): number | undefined {
  if (often.count !== 'until' || here.count === undefined || here.change !== undefined) return here.change;
  const perRow = perRowOf(effect, here);
  if (perRow === undefined) return undefined;
  return Math.sign(often.stitches - here.count) * perRow;
}

function timesNeeded(often: Often, every: readonly number[], here: Here): number {
  switch (often.count) {
    case 'times':
      return often.times;
    case 'times, first perhaps counted in':
      return here.choice.counting === 'with the first row'
        ? atLeastNought(often.times - here.shaped, often.times)
        : often.times;
    case 'in all':
      return atLeastNought(often.times - here.shaped, often.times);
    case 'within':
      return Math.floor((often.rows - here.at) / (every[0] ?? 1));
    case 'until':
      return timesUntil(often.stitches, here);
    default:
      return often satisfies never;
  }
}

function atLeastNought(times: number, stated: number): number {
  if (times < 0) throw new Unreadable('number without a meaning', `${stated}`);
  return times;
}

function timesUntil(target: number, { count, change }: Here): number {
  if (count === undefined) throw new Unreadable('count at the start is missing');
  if (change === undefined) throw new Unreadable('stitches a row are missing');
  const times = change === 0 ? 0 : (target - count) / change;
  if (!Number.isInteger(times) || times < 0 || (change === 0 && target !== count))
    throw new Unreadable('count is never reached', `${target}`);
  return times;
}

function perRowOf(effect: Effect, needle: Pick<Needle, 'perRow'>): number | undefined {
  return effect.placed ? effect.perRow : (needle.perRow ?? effect.perRow);
}

function changeOf(effect: Effect, needle: Needle): number | undefined {
  const perRow = perRowOf(effect, needle);
  if (perRow === undefined) return undefined;
  if (effect.by !== undefined) return effect.by === 'increase' ? perRow : -perRow;
  return needle.direction === 0 ? undefined : needle.direction * perRow;
}

/** Rows of one line as the sum of its legs. */
export function rowsLine(legs: readonly Leg[], which: string): WorkingLine {
  const from = legs.reduce((last, leg, i) => (leg.anew ? i : last), 0);
  const terms = legs.slice(from).flatMap((leg) => leg.terms);
  const given: Record<string, Quantity> = {};
  const written = terms.map((term, i) => {
    given[`a${i + 1}`] = quantity(term.name, term.rows, 'rows');
    if (term.times === undefined) return `a${i + 1}`;
    given[`n${i + 1}`] = quantity('times', term.times, 'times');
    return `a${i + 1} * n${i + 1}`;
  });
  return workOut(`rows of the line${which}`, written.join(' + ') || '0', given, { unit: 'rows' });
}

/** Shaping rows of one line as the sum of its legs. */
export function timesOf(legs: readonly Leg[], which: string): WorkingLine {
  const shaped = legs.filter((leg) => leg.rows.length > 0);
  const given = Object.fromEntries(
    shaped.map((leg, i) => [`n${i + 1}`, quantity('shaping rows', leg.rows.length, 'times')]),
  );
  return workOut(`shaping rows in all${which}`, Object.keys(given).join(' + ') || '0', given, {
    unit: 'times',
  });
}
