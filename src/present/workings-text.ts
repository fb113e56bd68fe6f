/** Workings as lines that a learner can check by hand: names, numbers put in, result, rounding. */
import { inUnit } from '../fit/in-unit.ts';
import { formatDecimal } from '../fit/units.ts';
import type { Quantity, Rounding, WorkingLine } from '../fit/working.ts';
import { formatQuantity, type Reader } from './quantity.ts';
import { namesIn } from './terms.ts';
import type { Voice } from './wording.ts';

/** Signs of arithmetic as they are printed. */
export const SIGNS: Readonly<Record<string, string>> = {
  '*': '×',
  '/': '÷',
  '-': '−',
  '+': '+',
  '(': '(',
  ')': ')',
};

/** 'stitches at the waist = 86.4 cm (width at the waist) × 2.2 stitches per cm = 190.08, rounded to … = 192 stitches' */
export function wordWorking(line: WorkingLine, voice: Voice): string {
  return namesIn(wordLine(line, voice), voice.dialect);
}

function wordLine(line: WorkingLine, voice: Reader): string {
  const reader: Reader = { ...voice, fine: true };
  const put = line.formula
    .replace(/[A-Za-z][A-Za-z0-9]*|[-+*/()]/g, (token) => {
      const q = line.given[token];
      if (q === undefined) return SIGNS[token] ?? token;
      return namedQuantity(q, reader);
    })
    .replace(/\s+/g, ' ');
  const result = formatQuantity(line.result, reader);
  const label = inRounds(line.label, reader);
  if (line.rounding === undefined) return `${label} = ${put} = ${result}`;
  const exact = formatDecimal(inUnit(line.exact, line.result.unit, reader.unit), 2);
  return `${label} = ${put} = ${exact}, ${wordRounding(line.rounding)}: ${result}`;
}

/** '88 cm (width at the waist)'; the name is left out where the figure says it. */
export function namedQuantity(q: Quantity, reader: Reader): string {
  const number = formatQuantity(q, reader);
  const name = inRounds(q.name, reader);
  return number.includes(name) ? number : `${number} (${name})`;
}

/** Names and labels say rows; of what is worked in the round they are rounds, but for short rows. */
export function inRounds(words: string, { worked }: Pick<Reader, 'worked'>): string {
  return worked === 'round' ? words.replace(/(?<!short |-side )\brow(s?)\b(?!-)/g, 'round$1') : words;
}

/** How an exact value became the one that is used, in words. */
export function wordRounding(rounding: Rounding): string {
  switch (rounding.to) {
    case 'whole':
      return 'to the nearest whole number';
    case 'whole down':
      return 'rounded down';
    case 'whole up':
      return 'rounded up';
    case 'even':
      return 'to the nearest even number';
    case 'multiple': {
      if (rounding.multiple === 1) return 'to the nearest whole number';
      // Edge stitches may fill whole repeats: 4 more than a multiple of 4 is a multiple of 4.
      const plus = rounding.plus % rounding.multiple;
      return `to the nearest multiple of ${rounding.multiple}${plus === 0 ? '' : `, plus ${plus}`}`;
    }
    default:
      return rounding satisfies never;
  }
}
