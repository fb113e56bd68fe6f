/**
 * A sloped shoulder in steps, by short rows or by stepped bind-offs.
 * Rows = drop × rows/cm to the nearest even number, one step every two rows, the shoulder's stitches divided between
 * the steps so that they differ by at most one. The drop is that of the line through the middles of the steps; from
 * the outermost step to the innermost it is two rows less. Common practice; so 'Sweater shoulders: transform stair
 * steps to short rows' (techknitting.blogspot.com, 2012).
 */
import { rowsFor } from './gauge.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { layWedge, type Wedge } from './wedge.ts';
import type { Rates, WedgeAsk } from './wedge-base.ts';
import type { Direction } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

export interface ShoulderAsk {
  /** Stepped bind-offs are knitted bottom-up only. */
  readonly how: 'short rows' | 'bind-offs';
  readonly direction: Direction;
  /** From the neck point to the armhole edge. */
  readonly drop: Cm;
  readonly gauge: Rates;
  readonly shoulder: Stitches;
  /** Both shoulders on one needle with the neck between them, or one with its armhole edge on that side. */
  readonly on: { readonly sides: 'both'; readonly neck: Stitches } | { readonly sides: 'start' | 'end' };
  /** Where the larger steps lie; outermost where nothing is said. */
  readonly larger?: 'outermost' | 'innermost';
}

/** Bind off so many stitches where this row begins. */
export interface StepOff {
  /** Counted from 1, the row of the first step. */
  readonly row: Rows;
  readonly side: 'start' | 'end';
  readonly stitches: Stitches;
}

interface Steps {
  /** Drop in rows, two to a step. */
  readonly rows: Rows;
  readonly asked: Cm;
  readonly drop: Cm;
  /** From the armhole edge to the neck. */
  readonly steps: readonly Stitches[];
  /** Shoulder stitches still worked after each step, from the armhole edge. */
  readonly remaining: readonly Stitches[];
  readonly workings: readonly WorkingLine[];
}

export type ShoulderSlope =
  | ({ readonly kind: 'short-row shoulder'; readonly wedge: Wedge } & Steps)
  | ({ readonly kind: 'stepped shoulder'; readonly bindOffs: readonly StepOff[] } & Steps);

/** Fewer than two steps make no slope. */
export interface NoSlope {
  readonly kind: 'too flat';
  readonly drop: Cm;
  readonly alternatives: readonly ShoulderAlternative[];
  readonly workings: readonly WorkingLine[];
}

export interface TooManySteps {
  readonly kind: 'too many steps';
  readonly asked: number;
  readonly most: number;
  readonly alternatives: readonly ShoulderAlternative[];
  readonly workings: readonly WorkingLine[];
}

/** A shoulder that is knitted first has nothing to bind off. */
export interface NoBindOff {
  readonly kind: 'nothing to bind off';
  readonly alternatives: readonly ShoulderAlternative[];
}

export interface ShoulderAlternative {
  readonly way: 'two steps' | 'straight across' | 'a step for each stitch' | 'short rows';
  /** None where the shoulder is not sloped. */
  readonly slope: ShoulderSlope | null;
}

/** The slope in steps, or why there is none, with what can be done instead. */
export function shoulderSlope(ask: ShoulderAsk): ShoulderSlope | NoSlope | TooManySteps | NoBindOff {
  if (ask.how === 'bind-offs' && ask.direction === 'down') {
    const other = shoulderSlope({ ...ask, how: 'short rows' });
    const works = other.kind === 'short-row shoulder' ? [{ way: 'short rows', slope: other } as const] : [];
    return { kind: 'nothing to bind off', alternatives: works };
  }
  const workings = explainRows(ask);
  const count = stepsOf(ask);
  if (count < 2) {
    const two = ask.shoulder < 2 ? [] : [{ way: 'two steps', slope: slopeIn(withSteps(ask, 2)) } as const];
    const alternatives = [...two, { way: 'straight across', slope: null } as const];
    return { kind: 'too flat', drop: ask.drop, alternatives, workings };
  }
  if (count > ask.shoulder) {
    const fewer = ask.shoulder < 2 ? null : slopeIn(withSteps(ask, ask.shoulder));
    const way = fewer === null ? 'straight across' : 'a step for each stitch';
    return {
      kind: 'too many steps',
      asked: count,
      most: ask.shoulder,
      alternatives: [{ way, slope: fewer }],
      workings,
    };
  }
  return slopeIn(ask);
}

function stepsOf({ drop, gauge }: ShoulderAsk): number {
  return rowsFor(drop, gauge.rowsPerCm, 'even') / 2;
}

function withSteps(ask: ShoulderAsk, count: number): ShoulderAsk {
  return { ...ask, drop: cm((2 * count) / ask.gauge.rowsPerCm) };
}

function slopeIn(ask: ShoulderAsk): ShoulderSlope {
  const count = stepsOf(ask);
  const short = Math.floor(ask.shoulder / count);
  const longer = ask.shoulder - short * count;
  const isLonger = (i: number) => (ask.larger === 'innermost' ? i >= count - longer : i < longer);
  const steps = Array.from({ length: count }, (_, i) => stitches(isLonger(i) ? short + 1 : short));
  const common = {
    rows: rows(2 * count),
    asked: ask.drop,
    drop: cm((2 * count) / ask.gauge.rowsPerCm),
    steps,
    remaining: steps.map((_, i) => stitches(ask.shoulder - total(steps.slice(0, i + 1)))),
  };
  const workings = [...explainRows(ask), ...explainSteps(ask, steps)];
  if (ask.how === 'bind-offs')
    return { kind: 'stepped shoulder', bindOffs: bindOffs(ask, steps), ...common, workings };
  const wedge = wedgeFor(ask, steps);
  return { kind: 'short-row shoulder', wedge, ...common, workings: [...workings, ...wedge.workings] };
}

/** On both shoulders the second follows on the row after the first. */
function bindOffs({ on }: ShoulderAsk, steps: readonly Stitches[]): StepOff[] {
  const sides = on.sides === 'both' ? (['start', 'end'] as const) : ([on.sides] as const);
  return steps.flatMap((count, i) =>
    sides.map((side, k) => ({ row: rows(2 * i + k + 1), side, stitches: count })),
  );
}

/**
 * The innermost step is as high as what lies beyond it, so that the last turn stands before it. Bottom-up the sloped
 * edge comes last and the short rows shorten; top-down it comes first and they lengthen.
 */
function wedgeFor(ask: ShoulderAsk, steps: readonly Stitches[]): Wedge {
  const innermost = steps.at(-1) ?? 0;
  const [needle, flat] =
    ask.on.sides === 'both'
      ? [2 * ask.shoulder + ask.on.neck, 2 * innermost + ask.on.neck]
      : [ask.shoulder, innermost];
  const wedge: WedgeAsk = {
    purpose: 'shoulder slope',
    place: { level: 'shoulder', rows: rows(0), point: 'begins' },
    worked: 'flat',
    sides: ask.on.sides,
    order: ask.direction === 'up' ? 'shortening' : 'lengthening',
    depth: cm((2 * (steps.length - 1)) / ask.gauge.rowsPerCm),
    gauge: ask.gauge,
    needle: stitches(needle),
    span: { start: 0, stitches: stitches(needle) },
    inset: stitches(0),
    flat: stitches(flat),
    outer: 'step',
    counted: 'from the sides',
    ...(ask.larger === undefined ? {} : { larger: ask.larger }),
  };
  const found = layWedge(wedge);
  if (found.kind !== 'wedge')
    throw new Error(`a shoulder in ${steps.length} steps was refused: ${found.kind}`);
  return found;
}

function total(counts: readonly number[]): number {
  return counts.reduce((sum, n) => sum + n, 0);
}

function explainRows({ drop, gauge }: ShoulderAsk): [WorkingLine, WorkingLine, WorkingLine] {
  const rate = quantity('rows', gauge.rowsPerCm, 'rows/cm');
  const slope = workOut(
    'rows of the slope',
    'a * b',
    { a: quantity('drop of the shoulder', drop, 'cm'), b: rate },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const steps = workOut('steps, one every two rows', 'a / 2', { a: slope.result }, { unit: 'times' });
  return [slope, steps, workOut('drop as knitted', 'a / b', { a: slope.result, b: rate }, { unit: 'cm' })];
}

function explainSteps(ask: ShoulderAsk, steps: readonly Stitches[]): WorkingLine[] {
  const [, count] = explainRows(ask);
  const shoulder = quantity('stitches of the shoulder', ask.shoulder, 'stitches');
  const short = workOut(
    'stitches of a smaller step',
    'a / b',
    { a: shoulder, b: count.result },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const given = { a: shoulder, b: short.result, c: count.result };
  const larger = workOut('larger steps', 'a - b * c', given, { unit: 'times' });
  const long = workOut('stitches of a larger step', 'a + 1', { a: short.result }, { unit: 'stitches' });
  const lines = [short, larger, ...(larger.result.value > 0 ? [long] : [])];
  let left = shoulder;
  for (const [i, step] of steps.entries()) {
    const taken = { a: left, b: quantity(`step ${i + 1}`, step, 'stitches') };
    const line = workOut(`shoulder stitches left after step ${i + 1}`, 'a - b', taken, { unit: 'stitches' });
    lines.push(line);
    left = line.result;
  }
  return lines;
}
