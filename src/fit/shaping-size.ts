/**
 * One size's figures out of a line that lists all sizes: '9(10:11:12) sts', '5 (2, 1, 6) more times',
 * '27 (30-33-36) sts'. A dash for a size means that what it stands in is not worked for that size.
 */

export type SizedLine =
  | { readonly kind: 'line'; readonly text: string; readonly sizes: number }
  | { readonly kind: 'no such size'; readonly sizes: number }
  /** The lists of the line do not all have as many figures. */
  | { readonly kind: 'lists differ'; readonly sizes: readonly number[] };

const FIGURE = String.raw`(?:\d+(?:st|nd|rd|th)?|[-–—]{1,2})`;
const LIST = new RegExp(
  String.raw`(${FIGURE})\s*[([]\s*(${FIGURE}(?:\s*[,:;/–-]\s*${FIGURE})+|\d+(?:st|nd|rd|th)?)\s*[)\]]`,
  'g',
);
const DASH = /^[-–—]+$/;
/** Stands where the size has a dash, until the clause around it is left out. */
const NOT_WORKED = '∅';

/** The line for the size at `position`, counted from 0 as the pattern lists them. A line without lists is for all. */
export function lineForSize(text: string, position: number): SizedLine {
  const lists = [...text.matchAll(LIST)].map(([, first = '', rest = '']) => [first, ...figures(rest)]);
  const lengths = [...new Set(lists.map((list) => list.length))];
  const [sizes] = lengths;
  if (sizes === undefined) return { kind: 'line', text, sizes: 1 };
  if (lengths.length > 1) return { kind: 'lists differ', sizes: lengths };
  if (position < 0 || position >= sizes) return { kind: 'no such size', sizes };
  const chosen = text.replace(LIST, (_, first: string, rest: string) => {
    const figure = [first, ...figures(rest)][position] ?? '';
    return DASH.test(figure) ? NOT_WORKED : figure;
  });
  const worked = chosen
    .split(/,|;|\bthen\b/)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '' && !clause.includes(NOT_WORKED));
  return { kind: 'line', text: worked.join(', '), sizes };
}

/** Dashes between figures part them where nothing else does; elsewhere a dash is a figure of its own. */
function figures(list: string): readonly string[] {
  const parts = /[,:;/]/.test(list) ? list.split(/[,:;/]/) : list.split(/[-–]/);
  return parts.map((part) => part.trim());
}
