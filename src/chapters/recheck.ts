/** The recheck chapter: one part of a garment that is on the needles, held against its plan. */
import { type Gauge, rateAsPrinted, rateFrom, rowsFor } from '../fit/gauge.ts';
import { level, piece } from '../fit/outline.ts';
import { type Outcome, phrase, type ShapedAt } from '../fit/plan.ts';
import { recheck, tooNarrow } from '../fit/recheck.ts';
import { recheckPart } from '../fit/recheck-steps.ts';
import type { Direction, PieceName, Worked } from '../fit/words.ts';
import type { Sheet } from '../flow/calculations.ts';
import { edgeOf } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, takeRows, takeStitches } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

interface Part {
  readonly name: PieceName;
  readonly worked: Worked;
  readonly direction: Direction;
  readonly at: ShapedAt;
  readonly perRow: number;
}

const FLAT = { worked: 'flat', at: 'both edges', perRow: 2 } as const;
const SLEEVE_ROUND = { worked: 'round', at: 'both sides of the underarm line', perRow: 2 } as const;
const BODY_ROUND = { worked: 'round', at: 'both sides of both side lines', perRow: 4 } as const;

/** By the choices of the question 'recheck_piece'. */
export const PARTS: Readonly<Record<string, Part>> = {
  sleeve_up_flat: { name: 'sleeve', direction: 'up', ...FLAT },
  sleeve_up_round: { name: 'sleeve', direction: 'up', ...SLEEVE_ROUND },
  sleeve_down_flat: { name: 'sleeve', direction: 'down', ...FLAT },
  sleeve_down_round: { name: 'sleeve', direction: 'down', ...SLEEVE_ROUND },
  body_up_flat: { name: 'back', direction: 'up', ...FLAT },
  body_up_round: { name: 'body', direction: 'up', ...BODY_ROUND },
  body_down_flat: { name: 'back', direction: 'down', ...FLAT },
  body_down_round: { name: 'body', direction: 'down', ...BODY_ROUND },
};

export function recheckResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const part = PARTS[takeChoice(book, 'recheck_piece') ?? ''];
  const planned = plannedOf(book);
  const now = nowOf(book);
  if (part === undefined || planned === undefined || now === undefined) return missing(book);
  const { name, worked, direction, at, perRow } = part;
  const gauge = { ...planned.gauge, worked };
  const rows = rowsFor(planned.length, gauge.rows.perCm, worked === 'flat' ? 'even' : 'whole');
  const ask = {
    piece: piece(name, worked, direction, [
      level('beginning', 0, planned.from),
      level('end', rows, planned.to),
    ]),
    planned: gauge,
    real: { ...now.gauge, worked },
    now: { row: now.row, stitches: now.stitches },
    shaped: {
      perRow,
      carriers: worked === 'flat' ? ('odd rows' as const) : ('every row' as const),
      edge: edgeOf(book, { worked }),
    },
  };
  const narrow = tooNarrow(ask);
  if (narrow !== undefined)
    return {
      kind: 'cannot',
      unit: book.sheet.unit,
      because: [phrase('cannot: too narrow to check', { stitches: narrow.result })],
      instead: [phrase('instead: count once more')],
      workings: [narrow],
    };
  const outcome = recheck(ask);
  return planOf(book, [phrase(`summary: ${outcome.kind}`)], [recheckPart(outcome, ask, at)]);
}

type Rates = Omit<Gauge, 'worked'>;

function plannedOf(book: Ledger) {
  const [from, to] = [takeStitches(book, 'recheck_from'), takeStitches(book, 'recheck_to')];
  const length = takeLength(book, 'recheck_length');
  const line = take(book, 'recheck_gauge', 'gauge');
  if (from === undefined || to === undefined || length === undefined || line === undefined) return undefined;
  const gauge: Rates = { stitches: rateAsPrinted(line.stitches), rows: rateAsPrinted(line.rows) };
  return { from, to, length, gauge };
}

function nowOf(book: Ledger) {
  const [row, stitches] = [takeRows(book, 'recheck_rows'), takeStitches(book, 'recheck_stitches')];
  const across = take(book, 'recheck_counted', 'stitch gauge')?.stitches;
  const up = take(book, 'recheck_counted_rows', 'row gauge')?.rows;
  if (row === undefined || stitches === undefined || across === undefined || up === undefined)
    return undefined;
  const gauge: Rates = { stitches: rateFrom([across]), rows: rateFrom([up]) };
  return { row, stitches, gauge };
}
