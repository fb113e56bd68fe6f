/** A length as the program prints it, read again: '38⅛ in' is 38.125. */
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

export function readLength(words: string): number {
  const found = /(\d+(?:\.\d+)?)?([⅛¼⅜½⅝¾⅞])? ?(?:cm|in)\b/.exec(words);
  if (found === null) throw new Error(`'${words}' holds no length`);
  return Number(found[1] ?? 0) + EIGHTHS.indexOf(found[2] ?? '') / 8;
}
