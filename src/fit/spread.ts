/**
 * Increases or decreases spread evenly across one row.
 * With n changes among P plain stitches every plain stretch is P/n long, cut to whole stitches; a flat row has half a
 * stretch at either end, a round closes on itself. What cannot be done is returned with ways that work.
 */
import { ANY_COUNT, admissible, type CountRule } from './gauge.ts';
import { type Change, MADE_OF, plain, type Segment } from './row.ts';
import { explainFault, explainSpread, type SpreadCounts } from './spread-workings.ts';
import { type Ends, flat, isAgain, layStretches, type Nested, type Stretches } from './stretches.ts';
import { type Stitches, stitches } from './units.ts';
import type { Worked } from './words.ts';
import type { WorkingLine } from './working.ts';

export interface SpreadAsk {
  /** On the needle, edge stitches included. */
  readonly stitches: Stitches;
  /** Stitches to gain (positive) or to lose (negative). */
  readonly change: number;
  /** The technique; `m1` gains and `k2tog` loses where nothing is said. */
  readonly by?: Change;
  readonly worked: Worked;
  /** Of a flat row; half a stretch where nothing is said. */
  readonly ends?: Ends;
  /** Border stitches at each end of a flat row, which are left as they are. */
  readonly edge?: Stitches;
  /** Changes stand only at the end of a pattern repeat of so many stitches. */
  readonly repeat?: Stitches;
  /** What the count after the row must satisfy. */
  readonly result?: CountRule;
}

export interface Spread {
  readonly kind: 'spread';
  readonly before: Stitches;
  readonly after: Stitches;
  readonly changes: number;
  readonly by: Change;
  /** Plain stretches in the order of knitting: one before each change and, on a flat row, one after the last. */
  readonly stretches: readonly Stitches[];
  readonly symmetry: Stretches['symmetry'];
  readonly row: readonly Segment[];
  readonly workings: readonly WorkingLine[];
}

/** One row has no room for so many changes. */
export interface TooManyChanges {
  readonly kind: 'too many changes';
  readonly asked: number;
  readonly most: number;
  readonly alternatives: readonly SpreadAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** Each change counts for two stitches, and the difference is odd. */
export interface UnevenChange {
  readonly kind: 'no multiple';
  readonly change: number;
  readonly each: number;
  readonly alternatives: readonly SpreadAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** The stitches between the edges are no whole number of pattern repeats. */
export interface NoWholeRepeats {
  readonly kind: 'no whole repeats';
  readonly stitches: Stitches;
  readonly repeat: Stitches;
  readonly over: Stitches;
  readonly alternatives: readonly SpreadAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** The count after the row would break the pattern's rule. */
export interface BreaksRule {
  readonly kind: 'result breaks the rule';
  readonly after: number;
  readonly rule: CountRule;
  readonly alternatives: readonly SpreadAlternative[];
  readonly workings: readonly WorkingLine[];
}

export type CannotSpread = TooManyChanges | UnevenChange | NoWholeRepeats | BreaksRule;

/** A way that works, with its row or rows worked out. */
export interface SpreadAlternative {
  readonly way:
    | 'several rows'
    | 'double changes'
    | 'as many as fit'
    | 'nearest count'
    | 'anywhere in the row';
  readonly rows: readonly Spread[];
}

/** Spreads the changes, or says why that cannot be done and offers what can. Throws where the edges fill the row. */
export function spread(ask: SpreadAsk): Spread | CannotSpread {
  const found = find(ask);
  if (found.kind === 'spread') return found;
  const workings = explainFault(figuresOf(ask));
  switch (found.kind) {
    case 'too many changes':
      return { ...found, alternatives: waysOut(ask, found.most), workings };
    case 'no multiple':
      return { ...found, alternatives: nearestWhole(ask, found.each), workings };
    case 'no whole repeats':
      return { ...found, alternatives: offer('anywhere in the row', withoutRepeat(ask)), workings };
    case 'result breaks the rule':
      return { ...found, alternatives: nearestAllowed(ask, found.rule), workings };
    default:
      return found satisfies never;
  }
}

type Bare<T> = T extends CannotSpread ? Omit<T, 'alternatives' | 'workings'> : never;

/** The row, or what stands against it. */
function find(ask: SpreadAsk): Spread | Bare<CannotSpread> {
  const by = technique(ask);
  const { takes, leaves } = MADE_OF[by];
  const each = Math.abs(leaves - takes);
  const after = ask.stitches + ask.change;
  const rule = ask.result ?? ANY_COUNT;
  if (after >= 1 && !allows(rule, after)) return { kind: 'result breaks the rule', after, rule };
  const changes = Math.abs(ask.change) / each;
  if (!Number.isInteger(changes)) return { kind: 'no multiple', change: ask.change, each };
  const room = roomFor(ask, takes);
  const { inner, repeat, over, most } = room;
  if (over !== 0) return { kind: 'no whole repeats', stitches: inner, repeat, over };
  if (changes > most) return { kind: 'too many changes', asked: changes, most };
  return worked(ask, by, changes, room);
}

function technique(ask: SpreadAsk): Change {
  const by = ask.by ?? (ask.change < 0 ? 'k2tog' : 'm1');
  const gains = MADE_OF[by].leaves > MADE_OF[by].takes;
  if (ask.change !== 0 && gains !== ask.change > 0)
    throw new RangeError(`${by} cannot change by ${ask.change}`);
  return by;
}

/** What a row can hold. `units` are stitches, or whole repeats where changes may stand only between them. */
interface Room {
  readonly inner: Stitches;
  readonly repeat: Stitches;
  readonly over: Stitches;
  readonly most: number;
  readonly least: number;
}

/** A change between two stitches needs one on either side; others need the stitches that they take. */
function roomFor(ask: SpreadAsk, takes: number): Room {
  const edge = ask.edge ?? 0;
  const inner = stitches(ask.stitches - 2 * edge);
  if (inner < 1 || edge < 0 || (edge > 0 && ask.worked === 'round')) {
    throw new RangeError(`${ask.stitches} stitches (${ask.worked}) leave no row between edges of ${edge}`);
  }
  const repeat = stitches(ask.repeat ?? 1);
  if (repeat > 1 && repeat < takes) throw new RangeError(`a repeat of ${repeat} cannot hold its change`);
  const between = repeat > 1 || takes === 0;
  const places = between ? Math.floor(inner / repeat) : Math.floor(inner / takes);
  const most = between && ask.worked === 'flat' ? places - 1 : places;
  return { inner, repeat, over: stitches(inner % repeat), most, least: between ? 1 : 0 };
}

function worked(ask: SpreadAsk, by: Change, changes: number, room: Room): Spread {
  const { takes } = MADE_OF[by];
  const inRepeats = room.repeat > 1;
  const laid = layStretches({
    plain: inRepeats ? room.inner / room.repeat : room.inner - changes * takes,
    changes,
    worked: ask.worked,
    ends: ask.ends ?? 'half',
    least: room.least,
  });
  const before = (units: number) => (inRepeats ? units * room.repeat - takes : units);
  const last = laid.last === null ? [] : [laid.last * room.repeat];
  const inside = [...write(laid.before, by, before), ...last.filter((count) => count > 0).map(plain)];
  return {
    kind: 'spread',
    before: ask.stitches,
    after: stitches(ask.stitches + ask.change),
    changes,
    by,
    stretches: [...flat(laid.before).map(before), ...last].map(stitches),
    symmetry: laid.symmetry,
    row: bordered(inside, ask.edge ?? 0),
    workings: explainSpread({ ...figuresOf(ask), ends: ask.ends ?? 'half', laid }),
  };
}

function figuresOf(ask: SpreadAsk): SpreadCounts {
  const { takes, leaves } = MADE_OF[technique(ask)];
  return {
    before: ask.stitches,
    change: ask.change,
    edge: ask.edge ?? 0,
    repeat: ask.repeat ?? 1,
    takes,
    each: Math.abs(leaves - takes),
    worked: ask.worked,
  };
}

function write(list: Nested<number>, change: Change, stitchesOf: (units: number) => number): Segment[] {
  return list.flatMap((part): Segment[] => {
    if (isAgain(part)) return [{ kind: 'repeat', times: part.times, of: write(part.of, change, stitchesOf) }];
    const count = stitchesOf(part);
    return [...(count > 0 ? [plain(count)] : []), { kind: 'change', change }];
  });
}

function bordered(inside: readonly Segment[], edge: number): readonly Segment[] {
  if (edge === 0) return inside;
  const border: Segment = { kind: 'edge', stitches: stitches(edge) };
  return [border, ...inside, border];
}

function allows(rule: CountRule, count: number): boolean {
  const series = admissible(rule);
  return series !== undefined && (count - series.start) % series.step === 0;
}

function waysOut(ask: SpreadAsk, most: number): SpreadAlternative[] {
  const { takes, leaves } = MADE_OF[technique(ask)];
  const reach = most * (leaves - takes);
  return [
    ...severalRows(ask),
    ...doubleChanges(ask),
    ...offer('anywhere in the row', withoutRepeat(ask)),
    ...(most === 0 ? [] : offer('as many as fit', { ...withoutRule(ask), change: reach })),
  ];
}

/** More rows than this are shaping of a section, not one change of count. */
const MOST_ROWS = 6;

/** The fewest rows that hold the changes when each takes an equal share of them, the larger shares first. */
function severalRows(ask: SpreadAsk): SpreadAlternative[] {
  if (
    ask.repeat !== undefined ||
    Math.abs(MADE_OF[technique(ask)].leaves - MADE_OF[technique(ask)].takes) > 1
  )
    return [];
  for (let count = 2; count <= MOST_ROWS; count++) {
    const rows = inRows(withoutRule(ask), count);
    if (rows !== undefined) return [{ way: 'several rows', rows }];
  }
  return [];
}

function inRows(ask: SpreadAsk, count: number): Spread[] | undefined {
  const total = Math.abs(ask.change);
  const done: Spread[] = [];
  for (let i = 0; i < count; i++) {
    const share = Math.floor(total / count) + (i < total % count ? 1 : 0);
    const before = done.at(-1)?.after ?? ask.stitches;
    const row = find({ ...ask, stitches: before, change: Math.sign(ask.change) * share });
    if (row.kind !== 'spread') return undefined;
    done.push(row);
  }
  return done;
}

/** One row of double changes, where singles were asked for without a repeat and the difference is even. */
function doubleChanges(ask: SpreadAsk): SpreadAlternative[] {
  const by = ask.change < 0 ? 'cdd' : 'kyok';
  return ask.repeat === undefined ? offer('double changes', { ...ask, by }) : [];
}

function nearestWhole(ask: SpreadAsk, each: number): SpreadAlternative[] {
  const changes = ask.change / each;
  return [Math.floor(changes), Math.ceil(changes)].flatMap((n) =>
    n === 0 ? [] : offer('nearest count', { ...withoutRule(ask), change: n * each }),
  );
}

/** The nearest counts on either side that the rule allows, by changes in the direction that was asked for. */
function nearestAllowed(ask: SpreadAsk, rule: CountRule): SpreadAlternative[] {
  const series = admissible(rule);
  if (series === undefined) return [];
  const { start, step } = series;
  const below = start + step * Math.floor((ask.stitches + ask.change - start) / step);
  return [below, below + step].flatMap((after) => {
    const change = after - ask.stitches;
    return change * ask.change < 0 ? [] : offer('nearest count', { ...ask, change });
  });
}

function withoutRepeat({ repeat: _, ...ask }: SpreadAsk): SpreadAsk {
  return ask;
}

function withoutRule({ result: _, ...ask }: SpreadAsk): SpreadAsk {
  return ask;
}

/** The alternative where it works, else none. */
function offer(way: SpreadAlternative['way'], ask: SpreadAsk): SpreadAlternative[] {
  const row = find(ask);
  return row.kind === 'spread' ? [{ way, rows: [row] }] : [];
}
