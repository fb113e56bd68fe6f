/** A gauge as printed, for tests: stitches and rows over 10 cm, or over 4 in. */
import { type Gauge, rateAsPrinted } from '../../src/fit/gauge.ts';
import { cm, inches } from '../../src/fit/units.ts';

export function over10cm(stitches: number, rows: number, worked: Gauge['worked'] = 'flat'): Gauge {
  const rate = (count: number) => rateAsPrinted({ count, span: cm(10), unit: 'cm' });
  return { stitches: rate(stitches), rows: rate(rows), worked };
}

export function over4in(stitches: number, rows: number, worked: Gauge['worked'] = 'flat'): Gauge {
  const rate = (count: number) => rateAsPrinted({ count, span: inches(4), unit: 'in' });
  return { stitches: rate(stitches), rows: rate(rows), worked };
}
