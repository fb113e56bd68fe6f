/** Lengths with a sign, alone or as a range, in one unit or both: what answers about ease and about differences share. */
import type { LengthUnit } from '../../fit/units.ts';
import { type Group, groupsOf, type Signed, wordsOf } from './groups.ts';
import { askBack, type Expected, type Heard, heard, type Option, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';
import { agree, echoLength, type Length, lengthOf, otherUnit } from './tape.ts';
import type { Token } from './token.ts';
import { means } from './vocabulary.ts';

/** From `low` to `high`; the same length twice where one figure was typed. */
export interface LengthRange {
  readonly low: Length;
  readonly high: Length;
}

export interface SignedAsked {
  readonly expected: Expected;
  /** The unit of the interview; undefined where none was chosen yet. */
  readonly unit: LengthUnit | undefined;
  /** What a figure without sign or direction is: taken as more, or asked back. */
  readonly unsigned: 'more' | 'ask';
  readonly echo: (range: LengthRange) => string;
}

type Direction = 'more' | 'less';

/** More than any garment is eased or altered by, in centimetres. */
const MOST_CM = 100;

export function readSigned(text: string, asked: SignedAsked): Heard<LengthRange> {
  const { expected } = asked;
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const { groups, rest, odd } = groupsOf(tokens);
  const [first, second] = groups;
  if (first === undefined) return refused('no number', expected);
  const { directions, others } = takeDirections(rest);
  const verdict = judgeRest(others, []);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (odd || groups.length > 2) return refused('several numbers', expected);
  const [direction, opposite] = directions;
  if (opposite !== undefined || groups.some((g) => contradicts(g, direction))) {
    return refused('not understood', expected);
  }
  const read =
    second === undefined ? alone(first, direction, asked) : beside(first, second, direction, asked);
  if (!rangesOf(read).every(isSound)) return refused('out of range', expected);
  return verdict === 'extra words' && read.kind === 'heard' ? askBack('extra words', read) : read;
}

/** Words such as 'longer' and 'negative', and what is left of the rest without them. */
function takeDirections(rest: readonly Token[]): {
  directions: readonly Direction[];
  others: readonly Token[];
} {
  const words = wordsOf(rest);
  const found = [
    words.some((word) => means(word, 'longer')) ? 'more' : undefined,
    words.some((word) => means(word, 'shorter')) ? 'less' : undefined,
  ] as const;
  return {
    directions: found.filter((d) => d !== undefined),
    others: rest.filter(({ text }) => !means(text, 'longer') && !means(text, 'shorter')),
  };
}

function contradicts(group: Group, direction: Direction | undefined): boolean {
  const against = direction === 'more' ? '-' : direction === 'less' ? '+' : undefined;
  return against !== undefined && endsOf(group).some((e) => e.sign === against);
}

function alone(group: Group, direction: Direction | undefined, asked: SignedAsked): Heard<LengthRange> {
  const ends = endsOf(group);
  const typed = unitOf(group);
  const fraction = ends.some((e) => e.measured.fraction);
  const unit = typed ?? (fraction ? 'in' : asked.unit);
  if (unit === undefined) {
    const options = (['in', 'cm'] as const).map((u) => optionOf(group, direction, u, asked));
    return which('Inches or centimetres?', options);
  }
  if (isMinusDoubtful(group)) return whichEnd(group, unit, asked);
  const option = optionOf(group, direction, unit, asked);
  const isZero = option.value.low.cm === 0 && option.value.high.cm === 0;
  if (ends.some((e) => e.measured.spaceLost)) return askBack('space lost', option);
  if (ends.some((e) => e.measured.commaUnclear)) return askBack('comma unclear', option);
  if (typed === undefined && unit !== asked.unit) return askBack('unit missing', option);
  const unsigned = direction === undefined && ends.every((e) => e.sign === undefined);
  if (unsigned && asked.unsigned === 'ask' && !isZero) return askBack('more or less', option);
  return heard(option.value, option.echo);
}

/** '-2-4 in': up to plus or down to minus four? '-1 to 1' leaves no doubt. */
function isMinusDoubtful({ from, to }: Group): boolean {
  return (
    from.sign === '-' && to !== undefined && to.sign === undefined && to.measured.value > from.measured.value
  );
}

function whichEnd(group: Group, unit: LengthUnit, asked: SignedAsked): Heard<LengthRange> {
  const options = [optionOf(group, 'less', unit, asked), optionOf(group, undefined, unit, asked)];
  return which('Does the minus go with both figures?', options);
}

/** The same in both units, or two to choose from. */
function beside(
  a: Group,
  b: Group,
  direction: Direction | undefined,
  asked: SignedAsked,
): Heard<LengthRange> {
  const typed = [unitOf(a), unitOf(b)];
  const first = typed[0] ?? (typed[1] === undefined ? (asked.unit ?? 'in') : otherUnit(typed[1]));
  const options = [
    optionOf(a, direction, first, asked),
    optionOf(b, direction, typed[1] ?? otherUnit(first), asked),
  ] as const;
  const [one, other] = [options[0].value, options[1].value];
  const same = agree(one.low, other.low) && agree(one.high, other.high) && typed.some((u) => u !== undefined);
  if (!same) return which('I read two amounts. Which one is it?', options);
  const own = options.find((o) => o.value.low.typed.unit === asked.unit) ?? options[0];
  return heard(own.value, own.echo);
}

function endsOf(group: Group): readonly Signed[] {
  return group.to === undefined ? [group.from] : [group.from, group.to];
}

function unitOf(group: Group): LengthUnit | undefined {
  return endsOf(group).find((e) => e.measured.unit !== undefined)?.measured.unit;
}

function optionOf(
  group: Group,
  direction: Direction | undefined,
  unit: LengthUnit,
  asked: SignedAsked,
): Option<LengthRange> {
  const from = directed(group.from, direction, unit);
  const to = group.to === undefined ? from : directed(group.to, direction, unit);
  const value = from.cm <= to.cm ? { low: from, high: to } : { low: to, high: from };
  return { value, echo: asked.echo(value) };
}

function directed({ measured, sign }: Signed, direction: Direction | undefined, unit: LengthUnit): Length {
  const less = sign === '-' || direction === 'less';
  // 0 − x keeps nought free of a sign.
  return lengthOf(less ? 0 - measured.value : measured.value, measured.unit ?? unit);
}

/** The echo of a single length without its sign. */
export function echoMagnitude(length: Length, own: LengthUnit | undefined): string {
  return echoLength(magnitude(length), own);
}

export function magnitude({ typed }: Length): Length {
  return lengthOf(Math.abs(typed.value), typed.unit);
}

function rangesOf(read: Heard<LengthRange>): readonly LengthRange[] {
  if (read.kind === 'refused') return [];
  return read.kind === 'which' ? read.options.map((o) => o.value) : [read.value];
}

function isSound({ low, high }: LengthRange): boolean {
  return low.cm >= -MOST_CM && high.cm <= MOST_CM;
}
