/**
 * Shaping spaced over the rows of a section.
 * 'Every Nth row' means N−1 plain rows, then the shaping row. The rows between the plain rows wanted at the start and
 * those wanted at the end are shared out so that intervals differ by at most one step.
 *
 *   |<- lead ->|<- interval ->|<- interval ->| … |<- trail ->|
 *   plain      … plain  shape   … plain  shape     plain
 */
import { explainSpacing, type Frame } from './spacing-workings.ts';
import { type Cm, cm, type PerCm, type Rows, rows, type Stitches, stitches } from './units.ts';
import type { WorkingLine } from './working.ts';

/**
 * Which rows of the section, counted from 1, may carry shaping. A flat piece shaped on right-side rows only has them
 * on the odd rows where the section begins with a right-side row, else on the even ones.
 */
export const CARRIERS = ['every row', 'odd rows', 'even rows'] as const;
export type Carriers = (typeof CARRIERS)[number];

export interface SpacingAsk {
  readonly rows: Rows;
  readonly from: Stitches;
  readonly to: Stitches;
  /** Stitches that one shaping row gains or loses: 2 for a sleeve, 4 for a body in the round, 1 for a flat edge. */
  readonly perRow: number;
  readonly carriers: Carriers;
  /** Least plain rows before the first shaping row, and after the last. */
  readonly lead: Rows;
  readonly trail: Rows;
  readonly order: 'grouped' | 'interleaved';
  /** Lets alternatives say how wide the count is that they end with. */
  readonly stitchesPerCm?: PerCm;
}

export interface ShapingRow {
  /** Row of the section, counted from 1. */
  readonly row: Rows;
  /** Stitches on the needle after it. */
  readonly after: Stitches;
}

/** 'Every `every`th row `times` times.' */
export interface Run {
  readonly every: Rows;
  readonly times: number;
}

export interface Spaced {
  readonly kind: 'spaced';
  readonly rows: Rows;
  readonly from: Stitches;
  readonly to: Stitches;
  readonly perRow: number;
  readonly carriers: Carriers;
  /** Plain rows before the runs begin; the first interval is counted from here. −1 where the row before counts in. */
  readonly base: number;
  readonly runs: readonly Run[];
  readonly plainAfter: Rows;
  readonly shaping: readonly ShapingRow[];
  readonly workings: readonly WorkingLine[];
}

/** The stitches to change are no multiple of what one shaping row changes. */
export interface NoMultiple {
  readonly kind: 'no multiple';
  readonly change: number;
  readonly perRow: number;
  readonly alternatives: readonly Alternative[];
}

/** More shaping rows are needed than there are rows that may carry them. */
export interface TooFewRows {
  readonly kind: 'too few rows';
  readonly needed: number;
  readonly available: number;
  readonly alternatives: readonly Alternative[];
}

export type Spacing = Spaced | NoMultiple | TooFewRows;

/** A way that works, worked out. */
export interface Alternative {
  readonly way:
    | 'nearest count'
    | 'more stitches a row'
    | 'wrong-side rows too'
    | 'longer section'
    | 'count within reach';
  readonly spaced: Spaced;
  /** Width of the count it ends with, where the gauge is known. */
  readonly width?: Cm;
}

/** Spaces the shaping of a section, or says why that cannot be done and offers what can. */
export function space(ask: SpacingAsk): Spacing {
  const change = Math.abs(ask.to - ask.from);
  if (change % ask.perRow !== 0)
    return { kind: 'no multiple', change, perRow: ask.perRow, alternatives: nearestCounts(ask) };
  const needed = change / ask.perRow;
  const available = capacity(ask);
  if (needed > available)
    return { kind: 'too few rows', needed, available, alternatives: waysOut(ask, available) };
  return spread(ask, needed);
}

/** How many rows of the section may carry shaping. */
export function capacity(ask: Pick<SpacingAsk, 'rows' | 'carriers' | 'lead' | 'trail'>): number {
  const { base, step, last } = frame(ask);
  return Math.max(0, (last - base) / step);
}

/** Carrying rows lie at `base + step`, `base + 2 × step` … `last`. */
function frame(ask: Pick<SpacingAsk, 'rows' | 'carriers' | 'lead' | 'trail'>): Frame {
  const end = ask.rows - ask.trail;
  if (ask.carriers === 'every row') return { base: ask.lead, step: 1, last: Math.max(end, ask.lead) };
  const odd = ask.carriers === 'odd rows' ? 1 : 0;
  const base = Math.abs(ask.lead % 2) === odd ? ask.lead : ask.lead - 1;
  const last = Math.abs(end % 2) === odd ? end : end - 1;
  return { base, step: 2, last: Math.max(last, base) };
}

function spread(ask: SpacingAsk, times: number): Spaced {
  const { base, step, last } = frame(ask);
  const steps = (last - base) / step;
  const short = times === 0 ? 0 : Math.floor(steps / times);
  const longer = times === 0 ? 0 : steps - short * times;
  const intervals = arrange(times - longer, longer, short, ask).map((n) => n * step);
  const sign = ask.to >= ask.from ? 1 : -1;
  const shaping: ShapingRow[] = [];
  let row = base;
  for (const [i, interval] of intervals.entries()) {
    row += interval;
    shaping.push({ row: rows(row), after: stitches(ask.from + sign * ask.perRow * (i + 1)) });
  }
  const runs = toRuns(intervals);
  return {
    kind: 'spaced',
    rows: ask.rows,
    from: ask.from,
    to: ask.to,
    perRow: ask.perRow,
    carriers: ask.carriers,
    base: times === 0 ? 0 : base,
    runs,
    plainAfter: rows(times === 0 ? ask.rows : ask.rows - row),
    shaping,
    workings: explainSpacing(ask, { base, step, last }, runs),
  };
}

/** The steeper run, with the shorter intervals, lies next to the wider level, whichever way the piece is knitted. */
function arrange(shortTimes: number, longTimes: number, short: number, ask: SpacingAsk): number[] {
  const widening = ask.to >= ask.from;
  const [first, firstTimes, then, thenTimes] = widening
    ? [short + 1, longTimes, short, shortTimes]
    : [short, shortTimes, short + 1, longTimes];
  if (ask.order === 'grouped') return [...Array(firstTimes).fill(first), ...Array(thenTimes).fill(then)];
  const times = shortTimes + longTimes;
  return Array.from({ length: times }, (_, i) =>
    Math.floor(((i + 1) * thenTimes) / times) > Math.floor((i * thenTimes) / times) ? then : first,
  );
}

function toRuns(intervals: readonly number[]): Run[] {
  const runs: { every: Rows; times: number }[] = [];
  for (const interval of intervals) {
    const last = runs.at(-1);
    if (last?.every === interval) last.times += 1;
    else runs.push({ every: rows(interval), times: 1 });
  }
  return runs;
}

/** The counts on either side that can be reached, each worked out. */
function nearestCounts(ask: SpacingAsk): Alternative[] {
  const sign = ask.to >= ask.from ? 1 : -1;
  const few = Math.floor(Math.abs(ask.to - ask.from) / ask.perRow);
  return [few, few + 1].flatMap((times) =>
    alternative('nearest count', { ...ask, to: stitches(ask.from + sign * times * ask.perRow) }),
  );
}

function waysOut(ask: SpacingAsk, available: number): Alternative[] {
  const sign = ask.to >= ask.from ? 1 : -1;
  const needed = Math.abs(ask.to - ask.from) / ask.perRow;
  const { base, step } = frame(ask);
  const doubled = 2 * ask.perRow;
  const doubledTo = ask.from + sign * doubled * Math.round(needed / 2);
  return [
    ...(ask.carriers === 'every row'
      ? []
      : alternative('wrong-side rows too', { ...ask, carriers: 'every row' })),
    ...alternative('more stitches a row', { ...ask, perRow: doubled, to: stitches(doubledTo) }),
    ...alternative('longer section', { ...ask, rows: rows(base + step * needed + ask.trail) }),
    ...(available === 0
      ? []
      : alternative('count within reach', {
          ...ask,
          to: stitches(ask.from + sign * available * ask.perRow),
        })),
  ];
}

function alternative(way: Alternative['way'], ask: SpacingAsk): Alternative[] {
  const times = Math.abs(ask.to - ask.from) / ask.perRow;
  if (ask.to < 1 || times > capacity(ask)) return [];
  const width = ask.stitchesPerCm === undefined ? {} : { width: cm(ask.to / ask.stitchesPerCm) };
  return [{ way, spaced: spread(ask, times), ...width }];
}
