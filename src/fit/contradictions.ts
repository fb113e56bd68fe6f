/**
 * Reads a pattern as a technical editor does and names each contradiction between its figures.
 * Never throws on a pattern's figures; an empty list means that nothing was found, not that the pattern fits anyone.
 */
import {
  agrees,
  type Contradiction,
  contradiction,
  finishedLength,
  rowCount,
  stitchCount,
} from './contradiction.ts';
import { countsAgainstWidths, repeatsAndEdges, rowsAgainstLengths } from './contradictions-gauge.ts';
import { armholes, oddChanges, type StatedShaping, shapings, sleeves } from './contradictions-sums.ts';
import type { Counted, Pattern, PatternSize, Rowed } from './pattern.ts';
import type { Region } from './words.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

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
  const usual = quantity('the usual span', 10, 'cm');
  const rate = (of: typeof stitches, unit: 'stitches' | 'rows') =>
    workOut(
      `${unit} over the usual span`,
      'c * a / b',
      {
        a: quantity(`${unit} of the gauge`, of.count, unit),
        b: quantity(`span of the ${unit} of the gauge`, of.span, 'cm'),
        c: usual,
      },
      { unit },
    );
  const [across, up] = [rate(stitches, 'stitches'), rate(rows, 'rows')];
  const found = { figures: [across.result, up.result], workings: [across, up] };
  const quartered = (line: WorkingLine) => agrees(line.result, 'a / 4', { a: line.result });
  if (across.exact < STITCHES_TO_10_CM.least || across.exact > STITCHES_TO_10_CM.most) {
    const dense = across.exact > STITCHES_TO_10_CM.most;
    return [
      contradiction({ ...found, code: 'gauge out of bounds', agreeing: dense ? [quartered(across)] : [] }),
    ];
  }
  if (up.exact > MOST_ROWS_TO_STITCHES * across.exact)
    return [contradiction({ ...found, code: 'gauge out of bounds', agreeing: [quartered(up)] })];
  if (up.exact >= across.exact - 1e-9) return [];
  return [
    contradiction({
      ...found,
      code: 'rows fewer than stitches',
      agreeing: [agrees(across.result, 'a', { a: up.result }), agrees(up.result, 'a', { a: across.result })],
    }),
  ];
}

function labels(pattern: Pattern): Contradiction[] {
  const plain = pattern.sizes.map((size) => size.label.trim().toLowerCase());
  return pattern.sizes
    .filter((_, i) => plain.indexOf(plain[i] ?? '') < i)
    .map((size, _, twice) => {
      const again = quantity(
        'sizes with this label, after the first',
        twice.filter((s) => s === size).length,
        'times',
      );
      const all = workOut(
        'sizes with this label',
        'a + b',
        { a: quantity('the first', 1, 'times'), b: again },
        { unit: 'times' },
      );
      return contradiction({
        code: 'label twice',
        size: size.label,
        figures: [all.result],
        workings: [all],
        agreeing: [agrees(all.result, 'a - b', { a: all.result, b: again })],
      });
    });
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
  return contradiction({
    code: 'sizes out of order',
    size: size.label,
    figures: [printed, b],
    workings: [
      workOut('from this size back to the one before', 'a - b', { a: printed, b }, { unit: a.unit }),
    ],
    agreeing: [agrees(b, 'a', { a: printed })],
  });
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
