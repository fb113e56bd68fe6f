/**
 * Width added to the front for a full bust, by darts that run up and down over the bust points: the alternative to
 * short rows, which add length. Shaping rows = width × stitches/cm ÷ stitches that a row changes, as in 'Bust Dart
 * Math' (interweave.com, Knitting Daily, 2008).
 */
import { type Alternative, type Carriers, type Spaced, space, type TooFewRows } from './spacing.ts';
import { type Cm, cm, type Rows, rows, type Stitches, stitches } from './units.ts';
import type { Rates } from './wedge-base.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** How much wider the front is to become. */
export type ExtraWidth =
  | { readonly from: 'width'; readonly width: Cm }
  /** The size is chosen by the upper bust and the difference given to the front: dressmaking practice. */
  | { readonly from: 'girths'; readonly bust: Cm; readonly upperBust: Cm };

export interface VerticalDartAsk {
  readonly extra: ExtraWidth;
  readonly gauge: Rates;
  /** The front between its side markers, before the darts. */
  readonly front: Stitches;
  readonly bustSpan: Cm;
  /** Stitches that a shaping row gains: one at each of the two darts, or one on both sides of each. */
  readonly perRow: 2 | 4;
  readonly carriers: Carriers;
  /** Rows over which the front widens, on the way to the fullest point. */
  readonly widenOver: Rows;
  /** Rows over which it narrows again beyond it; null where the added stitches stay. */
  readonly narrowOver: Rows | null;
}

export interface FrontStitches {
  readonly kind: 'front stitches';
  /** Added to the front, as many on either half. */
  readonly added: Stitches;
  /** What they measure. */
  readonly width: Cm;
  readonly workings: readonly WorkingLine[];
}

export interface VerticalDarts {
  readonly kind: 'vertical darts';
  readonly added: Stitches;
  readonly width: Cm;
  readonly widen: Spaced;
  readonly narrow: Spaced | null;
  /** Stitches from either side marker to its dart line, before the first shaping row. */
  readonly fromSide: Stitches;
  readonly workings: readonly WorkingLine[];
}

/** Less than half of what one shaping row adds. */
export interface NoWidth {
  readonly kind: 'not needed';
  readonly width: Cm;
  readonly workings: readonly WorkingLine[];
}

/** The bust points lie farther apart than the front is wide. */
export interface DartsOutside {
  readonly kind: 'darts outside the front';
  readonly span: Stitches;
  readonly front: Stitches;
  readonly workings: readonly WorkingLine[];
}

/** Shaping that does not fit its rows, with what fits. */
export interface RowsTooFew {
  readonly kind: 'too few rows';
  readonly part: 'widening' | 'narrowing';
  readonly needed: number;
  readonly available: number;
  readonly alternatives: readonly Alternative[];
  readonly workings: readonly WorkingLine[];
}

/** The stitches that a full bust adds to the front, a whole number of times `perRow`. */
export function frontStitches(extra: ExtraWidth, gauge: Rates, perRow: 2 | 4): FrontStitches | NoWidth {
  const width = explainWidth(extra);
  const rate = quantity('stitches', gauge.stitchesPerCm, 'stitches/cm');
  const rounding = { to: 'multiple', multiple: perRow, plus: 0 } as const;
  const added = workOut(
    'stitches to add to the front',
    'a * b',
    { a: width.result, b: rate },
    { unit: 'stitches', rounding },
  );
  const workings = [width, added];
  if (added.result.value <= 0) return { kind: 'not needed', width: cm(width.result.value), workings };
  const wide = workOut('width that they add', 'a / b', { a: added.result, b: rate }, { unit: 'cm' });
  return {
    kind: 'front stitches',
    added: stitches(added.result.value),
    width: cm(wide.result.value),
    workings: [...workings, wide],
  };
}

/** Two darts over the bust points, or why they cannot be knitted so. */
export function verticalDarts(ask: VerticalDartAsk): VerticalDarts | NoWidth | DartsOutside | RowsTooFew {
  const more = frontStitches(ask.extra, ask.gauge, ask.perRow);
  if (more.kind === 'not needed') return more;
  const lines = explainLines(ask);
  const workings = [...more.workings, ...lines];
  const [span, fromSide] = [lines[0].result.value, lines[1].result.value];
  if (fromSide < 1)
    return { kind: 'darts outside the front', span: stitches(span), front: ask.front, workings };
  const [narrow, wide] = [ask.front, stitches(ask.front + more.added)];
  const widened = section(ask, narrow, wide, ask.widenOver);
  if (widened.kind === 'too few rows')
    return tooFew('widening', widened, [...workings, ...explainFit(ask, more.added, ask.widenOver)]);
  const narrowed = ask.narrowOver === null ? null : section(ask, wide, narrow, ask.narrowOver);
  if (narrowed?.kind === 'too few rows')
    return tooFew('narrowing', narrowed, [
      ...workings,
      ...explainFit(ask, more.added, ask.narrowOver ?? rows(0)),
    ]);
  return {
    kind: 'vertical darts',
    added: more.added,
    width: more.width,
    widen: widened,
    narrow: narrowed,
    fromSide: stitches(fromSide),
    workings: [...workings, ...widened.workings, ...(narrowed?.workings ?? [])],
  };
}

function section(ask: VerticalDartAsk, from: Stitches, to: Stitches, over: Rows): Spaced | TooFewRows {
  const spaced = space({
    rows: over,
    from,
    to,
    perRow: ask.perRow,
    carriers: ask.carriers,
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
    stitchesPerCm: ask.gauge.stitchesPerCm,
  });
  if (spaced.kind === 'no multiple') throw new Error(`${to - from} is no multiple of ${ask.perRow}`);
  return spaced;
}

function tooFew(part: RowsTooFew['part'], found: TooFewRows, workings: readonly WorkingLine[]): RowsTooFew {
  const { kind, needed, available, alternatives } = found;
  return { kind, part, needed, available, alternatives, workings };
}

function explainWidth(extra: ExtraWidth): WorkingLine {
  const label = 'width to add to the front';
  if (extra.from === 'width')
    return workOut(label, 'a', { a: quantity('width wanted', extra.width, 'cm') }, { unit: 'cm' });
  const given = {
    a: quantity('full bust', extra.bust, 'cm'),
    b: quantity('upper bust', extra.upperBust, 'cm'),
  };
  return workOut(label, 'a - b', given, { unit: 'cm' });
}

/** An odd stitch between the dart lines stays in the middle. */
function explainLines(ask: VerticalDartAsk): readonly [span: WorkingLine, fromSide: WorkingLine] {
  const given = {
    a: quantity('from bust point to bust point', ask.bustSpan, 'cm'),
    b: quantity('stitches', ask.gauge.stitchesPerCm, 'stitches/cm'),
  };
  const span = workOut('stitches between the bust points', 'a * b', given, {
    unit: 'stitches',
    rounding: { to: 'whole' },
  });
  const front = quantity('stitches of the front', ask.front, 'stitches');
  const fromSide = workOut(
    'stitches from the side to the dart',
    '(a - b) / 2',
    { a: front, b: span.result },
    {
      unit: 'stitches',
      rounding: { to: 'whole down' },
    },
  );
  return [span, fromSide];
}

/** Shaping rows needed, and rows of the section that may carry one. */
function explainFit({ perRow, carriers }: VerticalDartAsk, added: Stitches, over: Rows): WorkingLine[] {
  const given = {
    a: quantity('stitches to add to the front', added, 'stitches'),
    b: quantity('stitches that a shaping row changes', perRow, 'stitches'),
  };
  const needed = workOut('shaping rows needed', 'a / b', given, { unit: 'times' });
  const section = { a: quantity('rows of the section', over, 'rows') };
  const label = 'rows that may carry shaping';
  if (carriers === 'every row') return [needed, workOut(label, 'a', section, { unit: 'rows' })];
  const to = carriers === 'odd rows' ? 'whole up' : 'whole down';
  return [needed, workOut(label, 'a / 2', section, { unit: 'rows', rounding: { to } })];
}
