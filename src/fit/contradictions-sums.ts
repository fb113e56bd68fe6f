/**
 * Counts against each other: what is taken away and what is left must add up to the stitch, and shaping that takes a
 * stitch at each side can only make an even difference.
 */
import { agrees, type Contradiction, contradiction, finishedLength, stitchCount } from './contradiction.ts';
import { type Counted, type Pattern, type PatternSize, piecesAround } from './pattern.ts';
import { capacity } from './spacing.ts';
import { rows } from './units.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

/** A shaping line as a pattern states it for one size: `times` shaping rows of `perRow` stitches between two counts. */
export interface StatedShaping {
  readonly size: string;
  readonly from: Counted;
  readonly to: Counted;
  readonly by: 'increase' | 'decrease';
  readonly perRow: number;
  readonly times: number;
}

/** The back's stitches at the bust, with the line that halves a body in the round. */
function backStitches(
  pattern: Pattern,
  size: PatternSize,
): { back: Quantity; workings: WorkingLine[] } | undefined {
  const bust = size.counts.bust;
  if (bust === undefined) return undefined;
  if (piecesAround(pattern) === 2) return { back: stitchCount('bust', bust), workings: [] };
  const half = workOut(
    'stitches of the back',
    'a / 2',
    { a: stitchCount('bust', bust) },
    { unit: 'stitches' },
  );
  return { back: half.result, workings: [half] };
}

/** Pairs between which a stitch is gained or lost at each side at a time. */
const SYMMETRICAL: readonly (readonly [Counted, Counted])[] = [
  ['wrist', 'upper arm'],
  ['upper arm', 'cap top'],
  ['hip', 'waist'],
  ['waist', 'bust'],
  ['cross back', 'back neck'],
];

/** Differences that shaping at both sides can never make, and bodies in the round that cannot be halved. */
export function oddChanges(pattern: Pattern, size: PatternSize): Contradiction[] {
  const pairs = SYMMETRICAL.flatMap(([from, to]) => {
    const [a, b] = [size.counts[from], size.counts[to]];
    return a === undefined || b === undefined || (a - b) % 2 === 0
      ? []
      : [oddChange(size, stitchCount(from, a), stitchCount(to, b))];
  });
  const bust = size.counts.bust;
  const divided = pattern.construction === 'set-in' || pattern.construction === 'drop shoulder';
  if (bust === undefined || bust % 2 === 0 || !divided || piecesAround(pattern) === 2) return pairs;
  return [
    ...pairs,
    contradiction({
      code: 'odd change',
      size: size.label,
      figures: [stitchCount('bust', bust)],
      workings: backStitches(pattern, size)?.workings ?? [],
      agreeing: oneEitherSide(stitchCount('bust', bust)),
    }),
  ];
}

function oddChange(size: PatternSize, a: Quantity, b: Quantity): Contradiction {
  return contradiction({
    code: 'odd change',
    size: size.label,
    figures: [a, b],
    workings: [
      b.value > a.value
        ? workOut('stitches gained', 'b - a', { a, b }, { unit: 'stitches' })
        : workOut('stitches lost', 'a - b', { a, b }, { unit: 'stitches' }),
    ],
    agreeing: [a, b].flatMap(oneEitherSide),
  });
}

/** The even neighbours of an odd sum, or the odd ones of an even. */
function oneEitherSide(q: Quantity): WorkingLine[] {
  const given = { a: q, b: quantity('one stitch', 1, 'stitches') };
  return [agrees(q, 'a - b', given), agrees(q, 'a + b', given)];
}

/** Bust to cross back, cross back to shoulders and neck, and a cross back wider than the back below it. */
export function armholes(pattern: Pattern, size: PatternSize): Contradiction[] {
  const cross = size.counts['cross back'];
  const below = backStitches(pattern, size);
  return [
    ...(cross === undefined || below === undefined || !Number.isInteger(below.back.value)
      ? []
      : armholeSum(size, below, stitchCount('cross back', cross))),
    ...shoulderSum(size),
  ];
}

function armholeSum(
  size: PatternSize,
  { back, workings }: { back: Quantity; workings: WorkingLine[] },
  cross: Quantity,
): Contradiction[] {
  if (cross.value > back.value) {
    const wider = workOut('stitches gained above', 'b - a', { a: back, b: cross }, { unit: 'stitches' });
    return [
      contradiction({
        code: 'wider above the armhole',
        size: size.label,
        figures: [back, cross],
        workings: [...workings, wider],
        agreeing: [agrees(cross, 'a', { a: back })],
      }),
    ];
  }
  if (size.armhole === undefined)
    return (back.value - cross.value) % 2 === 0 ? [] : [oddChange(size, back, cross)];
  const given = {
    a: back,
    b: quantity('stitches bound off at each side of the back', size.armhole.boundOff, 'stitches'),
    c: quantity('stitches decreased at each side of the back', size.armhole.decreased, 'stitches'),
  };
  const left = workOut('stitches left of the back', 'a - 2 * (b + c)', given, { unit: 'stitches' });
  if (left.exact === cross.value) return [];
  const perSide = (back.value - cross.value) / 2;
  const instead = (q: Quantity, other: Quantity) =>
    Number.isInteger(perSide) && perSide >= other.value
      ? [agrees(q, '(a - d) / 2 - o', { a: back, d: cross, o: other })]
      : [];
  return [
    contradiction({
      code: 'armhole does not add up',
      size: size.label,
      figures: [back, given.b, given.c, cross],
      workings: [...workings, left],
      agreeing: [
        ...(left.exact > 0 ? [agrees(cross, 'a', { a: left.result })] : []),
        ...instead(given.b, given.c),
        ...instead(given.c, given.b),
      ],
    }),
  ];
}

function shoulderSum(size: PatternSize): Contradiction[] {
  const { 'cross back': cross, shoulder, 'back neck': neck } = size.counts;
  if (cross === undefined || shoulder === undefined || neck === undefined) return [];
  const given = { a: stitchCount('shoulder', shoulder), b: stitchCount('back neck', neck) };
  const sum = workOut('two shoulders and the back neck', '2 * a + b', given, { unit: 'stitches' });
  if (sum.exact === cross) return [];
  const whole = stitchCount('cross back', cross);
  return [
    contradiction({
      code: 'shoulders do not add up',
      size: size.label,
      figures: [whole, given.a, given.b],
      workings: [sum],
      agreeing: [
        agrees(whole, 'a', { a: sum.result }),
        ...(cross > 2 * shoulder ? [agrees(given.b, 'c - 2 * a', { c: whole, a: given.a })] : []),
        ...((cross - neck) % 2 === 0 && cross > neck
          ? [agrees(given.a, '(c - b) / 2', { c: whole, b: given.b })]
          : []),
      ],
    }),
  ];
}

/** A sleeve that narrows upward, that has too few rows for its shaping, or whose top does not fill a straight armhole. */
export function sleeves(pattern: Pattern, size: PatternSize): Contradiction[] {
  const { counts, finished } = size;
  const narrows = (below: Quantity, above: Quantity): Contradiction[] =>
    below.value <= above.value
      ? []
      : [
          contradiction({
            code: 'sleeve narrows upward',
            size: size.label,
            figures: [below, above],
            workings: [workOut('narrower above by', 'a - b', { a: below, b: above }, { unit: above.unit })],
            agreeing: [agrees(above, 'a', { a: below }), agrees(below, 'a', { a: above })],
          }),
        ];
  const upper = counts['upper arm'];
  return [
    ...(['sleeve cast-on', 'wrist'] as const).flatMap((place) => {
      const below = counts[place];
      return below === undefined || upper === undefined
        ? []
        : narrows(stitchCount(place, below), stitchCount('upper arm', upper));
    }),
    ...(finished.wrist === undefined || finished['upper arm'] === undefined
      ? []
      : narrows(finishedLength('wrist', finished.wrist), finishedLength('upper arm', finished['upper arm']))),
    ...sleeveReach(pattern, size),
    ...straightArmhole(pattern, size),
  ];
}

/** One increase at each side on every row that may carry it, from the cuff to the upper arm, must be enough. */
function sleeveReach(pattern: Pattern, size: PatternSize): Contradiction[] {
  const { wrist, 'upper arm': upper } = size.counts;
  const length = size.finished['sleeve length'];
  if (wrist === undefined || upper === undefined || length === undefined) return [];
  const { count, span } = pattern.gauge.rows;
  const given = {
    a: finishedLength('sleeve length', length),
    b: quantity('cuff edging', pattern.edging.cuff, 'cm'),
    c: quantity('rows of the gauge', count, 'rows'),
    d: quantity('span of the row gauge', span, 'cm'),
  };
  const room = workOut('rows above the cuff', '(a - b) * c / d', given, {
    unit: 'rows',
    rounding: { to: 'whole down' },
  });
  if (room.result.value < 0) return [];
  const carriers = pattern.sleeves === 'flat' ? 'odd rows' : 'every row';
  const most = capacity({ rows: rows(room.result.value), carriers, lead: rows(0), trail: rows(0) });
  const needed = workOut(
    'shaping rows needed',
    '(b - a) / 2',
    { a: stitchCount('wrist', wrist), b: stitchCount('upper arm', upper) },
    { unit: 'times', rounding: { to: 'whole up' } },
  );
  if (needed.result.value <= most) return [];
  const [below, above] = [stitchCount('wrist', wrist), stitchCount('upper arm', upper)];
  const held = quantity('shaping rows that fit in', most, 'times');
  return [
    contradiction({
      code: 'shaping out of reach',
      size: size.label,
      figures: [below, above, given.a],
      workings: [room, needed],
      agreeing: [
        agrees(above, 'a + 2 * n', { a: below, n: held }),
        agrees(below, 'b - 2 * n', { b: above, n: held }),
      ],
    }),
  ];
}

/** On a drop shoulder the sleeve's top is sewn straight into the armhole: it is twice its depth (common practice). */
const STRAIGHT_ARMHOLE_ALLOWED_CM = 2.54;

function straightArmhole(pattern: Pattern, size: PatternSize): Contradiction[] {
  const { 'armhole depth': depth, 'upper arm': upper } = size.finished;
  if (pattern.construction !== 'drop shoulder' || depth === undefined || upper === undefined) return [];
  const top = finishedLength('upper arm', upper);
  const deep = finishedLength('armhole depth', depth);
  const round = workOut('armhole all round', '2 * a', { a: deep }, { unit: 'cm' });
  if (Math.abs(round.exact - upper) <= STRAIGHT_ARMHOLE_ALLOWED_CM) return [];
  return [
    contradiction({
      code: 'sleeve top and armhole disagree',
      size: size.label,
      figures: [top, deep],
      workings: [round],
      agreeing: [agrees(top, 'a', { a: round.result }), agrees(deep, 'a / 2', { a: top })],
    }),
  ];
}

/** Shaping lines that end at another count than the one printed. */
export function shapings(size: PatternSize, lines: readonly StatedShaping[]): Contradiction[] {
  return lines.flatMap((line) => {
    const [from, to] = [size.counts[line.from], size.counts[line.to]];
    if (from === undefined || to === undefined) return [];
    const given = {
      a: stitchCount(line.from, from),
      n: quantity('shaping rows', line.times, 'times'),
      s: quantity('stitches a shaping row', line.perRow, 'stitches'),
    };
    const formula = line.by === 'increase' ? 'a + n * s' : 'a - n * s';
    const reached = workOut('stitches after the line', formula, given, { unit: 'stitches' });
    if (reached.exact === to) return [];
    const stated = stitchCount(line.to, to);
    const up = line.by === 'increase';
    const times = (up ? to - from : from - to) / line.perRow;
    return [
      contradiction({
        code: 'shaping misses the count',
        size: size.label,
        figures: [given.a, given.n, given.s, stated],
        workings: [reached],
        agreeing: [
          ...(times >= 0 && Number.isInteger(times)
            ? [agrees(given.n, up ? '(b - a) / s' : '(a - b) / s', { a: given.a, b: stated, s: given.s })]
            : []),
          ...(reached.exact > 0 ? [agrees(stated, 'a', { a: reached.result })] : []),
          ...(from + to > reached.exact
            ? [agrees(given.a, 'a + b - r', { a: given.a, b: stated, r: reached.result })]
            : []),
        ],
      }),
    ];
  });
}
