/** Plain characters in columns: wrapping, and a left part drawn beside a right part written. */

/** The narrowest window that is drawn for. */
export const LEAST_COLUMNS = 40;

/** Lines of at most so many columns, broken at spaces; a longer word is broken where the line ends. */
export function wrapColumns(words: string, columns: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    let rest = word;
    if (line !== '' && line.length + 1 + rest.length > columns) {
      lines.push(line);
      line = '';
    }
    while (rest.length > columns) {
      lines.push(rest.slice(0, columns));
      rest = rest.slice(columns);
    }
    line = line === '' ? rest : `${line} ${rest}`;
  }
  return [...lines, line];
}

/** A title, then the lines, each without blanks at its end. */
export function sheetOfCharacters(parts: readonly (readonly string[])[]): string {
  return parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.map((l) => l.trimEnd()).join('\n'))
    .join('\n\n');
}
