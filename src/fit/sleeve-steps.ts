/** The sleeve's sections as steps of a plan, in the order of knitting. */
import type { CannotCap } from './cap.ts';
import { capOtherwise, capStep, type FittedCap } from './cap-steps.ts';
import { type Part, phrase, type Step } from './plan.ts';
import type { SleeveShaping } from './sleeve.ts';
import {
  checkWidth,
  edging,
  finishedLength,
  finishedWidth,
  fromTo,
  heightLine,
  pieceChange,
  say,
  shaping,
  step,
  widthLine,
} from './steps.ts';
import type { Stitches } from './units.ts';
import { quantity, type WorkingLine } from './working.ts';

/** How the finished widths came about, for the workings; null where the pattern's count is kept. */
export interface SleeveWidths {
  readonly wrist: WorkingLine | null;
  readonly upperArm: WorkingLine | null;
}

/** `top`: the cap for the new upper arm, where the pattern's armhole is known; or that the top is told by itself. */
export function sleevePart(
  sleeve: SleeveShaping,
  eased: SleeveWidths,
  top?: FittedCap | CannotCap | 'told by itself',
): Part {
  const { ask, counts } = sleeve;
  const cuff = cuffStep(sleeve, eased.wrist);
  const arm = armStep(sleeve, eased.upperArm);
  const above = top === 'told by itself' ? [] : topStep(sleeve, top);
  const width = (name: string, pattern: Stitches, count: Stitches) =>
    finishedWidth(name, pattern, count, ask.gauge, 1, ask.edge);
  return {
    steps: ask.direction === 'up' ? [cuff, arm, ...above] : [...above, arm, cuff],
    finished: [
      width('wrist', ask.pattern.wrist, counts.wrist),
      width('upper arm', ask.pattern.upperArm, counts.upperArm),
      finishedLength('sleeve, cuff to underarm', ask.pattern.length, sleeve.inAll.result.value, ask.gauge),
    ],
    pieces: [pieceChange(sleeve.before, sleeve.after, ask.gauge, ask.edge)],
  };
}

function cuffStep(sleeve: SleeveShaping, eased: WorkingLine | null): Step {
  const { ask, counts, cuff } = sleeve;
  const width = widthLine('wrist', counts.wrist, ask.gauge, ask.edge);
  const worked = edging(cuff.rows, counts.wrist, ask.gauge);
  const up = ask.direction === 'up';
  const length = inAllLine(sleeve);
  return step('sleeve', phrase(up ? 'where: cast-on and cuff' : 'where: last edging'), {
    worked: sleeve.ask.gauge.worked,
    pattern: up
      ? phrase('pattern: cast on', { count: quantity('stitches', ask.pattern.wrist, 'stitches') })
      : null,
    instead: up
      ? [{ do: 'cast on', stitches: counts.wrist }, ...worked]
      : [...worked, { do: 'bind off', stitches: counts.wrist }],
    check: up
      ? checkWidth(width, ask.gauge.worked === 'round')
      : phrase('check: length in all', { length: length.result }),
    notes: [...(sleeve.wrist === null ? [] : sleeve.wrist.neighbours), phrase('note: hand must pass')],
    workings: [
      ...(eased === null ? [] : [eased]),
      ...(sleeve.wrist?.workings ?? []),
      patternWidth(sleeve),
      width,
      ...cuff.workings,
      heightLine('depth of the cuff', cuff.rows, ask.gauge),
      ...(up ? [] : [length]),
    ],
  });
}

function armStep(sleeve: SleeveShaping, eased: WorkingLine | null): Step {
  const { ask, counts } = sleeve;
  const made = shaping(
    sleeve.spacing,
    ask.gauge.worked === 'round' ? 'both sides of the underarm line' : 'both edges',
    ask.gauge,
    ask.edge,
  );
  const up = ask.direction === 'up';
  const [from, to] = up
    ? [ask.pattern.wrist, ask.pattern.upperArm]
    : [ask.pattern.upperArm, ask.pattern.wrist];
  const length = up ? inAllLine(sleeve) : heightLine('length of this section', sleeve.arm.rows, ask.gauge);
  return step('sleeve', phrase(up ? 'where: cuff to underarm' : 'where: underarm to cuff'), {
    worked: sleeve.ask.gauge.worked,
    pattern: fromTo(from, to),
    instead: [...(up ? [] : [{ do: 'begin with' as const, stitches: counts.upperArm }]), ...made.instead],
    check: phrase(up ? 'check: length in all' : 'check: length so far', { length: length.result }),
    notes: [...(sleeve.upperArm === null ? [] : sleeve.upperArm.neighbours), ...made.notes],
    workings: [
      patternWidth(sleeve),
      ...(eased === null ? [] : [eased]),
      ...(sleeve.upperArm?.workings ?? []),
      ...sleeve.arm.workings,
      sleeve.plain,
      ...made.workings,
      length,
    ],
  });
}

function inAllLine({ inAll, ask }: SleeveShaping): WorkingLine {
  return heightLine('sleeve from cuff edge to underarm', inAll.result.value, ask.gauge);
}

/**
 * The sleeve's top where its count is not the pattern's: the cap fitted to the armhole, where that is known; else, or
 * where no cap fits, what the top must take up.
 */
function topStep(sleeve: SleeveShaping, cap: FittedCap | CannotCap | undefined): Step[] {
  const { ask, topDifference } = sleeve;
  if (topDifference === null) return [];
  const differs = {
    count: topDifference.result,
    which: sleeve.counts.upperArm > ask.pattern.upperArm ? 'more' : 'fewer',
  };
  const pattern = phrase('pattern: upper arm', {
    count: quantity('stitches', ask.pattern.upperArm, 'stitches'),
  });
  const lines = [patternWidth(sleeve), topDifference];
  if (cap?.kind === 'fitted cap') {
    const fitted = capStep(cap.cap, cap.shaped);
    const instead = [say(phrase('do: cap for another upper arm', differs)), ...fitted.instead];
    return [{ ...fitted, pattern, instead, workings: [...lines, ...fitted.workings] }];
  }
  const width = widthLine('upper arm', sleeve.counts.upperArm, ask.gauge, ask.edge);
  const other = cap === undefined ? [] : asNotes(capOtherwise(cap, ask.gauge, ask.edge));
  return [
    step('sleeve', phrase('where: sleeve top'), {
      worked: ask.gauge.worked,
      pattern,
      instead: [say(phrase('note: cap takes the difference', differs)), ...other.flatMap((s) => s.instead)],
      check: checkWidth(width, true),
      notes:
        cap === undefined ? [phrase('note: armhole chapter fits the cap')] : other.flatMap((s) => s.notes),
      workings: [...lines, width, ...other.flatMap((s) => s.workings)],
    }),
  ];
}

/** The ways out as a step to be joined with another; without any, nothing. */
function asNotes(found: ReturnType<typeof capOtherwise>): readonly Step[] {
  return 'kind' in found ? [] : found.steps;
}

function patternWidth({ ask }: SleeveShaping): WorkingLine {
  return {
    ...widthLine('upper arm of the pattern', ask.pattern.upperArm, ask.gauge, ask.edge),
  };
}
