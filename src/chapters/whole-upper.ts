/** Above the underarm of a garment with set-in or dropped sleeves: armholes, neck, shoulders and the sleeve's top. */
import { type Neck, neck } from '../fit/neck.ts';
import { neckPart } from '../fit/neck-steps.ts';
import { type Part, phrase } from '../fit/plan.ts';
import { cm, rows, type Stitches } from '../fit/units.ts';
import { type Impossible, statedAs } from '../fit/ways.ts';
import { quantity, workOut } from '../fit/working.ts';
import type { Altered } from './alterations.ts';
import { type ArmholeBeside, armholeAltered, armholeChanged } from './armhole.ts';
import { neckAsked } from './front-neck.ts';
import type { Ledger } from './ledger.ts';
import { partOf } from './make-plan.ts';
import { neckWedgeOn } from './neck-wedges.ts';
import { type ShoulderCounts, shoulderAltered, slopeOf } from './shoulder.ts';
import { bodyMade, countOf } from './upper-figures.ts';

/** `upperArm`: the count of a sleeve that was changed. */
export function upperOfGarment(
  book: Ledger,
  wishes: ReadonlySet<string>,
  upperArm: Stitches | undefined,
): Part[] {
  const front = wishes.has('front_neck') ? frontNeck(book, wishes.has('shoulder')) : NO_NECK;
  const beside: ArmholeBeside = {
    ...(upperArm === undefined ? {} : { upperArm }),
    ...(front.shaped === undefined ? {} : { neckDepth: front.shaped.depth }),
  };
  const raised = wishes.has('back_neck') ? raise(book, wishes.has('top') ? beside : null) : NO_RAISE;
  const armhole = wishes.has('top')
    ? armholeAltered(book, { ...beside, kept: rows(raised.kept) })
    : undefined;
  return [
    ...partOf(armhole, 'back', phrase('where: armhole')).map((part) => inOrder(part, book)),
    ...partOf(raised.part, 'back', phrase('where: back of the neck')),
    ...partOf(front.part, 'front', phrase('where: front neck')),
    ...(wishes.has('shoulder') ? shoulders(book, front.shaped) : []),
  ];
}

interface FrontNeck {
  readonly part: Altered;
  /** Undefined where it is the pattern's, or cannot be shaped as asked. */
  readonly shaped: Neck | undefined;
}
const NO_NECK: FrontNeck = { part: undefined, shaped: undefined };

/** With sloped shoulders the neck is shaped before they begin, and their slope deepens it. */
function frontNeck(book: Ledger, sloped: boolean): FrontNeck {
  if (bodyMade(book)?.direction === 'down')
    return {
      ...NO_NECK,
      part: refused('cannot: front neck from the neck down', 'instead: lower the neck by short rows'),
    };
  const asked = neckAsked(book);
  if (asked === undefined) return NO_NECK;
  const { ask, pattern } = asked;
  const level = neck(ask);
  const slope = sloped && level.kind === 'neck' ? slopeOf(book, countsOf(level)) : undefined;
  if (slope === undefined)
    return { part: neckPart(ask, pattern, null), shaped: level.kind === 'neck' ? level : undefined };
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
    return {
      ...NO_NECK,
      part: refused('cannot: slope takes the neck', 'instead: deeper neck or gentler slope', { drop }),
    };
  }
  const reduced = { ...ask, depth: cm(before.result.value) };
  const found = neck(reduced);
  return {
    part: neckPart(reduced, pattern, { rows: slope.rows, workings: [...slope.workings, before] }),
    shaped: found.kind === 'neck' ? found : undefined,
  };
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

/** Below the shoulders of the back. `armhole`: what stands beside an armhole that is changed, null where it is the pattern's. */
function raise(book: Ledger, armhole: ArmholeBeside | null): { part: Altered; kept: number } {
  const made = bodyMade(book);
  const needle = countOf(book, 'p_cross', 'cross back');
  if (made === undefined || needle === undefined) return NO_RAISE;
  const kept = made.direction === 'up' ? KEPT : 0;
  const changed = armhole === null ? undefined : armholeChanged(book, armhole)?.change;
  if (changed?.kind === 'depth changed' && changed.top.construction === 'set-in') {
    const { events, rows: all } = changed.top.back.after;
    if ((events.at(-1)?.row ?? 0) > all - kept)
      return { part: refused('cannot: raise has no rows', 'instead: raise in a deeper armhole'), kept: 0 };
  }
  const on = { made: { ...made, worked: 'flat' as const }, needle, after: rows(kept) };
  return { part: neckWedgeOn(book, 'back neck raise', on), kept };
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
