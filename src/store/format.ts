/**
 * How lines and places are written as text and read back. Each text is stored beside the number of its format; a reader
 * knows every format that was ever written.
 */
import * as z from 'zod';
import { AT_THE_START, type LogLine, type Place } from '../dialogue/session.ts';
import { MISTAKES } from '../fit/mistake.ts';
import { cm, LENGTH_UNITS } from '../fit/units.ts';
import type { Answer, Value } from '../flow/answer.ts';
import { StoredUnreadable } from './trouble.ts';

export const LINE_FORMAT = 1;
export const PLACE_FORMAT = 1;

const unit = z.enum(LENGTH_UNITS);
const length = z.number().transform((value) => cm(value));
const typed = z.strictObject({ value: z.number(), unit });
const count = z.strictObject({ count: z.number(), span: length, unit });

const value: z.ZodType<Value> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('choice'), choice: z.string() }),
  z.strictObject({ kind: z.literal('choices'), choices: z.array(z.string()) }),
  z.strictObject({ kind: z.literal('length'), cm: length, typed }),
  z.strictObject({ kind: z.literal('ease'), cm: length, typed }),
  z.strictObject({ kind: z.literal('stitches'), count: z.number() }),
  z.strictObject({ kind: z.literal('rows'), count: z.number() }),
  z.strictObject({ kind: z.literal('stitch gauge'), stitches: count }),
  z.strictObject({ kind: z.literal('row gauge'), rows: count }),
  z.strictObject({ kind: z.literal('gauge'), stitches: count, rows: count }),
  z.strictObject({
    kind: z.literal('sizes'),
    lengths: z.array(length.nullable()),
    unit,
    labels: z.array(z.string()).nullable(),
  }),
  z.strictObject({ kind: z.literal('size'), label: z.string() }),
  z.strictObject({ kind: z.literal('multiple'), multiple: z.number(), plus: z.number() }),
  z.strictObject({ kind: z.literal('number'), count: z.number() }),
  z.strictObject({
    kind: z.literal('counts'),
    counts: z.array(z.number().nullable()),
    labels: z.array(z.string()).nullable(),
  }),
  z.strictObject({ kind: z.literal('new count'), how: z.enum(['to', 'by']), count: z.int() }),
  z.strictObject({ kind: z.literal('shaping line'), text: z.string() }),
  z.strictObject({ kind: z.literal('yarn length'), metres: z.number(), typed: z.enum(['m', 'yd']) }),
  z.strictObject({ kind: z.literal('yarn weight'), grams: z.number(), typed: z.enum(['g', 'oz']) }),
]);

const answer: z.ZodType<Answer> = z.discriminatedUnion('given', [
  z.strictObject({
    given: z.literal('value'),
    value,
    confirmed: z.literal(true).exactOptional(),
    size: z.string().exactOptional(),
  }),
  z.strictObject({ given: z.literal('unknown') }),
  z.strictObject({ given: z.literal('skipped') }),
]);

const line: z.ZodType<LogLine> = z.discriminatedUnion('line', [
  z.strictObject({ line: z.literal('answer'), question: z.string(), answer, typed: z.string(), at: z.int() }),
  z.strictObject({ line: z.literal('start over'), at: z.int() }),
  z.strictObject({ line: z.literal('sums'), did: z.enum(['begin', 'stop']), at: z.int() }),
  z.strictObject({
    line: z.literal('sum'),
    sum: z.string(),
    came: z.enum(['right', 'wrong', 'shown', 'passed']),
    slips: z.array(z.enum(MISTAKES)),
    typed: z.string(),
    at: z.int(),
  }),
]);

const option = z.strictObject({ label: z.string(), answer, echo: z.string() });
const place: z.ZodType<Place> = z.strictObject({
  revisiting: z.string().nullable(),
  pending: z
    .strictObject({ question: z.string(), text: z.string(), yesNo: z.boolean(), options: z.array(option) })
    .nullable(),
  confirmed: z.boolean(),
  rest: z.enum(['none', 'paused', 'cancelled']),
  elsewhere: z.strictObject({ flow: z.string().nullable() }).exactOptional(),
  refused: z.strictObject({ question: z.string(), times: z.int() }).exactOptional(),
});

export function writeLine(written: LogLine): string {
  return JSON.stringify(written);
}

/** `where` names the line in the error. Throws StoredUnreadable. */
export function readLine(format: number, text: string, where: string): LogLine {
  if (format !== LINE_FORMAT) throw new StoredUnreadable(where, `its format ${format} is not known`);
  const read = line.safeParse(JSON.parse(text));
  if (!read.success) throw new StoredUnreadable(where, z.prettifyError(read.error));
  return read.data;
}

export function writePlace(written: Place): string {
  return JSON.stringify(written);
}

/** A place that cannot be read is the start: it may be lost without losing an answer. */
export function readPlace(format: number, text: string): Place {
  const read = format === PLACE_FORMAT ? place.safeParse(JSON.parse(text)) : undefined;
  return read?.success === true ? read.data : AT_THE_START;
}
