/** Numbers in digits: whole, decimal (point or comma) and vulgar fractions. A thousands mark is never guessed. */
import type { MarkToken, NumberToken } from './token.ts';

type Piece = Omit<NumberToken, 'spaced'> | Omit<MarkToken, 'spaced'>;

/** Digits with whatever points and commas stand between them; a leading point as in '.5'. */
const RUN = /\d+(?:[.,]\d+)*|\.\d+/y;
/** What joins a whole number to its fraction: '3 and 5/8', '21-1/2', '5 & 1/2'. */
const JOINED_FRACTION =
  /(?: +|-| +(?:and|und|et) +| *& *)(\d{1,2})([/\u2044])(\d{1,2})(?:ths?|rds?|nds?)?(?!\d|[.,]\d|[/\u2044])/y;
const OWN_FRACTION = /([/\u2044])(\d{1,2})(?:ths?|rds?|nds?)?(?!\d|[.,]\d|[/\u2044])/y;

/** Halves to thirty-seconds as on a tape, and thirds. Others ('4/5', '22/10') are two numbers with a slash. */
const TAPE_DENOMINATORS: readonly number[] = [2, 3, 4, 8, 16, 32];

/**
 * The numbers that start at a place, or undefined. '34,36,38' gives three with commas between; '1.234,5' gives one
 * mark that holds the digits and that nothing can read.
 */
export function numeralAt(
  line: string,
  at: number,
  afterSlash: boolean,
): { readonly tokens: readonly Piece[]; readonly length: number } | undefined {
  RUN.lastIndex = at;
  const run = RUN.exec(line)?.[0];
  if (run === undefined) return undefined;
  if (!/^\d+$/.test(run)) return { tokens: withPointsAndCommas(run), length: run.length };
  const fraction = fractionAfter(run, line, at + run.length, afterSlash);
  if (fraction === undefined) return { tokens: [number(run, Number(run))], length: run.length };
  const text = line.slice(at, at + run.length + fraction.length);
  return { tokens: [{ ...number(text, fraction.value), fraction: true }], length: text.length };
}

function number(text: string, value: number, afterComma = ''): Omit<NumberToken, 'spaced'> {
  return { is: 'number', value, text, fraction: false, afterComma };
}

function fractionAfter(
  run: string,
  line: string,
  at: number,
  afterSlash: boolean,
): { value: number; length: number } | undefined {
  OWN_FRACTION.lastIndex = at;
  const own = OWN_FRACTION.exec(line);
  if (own !== null) {
    const value = afterSlash ? undefined : fractionValue(Number(run), own[1], Number(own[2]));
    return value === undefined ? undefined : { value, length: own[0].length };
  }
  JOINED_FRACTION.lastIndex = at;
  const joined = JOINED_FRACTION.exec(line);
  if (joined === null) return undefined;
  const value = fractionValue(Number(joined[1]), joined[2], Number(joined[3]));
  return value === undefined ? undefined : { value: Number(run) + value, length: joined[0].length };
}

/** The value of a proper fraction; one typed with a keyboard slash must also be one that is printed on tapes. */
function fractionValue(over: number, slash: string | undefined, under: number): number | undefined {
  if (over >= under || over === 0) return undefined;
  if (slash === '/' && (!TAPE_DENOMINATORS.includes(under) || !isReduced(over, under))) return undefined;
  return over / under;
}

/** Whether no number divides both: 5/8 is, 6/8 (sizes 6 and 8) is not. */
export function isReduced(over: number, under: number): boolean {
  return under === 0 ? over === 1 : isReduced(under, over % under);
}

function withPointsAndCommas(run: string): readonly Piece[] {
  const parts = run.split(',');
  const unreadable = [{ is: 'mark', text: run }] as const;
  if (!parts.every((part) => /^\d*(?:\.\d+)?$/.test(part))) return unreadable;
  const [first = '', second = ''] = parts;
  if (parts.length === 1) return [number(run, Number(run))];
  if (parts.length === 2) {
    if (!run.includes('.')) return [number(run, Number(`${first}.${second}`), second)];
    if (/\.\d{3}$/.test(first) || /^\d{3}\./.test(second)) return unreadable;
  }
  return parts.flatMap((part, i) => {
    const piece = number(part, Number(part));
    return i === 0 ? [piece] : [{ is: 'mark', text: ',' } as const, piece];
  });
}
