/** The answer key as one page of plain text. */
import type { Outcome } from '../fit/plan.ts';
import { answerKey, type KeyPart, SHOWN_ROUNDED, type StartingFigure, wordAlso } from './key.ts';
import type { Dialect } from './terms.ts';

/** The whole page, ending with a line break. */
export function keyText(outcome: Outcome, answers: readonly StartingFigure[], dialect: Dialect): string {
  const { from, parts } = answerKey(outcome, answers, dialect);
  const blocks = [
    `Answer key\n${SHOWN_ROUNDED}`,
    ...(from.length === 0 ? [] : [['It starts from:', ...from.map((line) => `- ${line}`)].join('\n')]),
    ...parts.map(partText),
    ...(parts.length === 0 ? ['Nothing is worked out: there is no sum in it.'] : []),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function partText({ title, lines, also, rows }: KeyPart): string {
  return [
    /^\d/.test(title) ? `Step ${title}` : title,
    ...lines.map(({ number, text }) => `(${number}) ${text}`),
    ...(also.length === 0 ? [] : [wordAlso(also)]),
    ...rows.map((row) => `- ${row}`),
  ].join('\n');
}
