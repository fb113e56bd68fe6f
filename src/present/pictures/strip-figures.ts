/** A section's shaping as a ladder to climb: every shaping row with the plain rows before it and the count after it. */
import type { Instruction, ShapedAt, Step } from '../../fit/plan.ts';
import type { Worked } from '../../fit/words.ts';
import { wordSchedule, wordShaping } from '../shaping-words.ts';
import type { View } from '../view.ts';
import { wordPhrase } from '../wording.ts';
import { capital, countedRows } from './words.ts';

export interface Rung {
  /** Counted from 1, the first row of the section. */
  readonly row: number;
  readonly after: number;
  readonly plainBefore: number;
}

export interface StripFigures {
  readonly title: string;
  readonly worked: Worked;
  readonly from: number;
  /** In the order of knitting. */
  readonly rungs: readonly Rung[];
  readonly plainAfter: number;
  readonly rows: number;
  /** The whole in knitters' words. */
  readonly words: string;
  readonly schedule: string;
}

type Shape = Extract<Instruction, { do: 'shape' }>;

/** One for each instruction of the step that shapes. */
export function stripsOf(step: Step, view: View): StripFigures[] {
  const worked = step.worked ?? 'flat';
  const where = wordPhrase(step.where, { ...view, worked });
  const title = step.piece === 'all' ? where : `${capital(step.piece)}: ${where}`;
  const shapes = step.instead.filter((i): i is Shape => i.do === 'shape' && i.spaced.shaping.length > 0);
  return shapes.map(({ spaced, at }) => stripFigures(title, spaced, at, worked));
}

function stripFigures(title: string, spaced: Shape['spaced'], at: ShapedAt, worked: Worked): StripFigures {
  return {
    title,
    worked,
    from: spaced.from,
    rungs: spaced.shaping.map(({ row, after }, i) => ({
      row,
      after,
      plainBefore: row - (spaced.shaping[i - 1]?.row ?? 0) - 1,
    })),
    plainAfter: spaced.plainAfter,
    rows: spaced.rows,
    words: wordShaping(spaced, at, worked),
    schedule: wordSchedule(spaced, worked),
  };
}

export function endWords({ plainAfter }: StripFigures): string {
  return plainAfter === 0 ? 'end' : `then ${plainAfter} plain`;
}

export function stripAlternative(strip: StripFigures): string {
  const from = `It begins with ${strip.from} stitches and has ${countedRows(strip.rows, strip.worked)}.`;
  return `${strip.title}. ${from} ${strip.words} ${strip.schedule}`;
}
