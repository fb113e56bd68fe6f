/** Sloped shoulders as steps of a plan: those of the back together, and one at a time. */
import { explainRuns } from './edge-runs.ts';
import { type EdgeEvent, together } from './edge-shaping.ts';
import type { PhraseName } from './phrases.ts';
import { type EdgeSchedule, type Instruction, type Part, type Phrase, phrase, type Step } from './plan.ts';
import type { ShapedPart } from './shaped.ts';
import {
  type NoBindOff,
  type NoSlope,
  type ShoulderAlternative,
  type ShoulderAsk,
  type ShoulderSlope,
  type StepOff,
  shoulderSlope,
  type TooManySteps,
} from './shoulder-slope.ts';
import { say, step } from './steps.ts';
import { rows, stitches } from './units.ts';
import { type Impossible, otherwise, type WorkedWay } from './ways.ts';
import { markerLines, shortRows } from './wedge-steps.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Where a shoulder, or both, lie on the needle. */
export type ShoulderOn = ShoulderAsk['on'];

const WHERE: Readonly<Record<ShoulderOn['sides'], PhraseName>> = {
  both: 'where: shoulders of the back',
  start: 'where: shoulder at the right',
  end: 'where: shoulder at the left',
};

/** The shoulders of `on`, on the piece where they lie. */
export function shoulderPart(ask: ShoulderAsk, piece: 'back' | 'front'): Part | Impossible {
  const found = shoulderSlope(ask);
  const lies = { piece, where: phrase(WHERE[ask.on.sides]), worked: 'flat' } as const;
  const shaped = found.kind === 'short-row shoulder' || found.kind === 'stepped shoulder';
  if (!shaped) {
    const ways = found.alternatives.map((alternative) => way(alternative, ask));
    return otherwise(lies, reason(found, ask), ways, 'workings' in found ? found.workings : [], [
      phrase('note: ask again with that figure'),
    ]);
  }
  return { steps: [sloped(found, ask, lies)], finished: [], pieces: [] };
}

function sloped(
  slope: ShoulderSlope,
  ask: ShoulderAsk,
  lies: Pick<Step, 'piece' | 'where' | 'worked'>,
): Step {
  const { sides } = ask.on;
  return step(lies.piece, lies.where, {
    worked: lies.worked,
    instead: instructions(slope, ask),
    check: phrase('check: shoulder drop', { drop: betweenSteps(slope, ask).result }),
    notes: [
      ...(slope.kind === 'short-row shoulder' ? [phrase('note: short rows')] : []),
      ...(sides === 'both'
        ? [
            phrase('note: neck between the shoulders', {
              neck: quantity('stitches of the neck', ask.on.neck, 'stitches'),
            }),
          ]
        : []),
      phrase('note: drop as knitted', { drop: drop(slope) }),
      phrase('note: both shoulders alike'),
    ],
    shaped: slope.kind === 'stepped shoulder' ? steppedShape(slope, ask) : null,
    workings: [...slope.workings, betweenSteps(slope, ask), ...moreWorkings(slope, ask)],
  });
}

function instructions(slope: ShoulderSlope, ask: ShoulderAsk): Instruction[] {
  const begins = phrase(
    ask.direction === 'up' ? 'do: shoulder slopes from here' : 'do: shoulder slopes from the cast-on',
  );
  if (slope.kind === 'stepped shoulder')
    return [say(begins), { do: 'shape edges', schedule: scheduleOf(slope.bindOffs, ask) }];
  return [
    say(begins),
    shortRows(slope.wedge),
    ...(ask.direction === 'up' ? [say(phrase('do: close the shoulder at once'))] : []),
  ];
}

/** Bind-offs as edge shaping. One shoulder with its armhole at the left begins with a plain right-side row. */
function scheduleOf(bindOffs: readonly StepOff[], ask: ShoulderAsk): EdgeSchedule {
  const { on, shoulder } = ask;
  const from = stitches(on.sides === 'both' ? 2 * shoulder + on.neck : shoulder);
  const later = on.sides === 'end' ? 1 : 0;
  const events = together(
    from,
    bindOffs.map(
      ({ row, side, stitches: count }): EdgeEvent => ({
        row: rows(row + later),
        edge: side === 'start' ? 'right' : 'left',
        by: 'bind off',
        change: -count,
        after: from,
      }),
    ),
  );
  return {
    from,
    to: events.at(-1)?.after ?? from,
    rows: events.at(-1)?.row ?? rows(0),
    at: on.sides === 'both' ? 'both edges' : 'armhole edge',
    events,
  };
}

function steppedShape(
  { bindOffs, steps, rows: deep, drop: by }: Extract<ShoulderSlope, { kind: 'stepped shoulder' }>,
  ask: ShoulderAsk,
): ShapedPart {
  const { from, events } = scheduleOf(bindOffs, ask);
  const after = { from, events, shoulder: ask.shoulder, steps, rows: deep, drop: by };
  return { shape: 'stepped shoulders', gauge: ask.gauge, after };
}

function moreWorkings(slope: ShoulderSlope, ask: ShoulderAsk): WorkingLine[] {
  if (slope.kind === 'short-row shoulder') return [...needleLine(ask), ...markerLines(slope.wedge)];
  const { events, to } = scheduleOf(slope.bindOffs, ask);
  const left = workOut(
    'stitches left at the end',
    'a',
    { a: quantity('stitches', to, 'stitches') },
    { unit: 'stitches' },
  );
  return [...needleLine(ask), ...explainRuns(events), left];
}

function needleLine({ on, shoulder }: ShoulderAsk): WorkingLine[] {
  if (on.sides !== 'both') return [];
  const given = {
    a: quantity('stitches of a shoulder', shoulder, 'stitches'),
    b: quantity('stitches of the neck', on.neck, 'stitches'),
  };
  return [workOut('stitches of both shoulders and the neck', '2 * a + b', given, { unit: 'stitches' })];
}

/** The outermost step lies two rows, one step, less below the innermost than the line through their middles drops. */
function betweenSteps(slope: ShoulderSlope, ask: ShoulderAsk): WorkingLine {
  const given = {
    a: quantity('rows of the slope', slope.rows, 'rows'),
    b: quantity('rows of one step', 2, 'rows'),
    c: quantity('rows', ask.gauge.rowsPerCm, 'rows/cm'),
  };
  return workOut('from the outermost step to the innermost', '(a - b) / c', given, { unit: 'cm' });
}

function drop(slope: ShoulderSlope) {
  return quantity('drop as knitted', slope.drop, 'cm');
}

function reason(found: NoSlope | TooManySteps | NoBindOff, ask: ShoulderAsk): Phrase {
  switch (found.kind) {
    case 'too flat':
      return phrase('cannot: shoulder too flat', { drop: quantity('drop', found.drop, 'cm') });
    case 'too many steps':
      return phrase('cannot: shoulder too steep', {
        asked: quantity('steps asked for', found.asked, 'times'),
        shoulder: quantity('stitches of the shoulder', ask.shoulder, 'stitches'),
      });
    case 'nothing to bind off':
      return phrase('cannot: nothing to bind off');
    default:
      return found satisfies never;
  }
}

function way({ way: name, slope }: ShoulderAlternative, ask: ShoulderAsk): WorkedWay {
  const said = name === 'short rows' ? 'way: shoulder by short rows' : (`way: ${name}` as const);
  if (slope === null) return { name: phrase(said), instead: [], workings: [] };
  return {
    name: phrase(said, { drop: drop(slope) }),
    instead: instructions(slope, ask),
    workings: [...slope.workings, ...moreWorkings(slope, ask)],
  };
}
