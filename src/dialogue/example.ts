/** The example of a question, in the reader's unit. */
import { cm, formatLength, inches, type LengthUnit, roundHalfUp } from '../fit/units.ts';
import type { Question } from '../flow/schema.ts';

/** Flow files give examples in centimetres; in inches they are shown to the nearest quarter, as a tape is read. */
export function exampleFor({ example, kind }: Question, unit: LengthUnit): string {
  if (unit === 'cm') return example;
  switch (kind) {
    case 'length':
    case 'ease':
      return example.replace(/^([\d.]+) cm$/, (_, n: string) => quarterInch(Number(n)));
    case 'stitch gauge':
    case 'row gauge':
    case 'gauge':
      return example.replace(/(\d+) cm/, (_, n: string) => `${roundHalfUp(Number(n) / 2.54)} in`);
    case 'sizes':
      return example.replace(/\d+/g, (n) => String(roundHalfUp(Number(n) / 2.54))).replace('cm', 'in');
    default:
      return example;
  }
}

function quarterInch(centimetres: number): string {
  return formatLength(inches(roundHalfUp((cm(centimetres) / 2.54) * 4) / 4), 'in');
}
