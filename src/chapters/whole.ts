/** The single alterations, and the whole way, which joins them in the order of knitting. */
import type { PhraseName } from '../fit/phrases.ts';
import { type Outcome, type Part, phrase, type Step } from '../fit/plan.ts';
import type { Sheet } from '../flow/calculations.ts';
import { lengthAltered, sleeveAltered } from './alterations.ts';
import { ledger, take } from './ledger.ts';
import { gaugeSummary, outcomeOf, planOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { patternOf } from './pattern-of.ts';
import { sizePart } from './size.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { swatchPart } from './swatch.ts';
import { waistAltered } from './waist.ts';
import { garmentParts } from './whole-garment.ts';
import { yarnOfGarment } from './whole-yarn.ts';

export function sleeveResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, sleeveAltered(book), [phrase('summary: sleeve')]);
}

export function lengthResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, lengthAltered(book), [phrase('summary: length')]);
}

export function waistResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, waistAltered(book), [phrase('summary: waist')]);
}

/** Swatch and size first, then the yarn, then each piece in the order of knitting. */
export function wholeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const gauge = ownGauge(book, patternOf(book)?.body ?? 'round');
  const size = sizePart(book);
  const wishes = new Set(take(book, 'wishes', 'choices')?.choices ?? []);
  const garment = garmentParts(book, wishes);
  const parts = [
    ...(gauge === undefined ? [] : [swatchPart(book, gauge)]),
    ...(size === undefined ? [] : [size.part]),
    ...(wishes.has('yarn') ? yarnOfGarment(book, garment) : []),
    ...garment,
  ];
  const summary = [...(gauge === undefined ? [] : [gaugeSummary(gauge)]), ...(size?.summary ?? [])];
  return planOf(book, summary, oneGarment(parts));
}

/** What holds throughout is said at its first step alone, and each finished measurement once. */
function oneGarment(parts: readonly Part[]): Part[] {
  const said = new Set<string>();
  const first = (name: string) => !said.has(name) && said.add(name) !== undefined;
  const once = ({ notes, ...step }: Step): Step => ({
    ...step,
    notes: notes.filter(({ say }) => !SAID_ONCE.has(say) || first(say)),
  });
  return parts.map(({ steps, finished, pieces }) => ({
    steps: steps.map(once),
    finished: finished.filter(({ name }) => first(`finished ${name}`)),
    pieces,
  }));
}

const SAID_ONCE: ReadonlySet<PhraseName> = new Set(['note: short rows', 'note: shaping is usual']);
