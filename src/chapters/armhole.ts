/** The armhole chapter: another depth, and the sleeve's top that belongs to it. */
import { changeDepth, type DropAsk, type SetInAsk } from '../fit/armhole-depth.ts';
import { type ArmholePlan, armholePart } from '../fit/armhole-steps.ts';
import { easedWidth } from '../fit/ease.ts';
import { ANY_COUNT, type CountRule } from '../fit/gauge.ts';
import { type Outcome, phrase } from '../fit/plan.ts';
import { type Cm, cm, type Rows, rows, type Stitches } from '../fit/units.ts';
import type { Sheet } from '../flow/calculations.ts';
import type { Altered } from './alterations.ts';
import { fitOf } from './body-known.ts';
import { SEAM_STITCHES } from './figures.ts';
import { type Ledger, ledger, take, takeChoice, takeLength, waitFor } from './ledger.ts';
import { outcomeOf } from './make-plan.ts';
import { ownGauge } from './own-gauge.ts';
import { SUGGESTIONS } from './suggestions.ts';
import { backOf, boundOffOf, constructionOf, countOf, lengthOf, oddBody } from './upper-figures.ts';

export function armholeResult(sheet: Sheet): Outcome {
  const book = ledger(sheet, SUGGESTIONS);
  return outcomeOf(book, armholeAltered(book), [phrase('summary: armhole')]);
}

/** What other changes to the garment bring to its armholes; undefined where the pattern's own holds. */
export interface ArmholeBeside {
  readonly upperArm?: Stitches;
  readonly neckDepth?: Cm;
  /** Whether the shaping of that neck is told too. */
  readonly neckTold?: boolean;
  /** Rows at the top of the back that the short rows of its neck take. */
  readonly kept?: Rows;
  /** What a sleeve that is told lets the count of its top be: edge stitches, and even or odd. */
  readonly sleeve?: Pick<CountRule, 'edge' | 'parity'>;
}

export function armholeAltered(book: Ledger, beside: ArmholeBeside = {}): Altered {
  const found = armholeChanged(book, beside);
  return found && armholePart(found.change, found.plan);
}

/** Undefined where figures are missing; they are entered as waiting. */
export function armholeChanged(book: Ledger, beside: ArmholeBeside) {
  const drop = takeChoice(book, 'armhole_top') === 'drop' || constructionOf(book) === 'drop shoulder';
  const printed = lengthOf(book, 'p_armhole', (size) => size.finished['armhole depth']);
  const wanted = takeLength(book, 'armhole_wanted');
  if (wanted === undefined) waitFor(book, 'armhole_wanted', 'The armhole waits for it.');
  const neck = beside.neckDepth ?? lengthOf(book, 'p_neck_depth', (size) => size.neckDepth);
  const gauge = ownGauge(book, 'flat');
  if (printed === undefined || wanted === undefined || gauge === undefined) return undefined;
  const ask = drop ? dropAsk(book, printed, beside) : setInAsk(book, printed, beside);
  if (ask === undefined) return undefined;
  const plan: ArmholePlan = {
    gauge,
    edge: SEAM_STITCHES,
    sleeveTold: beside.sleeve !== undefined,
    printed,
    ownSleeve: beside.upperArm !== undefined,
    neckKnown: neck !== undefined,
    neckTold: beside.neckTold ?? false,
    oddFront: oddBody(book),
    kept: beside.kept ?? rows(0),
  };
  return { change: changeDepth(ask, wanted, neck ?? cm(0)), plan };
}

/** The top of a dropped sleeve as wide as its armhole; undefined where none is dropped or known. */
export function droppedTop(book: Ledger, { top }: { readonly top?: ArmholeBeside['sleeve'] }) {
  const change = armholeChanged(book, top === undefined ? {} : { sleeve: top })?.change;
  if (change?.kind !== 'depth changed' || change.top.construction !== 'drop shoulder') return undefined;
  return change.top.shoulder.after;
}

/** Front and back alike, shaped in the usual way from the pattern's counts. */
function setInAsk(book: Ledger, depth: Cm, beside: ArmholeBeside): SetInAsk | undefined {
  const gauge = ownGauge(book, 'flat');
  const [bust, crossBack] = [backOf(book), countOf(book, 'p_cross', 'cross back')];
  const bindOff = boundOffOf(book);
  const upperArm = beside.upperArm ?? countOf(book, 'p_upper_arm', 'upper arm');
  if (gauge === undefined || bust === undefined || crossBack === undefined || upperArm === undefined)
    return undefined;
  const one = { bust, crossBack, depth, gauge, ...(bindOff === undefined ? {} : { bindOffs: [bindOff] }) };
  return { construction: 'set-in', front: one, back: one, sleeve: { upperArm, gauge } };
}

function dropAsk(book: Ledger, depth: Cm, { sleeve }: ArmholeBeside): DropAsk | undefined {
  const gauge = ownGauge(book, 'flat');
  const [back, crossBack] = [takeLength(book, 'back_width'), takeLength(book, 'cross_back')];
  const arm = takeLength(book, 'upper_arm');
  take(book, 'fit', 'choice');
  if (gauge === undefined || back === undefined || crossBack === undefined || arm === undefined)
    return undefined;
  const upperArm = cm(easedWidth('upper arm', arm, fitOf(book.sheet)).result.value);
  return {
    construction: 'drop shoulder',
    shoulder: {
      depth,
      back,
      crossBack,
      upperArm,
      body: gauge,
      sleeve: gauge,
      rule: { ...ANY_COUNT, ...sleeve },
    },
  };
}
