/** What is known of the body from the answers in force. */
import type { Body } from '../fit/bounds.ts';
import type { Cm } from '../fit/units.ts';
import { FITS, type Fit, type Measurement, TABLES, type Table } from '../fit/words.ts';
import { choiceOf, valueGiven } from '../flow/answer.ts';
import type { Sheet } from '../flow/calculations.ts';

/** Answered measurements alone: what stands in for an unknown one is no knowledge. */
export function bodyKnown(sheet: Sheet): Body {
  const known: { -readonly [M in Measurement]?: Cm } = {};
  for (const [id, { measurement }] of sheet.questions) {
    const length = valueGiven(sheet.answers, id, 'length');
    if (measurement !== undefined && length !== undefined) known[measurement] = length.cm;
  }
  return { table: tableOf(sheet), known };
}

export function tableOf({ answers }: Sheet): Table {
  return TABLES.find((t) => t === choiceOf(answers, 'table')) ?? 'women';
}

export function fitOf({ answers }: Sheet): Fit {
  const chosen = choiceOf(answers, 'fit')?.replace('_', ' ');
  return FITS.find((f) => f === chosen) ?? 'classic';
}
