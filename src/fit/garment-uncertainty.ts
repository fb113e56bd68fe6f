/** Range and main doubt of every finished measurement of a size at the knitter's gauge, and of its ease on a body. */
import { type Knitted, knitted, type OwnGauge } from './knitted.ts';
import type { Pattern, PatternSize } from './pattern.ts';
import {
  type Estimate,
  fromTape,
  type Source,
  together,
  type Uncertain,
  uncertainty,
} from './uncertainty.ts';
import { type Cm, cm } from './units.ts';
import { MEASUREMENTS, type Measurement, REGIONS, type Region } from './words.ts';

/**
 * One standard error of a tape around a body: breathing, posture and where the tape lies move it by about half a
 * centimetre each way (from memory; measurers in surveys are allowed differences of that order).
 */
export const BODY_TAPE_ERROR = cm(0.5);

export interface RegionSure {
  readonly region: Region;
  readonly finished: Uncertain;
  /** Finished less body, where the body was measured there. */
  readonly ease?: Uncertain;
}

export type Body = Partial<Readonly<Record<Measurement, Cm>>>;

export function garmentUncertainty(
  size: PatternSize,
  pattern: Pattern,
  own: OwnGauge,
  body: Body = {},
): readonly RegionSure[] {
  return REGIONS.flatMap((region) => {
    const found = knitted(region, size, pattern, own);
    if (found === undefined) return [];
    const finished = estimateOf(region, found);
    const measured = isMeasurement(region) ? body[region] : undefined;
    if (measured === undefined) return [{ region, finished: uncertainty(finished) }];
    const tape = fromTape(`body ${region}`, measured, BODY_TAPE_ERROR);
    const ease = together(`ease at the ${region}`, [
      { of: finished, times: 1 },
      { of: tape, times: -1 },
    ]);
    return [{ region, finished: uncertainty(finished), ease: uncertainty(ease) }];
  });
}

function estimateOf(region: Region, found: Knitted): Estimate {
  const on = sourceOf(region, found.from);
  return {
    name: `finished ${region}`,
    expected: found.value,
    through: on === undefined ? {} : { [on]: cm((found.range.low - found.range.expected) / 2) },
    workings: [found.working],
  };
}

/** A length knitted to a tape hangs on no gauge. */
function sourceOf(region: Region, from: Knitted['from']): Source | undefined {
  const sleeves = region === 'upper arm' || region === 'wrist' || region === 'sleeve length';
  switch (from) {
    case 'counts':
    case 'printed width':
      return sleeves ? 'stitch gauge of the sleeves' : 'stitch gauge';
    case 'rows':
      return sleeves ? 'row gauge of the sleeves' : 'row gauge';
    case 'printed length':
      return undefined;
    default:
      return from satisfies never;
  }
}

function isMeasurement(region: Region): region is Region & Measurement {
  return (MEASUREMENTS as readonly string[]).includes(region);
}
