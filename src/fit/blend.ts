/**
 * One size's counts at the shoulders, another's at the bust, a third's at the hip: the passages between them spaced anew.
 * The result is a size of the same pattern and at its gauge; it can be worked out for another gauge like any other.
 */
import { finishedLength, stitchCount } from './contradiction.ts';
import { type Counted, type Pattern, type PatternSize, piecesAround } from './pattern.ts';
import { backLine } from './regauge-counts.ts';
import { type Spacing, space } from './spacing.ts';
import { perCm, type Rows, rows, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Labels of the sizes to be followed. */
export interface BlendAsk {
  readonly shoulders: string;
  readonly bust: string;
  readonly hip: string;
  readonly sleeves: string;
}

export interface Passage {
  readonly between: 'hip and bust' | 'underarm and cross back';
  readonly from: Stitches;
  readonly to: Stitches;
  readonly rows: Rows;
  /** Or why these rows do not do, with what would. */
  readonly spacing: Spacing;
  readonly workings: readonly WorkingLine[];
}

export interface Blended {
  readonly kind: 'blended';
  readonly size: PatternSize;
  readonly passages: readonly Passage[];
  /** The sleeve's cap was drawn for another armhole: it is to be fitted anew. */
  readonly capToFit: boolean;
  readonly workings: readonly WorkingLine[];
}

export type CannotBlend =
  | { readonly kind: 'counts missing'; readonly size: string; readonly places: readonly Counted[] }
  /** The sizes have a waist between hip and bust, whose height the figures do not tell. */
  | { readonly kind: 'waist between' }
  /** The shoulders are as wide as the back under them, or wider. Sizes at the bust that are wide enough, nearest first. */
  | {
      readonly kind: 'shoulders wider than the bust';
      readonly back: number;
      readonly crossBack: Stitches;
      readonly wideEnough: readonly string[];
    };

/** Throws where the pattern lacks a size that is asked for. */
export function blend(pattern: Pattern, ask: BlendAsk): Blended | CannotBlend {
  const [shoulders, bust, hip, sleeves] = [ask.shoulders, ask.bust, ask.hip, ask.sleeves].map((label) =>
    sizeOf(pattern, label),
  ) as [PatternSize, PatternSize, PatternSize, PatternSize];
  const parts = { shoulders, bust, hip, sleeves };
  const lacking = missing(parts);
  if (lacking !== undefined) return lacking;
  if (bust.counts.waist !== undefined && ask.hip !== ask.bust) return { kind: 'waist between' };
  const armhole = armholeOf(pattern, parts);
  if ('kind' in armhole) return armhole;
  const body = bodyPassage(pattern, parts);
  const across = armholePassage(pattern, parts, armhole);
  return {
    kind: 'blended',
    size: joined(parts, armhole),
    passages: [body, { ...across, workings: [...armhole.workings, ...across.workings] }],
    capToFit: ask.sleeves !== ask.shoulders || ask.sleeves !== ask.bust,
    workings: [...armhole.workings, ...body.workings, ...across.workings],
  };
}

interface Parts {
  readonly shoulders: PatternSize;
  readonly bust: PatternSize;
  readonly hip: PatternSize;
  readonly sleeves: PatternSize;
}

function sizeOf(pattern: Pattern, label: string): PatternSize {
  const size = pattern.sizes.find((s) => s.label === label);
  if (size === undefined) throw new RangeError(`${pattern.name} has no size '${label}'`);
  return size;
}

function missing({ shoulders, bust, hip }: Parts): CannotBlend | undefined {
  const needed = [
    [shoulders, ['cross back']],
    [bust, ['bust']],
    [hip, ['body cast-on']],
  ] as const;
  for (const [size, all] of needed) {
    const places = all.filter((place) => size.counts[place] === undefined);
    if (places.length > 0) return { kind: 'counts missing', size: size.label, places };
  }
  return undefined;
}

interface Armhole {
  readonly back: number;
  readonly crossBack: Stitches;
  readonly boundOff: Stitches;
  readonly decreased: Stitches;
  readonly workings: readonly WorkingLine[];
}

/** The bust's bind-off is kept; decreases take what is left between its back and the cross back of the shoulders. */
function armholeOf(pattern: Pattern, { shoulders, bust }: Parts): Armhole | CannotBlend {
  const crossBack = shoulders.counts['cross back'] ?? stitches(0);
  const back = backLine(bust.counts.bust ?? stitches(0), pattern);
  if (crossBack >= back.exact && pattern.construction === 'set-in') {
    const wideEnough = pattern.sizes.filter(
      (s) => backLine(s.counts.bust ?? stitches(0), pattern).exact > crossBack,
    );
    return {
      kind: 'shoulders wider than the bust',
      back: back.exact,
      crossBack,
      wideEnough: wideEnough.map((s) => s.label),
    };
  }
  const side = workOut(
    'stitches to lose at each side of the back',
    '(a - b) / 2',
    { a: back.result, b: stitchCount('cross back', crossBack) },
    { unit: 'stitches', rounding: { to: 'whole down' } },
  );
  const boundOff = Math.min(bust.armhole?.boundOff ?? 0, side.result.value);
  const left = workOut(
    'stitches decreased at each side of the back',
    'a - b',
    { a: side.result, b: quantity('stitches bound off at each side', boundOff, 'stitches') },
    { unit: 'stitches' },
  );
  return {
    back: back.exact,
    crossBack,
    boundOff: stitches(boundOff),
    decreased: stitches(left.exact),
    workings: [back, side, left],
  };
}

/** The lower count first on a garment that grows upward, else the upper one. */
function inOrder(
  { direction }: Pattern,
  lower: Stitches = stitches(1),
  upper: Stitches = stitches(1),
): readonly [Stitches, Stitches] {
  return direction === 'up' ? [lower, upper] : [upper, lower];
}

/** From the hip's count to the bust's over the body above its hem. */
function bodyPassage(pattern: Pattern, { bust, hip }: Parts): Passage {
  const { count, span } = pattern.gauge.rows;
  const all =
    bust.rows?.body !== undefined
      ? quantity('body rows', bust.rows.body, 'rows')
      : workOut(
          'body rows',
          'a * b / c',
          {
            a: finishedLength('body length', bust.finished['body length'] ?? 0),
            b: quantity('rows of the gauge', count, 'rows'),
            c: quantity('span of the row gauge', span, 'cm'),
          },
          { unit: 'rows', rounding: { to: 'even' } },
        ).result;
  const above = workOut(
    'rows between hem and underarm',
    'a - h * b / c',
    {
      a: all,
      h: quantity('hem edging', pattern.edging.hem, 'cm'),
      b: quantity('rows of the gauge', count, 'rows'),
      c: quantity('span of the row gauge', span, 'cm'),
    },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const [from, to] = inOrder(pattern, hip.counts['body cast-on'], bust.counts.bust);
  const round = piecesAround(pattern) === 1;
  const spacing = space({
    rows: rows(Math.max(0, above.result.value)),
    from,
    to,
    perRow: round ? 4 : 2,
    carriers: round ? 'every row' : 'odd rows',
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
    stitchesPerCm: perCm(pattern.gauge.stitches.count / pattern.gauge.stitches.span),
  });
  return {
    between: 'hip and bust',
    from,
    to,
    rows: rows(above.result.value),
    spacing,
    workings: [above, ...(spacing.kind === 'spaced' ? spacing.workings : [])],
  };
}

/** From the back after its bind-offs to the cross back, within the lower half of the armhole (common practice). */
function armholePassage(pattern: Pattern, { shoulders }: Parts, armhole: Armhole): Passage {
  const { count, span } = pattern.gauge.rows;
  const half = workOut(
    'rows of the lower half of the armhole',
    shoulders.rows?.armhole === undefined ? 'a * b / c / 2' : 'a / 2',
    shoulders.rows?.armhole === undefined
      ? {
          a: finishedLength('armhole depth', shoulders.finished['armhole depth'] ?? 0),
          b: quantity('rows of the gauge', count, 'rows'),
          c: quantity('span of the row gauge', span, 'cm'),
        }
      : { a: quantity('armhole rows', shoulders.rows.armhole, 'rows') },
    { unit: 'rows', rounding: { to: 'even' } },
  );
  const after = workOut(
    'stitches of the back after its bind-offs',
    'a - 2 * b',
    {
      a: quantity('stitches of the back', armhole.back, 'stitches'),
      b: quantity('stitches bound off at each side', armhole.boundOff, 'stitches'),
    },
    { unit: 'stitches', rounding: { to: 'whole' } },
  );
  const [from, to] = inOrder(pattern, stitches(after.result.value), armhole.crossBack);
  const spacing = space({
    rows: rows(half.result.value),
    from,
    to,
    perRow: 2,
    carriers: 'odd rows',
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
    stitchesPerCm: perCm(pattern.gauge.stitches.count / pattern.gauge.stitches.span),
  });
  return {
    between: 'underarm and cross back',
    from,
    to,
    rows: rows(half.result.value),
    spacing,
    workings: [half, after, ...(spacing.kind === 'spaced' ? spacing.workings : [])],
  };
}

function joined({ shoulders, bust, hip, sleeves }: Parts, armhole: Armhole): PatternSize {
  const pick = <K extends string, V>(from: Partial<Record<K, V>>, keys: readonly K[]) =>
    Object.fromEntries(keys.filter((k) => from[k] !== undefined).map((k) => [k, from[k]]));
  return {
    label: [...new Set([shoulders.label, bust.label, hip.label])].join(' / '),
    finished: {
      ...pick(hip.finished, ['hip']),
      ...pick(bust.finished, ['bust', 'waist', 'body length']),
      ...pick(shoulders.finished, ['cross back', 'armhole depth', 'neck']),
      ...pick(sleeves.finished, ['upper arm', 'wrist', 'sleeve length']),
    },
    counts: {
      ...pick(hip.counts, ['body cast-on', 'hip']),
      ...pick(bust.counts, ['bust', 'waist']),
      ...pick(shoulders.counts, ['cross back', 'back neck', 'shoulder']),
      ...pick(sleeves.counts, ['sleeve cast-on', 'wrist', 'upper arm', 'cap top']),
    },
    rows: {
      ...pick(bust.rows ?? {}, ['body']),
      ...pick(shoulders.rows ?? {}, ['armhole']),
      ...pick(sleeves.rows ?? {}, ['sleeve', 'cap']),
    },
    armhole: { boundOff: armhole.boundOff, decreased: armhole.decreased },
    ...(shoulders.neckDepth === undefined ? {} : { neckDepth: shoulders.neckDepth }),
  };
}
