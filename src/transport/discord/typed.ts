/** Text as it was typed: shown character for character, with no markup, mention or link made of it. */

/** Characters that begin markup, mentions or escapes wherever they stand. */
const ANYWHERE = /[\\`*_~|<>@#[\]]/g;
/** What makes a list, a quotation or small print where it begins a line. */
const AT_LINE_START = /^(\s*)([-+])(?=[\s#])/gm;
const NUMBERED = /^(\s*\d+)([.)])(?=\s)/gm;
/** What makes a link. */
const ADDRESS = /:(?=\/\/)/g;

export function asTyped(text: string): string {
  return text
    .replace(ANYWHERE, '\\$&')
    .replace(AT_LINE_START, '$1\\$2')
    .replace(NUMBERED, '$1\\$2')
    .replace(ADDRESS, '\\:');
}

/** At most so many characters, with a mark where something was left out; never cut inside a pair of code units. */
export function atMost(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${text
    .slice(0, most - 1)
    .replace(/[\uD800-\uDBFF]$/u, '')
    .trimEnd()}…`;
}
