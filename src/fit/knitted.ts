/**
 * What a size of a pattern really measures when it is knitted at one's own gauge.
 *
 * Widths come from the pattern's counts, divided by the own gauge; without counts, from the printed width times the
 * pattern's gauge over the own one, which is the same stitches. Lengths come from the pattern's rows where it counts
 * them; a length that is knitted to a tape stays as it is printed.
 */
import { type Gauge, type Range, type Rate, rangeOf, rateAsPrinted } from './gauge.ts';
import { type Counted, type Pattern, type PatternSize, piecesAround, type Rowed } from './pattern.ts';
import { type Cm, cm } from './units.ts';
import type { Region } from './words.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

/** The knitter's gauges; a garment may be in the round in the body and flat in the sleeves. */
export interface OwnGauge {
  readonly body: Gauge;
  readonly sleeves: Gauge;
}

export interface Knitted {
  readonly value: Cm;
  /** Two standard errors of the own gauge to either side; no width at all where the tape decides. */
  readonly range: Range;
  readonly from: 'counts' | 'rows' | 'printed width' | 'printed length';
  readonly working: WorkingLine;
}

/** Where a region's figure is found in a pattern. `pieces` go round the body, each with its edge stitches. */
type Found =
  | {
      readonly across: 'stitches';
      readonly part: 'body' | 'sleeves';
      readonly counted?: Counted;
      readonly round?: true;
    }
  | { readonly across: 'rows'; readonly part: 'body' | 'sleeves'; readonly rowed: Rowed };

const FOUND: Readonly<Record<Region, Found>> = {
  bust: { across: 'stitches', part: 'body', counted: 'bust', round: true },
  waist: { across: 'stitches', part: 'body', counted: 'waist', round: true },
  hip: { across: 'stitches', part: 'body', counted: 'hip', round: true },
  'cross back': { across: 'stitches', part: 'body', counted: 'cross back' },
  // The opening all round; the back neck's count is only a part of it.
  neck: { across: 'stitches', part: 'body' },
  'upper arm': { across: 'stitches', part: 'sleeves', counted: 'upper arm' },
  wrist: { across: 'stitches', part: 'sleeves', counted: 'wrist' },
  'armhole depth': { across: 'rows', part: 'body', rowed: 'armhole' },
  'body length': { across: 'rows', part: 'body', rowed: 'body' },
  'sleeve length': { across: 'rows', part: 'sleeves', rowed: 'sleeve' },
};

/** The real measurement of a region of a size, or undefined where the pattern states nothing to get it from. */
export function knitted(
  region: Region,
  size: PatternSize,
  pattern: Pattern,
  own: OwnGauge,
): Knitted | undefined {
  const found = FOUND[region];
  const gauge = own[found.part];
  if (found.across === 'rows') {
    const rows = size.rows?.[found.rowed];
    return rows === undefined ? asPrinted(region, size.finished[region]) : fromRows(region, rows, gauge.rows);
  }
  const count = found.counted === undefined ? undefined : size.counts[found.counted];
  if (count !== undefined) {
    const pieces = found.round ? piecesAround(pattern) : 1;
    return fromCounts(region, count, pieces, pattern.edge[found.part], gauge.stitches);
  }
  const printed = size.finished[region];
  return printed === undefined ? undefined : fromWidth(region, printed, pattern, gauge.stitches);
}

/** The gauge at which the stitches of a width, counted at `rate`, would measure the wanted one. */
export function gaugeToReach(width: Cm, rate: Rate, wanted: Cm): WorkingLine {
  const given = {
    a: quantity('width', width, 'cm'),
    b: quantity('stitches of that width', rate.perCm, 'stitches/cm'),
    c: quantity('width wanted', wanted, 'cm'),
  };
  return workOut('gauge at which it would fit', 'a * b / c', given, { unit: 'stitches/cm' });
}

function fromCounts(region: Region, count: number, pieces: 1 | 2, edge: number, rate: Rate): Knitted {
  const formula = `${pieces === 2 ? '2 * ' : ''}${edge === 0 ? 'a' : '(a - b)'} / c`;
  const given = {
    a: quantity(
      pieces === 2 ? `stitches of the back at the ${region}` : `stitches at the ${region}`,
      count,
      'stitches',
    ),
    ...(edge === 0 ? {} : { b: quantity('edge stitches in the seams', edge, 'stitches') }),
    c: ownStitches(rate),
  };
  return known('counts', knittedLine(region, formula, given), rangeOf(pieces * (count - edge), rate));
}

function fromWidth(region: Region, printed: Cm, pattern: Pick<Pattern, 'gauge'>, rate: Rate): Knitted {
  const theirs = rateAsPrinted(pattern.gauge.stitches);
  const given = {
    a: quantity(`${region}, printed`, printed, 'cm'),
    b: quantity("the pattern's stitches", theirs.perCm, 'stitches/cm'),
    c: ownStitches(rate),
  };
  return known(
    'printed width',
    knittedLine(region, 'a * b / c', given),
    rangeOf(printed * theirs.perCm, rate),
  );
}

function fromRows(region: Region, rows: number, rate: Rate): Knitted {
  const given = {
    a: quantity(`rows of the ${region}`, rows, 'rows'),
    b: quantity('own rows', rate.perCm, 'rows/cm'),
  };
  return known('rows', knittedLine(region, 'a / b', given), rangeOf(rows, rate));
}

function asPrinted(region: Region, printed: Cm | undefined): Knitted | undefined {
  if (printed === undefined) return undefined;
  const line = knittedLine(region, 'a', { a: quantity(`${region}, knitted to a tape`, printed, 'cm') });
  return known('printed length', line, { low: printed, expected: printed, high: printed });
}

function knittedLine(
  region: Region,
  formula: string,
  given: Readonly<Record<string, Quantity>>,
): WorkingLine {
  return workOut(`${region} as you will knit it`, formula, given, { unit: 'cm' });
}

function ownStitches(rate: Rate): Quantity {
  return quantity('own stitches', rate.perCm, 'stitches/cm');
}

function known(from: Knitted['from'], working: WorkingLine, range: Range): Knitted {
  return { value: cm(working.result.value), range, from, working };
}
