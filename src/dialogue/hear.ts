/** A typed answer read as the kind that its question asks for. */
import type { LengthUnit } from '../fit/units.ts';
import type { Answer, Value } from '../flow/answer.ts';
import { unitOf } from '../flow/calculations.ts';
import type { Asked } from '../flow/compile.ts';
import type { Question } from '../flow/schema.ts';
import { exampleFor } from './example.ts';
import { readChoice, readChoices } from './read/choice.ts';
import { CONE } from './read/cone.ts';
import { readRows, readStitches, readWhole } from './read/count.ts';
import { readEase } from './read/ease.ts';
import { readGauge } from './read/gauge.ts';
import type { GaugeTyped } from './read/gauge-doubt.ts';
import type { Heard, Refused } from './read/heard.ts';
import { askBack, heard, refused } from './read/heard.ts';
import { readLength } from './read/length.ts';
import { readMultiple } from './read/multiple.ts';
import { readNewCount } from './read/new-count.ts';
import { readShapingText } from './read/shaping-text.ts';
import { type LengthRow, readLengthRow, readStitchRow } from './read/sizes.ts';
import { readYarnLength, readYarnWeight } from './read/yarn.ts';
import { showValue } from './shown.ts';

/** Reads the text for this question; least and most are minded, the body is not. */
export function hear(asked: Asked, text: string): Heard<Value> {
  const read = readKind(asked, text);
  switch (read.kind) {
    case 'heard':
      return oneForEachSize(asked, withinBounds(asked.question, read, asked));
    case 'ask back':
      return withinBounds(asked.question, read, asked);
    case 'refused':
      return withOwnExample(asked, read);
    case 'which':
      return read;
    default:
      return read satisfies never;
  }
}

/** A row of figures, unless all belong to one size, is put back where the pattern's sizes, as they were given before, are more or fewer. */
function oneForEachSize({ id, question: asked, answers }: Asked, read: Heard<Value>): Heard<Value> {
  if (read.kind !== 'heard') return read;
  if (asked.one_size === true) return { ...read, echo: showValue(asked, read.value, unitOf(answers)) };
  const figures = figuresIn(read.value);
  const sizes = Object.entries(answers)
    .filter(([question]) => question !== id)
    .map(([, answer]) =>
      answer.given === 'value' && answer.value.kind === 'sizes' ? figuresIn(answer.value) : undefined,
    )
    .find((count) => count !== undefined);
  if (figures === undefined || sizes === undefined || figures === sizes) return read;
  const question = `I read ${read.echo}. But the pattern has ${sizes} sizes. Is that all that is printed?`;
  return askBack('fewer or more than sizes', read, question);
}

function figuresIn(value: Value): number | undefined {
  if (value.kind === 'sizes') return value.lengths.length;
  return value.kind === 'counts' ? value.counts.length : undefined;
}

/** A reader's example is one of its kind; the question's own is nearer to what is asked, unless a cone was told. */
function withOwnExample({ question, answers }: Asked, read: Refused): Refused {
  if (read.example === CONE.example) return read;
  if (question.kind === 'size' || question.kind === 'shaping line') return read;
  return { ...read, example: exampleFor(question, answers.unit === undefined ? 'cm' : unitOf(answers)) };
}

function readKind({ question, answers, offered }: Asked, text: string): Heard<Value> {
  const unit = answers.unit === undefined ? undefined : unitOf(answers);
  const example = exampleFor(question, unit ?? 'cm');
  switch (question.kind) {
    case 'choice':
      return as(readChoice(text, question.choices ?? []), (choice) => ({ kind: 'choice', choice }));
    case 'choices':
      return as(readChoices(text, question.choices ?? []), (choices) => ({ kind: 'choices', choices }));
    case 'length':
      return as(
        readLength(text, {
          unit,
          ...(question.measurement === undefined ? {} : { measurement: question.measurement }),
        }),
        (l) => ({
          kind: 'length',
          ...l,
        }),
      );
    case 'ease':
      return as(readEase(text, unit), ({ low }) => ({ kind: 'ease', ...low }));
    case 'stitches':
      return as(readStitches(text), (count) => ({ kind: 'stitches', count }));
    case 'rows':
      return as(readRows(text), (count) => ({ kind: 'rows', count }));
    case 'stitch gauge':
      return needing(
        readGauge(text, { unit, asked: 'stitch' }),
        ({ stitches }) => stitches && { kind: 'stitch gauge', stitches },
        example,
      );
    case 'row gauge':
      return needing(
        readGauge(text, { unit, asked: 'row' }),
        ({ rows }) => rows && { kind: 'row gauge', rows },
        example,
      );
    case 'gauge':
      return needing(
        readGauge(text, { unit, asked: 'both' }),
        ({ stitches, rows }) => stitches && rows && { kind: 'gauge', stitches, rows },
        example,
      );
    case 'sizes':
      return as(readLengthRow(text, unit), (row) => sizesValue(row, unit));
    case 'size': {
      const labels = offered().flatMap(({ value }) => (value.kind === 'size' ? [value.label] : []));
      const choices = labels.map((label) => ({ id: label, label: `size ${label}`, hear: [label] }));
      if (choices.length === 0) return refused('no such choice', NO_SIZES);
      return as(readChoice(text, choices), (label) => ({ kind: 'size', label }));
    }
    case 'new count':
      return as(readNewCount(text), (count) => ({ kind: 'new count', ...count }));
    case 'multiple':
      return as(readMultiple(text), (multiple) => ({ kind: 'multiple', ...multiple }));
    case 'number':
      return as(readWhole(text, example), (count) => ({ kind: 'number', count }));
    case 'counts':
      return as(readStitchRow(text), ({ counts, labels }) => ({
        kind: 'counts',
        counts,
        labels: labels ?? null,
      }));
    case 'shaping line':
      return as(readShapingText(text), (line) => ({ kind: 'shaping line', text: line }));
    case 'yarn length':
      return as(readYarnLength(text), (length) => ({ kind: 'yarn length', ...length }));
    case 'yarn weight':
      return as(readYarnWeight(text), (weight) => ({ kind: 'yarn weight', ...weight }));
    default:
      return question.kind satisfies never;
  }
}

/** Where the pattern's sizes were left out there is none to pick. */
const NO_SIZES = { what: "the pattern's sizes first; you can go on without them", example: "I don't know" };

/** The row as it is stored: in centimetres, with the unit that was typed and the labels, where there were any. */
function sizesValue({ lengths, labels }: LengthRow, own: LengthUnit | undefined): Value {
  const unit = lengths.find((l) => l !== null)?.typed.unit ?? own ?? 'cm';
  return { kind: 'sizes', lengths: lengths.map((l) => l?.cm ?? null), unit, labels: labels ?? null };
}

function as<T>(read: Heard<T>, make: (value: T) => Value): Heard<Value> {
  switch (read.kind) {
    case 'heard':
    case 'ask back':
      return { ...read, value: make(read.value) };
    case 'which':
      return { ...read, options: read.options.map((o) => ({ ...o, value: make(o.value) })) };
    case 'refused':
      return read;
    default:
      return read satisfies never;
  }
}

/** A gauge from which one part is needed; refused where that part is not there. */
function needing(
  read: Heard<GaugeTyped>,
  part: (typed: GaugeTyped) => Value | undefined,
  example: string,
): Heard<Value> {
  const lacking = () => refused('not understood', { what: `an answer like this: ${example}`, example });
  switch (read.kind) {
    case 'heard':
    case 'ask back': {
      const value = part(read.value);
      return value === undefined ? lacking() : { ...read, value };
    }
    case 'which': {
      const options = read.options.flatMap((o) => {
        const value = part(o.value);
        return value === undefined ? [] : [{ ...o, value }];
      });
      return options.length === 0 ? lacking() : { ...read, options };
    }
    case 'refused':
      return read;
    default:
      return read satisfies never;
  }
}

function withinBounds(
  question: Question,
  read: Extract<Heard<Value>, { kind: 'heard' | 'ask back' }>,
  { answers }: Asked,
): Heard<Value> {
  const size = sizeOf(read.value);
  if (size === undefined) return read;
  const { least, most } = question;
  if ((least === undefined || size >= least) && (most === undefined || size <= most)) return read;
  const unit = unitOf(answers);
  const bound = (n: number) => showValue(question, boundValue(read.value, n), unit);
  const range =
    least === undefined
      ? `at most ${bound(most ?? 0)}`
      : most === undefined
        ? `at least ${bound(least)}`
        : `${bound(least)} to ${bound(most)}`;
  return refused('out of range', { what: range, example: exampleFor(question, unit) });
}

/** The figure that least and most are about. */
function sizeOf(value: Value): number | undefined {
  if (value.kind === 'length' || value.kind === 'ease') return value.cm;
  if (value.kind === 'stitches' || value.kind === 'rows' || value.kind === 'number') return value.count;
  return undefined;
}

function boundValue(like: Value, n: number): Value {
  if (like.kind === 'length' || like.kind === 'ease') return { ...like, cm: n as typeof like.cm };
  if (like.kind === 'stitches' || like.kind === 'rows' || like.kind === 'number')
    return { ...like, count: n };
  return like;
}

/** Whether an earlier answer still fits its question: the size it was read in, its kind, its choices, its bounds. */
export function fits(asked: Asked, answer: Answer): boolean {
  return isOfThisSize(asked, answer) && couldBeKept(asked, answer);
}

/** False for a figure that she read in the pattern for another size than she knits now. */
function isOfThisSize({ size }: Asked, answer: Answer): boolean {
  const was = answer.given === 'value' ? answer.size : undefined;
  return was === undefined || size === undefined || was === size;
}

/** Whether an earlier answer could be given again as it is. */
export function couldBeKept(asked: Asked, answer: Answer): boolean {
  if (answer.given !== 'value') return true;
  const { value } = answer;
  const { question } = asked;
  if (value.kind !== question.kind) return false;
  if (value.kind === 'choice') return question.choices?.some((c) => c.id === value.choice) ?? false;
  if (value.kind === 'choices')
    return value.choices.every((id) => question.choices?.some((c) => c.id === id));
  if (value.kind === 'size')
    return asked.offered().some((o) => o.value.kind === 'size' && o.value.label === value.label);
  return withinBounds(question, heard(value, ''), asked).kind === 'heard';
}
