/**
 * Finished measurements to look for in a pattern: from a body and a fit, or from a garment that already fits.
 *
 * Where the bust exceeds the upper bust by more than patterns are drafted for (2 in, 5 cm), the size follows the upper
 * bust, so that the shoulders fit, and what the bust needs beyond it goes to the front, as dressmaking practice has it.
 */
import type { Body } from './bounds.ts';
import { type EasedRegion, easeAmount, easeLine, fitOf, MEASURED_AT } from './ease.ts';
import { BELOW_WAIST, type GarmentLength, STANDARD_BUST_DIFFERENCE } from './tables/fit-ease.ts';
import type { OriginName } from './tables/origin.ts';
import { type Cm, cm, inches } from './units.ts';
import { type Fit, REGIONS, type Region } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** The finished measurement wanted of one region. */
export interface Target {
  /** What is worked to. */
  readonly aim: Cm;
  /** The range that the fit allows. */
  readonly low: Cm;
  /** Null where there is no upper end. */
  readonly high: Cm | null;
  /** A neck is wide enough or not: more than this is a matter of style and costs nothing. */
  readonly atLeast: boolean;
  /** Where the ease comes from; null where the figure was measured or asked for. */
  readonly origin: OriginName | null;
  readonly workings: readonly WorkingLine[];
}

export type Targets = Partial<Readonly<Record<Region, Target>>>;

/** Bust beyond what the size allows for: darts in the front, or stitches for the front alone. */
export interface FrontExtra {
  readonly extra: Cm;
  /** The bust by which the size is chosen. */
  readonly sizeBust: Cm;
  readonly workings: readonly WorkingLine[];
}

export interface Wanted {
  readonly fit: Fit;
  readonly targets: Targets;
  readonly front?: FrontExtra;
}

/** A fit by name, or an amount of ease at the bust. */
export type EaseWish = { readonly fit: Fit } | { readonly ease: Cm };

/**
 * Targets for every region whose measurement is known. A length below the waist gives the body's length too, where one
 * is published for the table and back length and armhole depth are known.
 */
export function targetsFor(body: Body, wish: EaseWish, length?: GarmentLength): Wanted {
  const fit = 'fit' in wish ? wish.fit : fitOf(wish.ease);
  const front = frontExtra(body);
  const targets: { -readonly [R in Region]?: Target } = {};
  for (const region of REGIONS) {
    const target =
      region === 'body length'
        ? bodyLength(body, targets['armhole depth'], length)
        : fromBody(region, body, fit, front, wish);
    if (target !== undefined) targets[region] = target;
  }
  return { fit, targets, ...(front === undefined ? {} : { front }) };
}

/** Targets read off a garment that fits: the ease is already in it. */
export function targetsFromGarment(measured: Partial<Readonly<Record<Region, Cm>>>): Targets {
  const entries = REGIONS.flatMap((region) => {
    const value = measured[region];
    if (value === undefined) return [];
    const given = { a: quantity(`${region} of the garment that fits`, value, 'cm') };
    return [[region, fixed(workOut(`finished ${region}`, 'a', given, { unit: 'cm' }))] as const];
  });
  return Object.fromEntries(entries);
}

function fromBody(
  region: EasedRegion,
  body: Body,
  fit: Fit,
  front: FrontExtra | undefined,
  wish: EaseWish,
): Target | undefined {
  const measured = body.known[MEASURED_AT[region]];
  if (measured === undefined) return undefined;
  const base = region === 'bust' ? (front?.sizeBust ?? measured) : measured;
  const before = region === 'bust' ? (front?.workings ?? []) : [];
  if (region === 'bust' && 'ease' in wish) return fixed(easeLine(region, base, wish.ease), before);
  const { least, most, aim, origin } = easeAmount(region, fit);
  const line = easeLine(region, base, aim);
  return {
    aim: cm(line.result.value),
    low: cm(base + least),
    high: most === null ? null : cm(base + most),
    atLeast: region === 'neck',
    origin,
    workings: [...before, line],
  };
}

function frontExtra({ known: { bust, 'upper bust': upper } }: Body): FrontExtra | undefined {
  if (bust === undefined || upper === undefined) return undefined;
  const given = {
    a: quantity('upper bust', upper, 'cm'),
    b: quantity('what patterns allow above the upper bust', inches(STANDARD_BUST_DIFFERENCE), 'cm'),
  };
  const size = workOut('bust to choose the size by', 'a + b', given, { unit: 'cm' });
  const full = { a: quantity('bust', bust, 'cm'), b: size.result };
  const extra = workOut('more for the front', 'a - b', full, { unit: 'cm' });
  if (extra.result.value <= 1e-9) return undefined;
  return { extra: cm(extra.result.value), sizeBust: cm(size.result.value), workings: [size, extra] };
}

/** Hem to underarm: the back to the waist, less the armhole, plus what hangs below the waist. */
function bodyLength(
  { table, known }: Body,
  armhole: Target | undefined,
  length: GarmentLength | undefined,
): Target | undefined {
  const below = length === undefined ? undefined : BELOW_WAIST[table]?.[length];
  const back = known['back length'];
  if (below === undefined || back === undefined || armhole === undefined) return undefined;
  const given = {
    a: quantity('back length', back, 'cm'),
    b: quantity('finished armhole depth', armhole.aim, 'cm'),
    c: quantity(`below the waist, ${length} length`, inches(below), 'cm'),
  };
  const line = workOut('finished body length', 'a - b + c', given, { unit: 'cm' });
  return { ...fixed(line, armhole.workings), origin: 'council' };
}

function fixed(line: WorkingLine, before: readonly WorkingLine[] = []): Target {
  const aim = cm(line.result.value);
  return { aim, low: aim, high: aim, atLeast: false, origin: null, workings: [...before, line] };
}
