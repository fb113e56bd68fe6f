/** Bands: stitches picked up along an edge, and buttonholes along a band. */
import { type ButtonAsk, placeButtons } from '../fit/buttons.ts';
import { buttonsPart } from '../fit/buttons-steps.ts';
import { rateFrom } from '../fit/gauge.ts';
import { pickUp } from '../fit/pickup.ts';
import { pickUpPart } from '../fit/pickup-steps.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import { type Ledger, ledger, take, takeChoice, takeRows } from './ledger.ts';
import { missing, outcomeOf, planOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function pickupResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const rows = takeRows(book, 'pickup_rows');
  const [fabric, band] = [take(book, 'swatch_rows', 'row gauge'), take(book, 'pickup_band', 'stitch gauge')];
  const multiple = take(book, 'pickup_multiple', 'multiple');
  if (rows === undefined || fabric === undefined || band === undefined || multiple === undefined)
    return missing(book);
  const picked = pickUp({
    rows,
    rowsPerCm: rateFrom([fabric.rows]).perCm,
    stitchesPerCm: rateFrom([band.stitches]).perCm,
    rule: { multiple: multiple.multiple, plus: multiple.plus, edge: 0, parity: 'any' },
  });
  if (picked.kind !== 'picked up') throw new Error('a rule of any parity can always be met');
  const count = quantity('stitches to pick up', picked.stitches, 'stitches');
  return planOf(book, [phrase('summary: picked up', { count })], [pickUpPart(picked, rows)]);
}

export function buttonsResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const ask = buttonAsk(book);
  if (ask === undefined) return missing(book);
  const count = quantity('buttonholes', ask.buttons, 'times');
  return outcomeOf(book, buttonsPart(ask, placeButtons(ask)), [phrase('summary: buttonholes', { count })]);
}

function buttonAsk(book: Ledger): ButtonAsk | undefined {
  const unit = takeChoice(book, 'buttons_along') === 'rows' ? 'rows' : 'stitches';
  const number = (id: string) => take(book, id, 'number')?.count;
  const [length, buttons] = [number('buttons_length'), number('buttons_number')];
  const [ends, hole] = [number('buttons_ends'), number('buttons_hole')];
  if (length === undefined || buttons === undefined || ends === undefined || hole === undefined)
    return undefined;
  return { unit, length, buttons, first: ends, last: ends, hole };
}
