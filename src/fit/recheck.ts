/**
 * In mid-project: the gauge as it really is, and what comes of it. What was knitted is never described again; every plan
 * starts at the row at hand, or at the row that is ripped back to.
 * Pieces end where their even shaping ends (underarm of a sleeve or body): caps and armholes have their own rules.
 */
import type { Gauge } from './gauge.ts';
import { type Level, type Piece, widthAt } from './outline.ts';
import { type Ahead, type Anew, ahead, type Shaped, scaled } from './recheck-ahead.ts';
import { type Measure, measuresOf, measureWorkings, type Placed, placed } from './recheck-measures.ts';
import { type Rows, rows, type Stitches, stitches } from './units.ts';
import type { LevelName } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface RecheckAsk {
  /** The piece as it was planned, its levels counted in rows from its start. */
  readonly piece: Piece;
  readonly planned: Gauge;
  /** Counted on the piece itself. */
  readonly real: Gauge;
  /** Rows knitted from the start of the piece, and stitches on the needle. */
  readonly now: { readonly row: Rows; readonly stitches: Stitches };
  readonly shaped: Shaped;
}

/** Knit on as planned. */
export interface OnTrack {
  readonly kind: 'on track';
  readonly measures: readonly Measure[];
  readonly workings: readonly WorkingLine[];
}

/** Nothing that is knitted need be undone; the rest is spaced anew from this very row. */
export interface MendAhead {
  readonly kind: 'mend ahead';
  /** What would be off if the plan were kept; empty where only the count on the needle differs from the plan's. */
  readonly off: readonly Measure[];
  readonly rest: Ahead;
  /** What comes of it, level by level. */
  readonly levels: readonly Placed[];
  readonly measures: readonly Measure[];
  readonly workings: readonly WorkingLine[];
}

/** Going on costs centimetres, ripping back costs rows. */
export interface Decide {
  readonly kind: 'decide';
  readonly goOn: GoOn;
  readonly ripBack: RipBack;
  readonly workings: readonly WorkingLine[];
}

export interface GoOn {
  /** What stays off, in centimetres. */
  readonly cost: readonly Measure[];
  /** The best that can be made of the rest; where it is not possible its sections carry what can be done instead. */
  readonly rest: Ahead;
  readonly levels: readonly Placed[];
  readonly measures: readonly Measure[];
}

export interface RipBack {
  readonly rows: Rows;
  /** Where the needle stands after it: at a level, within a section, or before a new cast-on. */
  readonly to: LevelName | WithinSection | 'the start, with another count';
  readonly from: { readonly row: Rows; readonly stitches: Stitches };
  readonly rest: Ahead;
  readonly levels: readonly Placed[];
  readonly measures: readonly Measure[];
}

/** In a shaped section the count there is reckoned from even spacing. */
export type WithinSection = 'within a straight section' | 'within a shaped section';

export type Recheck = OnTrack | MendAhead | Decide;

/**
 * What a level would have at the real gauge, where that is less than one shaping row changes: it cannot be worked out anew,
 * and the gauge was miscounted more likely than not.
 */
export function tooNarrow({ piece, planned, real, shaped }: RecheckAsk): WorkingLine | undefined {
  return piece.levels
    .map((level) => scaled(level, { planned, real }, shaped.edge))
    .find(({ given, exact }) => Math.min(given.a?.value ?? 0, exact) < shaped.perRow);
}

/** Throws where fewer than no rows are knitted, the needle is empty or a level `tooNarrow`; all else is an outcome. */
export function recheck(ask: RecheckAsk): Recheck {
  if (ask.now.row < 0 || ask.now.stitches < 1)
    throw new RangeError(`${ask.now.row} rows and ${ask.now.stitches} stitches are no piece of knitting`);
  const asPlanned = placed(ask.piece, ask.now.row);
  const measures = measure(ask, asPlanned);
  const workings = measureWorkings(asPlanned, ask.planned, ask.real, ask.shaped.edge);
  const off = measures.filter((m) => !m.within);
  if (off.length === 0 && countFits(ask)) return { kind: 'on track', measures, workings };
  const rest = ahead({ ...aheadAsk(ask, anew(off)), from: ask.now });
  const levels = [...asPlanned.filter((l) => l.knitted), ...rest.levels];
  const after = measure(ask, levels);
  const cost = after.filter((m) => !m.within);
  if (cost.length === 0 && rest.possible)
    return {
      kind: 'mend ahead',
      off,
      rest,
      levels,
      measures: after,
      workings: [...workings, ...rest.workings],
    };
  const back = ripBack(ask, anew(off));
  return {
    kind: 'decide',
    goOn: { cost, rest, levels, measures: after },
    ripBack: back.ripped,
    workings: [...workings, ...rest.workings, back.line, ...back.ripped.rest.workings],
  };
}

function measure(ask: RecheckAsk, levels: readonly Placed[]): readonly Measure[] {
  return measuresOf(levels, ask.planned, ask.real, ask.shaped.edge);
}

function anew(off: readonly Measure[]): Anew {
  return { counts: off.some((m) => m.of === 'width'), rows: off.some((m) => m.of === 'length') };
}

function aheadAsk(ask: RecheckAsk, changed: Anew) {
  return {
    planned: ask.piece,
    gauge: { planned: ask.planned, real: ask.real },
    shaped: ask.shaped,
    anew: changed,
  };
}

/** The count on the needle is the plan's for this row, give or take one shaping row, and can reach the next level. */
function countFits({ piece, now, shaped }: RecheckAsk): boolean {
  const next = piece.levels.find((l) => l.row > now.row);
  if (next === undefined) return true;
  return (
    Math.abs(widthAt(piece, now.row) - now.stitches) <= shaped.perRow &&
    (next.stitches - now.stitches) % shaped.perRow === 0
  );
}

/** Back to the nearest row from which all that lies ahead comes right: at the latest to the start. */
function ripBack(ask: RecheckAsk, changed: Anew) {
  const kept = ask.piece.levels.filter((l) => l.row < ask.now.row);
  const ripped =
    withinSection(ask, changed) ??
    kept
      .toReversed()
      .map((l) => ripTo(ask, changed, l.name, l.row, l.stitches))
      .find(comesRight) ??
    startAgain(ask, changed);
  const line = workOut(
    'rows to rip back',
    'a - b',
    {
      a: quantity('rows knitted', ask.now.row, 'rows'),
      b: quantity('row to rip back to', ripped.from.row, 'rows'),
    },
    { unit: 'rows' },
  );
  return { ripped, line };
}

function comesRight({ rest, measures }: RipBack): boolean {
  return rest.possible && measures.every((m) => m.within);
}

/** The nearest row of the last section that was begun, and none later than where its length is reached. */
function withinSection(ask: RecheckAsk, changed: Anew): RipBack | undefined {
  const { piece, now, planned, real } = ask;
  const i = piece.levels.findLastIndex((l, place) => l.row < now.row && place < piece.levels.length - 1);
  const [from, to] = [piece.levels[i], piece.levels[i + 1]];
  if (from === undefined || to === undefined) return undefined;
  const countAt = countsIn(from, to, ask);
  if (countAt === undefined) return undefined;
  const name = from.stitches === to.stitches ? 'within a straight section' : 'within a shaped section';
  const step = piece.worked === 'flat' ? 2 : 1;
  const reached = Math.round((to.row * real.rows.perCm) / planned.rows.perCm / step);
  const last = Math.min(reached, Math.ceil(now.row / step) - 1);
  for (let row = step * last; row > from.row; row -= step) {
    const tried = ripTo(ask, changed, name, row, countAt(row));
    if (comesRight(tried)) return tried;
    // What is knitted below does not change with the row.
    if (tried.measures.some((m) => m.knitted && !m.within)) return undefined;
  }
  return undefined;
}

/** The count after each row of a section, reckoned from even spacing; undefined where the needle's is another. */
function countsIn(
  from: Level,
  to: Level,
  { now, shaped }: RecheckAsk,
): ((row: number) => number) | undefined {
  const times = Math.abs(to.stitches - from.stitches) / shaped.perRow;
  const sign = Math.sign(to.stitches - from.stitches);
  const done = (row: number) =>
    Math.floor((times * Math.min(row - from.row, to.row - from.row)) / (to.row - from.row) + 1e-9);
  const off = now.stitches - (from.stitches + sign * shaped.perRow * done(now.row));
  if (off % shaped.perRow !== 0 || Math.abs(off) > (times === 0 ? 0 : shaped.perRow)) return undefined;
  return (row) => now.stitches - sign * shaped.perRow * (done(now.row) - done(row));
}

function startAgain(ask: RecheckAsk, changed: Anew): RipBack {
  const first = ask.piece.levels[0];
  if (first === undefined) throw new RangeError('a piece without levels cannot be rechecked');
  const { edge, perRow } = ask.shaped;
  const count = workOut(
    `stitches at the ${first.name}, begun again`,
    '(a - e) * b / c + e',
    {
      a: quantity(`stitches at the ${first.name}, planned`, first.stitches, 'stitches'),
      b: quantity('stitches, as knitted', ask.real.stitches.perCm, 'stitches/cm'),
      c: quantity('stitches, planned', ask.planned.stitches.perCm, 'stitches/cm'),
      e: quantity('edge stitches', edge, 'stitches'),
    },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: perRow, plus: first.stitches % perRow } },
  );
  const ripped = ripTo(
    ask,
    { ...changed, counts: true },
    'the start, with another count',
    0,
    count.result.value,
  );
  return { ...ripped, rest: { ...ripped.rest, workings: [count, ...ripped.rest.workings] } };
}

function ripTo(ask: RecheckAsk, changed: Anew, to: RipBack['to'], row: number, count: number): RipBack {
  const rest = ahead({ ...aheadAsk(ask, changed), from: { row, stitches: count } });
  const below = placed(ask.piece, row)
    .filter((l) => l.knitted)
    .map((l) => (to === 'the start, with another count' ? { ...l, stitches: count } : l));
  const levels = [...below, ...rest.levels];
  return {
    rows: rows(ask.now.row - row),
    to,
    from: { row: rows(row), stitches: stitches(count) },
    rest,
    levels,
    measures: measure(ask, levels),
  };
}
