/** Reads one plain number: grams of a scale, a percentage, how many times. Counts of stitches and rows: count.ts. */
import { formatDecimal } from '../../fit/units.ts';
import { askBack, type Expected, type Heard, heard, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { measureAt } from './measure.ts';
import { judgeRest, type Verdict } from './rest.ts';
import type { Token } from './token.ts';
import type { Meaning } from './vocabulary.ts';

export interface NumberAsked extends Expected {
  readonly least: number;
  readonly most: number;
}

/** A decimal number within bounds, without a unit. */
export function readNumber(text: string, asked: NumberAsked): Heard<number> {
  const tokens = listen(text, asked);
  if (isRefused(tokens)) return tokens;
  const sole = soleNumber(tokens, []);
  if (sole.kind === 'refused') return refused(sole.reason, asked);
  if (sole.kind === 'two') {
    const options = sole.values.map((value) => ({ value, echo: formatDecimal(value, 4) }));
    return sole.values.every((v) => isWithin(v, asked))
      ? which('I read two numbers. Which one is it?', options)
      : refused('out of range', asked);
  }
  if (sole.value < 0 && asked.least >= 0) return refused('negative', asked);
  if (!isWithin(sole.value, asked)) return refused('out of range', asked);
  const option = { value: sole.value, echo: formatDecimal(sole.value, 4) };
  if (sole.spaceLost) return askBack('space lost', option);
  if (/,\d{3}$/.test(sole.text)) return askBack('comma unclear', option);
  return sole.extraWords ? askBack('extra words', option) : heard(option.value, option.echo);
}

function isWithin(value: number, { least, most }: NumberAsked): boolean {
  return value >= least && value <= most;
}

export interface OneNumber {
  readonly kind: 'one';
  readonly value: number;
  readonly spaceLost: boolean;
  /** The number as typed, in plain spelling. */
  readonly text: string;
  readonly extraWords: boolean;
}

type Sole =
  | OneNumber
  | { readonly kind: 'two'; readonly values: readonly [number, number] }
  | {
      readonly kind: 'refused';
      readonly reason: 'no number' | 'several numbers' | Exclude<Verdict, 'clear' | 'extra words'>;
    };

const BETWEEN_TWO = new Set(['-', '/', 'to', 'or', 'bis', 'oder', 'ou']);

/** The one number of an answer, or two to choose from; words that mean one of `own` may stand beside it. */
export function soleNumber(tokens: readonly Token[], own: readonly Meaning[]): Sole {
  const places = tokens.map((t, i) => (t.is === 'number' ? i : -1)).filter((i) => i >= 0);
  const [at, next, third] = places;
  if (at === undefined) return { kind: 'refused', reason: 'no number' };
  const read = measureAt(tokens.slice(0, at + 3), at);
  const spaceLost = read?.spaceLost === true && next === at + 2 && third === undefined;
  const end = spaceLost ? at + 3 : at + 1;
  if (next !== undefined && !spaceLost) return twoNumbers(tokens, at, next, third);
  const { sign, before } = takeSign(tokens.slice(0, at));
  const verdict = judgeRest([...before, ...tokens.slice(end)], own);
  if (verdict === 'other kind' || verdict === 'not understood') return { kind: 'refused', reason: verdict };
  const token = tokens[at];
  const size = spaceLost ? read.value : token?.is === 'number' ? token.value : 0;
  return {
    kind: 'one',
    value: sign * size === 0 ? 0 : sign * size,
    spaceLost,
    text: token?.text ?? '',
    extraWords: verdict === 'extra words',
  };
}

function twoNumbers(tokens: readonly Token[], at: number, next: number, third: number | undefined): Sole {
  const [first, joint, second] = tokens.slice(at, at + 3);
  const joined = next === at + 2 && BETWEEN_TWO.has(joint?.text ?? '');
  if (!joined || third !== undefined || first?.is !== 'number' || second?.is !== 'number') {
    return { kind: 'refused', reason: 'several numbers' };
  }
  return { kind: 'two', values: [first.value, second.value] };
}

function takeSign(before: readonly Token[]): { sign: 1 | -1; before: readonly Token[] } {
  const last = before.at(-1)?.text;
  if (last === '-' || last === 'minus') return { sign: -1, before: before.slice(0, -1) };
  if (last === '+' || last === 'plus') return { sign: 1, before: before.slice(0, -1) };
  return { sign: 1, before };
}
