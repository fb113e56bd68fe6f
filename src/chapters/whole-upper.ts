/** Above the underarm of a garment with set-in or dropped sleeves: armholes, neck, shoulders and the sleeve's top. */
import { type Neck, neck } from '../fit/neck.ts';
import { type BesideNeck, neckPart, STRAIGHT_BESIDE } from '../fit/neck-steps.ts';
import { type Part, phrase } from '../fit/plan.ts';
import { takingRows } from '../fit/rows-taken.ts';
import { cm, type Rows, rows, type Stitches } from '../fit/units.ts';
import { type Impossible, statedAs } from '../fit/ways.ts';
import { quantity, workOut } from '../fit/working.ts';
import type { Altered } from './alterations.ts';
import { type ArmholeBeside, armholeAltered, armholeChanged } from './armhole.ts';
import { neckAsked } from './front-neck.ts';
import type { Ledger } from './ledger.ts';
import { partOf } from './make-plan.ts';
import { besidePattern, besideTold, UNKNOWN_BESIDE } from './neck-beside.ts';
import { neckWedgeOn } from './neck-wedges.ts';
import { isOpen, resting } from './open-ways.ts';
import { ownGauge } from './own-gauge.ts';
import { type ShoulderCounts, shoulderAltered, slopeOf } from './shoulder.ts';
import { bodyMade, countOf } from './upper-figures.ts';

/** What a sleeve that is told brings to what is sewn to it. */
export interface SleeveBeside {
  /** The count of a sleeve that was changed. */
  readonly upperArm?: Stitches;
  /** What the count of a dropped sleeve's top may be. */
  readonly top?: NonNullable<ArmholeBeside['sleeve']>;
}

export function upperOfGarment(book: Ledger, wishes: ReadonlySet<string>, sleeve: SleeveBeside): Part[] {
  const arms: ArmholeBeside = {
    ...(sleeve.upperArm === undefined ? {} : { upperArm: sleeve.upperArm }),
    ...(sleeve.top === undefined ? {} : { sleeve: sleeve.top }),
  };
  const wanted = wishes.has('front_neck') ? frontNeck(book, wishes.has('shoulder')) : NO_NECK;
  const met = besideArmhole(book, wanted, wishes.has('top') ? arms : null);
  const front = 'kind' in met ? { ...NO_NECK, told: () => met } : wanted;
  const beside: ArmholeBeside = {
    ...arms,
    ...(front.shaped === undefined ? {} : { neckDepth: front.shaped.depth, neckTold: true }),
  };
  const raised = wishes.has('back_neck') ? raise(book, wishes.has('top') ? beside : null) : NO_RAISE;
  const armhole = wishes.has('top')
    ? armholeAltered(book, { ...beside, kept: rows(raised.kept) })
    : undefined;
  const neckPart = front.told('kind' in met ? STRAIGHT_BESIDE : met);
  const sloped = wishes.has('shoulder') ? shoulders(book, front.shaped) : [];
  const above = [
    ...partOf(raised.part, 'back', phrase('where: back of the neck')),
    ...partOf(neckPart, 'front', phrase('where: front neck')),
    ...(isOpen(neckPart) ? resting(sloped, 'note: neck is open') : sloped),
  ];
  return [
    ...partOf(armhole, 'back', phrase('where: armhole')).map((part) => inOrder(part, book)),
    ...(isOpen(armhole) ? resting(above, 'note: armhole is open') : above),
  ];
}

interface FrontNeck {
  /** With what the armholes do in its rows. */
  readonly told: (beside: BesideNeck) => Altered;
  /** Undefined where it is the pattern's, or cannot be shaped as asked. */
  readonly shaped: Neck | undefined;
  /** Of the shoulders, which deepen it. */
  readonly slope: Rows;
}
const NO_NECK: FrontNeck = { told: () => undefined, shaped: undefined, slope: rows(0) };

/** With sloped shoulders the neck is shaped before they begin, and their slope deepens it. */
function frontNeck(book: Ledger, sloped: boolean): FrontNeck {
  const not = (why: Impossible): FrontNeck => ({ ...NO_NECK, told: () => why });
  if (bodyMade(book)?.direction === 'down')
    return not(refused('cannot: front neck from the neck down', 'instead: lower the neck by short rows'));
  const asked = neckAsked(book);
  if (asked === undefined) return NO_NECK;
  const { ask, pattern } = asked;
  const level = neck(ask);
  const slope = sloped && level.kind === 'neck' ? slopeOf(book, countsOf(level)) : undefined;
  if (slope === undefined)
    return {
      told: (beside) => neckPart(ask, pattern, null, beside),
      shaped: level.kind === 'neck' ? level : undefined,
      slope: rows(0),
    };
  const before = workOut(
    'depth of the neck before the slope',
    'a - b',
    {
      a: quantity('front neck depth wanted', ask.depth, 'cm'),
      b: quantity('drop of the shoulder as knitted', slope.drop, 'cm'),
    },
    { unit: 'cm' },
  );
  if (before.result.value <= 0) {
    const drop = quantity('drop of the shoulder', slope.drop, 'cm');
    return not(refused('cannot: slope takes the neck', 'instead: deeper neck or gentler slope', { drop }));
  }
  const reduced = { ...ask, depth: cm(before.result.value) };
  const found = neck(reduced);
  const lines = { rows: slope.rows, workings: [...slope.workings, before] };
  return {
    told: (beside) => neckPart(reduced, pattern, lines, beside),
    shaped: found.kind === 'neck' ? found : undefined,
    slope: slope.rows,
  };
}

/** `arms`: what stands beside armholes that are changed, null where they are the pattern's. */
function besideArmhole(
  book: Ledger,
  { shaped, slope }: FrontNeck,
  arms: ArmholeBeside | null,
): BesideNeck | Impossible {
  if (shaped === undefined) return UNKNOWN_BESIDE;
  if (arms === null) return besidePattern(book, shaped, slope);
  const found = armholeChanged(book, { ...arms, neckDepth: cm(0) });
  if (found?.change.kind !== 'depth changed') return UNKNOWN_BESIDE;
  const { top } = found.change;
  return top.construction === 'set-in'
    ? besideTold(top.front.after, shaped, slope, found.plan.gauge)
    : STRAIGHT_BESIDE;
}

function refused(
  because:
    | 'cannot: front neck from the neck down'
    | 'cannot: slope takes the neck'
    | 'cannot: raise has no rows',
  instead:
    | 'instead: lower the neck by short rows'
    | 'instead: deeper neck or gentler slope'
    | 'instead: raise in a deeper armhole',
  gaps: Parameters<typeof statedAs>[0] = {},
): Impossible {
  return {
    kind: 'cannot',
    because: [phrase(because, gaps)],
    instead: [phrase(instead)],
    workings: statedAs(gaps),
  };
}

/** Rows at the top of a back knitted up: the right-side row of the short rows, and the row back. */
const KEPT = 2;
const NO_RAISE = { part: undefined, kept: 0 } as const;
const NO_ROWS = { part: refused('cannot: raise has no rows', 'instead: raise in a deeper armhole'), kept: 0 };

/** Below the shoulders of the back. `armhole`: what stands beside an armhole that is changed, null where it is the pattern's. */
function raise(book: Ledger, armhole: ArmholeBeside | null): { part: Altered; kept: number } {
  const made = bodyMade(book);
  const needle = countOf(book, 'p_cross', 'cross back');
  if (made === undefined || needle === undefined) return NO_RAISE;
  const kept = made.direction === 'up' ? KEPT : 0;
  const changed = armhole === null ? undefined : armholeChanged(book, armhole)?.change;
  if (changed?.kind === 'depth changed' && changed.top.construction === 'set-in') {
    const { events, rows: all } = changed.top.back.after;
    if ((events.at(-1)?.row ?? 0) > all - kept) return NO_ROWS;
  }
  const on = { made: { ...made, worked: 'flat' as const }, needle, after: rows(kept) };
  const part = neckWedgeOn(book, 'back neck raise', on);
  const gauge = ownGauge(book, 'flat');
  if (part === undefined || 'kind' in part || gauge === undefined || kept === 0) return { part, kept };
  // Of several ways those remain that take the rows that are kept for them.
  const fitting = takingRows(part, kept, gauge);
  return fitting === undefined ? NO_ROWS : { part: fitting, kept };
}

function countsOf({ shoulder, stitches }: Neck): ShoulderCounts {
  return { shoulder, neck: stitches };
}

/** Where the neck was shaped anew, its counts are those of the shoulders. */
function shoulders(book: Ledger, shaped: Neck | undefined): Part[] {
  const altered = shaped === undefined ? shoulderAltered(book) : shoulderAltered(book, countsOf(shaped));
  const parts = partOf(altered, 'back', phrase('where: the shoulders piece'));
  if (shaped === undefined) return parts;
  const shoulder = quantity('stitches of each shoulder', shaped.shoulder, 'stitches');
  return parts.map((part) => ({
    ...part,
    steps: part.steps.map((step, i) =>
      i > 0
        ? step
        : {
            ...step,
            notes: [phrase('note: shoulders follow the neck', { shoulder }), ...step.notes],
            workings: [...statedAs({ shoulder }), ...step.workings],
          },
    ),
  }));
}

/** Told from the underarm up; from the neck down the reading is said. */
function inOrder(part: Part, book: Ledger): Part {
  if (bodyMade(book)?.direction !== 'down') return part;
  const steps = part.steps.map((step) =>
    step.piece === 'sleeve'
      ? step
      : { ...step, notes: [phrase('note: told from the underarm up'), ...step.notes] },
  );
  return { ...part, steps };
}
