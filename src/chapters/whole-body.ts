/** The body of a garment with all that is wished for it: length and waist, a lower hem, the bust. */
import { layInBody, type ToLay } from '../fit/body-lay.ts';
import type { BodyShaping } from '../fit/body-shaping.ts';
import { bodyChange, bodyFinished, bodySteps } from '../fit/body-steps.ts';
import { type Part, phrase, type Step } from '../fit/plan.ts';
import { rows } from '../fit/units.ts';
import { bodyShaped, type CannotAlter, type ShapedBody } from './alterations.ts';
import { addedBy, type BustShapings, bustAltered, bustShapings, stepsOf } from './bust.ts';
import { sampleSize } from './figures.ts';
import { hemAltered, hemOn } from './hem.ts';
import type { Ledger } from './ledger.ts';
import { partOf } from './make-plan.ts';

/** Lower back or body, and the front where it is knitted by itself and differs. */
export function bodyOfGarment(book: Ledger, wishes: ReadonlySet<string>): Part[] {
  const made = drawnBody(book, wishes);
  if (made === undefined || 'kind' in made) {
    return [
      ...partOf(made, 'body', phrase('where: the body piece')),
      ...(wishes.has('bust') ? partOf(bustAltered(book), 'front', phrase('where: bust dart')) : []),
      ...(wishes.has('hem') ? partOf(hemAltered(book), 'body', phrase('where: hem across the back')) : []),
    ];
  }
  return wholeBody(book, wishes, made);
}

/** The body is drawn where it changes; of the sample, whose figures are all known, also where short rows lie in it. */
function drawnBody(book: Ledger, wishes: ReadonlySet<string>): ShapedBody | CannotAlter | undefined {
  const [length, waist] = [wishes.has('length'), wishes.has('waist')];
  const known = sampleSize(book) !== undefined && (wishes.has('bust') || wishes.has('hem'));
  return length || waist || known ? bodyShaped(book, { length, waist }) : undefined;
}

function wholeBody(book: Ledger, wishes: ReadonlySet<string>, { shaped, waist }: ShapedBody): Part[] {
  const bust = wishes.has('bust') ? bustShapings(book, shaped) : undefined;
  const hem = wishes.has('hem') ? hemToLay(book, shaped) : [];
  const dart = dartToLay(bust, shaped);
  const { ask } = shaped;
  const first = [...(bust?.advice.steps ?? []), ...dartSteps(bust)];
  const told = (piece: 'body' | 'back' | 'front', lain: readonly ToLay[], alike: boolean): Step[] =>
    bodySteps({ body: shaped, waist, piece, alike }, layInBody(shaped, lain));
  const apart = hem.length + dart.length > 0;
  const steps =
    ask.gauge.worked === 'round'
      ? told('body', [...hem, ...dart], false)
      : [...told('back', hem, !apart), ...(apart ? told('front', dart, false) : [])];
  return [
    {
      steps: [...first, ...steps],
      finished: bodyFinished(shaped),
      pieces: [bodyChange(shaped)],
    },
  ];
}

/** Right after the edging, or right before it where the body is knitted down. */
function hemToLay(book: Ledger, { ask, sections, inAll }: BodyShaping): ToLay[] {
  const on = hemOn(book, 'in the body');
  if (on === undefined) return [];
  const up = ask.direction === 'up';
  const edging = (up ? sections[0] : sections.at(-1))?.stretch.rows ?? 0;
  return [{ after: rows(up ? edging : inAll.result.value - edging - 1), on }];
}

/** At the fullest point of the bust, counted from the underarm. */
function dartToLay(bust: BustShapings | undefined, shaped: BodyShaping): ToLay[] {
  if (bust === undefined || bust.dart === null) return [];
  const { below, on } = bust.dart;
  const { ask, inAll } = shaped;
  const after = ask.direction === 'up' ? inAll.result.value - below : below;
  const added = addedBy(bust.darts);
  return [{ after: rows(Math.max(0, after)), on: (needle) => on(needle, 'before the back', added) }];
}

/** Darts that run up and down: told before the body in whose rows they lie. */
function dartSteps(bust: BustShapings | undefined): Step[] {
  if (bust === undefined || bust.darts === null) return [];
  const steps = [...stepsOf(bust.darts, 'before'), ...stepsOf(bust.darts, 'after')];
  if (bust.darts.kind === 'cannot') return steps;
  return steps.map((one) => ({ ...one, notes: [phrase('note: darts within the body'), ...one.notes] }));
}
