/** A long text in parts, split between its paragraphs; inside one only where it is too long itself. */

/** Parts of at most so many characters. Put together with blank lines they are the text again, but for its last break. */
export function inParts(text: string, most: number): string[] {
  const blocks = text
    .trimEnd()
    .split('\n\n')
    .flatMap((block) => cut(block, most, '\n'));
  return packed(blocks, most, '\n\n');
}

/** A paragraph between its lines, a line between its words, a word anywhere. */
function cut(block: string, most: number, at: '\n' | ' '): string[] {
  if (block.length <= most) return [block];
  const pieces = block
    .split(at)
    .flatMap((piece) => (at === '\n' ? cut(piece, most, ' ') : inLengths(piece, most)));
  return packed(pieces, most, at);
}

/** Neighbours joined for as long as they fit. */
function packed(pieces: readonly string[], most: number, between: string): string[] {
  const parts: string[] = [];
  for (const piece of pieces) {
    const last = parts.at(-1);
    if (last !== undefined && last.length + between.length + piece.length <= most)
      parts[parts.length - 1] = `${last}${between}${piece}`;
    else parts.push(piece);
  }
  return parts;
}

function inLengths(word: string, most: number): string[] {
  return Array.from({ length: Math.ceil(word.length / most) }, (_, i) =>
    word.slice(i * most, (i + 1) * most),
  );
}
