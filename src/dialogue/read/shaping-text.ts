/**
 * Reads a pasted shaping line: the text of her size, such that the engine can lay it out in rows. A line that lists all
 * sizes is put back as one line a size.
 */
import type { LineRefusal } from '../../fit/shaping-clause.ts';
import { readShapingLine, type UnreadLine } from '../../fit/shaping-line.ts';
import { lineForSize } from '../../fit/shaping-size.ts';
import { type Expected, type Heard, heard, type Refused, refused, which } from './heard.ts';

const LONGEST_LINE = 400;
const EXPECTED: Expected = {
  what: 'one shaping line, as the pattern prints it',
  example: 'decrease 1 st at each end of every 6th row 5 times',
};

export function readShapingText(text: string): Heard<string> {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line === '') return refused('empty', EXPECTED);
  if (line.length > LONGEST_LINE) return refused('too long', EXPECTED);
  const first = lineForSize(line, 0);
  if (first.kind !== 'line') return refused('uneven rows', EXPECTED);
  if (first.sizes === 1) return readOne(first.text);
  const lines = Array.from({ length: first.sizes }, (_, i) => lineForSize(line, i)).flatMap((sized) =>
    sized.kind === 'line' ? [sized.text] : [],
  );
  const fault = lines.map(readOne).find((read) => read.kind === 'refused');
  if (fault?.kind === 'refused' && !lines.some((own) => readOne(own).kind === 'heard')) return fault;
  return which(
    `I read a line for ${lines.length} sizes. Which one is yours?`,
    lines.map((own, i) => ({ value: own, echo: `size ${i + 1} of ${lines.length}: ${own || 'nothing'}` })),
  );
}

function readOne(line: string): Heard<string> {
  const read = readShapingLine({ text: line });
  if (read.kind === 'read' || WAITS_FOR_COUNTS.has(read.reason)) return heard(line, line);
  return unread(read);
}

/** What a line may lack because other questions ask for it. */
const WAITS_FOR_COUNTS: ReadonlySet<LineRefusal> = new Set([
  'count at the start is missing',
  'stitches a row are missing',
]);

function unread({ reason, word, example }: UnreadLine): Refused {
  return { kind: 'refused', reason: 'not understood', message: because(reason, word ?? ''), example };
}

function because(reason: LineRefusal, word: string): string {
  switch (reason) {
    case 'nothing to read':
      return 'I found no shaping in that line.';
    case 'word not known':
      return `I do not know what ‘${word}’ means in a shaping line.`;
    case 'number without a meaning':
      return word === ''
        ? 'I cannot tell what a number stands for.'
        : `I cannot tell what ${word} stands for.`;
    case 'no rows named':
      return 'The line does not say on which rows.';
    case 'how often is missing':
      return 'The line does not say how often.';
    case 'count at the start is missing':
    case 'stitches a row are missing':
      return 'The line needs the stitches that it begins with.';
    case 'count is never reached':
      return 'The count that the line ends with is never reached from the one it begins with.';
    case 'count is shared by two lines':
      return 'Two things are shaped at the same time there until one count is reached. Please paste them one at a time, with how often each is worked.';
    case 'rows run backward':
      return 'The rows of that line run backward.';
    default:
      return reason satisfies never;
  }
}
