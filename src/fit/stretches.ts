/**
 * The plain stretches between the changes of one row: shared out so that they differ by at most one.
 * The unit is a stitch, or a whole pattern repeat where changes may stand only at the end of a repeat.
 */
import type { Worked } from './words.ts';

/**
 * What lies at either end of a flat row: half a stretch, so that a seam of two such ends makes a whole one; a whole
 * stretch; or nothing, so that the first and last change stand at the very edge.
 */
export const ENDS = ['half', 'whole', 'none'] as const;
export type Ends = (typeof ENDS)[number];

export interface StretchAsk {
  /** Units to be shared out. */
  readonly plain: number;
  readonly changes: number;
  readonly worked: Worked;
  readonly ends: Ends;
  /** Fewest units between the edge and a change: 1 where a change needs a stitch on either side. */
  readonly least: number;
}

/** A list written with repeats, so that the order in which it was thought out is kept. */
export type Nested<T> = readonly (T | Again<T>)[];
export interface Again<T> {
  readonly times: number;
  readonly of: Nested<T>;
}

/** Some stretches of one length, the others one unit longer. */
export interface Shared {
  readonly units: number;
  readonly stretches: number;
  readonly shorter: number;
  readonly longer: number;
}

export interface Stretches {
  /** The stretch before each change, in the order of knitting. */
  readonly before: Nested<number>;
  /** What follows the last change; null in the round, where the first stretch does. Without changes, all there is. */
  readonly last: number | null;
  readonly shared: Shared;
  /** The first and the last stretch where they do not share in `shared`. */
  readonly ends: { readonly first: number; readonly last: number } | null;
  /** No flat row with an odd number of changes among an odd number of plain units is its own mirror image. */
  readonly symmetry: 'seamless' | 'symmetrical' | 'last end one longer';
}

/** Lays the plain units out. The caller sees to it that they suffice. */
export function layStretches(ask: StretchAsk): Stretches {
  const { plain, changes } = ask;
  if (changes === 0) return unbroken(ask);
  if (ask.worked === 'round') {
    const shared = share(plain, changes);
    return { before: ring(shared), last: null, shared, ends: null, symmetry: 'seamless' };
  }
  const odd = plain % 2 === 1 && changes % 2 === 1;
  if (ask.ends === 'whole' && !odd) {
    const shared = share(plain, changes + 1);
    const [before, last] = withoutLast(mirrored(shared));
    return { before, last, shared, ends: null, symmetry: 'symmetrical' };
  }
  const first = firstEnd(ask, odd);
  const ends = { first, last: odd ? first + 1 : first };
  const shared = share(plain - ends.first - ends.last, changes - 1);
  const symmetry = odd ? 'last end one longer' : 'symmetrical';
  return { before: prepend(first, mirrored(shared)), last: ends.last, shared, ends, symmetry };
}

function unbroken({ plain, worked }: StretchAsk): Stretches {
  const symmetry = worked === 'round' ? 'seamless' : 'symmetrical';
  return { before: [], last: plain, shared: share(plain, 1), ends: null, symmetry };
}

/** The list written out. */
export function flat<T>(list: Nested<T>): T[] {
  return list.flatMap((part) => {
    if (!isAgain(part)) return [part];
    const once = flat(part.of);
    return Array.from({ length: part.times }, () => once).flat();
  });
}

export function isAgain<T>(part: T | Again<T>): part is Again<T> {
  return typeof part === 'object' && part !== null && 'times' in part;
}

function firstEnd({ plain, changes, ends, least }: StretchAsk, odd: boolean): number {
  if (changes === 1) return Math.floor(plain / 2);
  if (ends === 'none') return least;
  if (ends === 'whole') return Math.floor(plain / (changes + 1));
  const half = plain / changes / 2;
  return Math.max(least, Math.floor(odd ? half : half + 0.5));
}

function share(units: number, count: number): Shared {
  const shorter = count === 0 ? 0 : Math.floor(units / count);
  return { units, stretches: count, shorter, longer: units - shorter * count };
}

/** The rarer and the commoner length of stretch, and how many there are of each. */
function kinds({ stretches, shorter, longer }: Shared) {
  const lengths = [shorter, shorter + 1] as const;
  const rareIsLonger = longer * 2 <= stretches;
  const rareCount = rareIsLonger ? longer : stretches - longer;
  return {
    rare: lengths[rareIsLonger ? 1 : 0],
    common: lengths[rareIsLonger ? 0 : 1],
    rareCount,
    commonCount: stretches - rareCount,
  };
}

/**
 * Between two of the rarer kind lie k or k + 1 of the commoner, also across the join. Equal blocks are worked side by
 * side, so that the round can be written in two repeats.
 */
function ring(shared: Shared): Nested<number> {
  const { rare, common, rareCount, commonCount } = kinds(shared);
  if (rareCount === 0) return again(commonCount, [common]);
  const turns = gcd(rareCount, commonCount);
  const blocks = rareCount / turns;
  const k = Math.floor(commonCount / rareCount);
  const fuller = commonCount / turns - k * blocks;
  const block = (length: number) => [...again(length, [common]), rare];
  return again(turns, [...again(fuller, block(k + 1)), ...again(blocks - fuller, block(k))]);
}

/**
 * Reads the same from both ends: runs of k or k + 1 of the commoner kind before, between and after the rarer ones.
 * There must be no odd number of longer stretches among an even number.
 */
function mirrored(shared: Shared): Nested<number> {
  const { rare, common, rareCount, commonCount } = kinds(shared);
  const runs = rareCount + 1;
  const k = Math.floor(commonCount / runs);
  const run = ({ length, times }: RunGroup) => again(times, [...again(length, [common]), rare]);
  return withoutLast(runGroups(runs, k, commonCount - k * runs).flatMap(run))[0];
}

interface RunGroup {
  readonly length: number;
  readonly times: number;
}

/** `fuller` runs of k + 1 among runs of k, as a mirror image: in the middle where the others can flank them, else outside. */
function runGroups(runs: number, k: number, fuller: number): RunGroup[] {
  if (fuller === 0) return [{ length: k, times: runs }];
  const inside = (runs - fuller) % 2 === 0;
  const flank = { length: inside ? k : k + 1, times: (inside ? runs - fuller : fuller) / 2 };
  const middle = { length: inside ? k + 1 : k, times: runs - 2 * flank.times };
  return [flank, middle, flank];
}

function again<T>(times: number, of: Nested<T>): Nested<T> {
  if (times === 0 || of.length === 0) return [];
  return times === 1 ? of : [{ times, of }];
}

/** An entry put before a list; a repeat of that very entry takes it in. */
function prepend<T>(entry: T, list: Nested<T>): Nested<T> {
  const [head, ...rest] = list;
  const joins = head !== undefined && isAgain(head) && head.of.length === 1 && head.of[0] === entry;
  return joins ? [{ times: head.times + 1, of: head.of }, ...rest] : [entry, ...list];
}

/** The list up to its last entry, and that entry. */
function withoutLast<T>(list: Nested<T>): [Nested<T>, T] {
  const end = list.at(-1);
  if (end === undefined) throw new RangeError('an empty list has no last entry');
  const before = list.slice(0, -1);
  if (!isAgain(end)) return [before, end];
  const [rest, last] = withoutLast(end.of);
  return [[...before, ...again(end.times - 1, end.of), ...rest], last];
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
