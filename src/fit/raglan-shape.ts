/**
 * Raglan lines between back, front and two sleeves. Each part is shaped at both its edges, at its own rate over the
 * same rows; where every row may carry shaping, a line may be compound: faster beside the underarm, slower at the neck.
 * Depth is measured straight up from the underarm to the neck.
 */
import { type EdgeLength, edgeLength } from './edge-length.ts';
import { changeOf, type EdgeEvent, spacedAt } from './edge-shaping.ts';
import type { Gauge } from './gauge.ts';
import { type Carriers, type NoMultiple, type Spaced, space, type TooFewRows } from './spacing.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import type { Direction } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** The sleeve stands for both sleeves. */
export const RAGLAN_PARTS = ['back', 'front', 'sleeve'] as const;
export type RaglanPart = (typeof RAGLAN_PARTS)[number];
export type ByPart<T> = Readonly<Record<RaglanPart, T>>;

export interface RaglanAsk {
  readonly direction: Direction;
  readonly gauge: Gauge;
  readonly depth: Cm;
  /** Of one sleeve, one back, one front; the stitches set aside at the underarms are not among them. */
  readonly parts: ByPart<{ readonly underarm: Stitches; readonly neck: Stitches }>;
  readonly carriers: Carriers;
  /** Plain rows beside the underarm. */
  readonly plain: Rows;
  /** Length around the neck stitches. */
  readonly neckWanted: Cm;
}

export interface RaglanLine {
  readonly spaced: Spaced;
  /** At both edges of the part; `after` counts this part alone. */
  readonly events: readonly EdgeEvent[];
  /** Length of the part's edge along its raglan line. */
  readonly edge: Cm;
}

/** One row with shaping: stitches gained or lost in each part, and all stitches after it, both sleeves counted. */
export interface RaglanRow {
  readonly row: Rows;
  readonly change: ByPart<number>;
  readonly after: Stitches;
}

export interface NeckLeft {
  readonly stitches: Stitches;
  readonly around: Cm;
  readonly wanted: Cm;
  readonly difference: Cm;
  /** As wanted: off by less than two stitches, the least by which one part can change. */
  readonly verdict: 'as wanted' | 'too wide' | 'too narrow';
}

export interface RaglanShape {
  readonly kind: 'raglan';
  readonly direction: Direction;
  readonly rows: Rows;
  readonly depth: Cm;
  readonly lines: ByPart<RaglanLine>;
  readonly shaping: readonly RaglanRow[];
  readonly neck: NeckLeft;
  readonly workings: readonly WorkingLine[];
}

/** The neck has more stitches than the underarm: a raglan line only narrows towards the neck. */
export interface NeckWider {
  readonly kind: 'neck wider';
  readonly by: Stitches;
}

/** A part is decreased at both edges, two stitches into one at each: it keeps two stitches at least. */
export interface NeckTooSmall {
  readonly kind: 'neck too small';
  readonly least: Stitches;
}

/** What stands against one part. */
export interface RaglanFault {
  readonly part: RaglanPart;
  readonly fault: NoMultiple | TooFewRows | NeckWider | NeckTooSmall;
}

export const LEAST_NECK = stitches(2);

export interface RaglanFaults {
  readonly kind: 'cannot';
  readonly faults: readonly RaglanFault[];
}

/** The raglan as asked for, or all that stands against it. */
export function shapeRaglan(ask: RaglanAsk): RaglanShape | RaglanFaults {
  const height = workOut(
    'rows of the yoke',
    'a * b',
    {
      a: quantity('yoke depth', ask.depth, 'cm'),
      b: quantity('rows', ask.gauge.rows.perCm, 'rows/cm'),
    },
    { unit: 'rows', rounding: { to: ask.gauge.worked === 'flat' ? 'even' : 'whole' } },
  );
  const found = byPart((part) => spacePart(ask, part, rows(height.result.value)));
  if (allSpaced(found)) return build(ask, height, found);
  const faults = RAGLAN_PARTS.flatMap((part) => {
    const fault = found[part];
    return fault.kind === 'spaced' ? [] : [{ part, fault }];
  });
  return { kind: 'cannot', faults };
}

function allSpaced(found: ByPart<Spaced | RaglanFault['fault']>): found is ByPart<Spaced> {
  return RAGLAN_PARTS.every((part) => found[part].kind === 'spaced');
}

/** The same made for each part. */
export function byPart<T>(make: (part: RaglanPart) => T): ByPart<T> {
  return { back: make('back'), front: make('front'), sleeve: make('sleeve') };
}

function spacePart(ask: RaglanAsk, part: RaglanPart, length: Rows): Spaced | RaglanFault['fault'] {
  const { underarm, neck } = ask.parts[part];
  if (neck > underarm) return { kind: 'neck wider', by: stitches(neck - underarm) };
  if (neck < LEAST_NECK && neck < underarm) return { kind: 'neck too small', least: LEAST_NECK };
  const up = ask.direction === 'up';
  return space({
    rows: length,
    from: up ? underarm : neck,
    to: up ? neck : underarm,
    perRow: 2,
    carriers: ask.carriers,
    lead: up ? ask.plain : rows(0),
    trail: up ? rows(0) : ask.plain,
    order: 'grouped',
    stitchesPerCm: ask.gauge.stitches.perCm,
  });
}

function build(ask: RaglanAsk, height: WorkingLine, spaced: ByPart<Spaced>): RaglanShape {
  const events = byPart((part) => spacedAt('both', spaced[part], 0));
  const edges = byPart((part) =>
    edgeLength(`raglan edge of the ${part}`, events[part], rows(height.result.value), ask.gauge),
  );
  const depth = workOut(
    'yoke depth as knitted',
    'a / b',
    { a: height.result, b: quantity('rows', ask.gauge.rows.perCm, 'rows/cm') },
    { unit: 'cm' },
  );
  const neck = neckLeft(ask);
  return {
    kind: 'raglan',
    direction: ask.direction,
    rows: rows(height.result.value),
    depth: cm(depth.result.value),
    lines: byPart((part) => ({ spaced: spaced[part], events: events[part], edge: edges[part].length })),
    shaping: joinRows(ask, events),
    neck: neck.left,
    workings: [height, depth, ...lineWorkings(spaced, edges), ...neck.workings],
  };
}

function lineWorkings(spaced: ByPart<Spaced>, edges: ByPart<EdgeLength>): readonly WorkingLine[] {
  return RAGLAN_PARTS.flatMap((part) => [
    ...spaced[part].workings.map((line) => ({ ...line, label: `${part}: ${line.label}` })),
    ...edges[part].workings,
  ]);
}

/** The rows of all parts in one list. */
function joinRows(ask: RaglanAsk, events: ByPart<readonly EdgeEvent[]>): readonly RaglanRow[] {
  const start = ask.direction === 'up' ? 'underarm' : 'neck';
  let count = allRound(byPart((part) => ask.parts[part][start]));
  const shaped = new Set(RAGLAN_PARTS.flatMap((part) => events[part].map((event) => event.row)));
  return [...shaped]
    .sort((a, b) => a - b)
    .map((row) => {
      const change = byPart((part) => {
        const event = events[part].find((candidate) => candidate.row === row);
        return event === undefined ? 0 : changeOf(event);
      });
      count += allRound(change);
      return { row, change, after: stitches(count) };
    });
}

/** Back, front and both sleeves. */
function allRound(counts: ByPart<number>): number {
  return counts.back + counts.front + 2 * counts.sleeve;
}

function neckLeft(ask: RaglanAsk): { left: NeckLeft; workings: readonly WorkingLine[] } {
  const of = (part: RaglanPart) => quantity(`neck stitches of the ${part}`, ask.parts[part].neck, 'stitches');
  const left = workOut(
    'stitches at the neck',
    'a + b + 2 * c',
    { a: of('back'), b: of('front'), c: of('sleeve') },
    { unit: 'stitches' },
  );
  const perCm = quantity('stitches', ask.gauge.stitches.perCm, 'stitches/cm');
  const around = workOut('neck around', 'a / b', { a: left.result, b: perCm }, { unit: 'cm' });
  const difference = workOut(
    'neck less neck wanted',
    'a - b',
    { a: around.result, b: quantity('neck wanted', ask.neckWanted, 'cm') },
    { unit: 'cm' },
  );
  const off = difference.result.value;
  const close = Math.abs(off) < 2 / ask.gauge.stitches.perCm;
  return {
    left: {
      stitches: stitches(left.result.value),
      around: cm(around.result.value),
      wanted: ask.neckWanted,
      difference: cm(off),
      verdict: close ? 'as wanted' : off > 0 ? 'too wide' : 'too narrow',
    },
    workings: [left, around, difference],
  };
}
