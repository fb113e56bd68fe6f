/**
 * A neck in a flat front or back. A round one: the centre bound off in a right-side row, then each side by itself, first in
 * steps bound off at the neck edge, then by decreases on right-side rows, then straight to the shoulder.
 * The part that the first row knits first has its neck edge at its left, so its steps lie in even rows; the other
 * part has it at its right, and its steps lie in odd rows. Both decrease in the same rows.
 * A V begins with no bind-off, or with the one stitch of its point, and decreases at both edges spread over all its rows.
 * Common practice of the trade, from memory, where the knitter says nothing: about a third of the neck is the centre;
 * steps of 3 and 2 where a side loses 8 or more, of 2 where it loses 4 or more.
 */
import { countFor } from './count.ts';
import { decreaseLine } from './decrease-line.ts';
import { edgeLength } from './edge-length.ts';
import { boundOffAt, countAfter, type EdgeEvent, spacedAt, together } from './edge-shaping.ts';
import { ANY_COUNT, type Gauge, heightOf } from './gauge.ts';
import type { Spaced } from './spacing.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface NeckAsk {
  /** On the needle where the neck begins: both shoulders and the neck. */
  readonly stitches: Stitches;
  readonly width: Cm;
  /** From the row of the centre bind-off straight up to the shoulder, in an even number of rows. */
  readonly depth: Cm;
  readonly gauge: Gauge;
  /** Round where nothing is said; a V has neither centre nor steps of its own. */
  readonly shape?: NeckOutline;
  readonly centre?: Stitches;
  /** Bound off at each neck edge after the centre, two rows apart. */
  readonly steps?: readonly Stitches[];
}

export type NeckOutline = 'round' | 'V';

export interface NeckSide {
  /** Stitches of this side after the centre has been bound off. */
  readonly from: Stitches;
  /** At its neck edge; `after` counts this side alone. */
  readonly events: readonly EdgeEvent[];
}

export interface Neck {
  readonly kind: 'neck';
  readonly stitches: Stitches;
  readonly width: Cm;
  readonly rows: Rows;
  readonly depth: Cm;
  /** Bound off in row 1, after the stitches of the first side. */
  readonly centre: Stitches;
  readonly steps: readonly Stitches[];
  /** At each neck edge. */
  readonly decreases: Spaced;
  readonly straight: Rows;
  /** The part knitted first by a right-side row, and the one knitted last. */
  readonly sides: { readonly first: NeckSide; readonly last: NeckSide };
  readonly shoulder: Stitches;
  /** Length of the neck edge from shoulder to shoulder. */
  readonly edge: Cm;
  readonly workings: readonly WorkingLine[];
}

/** Why a neck cannot be shaped as asked. */
export type NeckHindrance =
  /** The neck takes all the stitches. */
  | { readonly kind: 'no shoulders left'; readonly neck: Stitches; readonly stitches: Stitches }
  /** Neck and centre must be both even or both odd. */
  | { readonly kind: 'centre of the wrong parity'; readonly centre: Stitches; readonly neck: Stitches }
  /** Centre and steps take more stitches than the neck has. */
  | { readonly kind: 'shaping exceeds the neck'; readonly taken: Stitches; readonly neck: Stitches }
  | { readonly kind: 'too few rows'; readonly needed: Rows; readonly available: Rows };

/** The neck as asked for, or what stands against it. */
export function shapeNeck(ask: NeckAsk): Neck | NeckHindrance {
  const parity = ask.stitches % 2 === 0 ? 'even' : 'odd';
  const counted = countFor('neck', ask.width, ask.gauge, { ...ANY_COUNT, parity });
  const neck = counted.stitches;
  if (neck > ask.stitches - 2) return { kind: 'no shoulders left', neck, stitches: ask.stitches };
  const height = workOut(
    'rows of the neck',
    'a * b',
    {
      a: quantity('neck depth', ask.depth, 'cm'),
      b: quantity('rows', ask.gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const form = formOf(ask, neck, height.result.value);
  if ((neck - form.centre) % 2 !== 0)
    return { kind: 'centre of the wrong parity', centre: form.centre, neck };
  const stepped = total(form.steps);
  const taken = form.centre + 2 * stepped;
  if (taken > neck) return { kind: 'shaping exceeds the neck', taken: stitches(taken), neck };
  const decreased = (neck - taken) / 2;
  const needed = rowsBefore(form.steps) + decreased;
  if (needed > height.result.value)
    return { kind: 'too few rows', needed: rows(needed), available: rows(height.result.value) };
  return build(ask, neck, form, [...counted.workings, height, ...form.workings]);
}

interface Form {
  readonly centre: Stitches;
  readonly steps: readonly Stitches[];
  readonly rows: Rows;
  readonly workings: readonly WorkingLine[];
}

/** The row of the centre and the one back, then two rows a step. */
function rowsBefore(steps: readonly Stitches[]): number {
  return 2 + 2 * steps.length;
}

function total(steps: readonly Stitches[]): number {
  return steps.reduce((sum, count) => sum + count, 0);
}

function formOf(ask: NeckAsk, neck: Stitches, height: number): Form {
  if (ask.shape === 'V') return { centre: stitches(neck % 2), steps: [], rows: rows(height), workings: [] };
  const third = workOut(
    'usual centre of the neck',
    'a / 3',
    { a: quantity('stitches of the neck', neck, 'stitches') },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: 2, plus: neck % 2 } },
  );
  const centre = ask.centre ?? stitches(third.result.value);
  const steps = ask.steps ?? usualSteps((neck - centre) / 2, height);
  if (ask.centre !== undefined) return { centre, steps, rows: rows(height), workings: [] };
  const least = leastCentre(neck, steps, height);
  return least.result.value > third.result.value
    ? { centre: stitches(least.result.value), steps, rows: rows(height), workings: [least] }
    : { centre, steps, rows: rows(height), workings: [third] };
}

/** Steps are kept to the lower half of the neck. */
function usualSteps(side: number, height: number): readonly Stitches[] {
  const liked = side >= 8 ? [3, 2] : side >= 4 ? [2] : [];
  return liked.slice(0, Math.max(0, Math.floor(height / 4) - 1)).map(stitches);
}

/** The least centre that leaves no more decreases than there are right-side rows. */
function leastCentre(neck: Stitches, steps: readonly Stitches[], height: number): WorkingLine {
  const room = Math.max(0, height - rowsBefore(steps)) / 2;
  return workOut(
    'least centre for the rows there are',
    'a - 2 * (b + c)',
    {
      a: quantity('stitches of the neck', neck, 'stitches'),
      b: quantity('stitches bound off in steps at each side', total(steps), 'stitches'),
      c: quantity('right-side rows after the steps', room, 'rows'),
    },
    { unit: 'stitches' },
  );
}

function build(ask: NeckAsk, neck: Stitches, form: Form, before: readonly WorkingLine[]): Neck {
  const from = stitches((ask.stitches - form.centre) / 2);
  const shoulder = stitches((ask.stitches - neck) / 2);
  const after = rowsBefore(form.steps);
  const last = boundOffAt('right', from, form.steps, 3);
  const decreases = decreaseLine({
    from: countAfter(from, last),
    to: shoulder,
    perRow: 1,
    room: form.rows - after,
    pace: ask.shape === 'V' ? 'spread' : 'quick',
  });
  const events = together(from, last, spacedAt('right', decreases, after));
  const first = together(from, boundOffAt('left', from, form.steps, 2), spacedAt('left', decreases, after));
  const side = edgeLength('side of the neck', events, form.rows, ask.gauge);
  const straight = rows(form.rows - (events.at(-1)?.row ?? 1));
  const lines = explain(ask, neck, form, side.length, straight);
  return {
    kind: 'neck',
    stitches: neck,
    width: cm(lines.width.result.value),
    rows: form.rows,
    depth: heightOf(form.rows, ask.gauge),
    centre: form.centre,
    steps: form.steps,
    decreases,
    straight,
    sides: { first: { from, events: first }, last: { from, events } },
    shoulder,
    edge: cm(lines.edge.result.value),
    workings: [...before, ...lines.counts, ...decreases.workings, ...side.workings, lines.width, lines.edge],
  };
}

function explain(ask: NeckAsk, neck: Stitches, form: Form, sideLength: Cm, straight: Rows) {
  const all = quantity('stitches across', ask.stitches, 'stitches');
  const ofNeck = quantity('stitches of the neck', neck, 'stitches');
  const centre = quantity('stitches of the centre', form.centre, 'stitches');
  const perCm = quantity('stitches', ask.gauge.stitches.perCm, 'stitches/cm');
  const shoulder = workOut(
    'stitches of each shoulder',
    '(a - b) / 2',
    { a: all, b: ofNeck },
    { unit: 'stitches' },
  );
  const side = workOut(
    'stitches of each side after the centre',
    '(a - b) / 2',
    { a: all, b: centre },
    { unit: 'stitches' },
  );
  const decreased = workOut(
    'decreases at each neck edge',
    '(a - b) / 2 - c',
    {
      a: ofNeck,
      b: centre,
      c: quantity('stitches bound off in steps at each side', total(form.steps), 'stitches'),
    },
    { unit: 'times' },
  );
  const depth = workOut(
    'neck depth as knitted',
    'a / b',
    {
      a: quantity('rows of the neck', form.rows, 'rows'),
      b: quantity('rows', ask.gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'cm' },
  );
  const plain = workOut(
    'straight rows to the shoulder',
    'a - b',
    {
      a: quantity('rows of the neck', form.rows, 'rows'),
      b: quantity('last shaping row', form.rows - straight, 'rows'),
    },
    { unit: 'rows' },
  );
  const width = workOut('neck width as knitted', 'a / b', { a: ofNeck, b: perCm }, { unit: 'cm' });
  const edge = workOut(
    'edge of the neck',
    'a / b + 2 * c',
    { a: centre, b: perCm, c: quantity('side of the neck', sideLength, 'cm') },
    { unit: 'cm' },
  );
  return { counts: [shoulder, side, decreased, depth, plain], width, edge };
}
