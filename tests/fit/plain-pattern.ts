/** Plain patterns and gauges for the tests of ease and size. */
import type { Gauge } from '../../src/fit/gauge.ts';
import { rateAsPrinted } from '../../src/fit/gauge.ts';
import type { OwnGauge } from '../../src/fit/knitted.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { cm, inches, type LengthUnit } from '../../src/fit/units.ts';

const TEN_CM = { cm: cm(10), in: inches(4) };

/** So many stitches and rows to 10 cm, or to 4 in. */
export function gaugeOf(stitches: number, rows: number, unit: LengthUnit): Gauge {
  const rate = (count: number) => rateAsPrinted({ count, span: TEN_CM[unit], unit });
  return { stitches: rate(stitches), rows: rate(rows), worked: 'round' };
}

export function bothOf(gauge: Gauge): OwnGauge {
  return { body: gauge, sleeves: gauge };
}

export function patternOf(
  gauge: { readonly stitches: number; readonly rows: number; readonly unit: LengthUnit },
  sizes: readonly PatternSize[],
  more: Partial<Pattern> = {},
): Pattern {
  const count = (n: number) => ({ count: n, span: TEN_CM[gauge.unit], unit: gauge.unit });
  return {
    name: 'a plain pullover',
    construction: 'set-in',
    direction: 'up',
    body: 'round',
    sleeves: 'round',
    gauge: { stitches: count(gauge.stitches), rows: count(gauge.rows) },
    edge: { body: 0, sleeves: 0 },
    repeat: { multiple: 1, plus: 0 },
    edging: { hem: cm(5), cuff: cm(5) },
    ...more,
    sizes,
  };
}

/** Sizes of which the pattern prints the finished bust alone. */
export function bustSizes(unit: LengthUnit, ...busts: readonly number[]): PatternSize[] {
  return busts.map((bust) => ({
    label: `${bust}`,
    finished: { bust: unit === 'in' ? inches(bust) : cm(bust) },
    counts: {},
  }));
}
