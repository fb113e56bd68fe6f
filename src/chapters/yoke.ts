/** The yoke chapter: the shaping rounds of a round yoke over the depth that is wanted. */
import { type Outcome, phrase } from '../fit/plan.ts';
import { stitches } from '../fit/units.ts';
import { quantity } from '../fit/working.ts';
import { type YokeAsk, yoke } from '../fit/yoke.ts';
import { yokePart } from '../fit/yoke-steps.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { madeOf } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, takeStitches } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { schemeOf } from './yoke-scheme-of.ts';

export function yokeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const depth = takeLength(book, 'yoke_depth');
  const gaps = depth === undefined ? {} : { depth: quantity('yoke depth', depth, 'cm') };
  return outcomeOf(book, yokeAltered(book), [phrase('summary: yoke', gaps)]);
}

/** `moreAtUpperArm`: by how much each sleeve differs from the pattern's. */
export function yokeAltered(book: Ledger, moreAtUpperArm = 0): Altered {
  const made = madeOf(takeChoice(book, 'body_made'));
  const depth = takeLength(book, 'yoke_depth');
  const [printed, neck] = [takeStitches(book, 'p_yoke_underarm'), takeStitches(book, 'p_yoke_neck')];
  const underarm = printed === undefined ? undefined : stitches(printed + 2 * moreAtUpperArm);
  const repeat = take(book, 'yoke_repeat', 'multiple')?.multiple ?? 1;
  const gauge = ownGauge(book, 'round');
  if (made === undefined || gauge === undefined || depth === undefined) return undefined;
  if (printed === undefined || underarm === undefined || neck === undefined) return undefined;
  const { direction } = made;
  const [before, end] = direction === 'up' ? [printed, neck] : [neck, printed];
  const chosen = schemeOf(book, { direction, before, end });
  if (chosen === undefined || 'kind' in chosen) return chosen;
  const { scheme, named } = chosen;
  const ask: YokeAsk = {
    direction,
    gauge,
    depth,
    underarm,
    neck,
    scheme,
    ...(repeat === 1 ? {} : { multiples: Array<number>(scheme.length + 1).fill(repeat) }),
  };
  return yokePart(yoke(ask), ask, named);
}
