/** What suggestions are made of: a fixed choice, a length as a tape shows it, a table's figure. */
import { ORIGINS, type Origin } from '../fit/tables/origin.ts';
import { CM_PER, type Cm, cm, inches, roundHalfUp } from '../fit/units.ts';
import { usual } from '../fit/usual.ts';
import type { Measurement } from '../fit/words.ts';
import type { Sheet, Suggestion } from '../flow/calculations.ts';
import { bodyKnown } from './body-known.ts';

export type Suggest = (sheet: Sheet) => readonly Suggestion[];

/** By the names that flow files use. */
export type Suggestions = Readonly<Record<string, Suggest>>;

export const fixedChoice =
  (choice: string, from: string): Suggest =>
  () => [{ value: { kind: 'choice', choice }, from }];

/** The amount that is usual where each unit is read: round in both. */
export const fixedLength =
  (inCm: number, inInches: number, from: string): Suggest =>
  (sheet) => [lengthOn(sheet, sheet.unit === 'cm' ? cm(inCm) : inches(inInches), from)];

/** To the nearest millimetre or eighth of an inch: what a tape can show. */
export function lengthOn(sheet: Sheet, exact: Cm, from: string): Suggestion {
  const step = sheet.unit === 'cm' ? 0.1 : CM_PER.in / 8;
  const length = cm(step * roundHalfUp(exact / step));
  return {
    value: { kind: 'length', cm: length, typed: { value: length / CM_PER[sheet.unit], unit: sheet.unit } },
    from,
  };
}

/** A published table's figure for a measurement, from what is known of the body. */
export const table =
  (measurement: Measurement): Suggest =>
  (sheet) => {
    const found = usual(measurement, bodyKnown(sheet));
    return found === undefined ? [] : [lengthOn(sheet, found.value, tableName(found.source))];
  };

function tableName(source: keyof typeof ORIGINS): string {
  const origin: Origin = ORIGINS[source];
  if (source === 'trade') return 'common practice';
  return `a table's figure. ${origin.credit ?? `${origin.publisher}, ${origin.year}`}`;
}
