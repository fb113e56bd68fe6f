/** The shaping strip in plain characters: a line a shaping row, the first one lowest, each with a box to tick. */
import { LEAST_COLUMNS, sheetOfCharacters, wrapColumns } from './characters.ts';
import { endWords, type StripFigures } from './strip-figures.ts';
import { countedRows, rowWord } from './words.ts';

export function stripCharacters(strip: StripFigures, columns: number): string {
  const wide = Math.max(columns, LEAST_COLUMNS);
  const word = rowWord(strip.worked, 1);
  const digits = String(strip.rungs.at(-1)?.row ?? 0).length;
  const rungs = strip.rungs.flatMap(({ row, after, plainBefore, note }) => [
    ...(plainBefore === 0 ? [] : [`      ${plainBefore} plain`]),
    ...(note === null ? [] : [`      ${note}`]),
    `[ ] ${word} ${String(row).padStart(digits)}: then ${after} stitches`,
  ]);
  const ladder = [`    start: ${strip.from} stitches`, ...rungs, `    ${endWords(strip)}`].reverse();
  return sheetOfCharacters([
    [...wrapColumns(strip.title, wide), ...wrapColumns(strip.words, wide)],
    [`Read upwards. ${countedRows(strip.rows, strip.worked)} in all.`],
    ladder,
  ]);
}
