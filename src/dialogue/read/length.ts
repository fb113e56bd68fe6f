/** Reads a length: of a body, a piece of knitting, a pattern's schematic. */
import type { LengthUnit } from '../../fit/units.ts';
import { MEASUREMENTS, type Measurement } from '../../fit/words.ts';
import { groupsOf, type Signed, wordsOf } from './groups.ts';
import { askBack, type Expected, type Heard, heard, type Option, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import type { Measured } from './measure.ts';
import { judgeRest } from './rest.ts';
import { agree, echoLength, type Length, lengthOf, otherUnit } from './tape.ts';

export interface LengthAsked {
  /** The unit of the interview; undefined where none was chosen yet. */
  readonly unit: LengthUnit | undefined;
  /** The body measurement asked for, so that an answer about another one is noticed. */
  readonly measurement?: Measurement;
}

/** Longer than any person, piece or blanket. */
const LONGEST_CM = 1000;
/** Nobody is taller; a larger number of 'feet' was meant as inches. */
const TALLEST_FEET = 8;
/** A bare height up to here, '1.75', was meant in metres. */
const TALLEST_METRES = 2.5;

/** The length in an answer. A unit that was typed always wins over the interview's. */
export function readLength(text: string, asked: LengthAsked): Heard<Length> {
  const expected: Expected = {
    what: 'a length in centimetres or inches',
    example: asked.unit === 'in' ? '38½ in' : '96.5 cm',
  };
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const { groups, rest, odd } = groupsOf(tokens);
  const ends = groups.flatMap((g) => (g.to === undefined ? [g.from] : [g.from, g.to]));
  const [first, second] = ends;
  if (first === undefined) return refused('no number', expected);
  const verdict = judgeRest(rest, []);
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (odd || ends.length > 2) return refused('several numbers', expected);
  if (ends.some((e) => e.sign === '-')) return refused('negative', expected);
  const read = second === undefined ? resolve(first.measured, asked) : beside(first, second, asked);
  return within(doubtRest(read, verdict === 'extra words', wordsOf(rest), asked), expected);
}

/** Two lengths in one answer: the same in both units, or two to choose from. */
function beside(first: Signed, second: Signed, asked: LengthAsked): Heard<Length> {
  const [a, b] = [first.measured, second.measured];
  const pair = [bothUnits(a, b), bothUnits(b, a)].find((p) => p !== undefined);
  if (pair !== undefined) {
    const own = pair.find((l) => l.typed.unit === asked.unit) ?? pair[0];
    return heard(own, echoLength(own, asked.unit));
  }
  const unit = a.unit ?? b.unit ?? asked.unit ?? 'in';
  const options = [a, b].map((m) => optionOf(m, m.unit ?? unit, asked));
  return which('I read two lengths. Which one is it?', options);
}

/** The two as one length in both units; a bare one takes the unit that the other lacks, if the lengths then agree. */
function bothUnits(a: Measured, b: Measured): readonly [Length, Length] | undefined {
  if (a.unit === undefined || b.unit === a.unit) return undefined;
  const pair = [lengthOf(a.value, a.unit), lengthOf(b.value, otherUnit(a.unit))] as const;
  return agree(...pair) ? pair : undefined;
}

function optionOf(m: Measured, unit: LengthUnit, asked: LengthAsked): Option<Length> {
  const value = lengthOf(m.value, unit);
  return { value, echo: echoLength(value, asked.unit) };
}

function resolve(m: Measured, asked: LengthAsked): Heard<Length> {
  if (m.unit === undefined && asked.measurement === 'height' && m.value >= 0.4 && m.value <= TALLEST_METRES) {
    return askBack('unit missing', optionOf({ ...m, value: m.value * 100 }, 'cm', asked));
  }
  if (m.feet !== undefined && !(m.feet.by === 'word' || asked.measurement === 'height')) {
    return footMark(m, m.feet.count, asked);
  }
  if (m.feet !== undefined && m.feet.count > TALLEST_FEET) return footMark(m, m.feet.count, asked);
  const unit = m.unit ?? (m.fraction ? 'in' : asked.unit);
  if (unit === undefined) {
    const options = (['in', 'cm'] as const).map((u) => optionOf(m, u, asked));
    return which('Inches or centimetres?', options);
  }
  const option = optionOf(m, unit, asked);
  if (m.spaceLost) return askBack('space lost', option);
  if (m.commaUnclear) return askBack('comma unclear', option);
  if (m.unit === undefined && unit !== asked.unit) {
    return askBack('unit missing', option, inInches(option.value));
  }
  return heard(option.value, option.echo);
}

/** A foot mark where no height was asked for: meant as inches, as a rule. */
function footMark(m: Measured, count: number, asked: LengthAsked): Heard<Length> {
  const inches = optionOf({ ...m, value: count }, 'in', asked);
  if (count > TALLEST_FEET || asked.measurement !== undefined) {
    return askBack('foot mark', inches, inInches(inches.value));
  }
  return which('Feet or inches?', [optionOf(m, 'in', asked), inches]);
}

function inInches(length: Length): string {
  return `Do you mean inches: ${echoLength(length, 'in')}?`;
}

/** Puts back what was heard beside words that are not known, or that name another part of the body. */
function doubtRest(
  read: Heard<Length>,
  extra: boolean,
  words: readonly string[],
  asked: LengthAsked,
): Heard<Length> {
  if (read.kind !== 'heard') return read;
  const named = words.map(measurementNamed).find((m) => m !== undefined);
  const wanted = asked.measurement;
  if (named !== undefined && wanted !== undefined && !wanted.includes(named)) {
    return askBack('other measurement', read, `You wrote ${named}. Is ${read.echo} the ${wanted}?`);
  }
  return extra ? askBack('extra words', read) : read;
}

function measurementNamed(word: string): Measurement | undefined {
  if (word === 'chest') return 'bust';
  if (word === 'hips') return 'hip';
  if (word === 'tall') return 'height';
  return MEASUREMENTS.find((m) => m === word);
}

function within(read: Heard<Length>, expected: Expected): Heard<Length> {
  if (read.kind === 'refused') return read;
  const values = read.kind === 'which' ? read.options.map((o) => o.value) : [read.value];
  const sound = values.every((v) => v.cm > 0 && v.cm <= LONGEST_CM);
  return sound ? read : refused('out of range', expected);
}
