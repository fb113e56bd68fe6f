/** A spacing in knitters' words, with every shaping row and the count after it. */
import { PLACES, type ShapedAt } from '../fit/plan.ts';
import type { Run, Spaced } from '../fit/spacing.ts';
import type { Worked } from '../fit/words.ts';

const SIDES: Readonly<Record<ShapedAt, string>> = {
  'both edges': 'at each edge',
  'both sides of the underarm line': 'on each side of the underarm marker',
  'both sides of both side lines': 'on each side of both side markers',
  'both sides of both dart lines': 'on each side of both dart markers',
  'both sides of all four dart lines': 'on each side of all four dart markers',
  'one edge': 'at the edge',
};

/** 'Increase 1 stitch at each edge every 6th row 5 times, then every 8th row 3 times. Then work 10 rows plain.' */
export function wordShaping(spaced: Spaced, at: ShapedAt, worked: Worked): string {
  const word = worked === 'round' ? 'round' : 'row';
  const verb = spaced.to > spaced.from ? 'Increase' : 'Decrease';
  const each = spaced.perRow / PLACES[at];
  const what = `${verb} ${each} ${each === 1 ? 'stitch' : 'stitches'} ${SIDES[at]}`;
  if (spaced.shaping.length === 0)
    return `Work ${rowsWord(spaced.rows, word)} plain: the count stays at ${spaced.from}.`;
  const after = spaced.plainAfter === 0 ? '' : ` Then work ${rowsWord(spaced.plainAfter, word)} plain.`;
  return `${wordRuns(spaced, what, word)}${after} You end with ${spaced.to} stitches.`;
}

/** 'Shaping rows (count after each): 6 (52), 12 (54) …' */
export function wordSchedule(spaced: Spaced, worked: Worked): string {
  const word = worked === 'round' ? 'Rounds' : 'Rows';
  return `${word} that shape, with the count after each: ${spaced.shaping.map((s) => `${s.row} (${s.after})`).join(', ')}.`;
}

function wordRuns(spaced: Spaced, what: string, word: string): string {
  const first = spaced.shaping[0]?.row ?? 0;
  const [head, ...rest] = spaced.runs;
  if (head === undefined) return '';
  const then = rest.map((run) => `, then ${every(run.every, word)} ${times(run.times)}`).join('');
  if (first === head.every && spaced.base === 0)
    return `${what} ${every(head.every, word)} ${times(head.times)}${then}.`;
  const plain =
    first === 1
      ? `${what} on the first ${word}`
      : `Work ${rowsWord(first - 1, word)} plain. ${what} on the next ${word}`;
  return `${plain}${more(head, word)}${then}.`;
}

function more(head: Run, word: string): string {
  return head.times === 1 ? '' : ` and on ${every(head.every, word)} after it ${times(head.times - 1)} more`;
}

function every(n: number, word: string): string {
  return n === 1 ? `every ${word}` : `every ${ordinal(n)} ${word}`;
}

function times(n: number): string {
  return n === 1 ? 'once' : `${n} times`;
}

function rowsWord(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? '' : 's'}`;
}

export function ordinal(n: number): string {
  const ending = n % 100 >= 11 && n % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}
