/** An armhole of another depth as steps of a plan, with the sleeve's top that belongs to it. */
import type { Armhole } from './armhole.ts';
import type { CannotChangeDepth, DepthChange, Moved } from './armhole-depth.ts';
import { armholeOtherwise } from './armhole-ways.ts';
import { capStep } from './cap-steps.ts';
import type { DropShoulder } from './drop-shoulder.ts';
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { Gauge } from './gauge.ts';
import { type Part, type Phrase, phrase, type Step } from './plan.ts';
import { shapedCap, shapedDrop } from './shaped.ts';
import { finishedLength, heightLine, say, step } from './steps.ts';
import { type Cm, type Rows, rows } from './units.ts';
import { type Impossible, statedAs } from './ways.ts';
import { ratesOf } from './wedge-base.ts';
import { quantity, type WorkingLine } from './working.ts';

export interface ArmholePlan {
  readonly gauge: Gauge;
  /** Edge stitches of a flat sleeve. */
  readonly edge: number;
  /** Whether a dropped sleeve is told, with its edge stitches: these are counted in its top. */
  readonly sleeveTold: boolean;
  /** The pattern's depth. */
  readonly printed: Cm;
  /** Whether the sleeve's count at the upper arm is another than the pattern's. */
  readonly ownSleeve: boolean;
  /** Whether the depth of the front neck is known; and whether its shaping is told, from the row in which it begins. */
  readonly neckKnown: boolean;
  readonly neckTold: boolean;
  /** Whether a body in the round has an odd count, so that its front has a stitch more than its back. */
  readonly oddFront: boolean;
  /** Rows at the top of the back that the short rows of its neck take. */
  readonly kept: Rows;
}

export function armholePart(found: DepthChange | CannotChangeDepth, plan: ArmholePlan): Part | Impossible {
  if (found.kind === 'cannot') return armholeOtherwise(found, plan.gauge, plan.edge);
  const { top } = found;
  const steps =
    top.construction === 'set-in'
      ? [backStep(found, top.back.after, plan), ...frontSteps(found, top.front.after, plan), capOf(top, plan)]
      : [straightStep(found, top.shoulder, plan), sleeveTop(top.shoulder.after, plan)];
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

/** The cap before is the pattern's where its sleeve is. */
function capOf({ cap, front, back }: SetInTop, { gauge, ownSleeve }: ArmholePlan): Step {
  const armhole = { front: front.after, back: back.after };
  const before = ownSleeve ? null : cap.before;
  return capStep(cap.after, shapedCap(cap.after, before, armhole, ratesOf(gauge)));
}

type SetInTop = Extract<DepthChange['top'], { construction: 'set-in' }>;

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
    return [...(top.shoulder.before?.workings ?? []), ...top.shoulder.after.workings];
  return [top.front, top.back, top.cap].flatMap(({ before, after }) => [
    ...(before?.workings ?? []),
    ...after.workings,
  ]);
}

function backStep(found: DepthChange, back: Armhole, plan: ArmholePlan): Step {
  const schedule = scheduleOf('both edges', back.bust, back.events, rows(back.rows - plan.kept));
  return step('back', phrase('where: armhole'), {
    worked: 'flat',
    pattern: patternOf(found.rows.before, plan),
    instead: [say(phrase('do: row 1 is the first bind-off')), shapedEdges(schedule)],
    check: phrase('check: armhole depth', { depth: quantity('depth', back.depth, 'cm') }),
    notes: [...laterNotes(found), phrase('note: shaping is usual')],
    workings: [...back.workings, ...edgeWorkings(schedule), ...depthLines(found, plan)],
  });
}

function stitchesOf({ bust }: Armhole) {
  return {
    front: quantity('stitches of the front', bust + 1, 'stitches'),
    back: quantity('stitches of the back', bust, 'stitches'),
  };
}

/** Up to the row in which the front neck begins, or to the last shaping row where that comes later. */
function frontSteps(found: DepthChange, front: Armhole, plan: ArmholePlan): Step[] {
  const begins = found.neckBegins.after;
  const last = front.events.at(-1)?.row ?? rows(0);
  const upTo = plan.neckTold || (plan.neckKnown && begins > last) ? begins : front.rows;
  const below = front.events.filter(({ row }) => row <= upTo);
  const schedule = scheduleOf('both edges', front.bust, below, upTo);
  const neck = quantity('rows to the front neck', begins, 'rows');
  const within =
    plan.neckKnown && !plan.neckTold && begins <= last
      ? [
          phrase('note: neck begins within the armhole', {
            rows: neck,
            last: quantity('last shaping row', last, 'rows'),
          }),
        ]
      : [];
  return [
    step('front', phrase('where: armhole of the front'), {
      worked: 'flat',
      instead: [
        ...(plan.oddFront ? [say(phrase('do: one stitch more in front', stitchesOf(front)))] : []),
        say(phrase('do: like the back')),
        shapedEdges(schedule),
        ...(plan.neckKnown ? [say(phrase('do: front neck begins above the underarm', { rows: neck }))] : []),
      ],
      notes: within,
      workings: [
        ...(plan.oddFront ? statedAs(stitchesOf(front)) : []),
        ...front.workings,
        ...edgeWorkings(schedule),
        ...depthLines(found, plan),
        ...(within.length === 0
          ? []
          : statedAs({ last: quantity('last shaping row of the armhole', last, 'rows') })),
      ],
    }),
  ];
}

function straightStep(
  found: DepthChange,
  { before, after: shoulder }: Moved<DropShoulder>,
  plan: ArmholePlan,
): Step {
  const height = heightLine('height of the armhole', shoulder.armholeRows, plan.gauge);
  const marked = phrase('do: mark the underarm', {
    rows: quantity('rows of the armhole', shoulder.armholeRows, 'rows'),
    height: height.result,
  });
  const neck = quantity('rows to the front neck', found.neckBegins.after, 'rows');
  return step('body', phrase('where: straight armhole'), {
    worked: 'flat',
    pattern: patternOf(found.rows.before, plan),
    instead: [
      say(marked),
      ...(plan.neckKnown ? [say(phrase('do: front neck begins above the marker', { rows: neck }))] : []),
    ],
    check: phrase('check: armhole depth from the markers', {
      depth: quantity('depth', shoulder.depth, 'cm'),
    }),
    notes: laterNotes(found),
    shaped: shapedDrop(shoulder, before, ratesOf(plan.gauge)),
    workings: [height, ...depthLines(found, plan), ...partLines(found)],
  });
}

function sleeveTop(shoulder: DropShoulder, { sleeveTold }: ArmholePlan): Step {
  const width = quantity('width of the sleeve top', shoulder.topWidth, 'cm');
  const overhang = quantity('overhang', shoulder.overhang, 'cm');
  const short = quantity('from the shoulder to the arm', -shoulder.overhang, 'cm');
  return step('sleeve', phrase('where: sleeve top to the armhole'), {
    worked: 'flat',
    instead: [
      say(phrase('do: sleeve top has', { top: quantity('sleeve top', shoulder.top, 'stitches'), width })),
      say(
        overhang.value < 0
          ? phrase('do: lengthen the sleeve to the shoulder', { short })
          : phrase('do: shorten the sleeve by the overhang', { overhang }),
      ),
    ],
    check: phrase('check: sleeve top', { width }),
    notes: sleeveTold ? [] : [phrase('note: sleeve top without edge stitches')],
    workings: [...shoulder.workings, ...(overhang.value < 0 ? statedAs({ short }) : [])],
  });
}
