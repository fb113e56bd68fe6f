/** Raglan lines as steps of a plan: the parts shaped together, and the neck that remains. */
import type { PhraseName } from './phrases.ts';
import { type Instruction, type Part, phrase, type Step } from './plan.ts';
import type {
  CannotRaglan,
  Raglan,
  RaglanAlternative,
  RaglanAsk,
  RaglanPart,
  RaglanShape,
} from './raglan.ts';
import { byPart, type RaglanFault } from './raglan-shape.ts';
import { raglanOutline } from './shaped.ts';
import { finishedLength, finishedWidth, say, step } from './steps.ts';
import { type Stitches, stitches } from './units.ts';
import { type Impossible, otherwise, statedAs, type WorkedWay } from './ways.ts';
import { ratesOf } from './wedge-base.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** `neckKnown`: whether a neck was asked for, so that what remains is held against it. */
export function raglanPart(
  found: Raglan | CannotRaglan,
  ask: RaglanAsk,
  neckKnown: boolean,
): Part | Impossible {
  const { worked } = ask.gauge;
  if (found.kind === 'cannot') {
    const lies = { piece: 'yoke', where: phrase('where: raglan lines'), worked } as const;
    const reasons = found.faults.map(reason);
    return otherwise(
      lies,
      reasons.map(({ because, gaps, part }) => phrase(because, { ...gaps, part: NAMES[part] })),
      found.alternatives.map((alternative) => way(alternative)),
      reasons.flatMap(({ gaps }) => statedAs(gaps)),
    );
  }
  return {
    steps: [linesStep(found, ask), neckStep(found, ask, neckKnown)],
    finished: [
      finishedLength('yoke depth', null, found.rows, ask.gauge),
      finishedWidth('neck around', null, found.neck.stitches, ask.gauge, 1, 0),
    ],
    pieces: [],
  };
}

const NAMES: Readonly<Record<RaglanPart, string>> = { back: 'Back', front: 'Front', sleeve: 'Sleeve' };

function linesStep(found: RaglanShape, ask: RaglanAsk): Step {
  const { worked } = ask.gauge;
  return step('yoke', phrase('where: raglan lines'), {
    worked,
    instead: [{ do: 'begin with', stitches: allParts(found, 'from') }, shapeRaglan(found)],
    check: phrase('check: yoke depth', { depth: quantity('depth', found.depth, 'cm') }),
    notes: [
      phrase('note: parts at the same time'),
      ...(worked === 'flat' ? [phrase('note: raglan seams narrow the neck')] : []),
    ],
    shaped: { shape: 'raglan', gauge: ratesOf(ask.gauge), after: raglanOutline(found) },
    workings: [...found.workings, ...countLines(found)],
  });
}

function shapeRaglan(found: RaglanShape): Instruction {
  return {
    do: 'shape raglan',
    raglan: {
      direction: found.direction,
      rows: found.rows,
      from: allParts(found, 'from'),
      to: allParts(found, 'to'),
      lines: byPart((part) => found.lines[part].spaced),
      shaping: found.shaping,
    },
  };
}

/** Back, front and both sleeves at the start, or at the end. */
function allParts({ lines }: RaglanShape, at: 'from' | 'to'): Stitches {
  return stitches(lines.back.spaced[at] + lines.front.spaced[at] + 2 * lines.sleeve.spaced[at]);
}

function countLines(found: RaglanShape): WorkingLine[] {
  const of = (at: 'from' | 'to') =>
    workOut(
      at === 'from' ? 'stitches of all parts at the start' : 'stitches of all parts at the end',
      'a + b + 2 * c',
      {
        a: quantity('back', found.lines.back.spaced[at], 'stitches'),
        b: quantity('front', found.lines.front.spaced[at], 'stitches'),
        c: quantity('sleeve', found.lines.sleeve.spaced[at], 'stitches'),
      },
      { unit: 'stitches' },
    );
  const edges = {
    a: quantity('stitches of a part in a shaping row', 2, 'stitches'),
    b: quantity('edges of a part', 2, 'times'),
  };
  return [of('from'), of('to'), workOut('stitches at each edge', 'a / b', edges, { unit: 'stitches' })];
}

function neckStep(found: Raglan, ask: RaglanAsk, neckKnown: boolean): Step {
  const { neck } = found;
  const around = quantity('neck around', neck.around, 'cm');
  const gaps = {
    wanted: quantity('neck wanted', neck.wanted, 'cm'),
    off: quantity('difference', Math.abs(neck.difference), 'cm'),
  };
  const ways = neckKnown ? found.alternatives.map((alternative) => way(alternative)) : [];
  return step('yoke', phrase('where: raglan neck'), {
    worked: ask.gauge.worked,
    instead: [
      say(
        phrase('do: neck as the counts give it', {
          stitches: quantity('stitches at the neck', neck.stitches, 'stitches'),
          around,
        }),
      ),
      ...(neckKnown ? [say(phrase(VERDICTS[neck.verdict], gaps))] : []),
      ...(ways.length === 0
        ? []
        : [
            {
              do: 'choose one' as const,
              ways: ways.map(({ name, instead }) => ({ name, instead })),
            },
          ]),
    ],
    check: phrase('check: neck around', { around }),
    workings: [
      ...found.workings,
      ...countLines(found),
      ...(neckKnown ? statedAs({ off: gaps.off }) : []),
      ...ways.flatMap((w) => w.workings),
    ],
  });
}

const VERDICTS: Readonly<Record<RaglanShape['neck']['verdict'], PhraseName>> = {
  'as wanted': 'note: raglan neck as wanted',
  'too wide': 'note: raglan neck too wide',
  'too narrow': 'note: raglan neck too narrow',
};

function way({ way: name, raglan }: RaglanAlternative): WorkedWay {
  return {
    name: phrase(`way: ${name}`, {
      around: quantity('neck around', raglan.neck.around, 'cm'),
      depth: quantity('depth', raglan.depth, 'cm'),
    }),
    instead: [{ do: 'begin with', stitches: allParts(raglan, 'from') }, shapeRaglan(raglan)],
    workings: [...raglan.workings, ...countLines(raglan)],
  };
}

type Gaps = Parameters<typeof statedAs>[0];

function reason({ part, fault }: RaglanFault): { part: RaglanPart; because: PhraseName; gaps: Gaps } {
  switch (fault.kind) {
    case 'no multiple':
      return {
        part,
        because: 'cannot: part does not divide',
        gaps: { change: quantity(`${part}: stitches to change`, fault.change, 'stitches') },
      };
    case 'too few rows':
      return {
        part,
        because: 'cannot: part has too few rows',
        gaps: {
          needed: quantity(`${part}: shaping rows needed`, fault.needed, 'times'),
          available: quantity(`${part}: rows that may carry them`, fault.available, 'times'),
        },
      };
    case 'neck wider':
      return {
        part,
        because: 'cannot: neck of the part is wider',
        gaps: { by: quantity(`${part}: stitches more at the neck`, fault.by, 'stitches') },
      };
    case 'neck too small':
      return {
        part,
        because: 'cannot: neck of the part is too small',
        gaps: { least: quantity(`${part}: least stitches at the neck`, fault.least, 'stitches') },
      };
    default:
      return fault satisfies never;
  }
}
