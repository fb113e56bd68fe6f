/**
 * Which size of a pattern to knit: every size is compared with the targets, at the knitter's own gauge, region by
 * region, and each difference is priced by how hard it is to change.
 */
import type { Rate } from './gauge.ts';
import { gaugeToReach, type Knitted, knitted, type OwnGauge } from './knitted.ts';
import type { Pattern, PatternSize } from './pattern.ts';
import type { Target, Targets } from './targets.ts';
import { type Cm, cm } from './units.ts';
import { REGIONS, type Region } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export const EFFORTS = ['hard', 'work', 'easy'] as const;
/** How hard a region is to change once the size is chosen. */
export type Effort = (typeof EFFORTS)[number];

/** Price of one centimetre: our own weights, not published; only their order is the trade's. */
export const PRICE_PER_CM: Readonly<Record<Effort, number>> = { hard: 4, work: 2, easy: 0.5 };

export const EFFORT: Readonly<Record<Region, Effort>> = {
  bust: 'work',
  'cross back': 'hard',
  'armhole depth': 'hard',
  neck: 'hard',
  'upper arm': 'work',
  wrist: 'easy',
  waist: 'easy',
  hip: 'easy',
  'body length': 'easy',
  'sleeve length': 'easy',
};

/** One region of one size beside its target. */
export interface Reason {
  readonly region: Region;
  readonly knitted: Knitted;
  readonly target: Target;
  /** Knitted minus aim; nought where a neck is wide enough. */
  readonly difference: Cm;
  readonly within: boolean;
  readonly effort: Effort;
  readonly price: number;
  readonly workings: readonly WorkingLine[];
}

export interface RankedSize {
  readonly label: string;
  readonly price: number;
  /** The most expensive first. */
  readonly reasons: readonly Reason[];
  readonly workings: readonly WorkingLine[];
}

/** The wanted bust lies outside all sizes. */
export interface Beyond {
  readonly end: 'largest' | 'smallest';
  readonly label: string;
  /** Wanted minus what that size will measure. */
  readonly by: Cm;
  /** Stitches all round that this is at the own gauge, before any repeat is respected. */
  readonly stitches: WorkingLine;
  /** The gauge at which that size would come out as wanted. */
  readonly gauge: WorkingLine;
}

export interface Ranking {
  readonly kind: 'ranked';
  readonly best: RankedSize;
  /** Every size, cheapest first; of two that cost the same, the larger. */
  readonly ranking: readonly RankedSize[];
  /** Regions with a target for which not every size gives a figure: left out of the comparison. */
  readonly leftOut: readonly Region[];
  readonly beyond?: Beyond;
}

/** No region has both a target and a figure in every size. */
export interface NothingToCompare {
  readonly kind: 'nothing to compare';
  readonly leftOut: readonly Region[];
}

export type SizeChoice = Ranking | NothingToCompare;

/** Ranks all sizes of a pattern against the targets. */
export function chooseSize(pattern: Pattern, targets: Targets, own: OwnGauge): SizeChoice {
  const wanted = REGIONS.filter((region) => targets[region] !== undefined && hasPlace(region, pattern));
  const compared = wanted.filter((region) => pattern.sizes.every((s) => knitted(region, s, pattern, own)));
  const leftOut = wanted.filter((region) => !compared.includes(region));
  const ranking = pattern.sizes
    .map((size) => ({
      size: priced(size, compared, pattern, targets, own),
      bust: bustOf(size, pattern, own),
    }))
    .sort((a, b) => millionths(a.size.price) - millionths(b.size.price) || b.bust - a.bust)
    .map(({ size }) => size);
  const best = ranking[0];
  if (best === undefined || compared.length === 0) return { kind: 'nothing to compare', leftOut };
  const beyond = beyondSizes(pattern, targets.bust, own);
  return { kind: 'ranked', best, ranking, leftOut, ...(beyond === undefined ? {} : { beyond }) };
}

/** Only a set-in sleeve leaves a cross back to compare: a dropped shoulder has half the bust there, a yoke has none. */
function hasPlace(region: Region, pattern: Pattern): boolean {
  return region !== 'cross back' || pattern.construction === 'set-in';
}

function priced(
  size: PatternSize,
  regions: readonly Region[],
  pattern: Pattern,
  targets: Targets,
  own: OwnGauge,
): RankedSize {
  const reasons = regions
    .flatMap((region) => {
      const [target, real] = [targets[region], knitted(region, size, pattern, own)];
      return target === undefined || real === undefined ? [] : [reason(region, real, target)];
    })
    .sort((a, b) => b.price - a.price);
  const total = totalLine(size.label, reasons);
  return { label: size.label, price: total.result.value, reasons, workings: [total] };
}

function reason(region: Region, real: Knitted, target: Target): Reason {
  const { aim, low, high, atLeast } = target;
  const difference = real.value - aim;
  const within = real.value >= low - 1e-6 && (high === null || real.value <= high + 1e-6);
  const shared = { region, knitted: real, target, within, effort: EFFORT[region] };
  if (atLeast && within) return { ...shared, difference: cm(0), price: 0, workings: [real.working] };
  const given = {
    a: quantity(`${region} as you will knit it`, real.value, 'cm'),
    b: quantity(`${region} wanted`, aim, 'cm'),
  };
  const smaller = difference < 0;
  const apart = workOut(smaller ? 'smaller by' : 'larger by', smaller ? 'b - a' : 'a - b', given, {
    name: `${region} ${smaller ? 'smaller by' : 'larger by'}`,
    unit: 'cm',
  });
  const cost = workOut(
    `price of the ${region}`,
    'a * b',
    {
      a: apart.result,
      b: quantity(`price, ${EFFORT[region]} to change`, PRICE_PER_CM[EFFORT[region]], '/cm'),
    },
    { unit: 'ratio' },
  );
  return {
    ...shared,
    difference: cm(difference),
    price: cost.result.value,
    workings: [real.working, apart, cost],
  };
}

/** Letters of a sum; there are as many as regions. */
const LETTERS = 'abcdefghij';

function totalLine(label: string, reasons: readonly Reason[]): WorkingLine {
  const letters = reasons.map((_, i) => LETTERS.charAt(i));
  const given = Object.fromEntries(
    reasons.map((r, i) => [LETTERS.charAt(i), quantity(`price of the ${r.region}`, r.price, 'ratio')]),
  );
  return workOut(`price of size ${label}`, letters.join(' + ') || '0', given, { unit: 'ratio' });
}

function bustOf(size: PatternSize, pattern: Pattern, own: OwnGauge): number {
  return knitted('bust', size, pattern, own)?.value ?? 0;
}

/** Prices that differ by less than a millionth are the same: inches and centimetres rank alike. */
function millionths(price: number): number {
  return Math.round(price * 1e6);
}

function beyondSizes(pattern: Pattern, target: Target | undefined, own: OwnGauge): Beyond | undefined {
  const sizes = pattern.sizes
    .flatMap((size) => {
      const real = knitted('bust', size, pattern, own);
      return real === undefined ? [] : [{ label: size.label, bust: real.value }];
    })
    .sort((a, b) => a.bust - b.bust);
  const [smallest, largest] = [sizes[0], sizes.at(-1)];
  if (target === undefined || smallest === undefined || largest === undefined) return undefined;
  const rate = own.body.stitches;
  if (target.low > largest.bust + 1e-6) return { end: 'largest', ...beyondBy(largest, target.aim, rate) };
  const below = target.high !== null && target.high < smallest.bust - 1e-6;
  return below ? { end: 'smallest', ...beyondBy(smallest, target.aim, rate) } : undefined;
}

function beyondBy(end: { label: string; bust: Cm }, aim: Cm, rate: Rate): Omit<Beyond, 'end'> {
  const wanted = quantity('bust wanted', aim, 'cm');
  const real = quantity(`bust of size ${end.label} as you will knit it`, end.bust, 'cm');
  const own = quantity('own stitches', rate.perCm, 'stitches/cm');
  return {
    label: end.label,
    by: cm(aim - end.bust),
    stitches: workOut(
      aim > end.bust ? 'stitches to add all round' : 'stitches to leave out all round',
      aim > end.bust ? '(a - b) * c' : '(b - a) * c',
      { a: wanted, b: real, c: own },
      { unit: 'stitches', rounding: { to: 'whole' } },
    ),
    gauge: gaugeToReach(end.bust, rate, aim),
  };
}
