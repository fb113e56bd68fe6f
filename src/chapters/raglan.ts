/** The raglan chapter: lines of back, front and sleeves over the depth that is wanted, and the neck that remains. */
import { type Outcome, phrase } from '../fit/plan.ts';
import { type RaglanAsk, raglan } from '../fit/raglan.ts';
import { raglanPart } from '../fit/raglan-steps.ts';
import { cm, rows, type Stitches, stitches } from '../fit/units.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { madeOf } from './figures.ts';
import { type Ledger, ledger, takeChoice, takeLength, takeStitches, waitFor } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function raglanResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const depth = takeLength(book, 'yoke_depth');
  const gaps = depth === undefined ? {} : { depth: quantity('yoke depth', depth, 'cm') };
  return outcomeOf(book, raglanAltered(book), [phrase('summary: raglan', gaps)]);
}

/**
 * The front has as many stitches at the underarm as the back. Where no neck is asked for, the counts stand
 * as they are. `moreAtUpperArm`: by how much a sleeve differs from the pattern's.
 */
export function raglanAltered(book: Ledger, moreAtUpperArm = 0): Altered {
  const made = madeOf(takeChoice(book, 'body_made'));
  const depth = takeLength(book, 'yoke_depth');
  const [body, printed] = [takeStitches(book, 'p_back_yoke'), takeStitches(book, 'p_sleeve_yoke')];
  const sleeve = printed === undefined ? undefined : stitches(printed + moreAtUpperArm);
  const necks = neckCounts(book);
  const wanted = takeLength(book, 'neck_around');
  const gauge = made && ownGauge(book, made.worked);
  if (made === undefined || gauge === undefined || depth === undefined) return undefined;
  if (body === undefined || sleeve === undefined || necks === undefined) return undefined;
  const around = (necks.back + necks.front + 2 * necks.sleeve) / gauge.stitches.perCm;
  const ask: RaglanAsk = {
    direction: made.direction,
    gauge,
    depth,
    parts: {
      back: { underarm: body, neck: necks.back },
      front: { underarm: body, neck: necks.front },
      sleeve: { underarm: sleeve, neck: necks.sleeve },
    },
    carriers: made.worked === 'flat' ? 'odd rows' : 'every row',
    plain: rows(0),
    neckWanted: wanted ?? cm(around),
  };
  return raglanPart(raglan(ask), ask, wanted !== undefined);
}

function neckCounts(book: Ledger): Record<'back' | 'front' | 'sleeve', Stitches> | undefined {
  const back = takeStitches(book, 'p_back_neck');
  if (back === undefined) waitFor(book, 'p_back_neck', 'The raglan lines wait for it.');
  const front = takeStitches(book, 'p_front_neck');
  const sleeve = takeStitches(book, 'p_sleeve_neck');
  if (back === undefined || front === undefined || sleeve === undefined) return undefined;
  return { back, front, sleeve };
}
