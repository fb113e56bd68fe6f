/** The swatch chapter: the gauge, how sure it is, and how it stands beside the pattern's. */
import { type Gauge, rangeOf } from '../fit/gauge.ts';
import { type Outcome, type Part, type Phrase, phrase } from '../fit/plan.ts';
import { say, step } from '../fit/steps.ts';
import { cm, inches } from '../fit/units.ts';
import type { Worked } from '../fit/words.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from '../fit/working.ts';
import type { Sheet } from '../flow/calculations.ts';
import { type Ledger, ledger, takeChoice } from './ledger.ts';
import { gaugeSummary, missing, planOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { patternGauge } from './pattern-of.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function swatchResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const gauge = ownGauge(book, swatchMade(book));
  if (gauge === undefined) return missing(book);
  return planOf(book, [gaugeSummary(gauge)], [swatchPart(book, gauge)]);
}

function swatchMade(book: Ledger): Worked {
  return takeChoice(book, 'swatch_made') === 'flat' ? 'flat' : 'round';
}

/** One step: the gauge with its workings, the comparison, and what to do about it. */
export function swatchPart(book: Ledger, gauge: Gauge): Part {
  const washed = takeChoice(book, 'swatch_washed');
  const [across, up] = [rateLine('stitches', gauge.stitches), rateLine('rows', gauge.rows)] as const;
  const hundred = widthOfHundred(gauge);
  const beside = compare(book, gauge);
  return {
    steps: [
      step('all', phrase('where: the fabric'), {
        worked: gauge.worked,
        pattern: beside?.pattern ?? null,
        instead: [
          say(phrase('do: your gauge', { stitches: across.result, rows: up.result })),
          ...(beside?.advice.map(say) ?? []),
        ],
        check: null,
        notes: [
          phrase('note: how sure', {
            hundred: hundred.count,
            low: hundred.low,
            high: hundred.high,
          }),
          ...(washed === 'unwashed' ? [phrase('note: wash the swatch')] : []),
          ...(swatchDiffers(book, gauge) ? [phrase('note: swatch knitted otherwise')] : []),
        ],
        workings: [across, up, ...hundred.workings, ...(beside?.workings ?? [])],
      }),
    ],
    finished: [],
    pieces: [],
  };
}

/** Letters for up to three places counted. */
const COUNTS = ['a', 'c', 'e'] as const;
const SPANS = ['b', 'd', 'f'] as const;

function rateLine(what: 'stitches' | 'rows', rate: Gauge['stitches']): WorkingLine {
  const given: Record<string, Quantity> = {};
  rate.counts.forEach((c, i) => {
    given[COUNTS[i] ?? 'a'] = quantity(`${what} counted`, c.count, what);
    given[SPANS[i] ?? 'b'] = quantity('span', c.span, 'cm');
  });
  const sum = (letters: readonly string[]) => letters.slice(0, rate.counts.length).join(' + ');
  const one = rate.counts.length === 1;
  const formula = one ? 'a / b' : `(${sum(COUNTS)}) / (${sum(SPANS)})`;
  return workOut(`${what} of your gauge`, formula, given, { unit: `${what}/cm` });
}

/** What 100 stitches will measure, with two standard errors to either side. */
function widthOfHundred(gauge: Gauge) {
  const count = quantity('stitches', 100, 'stitches');
  const { expected, high } = rangeOf(100, gauge.stitches);
  const rate = quantity('stitches of your gauge', gauge.stitches.perCm, 'stitches/cm');
  const width = workOut('width of 100 stitches', 'a / b', { a: count, b: rate }, { unit: 'cm' });
  const error = quantity('two standard errors', high - expected, 'cm');
  const low = workOut('least likely width', 'a - b', { a: width.result, b: error }, { unit: 'cm' });
  const most = workOut('greatest likely width', 'a + b', { a: width.result, b: error }, { unit: 'cm' });
  return { count, low: low.result, high: most.result, workings: [width, low, most] };
}

function compare(
  book: Ledger,
  gauge: Gauge,
): { pattern: Phrase; advice: Phrase[]; workings: WorkingLine[] } | undefined {
  const answered =
    book.sheet.answers.pattern_gauge?.given === 'value' || book.sheet.answers.pattern?.given === 'value';
  const theirs = answered ? patternGauge(book) : undefined;
  if (theirs === undefined) return undefined;
  const [mine, pattern] = [
    quantity('your stitches', gauge.stitches.perCm, 'stitches/cm'),
    quantity("the pattern's stitches", theirs.stitches.perCm, 'stitches/cm'),
  ];
  const wide = quantity('a width in the pattern', book.sheet.unit === 'in' ? inches(40) : cm(100), 'cm');
  const becomes = workOut(
    'that width at your gauge',
    'a * b / c',
    { a: wide, b: pattern, c: mine },
    { unit: 'cm' },
  );
  const tall = workOut(
    'a row-counted length of as much at your gauge',
    'a * b / c',
    {
      a: wide,
      b: quantity("the pattern's rows", theirs.rows.perCm, 'rows/cm'),
      c: quantity('your rows', gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'cm' },
  );
  const off = Math.abs(gauge.stitches.perCm - theirs.stitches.perCm);
  const agrees = off <= 2 * gauge.stitches.se;
  const tighter = gauge.stitches.perCm > theirs.stitches.perCm;
  return {
    pattern: phrase('pattern: gauge', {
      stitches: pattern,
      rows: quantity("the pattern's rows", theirs.rows.perCm, 'rows/cm'),
    }),
    advice: [
      phrase(agrees ? 'do: gauge agrees' : tighter ? 'do: larger needle' : 'do: smaller needle'),
      phrase('do: what a width becomes', { wide, becomes: becomes.result, tall: tall.result }),
    ],
    workings: [becomes, tall],
  };
}

function swatchDiffers(book: Ledger, gauge: Gauge): boolean {
  const made = takeChoice(book, 'swatch_made');
  return made !== undefined && made !== gauge.worked;
}
