/** Reads a cone by its weight and the trade's number for its yarn: '500 g of 2/24 worsted count', '1 lb 16/2 Ne'. */
import { formatDecimal } from '../../fit/units.ts';
import { GRAMS_PER_OUNCE, METRES_PER_YARD } from '../../fit/yarn.ts';
import { GRAMS_PER_POUND, metresPerGram, type YarnCount } from '../../fit/yarn-number.ts';
import { askBack, type Expected, type Heard, heard, type Option, refused, which } from './heard.ts';
import { judgeRest } from './rest.ts';
import { markAt, type NumberToken, type Token, wordAt } from './token.ts';
import { type Meaning, means } from './vocabulary.ts';
import { BROKEN, MOST_ON_CONE } from './yarn-limits.ts';

export interface LengthTyped {
  readonly metres: number;
  readonly typed: 'm' | 'yd';
}

/** What a cone is told by. Its own example helps on where a ball's would not. */
export const CONE: Expected = {
  what: 'the weight of the cone, its number, and the count that it is numbered by: worsted, cotton or Nm',
  example: '500 g of 2/24 worsted count',
};

const WEIGHTS = [
  { meaning: 'gram', short: 'g', grams: 1, typed: 'm' },
  { meaning: 'kilogram', short: 'kg', grams: 1000, typed: 'm' },
  { meaning: 'ounce', short: 'oz', grams: GRAMS_PER_OUNCE, typed: 'yd' },
  { meaning: 'pound', short: 'lb', grams: GRAMS_PER_POUND, typed: 'yd' },
] as const satisfies readonly { meaning: Meaning; [fact: string]: unknown }[];

const COUNTS = [
  { count: 'worsted', meaning: 'worsted count' },
  { count: 'cotton', meaning: 'cotton count' },
  { count: 'metric', meaning: 'metric count' },
] as const satisfies readonly { count: YarnCount; meaning: Meaning }[];

/** Words beside a cone that change nothing. */
const BESIDE = new Set(['count', 'counts', 'yarn', 'wool', 'cone', 'cones', 'held', 'together']);

type Piece =
  | {
      readonly is: 'weight';
      readonly grams: number;
      readonly typed: 'm' | 'yd';
      readonly echo: string;
      readonly broken: boolean;
    }
  | { readonly is: 'number'; readonly pair: readonly [number, number] }
  | { readonly is: 'strands'; readonly strands: number }
  | { readonly is: 'count'; readonly count: YarnCount };
type Of<K extends Piece['is']> = Extract<Piece, { is: K }>;

/** The length of a cone; undefined where the answer tells of none: a cone is two at least of weight, number and count. */
export function readCone(tokens: readonly Token[]): Heard<LengthTyped> | undefined {
  const { pieces, rest } = piecesOf(tokens);
  const of = <K extends Piece['is']>(is: K) => pieces.filter((p): p is Of<K> => p.is === is);
  const [weights, numbers, strands] = [of('weight'), of('number'), of('strands')];
  const named = [...new Set(of('count').map((p) => p.count))];
  if ([weights, numbers, named].filter((some) => some.length > 0).length < 2) return undefined;
  if ([weights, numbers, strands].some((some) => some.length > 1)) return refused('several numbers', CONE);
  const [weight, number] = [weights[0], numbers[0]];
  if (weight === undefined || number === undefined) return refused('incomplete', CONE);
  const verdict = judgeRest(rest, []);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, CONE);
  // Numbered by a count that is not reckoned here: linen, woollen, tex.
  if (named.length === 0 && rest.some((t) => means(t.text, 'another count')))
    return refused('other kind', CONE);
  const orders = ordersOf(number.pair);
  if (orders.length === 0) return refused('not whole', CONE);
  const counts = named.length === 0 ? COUNTS.map((c) => c.count) : named;
  const readings = counts.flatMap((count) =>
    orders.flatMap((order) => reading(weight, count, order, strands[0]?.strands ?? 1)),
  );
  const [first, second] = readings;
  if (first === undefined) return refused('out of range', CONE);
  if (second !== undefined) return which(counts.length > 1 ? WHICH_COUNT : WHICH_ORDER, readings);
  if (weight.broken) return askBack('comma unclear', first);
  return verdict === 'extra words' ? askBack('extra words', first) : heard(first.value, first.echo);
}

const WHICH_COUNT = 'The same number means another length in each count. By which one is your yarn numbered?';
const WHICH_ORDER = 'Either of those numbers could be the size, and the other the plies. Which is it?';

/**
 * Size and plies, whichever stands first: the worsted count is written 2/24, the cotton count 16/2 (mypollywogs.com), Nm
 * both ways (2/28 at florencecashmereyarn.com, 60/2 at kniterate.com). The larger is the size where it is more than double
 * the other. Nearer together both could be: crochet cotton of 12 plies of size 8 is sold as 8/12 (from memory).
 * Plies are whole; none where neither number is.
 */
function ordersOf([a, b]: readonly [number, number]): readonly (readonly [size: number, plies: number])[] {
  const [large, small] = [Math.max(a, b), Math.min(a, b)];
  const orders = [
    [large, small],
    [small, large],
  ] as const;
  const possible = orders.filter(([, plies]) => Number.isInteger(plies));
  return large === small || large > 2 * small ? possible.slice(0, 1) : possible;
}

/** One reading, in a list; an empty list where no such cone can be. */
function reading(
  weight: Of<'weight'>,
  count: YarnCount,
  [size, plies]: readonly [number, number],
  strands: number,
): readonly Option<LengthTyped>[] {
  if (![weight.grams, size, plies, strands].every((n) => n > 0)) return [];
  const metres = weight.grams * metresPerGram(count, size, plies, strands).exact;
  if (metres > MOST_ON_CONE) return [];
  const [m, yd] = [`${formatDecimal(metres, 0)} m`, `${formatDecimal(metres / METRES_PER_YARD, 0)} yd`];
  const held = strands === 1 ? '' : `, ${formatDecimal(strands, 2)} strands`;
  const yarn = `size ${formatDecimal(size, 2)} in ${plies} ${plies === 1 ? 'ply' : 'plies'} by the ${count} count${held}`;
  const length = weight.typed === 'm' ? `${m} (${yd})` : `${yd} (${m})`;
  return [{ value: { metres, typed: weight.typed }, echo: `${weight.echo}, ${yarn}: ${length}` }];
}

function piecesOf(tokens: readonly Token[]): { pieces: readonly Piece[]; rest: readonly Token[] } {
  const [pieces, rest]: [Piece[], Token[]] = [[], []];
  for (let at = 0; at < tokens.length; ) {
    const found =
      weightAt(tokens, at) ?? strandsAt(tokens, at) ?? numberAt(tokens, at) ?? countAt(tokens, at);
    const token = tokens[at];
    if (found !== undefined) pieces.push(found.piece);
    else if (token !== undefined && !BESIDE.has(token.text)) rest.push(token);
    at += found?.length ?? 1;
  }
  return { pieces, rest };
}

type Found = { readonly piece: Piece; readonly length: number } | undefined;

function weightAt(tokens: readonly Token[], at: number): Found {
  const number = tokens[at];
  const unit = WEIGHTS.find(({ meaning }) => means(wordAt(tokens, at + 1), meaning));
  if (number?.is !== 'number' || unit === undefined) return undefined;
  const broken = BROKEN.test(number.text) && (unit.meaning === 'gram' || unit.meaning === 'ounce');
  const value = broken ? Math.round(number.value * 1000) : number.value;
  const [grams, echo] = [value * unit.grams, `${formatDecimal(value, 3)} ${unit.short}`];
  return { piece: { is: 'weight', grams, typed: unit.typed, echo, broken }, length: 2 };
}

function strandsAt(tokens: readonly Token[], at: number): Found {
  const number = tokens[at];
  if (number?.is !== 'number' || !means(wordAt(tokens, at + 1), 'strand')) return undefined;
  return { piece: { is: 'strands', strands: number.value }, length: 2 };
}

/** '2/24', which may be read as a fraction of a tape before ('3/16'), with or without the trade's 's ('2/24s'). */
function numberAt(tokens: readonly Token[], at: number): Found {
  const [first, second] = [tokens[at], tokens[at + 2]];
  if (first?.is !== 'number') return undefined;
  const [over, under] = /^\d+\/\d+$/.test(first.text) ? first.text.split('/').map(Number) : [];
  if (over !== undefined && under !== undefined)
    return { piece: { is: 'number', pair: [over, under] }, length: 1 + pluralAt(tokens, at + 1) };
  if (markAt(tokens, at + 1) !== '/' || second?.is !== 'number' || !isPlain(first) || !isPlain(second))
    return undefined;
  return {
    piece: { is: 'number', pair: [first.value, second.value] },
    length: 3 + pluralAt(tokens, at + 3),
  };
}

function isPlain({ text }: NumberToken): boolean {
  return /^\d+(?:[.,]\d+)?$/.test(text);
}

/** How many tokens an s takes that is written onto the number, with or without an apostrophe. */
function pluralAt(tokens: readonly Token[], at: number): number {
  const from = markAt(tokens, at) === "'" ? at + 1 : at;
  return wordAt(tokens, from) === 's' && tokens[from]?.spaced === false ? from - at + 1 : 0;
}

function countAt(tokens: readonly Token[], at: number): Found {
  const named = COUNTS.find(({ meaning }) => means(wordAt(tokens, at), meaning));
  return named && { piece: { is: 'count', count: named.count }, length: 1 };
}
