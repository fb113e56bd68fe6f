/** Reads a stitch multiple: 'multiple of 4 + 2', '4 sts plus 2', '8'. */
import { counted } from './count.ts';
import { askBack, type Expected, type Heard, heard, refused } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import type { Token } from './token.ts';

export interface Multiple {
  readonly multiple: number;
  /** Stitches beyond the repeats. */
  readonly plus: number;
}

const LARGEST = 500;
const MULTIPLE_WORDS = new Set(
  'multiple multiples mult repeat repeats rep pattern divisible each every n x st teilbar durch'.split(' '),
);

export function readMultiple(text: string): Heard<Multiple> {
  const expected: Expected = { what: 'the stitches of one repeat', example: 'multiple of 4 + 2' };
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const places = tokens.flatMap((t, i) => (t.is === 'number' ? [i] : []));
  const [at, more, third] = places;
  if (at === undefined) return refused('no number', expected);
  if (third !== undefined) return refused('several numbers', expected);
  const sign = more === undefined ? 1 : signBetween(tokens.slice(at + 1, more));
  if (sign === undefined) return refused('several numbers', expected);
  const figures = tokens.filter((t) => t.is === 'number').map((t) => t.value);
  const [multiple = 0, beyond = 0] = figures;
  if (tokens[at - 1]?.text === '-') return refused('negative', expected);
  if (!figures.every(Number.isInteger)) return refused('not whole', expected);
  if (multiple < 1 || multiple > LARGEST || beyond > LARGEST) return refused('out of range', expected);
  const rest = tokens.filter((t) => t.is !== 'number' && !MULTIPLE_WORDS.has(t.text) && !isSign(t));
  const verdict = judgeRest(rest, ['stitch']);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  // 'Less 1' over a repeat of 8 leaves 7 beyond whole repeats.
  const plus = sign === 1 ? beyond : (multiple - (beyond % multiple)) % multiple;
  const option = { value: { multiple, plus }, echo: echoMultiple({ multiple, plus }) };
  return verdict === 'extra words' ? askBack('extra words', option) : heard(option.value, option.echo);
}

const PLUS = new Set(['+', 'plus', 'and', '&', 'und', 'et', 'extra']);
const LESS = new Set(['-', 'minus', 'less']);

function isSign(token: Token): boolean {
  return PLUS.has(token.text) || LESS.has(token.text);
}

function signBetween(between: readonly Token[]): 1 | -1 | undefined {
  const signs = between.filter(isSign);
  if (signs.length !== 1) return undefined;
  return PLUS.has(signs[0]?.text ?? '') ? 1 : -1;
}

function echoMultiple({ multiple, plus }: Multiple): string {
  return plus === 0
    ? `a multiple of ${counted(multiple, 'stitch')}`
    : `a multiple of ${counted(multiple, 'stitch')} plus ${plus}`;
}
