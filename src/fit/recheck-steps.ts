/** A recheck in mid-project as steps: what the piece measures, and what to do from this row on. */
import type { PhraseName } from './phrases.ts';
import { type Instruction, type Part, type Phrase, phrase, type ShapedAt, type Step } from './plan.ts';
import type { Recheck, RecheckAsk, RipBack } from './recheck.ts';
import type { Ahead } from './recheck-ahead.ts';
import { type Measure, measureWorkings, type Placed, placed, TOLERANCE } from './recheck-measures.ts';
import { heightLine, noSpacing, plain, say, shapeLines, step, widthLine } from './steps.ts';
import type { Cm } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** The steps of an outcome; `at` says where the piece is shaped. */
export function recheckPart(outcome: Recheck, ask: RecheckAsk, at: ShapedAt): Part {
  return { steps: stepsOf(outcome, ask, at), finished: [], pieces: [] };
}

function stepsOf(outcome: Recheck, ask: RecheckAsk, at: ShapedAt): Step[] {
  const kept = placed(ask.piece, ask.now.row);
  switch (outcome.kind) {
    case 'on track':
      return [found('do: knit on as planned', ask, outcome.measures, kept)];
    case 'mend ahead':
      return [
        found(
          outcome.off.length === 0 ? 'do: the count is another' : 'do: off if kept as planned',
          ask,
          outcome.off,
          kept,
        ),
        onward('where: the rest', ask, at, outcome),
      ];
    case 'decide': {
      const { cost, levels } = outcome.goOn;
      const done = outcome.goOn.rest.sections.length === 0;
      const stays = done ? 'do: what is off' : 'do: what stays off';
      return [
        found(cost.length === 0 ? 'do: too few rows are left' : stays, ask, cost, levels),
        onward(done ? 'where: leaving it' : 'where: going on', ask, at, outcome.goOn),
        ripping(outcome.ripBack, ask, at),
      ];
    }
    default:
      return outcome satisfies never;
  }
}

/** The measures as they stand. */
function found(
  said: PhraseName,
  ask: RecheckAsk,
  measures: readonly Measure[],
  levels: readonly Placed[],
): Step {
  const allowed = [
    identity('difference allowed on a length', TOLERANCE.length),
    identity('least difference allowed on a width', TOLERANCE.leastWidth),
  ] as const;
  const [length, width] = allowed;
  return step(ask.piece.name, phrase('where: what it measures'), {
    worked: ask.piece.worked,
    instead: [say(phrase(said)), ...(measures.length === 0 ? [] : [compared(measures)])],
    notes: [
      phrase('note: near enough', { length: length.result, width: width.result }),
      ...(measures.every((m) => m.sure) ? [] : [phrase('note: too near to tell')]),
    ],
    workings: [
      ...measureWorkings(levels, ask.planned, ask.real, ask.shaped.edge),
      ...measures.map(offLine),
      ...allowed,
    ],
  });
}

function identity(name: string, length: Cm): WorkingLine {
  return workOut(name, 'a', { a: quantity(name, length, 'cm') }, { unit: 'cm' });
}

function compared(measures: readonly Measure[]): Instruction {
  return { do: 'compare measures', measures };
}

/** By how much a measure is off, as a figure without a sign. */
function offLine({ of, level, planned, expected, off }: Measure): WorkingLine {
  const [a, b] = [
    quantity(`${of} at the ${level}, as knitted`, expected.expected, 'cm'),
    quantity(`${of} at the ${level}, planned`, planned, 'cm'),
  ];
  return off < 0
    ? workOut(`${of} at the ${level}, short of the plan`, 'b - a', { a, b }, { unit: 'cm' })
    : workOut(`${of} at the ${level}, beyond the plan`, 'a - b', { a, b }, { unit: 'cm' });
}

interface Course {
  readonly rest: Ahead;
  readonly levels: readonly Placed[];
  readonly measures: readonly Measure[];
}

/** Knitting on from a row; `first` is what is done before it. */
function onward(
  where: 'where: the rest' | 'where: going on' | 'where: leaving it' | 'where: ripping back',
  ask: RecheckAsk,
  at: ShapedAt,
  { rest, levels, measures }: Course,
  first: Pick<Step, 'instead' | 'notes' | 'workings'> = { instead: [], notes: [], workings: [] },
): Step {
  const sections = rest.sections.map((section) => sectionOf(section, ask, at));
  const shown = measures.filter((m) => !m.knitted || !m.within);
  const counted = where === 'where: ripping back' ? 'note: rows from there' : 'note: rows from here';
  return step(ask.piece.name, phrase(where), {
    worked: ask.piece.worked,
    instead: [
      ...first.instead,
      ...sections.flatMap((s) => s.instead),
      say(phrase('do: it will then measure')),
      compared(shown.length === 0 ? measures : shown),
    ],
    notes: [
      ...first.notes,
      ...sections.flatMap((s) => s.notes),
      ...(sections.some((s) => s.instead.length > 0) ? [phrase(counted)] : []),
    ],
    workings: [
      ...first.workings,
      ...rest.workings,
      ...sections.flatMap((s) => s.workings),
      ...measureWorkings(levels, ask.planned, ask.real, ask.shaped.edge),
      ...measures.map(offLine),
    ],
  });
}

function sectionOf(section: Ahead['sections'][number], { real, shaped }: RecheckAsk, at: ShapedAt) {
  if (section.kind !== 'spaced') {
    const { why, ways, workings } = noSpacing(section, (count) =>
      widthLine('end of the section', count, real, shaped.edge),
    );
    return { instead: [], notes: [why, ...ways], workings };
  }
  if (section.shaping.length > 0) {
    const instead: Instruction[] = [{ do: 'shape', spaced: section, at }];
    return { instead, notes: [] as Phrase[], workings: shapeLines(section, at) };
  }
  const height = heightLine('length of the plain rows', section.rows, real);
  return {
    instead: section.rows === 0 ? [] : [plain(section.rows, section.from, real)],
    notes: [] as Phrase[],
    workings: [...section.workings, height],
  };
}

function ripping(back: RipBack, ask: RecheckAsk, at: ShapedAt): Step {
  const rows = workOut(
    'rows to rip back',
    'a - b',
    {
      a: quantity('rows knitted', ask.now.row, 'rows'),
      b: quantity('row to rip back to', back.from.row, 'rows'),
    },
    { unit: 'rows' },
  );
  const row = quantity('row to rip back to', back.from.row, 'rows');
  const gaps = { rows: rows.result, row };
  const again = back.to === 'the start, with another count';
  const how = !again
    ? 'do: rip back to the row'
    : back.rows === 0
      ? 'do: begin again'
      : 'do: rip back and begin again';
  const begin = workOut(
    'stitches after ripping back',
    'a',
    { a: quantity('stitches after ripping back', back.from.stitches, 'stitches') },
    { unit: 'stitches' },
  );
  return onward('where: ripping back', ask, at, back, {
    instead: [say(phrase(how, gaps)), { do: 'begin with', stitches: back.from.stitches }],
    notes: back.to === 'within a shaped section' ? [phrase('note: count after ripping back')] : [],
    workings: [rows, begin],
  });
}
