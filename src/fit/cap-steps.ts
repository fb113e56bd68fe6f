/** A set-in cap as a step of a plan, and what can be knitted where none fits its armhole. */
import type { CannotCap, Cap, CapAlternative } from './cap.ts';
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { Gauge } from './gauge.ts';
import type { PhraseName } from './phrases.ts';
import { type Instruction, type Part, type Phrase, phrase, type Step } from './plan.ts';
import type { ShapedCap } from './shaped.ts';
import { say, step, widthLine } from './steps.ts';
import { cm } from './units.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { quantity, workOut } from './working.ts';

/** A cap with the armhole that it is drawn beside. */
export interface FittedCap {
  readonly kind: 'fitted cap';
  readonly cap: Cap;
  readonly shaped: ShapedCap;
}

/** The cap in words of knitting, from the sleeve's upper arm to the last bind-off. */
export function capStep(cap: Cap, shaped: ShapedCap): Step {
  const { difference } = cap;
  const off = Math.abs(difference);
  const by = workOut(
    'difference of the edges',
    'a',
    { a: quantity('difference', off, 'cm') },
    { unit: 'cm' },
  );
  return step('sleeve', phrase('where: sleeve cap'), {
    worked: 'flat',
    instead: [say(phrase('do: cap begins as the armhole')), ...capInstructions(cap)],
    check: phrase('check: cap edge', {
      edge: quantity('edge of the cap', cap.edge, 'cm'),
      wanted: quantity('edge wanted', cap.wanted, 'cm'),
    }),
    notes: [
      ...(off < LEAST_SEEN
        ? []
        : [phrase(difference > 0 ? 'note: cap eased in' : 'note: cap stretched', { by: by.result })]),
      seamNote(cap),
    ],
    shaped,
    workings: [...cap.workings, by, ...edgeWorkings(capSchedule(cap))],
  });
}

/** Less than this is lost in any seam; from memory. */
export const LEAST_SEEN = cm(0.3);

function seamNote({ shoulderFromCentre }: Cap): Phrase {
  return shoulderFromCentre < LEAST_SEEN
    ? phrase('note: cap meets the shoulder seam at its middle')
    : phrase('note: cap meets the shoulder seam', {
        shoulder: quantity('shoulder seam from the middle', shoulderFromCentre, 'cm'),
      });
}

function capSchedule(cap: Cap) {
  return scheduleOf('both edges', cap.upperArm, cap.events, cap.rows);
}

function capInstructions(cap: Cap): Instruction[] {
  return [shapedEdges(capSchedule(cap)), { do: 'bind off', stitches: cap.top }];
}

/** `gauge` and `edge` tell how wide another upper arm would be. */
export function capOtherwise(found: CannotCap, gauge: Gauge, edge: number): Part | Impossible {
  const lies = { piece: 'sleeve', where: phrase('where: sleeve cap'), worked: 'flat' } as const;
  const { gaps, because } = reason(found);
  const ways = found.alternatives.map((alternative) => way(alternative, gauge, edge));
  return otherwise(lies, phrase(because, gaps), ways, statedAs(gaps), [
    phrase('note: ask again with that figure'),
  ]);
}

type Gaps = Parameters<typeof statedAs>[0];

function reason(found: CannotCap): { because: PhraseName; gaps: Gaps } {
  switch (found.kind) {
    case 'nothing left for a cap':
      return {
        because: 'cannot: nothing left for a cap',
        gaps: {
          left: quantity('stitches left after the bind-offs', found.left, 'stitches'),
          needed: quantity('stitches that a cap needs', found.needed, 'stitches'),
        },
      };
    case 'top of the wrong parity':
      return { because: 'cannot: top of the wrong parity', gaps: {} };
    case 'armhole too shallow':
      return {
        because: 'cannot: armhole too shallow for a cap',
        gaps: { rows: quantity('rows of the armhole', found.rows, 'rows') },
      };
    case 'armhole edge too short':
      return {
        because: 'cannot: armhole edge too short',
        gaps: {
          wanted: quantity('edge wanted', found.wanted, 'cm'),
          shortest: quantity('shortest edge of a cap', found.shortest, 'cm'),
        },
      };
    case 'armhole edge too long':
      return {
        because: 'cannot: armhole edge too long',
        gaps: {
          wanted: quantity('edge wanted', found.wanted, 'cm'),
          longest: quantity('longest edge of a cap', found.longest, 'cm'),
        },
      };
    case 'no whole rows agree':
      return {
        because: 'cannot: no whole rows agree',
        gaps: {
          wanted: quantity('edge wanted', found.wanted, 'cm'),
          nearest: quantity('nearest edge of a cap', found.nearest, 'cm'),
        },
      };
    default:
      return found satisfies never;
  }
}

const WAYS: Readonly<Record<CapAlternative['way'], PhraseName>> = {
  'bind off less': 'way: bind off less',
  'nearest top': 'way: nearest top',
  'narrower upper arm': 'way: narrower upper arm',
  'wider upper arm': 'way: wider upper arm',
  'deeper armhole': 'way: armhole deeper by',
  'ease the cap in': 'way: ease the cap in',
};

function way({ way: name, cap, by }: CapAlternative, gauge: Gauge, edge: number): WorkedWay {
  const width = widthLine('upper arm', cap.upperArm, gauge, edge);
  const more = by === undefined ? [] : statedAs({ by: quantity('by how much', by, 'cm') });
  return {
    name: phrase(WAYS[name], {
      upperArm: quantity('upper arm', cap.upperArm, 'stitches'),
      armWidth: width.result,
      top: quantity('top', cap.top, 'stitches'),
      ...(by === undefined ? {} : { by: quantity('by how much', by, 'cm') }),
    }),
    instead: capInstructions(cap),
    workings: [width, ...more, ...cap.workings, ...edgeWorkings(capSchedule(cap))],
  };
}
