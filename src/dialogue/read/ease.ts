/** Reads an amount of ease: '+2 in', '-1"', '5-10 cm / 2-4" of positive ease'. A figure without a sign is positive. */
import type { LengthUnit } from '../../fit/units.ts';
import type { Heard } from './heard.ts';
import { echoMagnitude, type LengthRange, magnitude, readSigned } from './signed.ts';
import { echoLength, figure, otherUnit } from './tape.ts';

export function readEase(text: string, unit: LengthUnit | undefined): Heard<LengthRange> {
  return readSigned(text, {
    expected: { what: 'an amount of ease', example: unit === 'in' ? '+2 in' : '+5 cm' },
    unit,
    unsigned: 'more',
    echo: (range) => echoEase(range, unit),
  });
}

/** '5 cm (2 in) of positive ease', '−2.5 cm (−1 in) to 5 cm (2 in) of ease', 'no ease (0 cm)'. */
function echoEase({ low, high }: LengthRange, own: LengthUnit | undefined): string {
  const first = own ?? low.typed.unit;
  if (low.cm === 0 && high.cm === 0) return `no ease (0 ${first})`;
  const kind = low.cm < 0 ? 'negative' : 'positive';
  if (low.cm === high.cm) return `${echoMagnitude(low, own)} of ${kind} ease`;
  if (low.cm < 0 && high.cm > 0) return `${echoLength(low, own)} to ${echoLength(high, own)} of ease`;
  const [near, far] = low.cm < 0 ? [magnitude(high), magnitude(low)] : [low, high];
  const range = (unit: LengthUnit) => `${figure(near, unit)}–${figure(far, unit)} ${unit}`;
  return `${range(first)} (${range(otherUnit(first))}) of ${kind} ease`;
}
