/**
 * A row of figures, one a size, as patterns print it: '34 (36, 38, 40)', '(60) 69 (77) 86', '118/122/126',
 * 'Sm(32"),Med(35")'. A dash stands for 'not this size'.
 */
import type { LengthUnit } from '../../fit/units.ts';
import { measureAt } from './measure.ts';
import { markAt, type NumberToken, type Token, wordAt } from './token.ts';
import { means } from './vocabulary.ts';

export interface Cell {
  /** Null where the pattern has a dash. */
  readonly value: number | null;
  /** The end of a range such as '4-6'. */
  readonly upTo: number | undefined;
  readonly unit: LengthUnit | undefined;
  readonly fraction: boolean;
  readonly spaceLost: boolean;
}

export interface SizeRow {
  readonly cells: readonly Cell[];
  /** One a size, or undefined. */
  readonly labels: readonly string[] | undefined;
  /** Labels that are more or fewer than the figures. */
  readonly labelsUneven: boolean;
  /** A unit that stands before the row: 'cm: 81 (86, 91)'. */
  readonly leadingUnit: LengthUnit | undefined;
  /** What belongs to no cell. */
  readonly rest: readonly Token[];
  /** The part of the rest that stands between two cells. */
  readonly between: readonly Token[];
  /** Whether a separator seems to be missing: '3 (5, 3, 5 7)'. */
  readonly commaMissing: boolean;
  /** '5,6' alone: two sizes, or five point six. */
  readonly commaUnclear: boolean;
  readonly negative: boolean;
}

export interface RowManner {
  /** Lengths take units and decimals; whole numbers never do. */
  readonly of: 'lengths' | 'whole numbers';
  /** Whether '4-6' between brackets is a range of one size (ages), however rare. */
  readonly pairsAreRanges: boolean;
}

const SEPARATORS = new Set(', ; : / | - ( ) [ ] { } < > or and &'.split(' '));
const OPENING = new Set(['(', '[', '{', '<']);
const LABELS: ReadonlyMap<string, string> = new Map([
  ['small', 'S'],
  ['sm', 'S'],
  ['medium', 'M'],
  ['med', 'M'],
  ['large', 'L'],
  ['lg', 'L'],
]);
const LABEL = /^(?:x{0,4}[sl]|m|[1-9]x[sl]?)$/;

export function sizeRow(typed: readonly Token[], manner: RowManner): SizeRow {
  const { tokens, unclear } = commasSettled(labelsMerged(typed), manner);
  const cells: { cell: Cell; gap: readonly string[] }[] = [];
  const labels: { label: string; token: Token }[] = [];
  const rest: Token[] = [];
  const between: Token[] = [];
  let leadingUnit: LengthUnit | undefined;
  let negative = false;
  let gap: string[] = [];
  let seen = 0;
  let at = 0;
  const push = (cell: Cell, next: number) => {
    if (cells.length > 0) between.push(...rest.slice(seen));
    seen = rest.length;
    cells.push({ cell, gap });
    gap = [];
    at = next;
  };
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const label = labelOf(tokens, at);
    if (token.is === 'number') {
      const { cell, end } = cellAt(tokens, at, token, manner);
      push(cell, ORDINAL.has(wordAt(tokens, end)) ? end + 1 : end);
    } else if (isDash(tokens, at, gap, cells.length === 0)) {
      const next = tokens[at + 1];
      if (next?.is === 'number' && !next.spaced) negative = true;
      push({ ...EMPTY_CELL }, at + 1);
    } else if (manner.of === 'lengths' && unitOf(token.text) !== undefined && !isPreposition(tokens, at)) {
      const last = cells.at(-1);
      if (last === undefined) leadingUnit = unitOf(token.text);
      else if (last.cell.unit === undefined) last.cell = { ...last.cell, unit: unitOf(token.text) };
      gap.push(token.text);
      at += markAt(tokens, at + 1) === '.' ? 2 : 1;
    } else {
      if (label !== undefined) labels.push({ label, token });
      else if (!SEPARATORS.has(token.text) && !isExtra(tokens, at)) rest.push(token);
      gap.push(token.text);
      at += 1;
    }
  }
  const ranged = withRanges(cells, manner);
  const isLabelled = labels.length > 1 && labels.length === ranged.length;
  return {
    cells: ranged.map((c) => c.cell),
    labels: isLabelled ? labels.map((l) => l.label) : undefined,
    labelsUneven: labels.length > 1 && !isLabelled,
    leadingUnit,
    // A single 'm' or 's' that labels nothing is a unit of its own: metres, stitches.
    rest: isLabelled ? rest : [...rest, ...labels.map((l) => l.token)],
    between,
    commaMissing: isCommaMissing(ranged, tokens),
    commaUnclear: unclear,
    negative,
  };
}

const ORDINAL = new Set(['th', 'nd', 'rd']);
const EMPTY_CELL: Cell = { value: null, upTo: undefined, unit: undefined, fraction: false, spaceLost: false };

function cellAt(
  tokens: readonly Token[],
  at: number,
  token: NumberToken,
  { of }: RowManner,
): { cell: Cell; end: number } {
  if (of === 'whole numbers') return { cell: { ...EMPTY_CELL, value: token.value }, end: at + 1 };
  const measured = measureAt(tokens, at);
  if (measured === undefined) return { cell: { ...EMPTY_CELL, value: token.value }, end: at + 1 };
  const { value, unit, fraction, spaceLost, feet, end } = measured;
  return { cell: { value: feet?.count ?? value, upTo: undefined, unit, fraction, spaceLost }, end };
}

/** A dash where a figure is due: at the start, or after a bracket or separator; never between two figures. */
function isDash(tokens: readonly Token[], at: number, gap: readonly string[], isFirst: boolean): boolean {
  if (!/^-+$/.test(markAt(tokens, at))) return false;
  const last = gap.at(-1);
  if (last === undefined) return isFirst && tokens.length > 1;
  return SEPARATORS.has(last) && last !== ')' && last !== ']';
}

function unitOf(word: string): LengthUnit | undefined {
  if (means(word, 'inch')) return 'in';
  return means(word, 'cm') ? 'cm' : undefined;
}

/** 'in' before a figure or another word is no unit. */
function isPreposition(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  return tokens[at]?.text === 'in' && next !== undefined && next.is !== 'mark';
}

/** '2XL' and '3x' are labels, not the numbers 2 and 3. */
function labelsMerged(tokens: readonly Token[]): readonly Token[] {
  return tokens.flatMap((token, i): readonly Token[] => {
    const [previous, next] = [tokens[i - 1], tokens[i + 1]];
    if (isCountOfX(token, next))
      return [{ is: 'word', text: `${token.text}${next?.text}`, spaced: token.spaced }];
    return isCountOfX(previous, token) ? [] : [token];
  });
}

function isCountOfX(count: Token | undefined, x: Token | undefined): boolean {
  if (count?.is !== 'number' || x?.is !== 'word' || x.spaced) return false;
  return /^[1-9]$/.test(count.text) && /^x[sl]?$/.test(x.text);
}

/** The label in a word. A lone 's' or 'm' right behind a figure counts stitches instead. */
function labelOf(tokens: readonly Token[], at: number): string | undefined {
  const word = wordAt(tokens, at);
  const long = LABELS.get(word);
  if (long !== undefined) return isExtra(tokens, at - 1) ? `X${long}` : long;
  return LABEL.test(word) && !isExtra(tokens, at) ? word.toUpperCase() : undefined;
}

/** 'extra large', 'x small'. */
function isExtra(tokens: readonly Token[], at: number): boolean {
  return ['extra', 'x'].includes(wordAt(tokens, at)) && LABELS.has(wordAt(tokens, at + 1));
}

/** Decides what a comma without a space is: '16,5' beside other separators is decimal, '34,36' two sizes. */
function commasSettled(
  tokens: readonly Token[],
  { of }: RowManner,
): { tokens: readonly Token[]; unclear: boolean } {
  const separated = tokens.some((t) => t.is !== 'number' && SEPARATORS.has(t.text));
  let unclear = false;
  const settled = tokens.flatMap((token): readonly Token[] => {
    if (token.is !== 'number' || token.afterComma === '') return [token];
    if (!separated) unclear = true;
    const decimal =
      /^(?:0|5|00|25|50|75)$/.test(token.afterComma) || (separated && token.afterComma.length === 1);
    if (of === 'lengths' && decimal) return [token];
    const [first = '', second = ''] = token.text.split(',');
    const part = (text: string, spaced: boolean): NumberToken => ({
      ...token,
      text,
      value: Number(text),
      afterComma: '',
      spaced,
    });
    return [part(first, token.spaced), { is: 'mark', text: ',', spaced: false }, part(second, false)];
  });
  return { tokens: settled, unclear };
}

interface Placed {
  readonly cell: Cell;
  readonly gap: readonly string[];
}

/** Joins '4-6' to one cell where hyphens make pairs; '26-27-29' stays three sizes. */
function withRanges(cells: readonly Placed[], { pairsAreRanges }: RowManner): readonly Placed[] {
  const groups: Placed[][] = [];
  for (const placed of cells) {
    const joins = placed.gap.length === 1 && placed.gap[0] === '-';
    const last = groups.at(-1);
    if (joins && last !== undefined) last.push(placed);
    else groups.push([placed]);
  }
  const pairs = groups.filter((g) => g.length === 2).length;
  const isPaired =
    groups.every((g) => g.length <= 2) && (pairsAreRanges ? pairs > 0 : pairs > 1 && pairs === groups.length);
  if (!isPaired) return cells;
  return groups.flatMap(([from, to]) => {
    if (from === undefined) return [];
    const upTo = to?.cell.value ?? undefined;
    return [{ ...from, cell: { ...from.cell, upTo, unit: from.cell.unit ?? to?.cell.unit } }];
  });
}

/** Two figures with nothing between them, where the others have something: except the one place of a lost bracket. */
function isCommaMissing(cells: readonly Placed[], tokens: readonly Token[]): boolean {
  const bare = cells.flatMap(({ gap }, i) => (i > 0 && gap.length === 0 ? [i] : []));
  if (bare.length === 0) return false;
  if (bare.length === cells.length - 1) return cells.length < 3;
  const hasBracket = tokens.some((t) => OPENING.has(t.text));
  return hasBracket || bare.length > 1 || bare[0] !== 1;
}
