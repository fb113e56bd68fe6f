/**
 * An answer about lengths as groups: '5-10 cm / 2-4"' is two groups of two measures each, '18½"/47' two groups of one.
 * What belongs to no measure is kept as the rest, so that nothing typed is passed over unseen.
 */
import { type Measured, measureAt } from './measure.ts';
import { isUnit } from './rest.ts';
import { type Token, wordAt } from './token.ts';
import { means } from './vocabulary.ts';

export interface Signed {
  readonly measured: Measured;
  readonly sign: '+' | '-' | undefined;
}

/** One measure, or two as the ends of a range. */
export interface Group {
  readonly from: Signed;
  readonly to: Signed | undefined;
}

export interface Groups {
  readonly groups: readonly Group[];
  readonly rest: readonly Token[];
  /** Whether numbers stand beside each other in a way that no length is written. */
  readonly odd: boolean;
}

const RANGE = new Set(['-', '--', 'to', 'bis', 'and', 'und', 'et']);
const NEXT_GROUP = new Set(['/', '(', '[', '=', ',', ';', '|', '~', 'or', 'oder', 'ou', ')', ']']);

export function groupsOf(tokens: readonly Token[]): Groups {
  const groups: Group[] = [];
  const rest: Token[] = [];
  let odd = false;
  let waiting: Token[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at] as Token;
    const measured = measureAt(tokens, at);
    if (measured === undefined) {
      waiting.push(token);
      at += 1;
      continue;
    }
    const { sign, before } = takeSign(waiting, groups.length === 0);
    const signed: Signed = { measured, sign };
    const between = waiting;
    const last = groups.at(-1);
    const joint = last === undefined ? 'first' : jointOf(before);
    if (last !== undefined && joint === 'range' && last.to === undefined) {
      groups[groups.length - 1] = { from: last.from, to: signed };
    } else {
      groups.push({ from: signed, to: undefined });
      if (joint === 'first') rest.push(...before);
      else if (joint === 'none' || (between.length === 0 && last?.from.measured.unit === undefined))
        odd = true;
    }
    waiting = [];
    at = measured.end;
  }
  return adoptUnit({ groups, rest: [...rest, ...waiting], odd });
}

/** 'cm: 38' and '38, in inches please': a unit that stands apart belongs to the one bare number. */
function adoptUnit(read: Groups): Groups {
  const [only, another] = read.groups;
  const apart = read.rest.find((t, i) => t.is === 'word' && isUnit(read.rest, i));
  if (only === undefined || another !== undefined || apart === undefined) return read;
  if (only.to !== undefined || only.from.measured.unit !== undefined) return read;
  const unit = means(apart.text, 'cm') ? 'cm' : 'in';
  const from = { ...only.from, measured: { ...only.from.measured, unit } } as const;
  return { ...read, groups: [{ from, to: undefined }], rest: read.rest.filter((t) => t !== apart) };
}

/** Splits the sign off what stands before a number: a dash between two numbers joins them and is no sign. */
function takeSign(
  waiting: readonly Token[],
  first: boolean,
): { sign: Signed['sign']; before: readonly Token[] } {
  const last = waiting.at(-1);
  const before = waiting.slice(0, -1);
  const alone = first || before.length > 0;
  if (last === undefined || !alone) return { sign: undefined, before: waiting };
  if (last.text === '-' || last.text === 'minus' || last.text === 'negative') return { sign: '-', before };
  if (last.text === '+' || last.text === 'plus') return { sign: '+', before };
  return { sign: undefined, before: waiting };
}

function jointOf(between: readonly Token[]): 'range' | 'next group' | 'none' {
  const marks = between.map((t) => t.text).filter((text) => text !== ')' && text !== '.');
  if (marks.length === 1 && RANGE.has(marks[0] ?? '')) return 'range';
  return marks.every((text) => NEXT_GROUP.has(text)) ? 'next group' : 'none';
}

/** The words of the rest, for readers that look for their own among them. */
export function wordsOf(rest: readonly Token[]): readonly string[] {
  return rest.map((_, i) => wordAt(rest, i)).filter((word) => word !== '');
}
