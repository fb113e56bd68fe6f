/** Turns of phrase that several pictures share. */
import type { Step } from '../../fit/plan.ts';
import { type Cm, cm, formatLength, type LengthUnit } from '../../fit/units.ts';
import type { PieceName, Worked } from '../../fit/words.ts';
import type { View } from '../view.ts';
import { wordPhrase } from '../wording.ts';

export function rowWord(worked: Worked | null, count: number): string {
  const one = worked === 'round' ? 'round' : 'row';
  return count === 1 ? one : `${one}s`;
}

export function countedRows(count: number, worked: Worked | null): string {
  return `${count} ${rowWord(worked, count)}`;
}

export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** 'Body, in the round'. */
export function pieceTitle(name: PieceName, worked: Worked): string {
  return `${capital(name)}, ${worked === 'round' ? 'in the round' : 'flat'}`;
}

/** Abbreviations written out, for those who listen. */
export function spoken(text: string): string {
  return text.replace(/(\d) sts\b/g, (_, digit: string) => `${digit} stitches`);
}

export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** 'Sleeve: From the cuff to the underarm'. */
export function stepTitle(step: Step, view: View): string {
  const where = wordPhrase(step.where, { ...view, worked: step.worked });
  return step.piece === 'all' ? where : `${capital(step.piece)}: ${where}`;
}

/** '4.5 cm less', '2 in more', 'as wanted' where the tape shows no difference. */
export function wordDifference(difference: Cm, unit: LengthUnit): string {
  const off = formatLength(cm(Math.abs(difference)), unit);
  if (off === `0 ${unit}`) return 'as wanted';
  return `${off} ${difference < 0 ? 'less' : 'more'}`;
}
