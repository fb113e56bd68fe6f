/** Sizes joined as steps: the passages between them, in the order of knitting, and what follows which size. */
import type { BlendAsk, Blended, CannotBlend, Passage } from './blend.ts';
import { boundOff, spacedAt, together } from './edge-shaping.ts';
import { edgeWorkings, scheduleOf, shapedEdges } from './edge-steps.ts';
import { type Gauge, rateAsPrinted } from './gauge.ts';
import { type Pattern, piecesAround } from './pattern.ts';
import {
  type Cannot,
  type Finished,
  type Part,
  type Phrase,
  phrase,
  type ShapedAt,
  type Step,
} from './plan.ts';
import { atEachPlace, finishedWidth, heightLine, noSpacing, plain, say, step, widthLine } from './steps.ts';
import { rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

interface Made {
  readonly pattern: Pattern;
  readonly ask: BlendAsk;
  readonly blended: Blended;
  readonly gauge: Gauge;
}

export function blendPart(pattern: Pattern, ask: BlendAsk, blended: Blended): Part {
  const gauge: Gauge = {
    stitches: rateAsPrinted(pattern.gauge.stitches),
    rows: rateAsPrinted(pattern.gauge.rows),
    worked: pattern.body,
  };
  const [body, across] = blended.passages;
  if (body === undefined || across === undefined) throw new RangeError('sizes are joined by two passages');
  const made = { pattern, ask, blended, gauge };
  const [below, above] = [bodyStep(made, body), armholeStep(made, across)];
  return {
    steps: [...(pattern.direction === 'up' ? [below, above] : [above, below]), restStep(made)],
    finished: finishedOf(made),
    pieces: [],
  };
}

/** From the hip's count to the bust's, or the other way about. */
function bodyStep({ pattern, ask, gauge }: Made, passage: Passage): Step {
  const up = pattern.direction === 'up';
  const round = pattern.body === 'round';
  const at: ShapedAt = round ? 'both sides of both side lines' : 'both edges';
  const section = sectionOf(passage, at, gauge, edgeOf(pattern));
  const height = heightLine('length of this section', passage.rows, gauge);
  return step(round ? 'body' : 'back', phrase(up ? 'where: hem to underarm' : 'where: underarm to hem'), {
    worked: pattern.body,
    pattern: follows(up ? [ask.hip, ask.bust] : [ask.bust, ask.hip]),
    instead: [
      up ? { do: 'cast on', stitches: passage.from } : { do: 'begin with', stitches: passage.from },
      ...section.instead,
    ],
    check: phrase('check: length so far', { length: height.result }),
    notes: [
      ...section.notes,
      phrase('note: edging as printed'),
      ...(round ? [] : [phrase('note: pieces alike')]),
    ],
    workings: [
      same('stitches at the beginning', passage.from),
      ...passage.workings,
      ...section.workings,
      height,
    ],
  });
}

/** From the bust's back to the cross back of the shoulders' size, or the other way about. */
function armholeStep(made: Made, passage: Passage): Step {
  const { pattern, ask, blended, gauge } = made;
  const up = pattern.direction === 'up';
  const shaped = up ? narrowing(made, passage) : widening(made, passage);
  const failed =
    passage.spacing.kind === 'spaced' ? null : sectionOf(passage, 'both edges', gauge, edgeOf(pattern));
  return step('back', phrase('where: armholes'), {
    worked: 'flat',
    pattern: follows(up ? [ask.bust, ask.shoulders] : [ask.shoulders, ask.bust]),
    instead: shaped.instead,
    notes: [
      ...(pattern.body === 'round' ? [phrase('note: back and front apart')] : []),
      phrase('note: front armholes alike'),
      ...(failed?.notes ?? []),
      ...(blended.capToFit ? [phrase('note: fit the cap anew')] : []),
    ],
    workings: [...passage.workings, ...shaped.workings, ...(failed?.workings ?? [])],
  });
}

/** Bind-offs at the underarms, then decreases. */
function narrowing({ blended }: Made, passage: Passage): Pick<Step, 'instead' | 'workings'> {
  const off = blended.size.armhole?.boundOff ?? stitches(0);
  const from = stitches(passage.from + 2 * off);
  if (passage.spacing.kind !== 'spaced')
    return {
      instead: [{ do: 'begin with', stitches: from }],
      workings: [same('stitches of the back', from)],
    };
  const bound = boundOff(from, [off], 0);
  const events = together(from, bound, spacedAt('both', passage.spacing, bound.length));
  const schedule = scheduleOf('both edges', from, events, rows(bound.length + passage.rows));
  return {
    instead: [{ do: 'begin with', stitches: from }, shapedEdges(schedule)],
    workings: edgeWorkings(schedule),
  };
}

/** Increases, then stitches cast on at the underarms. */
function widening({ blended, gauge, pattern }: Made, passage: Passage): Pick<Step, 'instead' | 'workings'> {
  const on = quantity('cast on at each underarm', blended.size.armhole?.boundOff ?? 0, 'stitches');
  const section = sectionOf(passage, 'both edges', gauge, edgeOf(pattern));
  return {
    instead: [
      { do: 'begin with', stitches: passage.from },
      ...section.instead,
      ...(on.value === 0 ? [] : [say(phrase('do: cast on at the underarms', { count: on }))]),
    ],
    workings: [same('stitches at the beginning', passage.from), ...section.workings],
  };
}

/** The sums of the spacing stand with its passage. */
function sectionOf({ spacing }: Passage, at: ShapedAt, gauge: Gauge, edge: number) {
  if (spacing.kind !== 'spaced') {
    const { why, ways, workings } = noSpacing(spacing, (count) =>
      widthLine('end of the section', count, gauge, edge),
    );
    return { instead: [], notes: [why, ...ways], workings };
  }
  if (spacing.shaping.length > 0)
    return {
      instead: [{ do: 'shape' as const, spaced: spacing, at }],
      notes: [],
      workings: atEachPlace(spacing, at),
    };
  return {
    instead: spacing.rows === 0 ? [] : [plain(spacing.rows, spacing.from, gauge)],
    notes: [],
    workings: [heightLine('length of the plain rows', spacing.rows, gauge)],
  };
}

/** Which size everything else follows. */
function restStep({ ask }: Made): Step {
  return step('all', phrase('where: all else'), {
    instead: [
      say(phrase('do: follow the shoulders', { size: ask.shoulders })),
      say(phrase('do: sleeves follow', { size: ask.sleeves })),
    ],
    notes: [phrase('note: joined at the pattern’s gauge')],
  });
}

function finishedOf({ pattern, blended, gauge }: Made): Finished[] {
  const { bust, 'body cast-on': hem, 'cross back': across } = blended.size.counts;
  const [pieces, edge] = [piecesAround(pattern), edgeOf(pattern)];
  return [
    ...(bust === undefined ? [] : [finishedWidth('bust', null, bust, gauge, pieces, edge)]),
    ...(hem === undefined ? [] : [finishedWidth('lower edge', null, hem, gauge, pieces, edge)]),
    ...(across === undefined ? [] : [finishedWidth('cross back', null, across, gauge, 1, edge)]),
  ];
}

function edgeOf({ body, edge }: Pattern): number {
  return body === 'flat' ? edge.body : 0;
}

function follows([from, to]: readonly [string, string]): Phrase {
  return from === to
    ? phrase('pattern: follows the size', { size: from })
    : phrase('pattern: follows the sizes', { from, to });
}

function same(name: string, count: Stitches): WorkingLine {
  return workOut(name, 'a', { a: quantity(name, count, 'stitches') }, { unit: 'stitches' });
}

/** Why sizes cannot be joined. */
export function blendCannot(why: CannotBlend): Omit<Cannot, 'unit'> {
  switch (why.kind) {
    case 'counts missing':
      return {
        kind: 'cannot',
        because: [
          phrase('cannot: counts of a size missing', { size: why.size, places: why.places.join(', ') }),
        ],
        instead: [phrase('instead: answer the open questions')],
        workings: [],
      };
    case 'waist between':
      return {
        kind: 'cannot',
        because: [phrase('cannot: a waist lies between')],
        instead: [phrase('instead: one size for bust and hips')],
        workings: [],
      };
    case 'shoulders wider than the bust': {
      const back = quantity('stitches of the back', why.back, 'stitches');
      const across = quantity('stitches across the shoulders', why.crossBack, 'stitches');
      const fits = why.wideEnough.join(', ');
      return {
        kind: 'cannot',
        because: [phrase('cannot: shoulders wider than the back', { back, across })],
        instead: [
          fits === ''
            ? phrase('instead: smaller shoulders')
            : phrase('instead: a size with a wider back', { sizes: fits }),
        ],
        workings: [workOut('wider by', 'b - a', { a: back, b: across }, { unit: 'stitches' })],
      };
    }
    default:
      return why satisfies never;
  }
}
