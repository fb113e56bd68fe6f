/** A shaped front neck as steps of a plan: the middle bound off, then one side after the other. */
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import type { Gauge } from './gauge.ts';
import { type Neck, type NeckAsk, type NeckSide, neck } from './neck.ts';
import type { NeckInArmhole } from './neck-in-armhole.ts';
import { dividedRow, neckOtherwise, sideSchedule } from './neck-ways.ts';
import { type Finished, type Part, type Phrase, phrase, type Step } from './plan.ts';
import { neckOutline } from './shaped.ts';
import { finishedLength, finishedWidth, heightLine, say, step } from './steps.ts';
import { type Cm, type Rows, roundHalfUp, rows, stitches } from './units.ts';
import type { Impossible } from './ways.ts';
import { ratesOf } from './wedge-base.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** The pattern's own neck; null where its figures are not known. */
export type PatternNeck = Pick<NeckAsk, 'width' | 'depth'> | null;

/** A slope of the shoulders that comes after the neck and deepens it; how the depth before it was found. */
export interface NeckSlope {
  readonly rows: Rows;
  readonly workings: readonly WorkingLine[];
}

/** What the armholes do in the rows of the neck. */
export interface BesideNeck {
  /** Null where they are straight there, or nobody knows how they are shaped. */
  readonly within: NeckInArmhole | null;
  readonly notes: readonly Phrase[];
  readonly workings: readonly WorkingLine[];
}

export const STRAIGHT_BESIDE: BesideNeck = { within: null, notes: [], workings: [] };

/** `ask.depth` is that up to the slope, where there is one. */
export function neckPart(
  ask: NeckAsk,
  pattern: PatternNeck,
  slope: NeckSlope | null,
  beside: BesideNeck = STRAIGHT_BESIDE,
): Part | Impossible {
  const found = neck(ask);
  if (found.kind !== 'neck') return neckOtherwise(found, ask, beside.notes);
  const before = pattern === null || slope !== null ? null : neck({ ...ask, ...pattern, shape: 'round' });
  const known = before?.kind === 'neck' ? before : null;
  const theirs = pattern === null ? null : stitches(roundHalfUp(pattern.width * ask.gauge.stitches.perCm));
  return {
    steps: [divided(found, known, pattern, slope, ask, beside), ...sides(found, beside.within)],
    finished: [
      finishedWidth('front neck width', theirs, found.stitches, ask.gauge, 1, 0),
      deepWithSlope(found, pattern, slope, ask.gauge),
    ],
    pieces: [],
  };
}

function deepWithSlope(found: Neck, pattern: PatternNeck, slope: NeckSlope | null, gauge: Gauge): Finished {
  if (slope === null) return finishedLength('front neck depth', pattern?.depth ?? null, found.rows, gauge);
  const all = workOut(
    'rows of the neck and of the slope',
    'a + b',
    {
      a: quantity('rows of the neck', found.rows, 'rows'),
      b: quantity('rows of the slope', slope.rows, 'rows'),
    },
    { unit: 'rows' },
  );
  const deep = finishedLength('front neck depth', pattern?.depth ?? null, all.result.value, gauge);
  return { ...deep, workings: [all, ...deep.workings] };
}

function divided(
  found: Neck,
  before: Neck | null,
  pattern: PatternNeck,
  slope: NeckSlope | null,
  { gauge, shape }: NeckAsk,
  { within, ...beside }: BesideNeck,
): Step {
  const height = heightLine('depth of the neck', found.rows, gauge);
  // How a V compares with the pattern's neck hangs on the pattern's own outline, which is not asked for.
  const band = before === null || shape === 'V' ? [] : bandChange(before, found, gauge);
  const changes = before === null ? [] : [...changesFrom(before, found), ...band];
  return step('front', phrase('where: front neck'), {
    worked: 'flat',
    pattern: pattern === null ? null : phrase('pattern: front neck', patternGaps(pattern)),
    instead: [
      ...(shape === 'V' ? [say(phrase('do: neck is a V'))] : []),
      say(
        phrase('do: neck begins before the shoulder', {
          rows: quantity('rows of the neck', found.rows, 'rows'),
          height: height.result,
        }),
      ),
      within === null
        ? dividedRow(found)
        : {
            do: 'divide',
            first: within.each,
            bindOff: found.centre,
            last: within.each,
            atEdges: within.atEdges,
          },
    ],
    check: phrase('check: length to the shoulder', { length: height.result }),
    notes: [
      ...beside.notes,
      ...changes.map((c) => c.note),
      ...(slope === null ? [] : [phrase('note: slope deepens the neck')]),
      phrase('note: back neck as wide'),
    ],
    shaped: {
      shape: 'neck',
      gauge: ratesOf(gauge),
      after: neckOutline(found),
      before: before === null || shape === 'V' ? null : neckOutline(before),
      slope: slope?.rows ?? rows(0),
    },
    workings: [
      ...(slope?.workings ?? []),
      ...(pattern === null ? [] : patternLines(pattern)),
      ...found.workings,
      ...beside.workings,
      ...(within?.workings ?? []),
      height,
      ...changes.flatMap((c) => c.lines),
    ],
  });
}

/** The side that the dividing row knits last goes on with the same yarn. */
function sides(found: Neck, within: NeckInArmhole | null): Step[] {
  const of = (
    side: NeckSide,
    where: 'where: neck, the side on the needle' | 'where: neck, the other side',
  ) => {
    const other = where === 'where: neck, the other side';
    const schedule =
      within === null
        ? sideSchedule(found, side)
        : scheduleOf('both edges', side.from, side.events, found.rows);
    return step('front', phrase(where), {
      worked: 'flat',
      instead: [
        say(phrase(other ? 'do: take up the other side' : 'do: rows go on from the divided row')),
        ...(within === null
          ? []
          : [say(phrase(other ? 'do: neck edge at the left' : 'do: neck edge at the right'))]),
        shapedEdges(schedule),
      ],
      notes: [phrase('note: both shoulders as many stitches')],
      workings: [...found.workings, ...(within?.workings ?? []), ...edgeWorkings(schedule)],
    });
  };
  return [
    of((within ?? found).sides.last, 'where: neck, the side on the needle'),
    of((within ?? found).sides.first, 'where: neck, the other side'),
  ];
}

interface Noted {
  readonly note: Phrase;
  readonly lines: readonly WorkingLine[];
}

/** What the neckband gains or loses along the front, at the gauge of the front. */
function bandChange(before: Neck, after: Neck, gauge: Gauge): Noted[] {
  const more = after.edge >= before.edge;
  const given = {
    a: quantity('neck edge of the front, the longer', Math.max(before.edge, after.edge), 'cm'),
    b: quantity('the shorter', Math.min(before.edge, after.edge), 'cm'),
    c: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
  };
  const edge = workOut('difference of the neck edge', 'a - b', given, { unit: 'cm' });
  const count = workOut('stitches of the neckband that this makes', '(a - b) * c', given, {
    unit: 'stitches',
    rounding: { to: 'whole' },
  });
  if (count.result.value === 0) return [];
  const note = phrase(more ? 'note: neckband gains' : 'note: neckband loses', {
    edge: edge.result,
    count: count.result,
  });
  return [{ note, lines: [edge, count] }];
}

/** Rows by which the neck begins later or earlier, and what each shoulder gains or loses. */
function changesFrom(before: Neck, after: Neck): Noted[] {
  const rows = difference('rows', before.rows, after.rows);
  const shoulder = difference('stitches', before.shoulder, after.shoulder);
  return [
    ...(rows === null
      ? []
      : [
          {
            note: phrase(rows.more ? 'note: neck begins earlier' : 'note: neck begins later', {
              rows: rows.line.result,
            }),
            lines: [rows.line],
          },
        ]),
    ...(shoulder === null
      ? []
      : [
          {
            note: phrase(shoulder.more ? 'note: shoulders gain' : 'note: shoulders lose', {
              count: shoulder.line.result,
            }),
            lines: [shoulder.line],
          },
        ]),
  ];
}

function difference(unit: 'rows' | 'stitches', was: number, is: number) {
  if (was === is) return null;
  const what = unit === 'rows' ? 'rows of the neck' : 'stitches of each shoulder';
  const more = is > was;
  const given = {
    a: quantity(`${what}, the larger`, Math.max(was, is), unit),
    b: quantity(`${what}, the smaller`, Math.min(was, is), unit),
  };
  return { more, line: workOut(`${what}: the difference from the pattern`, 'a - b', given, { unit }) };
}

function patternGaps({ width, depth }: { width: Cm; depth: Cm }) {
  return { width: quantity('width', width, 'cm'), depth: quantity('depth', depth, 'cm') };
}

function patternLines({ width, depth }: { width: Cm; depth: Cm }): WorkingLine[] {
  return [
    workOut("the pattern's neck width", 'a', { a: quantity('width', width, 'cm') }, { unit: 'cm' }),
    workOut("the pattern's neck depth", 'a', { a: quantity('depth', depth, 'cm') }, { unit: 'cm' }),
  ];
}
