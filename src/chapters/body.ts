/** The body and ease chapters: the measurements on one page, and what each fit would measure. */
import { easeTable } from '../fit/ease.ts';
import { type NotedMeasurement, type Outcome, type Part, phrase } from '../fit/plan.ts';
import { step } from '../fit/steps.ts';
import { quantity, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import { type Ledger, ledger, takeLength } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { ownGauges, patternOf } from './pattern-of.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function bodyResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const part = bodyNoted(book);
  return part === undefined ? missing(book) : planOf(book, [phrase('summary: measurements')], [part]);
}

function bodyNoted(book: Ledger): Part | undefined {
  const measurements = [...book.sheet.questions].flatMap(([id, { measurement }]): NotedMeasurement[] => {
    const value = measurement === undefined ? undefined : takeLength(book, id);
    if (measurement === undefined || value === undefined) return [];
    return [{ name: measurement, value, assumed: book.sheet.answers[id]?.given !== 'value' }];
  });
  if (measurements.length === 0) return undefined;
  const lines = measurements.map(({ name, value }) =>
    workOut(name, 'a', { a: quantity(name, value, 'cm') }, { unit: 'cm' }),
  );
  return {
    steps: [
      step('all', phrase('where: the body'), {
        instead: [{ do: 'note measurements', measurements }],
        notes: [phrase('note: measure again')],
        workings: lines,
      }),
    ],
    finished: [],
    pieces: [],
  };
}

export function easeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const bust = takeLength(book, 'bust');
  const pattern = patternOf(book);
  const own = pattern && ownGauges(book, pattern);
  if (bust === undefined || pattern === undefined || own === undefined) return missing(book);
  const rows = easeTable(bust, pattern, own);
  const fits = rows.map(({ fit, low, high, nearest }) => ({
    fit,
    low,
    high,
    nearest: nearest === undefined ? null : { label: nearest.label, bust: nearest.bust },
  }));
  const workings = rows.flatMap((r) => r.workings);
  return planOf(
    book,
    [phrase('summary: ease', { bust: quantity('bust', bust, 'cm') })],
    [
      {
        steps: [
          step('all', phrase('where: the ease'), {
            instead: [{ do: 'compare fits', fits }],
            notes: [phrase('note: ease has a source')],
            workings: [
              workOut('bust', 'a', { a: quantity('bust', bust, 'cm') }, { unit: 'cm' }),
              ...workings,
            ],
          }),
        ],
        finished: [],
        pieces: [],
      },
    ],
  );
}
