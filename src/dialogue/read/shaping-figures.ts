/** The figures of a shaping phrase: '6th', '4.', '7 (9, 0, 0)', '– (6th, 4th, --)'. One entry a size, or a single one. */
import { type SizeRow, sizeRow } from './size-row.ts';
import { markAt, type Token, wordAt } from './token.ts';

export interface Figures {
  readonly values: readonly (number | null)[];
  /** '6th', '4.': an interval rather than a number of times. */
  readonly ordinal: boolean;
  /** '3 (5, 3, 5 7)'. */
  readonly commaMissing: boolean;
  /** The place after them. */
  readonly end: number;
}

const INSIDE = new Set([',', ';', ':', '/', '-', '--']);
const SUFFIX = new Set(['th', 'nd', 'rd', 'st']);
const CLOSING: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

export function figuresAt(tokens: readonly Token[], at: number): Figures | undefined {
  const first = tokens[at];
  const isDash = first?.is === 'mark' && /^-+$/.test(first.text);
  if (first?.is !== 'number' && !isDash) return undefined;
  let ordinal = isOrdinal(tokens, at);
  let end = at + (ordinal ? 2 : 1);
  for (let close = bracketEnd(tokens, end); close !== undefined; close = bracketEnd(tokens, end)) {
    for (let i = end; i < close; i++) ordinal ||= isOrdinal(tokens, i);
    end = close;
  }
  if (isDash && end === at + 1) return undefined;
  const row: SizeRow = sizeRow(
    tokens.slice(at, end).filter((t) => t.text !== '.' && !SUFFIX.has(t.text)),
    { of: 'whole numbers', pairsAreRanges: false },
  );
  return { values: row.cells.map((c) => c.value), ordinal, commaMissing: row.commaMissing, end };
}

/** '6th' and '4.' before another word; '1 st' and '21st' only before a row, for else it counts stitches. */
function isOrdinal(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.is !== 'number' || tokens[at + 1]?.spaced !== false) return false;
  const suffix = wordAt(tokens, at + 1);
  if (suffix === 'st') return ['row', 'rnd', 'round', 'and'].includes(wordAt(tokens, at + 2));
  return SUFFIX.has(suffix) || (markAt(tokens, at + 1) === '.' && wordAt(tokens, at + 2) !== '');
}

/** The place after the bracket that opens at `at`; undefined unless it holds figures alone. */
function bracketEnd(tokens: readonly Token[], at: number): number | undefined {
  const close = CLOSING[markAt(tokens, at)];
  if (close === undefined) return undefined;
  for (let i = at + 1; i < tokens.length; i++) {
    const token = tokens[i];
    if (token?.text === close) return i > at + 1 ? i + 1 : undefined;
    if (token?.is !== 'number' && !INSIDE.has(token?.text ?? '') && !SUFFIX.has(token?.text ?? ''))
      return undefined;
  }
  return undefined;
}
