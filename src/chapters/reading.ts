/** The reading of one shaping line: on which rows, and with which counts. */
import type { Outcome } from '../fit/plan.ts';
import { phrase } from '../fit/plan.ts';
import { readingCannot, readingPart } from '../fit/reading-steps.ts';
import { type LineAsk, readShapingLine } from '../fit/shaping-line.ts';
import type { Sheet } from '../flow/calculations.ts';
import { ledger, take, takeStitches } from './ledger.ts';
import { missing, outcomeOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function readingResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const text = take(book, 'reading_line', 'shaping line')?.text;
  const [start, end] = [takeStitches(book, 'reading_before'), takeStitches(book, 'reading_after')];
  if (text === undefined) return missing(book);
  const read = readWith({
    text,
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
  });
  if (read.kind === 'cannot read') return outcomeOf(book, readingCannot(read), []);
  const worked = /\b(?:rnds?|rounds?|runden?|rd)\b/i.test(text) ? 'round' : null;
  const summary = read.readings.length === 1 ? 'summary: line read' : 'summary: line read in several ways';
  return outcomeOf(book, readingPart(read, start, worked), [phrase(summary)]);
}

/** Where the line does not say how many stitches a row changes, the counts before and after it may tell. */
function readWith(ask: LineAsk) {
  const read = readShapingLine(ask);
  const { start, end } = ask;
  if (read.kind === 'cannot read' || start === undefined || end === undefined) return read;
  const [first] = read.readings;
  if (first === undefined || first.shaping.every((s) => s.change !== undefined)) return read;
  const perRow = Math.abs(end - start) / first.times;
  return Number.isInteger(perRow) && perRow > 0 ? readShapingLine({ ...ask, perRow }) : read;
}
