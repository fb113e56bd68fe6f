/**
 * Another gauge, the pattern's own counts: which size's counts come nearest to the width wanted, and what else that size
 * then measures. Common practice where the gauge is a little off and no figure is to be worked out anew.
 */
import { knitted, type OwnGauge } from './knitted.ts';
import type { Pattern, PatternSize } from './pattern.ts';
import { type Cm, cm } from './units.ts';
import { REGIONS, type Region } from './words.ts';
import type { WorkingLine } from './working.ts';

export interface SizeAtGauge {
  readonly label: string;
  /** Finished measurements at the knitter's gauge. */
  readonly measures: Partial<Readonly<Record<Region, Cm>>>;
  /** The measurement in question less the one wanted. */
  readonly off: Cm;
  readonly workings: readonly WorkingLine[];
}

/** All sizes that state the measurement, the nearest first; of two as near, the larger. Empty where none states it. */
export function sizesAtGauge(
  pattern: Pattern,
  own: OwnGauge,
  region: Region,
  wanted: Cm,
): readonly SizeAtGauge[] {
  return pattern.sizes
    .flatMap((size) => atGauge(pattern, size, own, region, wanted) ?? [])
    .sort((a, b) => Math.abs(a.off) - Math.abs(b.off) || b.off - a.off);
}

function atGauge(
  pattern: Pattern,
  size: PatternSize,
  own: OwnGauge,
  region: Region,
  wanted: Cm,
): SizeAtGauge | undefined {
  const found = REGIONS.flatMap((r) => {
    const measure = knitted(r, size, pattern, own);
    return measure === undefined ? [] : [{ region: r, measure }];
  });
  const asked = found.find((f) => f.region === region);
  if (asked === undefined) return undefined;
  return {
    label: size.label,
    measures: Object.fromEntries(found.map((f) => [f.region, f.measure.value])),
    off: cm(asked.measure.value - wanted),
    workings: found.map((f) => f.measure.working),
  };
}
