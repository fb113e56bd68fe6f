/**
 * A round yoke between underarm and neck, knitted from either end: few rounds of shaping, each spread evenly round,
 * and plain stretches between, whose counts can be held to the multiples of a colour pattern.
 */
import type { Gauge } from './gauge.ts';
import { type CannotSpread, type Spread, spread } from './spread.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import type { Direction } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';
import type { YokeScheme } from './yoke-scheme.ts';

export interface YokeAsk {
  readonly direction: Direction;
  readonly gauge: Gauge;
  readonly depth: Cm;
  /** All round, underarm stitches set aside. */
  readonly underarm: Stitches;
  readonly neck: Stitches;
  /** From the underarm to the neck. */
  readonly scheme: YokeScheme;
  /** Multiples of the counts from the underarm to the neck, one more than there are rounds; 1 where any will do. */
  readonly multiples?: readonly number[];
}

export interface YokeRound {
  /** Round of the yoke, in the order of knitting, counted from 1. */
  readonly round: Rows;
  readonly spread: Spread;
}

/** Rounds on one count, in the order of knitting. */
export interface Plateau {
  readonly stitches: Stitches;
  readonly rounds: Rows;
  readonly height: Cm;
}

export interface YokeShape {
  readonly kind: 'yoke';
  readonly direction: Direction;
  readonly rows: Rows;
  readonly depth: Cm;
  readonly shaping: readonly YokeRound[];
  readonly plateaus: readonly Plateau[];
  readonly neckAround: Cm;
  readonly workings: readonly WorkingLine[];
}

/** Why a yoke cannot be shaped as asked. */
export type YokeHindrance =
  /** The neck has as many stitches as the underarm, or more. */
  | { readonly kind: 'neck not smaller'; readonly neck: Stitches; readonly underarm: Stitches }
  /** The count at the underarm or the neck is no multiple of the colour pattern. */
  | {
      readonly kind: 'no multiple';
      readonly where: 'underarm' | 'neck';
      readonly count: Stitches;
      readonly multiple: number;
    }
  /** No multiple lies between the counts before and after a stretch. */
  | { readonly kind: 'repeat too wide'; readonly multiple: number }
  /** Two shaping rounds would fall into one; the yoke needs so many rows. */
  | { readonly kind: 'yoke too shallow'; readonly rows: Rows; readonly needed: Rows }
  /** One round has no room for its changes. */
  | { readonly kind: 'round too full'; readonly round: Rows; readonly because: CannotSpread };

/** The yoke as asked for, or what stands against it. Throws where there is not one multiple for each count. */
export function shapeYoke(ask: YokeAsk): YokeShape | YokeHindrance {
  const multiples = ask.multiples ?? Array<number>(ask.scheme.length + 1).fill(1);
  if (multiples.length !== ask.scheme.length + 1)
    throw new RangeError(`${ask.scheme.length} rounds need ${ask.scheme.length + 1} multiples`);
  if (ask.neck >= ask.underarm) return { kind: 'neck not smaller', neck: ask.neck, underarm: ask.underarm };
  const height = workOut(
    'rounds of the yoke',
    'a * b',
    {
      a: quantity('yoke depth', ask.depth, 'cm'),
      b: quantity('rounds', ask.gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'whole' } },
  );
  const counts = countsOf(ask, multiples);
  if ('kind' in counts) return counts;
  const places = placesOf(ask, height);
  if ('kind' in places) return places;
  return build(ask, height, counts, places);
}

/** The count after each round from the underarm on, as lines; the last is the neck. */
function countsOf(ask: YokeAsk, multiples: readonly number[]): readonly WorkingLine[] | YokeHindrance {
  const off = (count: Stitches, multiple: number) => count % multiple !== 0;
  const [first = 1, last = 1] = [multiples[0], multiples.at(-1)];
  if (off(ask.underarm, first))
    return { kind: 'no multiple', where: 'underarm', count: ask.underarm, multiple: first };
  if (off(ask.neck, last)) return { kind: 'no multiple', where: 'neck', count: ask.neck, multiple: last };
  const parts = ask.scheme.reduce((sum, round) => sum + round.part, 0);
  const counts: WorkingLine[] = [];
  let [taken, before] = [0, ask.underarm as number];
  for (const [i, { part }] of ask.scheme.entries()) {
    taken += part;
    const multiple = multiples[i + 1] ?? 1;
    const line = countAfter(ask, i + 1, taken, parts, multiple);
    const count = line.result.value;
    if (count >= before || count < ask.neck) return { kind: 'repeat too wide', multiple };
    counts.push(line);
    before = count;
  }
  return counts;
}

function countAfter(ask: YokeAsk, nth: number, taken: number, parts: number, multiple: number): WorkingLine {
  return workOut(
    `stitches above shaping round ${nth} from the underarm`,
    'a - (a - b) * c / d',
    {
      a: quantity('stitches at the underarm', ask.underarm, 'stitches'),
      b: quantity('stitches at the neck', ask.neck, 'stitches'),
      c: quantity('parts taken so far', taken, 'ratio'),
      d: quantity('parts in all', parts, 'ratio'),
    },
    { unit: 'stitches', rounding: { to: 'multiple', multiple, plus: 0 } },
  );
}

/** The round of each shaping, counted from the underarm. */
function placesOf(ask: YokeAsk, height: WorkingLine): readonly WorkingLine[] | YokeHindrance {
  const places = ask.scheme.map(({ at }, i) =>
    workOut(
      `shaping round ${i + 1} from the underarm`,
      'a * b',
      { a: height.result, b: quantity('share of the depth', at, 'ratio') },
      { unit: 'rows', rounding: { to: 'whole' } },
    ),
  );
  const apart = places.every((place, i) => place.result.value > (places[i - 1]?.result.value ?? 0));
  if (apart) return places;
  return { kind: 'yoke too shallow', rows: rows(height.result.value), needed: leastRows(ask.scheme) };
}

/** The fewest rounds in which no two shapings fall into one. */
function leastRows(scheme: YokeScheme): Rows {
  const round = (share: number, count: number) => Math.floor(share * count + 0.5 + 1e-9);
  for (let count = scheme.length; ; count += 1) {
    if (scheme.every(({ at }, i) => round(at, count) > round(scheme[i - 1]?.at ?? 0, count)))
      return rows(count);
  }
}

function build(
  ask: YokeAsk,
  height: WorkingLine,
  counts: readonly WorkingLine[],
  places: readonly WorkingLine[],
): YokeShape | YokeHindrance {
  const total = height.result.value;
  const levels = [ask.underarm, ...counts.map((line) => stitches(line.result.value))];
  const shaping: YokeRound[] = [];
  for (const [i, place] of places.entries()) {
    const [wide, narrow] = [levels[i] ?? ask.underarm, levels[i + 1] ?? ask.neck];
    const up = ask.direction === 'up';
    const round = rows(up ? place.result.value : total - place.result.value + 1);
    const row = spread({
      stitches: up ? wide : narrow,
      change: up ? narrow - wide : wide - narrow,
      worked: 'round',
    });
    if (row.kind !== 'spread') return { kind: 'round too full', round, because: row };
    shaping.push({ round, spread: row });
  }
  if (ask.direction === 'down') shaping.reverse();
  const depth = workOut(
    'yoke depth as knitted',
    'a / b',
    { a: height.result, b: quantity('rounds', ask.gauge.rows.perCm, 'rows/cm') },
    { unit: 'cm' },
  );
  const around = workOut(
    'neck around',
    'a / b',
    {
      a: quantity('stitches at the neck', ask.neck, 'stitches'),
      b: quantity('stitches', ask.gauge.stitches.perCm, 'stitches/cm'),
    },
    { unit: 'cm' },
  );
  const stretches = plateausOf(shaping, total, ask.gauge);
  return {
    kind: 'yoke',
    direction: ask.direction,
    rows: rows(total),
    depth: cm(depth.result.value),
    shaping,
    plateaus: stretches.plateaus,
    neckAround: cm(around.result.value),
    workings: [
      height,
      depth,
      ...counts,
      ...places,
      ...mirrored(ask, height, places),
      ...spreadWorkings(shaping),
      ...stretches.workings,
      around,
    ],
  };
}

/** From the neck down, the round that lies as far from the other end. */
function mirrored(ask: YokeAsk, height: WorkingLine, places: readonly WorkingLine[]): readonly WorkingLine[] {
  if (ask.direction === 'up') return [];
  return places
    .map((place) =>
      workOut(
        place.label.replace('from the underarm', 'counted from the neck'),
        'a - b + 1',
        { a: height.result, b: place.result },
        { unit: 'rows' },
      ),
    )
    .reverse();
}

function spreadWorkings(shaping: readonly YokeRound[]): readonly WorkingLine[] {
  return shaping.flatMap(({ round, spread: row }) =>
    row.workings.map((line) => ({ ...line, label: `round ${round}: ${line.label}` })),
  );
}

/** A shaping round belongs to the count that it leaves. */
function plateausOf(
  shaping: readonly YokeRound[],
  total: number,
  gauge: Gauge,
): { plateaus: readonly Plateau[]; workings: readonly WorkingLine[] } {
  const starts = [1, ...shaping.map(({ round }) => round as number), total + 1];
  const counts = [shaping[0]?.spread.before, ...shaping.map(({ spread: row }) => row.after)];
  const plateaus: Plateau[] = [];
  const workings: WorkingLine[] = [];
  for (const [i, count] of counts.entries()) {
    const length = plateauRounds(count ?? 0, starts[i] ?? 0, starts[i + 1] ?? 0);
    if (count === undefined || length.result.value === 0) continue;
    const height = workOut(
      `height on ${count} stitches`,
      'a / b',
      { a: length.result, b: quantity('rounds', gauge.rows.perCm, 'rows/cm') },
      { unit: 'cm' },
    );
    plateaus.push({ stitches: count, rounds: rows(length.result.value), height: cm(height.result.value) });
    workings.push(length, height);
  }
  return { plateaus, workings };
}

function plateauRounds(count: number, first: number, next: number): WorkingLine {
  return workOut(
    `rounds on ${count} stitches`,
    'b - a',
    { a: quantity('first of them', first, 'rows'), b: quantity('first round after them', next, 'rows') },
    { unit: 'rows' },
  );
}
