/**
 * Reads a pattern as a technical editor does and names each contradiction between its figures.
 * Never throws on a pattern's figures; an empty list means that nothing was found, not that the pattern fits anyone.
 */
import { type Contradiction, finishedLength, rowCount, stitchCount } from './contradiction.ts';
import { countsAgainstWidths, repeatsAndEdges, rowsAgainstLengths } from './contradictions-gauge.ts';
import { armholes, oddChanges, type StatedShaping, shapings, sleeves } from './contradictions-sums.ts';
import type { Counted, Pattern, PatternSize, Rowed } from './pattern.ts';
import type { Region } from './words.ts';
import { type Quantity, quantity, workOut } from './working.ts';

/** All contradictions, the pattern's own first, then size by size. `lines` are shaping lines that it states besides. */
export function contradictions(
  pattern: Pattern,
  lines: readonly StatedShaping[] = [],
): readonly Contradiction[] {
  return [
    ...gauge(pattern),
    ...labels(pattern),
    ...order(pattern),
    ...pattern.sizes.flatMap((size) => [
      ...countsAgainstWidths(pattern, size),
      ...rowsAgainstLengths(pattern, size),
      ...repeatsAndEdges(pattern, size),
      ...oddChanges(pattern, size),
      ...armholes(pattern, size),
      ...sleeves(pattern, size),
      ...lengths(pattern, size),
      ...shapings(
        size,
        lines.filter((line) => line.size === size.label),
      ),
    ]),
  ];
}

/**
 * Stitches to 10 cm between which hand-knitted garments lie. The yarn trade's weights run from 6 and fewer (jumbo) to
 * 40 (lace) over 4 in (Craft Yarn Council, Standards & Guidelines, 2018); widened by half so that no real one is refused.
 */
const STITCHES_TO_10_CM = { least: 3, most: 60 };
/** Rows to a stitch's width: plain knitting 1.2 to 1.5, garter stitch 2, slipped stitches up to 3 (common practice). */
const MOST_ROWS_TO_STITCHES = 3;

function gauge(pattern: Pattern): Contradiction[] {
  const { stitches, rows } = pattern.gauge;
  const rate = (of: typeof stitches, unit: 'stitches' | 'rows') =>
    workOut(
      `${unit} to 10 cm`,
      '10 * a / b',
      {
        a: quantity(`${unit} of the gauge`, of.count, unit),
        b: quantity(`span of the ${unit} of the gauge`, of.span, 'cm'),
      },
      { unit },
    );
  const [across, up] = [rate(stitches, 'stitches'), rate(rows, 'rows')];
  const workings = [across, up];
  const figures = [across.result, up.result];
  const asQuarter = (per10: number, unit: 'stitches' | 'rows') =>
    quantity(`${unit} to 10 cm, if counted over four times the span`, per10 / 4, unit);
  if (across.exact < STITCHES_TO_10_CM.least || across.exact > STITCHES_TO_10_CM.most) {
    const dense = across.exact > STITCHES_TO_10_CM.most;
    const wouldAgree = dense ? [asQuarter(across.exact, 'stitches')] : [];
    return [{ code: 'gauge out of bounds', figures, wouldAgree, workings }];
  }
  if (up.exact > MOST_ROWS_TO_STITCHES * across.exact)
    return [{ code: 'gauge out of bounds', figures, wouldAgree: [asQuarter(up.exact, 'rows')], workings }];
  if (up.exact < across.exact - 1e-9) {
    const wouldAgree = [
      quantity('stitches to 10 cm', up.exact, 'stitches'),
      quantity('rows to 10 cm', across.exact, 'rows'),
    ];
    return [{ code: 'rows fewer than stitches', figures, wouldAgree, workings }];
  }
  return [];
}

function labels(pattern: Pattern): Contradiction[] {
  const plain = pattern.sizes.map((size) => size.label.trim().toLowerCase());
  return pattern.sizes
    .filter((_, i) => plain.indexOf(plain[i] ?? '') < i)
    .map((size, _, twice) => ({
      code: 'label twice' as const,
      size: size.label,
      figures: [quantity('sizes with this label', 1 + twice.filter((s) => s === size).length, 'times')],
      wouldAgree: [quantity('sizes with this label', 1, 'times')],
      workings: [],
    }));
}

/** Figures that never fall from one size to the next. Lengths of body and sleeve may: large sizes are often shorter. */
const GROWING_WIDTHS: readonly Region[] = [
  'bust',
  'waist',
  'hip',
  'cross back',
  'armhole depth',
  'neck',
  'upper arm',
  'wrist',
];
const GROWING_COUNTS: readonly Counted[] = [
  'body cast-on',
  'hip',
  'waist',
  'bust',
  'cross back',
  'back neck',
  'shoulder',
  'sleeve cast-on',
  'wrist',
  'upper arm',
];
const GROWING_ROWS: readonly Rowed[] = ['armhole'];
/** Counts may fall by one stitch at each side from size to size where a repeat or parity asks for it. */
const STITCHES_OF_GRACE = 2;

function order(pattern: Pattern): Contradiction[] {
  return pattern.sizes.slice(1).flatMap((size, i) => {
    const before = pattern.sizes[i] as PatternSize;
    const fallen = (
      name: (value: number) => Quantity,
      a: number | undefined,
      b: number | undefined,
      by: number,
    ) =>
      a === undefined || b === undefined || b >= a - by ? [] : [outOfOrder(before, size, name(a), name(b))];
    return [
      ...GROWING_WIDTHS.flatMap((r) =>
        fallen((v) => finishedLength(r, v), before.finished[r], size.finished[r], 0),
      ),
      ...GROWING_COUNTS.flatMap((c) =>
        fallen((v) => stitchCount(c, v), before.counts[c], size.counts[c], STITCHES_OF_GRACE),
      ),
      ...GROWING_ROWS.flatMap((r) => fallen((v) => rowCount(r, v), before.rows?.[r], size.rows?.[r], 0)),
    ];
  });
}

function outOfOrder(before: PatternSize, size: PatternSize, a: Quantity, b: Quantity): Contradiction {
  const printed = quantity(`${a.name}, size ${before.label}`, a.value, a.unit);
  return {
    code: 'sizes out of order',
    size: size.label,
    figures: [printed, b],
    wouldAgree: [a],
    workings: [
      workOut('from this size back to the one before', 'a - b', { a: printed, b }, { unit: a.unit }),
    ],
  };
}

function lengths(pattern: Pattern, size: PatternSize): Contradiction[] {
  const within = (region: Region, edging: Quantity): Contradiction[] => {
    const length = size.finished[region];
    if (length === undefined || length > edging.value) return [];
    const whole = finishedLength(region, length);
    return [
      {
        code: 'lengths out of order',
        size: size.label,
        figures: [whole, edging],
        wouldAgree: [],
        workings: [workOut('length above the edging', 'a - b', { a: whole, b: edging }, { unit: 'cm' })],
      },
    ];
  };
  return [
    ...within('body length', quantity('hem edging', pattern.edging.hem, 'cm')),
    ...within('sleeve length', quantity('cuff edging', pattern.edging.cuff, 'cm')),
  ];
}
