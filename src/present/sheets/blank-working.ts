/** A line of workings with its numbers left open, to be filled in by hand in the order in which the program works. */
import type { LengthUnit } from '../../fit/units.ts';
import type { QuantityUnit, WorkingLine } from '../../fit/working.ts';
import { SIGNS, wordRounding } from '../workings-text.ts';

const BLANK = '__________';

/** '____ cm (finished waist) × ____ stitches per cm = ____, to the nearest whole number: ____ stitches' */
export function blankWorking(line: WorkingLine, unit: LengthUnit): string {
  const put = line.formula
    .replace(/[A-Za-z][A-Za-z0-9]*|[-+*/()]/g, (token) => {
      const given = line.given[token];
      if (given === undefined) return SIGNS[token] ?? token;
      const open = blankOf(given.unit, unit);
      return open.includes(given.name) ? open : `${open} (${given.name})`;
    })
    .replace(/\s+/g, ' ');
  const result = blankOf(line.result.unit, unit);
  if (line.rounding === undefined) return `${put} = ${result}`;
  return `${put} = ${BLANK}, ${wordRounding(line.rounding)}: ${result}`;
}

function blankOf(of: QuantityUnit, unit: LengthUnit): string {
  const words = UNITS[of].replace('cm', unit);
  return words === '' ? BLANK : `${BLANK} ${words}`;
}

const UNITS: Readonly<Record<QuantityUnit, string>> = {
  cm: 'cm',
  'cm²': 'square cm',
  g: 'g',
  m: 'm',
  stitches: 'stitches',
  rows: 'rows',
  'stitches/cm': 'stitches per cm',
  'rows/cm': 'rows per cm',
  'g/cm²': 'g per square cm',
  '/cm': 'per cm',
  times: '',
  ratio: '',
};
