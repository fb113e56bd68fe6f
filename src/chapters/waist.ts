/** The waist's own chapter, in which it may be shaped in darts. */
import type { BodyLines } from '../fit/body-shaping.ts';
import { type Phrase, phrase } from '../fit/plan.ts';
import { otherWaists, shapeWaist, type WaistRefused, waistPart } from '../fit/waist-ways.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import { type Altered, bodyAsked, cannot } from './alterations.ts';
import { type Ledger, takeChoice } from './ledger.ts';

export function waistAltered(book: Ledger): Altered {
  const asked = bodyAsked(book, { length: false, waist: true });
  if (asked === undefined || asked.ask.waist === null) return undefined;
  const ask = { ...asked.ask, waist: asked.ask.waist, lines: linesWanted(book) };
  const shaped = shapeWaist(ask);
  if (shaped.kind !== 'cannot') return waistPart(shaped, asked.waist);
  if (shaped.why !== 'darts meet' && shaped.why !== 'too few rows') return cannot(shaped);
  const { because, workings } = whyNot(shaped);
  const other = otherWaists(ask, asked.waist);
  return {
    kind: 'cannot',
    because: [because],
    instead: other.ways.length === 0 ? [phrase('instead: change the figures')] : other.ways,
    workings: [...(asked.waist === null ? [] : [asked.waist]), ...workings, ...other.workings],
  };
}

const LINES: Readonly<Record<string, BodyLines>> = {
  sides: 'sides',
  darts: 'darts',
  back_alone: 'back darts',
};

function linesWanted(book: Ledger): BodyLines {
  return LINES[takeChoice(book, 'waist_lines') ?? 'sides'] ?? 'sides';
}

function whyNot(why: WaistRefused): { because: Phrase; workings: readonly WorkingLine[] } {
  if (why.why !== 'too few rows') return { because: phrase('cannot: darts meet'), workings: [] };
  const needed = quantity('shaping rows needed', why.needed, 'times');
  const room = quantity('rows that may carry them', why.available, 'times');
  return {
    because: phrase('cannot: too few rows to shape in', { needed, room }),
    workings: [workOut('rows that are lacking', 'a - b', { a: needed, b: room }, { unit: 'times' })],
  };
}
