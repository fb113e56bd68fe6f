/** Numbers in English words, as dictated to a phone: 'five and a half', 'thirty-six', 'a hundred and five'. */
import { markAt, type NumberToken, type Token, wordAt } from './token.ts';

const UP_TO_NINETEEN =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

const SMALL: ReadonlyMap<string, number> = new Map(UP_TO_NINETEEN.map((word, i) => [word, i]));
const TEN: ReadonlyMap<string, number> = new Map(TENS.map((word, i) => [word, 10 * (i + 2)]));
/** 'demi', 'halb': a half in French and German. */
const PART: ReadonlyMap<string, number> = new Map([
  ['half', 0.5],
  ['halves', 0.5],
  ['quarter', 0.25],
  ['quarters', 0.25],
  ['eighth', 0.125],
  ['eighths', 0.125],
  ['demi', 0.5],
  ['demie', 0.5],
  ['halb', 0.5],
]);

/** Every word that makes a number by itself. */
export const NUMBER_WORDS: readonly string[] = [
  ...SMALL.keys(),
  ...TEN.keys(),
  ...PART.keys(),
  'hundred',
  'dozen',
];

interface Spelled {
  readonly value: number;
  readonly next: number;
}

/** The same tokens with number words as numbers, and 'and a half' joined to the number before it. */
export function spellOut(tokens: readonly Token[]): readonly Token[] {
  const result: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const whole = token.is === 'number' ? { value: token.value, next: at + 1 } : words(tokens, at);
    const number = whole === undefined ? undefined : withPart(tokens, whole);
    if (number === undefined || (token.is === 'number' && number.next === at + 1)) {
      result.push(token);
      at += 1;
      continue;
    }
    result.push(spelled(token, number, tokens.slice(at, number.next)));
    at = number.next;
  }
  return result;
}

/** A spoken half belongs to either unit, so it does not count as a fraction of an inch tape. */
function spelled(first: Token, { value }: Spelled, from: readonly Token[]): NumberToken {
  const text = from.map((t) => t.text).join(' ');
  return { is: 'number', value, text, fraction: false, afterComma: '', spaced: first.spaced };
}

/** A whole number in words: 'twelve', 'thirty six', 'a hundred and five', 'two dozen'; or a lone part: 'half'. */
function words(tokens: readonly Token[], at: number): Spelled | undefined {
  const article = wordAt(tokens, at) === 'a';
  const below = article ? { value: 1, next: at + 1 } : belowHundred(tokens, at);
  if (below === undefined) return part(tokens, at);
  if (wordAt(tokens, below.next) === 'dozen') return { value: 12 * below.value, next: below.next + 1 };
  if (wordAt(tokens, below.next) === 'hundred') {
    const and = wordAt(tokens, below.next + 1) === 'and' ? 2 : 1;
    const rest = belowHundred(tokens, below.next + and);
    return { value: 100 * below.value + (rest?.value ?? 0), next: rest?.next ?? below.next + 1 };
  }
  return article ? part(tokens, below.next) : below;
}

function belowHundred(tokens: readonly Token[], at: number): Spelled | undefined {
  const small = SMALL.get(wordAt(tokens, at));
  if (small !== undefined) return { value: small, next: at + 1 };
  const ten = TEN.get(wordAt(tokens, at));
  if (ten === undefined) return undefined;
  const unitAt = markAt(tokens, at + 1) === '-' ? at + 2 : at + 1;
  const unit = SMALL.get(wordAt(tokens, unitAt));
  const joins = unit !== undefined && unit > 0 && unit < 10;
  return joins ? { value: ten + unit, next: unitAt + 1 } : { value: ten, next: at + 1 };
}

function part(tokens: readonly Token[], at: number): Spelled | undefined {
  const value = PART.get(wordAt(tokens, at));
  return value === undefined ? undefined : { value, next: at + 1 };
}

/** Takes in a part that follows a whole number: 'and a half' is added, 'three quarters' multiplies. */
function withPart(tokens: readonly Token[], whole: Spelled): Spelled {
  if (!Number.isInteger(whole.value)) return whole;
  const direct = part(tokens, whole.next);
  if (direct !== undefined && whole.value < 8)
    return { value: whole.value * direct.value, next: direct.next };
  if (!['and', 'et', 'und'].includes(wordAt(tokens, whole.next))) return whole;
  const article = ['a', 'ein', 'one'].includes(wordAt(tokens, whole.next + 1));
  const several = article ? { value: 1, next: whole.next + 2 } : belowHundred(tokens, whole.next + 1);
  const parts = part(tokens, several?.next ?? whole.next + 1);
  if (parts === undefined) return whole;
  return { value: whole.value + (several?.value ?? 1) * parts.value, next: parts.next };
}
