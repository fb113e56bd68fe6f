/** Why a front neck cannot be shaped as asked, with what can be knitted in its place. */
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { CannotNeck, Neck, NeckAlternative, NeckAsk, NeckSide } from './neck.ts';
import type { PhraseName } from './phrases.ts';
import { type EdgeSchedule, type Instruction, type Part, type Phrase, phrase } from './plan.ts';
import { say } from './steps.ts';
import { stitches } from './units.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `notes`: what holds of each way. */
export function neckOtherwise(found: CannotNeck, ask: NeckAsk, notes: readonly Phrase[]): Part | Impossible {
  const lies = { piece: 'front', where: phrase('where: front neck'), worked: 'flat' } as const;
  const { because, gaps } = reason(found);
  const workings = [...asked(ask), ...statedAs(gaps)];
  return otherwise(lies, phrase(because, gaps), found.alternatives.map(way), workings, notes);
}

/** The row that divides the front. */
export function dividedRow({ centre, sides: { first, last } }: Neck): Instruction {
  return { do: 'divide', first: first.from, bindOff: centre, last: last.from, atEdges: stitches(0) };
}

/** One side of the neck after the row that divided the front. */
export function sideSchedule(found: Neck, side: NeckSide): EdgeSchedule {
  return scheduleOf('neck edge', side.from, side.events, found.rows);
}

function reason(found: CannotNeck): { because: PhraseName; gaps: Parameters<typeof statedAs>[0] } {
  switch (found.kind) {
    case 'no shoulders left':
      return {
        because: 'cannot: no shoulders left',
        gaps: {
          neck: quantity('stitches of the neck', found.neck, 'stitches'),
          across: quantity('stitches across', found.stitches, 'stitches'),
        },
      };
    case 'centre of the wrong parity':
      return { because: 'cannot: neck not symmetrical', gaps: {} };
    case 'shaping exceeds the neck':
      return {
        because: 'cannot: shaping exceeds the neck',
        gaps: {
          taken: quantity('stitches taken', found.taken, 'stitches'),
          neck: quantity('stitches of the neck', found.neck, 'stitches'),
        },
      };
    case 'too few rows':
      return {
        because: 'cannot: neck too shallow',
        gaps: {
          needed: quantity('rows needed', found.needed, 'rows'),
          available: quantity('rows there', found.available, 'rows'),
        },
      };
    default:
      return found satisfies never;
  }
}

/** Width and depth as they were asked for, in stitches and rows. */
function asked({ width, depth, gauge }: NeckAsk): WorkingLine[] {
  const wide = {
    a: quantity('neck width', width, 'cm'),
    b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
  };
  const deep = { a: quantity('neck depth', depth, 'cm'), b: quantity('rows', gauge.rows.perCm, 'rows/cm') };
  return [
    workOut('stitches of the neck', 'a * b', wide, { unit: 'stitches', rounding: { to: 'whole' } }),
    workOut('rows of the neck', 'a * b', deep, { unit: 'rows', rounding: { to: 'even' } }),
  ];
}

function way({ way: name, neck: other }: NeckAlternative): WorkedWay {
  const schedules = [sideSchedule(other, other.sides.last), sideSchedule(other, other.sides.first)] as const;
  const width = quantity('neck width as knitted', other.width, 'cm');
  const depth = quantity('neck depth as knitted', other.depth, 'cm');
  return {
    name: phrase(`way: ${name}`, { width, depth }),
    instead: [
      dividedRow(other),
      say(phrase('do: rows go on from the divided row')),
      shapedEdges(schedules[0]),
      say(phrase('do: take up the other side')),
      shapedEdges(schedules[1]),
    ],
    workings: [...other.workings, ...schedules.flatMap(edgeWorkings)],
  };
}
