/** The pieces of one garment in the order of knitting; each change stands on the counts of those before it. */
import type { Part, Step } from '../fit/plan.ts';
import { phrase } from '../fit/plan.ts';
import type { SleeveShaping } from '../fit/sleeve.ts';
import { sleevePart } from '../fit/sleeve-steps.ts';
import { sleeveShaped } from './alterations.ts';
import { capFor } from './cap-of.ts';
import type { Ledger } from './ledger.ts';
import { partOf } from './make-plan.ts';
import { bodyMade, constructionOf } from './upper-figures.ts';
import { bodyOfGarment } from './whole-body.ts';
import { upperOfGarment } from './whole-upper.ts';
import { yokeOfGarment } from './whole-yoke.ts';

export function garmentParts(book: Ledger, wishes: ReadonlySet<string>): Part[] {
  const body = bodyOfGarment(book, wishes);
  const sleeve = wishes.has('sleeve') ? sleeveShaped(book) : undefined;
  const shaped = sleeve !== undefined && !('kind' in sleeve) ? sleeve.shaped : undefined;
  const construction = constructionOf(book);
  const joined = construction === 'raglan' || construction === 'round yoke';
  const upper = joined
    ? yokeOfGarment(book, wishes, construction, shaped)
    : upperOfGarment(book, wishes, shaped?.counts.upperArm);
  const capTold = upper.some(({ steps }) => steps.some(({ piece }) => piece === 'sleeve'));
  const yokeTold = joined && wishes.has('top');
  const sleeves =
    sleeve === undefined || 'kind' in sleeve
      ? partOf(sleeve, 'sleeve', phrase('where: the sleeve piece'))
      : [
          sleevePart(
            sleeve.shaped,
            sleeve.widths,
            capTold || yokeTold ? 'told by itself' : topOf(book, sleeve.shaped),
          ),
        ];
  const made = bodyMade(book);
  if (made?.direction === 'down') return [...upper, ...body, ...sleeves];
  if (joined) return [...body, ...sleeves, ...upper];
  return [pieceByPiece(body, upper, sleeves, made?.worked === 'flat')];
}

function topOf(book: Ledger, { topDifference, counts }: SleeveShaping) {
  return topDifference === null ? undefined : capFor(book, counts.upperArm);
}

/** Body, back, front and sleeve, each from its lower edge to its top; in the round the lower front is the body's. */
function pieceByPiece(
  body: readonly Part[],
  upper: readonly Part[],
  sleeves: readonly Part[],
  flat: boolean,
): Part {
  const stepsOf = (parts: readonly Part[]) => parts.flatMap((part) => part.steps);
  const [lower, above, arms] = [stepsOf(body), stepsOf(upper), stepsOf(sleeves)];
  const at = (steps: readonly Step[], piece: Step['piece']) => steps.filter((step) => step.piece === piece);
  const ofFront = flat ? at(lower, 'front') : [];
  const all = [...body, ...upper, ...sleeves];
  return {
    steps: [
      ...lower.filter((step) => !ofFront.includes(step)),
      ...at(above, 'back'),
      ...ofFront,
      ...at(above, 'front'),
      ...arms,
      ...at(above, 'sleeve'),
    ],
    finished: all.flatMap((part) => part.finished),
    pieces: all.flatMap((part) => part.pieces),
  };
}
