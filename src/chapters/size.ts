/** The size chapter: every size beside the targets at the knitter's own gauge, and the one to follow. */
import { needleStep } from '../fit/needle-steps.ts';
import { needleWay } from '../fit/needle-way.ts';
import {
  type ComparedSize,
  type Instruction,
  type Outcome,
  type Part,
  type Phrase,
  phrase,
  type Step,
} from '../fit/plan.ts';
import { type Beyond, chooseSize, type RankedSize } from '../fit/size.ts';
import { say, step } from '../fit/steps.ts';
import { type FrontExtra, targetsFor, targetsFromGarment, type Wanted } from '../fit/targets.ts';
import type { Cm } from '../fit/units.ts';
import { quantity, type WorkingLine, workOut } from '../fit/working.ts';
import { valueGiven } from '../flow/answer.ts';
import type { Sheet } from '../flow/calculations.ts';
import { bodyKnown, fitOf } from './body-known.ts';
import { type Ledger, ledger, take, takeLength } from './ledger.ts';
import { missing, planOf } from './make-plan.ts';
import { ownGauges, patternOf } from './pattern-of.ts';
import { SUGGESTIONS } from './suggestions.ts';

export function sizeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return withNeedle(book, sizePart(book));
}

/** The same by a sweater that fits: its measurements are the targets. */
export function garmentResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  const around = takeLength(book, 'garment_bust');
  const measured = {
    bust: around,
    'upper arm': asked(book, 'garment_upper_arm'),
    'body length': asked(book, 'garment_length'),
  };
  const known = Object.fromEntries(Object.entries(measured).filter(([, length]) => length !== undefined));
  return withNeedle(
    book,
    around === undefined ? undefined : sizePart(book, { targets: targetsFromGarment(known) }),
  );
}

/** The size to follow, and how another needle would make it as wide as is wanted. */
function withNeedle(book: Ledger, made: SizeTold | undefined): Outcome {
  if (made === undefined) return missing(book);
  const needle = byTheNeedle(book, made.followed);
  return planOf(book, made.summary, [{ ...made.part, steps: [...made.part.steps, ...needle] }]);
}

/** Undefined where it was not asked, or is not known: then it is not compared. */
function asked(book: Ledger, question: string): Cm | undefined {
  return valueGiven(book.sheet.answers, question, 'length')?.cm;
}

/** The size as it is, made as wide as is wanted by another needle; nothing where it is that wide, or as good as. */
function byTheNeedle(book: Ledger, { label, reasons }: RankedSize): Step[] {
  const pattern = patternOf(book);
  const size = pattern?.sizes.find((s) => s.label === label);
  const bust = reasons.find(({ region }) => region === 'bust');
  if (pattern === undefined || size?.finished.bust === undefined || bust === undefined) return [];
  if (Math.abs(bust.knitted.value - bust.target.aim) < LEAST_EXTRA) return [];
  return [needleStep(needleWay(pattern, size, 'bust', bust.target.aim), label)];
}

/** How many sizes are laid out in full; all are ranked. */
const SHOWN = 3;

/** Less than this more or less in width is lost in any knitted fabric; nothing is said of it. */
const LEAST_EXTRA = 1;

export interface SizeTold {
  readonly part: Part;
  readonly summary: Phrase[];
  readonly followed: RankedSize;
}

/** By the body, where no other targets are given. */
export function sizePart(
  book: Ledger,
  wanted: Pick<Wanted, 'targets' | 'front'> = targetsFor(bodyKnown(book.sheet), { fit: fitOf(book.sheet) }),
): SizeTold | undefined {
  const pattern = patternOf(book);
  const own = pattern && ownGauges(book, pattern);
  if (pattern === undefined || own === undefined) return undefined;
  const choice = chooseSize(pattern, wanted.targets, own);
  if (choice.kind !== 'ranked') return undefined;
  const label = take(book, 'size', 'size')?.label;
  const followed = choice.ranking.find((s) => s.label === label) ?? choice.best;
  const shown = [followed, ...choice.ranking.filter((s) => s !== followed)].slice(0, SHOWN);
  const instead: Instruction[] = [
    say(phrase('do: follow the size', { size: followed.label })),
    { do: 'compare sizes', sizes: shown.map((s) => compared(s, priceShown(s).result.value)) },
  ];
  const notes = [
    ...(followed === choice.best
      ? []
      : [phrase('note: another size ranks first', { size: choice.best.label })]),
    ...(choice.beyond === undefined ? [] : [beyondNote(choice.beyond)]),
    ...(wanted.front === undefined || wanted.front.extra < LEAST_EXTRA ? [] : [frontNote(wanted.front)]),
    phrase('note: price of a size'),
  ];
  const workings = shown.flatMap((s) => [
    ...s.reasons.flatMap((r) => [...r.target.workings, ...r.workings]),
    ...s.workings,
    inTenths(s),
    priceShown(s),
  ]);
  return {
    followed,
    summary: [sizeSummary(followed)],
    part: {
      steps: [
        step('all', phrase('where: the size'), {
          instead,
          notes,
          workings: [...workings, ...frontLines(wanted.front), ...beyondLines(choice.beyond)],
        }),
      ],
      finished: [],
      pieces: [],
    },
  };
}

/** Prices are shown to a tenth. */
function inTenths({ label, price }: RankedSize): WorkingLine {
  const given = { a: quantity(`price of size ${label}`, price, 'ratio') };
  return workOut(`price of size ${label} in tenths`, '10 * a', given, {
    unit: 'ratio',
    rounding: { to: 'whole' },
  });
}

function priceShown(size: RankedSize): WorkingLine {
  return workOut(
    `price of size ${size.label} as shown`,
    'a / 10',
    { a: inTenths(size).result },
    { unit: 'ratio' },
  );
}

function compared({ label, reasons }: RankedSize, price: number): ComparedSize {
  return {
    label,
    price,
    regions: reasons.map(({ region, knitted, target, difference, effort }) => ({
      region,
      knitted: knitted.value,
      wanted: target.aim,
      difference,
      effort,
    })),
  };
}

function sizeSummary(size: RankedSize): Phrase {
  const bust = size.reasons.find((r) => r.region === 'bust');
  if (bust === undefined) return phrase('summary: size', { size: size.label });
  return phrase('summary: size and bust', {
    size: size.label,
    bust: bust.knitted.working.result,
    wanted: quantity('bust wanted', bust.target.aim, 'cm'),
  });
}

function beyondNote({ end, label, by, stitches, gauge }: Beyond): Phrase {
  return phrase(end === 'largest' ? 'note: beyond the largest' : 'note: below the smallest', {
    size: label,
    by: quantity('difference', Math.abs(by), 'cm'),
    stitches: stitches.result,
    gauge: gauge.result,
  });
}

function beyondLines(beyond: Beyond | undefined): WorkingLine[] {
  return beyond === undefined ? [] : [beyond.stitches, beyond.gauge];
}

function frontNote({ extra, sizeBust }: FrontExtra): Phrase {
  return phrase('note: more for the front', {
    extra: quantity('more for the front', extra, 'cm'),
    bust: quantity('bust', sizeBust, 'cm'),
  });
}

function frontLines(front: FrontExtra | undefined): readonly WorkingLine[] {
  return front?.workings ?? [];
}
