/** Why an armhole cannot have the depth that is wanted, with what can be knitted in its place. */
import type { ArmholeAlternative, CannotArmhole } from './armhole.ts';
import type { CannotChangeDepth } from './armhole-depth.ts';
import { capOtherwise } from './cap-steps.ts';
import type { ArmholeTooNarrow } from './drop-shoulder.ts';
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { Gauge } from './gauge.ts';
import type { PhraseName } from './phrases.ts';
import { type Part, phrase } from './plan.ts';
import { heightLine, say } from './steps.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { quantity } from './working.ts';

/** Why the depth cannot be changed, with what can be knitted instead. `edge` are the edge stitches of a flat sleeve. */
export function armholeOtherwise(found: CannotChangeDepth, gauge: Gauge, edge: number): Part | Impossible {
  switch (found.part) {
    case 'front':
    case 'back':
      return shapedOtherwise(found.because, found.part);
    case 'cap':
      return capOtherwise(found.because, gauge, edge);
    case 'sleeve top':
      return tooNarrow(found.because, gauge);
    case 'neck': {
      const gaps = {
        neck: quantity('rows of the front neck', found.neckRows, 'rows'),
        armhole: quantity('rows of the armhole', found.armholeRows, 'rows'),
      };
      const because = [phrase('cannot: neck begins below the underarm', gaps)];
      return {
        kind: 'cannot',
        because,
        instead: [phrase('instead: measure once more')],
        workings: statedAs(gaps),
      };
    }
    default:
      return found satisfies never;
  }
}

const AGAIN = [phrase('note: ask again with that figure')];

function shapedOtherwise(found: CannotArmhole, piece: 'front' | 'back'): Part | Impossible {
  const where = phrase(piece === 'front' ? 'where: armhole of the front' : 'where: armhole');
  const lies = { piece, where, worked: 'flat' } as const;
  const { because, gaps } = reason(found);
  const ways = found.alternatives.map(armholeWay);
  return otherwise(lies, phrase(because, gaps), ways, statedAs(gaps), AGAIN);
}

function reason(found: CannotArmhole): { because: PhraseName; gaps: Parameters<typeof statedAs>[0] } {
  switch (found.kind) {
    case 'odd loss':
      return {
        because: 'cannot: odd loss',
        gaps: { loss: quantity('stitches to lose', found.loss, 'stitches') },
      };
    case 'cross back wider':
      return {
        because: 'cannot: cross back wider',
        gaps: { by: quantity('stitches more across', found.by, 'stitches') },
      };
    case 'bind-offs exceed the loss':
      return {
        because: 'cannot: bind-offs exceed the loss',
        gaps: {
          bound: quantity('stitches bound off at each side', found.boundOff, 'stitches'),
          loss: quantity('stitches to lose at each side', found.loss, 'stitches'),
        },
      };
    case 'too few rows':
      return {
        because: 'cannot: armhole shaping needs more rows',
        gaps: {
          needed: quantity('rows needed', found.needed, 'rows'),
          available: quantity('rows there', found.available, 'rows'),
        },
      };
    default:
      return found satisfies never;
  }
}

const WAYS: Readonly<Record<ArmholeAlternative['way'], PhraseName>> = {
  'nearest cross back': 'way: nearest cross back',
  straight: 'way: straight armhole',
  'bind off less': 'way: bind off less',
  'bind off more': 'way: bind off more',
  'shape higher': 'way: shape higher',
  deeper: 'way: deeper armhole',
  'wider cross back': 'way: wider cross back',
};

function armholeWay({ way: name, armhole }: ArmholeAlternative): WorkedWay {
  const schedule = scheduleOf('both edges', armhole.bust, armhole.events, armhole.rows);
  return {
    name: phrase(WAYS[name], {
      crossBack: quantity('stitches across', armhole.crossBack, 'stitches'),
      depth: quantity('depth', armhole.depth, 'cm'),
    }),
    instead: [shapedEdges(schedule)],
    workings: [...armhole.workings, ...edgeWorkings(schedule)],
  };
}

function tooNarrow({ top, upperArm, alternatives }: ArmholeTooNarrow, gauge: Gauge): Part | Impossible {
  const gaps = {
    top: quantity('width of the sleeve top', top, 'cm'),
    arm: quantity('width that the arm needs', upperArm, 'cm'),
  };
  const lies = {
    piece: 'sleeve',
    where: phrase('where: sleeve top to the armhole'),
    worked: 'flat',
  } as const;
  const ways = alternatives.map(({ shoulder }): WorkedWay => {
    const height = heightLine('height of the armhole', shoulder.armholeRows, gauge);
    const depth = quantity('depth', shoulder.depth, 'cm');
    return {
      name: phrase('way: deeper armhole', { depth }),
      instead: [
        say(
          phrase('do: mark the underarm', {
            rows: quantity('rows of the armhole', shoulder.armholeRows, 'rows'),
            height: height.result,
          }),
        ),
        say(
          phrase('do: sleeve top has', {
            top: quantity('sleeve top', shoulder.top, 'stitches'),
            width: quantity('width', shoulder.topWidth, 'cm'),
          }),
        ),
      ],
      workings: [height, ...shoulder.workings],
    };
  });
  return otherwise(lies, phrase('cannot: armhole narrower than the arm', gaps), ways, statedAs(gaps), AGAIN);
}
