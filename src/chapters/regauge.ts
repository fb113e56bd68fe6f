/** The chapter for another gauge: one size's counts and rows worked out anew. */
import { type Gauge, rateFrom } from '../fit/gauge.ts';
import type { Counted, Pattern } from '../fit/pattern.ts';
import type { Outcome } from '../fit/plan.ts';
import { phrase } from '../fit/plan.ts';
import { regauge } from '../fit/regauge.ts';
import { regaugePart } from '../fit/regauge-steps.ts';
import { cm, type Stitches } from '../fit/units.ts';
import { quantity } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import { edgeOf, madeOf, samplePattern } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeRows, takeStitches } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function regaugeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const followed = samplePattern(book) === undefined ? ownPattern(book) : sampleFollowed(book);
  const line = take(book, 'regauge_gauge', 'gauge');
  if (followed === undefined || line === undefined) return missing(book);
  const { pattern, label } = followed;
  const own: Gauge = {
    stitches: rateFrom([line.stitches]),
    rows: rateFrom([line.rows]),
    worked: pattern.body,
  };
  const summary = phrase('summary: regauged', {
    stitches: quantity('own gauge', own.stitches.perCm, 'stitches/cm'),
  });
  return planOf(book, [summary], [regaugePart(regauge(pattern, label, own), pattern, own)]);
}

interface Followed {
  readonly pattern: Pattern;
  readonly label: string;
}

function sampleFollowed(book: Ledger): Followed | undefined {
  const pattern = samplePattern(book);
  const label = take(book, 'regauge_size', 'size')?.label;
  return pattern === undefined || label === undefined ? undefined : { pattern, label };
}

/** One size alone, from the counts that were read out. */
function ownPattern(book: Ledger): Followed | undefined {
  const [body, sleeve] = [madeOf(takeChoice(book, 'body_made')), madeOf(takeChoice(book, 'sleeve_made'))];
  const gauge = take(book, 'pattern_gauge', 'gauge');
  const repeat = take(book, 'regauge_repeat', 'multiple');
  const counts = countsOf(book);
  const armhole = takeRows(book, 'regauge_armhole');
  if (body === undefined || sleeve === undefined || gauge === undefined || repeat === undefined)
    return undefined;
  if (Object.keys(counts).length === 0) return undefined;
  const label = 'yours';
  return {
    label,
    pattern: {
      name: 'your pattern',
      construction: 'set-in',
      direction: body.direction,
      body: body.worked,
      sleeves: sleeve.worked,
      gauge: { stitches: gauge.stitches, rows: gauge.rows },
      edge: { body: edgeOf(book, body), sleeves: edgeOf(book, sleeve) },
      repeat: { multiple: repeat.multiple, plus: repeat.plus },
      edging: { hem: cm(0), cuff: cm(0) },
      sizes: [{ label, finished: {}, counts, ...(armhole === undefined ? {} : { rows: { armhole } }) }],
    },
  };
}

const ASKED: readonly (readonly [question: string, place: Counted])[] = [
  ['p_bust', 'bust'],
  ['p_hem_stitches', 'body cast-on'],
  ['regauge_cross_back', 'cross back'],
  ['regauge_neck', 'back neck'],
  ['p_wrist', 'wrist'],
  ['p_upper_arm', 'upper arm'],
];

function countsOf(book: Ledger): Partial<Record<Counted, Stitches>> {
  return Object.fromEntries(
    ASKED.flatMap(([question, place]) => {
      const count = takeStitches(book, question);
      return count === undefined ? [] : [[place, count]];
    }),
  );
}
