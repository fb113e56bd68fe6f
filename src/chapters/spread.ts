/** Increases or decreases spread across one row: counts before and after, and the way they are made. */
import type { PhraseName } from '../fit/phrases.ts';
import { type Outcome, type Phrase, phrase } from '../fit/plan.ts';
import { type Change, MADE_OF } from '../fit/row.ts';
import { spread } from '../fit/spread.ts';
import { spreadPart } from '../fit/spread-steps.ts';
import { type Stitches, stitches } from '../fit/units.ts';
import type { Impossible } from '../fit/ways.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { type Ledger, ledger, takeChoice, takeStitches } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { spreadCounts } from './spread-counts.ts';
import { SUGGESTIONS } from './suggestions.ts';

/** What may be chosen; the other ways to change a count are offered where these do not fit the row. */
const WAYS = ['m1', 'kfb', 'k2tog'] as const satisfies readonly Change[];

export function spreadResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const [before, after] = spreadCounts(book);
  const counts =
    before === undefined || after === undefined
      ? {}
      : { before: quantity('before', before, 'stitches'), after: quantity('after', after, 'stitches') };
  return outcomeOf(book, spreadAsked(book, before, after), [phrase('summary: spread', counts)]);
}

function spreadAsked(book: Ledger, before: Stitches | undefined, after: Stitches | undefined): Altered {
  if (before === undefined || after === undefined) return undefined;
  const worked = takeChoice(book, 'spread_worked') === 'flat' ? 'flat' : 'round';
  const edge = worked === 'flat' ? (takeStitches(book, 'spread_border') ?? stitches(0)) : stitches(0);
  const by = WAYS.find((way) => way === takeChoice(book, 'spread_by'));
  const wrong = hindrance(before, after, edge, by);
  if (wrong !== undefined) return wrong;
  const ask = {
    stitches: before,
    change: after - before,
    worked,
    edge,
    ...(by === undefined ? {} : { by }),
  } as const;
  return spreadPart(spread(ask), worked);
}

/** What the engine is not to be asked. */
function hindrance(
  from: Stitches,
  to: Stitches,
  edge: Stitches,
  by: Change | undefined,
): Impossible | undefined {
  const counts = {
    before: quantity('stitches before', from, 'stitches'),
    after: quantity('stitches after', to, 'stitches'),
  };
  const difference = workOut(
    'difference',
    'b - a',
    { a: counts.before, b: counts.after },
    { unit: 'stitches' },
  );
  if (from === to)
    return refusal(
      phrase('cannot: nothing to change', { count: counts.before }),
      'instead: change the count',
      difference,
    );
  const border = quantity('border', edge, 'stitches');
  if (2 * edge >= from) {
    const why = phrase('cannot: border fills the row', { edge: border, count: counts.before });
    const left = workOut(
      'stitches between the borders',
      'a - 2 * b',
      { a: counts.before, b: border },
      { unit: 'stitches' },
    );
    return refusal(why, 'instead: change the border', left);
  }
  if (by === undefined) return undefined;
  const gains = MADE_OF[by].leaves > MADE_OF[by].takes;
  if (gains === to > from) return undefined;
  const why = gains ? 'cannot: increase would be a decrease' : 'cannot: decrease would be an increase';
  return refusal(phrase(why, counts), 'instead: change the count', difference);
}

function refusal(because: Phrase, instead: PhraseName, working: WorkingLine): Impossible {
  return { kind: 'cannot', because: [because], instead: [phrase(instead)], workings: [working] };
}
