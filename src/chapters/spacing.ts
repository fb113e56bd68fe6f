/** Shaping spaced over rows, from bare counts. */
import type { Outcome, ShapedAt } from '../fit/plan.ts';
import { PLACES, phrase } from '../fit/plan.ts';
import { type Carriers, space } from '../fit/spacing.ts';
import { spacingPart } from '../fit/spacing-steps.ts';
import type { Worked } from '../fit/words.ts';
import type { Sheet } from '../flow/calculations.ts';
import { ledger, takeChoice, takeRows, takeStitches } from './ledger.ts';
import { missing, outcomeOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

interface Way {
  readonly worked: Worked;
  readonly at: ShapedAt;
  readonly carriers: Carriers;
}

/** By the choices of the question 'spacing_worked'. */
const WAYS: Readonly<Record<string, Way>> = {
  flat: { worked: 'flat', at: 'both edges', carriers: 'odd rows' },
  any_row: { worked: 'flat', at: 'both edges', carriers: 'every row' },
  edge: { worked: 'flat', at: 'one edge', carriers: 'odd rows' },
  round: { worked: 'round', at: 'both sides of the underarm line', carriers: 'every row' },
  body: { worked: 'round', at: 'both sides of both side lines', carriers: 'every row' },
};

export function spacingResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const [from, to] = [takeStitches(book, 'spacing_from'), takeStitches(book, 'spacing_to')];
  const [rows, plain] = [takeRows(book, 'spacing_rows'), takeRows(book, 'spacing_plain')];
  const way = WAYS[takeChoice(book, 'spacing_worked') ?? ''];
  if (from === undefined || to === undefined || rows === undefined || plain === undefined)
    return missing(book);
  if (way === undefined) return missing(book);
  const { carriers, at } = way;
  const spacing = space({
    rows,
    from,
    to,
    perRow: PLACES[at],
    carriers,
    lead: plain,
    trail: plain,
    order: 'grouped',
  });
  return outcomeOf(book, spacingPart(spacing, way), [phrase('summary: spacing')]);
}
