/** What an answer about a gauge is made of: counts of stitches and rows, bare numbers, and the spans they lie over. */
import type { LengthUnit } from '../../fit/units.ts';
import { editDistance } from './spelling.ts';
import { markAt, type NumberToken, type Token, wordAt } from './token.ts';
import { means } from './vocabulary.ts';

export type CountNoun = 'stitch' | 'row';

export type Part =
  /** A number with its noun; without one, a bare number. */
  | {
      readonly is: 'count';
      readonly of: CountNoun | undefined;
      readonly value: number;
      readonly approximate: boolean;
    }
  /** A span; 'per inch' is a span of 1 without a number. */
  | { readonly is: 'span'; readonly value: number; readonly unit: LengthUnit; readonly numbered: boolean }
  /** A noun without a number, as in '5 inches per stitch'. */
  | { readonly is: 'noun'; readonly of: CountNoun }
  /** What stands between. */
  | { readonly is: 'joint'; readonly text: string };

export interface GaugeParts {
  readonly parts: readonly Part[];
  /** Words and marks that say nothing about a gauge. */
  readonly rest: readonly Token[];
  /** German or French nouns, whose patterns count over 10 cm: written out, or as the letters M and R. */
  readonly metricWords: 'none' | 'letters' | 'words';
}

const JOINTS = new Set(
  'x by and und et or oder ou = equals equal to over per auf sur pro par pour on each / - ( ) , ; + & [ ] : @'.split(
    ' ',
  ),
);
const METRIC_WORD = /^(masche|reihe|runde|maille|rang|rgs?$)/;
const NEEDLE_BEFORE = new Set(['us', 'uk', 'size', 'sizes', 'no', 'nr', '#']);

export function gaugeParts(tokens: readonly Token[]): GaugeParts {
  const parts: Part[] = [];
  const rest: Token[] = [];
  let metricWords: GaugeParts['metricWords'] = 'none';
  let approximate = false;
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    if (token.is === 'number') {
      const { found, next } = numberPart(tokens, at, token, approximate);
      const noun = wordAt(tokens, at + 1);
      if (METRIC_WORD.test(noun)) metricWords = 'words';
      else if (noun === 'm' && metricWords === 'none') metricWords = 'letters';
      parts.push(...found);
      approximate = false;
      at = next;
      continue;
    }
    const of = nounOf(token.text);
    if (means(token.text, 'approximate')) approximate = true;
    else if (isImpliedSpan(tokens, at)) parts.push(spanOf(1, token.text, false));
    else if (of !== undefined) parts.push({ is: 'noun', of });
    else if (JOINTS.has(token.text)) parts.push({ is: 'joint', text: token.text });
    else rest.push(token);
    at += 1;
  }
  return { parts, rest, metricWords };
}

/** A number with the noun or unit behind it; the size of a needle is no part of the gauge. */
function numberPart(
  tokens: readonly Token[],
  at: number,
  { value }: NumberToken,
  approximate: boolean,
): { found: readonly Part[]; next: number } {
  const hyphen = markAt(tokens, at + 1) === '-' && isLengthUnit(wordAt(tokens, at + 2)) ? 1 : 0;
  const place = at + 1 + hyphen;
  const word = tokens[place]?.is === 'number' ? '' : (tokens[place]?.text ?? '');
  const next = markAt(tokens, place + 1) === '.' ? place + 2 : place + 1;
  if (means(word, 'mm') || means(word, 'needle')) return { found: [], next };
  if (NEEDLE_BEFORE.has(tokens[at - 1]?.text ?? '')) return { found: [], next: at + 1 };
  const count = (of: CountNoun | undefined): Part => ({ is: 'count', of, value, approximate });
  if (means(word, 'stitches per inch')) return { found: [count('stitch'), spanOf(1, 'in', false)], next };
  if (means(word, 'rows per inch')) return { found: [count('row'), spanOf(1, 'in', false)], next };
  // A foot mark here is an inch mark that lost its twin.
  if (isLengthUnit(word) || word === "'") return { found: [spanOf(value, word, true)], next };
  const of = nounOf(word);
  return of === undefined ? { found: [count(undefined)], next: at + 1 } : { found: [count(of)], next };
}

function spanOf(value: number, word: string, numbered: boolean): Part {
  return { is: 'span', value, unit: means(word, 'cm') ? 'cm' : 'in', numbered };
}

function isLengthUnit(word: string): boolean {
  return means(word, 'inch') || means(word, 'cm');
}

/** 'per inch', 'to the inch', '/in': a unit that no number stands before. A lone 'in' is the preposition. */
function isImpliedSpan(tokens: readonly Token[], at: number): boolean {
  const word = tokens[at]?.text ?? '';
  const before = tokens[at - 1]?.text ?? '';
  if (!isLengthUnit(word)) return false;
  return (word !== 'in' && word !== '"') || means(before, 'per') || means(before, 'article');
}

function nounOf(word: string): CountNoun | undefined {
  if (means(word, 'stitch')) return 'stitch';
  if (means(word, 'row')) return 'row';
  return word.length >= 6 && editDistance(word, 'stitches') <= 2 ? 'stitch' : undefined;
}
