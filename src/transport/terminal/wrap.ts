/** Text broken into lines of a window's width, between words. */

/** Space before the text of a line, with the mark of a list: '   ', '- ', '12. ', '(12) '. */
const INDENT = /^ *(?:[-•] +|\d{1,3}\. +|\(\d{1,3}\) +)?/;

/**
 * Lines of at most `width` columns. A line that is continued is indented to where its text began. Only a word that is
 * longer than a line is cut.
 */
export function wrap(text: string, width: number): string[] {
  return text.split('\n').flatMap((line) => wrapLine(line.trimEnd(), width));
}

function wrapLine(line: string, width: number): string[] {
  if (widthOf(line) <= width) return [line];
  const indent = INDENT.exec(line)?.[0] ?? '';
  const hang = indent.length * 2 < width ? ' '.repeat(indent.length) : '';
  const lines: string[] = [];
  let current = indent;
  let empty = true;
  for (const word of line
    .slice(indent.length)
    .split(/ +/)
    .flatMap((w) => cut(w, width - hang.length))) {
    if (!empty && widthOf(current) + 1 + widthOf(word) > width) {
      lines.push(current);
      current = hang;
      empty = true;
    }
    current += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, current];
}

function cut(word: string, width: number): string[] {
  if (widthOf(word) <= width) return [word];
  const letters = [...word];
  const parts = Array.from({ length: Math.ceil(letters.length / width) }, (_, i) =>
    letters.slice(i * width, (i + 1) * width).join(''),
  );
  return parts;
}

/** Columns that a text takes: one a character. Our texts have no wide ones. */
function widthOf(text: string): number {
  return [...text].length;
}
