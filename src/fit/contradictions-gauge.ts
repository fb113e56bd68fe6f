/**
 * Counts and rows against gauge and finished size. Allowed on one piece: one stitch at each side (publishers differ in
 * whether a seam's stitch is in the width) or half a stitch repeat, whichever is more; on lengths one pair of rows.
 */
import {
  agrees,
  type Contradiction,
  type ContradictionCode,
  contradiction,
  finishedLength,
  rowCount,
  stitchCount,
} from './contradiction.ts';
import { type Count, type CountRule, stitchesFor } from './gauge.ts';
import { type Counted, type Pattern, type PatternSize, piecesAround, type Rowed } from './pattern.ts';
import { CM_PER, cm, perCm } from './units.ts';
import type { Region } from './words.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

interface Place {
  readonly region: Region & Counted;
  readonly pieces: 1 | 2;
  readonly rule: CountRule;
}

function places(pattern: Pattern): readonly Place[] {
  const edge = pattern.body === 'round' ? 0 : pattern.edge.body;
  const body = { ...pattern.repeat, edge, parity: 'any' } as const;
  const sleeve = { multiple: 1, plus: 0, edge: pattern.edge.sleeves, parity: 'any' } as const;
  const around = piecesAround(pattern);
  return [
    { region: 'bust', pieces: around, rule: body },
    { region: 'waist', pieces: around, rule: body },
    { region: 'hip', pieces: around, rule: body },
    { region: 'cross back', pieces: 1, rule: { ...body, multiple: 1, plus: 0 } },
    { region: 'upper arm', pieces: 1, rule: sleeve },
    { region: 'wrist', pieces: 1, rule: sleeve },
  ];
}

/** Finished widths that the counts do not give at the pattern's gauge, with the commonest slips told apart. */
export function countsAgainstWidths(pattern: Pattern, size: PatternSize): Contradiction[] {
  return places(pattern).flatMap((place) => {
    const [width, count] = [size.finished[place.region], size.counts[place.region]];
    if (width === undefined || count === undefined) return [];
    const gauge = pattern.gauge.stitches;
    const allowed = slack(place.rule.multiple);
    const off = (w: number, g: Count) =>
      Math.abs((w * g.count) / g.span / place.pieces + place.rule.edge - count);
    const fits = (w: number) => off(w, gauge) <= allowed.result.value + 1e-9;
    if (fits(width)) return [];
    const inch = [width * CM_PER.in, width / CM_PER.in].find(fits);
    const code: ContradictionCode =
      inch !== undefined
        ? 'inches for centimetres'
        : off(width, otherSpan(gauge)) <= OTHER_SPAN_WITHIN
          ? 'four inches for ten centimetres'
          : 'count and width disagree';
    const printed = finishedLength(place.region, width);
    return [
      contradiction({
        code,
        size: size.label,
        figures: [stitchCount(place.region, count), printed, ...gaugeFigures(gauge)],
        workings: [...widthWorkings(place, width, count, gauge), allowed],
        agreeing:
          inch !== undefined
            ? [inOtherUnit(printed, inch > width)]
            : code === 'four inches for ten centimetres'
              ? [spanInOtherUnit(gauge)]
              : widthsAndCounts(place, width, count, gauge),
      }),
    ];
  });
}

/** The same number of the other unit. */
function inOtherUnit(printed: Quantity, asInches: boolean): WorkingLine {
  const given = { a: printed, b: quantity('centimetres to an inch', CM_PER.in, 'ratio') };
  return agrees(printed, asInches ? 'a * b' : 'a / b', given);
}

function spanInOtherUnit(gauge: Count): WorkingLine {
  const span = quantity('span of the stitch gauge', gauge.span, 'cm');
  const given = {
    a: span,
    b: quantity('ten centimetres', 10, 'cm'),
    c: quantity('four inches', 4 * CM_PER.in, 'cm'),
  };
  return agrees(span, gauge.unit === 'in' ? 'a * b / c' : 'a * c / b', given);
}

function slack(multiple: number): WorkingLine {
  return multiple / 2 > 2
    ? workOut(
        'difference allowed: half a repeat',
        'a / 2',
        { a: quantity('stitch repeat', multiple, 'stitches') },
        { unit: 'stitches' },
      )
    : workOut(
        'difference allowed: one stitch at each side',
        '2 * a',
        { a: quantity('stitches at one side', 1, 'stitches') },
        { unit: 'stitches' },
      );
}

/** Stitches of one piece within which the other span must give the count, to be named as the cause. */
const OTHER_SPAN_WITHIN = 1;

/** 4 in read as 10 cm, or the other way about, in any multiple: the span is off by 1.6 %. */
function otherSpan(gauge: Count): Count {
  const ratio = (4 * CM_PER.in) / 10;
  return { ...gauge, span: cm(gauge.unit === 'in' ? gauge.span / ratio : gauge.span * ratio) };
}

function gaugeFigures(gauge: Count) {
  return [
    quantity('stitches of the gauge', gauge.count, 'stitches'),
    quantity('span of the stitch gauge', gauge.span, 'cm'),
  ];
}

function widthsAndCounts({ region, pieces, rule }: Place, width: number, count: number, gauge: Count) {
  const rate = perCm(gauge.count / gauge.span);
  const choice = stitchesFor(cm(width / pieces), rate, rule);
  const [stitches, length] = [stitchCount(region, count), finishedLength(region, width)];
  const given = {
    b: quantity('stitches of the gauge', gauge.count, 'stitches'),
    c: quantity('span of the stitch gauge', gauge.span, 'cm'),
    p: quantity('pieces', pieces, 'times'),
    e: quantity('edge stitches', rule.edge, 'stitches'),
  };
  return [
    ...('chosen' in choice && choice.exact >= choice.below.stitches
      ? [
          agrees(
            stitches,
            'w * b / c / p + e',
            { ...given, w: length },
            { to: 'multiple', multiple: choice.step, plus: choice.start },
          ),
        ]
      : []),
    agrees(length, '(a - e) * p * c / b', { ...given, a: stitches }),
  ];
}

function widthWorkings(place: Place, width: number, count: number, gauge: Count): WorkingLine[] {
  const wanted = workOut(
    `stitches of one piece for the finished ${place.region}`,
    'a * b / c / p + e',
    {
      a: finishedLength(place.region, width),
      b: quantity('stitches of the gauge', gauge.count, 'stitches'),
      c: quantity('span of the stitch gauge', gauge.span, 'cm'),
      p: quantity('pieces', place.pieces, 'times'),
      e: quantity('edge stitches', place.rule.edge, 'stitches'),
    },
    { unit: 'stitches' },
  );
  const printed = stitchCount(place.region, count);
  const more = count > wanted.exact;
  return [
    wanted,
    workOut(
      more ? 'stitches printed beyond them' : 'stitches short of them',
      more ? 'b - a' : 'a - b',
      { a: wanted.result, b: printed },
      { unit: 'stitches' },
    ),
  ];
}

const ROWED_LENGTHS: readonly (readonly [Rowed, Region])[] = [
  ['body', 'body length'],
  ['armhole', 'armhole depth'],
  ['sleeve', 'sleeve length'],
];
/** A right-side and a wrong-side row. */
const ROWS_ALLOWED = 2;

/** Lengths that the rows do not give; rows of body and sleeve may be printed with their edging or after it. */
export function rowsAgainstLengths(pattern: Pattern, size: PatternSize): Contradiction[] {
  const gauge = pattern.gauge.rows;
  return ROWED_LENGTHS.flatMap(([stretch, region]) => {
    const [printed, length] = [size.rows?.[stretch], size.finished[region]];
    if (printed === undefined || length === undefined) return [];
    const edging = { body: pattern.edging.hem, sleeve: pattern.edging.cuff, armhole: 0, cap: 0 }[stretch];
    const fits = (l: number) =>
      [0, edging].some(
        (e) => Math.abs(((l - e) * gauge.count) / gauge.span - printed) <= ROWS_ALLOWED + 1e-9,
      );
    if (fits(length)) return [];
    const inch = [length * CM_PER.in, length / CM_PER.in].find((l) => fits(l));
    const wanted = workOut(
      `rows for the finished ${region}`,
      'a * b / c',
      {
        a: finishedLength(region, length),
        b: quantity('rows of the gauge', gauge.count, 'rows'),
        c: quantity('span of the row gauge', gauge.span, 'cm'),
      },
      { unit: 'rows', rounding: { to: 'whole' } },
    );
    const more = printed > wanted.result.value;
    const difference = workOut(
      more ? 'rows printed beyond them' : 'rows short of them',
      more ? 'b - a' : 'a - b',
      { a: wanted.result, b: rowCount(stretch, printed) },
      { unit: 'rows' },
    );
    const [counted, long] = [rowCount(stretch, printed), finishedLength(region, length)];
    const given = {
      a: counted,
      b: quantity('rows of the gauge', gauge.count, 'rows'),
      c: quantity('span of the row gauge', gauge.span, 'cm'),
    };
    return [
      contradiction({
        code: inch === undefined ? 'rows and length disagree' : 'inches for centimetres',
        size: size.label,
        figures: [counted, long, given.b, given.c],
        workings: [wanted, difference],
        agreeing:
          inch === undefined
            ? [agrees(counted, 'a', { a: wanted.result }), agrees(long, 'a * c / b', given)]
            : [inOtherUnit(long, inch > length)],
      }),
    ];
  });
}

/** The count at the bust must be whole repeats, the stitches beyond them, and the edge stitches. */
export function repeatsAndEdges(pattern: Pattern, size: PatternSize): Contradiction[] {
  const count = size.counts.bust;
  const edge = pattern.edge.body;
  const { multiple, plus } = pattern.repeat;
  const found: Contradiction[] = [];
  if (pattern.body === 'round' && edge !== 0 && size === pattern.sizes[0])
    found.push(edgeInTheRound(quantity('edge stitches of the body', edge, 'stitches')));
  if (count === undefined || (count - edge - plus) % multiple === 0) return found;
  const given = {
    a: stitchCount('bust', count),
    e: quantity('edge stitches', edge, 'stitches'),
    p: quantity('stitches beyond the repeats', plus, 'stitches'),
    m: quantity('stitch repeat', multiple, 'stitches'),
  };
  const repeats = workOut('whole repeats', '(a - e - p) / m', given, {
    unit: 'times',
    rounding: { to: 'whole down' },
  });
  const over = workOut(
    'stitches left over',
    'a - e - p - m * k',
    { ...given, k: repeats.result },
    { unit: 'stitches' },
  );
  return [
    ...found,
    contradiction({
      code: edge !== 0 && (count - plus) % multiple === 0 ? 'edge stitches left out' : 'repeat not fitted',
      size: size.label,
      figures: Object.values(given),
      workings: [repeats, over],
      agreeing: [
        agrees(given.a, 'a - o', { a: given.a, o: over.result }),
        agrees(given.a, 'a - o + m', { a: given.a, o: over.result, m: given.m }),
      ],
    }),
  ];
}

function edgeInTheRound(edge: Quantity): Contradiction {
  return contradiction({
    code: 'edge stitches in the round',
    figures: [edge],
    workings: [],
    agreeing: [agrees(edge, 'a - a', { a: edge })],
  });
}
