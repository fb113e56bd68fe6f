/**
 * A set-in cap: from the upper arm to a flat top, its edge as long as the armhole that it is sewn into.
 * The edge agrees when it differs from front and back edge together, plus any ease, by no more than one row's height.
 * A cap is never taller than the armhole is deep. Common practice, where the knitter says nothing: the top is about a
 * quarter of the upper arm wide.
 */

import { type CapShape, searchCap } from './cap-search.ts';
import { decreaseLine } from './decrease-line.ts';
import { edgeLength } from './edge-length.ts';
import { boundOff, countAfter, type EdgeEvent, spacedAt, together } from './edge-shaping.ts';
import { type Gauge, heightOf } from './gauge.ts';
import type { Spaced } from './spacing.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

export interface CapAsk {
  /** Edge stitches included, as on the body. */
  readonly upperArm: Stitches;
  /** Lengths of the armhole edges of front and back. */
  readonly armhole: { readonly front: Cm; readonly back: Cm };
  readonly depth: Cm;
  /** The body's first bind-off at each underarm; the sleeve begins with the same. */
  readonly bindOff: Stitches;
  /** Of the sleeve. */
  readonly gauge: Gauge;
  /** Length by which the cap's edge is to be longer than the armhole's; nothing where left out. */
  readonly ease?: Cm;
  /** Stitches bound off in the last row; about a quarter of the upper arm where left out. */
  readonly top?: Stitches;
}

/** The cap from below, in words of knitting. */
export type CapStage =
  | { readonly stage: 'bind off'; readonly stitches: Stitches }
  /** At the beginning of two rows each, first at the right edge, then at the left. */
  | { readonly stage: 'steps'; readonly stitches: Stitches; readonly times: number }
  | { readonly stage: 'decreases'; readonly spaced: Spaced }
  | { readonly stage: 'top'; readonly stitches: Stitches };

export interface Cap {
  readonly kind: 'cap';
  readonly upperArm: Stitches;
  readonly stages: readonly CapStage[];
  /** Rows up to the final bind-off, which lies in the row after them. */
  readonly rows: Rows;
  readonly height: Cm;
  readonly top: Stitches;
  readonly events: readonly EdgeEvent[];
  readonly edge: Cm;
  readonly wanted: Cm;
  /** Edge less edge wanted: positive where a little is to be eased in, negative where it is to be stretched. */
  readonly difference: Cm;
  /** From the middle of the top towards the back, where the shoulder seam meets the cap. */
  readonly shoulderFromCentre: Cm;
  readonly workings: readonly WorkingLine[];
}

/** Why a cap cannot be shaped as asked. */
export type CapHindrance =
  /** The upper arm less its bind-offs leaves no room for a cap of fast, slow and fast. */
  | { readonly kind: 'nothing left for a cap'; readonly left: number; readonly needed: Stitches }
  /** Upper arm and top must be both even or both odd. */
  | { readonly kind: 'top of the wrong parity'; readonly top: Stitches }
  /** Even the flattest cap has more rows than the armhole is deep. */
  | { readonly kind: 'armhole too shallow'; readonly rows: Rows }
  /** Even the flattest cap has a longer edge. */
  | { readonly kind: 'armhole edge too short'; readonly wanted: Cm; readonly shortest: Cm }
  /** Even a cap as tall as the armhole is deep has a shorter edge: the sleeve is too narrow. */
  | { readonly kind: 'armhole edge too long'; readonly wanted: Cm; readonly longest: Cm }
  /** No division into whole rows comes within one row's height; the nearest differs so much. */
  | { readonly kind: 'no whole rows agree'; readonly wanted: Cm; readonly nearest: Cm };

/** Fewest stitches that a cap loses at each edge above its bind-off: fast, slow and fast, one each. */
const LEAST_LOSS = 3;
/** Fewest stitches of the top. */
const LEAST_TOP = 2;
/** How far the top may leave its usual count to let the edges agree, in the order in which it is tried. */
const TOP_LEEWAY = [0, -2, 2, -4, 4] as const;

/** The cap as asked for, or what stands against it. */
export function shapeCap(ask: CapAsk): Cap | CapHindrance {
  if (ask.top !== undefined && (ask.upperArm - ask.top) % 2 !== 0)
    return { kind: 'top of the wrong parity', top: ask.top };
  const usual = usualTop(ask);
  const most = ask.upperArm - 2 * ask.bindOff - 2 * LEAST_LOSS;
  const tops = (ask.top === undefined ? TOP_LEEWAY.map((by) => usual.result.value + by) : [ask.top]).filter(
    (top) => top >= LEAST_TOP && top <= most,
  );
  if (tops.length === 0) {
    const needed = stitches((ask.top ?? LEAST_TOP) + 2 * LEAST_LOSS);
    return { kind: 'nothing left for a cap', left: ask.upperArm - 2 * ask.bindOff, needed };
  }
  const wanted = edgeWanted(ask);
  const mostRows = 2 * Math.floor((ask.depth * ask.gauge.rows.perCm) / 2 + 1e-9);
  const search = searchCap({
    upperArm: ask.upperArm,
    bindOff: ask.bindOff,
    tops,
    stitchesPerCm: ask.gauge.stitches.perCm,
    rowsPerCm: ask.gauge.rows.perCm,
    wanted: wanted.result.value,
    mostRows,
  });
  if (search.agreeing !== null) return build(ask, search.agreeing, usual, wanted);
  if (search.nearest === null) return { kind: 'armhole too shallow', rows: rows(mostRows) };
  const asked = cm(wanted.result.value);
  if (asked < search.shortestEdge)
    return { kind: 'armhole edge too short', wanted: asked, shortest: cm(search.shortestEdge) };
  if (asked > search.longestEdge)
    return { kind: 'armhole edge too long', wanted: asked, longest: cm(search.longestEdge) };
  return { kind: 'no whole rows agree', wanted: asked, nearest: cm(search.nearest.edge) };
}

function usualTop(ask: CapAsk): WorkingLine {
  return workOut(
    'usual stitches of the top',
    'a / 4',
    { a: quantity('stitches at the upper arm', ask.upperArm, 'stitches') },
    { unit: 'stitches', rounding: { to: 'multiple', multiple: 2, plus: ask.upperArm % 2 } },
  );
}

function edgeWanted(ask: CapAsk): WorkingLine {
  return workOut(
    'edge wanted',
    'a + b + c',
    {
      a: quantity('armhole edge of the front', ask.armhole.front, 'cm'),
      b: quantity('armhole edge of the back', ask.armhole.back, 'cm'),
      c: quantity('ease in the cap', ask.ease ?? 0, 'cm'),
    },
    { unit: 'cm' },
  );
}

function build(ask: CapAsk, shape: CapShape, usual: WorkingLine, wanted: WorkingLine): Cap {
  const { stages, events } = lay(ask, shape);
  const side = edgeLength('side of the cap', events, rows(shape.rows), ask.gauge);
  const lines = explain(ask, shape, side.length, wanted.result);
  return {
    kind: 'cap',
    upperArm: ask.upperArm,
    stages,
    rows: rows(shape.rows),
    height: heightOf(shape.rows, ask.gauge),
    top: stitches(shape.top),
    events,
    edge: cm(lines.edge.result.value),
    wanted: cm(wanted.result.value),
    difference: cm(lines.difference.result.value),
    shoulderFromCentre: cm(lines.shoulder.result.value),
    workings: [
      wanted,
      ...(ask.top === undefined ? [usual] : []),
      lines.loss,
      lines.lost,
      lines.rows,
      ...stageWorkings(stages),
      ...side.workings,
      lines.top,
      lines.edge,
      lines.difference,
      lines.height,
      lines.shoulder,
    ],
  };
}

/** The workings of each spaced stage under its name. */
function stageWorkings(stages: readonly CapStage[]): readonly WorkingLine[] {
  const names = ['bind-off', 'fast, below', 'slow', 'fast, above'];
  return stages.flatMap((stage, i) =>
    stage.stage === 'decreases'
      ? stage.spaced.workings.map((line) => ({ ...line, label: `${names[i]}: ${line.label}` }))
      : [],
  );
}

/** Lays the stages one upon the other. */
function lay(ask: CapAsk, shape: CapShape): Pick<Cap, 'stages' | 'events'> {
  const stages: CapStage[] = [];
  const events: (readonly EdgeEvent[])[] = [];
  let [count, row] = [ask.upperArm, 0];
  const add = (stage: CapStage, shaped: readonly EdgeEvent[], rowsOfStage: number) => {
    stages.push(stage);
    events.push(shaped);
    count = countAfter(count, shaped);
    row += rowsOfStage;
  };
  const steps = (by: number, times: number): void =>
    add(
      { stage: 'steps', stitches: stitches(by), times },
      boundOff(count, Array(times).fill(by), row),
      2 * times,
    );
  const decreases = (times: number, within: number): void => {
    const to = stitches(count - 2 * times);
    const spaced = decreaseLine({ from: count, to, perRow: 2, room: within, pace: 'spread' });
    add({ stage: 'decreases', spaced }, spacedAt('both', spaced, row), within);
  };
  const fast = (times: number): void =>
    shape.step === 1 ? decreases(times, 2 * times) : steps(shape.step, times);

  add({ stage: 'bind off', stitches: ask.bindOff }, boundOff(count, [ask.bindOff], row), 2);
  fast(shape.low);
  decreases(shape.slow, shape.slowRows);
  fast(shape.high);
  stages.push({ stage: 'top', stitches: count });
  return { stages, events: together(ask.upperArm, ...events) };
}

function explain(ask: CapAsk, shape: CapShape, sideLength: Cm, wanted: Quantity) {
  const top = quantity('stitches of the top', shape.top, 'stitches');
  const rowsPerCm = quantity('rows', ask.gauge.rows.perCm, 'rows/cm');
  const loss = workOut(
    'stitches to lose at each edge above the bind-off',
    '(a - b) / 2 - c',
    {
      a: quantity('stitches at the upper arm', ask.upperArm, 'stitches'),
      b: top,
      c: quantity('stitches bound off at each underarm', ask.bindOff, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const steps = {
    b: quantity('fast steps below', shape.low, 'times'),
    c: quantity('fast steps above', shape.high, 'times'),
  };
  const lost = workOut(
    'stitches lost fast, slow and fast',
    'a * (b + c) + d',
    {
      a: quantity('stitches of a fast step', shape.step, 'stitches'),
      ...steps,
      d: quantity('slow decreases', shape.slow, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const capRows = workOut(
    'rows of the cap',
    'a + 2 * (b + c) + d',
    {
      a: quantity('rows of the bind-offs', 2, 'rows'),
      ...steps,
      d: quantity('rows of the slow decreases', shape.slowRows, 'rows'),
    },
    { unit: 'rows' },
  );
  const width = workOut(
    'width of the top',
    'a / b',
    { a: top, b: quantity('stitches', ask.gauge.stitches.perCm, 'stitches/cm') },
    { unit: 'cm' },
  );
  const side = quantity('side of the cap', sideLength, 'cm');
  const edge = workOut('edge of the cap', '2 * a + b', { a: side, b: width.result }, { unit: 'cm' });
  const difference = workOut('cap less armhole', 'a - b', { a: edge.result, b: wanted }, { unit: 'cm' });
  const height = workOut('height of the cap', 'a / b', { a: capRows.result, b: rowsPerCm }, { unit: 'cm' });
  const shoulder = workOut(
    'shoulder seam from the middle of the top, towards the back',
    '(a - b) / 2',
    {
      a: quantity('armhole edge of the front', ask.armhole.front, 'cm'),
      b: quantity('armhole edge of the back', ask.armhole.back, 'cm'),
    },
    { unit: 'cm' },
  );
  return { loss, lost, rows: capRows, top: width, edge, difference, height, shoulder };
}
