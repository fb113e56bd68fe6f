/** A typed answer cut into numbers, words and marks, in time linear in its length. */
import { type Expected, type Refused, refused } from './heard.ts';
import { spellOut } from './number-words.ts';
import { numeralAt } from './numeral.ts';
import { plain } from './plain.ts';
import type { Token } from './token.ts';

/** An answer to one question; a pasted row of sizes may be longer. In characters. */
export const LONGEST_ANSWER = 200;
export const LONGEST_ROW = 1000;
/** No count, length or amount in a garment comes near it. */
const LARGEST_NUMBER = 100_000;

/** The tokens of an answer, or the refusal of one that is empty, too long or holds an unreadable number. */
export function listen(
  text: string,
  expected: Expected,
  longest = LONGEST_ANSWER,
): readonly Token[] | Refused {
  if (text.length > longest) return refused('too long', expected);
  const tokens = split(plain(text));
  if (tokens.length === 0) return refused('empty', expected);
  for (const token of tokens) {
    if (token.is === 'mark' && /\d/.test(token.text)) return refused('thousands', expected);
    if (token.is === 'number' && token.value >= LARGEST_NUMBER) return refused('number too large', expected);
  }
  return tokens;
}

export function isRefused(read: readonly Token[] | Refused): read is Refused {
  return 'kind' in read;
}

const SPACE = / */y;
/** A word may hold an apostrophe: "don't", "d'aiguille". */
const WORD = /\p{L}+(?:'\p{L}+)*/uy;
const MARK = /-+|./suy;

function split(line: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < line.length) {
    const gap = matchAt(SPACE, line, at);
    at += gap.length;
    const spaced = gap !== '';
    const numeral = numeralAt(line, at, !spaced && tokens.at(-1)?.text === '/');
    if (numeral !== undefined) {
      tokens.push(...numeral.tokens.map((t, i) => ({ ...t, spaced: i === 0 && spaced })));
      at += numeral.length;
      continue;
    }
    const word = matchAt(WORD, line, at);
    const found = word === '' ? matchAt(MARK, line, at) : word;
    if (found !== '') tokens.push({ is: word === '' ? 'mark' : 'word', text: found, spaced });
    at += found.length;
  }
  const spelled = spellOut(tokens);
  return spelled.filter((_, i) => !isPreposition(spelled, i));
}

/** 'In total', 'bust in cm': an 'in' that no figure stands before and a word or figure stands behind is no unit. */
function isPreposition(tokens: readonly Token[], at: number): boolean {
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  if (tokens[at]?.text !== 'in' || next === undefined || next.is === 'mark') return false;
  return before === undefined || before.is === 'word';
}

/** What a sticky pattern matches at a place; empty where it does not. */
function matchAt(pattern: RegExp, line: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(line)?.[0] ?? '';
}
