/** Ease: what a garment measures beyond the body. Amounts by fit, and the table of what each fit would measure. */
import { knitted, type OwnGauge } from './knitted.ts';
import type { Pattern } from './pattern.ts';
import { EASE, OPEN_ENDED_AIM } from './tables/fit-ease.ts';
import type { OriginName } from './tables/origin.ts';
import { type Cm, cm, inches } from './units.ts';
import { FITS, type Fit, type Measurement, type Region } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Every region that takes ease over one measurement; a body's length is worked out from several. */
export type EasedRegion = Exclude<Region, 'body length'>;

/** The measurement over which a region takes its ease. */
export const MEASURED_AT: Readonly<Record<EasedRegion, Measurement>> = {
  bust: 'bust',
  'cross back': 'cross back',
  'armhole depth': 'armhole depth',
  neck: 'neck',
  'upper arm': 'upper arm',
  wrist: 'wrist',
  waist: 'waist',
  hip: 'hip',
  'sleeve length': 'arm length',
};

export interface EaseAmount {
  readonly least: Cm;
  /** Null where there is no upper end. */
  readonly most: Cm | null;
  /** What is worked to: the middle; where there is no upper end, the least of a neck, 2 in above the least elsewhere. */
  readonly aim: Cm;
  readonly origin: OriginName;
}

/** The ease of a region for a fit. Each region has its own; none is scaled from the bust's. */
export function easeAmount(region: EasedRegion, fit: Fit): EaseAmount {
  const row = EASE.find((e) => e.region === region);
  if (row === undefined) throw new Error(`no ease is listed for the ${region}`);
  const [least, most] = row.by[fit];
  const open = region === 'neck' ? least : least + OPEN_ENDED_AIM;
  return {
    least: inches(least),
    most: most === null ? null : inches(most),
    aim: inches(most === null ? open : (least + most) / 2),
    origin: row.origin,
  };
}

/** Body plus ease: the finished measurement. */
export function easeLine(region: Region, body: Cm, ease: Cm): WorkingLine {
  return workOut(
    `finished ${region}`,
    'a + b',
    { a: quantity(`${region} of the body`, body, 'cm'), b: quantity('ease', ease, 'cm') },
    { unit: 'cm' },
  );
}

/** The finished measurement that a fit works to. */
export function easedWidth(region: EasedRegion, body: Cm, fit: Fit): WorkingLine {
  return easeLine(region, body, easeAmount(region, fit).aim);
}

/** Finished minus body: negative where the garment stretches to go round. */
export function easeOf(region: Region, finished: Cm, body: Cm): WorkingLine {
  return workOut(
    'ease',
    'a - b',
    { a: quantity(`finished ${region}`, finished, 'cm'), b: quantity(`${region} of the body`, body, 'cm') },
    { unit: 'cm' },
  );
}

/** The fit whose range at the bust lies nearest to an amount of ease; where two touch, the looser. */
export function fitOf(ease: Cm): Fit {
  const distance = (fit: Fit) => {
    const { least, most } = easeAmount('bust', fit);
    return Math.max(least - ease, most === null ? 0 : ease - most, 0);
  };
  return FITS.reduce((a, b) => (distance(b) <= distance(a) + 1e-9 ? b : a));
}

/** One row of the table of ease. */
export interface EaseRow {
  readonly fit: Fit;
  readonly ease: EaseAmount;
  /** Finished bust to look for. */
  readonly low: Cm;
  /** Null where there is no upper end. */
  readonly high: Cm | null;
  /** Undefined where no size states a bust. */
  readonly nearest?: NearestSize;
  readonly workings: readonly WorkingLine[];
}

/** The size that comes nearest to what a fit works to, at the own gauge. */
export interface NearestSize {
  readonly label: string;
  readonly bust: Cm;
  readonly ease: Cm;
  /** Whether its ease is that of the fit. */
  readonly within: boolean;
}

/** What each fit would measure on this bust, and which size comes nearest to it at the knitter's own gauge. */
export function easeTable(bust: Cm, pattern: Pattern, own: OwnGauge): readonly EaseRow[] {
  return FITS.map((fit) => {
    const ease = easeAmount('bust', fit);
    const least = easeLine('bust', bust, ease.least);
    const most = ease.most === null ? null : easeLine('bust', bust, ease.most);
    const [low, high] = [cm(least.result.value), most === null ? null : cm(most.result.value)];
    const nearest = nearestTo(cm(bust + ease.aim), { low, high }, bust, pattern, own);
    const ranges = most === null || most.result.value === low ? [least] : [least, most];
    return { fit, ease, low, high, workings: [...ranges, ...(nearest?.workings ?? [])], ...nearest?.size };
  });
}

function nearestTo(
  aim: Cm,
  { low, high }: Pick<EaseRow, 'low' | 'high'>,
  body: Cm,
  pattern: Pattern,
  own: OwnGauge,
): { size: { nearest: NearestSize }; workings: readonly WorkingLine[] } | undefined {
  const found = pattern.sizes.flatMap((size) => {
    const bust = knitted('bust', size, pattern, own);
    return bust === undefined ? [] : [{ label: size.label, bust }];
  });
  if (found.length === 0) return undefined;
  const best = found.reduce((a, b) => (isNearer(b.bust.value, a.bust.value, aim) ? b : a));
  const { value, working } = best.bust;
  const ease = easeOf('bust', value, body);
  const within = value >= low - 1e-6 && (high === null || value <= high + 1e-6);
  return {
    size: { nearest: { label: best.label, bust: value, ease: cm(ease.result.value), within } },
    workings: [working, ease],
  };
}

/** Whether `b` comes nearer to the aim than `a`; of two as near, the larger does. Within a ten-thousandth of a mm. */
function isNearer(b: Cm, a: Cm, aim: Cm): boolean {
  const gain = Math.abs(a - aim) - Math.abs(b - aim);
  return gain > 1e-6 || (gain >= -1e-6 && b > a);
}
