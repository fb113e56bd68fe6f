/** Darts that run up and down over the bust points as steps of a plan, in the order of knitting. */
import type { Gauge } from './gauge.ts';
import { type Instruction, type Phrase, phrase, type Step } from './plan.ts';
import { type ShapedPart, spacedOutline } from './shaped.ts';
import type { Spaced } from './spacing.ts';
import { heightLine, say, shaping, step } from './steps.ts';
import { type Rows, rows, stitches } from './units.ts';
import {
  type DartsOutside,
  type NoWidth,
  type RowsTooFew,
  type VerticalDartAsk,
  type VerticalDarts,
  verticalDarts,
} from './vertical-dart.ts';
import { besideSides, type ShapedSides } from './vertical-dart-sides.ts';
import type { Impossible } from './ways.ts';
import type { Direction, Worked } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface FrontDarts {
  readonly kind: 'darts';
  /** Up to the bust point, and beyond it. */
  readonly before: readonly Step[];
  readonly after: readonly Step[];
  /** Stitches that the front has more at its fullest. */
  readonly added: number;
}

export interface FrontDartsAsk extends Omit<VerticalDartAsk, 'widenOver' | 'narrowOver'> {
  readonly worked: Worked;
  readonly direction: Direction;
  /** Edge stitches of a flat front, which its seams swallow. */
  readonly edge: number;
  /** Null where the sides of the body go straight beside the darts. */
  readonly sides: ShapedSides | null;
  /** Rows of each section in the order of knitting; null where the front begins, or goes on, as wide as it is. */
  readonly widen: WorkingLine | null;
  readonly narrow: WorkingLine | null;
}

/** Throws where neither section is asked for. */
export function frontDarts(ask: FrontDartsAsk, gauge: Gauge): FrontDarts | Impossible {
  const [widen, narrow] = [over(ask.widen), over(ask.narrow)];
  const first = widen ?? narrow;
  if (first === null) throw new RangeError('darts need rows in which the front widens or narrows');
  const found = verticalDarts({ ...ask, widenOver: first, narrowOver: narrow });
  if (found.kind !== 'vertical darts') return cannot(found, gauge, ask.edge);
  const own = spacingLines(found);
  const common = found.workings.filter((line) => !own.includes(line) && line.label !== FROM_SIDE);
  const sides = sidesOf(found, ask);
  const wide = workOut(
    'stitches of the front at its fullest',
    'a + b',
    {
      a: quantity('stitches of the front', ask.front, 'stitches'),
      b: quantity('stitches added', found.added, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const beside = besideSides(found.added, ask, wide);
  const markers = say(phrase('do: hang dart markers', { fromSide: sides.result }));
  const lines = [...common, sides, wide, ...beside.workings];
  const before =
    ask.widen === null
      ? [begunWide(found, ask, wide, lines)]
      : [
          {
            ...widened(
              found,
              ask,
              { section: ask.widen, first: [markers], lines, notes: [...beside.start, beside.counts] },
              wide,
              gauge,
            ),
            shaped: dartsShape(found.widen, ask, sides.result.value),
          },
        ];
  // Each shaping row sets one stitch between the side and its dart line.
  const widest = sides.result.value + (ask.widen === null ? 0 : found.widen.shaping.length);
  const later =
    ask.widen === null
      ? { first: [markers], notes: [...beside.start, beside.counts] }
      : { first: [], notes: [beside.counts] };
  const after =
    found.narrow === null || ask.narrow === null
      ? []
      : [
          {
            ...narrowed(found, ask, { section: ask.narrow, ...later, lines }, gauge),
            shaped: dartsShape(found.narrow, ask, widest),
          },
        ];
  return { kind: 'darts', before, after, added: found.added };
}

function over(line: WorkingLine | null): Rows | null {
  return line === null ? null : rows(line.result.value);
}

function spacingLines({ widen, narrow }: VerticalDarts): readonly WorkingLine[] {
  return [...widen.workings, ...(narrow?.workings ?? [])];
}

/** From the side to the dart line: of the front as it is where the darts begin. */
function sidesOf(found: VerticalDarts, ask: FrontDartsAsk): WorkingLine {
  const narrow = found.workings.find(({ label }) => label === FROM_SIDE);
  if (ask.widen !== null && narrow !== undefined) return narrow;
  const given = {
    a: quantity('stitches of the front at its fullest', ask.front + found.added, 'stitches'),
    b: quantity('from bust point to bust point', ask.bustSpan, 'cm'),
    c: quantity('stitches', ask.gauge.stitchesPerCm, 'stitches/cm'),
  };
  return workOut(FROM_SIDE, '(a - b * c) / 2', given, {
    unit: 'stitches',
    rounding: { to: 'whole down' },
  });
}

function dartsShape(spaced: Spaced, ask: FrontDartsAsk, fromSide: number): ShapedPart {
  const { direction } = ask;
  const after = { direction, spaced: spacedOutline(spaced), fromSide: stitches(fromSide) };
  return { shape: 'front darts', gauge: ask.gauge, after };
}

const FROM_SIDE = 'stitches from the side to the dart';
const AT = 'both sides of both dart lines';

/** The stitches are there from the beginning. */
function begunWide(
  found: VerticalDarts,
  ask: FrontDartsAsk,
  wide: WorkingLine,
  lines: readonly WorkingLine[],
): Step {
  const added = quantity('stitches added', found.added, 'stitches');
  const begun = quantity('stitches of the front where it begins', ask.sides?.first ?? ask.front, 'stitches');
  const front =
    ask.sides === null
      ? wide
      : workOut('stitches to begin the front with', 'a + b', { a: begun, b: added }, { unit: 'stitches' });
  return step('front', phrase('where: more stitches for the front'), {
    worked: ask.worked,
    instead: [say(phrase('do: cast on more for the front', { added, front: front.result }))],
    check: phrase('check: front is wider', { width: quantity('width added', found.width, 'cm') }),
    notes: backNote(ask),
    workings: [...lines, front],
  });
}

/** Shaped sides change the back too. */
function backNote({ sides }: FrontDartsAsk): Phrase[] {
  return sides === null ? [phrase('note: back stays as it is')] : [];
}

/** What a section of the darts is told with. */
interface Told {
  readonly section: WorkingLine;
  readonly first: readonly Instruction[];
  readonly lines: readonly WorkingLine[];
  readonly notes: readonly Phrase[];
}

function widened(
  found: VerticalDarts,
  ask: FrontDartsAsk,
  { section, first, lines, notes }: Told,
  wide: WorkingLine,
  gauge: Gauge,
): Step {
  const height = heightLine('length of this section', section.result.value, gauge);
  const made = shaping(found.widen, AT, gauge, 0);
  const added = quantity('stitches added', found.added, 'stitches');
  const kept =
    ask.sides === null
      ? phrase('note: front keeps its stitches', { front: wide.result })
      : phrase('note: front keeps the stitches of the darts', { added });
  return step('front', phrase('where: widen to the bust'), {
    worked: ask.worked,
    instead: [...first, say(widenOver(section, height, ask)), ...made.instead],
    check: phrase('check: front is wider', { width: quantity('width added', found.width, 'cm') }),
    notes: [...notes, ...backNote(ask), ...(found.narrow === null ? [kept] : [])],
    workings: [...(ask.narrow === null ? [] : [ask.narrow]), section, height, ...lines, ...made.workings],
  });
}

function narrowed(
  { narrow, added }: VerticalDarts,
  ask: FrontDartsAsk,
  { section, first, lines, notes }: Told,
  gauge: Gauge,
): Omit<Step, 'shaped'> {
  const height = heightLine('length of this section', section.result.value, gauge);
  const made = narrow === null ? { instead: [], workings: [] } : shaping(narrow, AT, gauge, 0);
  const back =
    ask.sides === null
      ? phrase('note: front is back to the pattern', {
          front: quantity('stitches of the front', ask.front, 'stitches'),
        })
      : phrase('note: stitches of the darts are gone', {
          added: quantity('stitches added', added, 'stitches'),
        });
  return step('front', phrase('where: narrow from the bust'), {
    worked: ask.worked,
    instead: [...first, say(narrowOver(section, height, ask)), ...made.instead],
    notes: [...notes, back],
    workings: [section, height, ...lines, ...made.workings],
  });
}

/** Up, the bust point lies as many rows before the underarm as the front narrows over. */
function widenOver(section: WorkingLine, height: WorkingLine, { direction, narrow }: FrontDartsAsk): Phrase {
  const gaps = { rows: section.result, height: height.result };
  if (direction === 'down' || narrow === null) return phrase('do: widen down to the bust point', gaps);
  return phrase('do: widen up to the bust point', { ...gaps, below: narrow.result });
}

function narrowOver(section: WorkingLine, height: WorkingLine, { direction }: FrontDartsAsk): Phrase {
  const gaps = { rows: section.result, height: height.result };
  return phrase(direction === 'up' ? 'do: narrow up to the underarm' : 'do: narrow down to the waist', gaps);
}

function cannot(found: NoWidth | DartsOutside | RowsTooFew, gauge: Gauge, edge: number): Impossible {
  switch (found.kind) {
    case 'not needed':
      return refused(
        [phrase('cannot: no width needed', { width: quantity('width', found.width, 'cm') })],
        [phrase('instead: no bust shaping')],
        found.workings,
      );
    case 'darts outside the front':
      return refused(
        [
          phrase('cannot: darts outside the front', {
            span: quantity('stitches between the bust points', found.span, 'stitches'),
            front: quantity('stitches of the front', found.front, 'stitches'),
          }),
        ],
        [phrase('instead: change the figures')],
        found.workings,
      );
    case 'too few rows': {
      const { notes, workings } = shaping(found, AT, gauge, edge);
      return refused(notes.slice(0, 1), notes.slice(1), [...found.workings, ...workings]);
    }
    default:
      return found satisfies never;
  }
}

function refused(
  because: readonly Phrase[],
  instead: readonly Phrase[],
  workings: readonly WorkingLine[],
): Impossible {
  return { kind: 'cannot', because, instead, workings };
}
