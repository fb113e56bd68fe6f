/** One measured length in a row of tokens: '18¾"', '3 and 5/8ths of an inch', '5 ft 4', '1.63 m', '965 mm', a bare '38'. */
import type { LengthUnit } from '../../fit/units.ts';
import { isReduced } from './numeral.ts';
import { markAt, type NumberToken, type Token, wordAt } from './token.ts';
import { means } from './vocabulary.ts';

export interface Measured {
  /** In `unit`; feet and metres are already inches and centimetres. Never negative: signs belong to the reader. */
  readonly value: number;
  /** Undefined for a bare number. */
  readonly unit: LengthUnit | undefined;
  /** The number of feet where feet stand alone, by mark (26') or by word. */
  readonly feet: { readonly count: number; readonly by: 'mark' | 'word' } | undefined;
  readonly fraction: boolean;
  /** '241/2' read as 24 1/2. */
  readonly spaceLost: boolean;
  /** Three digits after a comma: a decimal or thousands. */
  readonly commaUnclear: boolean;
  /** The place after its last token. */
  readonly end: number;
}

const INCHES_PER_FOOT = 12;
const NO_DOUBT = { feet: undefined, fraction: false, spaceLost: false, commaUnclear: false };

/** The length that starts at a place, or undefined where no number stands there. */
export function measureAt(tokens: readonly Token[], at: number): Measured | undefined {
  const number = tokens[at];
  if (number?.is !== 'number') return undefined;
  const closed = withoutSpace(tokens, at);
  const value = closed ?? number.value;
  const after = closed === undefined ? at + 1 : at + 3;
  const doubts = {
    ...NO_DOUBT,
    fraction: closed !== undefined || number.fraction,
    spaceLost: closed !== undefined,
    commaUnclear: number.afterComma.length === 3,
  };
  const { unit, next } = unitAt(tokens, after);
  const end = closeUnit(tokens, next);
  if (means(unit, 'inch')) return { ...doubts, value, unit: 'in', end };
  if (means(unit, 'cm')) return { ...doubts, value, unit: 'cm', end };
  if (means(unit, 'mm')) return { ...doubts, value: value / 10, unit: 'cm', end };
  if (means(unit, 'metre')) return metres(tokens, value, end);
  if (means(unit, 'foot')) return feet(tokens, value, end, unit);
  return { ...doubts, value, unit: undefined, end: after };
}

/** The word or mark that would be the unit of a number before `at`: after a hyphen ('17-inch') or 'of an'. */
function unitAt(tokens: readonly Token[], at: number): { unit: string; next: number } {
  const hyphen = markAt(tokens, at) === '-' && tokens[at + 1]?.spaced === false ? 1 : 0;
  const of = wordAt(tokens, at) === 'of' ? 1 : 0;
  const article = ['a', 'an'].includes(wordAt(tokens, at + of)) ? 1 : 0;
  const place = at + Math.max(hyphen, of + article);
  const token = tokens[place];
  return { unit: token === undefined || token.is === 'number' ? '' : token.text, next: place + 1 };
}

/** Takes in the full stop of an abbreviated unit: '14 in.' */
function closeUnit(tokens: readonly Token[], at: number): number {
  return markAt(tokens, at) === '.' && tokens[at]?.spaced === false ? at + 1 : at;
}

/** 24.5 for '241/2', whose space was lost; undefined for anything else. */
function withoutSpace(tokens: readonly Token[], at: number): number | undefined {
  const [number, slash, under] = tokens.slice(at, at + 3);
  if (number?.is !== 'number' || slash?.text !== '/' || under?.is !== 'number') return undefined;
  if (slash.spaced || under.spaced || markAt(tokens, at + 3) === '/') return undefined;
  if (!/^\d{2,3}$/.test(number.text) || ![2, 3, 4, 8].includes(under.value)) return undefined;
  const over = number.value % 10;
  if (over === 0 || over >= under.value || !isReduced(over, under.value)) return undefined;
  return Math.floor(number.value / 10) + over / under.value;
}

/** '1.63 m' and '1 m 63'. */
function metres(tokens: readonly Token[], value: number, end: number): Measured {
  const rest = tokens[end];
  if (rest?.is !== 'number' || !/^\d\d$/.test(rest.text) || !Number.isInteger(value)) {
    return { ...NO_DOUBT, value: value * 100, unit: 'cm', end };
  }
  const { unit, next } = unitAt(tokens, end + 1);
  return {
    ...NO_DOUBT,
    value: value * 100 + rest.value,
    unit: 'cm',
    end: means(unit, 'cm') ? closeUnit(tokens, next) : end + 1,
  };
}

/** `6'`, `5'3"`, '5 ft 4', '5 feet 4 1/2 inches'. */
function feet(tokens: readonly Token[], count: number, end: number, unit: string): Measured {
  const inches = tokens[end];
  if (isInchesBesideFeet(inches)) {
    const after = unitAt(tokens, end + 1);
    return {
      ...NO_DOUBT,
      value: count * INCHES_PER_FOOT + inches.value,
      unit: 'in',
      end: means(after.unit, 'inch') ? closeUnit(tokens, after.next) : end + 1,
    };
  }
  const by = unit === "'" ? 'mark' : 'word';
  return { ...NO_DOUBT, value: count * INCHES_PER_FOOT, unit: 'in', feet: { count, by }, end };
}

function isInchesBesideFeet(token: Token | undefined): token is NumberToken {
  return token?.is === 'number' && token.value < INCHES_PER_FOOT;
}
