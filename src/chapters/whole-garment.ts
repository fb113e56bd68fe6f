/** The pieces of one garment in the order of knitting; each change stands on the counts of those before it. */
import type { PhraseName } from '../fit/phrases.ts';
import type { Part, Step } from '../fit/plan.ts';
import { phrase } from '../fit/plan.ts';
import type { SleeveShaping } from '../fit/sleeve.ts';
import { sleevePart } from '../fit/sleeve-steps.ts';
import { sleeveShaped } from './alterations.ts';
import { droppedTop } from './armhole.ts';
import { capFor } from './cap-of.ts';
import type { Ledger } from './ledger.ts';
import { partOf } from './make-plan.ts';
import { resting } from './open-ways.ts';
import { bodyMade, constructionOf } from './upper-figures.ts';
import { bodyOfGarment } from './whole-body.ts';
import { type SleeveBeside, upperOfGarment } from './whole-upper.ts';
import { yokeOfGarment } from './whole-yoke.ts';

export function garmentParts(book: Ledger, wishes: ReadonlySet<string>): Part[] {
  const body = bodyOfGarment(book, wishes);
  const sleeve = wishes.has('sleeve') ? sleeveOfGarment(book, wishes) : undefined;
  const shaped = sleeve !== undefined && !('kind' in sleeve) ? sleeve.shaped : undefined;
  const construction = constructionOf(book);
  const joined = construction === 'raglan' || construction === 'round yoke';
  const upper = joined
    ? yokeOfGarment(book, wishes, construction, shaped)
    : upperOfGarment(book, wishes, shaped === undefined ? {} : besideSleeve(shaped));
  const capTold = upper.some(({ steps }) => steps.some(({ piece }) => piece === 'sleeve'));
  const yokeTold = joined && wishes.has('top');
  const alone =
    sleeve === undefined || 'kind' in sleeve
      ? partOf(sleeve, 'sleeve', phrase('where: the sleeve piece'))
      : [
          sleevePart(
            sleeve.shaped,
            sleeve.widths,
            capTold || yokeTold ? 'told by itself' : topOf(book, sleeve.shaped),
          ),
        ];
  const open = !joined && wishes.has('top') && upper.some(topIsOpen);
  const sleeves = open ? resting(alone, 'note: sleeve top is open') : alone;
  const made = bodyMade(book);
  const arms = armsInOrder(sleeves, upper, shaped?.ask.direction === 'down');
  const above = upper.map((part) => ({
    ...part,
    steps: part.steps.filter(({ piece }) => piece !== 'sleeve'),
  }));
  if (made?.direction === 'down') return [...above, ...body, arms];
  if (joined) return [...body, arms, ...above];
  return [pieceByPiece(body, above, arms, made?.worked === 'flat')];
}

/** Whether a way is still to be chosen for armhole or cap; where none was found, its step has nothing to do. */
function topIsOpen({ steps }: Part): boolean {
  return steps.some(
    ({ where, instead }) =>
      TOPS.has(where.say) && (instead.length === 0 || instead.some(({ do: what }) => what === 'choose one')),
  );
}

const TOPS: ReadonlySet<PhraseName> = new Set([
  'where: armhole',
  'where: armhole of the front',
  'where: sleeve cap',
  'where: sleeve top to the armhole',
]);

/** A dropped sleeve ends with the count of its armhole. */
function sleeveOfGarment(book: Ledger, wishes: ReadonlySet<string>): ReturnType<typeof sleeveShaped> {
  const made = sleeveShaped(book);
  if (made === undefined || 'kind' in made || !wishes.has('top')) return made;
  const top = droppedTop(book, besideSleeve(made.shaped));
  return top === undefined ? made : sleeveShaped(book, top);
}

function besideSleeve({ counts, ask }: SleeveShaping): SleeveBeside {
  const parity = counts.wrist % 2 === 0 ? 'even' : 'odd';
  return { upperArm: counts.upperArm, top: { edge: ask.edge, parity } };
}

/** The sleeve and its top in the order of knitting: from its cuff the top comes last. */
function armsInOrder(sleeves: readonly Part[], upper: readonly Part[], down: boolean): Part {
  const arms = sleeves.flatMap((part) => part.steps);
  const tops = upper.flatMap((part) => part.steps).filter(({ piece }) => piece === 'sleeve');
  return {
    steps: down ? [...tops.map(toldUp), ...arms] : [...arms, ...tops],
    finished: sleeves.flatMap((part) => part.finished),
    pieces: sleeves.flatMap((part) => part.pieces),
  };
}

function toldUp(step: Step): Step {
  return step.where.say === 'where: sleeve cap'
    ? { ...step, notes: [phrase('note: cap told from the underarm up'), ...step.notes] }
    : step;
}

function topOf(book: Ledger, { topDifference, counts }: SleeveShaping) {
  return topDifference === null ? undefined : capFor(book, counts.upperArm);
}

/** Body, back, front and sleeve, each from its lower edge to its top; in the round the lower front is the body's. */
function pieceByPiece(body: readonly Part[], upper: readonly Part[], arms: Part, flat: boolean): Part {
  const stepsOf = (parts: readonly Part[]) => parts.flatMap((part) => part.steps);
  const [lower, above] = [stepsOf(body), stepsOf(upper)];
  const at = (steps: readonly Step[], piece: Step['piece']) => steps.filter((step) => step.piece === piece);
  const ofFront = flat ? at(lower, 'front') : [];
  const all = [...body, ...upper, arms];
  return {
    steps: [
      ...lower.filter((step) => !ofFront.includes(step)),
      ...at(above, 'body'),
      ...at(above, 'back'),
      ...ofFront,
      ...at(above, 'front'),
      ...arms.steps,
    ],
    finished: all.flatMap((part) => part.finished),
    pieces: all.flatMap((part) => part.pieces),
  };
}
