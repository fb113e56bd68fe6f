/**
 * Another gauge, the pattern's own counts: which size's counts come nearest to the width wanted, and what else that size
 * then measures. Common practice where the gauge is a little off and no figure is to be worked out anew.
 */
import { finishedLength } from './contradiction.ts';
import type { Gauge } from './gauge.ts';
import { type Pattern, type PatternSize, ROWED, type Rowed } from './pattern.ts';
import { type Cm, cm } from './units.ts';
import type { Region } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface SizeAtGauge {
  readonly label: string;
  /** Finished widths at the knitter's gauge. */
  readonly widths: Partial<Readonly<Record<Region, Cm>>>;
  /** Lengths that the pattern counts in rows, at the knitter's gauge. */
  readonly lengths: Partial<Readonly<Record<Rowed, Cm>>>;
  /** The width in question less the one wanted. */
  readonly off: Cm;
  readonly workings: readonly WorkingLine[];
}

const WIDTHS: readonly Region[] = ['bust', 'waist', 'hip', 'cross back', 'neck', 'upper arm', 'wrist'];

/** All sizes that state the width, the nearest first; of two as near, the larger. Empty where none states it. */
export function sizesAtGauge(
  pattern: Pattern,
  own: Gauge,
  region: Region,
  wanted: Cm,
): readonly SizeAtGauge[] {
  return pattern.sizes
    .flatMap((size) =>
      size.finished[region] === undefined ? [] : [atGauge(pattern, size, own, region, wanted)],
    )
    .sort((a, b) => Math.abs(a.off) - Math.abs(b.off) || b.off - a.off);
}

function atGauge(pattern: Pattern, size: PatternSize, own: Gauge, region: Region, wanted: Cm): SizeAtGauge {
  const { count, span } = pattern.gauge.stitches;
  const widths = WIDTHS.flatMap((r) => {
    const printed = size.finished[r];
    if (printed === undefined) return [];
    const line = workOut(
      `${r} of size ${size.label} at the own gauge`,
      'a * b / c',
      {
        a: finishedLength(r, printed),
        b: quantity('gauge of the pattern', count / span, 'stitches/cm'),
        c: quantity('own gauge', own.stitches.perCm, 'stitches/cm'),
      },
      { unit: 'cm' },
    );
    return [{ region: r, line }];
  });
  const lengths = ROWED.flatMap((stretch) => {
    const rows = size.rows?.[stretch];
    if (rows === undefined) return [];
    const line = workOut(
      `length of the ${stretch} of size ${size.label} at the own gauge`,
      'a / b',
      { a: quantity(`${stretch} rows`, rows, 'rows'), b: quantity('own gauge', own.rows.perCm, 'rows/cm') },
      { unit: 'cm' },
    );
    return [{ stretch, line }];
  });
  const width = widths.find((w) => w.region === region)?.line.exact ?? wanted;
  return {
    label: size.label,
    widths: Object.fromEntries(widths.map((w) => [w.region, cm(w.line.exact)])),
    lengths: Object.fromEntries(lengths.map((l) => [l.stretch, cm(l.line.exact)])),
    off: cm(width - wanted),
    workings: [...widths, ...lengths].map((w) => w.line),
  };
}
