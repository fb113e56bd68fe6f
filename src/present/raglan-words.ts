/** The raglan lines of back, front and sleeves in knitters' words, with every shaping row and the count after it. */
import type { RaglanLines } from '../fit/plan.ts';
import { RAGLAN_PARTS, type RaglanPart, type RaglanRow } from '../fit/raglan-shape.ts';
import type { Worked } from '../fit/words.ts';
import { wordShaping } from './shaping-words.ts';

const NAMES: Readonly<Record<RaglanPart, string>> = {
  back: 'Back',
  front: 'Front',
  sleeve: 'Each sleeve',
};

/** One line a part; parts that are shaped alike share one. */
export function wordRaglan({ lines, rows, to }: RaglanLines, worked: Worked): string[] {
  const said = RAGLAN_PARTS.map((part) => ({
    part,
    text: wordShaping(lines[part], 'both edges', worked),
  }));
  const texts = [...new Set(said.map((s) => s.text))];
  const word = worked === 'round' ? 'rounds' : 'rows';
  return [
    `Shape the parts at the same time, over ${rows} ${word}:`,
    ...texts.map((text) => {
      const names = said.filter((s) => s.text === text).map((s) => NAMES[s.part]);
      return `\n     - ${names.join(' and ').replace('and Each', 'and each')}: ${text}`;
    }),
    `\n     - All parts together: ${to} stitches at the end.`,
  ];
}

/** 'Rounds that shape, with the count of all stitches after each: 2 (260), 3 (256, back and front) …' */
export function wordRaglanRows({ shaping }: RaglanLines, worked: Worked): string {
  const word = worked === 'round' ? 'Rounds' : 'Rows';
  return `${word} that shape, with the count of all stitches after each: ${shaping.map(wordRow).join(', ')}.`;
}

/** The parts are named where not all of them are shaped. */
function wordRow({ row, change, after }: RaglanRow): string {
  const shaped = RAGLAN_PARTS.filter((part) => change[part] !== 0);
  const which =
    shaped.length === RAGLAN_PARTS.length
      ? ''
      : `, ${shaped.map((part) => (part === 'sleeve' ? 'sleeves' : part)).join(' and ')}`;
  return `${row} (${after}${which})`;
}
