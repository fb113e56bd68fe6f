/**
 * Reads a shaping line in the trade's wording, US, UK or German, into row numbers and stitch counts. Row 1 is the next
 * row to be knitted. Where the trade itself is of two minds, both readings are returned:
 *
 *   'every 6th row 5 times'    first on row 6 (rows 6 … 30), or on the next row and then every 6th (rows 1 … 25)
 *   'next and every foll 8th row 6 times'    6 rows after the first, or 6 with it
 *
 * A line that cannot be read is a value with a reason and a line that can; it never throws on a text.
 */
import { LINE_REFUSALS, type Line, type LineRefusal, Unreadable } from './shaping-clause.ts';
import { clausesOf } from './shaping-clauses.ts';
import { type Choice, type Leg, legsOf, rowsLine, timesOf } from './shaping-legs.ts';
import { type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface LineAsk {
  readonly text: string;
  /** Stitches on the needle before the line, and after it as the pattern prints them. */
  readonly start?: Stitches;
  readonly end?: Stitches;
  /** Stitches that a shaping row changes, where the line does not say. */
  readonly perRow?: number;
}

export interface ShapedRow {
  readonly row: Rows;
  /** Stitches gained or (negative) lost; absent where the line does not say. */
  readonly change?: number;
  /** Stitches on the needle after it; absent where the count before it is not known. */
  readonly after?: Stitches;
}

export type EndCheck =
  | { readonly kind: 'not known' }
  | { readonly kind: 'adds up'; readonly end: Stitches }
  | {
      readonly kind: 'does not add up';
      readonly stated: Stitches;
      readonly reached: number;
      /** Count before the line that would end with the count stated. */
      readonly startThatWould: number;
    };

export interface LineReading extends Choice {
  readonly shaping: readonly ShapedRow[];
  readonly times: number;
  /** Rows from the next row up to the last shaping row, or to the last row that the line names. */
  readonly rows: Rows;
  readonly end?: Stitches;
  readonly check: EndCheck;
  readonly workings: readonly WorkingLine[];
}

export interface ReadLine {
  readonly kind: 'read';
  /** One, or as many as the wording allows; the commoner convention first. */
  readonly readings: readonly LineReading[];
}

export interface UnreadLine {
  readonly kind: 'cannot read';
  readonly reason: LineRefusal;
  /** The word or number at which reading stopped. */
  readonly word?: string;
  /** A line of that kind that can be read. */
  readonly example: string;
}

export function readShapingLine(ask: LineAsk): ReadLine | UnreadLine {
  try {
    const lines = clausesOf(ask.text);
    return { kind: 'read', readings: choices(lines).map((choice) => reading(lines, choice, ask)) };
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    const { reason, word } = error;
    return {
      kind: 'cannot read',
      reason,
      ...(word === undefined ? {} : { word }),
      example: LINE_REFUSALS[reason],
    };
  }
}

function choices(lines: readonly Line[]): readonly Choice[] {
  const open = lines.some(
    ({ clauses: [first], goesOn }) => !goesOn && first?.kind === 'run' && (first.every[0] ?? 1) > 1,
  );
  const unclear = lines.some((line) =>
    line.clauses.some((c) => c.kind === 'run' && c.often.count === 'times, first perhaps counted in'),
  );
  const firsts = open
    ? (['at the end of the interval', 'on the next row'] as const)
    : (['as named'] as const);
  const countings = unclear
    ? (['after the first row', 'with the first row'] as const)
    : (['as named'] as const);
  return firsts.flatMap((first) => countings.map((counting) => ({ first, counting })));
}

function reading(lines: readonly Line[], choice: Choice, ask: LineAsk): LineReading {
  const start = ask.start ?? lines[0]?.start;
  const stated = ask.end ?? lines.at(-1)?.end;
  const direction = start === undefined || stated === undefined ? 0 : Math.sign(stated - start);
  if (
    lines.length > 1 &&
    lines.some((l) => l.clauses.some((c) => c.kind === 'run' && c.often.count === 'until'))
  )
    throw new Unreadable('count is shared by two lines');
  const legs = lines.map((line) => legsOf(line, choice, { start, direction, perRow: ask.perRow }));
  const shaping = merge(legs.flat(), start);
  const counted = legs.map((own, i) => rowsLine(own, legs.length === 1 ? '' : `, line ${i + 1}`));
  const count = start === undefined ? undefined : countAfter(legs.flat(), start);
  const end = count?.result.value;
  return {
    ...choice,
    shaping,
    times: shaping.length,
    rows: rows(Math.max(...counted.map((line) => line.result.value))),
    ...(end !== undefined && end > 0 ? { end: stitches(end) } : {}),
    check: check(start, end, stated),
    workings: [
      ...counted,
      ...legs.map((own, i) => timesOf(own, legs.length === 1 ? '' : `, line ${i + 1}`)),
      ...(count === undefined ? [] : [count]),
    ],
  };
}

/** The rows of all lines together: where two fall on one row, what they change adds up. */
function merge(legs: readonly Leg[], start: number | undefined): ShapedRow[] {
  const changes = new Map<number, number | undefined>();
  for (const leg of legs)
    for (const row of leg.rows) {
      const before = changes.has(row) ? changes.get(row) : 0;
      changes.set(row, before === undefined || leg.change === undefined ? undefined : before + leg.change);
    }
  let count = start;
  return [...changes]
    .sort(([a], [b]) => a - b)
    .map(([row, change]) => {
      count = count === undefined || change === undefined ? undefined : count + change;
      return {
        row: rows(row),
        ...(change === undefined ? {} : { change }),
        ...(count === undefined || count < 1 ? {} : { after: stitches(count) }),
      };
    });
}

/** The count after all legs, worked out from the count before; undefined where a leg does not say what it changes. */
function countAfter(legs: readonly Leg[], start: number): WorkingLine | undefined {
  const shaped = legs.filter((leg) => leg.rows.length > 0);
  if (shaped.some((leg) => leg.change === undefined)) return undefined;
  const given = Object.fromEntries(
    shaped.flatMap((leg, i) => [
      [`n${i + 1}`, quantity('shaping rows', leg.rows.length, 'times')],
      [`s${i + 1}`, quantity('stitches a shaping row', Math.abs(leg.change ?? 0), 'stitches')],
    ]),
  );
  const terms = shaped.map((leg, i) => `${(leg.change ?? 0) < 0 ? '-' : '+'} n${i + 1} * s${i + 1}`);
  return workOut(
    'stitches after the line',
    ['a', ...terms].join(' '),
    { a: quantity('stitches before the line', start, 'stitches'), ...given },
    { unit: 'stitches' },
  );
}

function check(start: number | undefined, end: number | undefined, stated: number | undefined): EndCheck {
  if (start === undefined || end === undefined || stated === undefined) return { kind: 'not known' };
  if (end === stated) return { kind: 'adds up', end: stitches(end) };
  return {
    kind: 'does not add up',
    stated: stitches(stated),
    reached: end,
    startThatWould: start + stated - end,
  };
}
