/** Reads an amount of yarn: a length ('nearly 2000 yards'), a weight ('450 g') or balls ('7 balls'). */
import { formatDecimal } from '../../fit/units.ts';
import { GRAMS_PER_OUNCE, METRES_PER_YARD } from '../../fit/yarn.ts';
import { type LengthTyped, readCone } from './cone.ts';
import { askBack, type Expected, type Heard, heard, refused } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import type { Token } from './token.ts';
import { means } from './vocabulary.ts';
import { BROKEN, MOST_YARN } from './yarn-limits.ts';

/** `approximate`: 'nearly', 'about'. */
export type YarnAmount =
  | {
      readonly in: 'metres';
      readonly metres: number;
      readonly typed: 'm' | 'yd';
      readonly approximate: boolean;
    }
  | {
      readonly in: 'grams';
      readonly grams: number;
      readonly typed: 'g' | 'oz';
      readonly approximate: boolean;
    }
  | { readonly in: 'balls'; readonly balls: number; readonly approximate: boolean };

export function readYarn(text: string): Heard<YarnAmount> {
  const expected: Expected = { what: 'an amount of yarn with its unit', example: '1200 m' };
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const [at, another] = tokens.flatMap((t, i) => (t.is === 'number' ? [i] : []));
  if (at === undefined) return refused('no number', expected);
  if (another !== undefined) return refused('several numbers', expected);
  const number = tokens[at];
  if (number?.is !== 'number' || tokens[at - 1]?.text === '-') return refused('negative', expected);
  const isBroken = BROKEN.test(number.text);
  const value = isBroken ? Math.round(number.value * 1000) : number.value;
  const others = tokens.filter((t) => t !== number);
  const approximate = others.some((t) => means(t.text, 'approximate'));
  const found = amountOf(value, tokens[at + 1], approximate);
  if (found === undefined) return refused('incomplete', expected);
  if (value <= 0 || value > MOST_YARN) return refused('out of range', expected);
  const verdict = judgeRest(
    others.filter((t) => t !== tokens[at + 1] && t.text !== 'yarn' && t.text !== 'wool'),
    [],
  );
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (isBroken) return askBack('comma unclear', found);
  return verdict === 'extra words' ? askBack('extra words', found) : heard(found.value, found.echo);
}

/** A length of yarn, in metres, as it is or as a cone of a weight and a yarn number has it. */
export function readYarnLength(text: string): Heard<LengthTyped> {
  const expected: Expected = { what: 'a length of yarn with its unit', example: '120 m' };
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const asLength = () =>
    onlyIn(readYarn(text), expected, (amount) =>
      amount.in === 'metres' ? { metres: amount.metres, typed: amount.typed } : undefined,
    );
  return readCone(tokens) ?? asLength();
}

/** A weight of yarn, in grams. */
export function readYarnWeight(text: string): Heard<{ grams: number; typed: 'g' | 'oz' }> {
  return onlyIn(readYarn(text), { what: 'a weight of yarn with its unit', example: '50 g' }, (amount) =>
    amount.in === 'grams' ? { grams: amount.grams, typed: amount.typed } : undefined,
  );
}

function onlyIn<T>(
  read: Heard<YarnAmount>,
  expected: Expected,
  part: (amount: YarnAmount) => T | undefined,
): Heard<T> {
  switch (read.kind) {
    case 'heard':
    case 'ask back': {
      const value = part(read.value);
      return value === undefined ? refused('other kind', expected) : { ...read, value };
    }
    case 'which': {
      const options = read.options.flatMap((o) => {
        const value = part(o.value);
        return value === undefined ? [] : [{ ...o, value }];
      });
      return options.length === 0 ? refused('other kind', expected) : { ...read, options };
    }
    case 'refused':
      return refused(read.reason, expected);
    default:
      return read satisfies never;
  }
}

function amountOf(
  value: number,
  unit: Token | undefined,
  approximate: boolean,
): { value: YarnAmount; echo: string } | undefined {
  const word = unit?.is === 'word' ? unit.text : '';
  const about = approximate ? 'about ' : '';
  const figure = formatDecimal(value, 2);
  if (means(word, 'metre') || means(word, 'yard')) {
    const typed = means(word, 'yard') ? 'yd' : 'm';
    const metres = typed === 'yd' ? value * METRES_PER_YARD : value;
    const other =
      typed === 'yd' ? `${formatDecimal(metres, 0)} m` : `${formatDecimal(metres / METRES_PER_YARD, 0)} yd`;
    return {
      value: { in: 'metres', metres, typed, approximate },
      echo: `${about}${figure} ${typed} (${other})`,
    };
  }
  if (means(word, 'gram') || means(word, 'ounce')) {
    const typed = means(word, 'ounce') ? 'oz' : 'g';
    const grams = typed === 'oz' ? value * GRAMS_PER_OUNCE : value;
    const other =
      typed === 'oz' ? `${formatDecimal(grams, 0)} g` : `${formatDecimal(grams / GRAMS_PER_OUNCE, 1)} oz`;
    return {
      value: { in: 'grams', grams, typed, approximate },
      echo: `${about}${figure} ${typed} (${other})`,
    };
  }
  if (!means(word, 'ball')) return undefined;
  return {
    value: { in: 'balls', balls: value, approximate },
    echo: `${about}${figure} ${value === 1 ? 'ball' : 'balls'}`,
  };
}
