/** What the armholes do in the rows of a front neck: changed ones, or the pattern's own. */
import { armholeOfFigures, type FiguresWrong, type PrintedArmhole } from '../fit/armhole-printed.ts';
import type { Gauge } from '../fit/gauge.ts';
import type { Neck } from '../fit/neck.ts';
import { type ArmholeLines, neckInArmhole } from '../fit/neck-in-armhole.ts';
import { type BesideNeck, STRAIGHT_BESIDE } from '../fit/neck-steps.ts';
import { phrase } from '../fit/plan.ts';
import { heightLine } from '../fit/steps.ts';
import { type Rows, rows } from '../fit/units.ts';
import { type Impossible, statedAs } from '../fit/ways.ts';
import { quantity } from '../fit/working.ts';
import { valueGiven } from '../flow/answer.ts';
import { sampleSize } from './figures.ts';
import { type Ledger, takeChoice } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { backOf, boundOffOf, constructionOf, countOf, lengthOf } from './upper-figures.ts';

/** Nobody knows whether the armhole is still shaped there. */
export const UNKNOWN_BESIDE: BesideNeck = {
  ...STRAIGHT_BESIDE,
  notes: [phrase('note: armhole may go on beside the neck')],
};

/** Beside armholes that are told too; `slope`: rows of the shoulders above the neck. */
export function besideTold(
  armhole: ArmholeLines,
  neck: Neck,
  slope: Rows,
  gauge: Gauge,
): BesideNeck | Impossible {
  const met = neckInArmhole(armhole, neck);
  if (met === undefined) return STRAIGHT_BESIDE;
  if (met.kind === 'neck in the armhole') return { ...STRAIGHT_BESIDE, within: met };
  const deepest = heightLine('deepest front neck', Math.max(0, met.most) + slope, gauge);
  return {
    kind: 'cannot',
    because: [phrase('cannot: neck in the underarm')],
    instead: [phrase('instead: a shallower neck', { depth: deepest.result })],
    workings: [deepest],
  };
}

/** Beside the armholes that the pattern has. */
export function besidePattern(book: Ledger, neck: Neck, slope: Rows): BesideNeck | Impossible {
  const gauge = ownGauge(book, 'flat');
  const found = patternArmhole(book, gauge);
  if (found === 'straight') return STRAIGHT_BESIDE;
  if (found === 'not known' || gauge === undefined) return UNKNOWN_BESIDE;
  if (found.kind !== 'armhole as printed') return contradicted(found);
  const beside = besideTold(found, neck, slope, gauge);
  if ('kind' in beside || beside.within === null) return beside;
  const gaps = {
    begins: quantity('rows of the armhole before the neck', beside.within.begins, 'rows'),
    across: quantity('stitches across there', beside.within.across, 'stitches'),
    last: quantity('last shaping row of the armhole', found.events.at(-1)?.row ?? 0, 'times'),
  };
  return {
    ...beside,
    notes: [phrase('note: armhole of the pattern beside the neck', gaps)],
    workings: [...found.workings, ...statedAs(gaps)],
  };
}

/** Rows from one decrease to the next, by the choices of the question. */
const PACES: Readonly<Record<string, Rows>> = { every_1: rows(1), every_2: rows(2), every_4: rows(4) };

/** The sample decreases on right-side rows. */
function patternArmhole(
  book: Ledger,
  gauge: Gauge | undefined,
): PrintedArmhole | FiguresWrong | 'straight' | 'not known' {
  const sample = sampleSize(book) !== undefined;
  if (constructionOf(book) === 'drop shoulder') return 'straight';
  const beside = takeChoice(book, 'neck_beside');
  if (!sample && valueGiven(book.sheet.answers, 'neck_beside', 'choice') === undefined) return 'not known';
  if (!sample && beside === 'straight') return 'straight';
  const every = sample ? rows(2) : PACES[takeChoice(book, 'p_armhole_pace') ?? ''];
  const depth = lengthOf(book, 'p_armhole', (size) => size.finished['armhole depth']);
  const [bust, crossBack, boundOff] = [
    backOf(book),
    countOf(book, 'p_cross', 'cross back'),
    boundOffOf(book),
  ];
  if (every === undefined || depth === undefined || gauge === undefined) return 'not known';
  if (bust === undefined || crossBack === undefined) return 'not known';
  const bound = boundOff === undefined ? {} : { boundOff };
  return armholeOfFigures({ bust, crossBack, depth, every, gauge, ...bound });
}

function contradicted(found: FiguresWrong): Impossible {
  const { because, gaps } = reason(found);
  return {
    kind: 'cannot',
    because: [phrase(because, gaps)],
    instead: [phrase('instead: measure once more')],
    workings: statedAs(gaps),
  };
}

function reason(found: FiguresWrong) {
  switch (found.kind) {
    case 'odd loss':
      return {
        because: 'cannot: odd loss',
        gaps: { loss: quantity('stitches to lose', found.loss, 'stitches') },
      } as const;
    case 'bind-offs exceed the loss':
      return {
        because: 'cannot: bind-offs exceed the loss',
        gaps: {
          bound: quantity('stitches bound off at each side', found.boundOff, 'stitches'),
          loss: quantity('stitches to lose at each side', found.loss, 'stitches'),
        },
      } as const;
    case 'does not come out':
      return {
        because: 'cannot: armhole of the pattern too long',
        gaps: {
          last: quantity('last shaping row', found.lastShapingRow, 'times'),
          rows: quantity('rows of the armhole', found.rows, 'rows'),
        },
      } as const;
    default:
      return found satisfies never;
  }
}
