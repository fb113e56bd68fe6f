/** An armhole of another depth as steps of a plan, with the sleeve's top that belongs to it. */
import type { Armhole, ArmholeAlternative, CannotArmhole } from './armhole.ts';
import type { CannotChangeDepth, DepthChange } from './armhole-depth.ts';
import { capOtherwise, capStep } from './cap-steps.ts';
import type { ArmholeTooNarrow, DropShoulder } from './drop-shoulder.ts';
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { Gauge } from './gauge.ts';
import type { PhraseName } from './phrases.ts';
import { type Part, type Phrase, phrase, type Step } from './plan.ts';
import { finishedLength, heightLine, say, step } from './steps.ts';
import { type Cm, type Rows, rows } from './units.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { quantity, type WorkingLine } from './working.ts';

export interface ArmholePlan {
  readonly gauge: Gauge;
  /** Edge stitches of a flat sleeve. */
  readonly edge: number;
  /** The pattern's depth. */
  readonly printed: Cm;
  /** Whether the depth of the front neck is known. */
  readonly neckKnown: boolean;
}

export function armholePart(found: DepthChange | CannotChangeDepth, plan: ArmholePlan): Part | Impossible {
  if (found.kind === 'cannot') return cannot(found, plan);
  const { top } = found;
  const steps =
    top.construction === 'set-in'
      ? [
          backStep(found, top.back.after, plan),
          ...frontSteps(found, top.front.after, plan),
          capStep(top.cap.after),
        ]
      : [straightStep(found, top.shoulder.after, plan), sleeveTop(top.shoulder.after)];
  const deep = top.construction === 'set-in' ? top.back.after.rows : top.shoulder.after.armholeRows;
  return {
    steps,
    finished: [
      finishedLength('armhole depth', plan.printed, deep, plan.gauge),
      ...(top.construction === 'set-in'
        ? [finishedLength('height of the cap', null, top.cap.after.rows, plan.gauge)]
        : []),
    ],
    pieces: [],
  };
}

function patternOf(before: Rows, { printed }: ArmholePlan): Phrase {
  return phrase('pattern: armhole', {
    depth: quantity("the pattern's depth", printed, 'cm'),
    rows: quantity("the pattern's rows", before, 'rows'),
  });
}

function laterNotes({ later }: DepthChange): Phrase[] {
  if (later === 0) return [];
  const by = quantity('rows later', Math.abs(later), 'rows');
  return [phrase(later > 0 ? 'note: shoulders come later' : 'note: shoulders come earlier', { rows: by })];
}

/** Rows before and after, and what hangs on them; the parts' own workings stand at their steps. */
function depthLines(found: DepthChange, plan: ArmholePlan): WorkingLine[] {
  const own = new Set<WorkingLine>(partLines(found));
  const rest = found.workings.filter((line) => !own.has(line));
  return [
    ...statedAs({ printed: quantity("the pattern's depth", plan.printed, 'cm') }),
    ...statedAs({ later: quantity('rows later or earlier', Math.abs(found.later), 'rows') }),
    ...rest,
  ];
}

function partLines({ top }: DepthChange): readonly WorkingLine[] {
  if (top.construction === 'drop shoulder')
    return [...top.shoulder.before.workings, ...top.shoulder.after.workings];
  return [top.front, top.back, top.cap].flatMap(({ before, after }) => [
    ...before.workings,
    ...after.workings,
  ]);
}

function backStep(found: DepthChange, back: Armhole, plan: ArmholePlan): Step {
  const schedule = scheduleOf('both edges', back.bust, back.events, back.rows);
  const before = found.top.construction === 'set-in' ? found.top.back.before.rows : back.rows;
  return step('back', phrase('where: armhole'), {
    worked: 'flat',
    pattern: patternOf(before, plan),
    instead: [say(phrase('do: row 1 is the first bind-off')), shapedEdges(schedule)],
    check: phrase('check: armhole depth', { depth: quantity('depth', back.depth, 'cm') }),
    notes: [...laterNotes(found), phrase('note: shaping is usual')],
    workings: [...back.workings, ...edgeWorkings(schedule), ...depthLines(found, plan)],
  });
}

/** Up to the row in which the front neck begins, or to the last shaping row where that comes later. */
function frontSteps(found: DepthChange, front: Armhole, plan: ArmholePlan): Step[] {
  const begins = found.neckBegins.after;
  const last = front.events.at(-1)?.row ?? rows(0);
  const upTo = plan.neckKnown && begins > last ? begins : front.rows;
  const schedule = scheduleOf('both edges', front.bust, front.events, upTo);
  const neck = quantity('rows to the front neck', begins, 'rows');
  return [
    step('front', phrase('where: armhole of the front'), {
      worked: 'flat',
      instead: [
        say(phrase('do: like the back')),
        shapedEdges(schedule),
        ...(plan.neckKnown ? [say(phrase('do: front neck begins above the underarm', { rows: neck }))] : []),
      ],
      workings: [...front.workings, ...edgeWorkings(schedule), ...depthLines(found, plan)],
    }),
  ];
}

function straightStep(found: DepthChange, shoulder: DropShoulder, plan: ArmholePlan): Step {
  const height = heightLine('height of the armhole', shoulder.armholeRows, plan.gauge);
  const before = found.top.construction === 'drop shoulder' ? found.top.shoulder.before.armholeRows : rows(0);
  const marked = phrase('do: mark the underarm', {
    rows: quantity('rows of the armhole', shoulder.armholeRows, 'rows'),
    height: height.result,
  });
  const neck = quantity('rows to the front neck', found.neckBegins.after, 'rows');
  return step('body', phrase('where: straight armhole'), {
    worked: 'flat',
    pattern: patternOf(before, plan),
    instead: [
      say(marked),
      ...(plan.neckKnown ? [say(phrase('do: front neck begins above the marker', { rows: neck }))] : []),
    ],
    check: phrase('check: armhole depth', { depth: quantity('depth', shoulder.depth, 'cm') }),
    notes: laterNotes(found),
    workings: [height, ...depthLines(found, plan), ...partLines(found)],
  });
}

function sleeveTop(shoulder: DropShoulder): Step {
  const width = quantity('width of the sleeve top', shoulder.topWidth, 'cm');
  return step('sleeve', phrase('where: sleeve top to the armhole'), {
    worked: 'flat',
    instead: [
      say(phrase('do: sleeve top has', { top: quantity('sleeve top', shoulder.top, 'stitches'), width })),
      say(
        phrase('do: shorten the sleeve by the overhang', {
          overhang: quantity('overhang', shoulder.overhang, 'cm'),
        }),
      ),
    ],
    check: phrase('check: sleeve top', { width }),
    workings: shoulder.workings,
  });
}

function cannot(found: CannotChangeDepth, plan: ArmholePlan): Part | Impossible {
  switch (found.part) {
    case 'front':
    case 'back':
      return armholeOtherwise(found.because, found.part);
    case 'cap':
      return capOtherwise(found.because, plan.gauge, plan.edge);
    case 'sleeve top':
      return tooNarrow(found.because, plan);
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

function armholeOtherwise(found: CannotArmhole, piece: 'front' | 'back'): Part | Impossible {
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

function tooNarrow(
  { top, upperArm, alternatives }: ArmholeTooNarrow,
  { gauge }: ArmholePlan,
): Part | Impossible {
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
