/** The single alterations, and the whole way, which joins them in the order of knitting. */
import { type Outcome, phrase } from '../fit/plan.ts';
import type { Sheet } from '../flow/calculations.ts';
import { bodyAltered, sleeveAltered } from './alterations.ts';
import { type Ledger, ledger, take } from './ledger.ts';
import { gaugeSummary, outcomeOf, partOf, planOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { patternOf } from './pattern-of.ts';
import { sizePart } from './size.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { swatchPart } from './swatch.ts';

export function sleeveResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, sleeveAltered(book), [phrase('summary: sleeve')]);
}

export function lengthResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, bodyAltered(book, { waist: false }), [phrase('summary: length')]);
}

export function waistResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, bodyAltered(book, { waist: true }), [phrase('summary: waist')]);
}

/** Swatch and size first, then body and sleeves as the wishes ask. */
export function wholeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const gauge = ownGauge(book, patternOf(book)?.body ?? 'round');
  const size = sizePart(book);
  const wishes = wishesOf(book);
  const body =
    wishes.has('length') || wishes.has('waist')
      ? bodyAltered(book, { waist: wishes.has('waist') })
      : undefined;
  const sleeve = wishes.has('sleeve') ? sleeveAltered(book) : undefined;
  const parts = [
    ...(gauge === undefined ? [] : [swatchPart(book, gauge)]),
    ...(size === undefined ? [] : [size.part]),
    ...partOf(body, 'body', phrase('where: the body piece')),
    ...partOf(sleeve, 'sleeve', phrase('where: the sleeve piece')),
  ];
  return planOf(
    book,
    [...(gauge === undefined ? [] : [gaugeSummary(gauge)]), ...(size?.summary ?? [])],
    parts,
  );
}

function wishesOf(book: Ledger): ReadonlySet<string> {
  return new Set(take(book, 'wishes', 'choices')?.choices ?? []);
}
