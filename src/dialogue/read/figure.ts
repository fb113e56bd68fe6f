/** Reads her own figure for a sum: a length with or without its unit, or a number with what it counts beside it. */
import { inUnit } from '../../fit/in-unit.ts';
import type { Sum } from '../../fit/sum.ts';
import { formatDecimal } from '../../fit/units.ts';
import { type Expected, type Heard, heard, type Refused, refused, type Understood } from './heard.ts';
import { readLength } from './length.ts';
import { isRefused, listen } from './listen.ts';
import { soleNumber } from './number.ts';
import type { Meaning } from './vocabulary.ts';

/** What may stand beside a number that is no length. */
const BESIDE: readonly Meaning[] = [
  'stitch',
  'row',
  'times',
  'stitches per inch',
  'rows per inch',
  'per',
  'inch',
  'cm',
  'gram',
  'metre',
  'yard',
  'ball',
];

/** The figure in the reader's unit. Nothing is put back to her: a figure that is tried may be typed again. */
export function readFigure(text: string, { line, unit }: Sum, example: string): Understood<number> | Refused {
  const expected: Expected = { what: 'one figure', example };
  if (line.result.unit === 'cm') return ofLength(readLength(text, { unit }), expected, unit);
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const sole = soleNumber(tokens, BESIDE);
  if (sole.kind === 'refused') return refused(sole.reason, expected);
  if (sole.kind === 'two') return refused('several numbers', expected);
  if (sole.value < 0) return refused('negative', expected);
  return heard(sole.value, formatDecimal(sole.value, 3));
}

function ofLength(
  read: Heard<{ readonly cm: number }>,
  expected: Expected,
  unit: Sum['unit'],
): Understood<number> | Refused {
  switch (read.kind) {
    case 'heard':
    case 'ask back':
      return heard(inUnit(read.value.cm, 'cm', unit), read.echo);
    case 'which':
      return refused('several numbers', expected);
    case 'refused':
      return read;
    default:
      return read satisfies never;
  }
}
