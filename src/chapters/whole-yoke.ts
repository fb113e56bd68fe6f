/** The yoke of a garment that is joined: raglan or round, with the neck by short rows. */
import { type Part, phrase, type Step } from '../fit/plan.ts';
import type { SleeveShaping } from '../fit/sleeve.ts';
import { step } from '../fit/steps.ts';
import { rows } from '../fit/units.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Altered } from './alterations.ts';
import { type Ledger, takeStitches } from './ledger.ts';
import { partOf } from './make-plan.ts';
import { neckWedgeOn } from './neck-wedges.ts';
import { isOpenPart, resting } from './open-ways.ts';
import { raglanAltered } from './raglan.ts';
import { bodyMade, neckNeedle, oddBody } from './upper-figures.ts';
import { yokeAltered } from './yoke.ts';

/** `sleeve`: one that was changed; its count at the upper arm is carried into the yoke. */
export function yokeOfGarment(
  book: Ledger,
  wishes: ReadonlySet<string>,
  construction: 'raglan' | 'round yoke',
  sleeve: SleeveShaping | undefined,
): Part[] {
  const made = bodyMade(book);
  const top = wishes.has('top') ? topOf(book, construction, sleeve) : [];
  const neck =
    wishes.has('back_neck') || wishes.has('front_neck') ? neckOf(book, construction, wishes) : undefined;
  const raised = partOf(neck, 'yoke', phrase('where: back of the neck'));
  const wedge = top.some(isOpenPart) ? resting(raised, 'note: yoke is open') : raised;
  const shoulders = wishes.has('shoulder') ? [noShoulders()] : [];
  return made?.direction === 'down' ? [...wedge, ...top, ...shoulders] : [...top, ...wedge, ...shoulders];
}

function topOf(
  book: Ledger,
  construction: 'raglan' | 'round yoke',
  sleeve: SleeveShaping | undefined,
): Part[] {
  const more = sleeve === undefined ? 0 : sleeve.counts.upperArm - sleeve.ask.pattern.upperArm;
  const altered = construction === 'raglan' ? raglanAltered(book, more) : yokeAltered(book, more);
  const told = partOf(altered, 'yoke', phrase('where: the yoke piece'));
  const parts = construction === 'raglan' && oddBody(book) ? told.map((part) => oddNoted(part, book)) : told;
  return more === 0
    ? parts
    : parts.map((part) => ({ ...part, steps: carried(part.steps, book, construction, more) }));
}

/** The lines of a raglan count the front like the back: the odd stitch of a body in the round is in neither. */
function oddNoted(part: Part, book: Ledger): Part {
  const down = bodyMade(book)?.direction === 'down';
  const odd = phrase(down ? 'note: odd body below a raglan' : 'note: odd body under a raglan');
  return {
    ...part,
    steps: part.steps.map((one, i) => (i === 0 ? { ...one, notes: [odd, ...one.notes] } : one)),
  };
}

/** Says at the first step what the sleeves bring to the count of the yoke. */
function carried(
  steps: readonly Step[],
  book: Ledger,
  construction: 'raglan' | 'round yoke',
  more: number,
): readonly Step[] {
  const count = quantity('stitches more or fewer at the upper arm', Math.abs(more), 'stitches');
  const lines = carriedLines(book, construction, more, count);
  return steps.map((one, i) =>
    i > 0
      ? one
      : {
          ...one,
          notes: [phrase('note: sleeves changed, counted in', { count }), ...one.notes],
          workings: [...lines, ...one.workings],
        },
  );
}

function carriedLines(
  book: Ledger,
  construction: 'raglan' | 'round yoke',
  more: number,
  count: ReturnType<typeof quantity>,
): WorkingLine[] {
  const question = construction === 'raglan' ? 'p_sleeve_yoke' : 'p_yoke_underarm';
  const printed = takeStitches(book, question);
  if (printed === undefined) return [];
  const sign = more > 0 ? '+' : '-';
  const formula = construction === 'raglan' ? `a ${sign} b` : `a ${sign} 2 * b`;
  const label =
    construction === 'raglan'
      ? 'stitches of a sleeve where the yoke begins'
      : 'stitches of the yoke with both sleeves';
  const given = { a: quantity("the pattern's stitches", printed, 'stitches'), b: count };
  return [workOut(label, formula, given, { unit: 'stitches' })];
}

/** A front that is lowered and a back that is raised are one and the same wedge. */
function neckOf(book: Ledger, construction: 'raglan' | 'round yoke', wishes: ReadonlySet<string>): Altered {
  const made = bodyMade(book);
  const needle = neckNeedle(book, construction);
  if (made === undefined || needle === undefined) return undefined;
  const purpose = wishes.has('back_neck') ? 'back neck raise' : 'lower front neck';
  return neckWedgeOn(book, purpose, { made, needle, after: rows(0) });
}

function noShoulders(): Part {
  const notes = [phrase('cannot: a yoke has no shoulders'), phrase('instead: raise the back of the neck')];
  return { steps: [step('yoke', phrase('where: the shoulders piece'), { notes })], finished: [], pieces: [] };
}
