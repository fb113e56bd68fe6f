/**
 * The likely figure of a measurement that was not taken, from what is known of the body and the published tables.
 * Offered as a table's figure by name, and used where the answer is 'I don't know'. Undefined where no source is sound.
 */
import { type Body, councilMeasure } from './bounds.ts';
import { HEIGHTS_BY_SIZE } from './tables/children.ts';
import { COUNCIL, type CouncilSize } from './tables/council.ts';
import { SHOULDER_ABOVE_NAPE, STANDARD_BUST_DIFFERENCE } from './tables/fit-ease.ts';
import type { OriginName } from './tables/origin.ts';
import { BUST_SPAN } from './tables/relations.ts';
import { ADULTS, CHEST_BANDS, SHARES_OF_HEIGHT } from './tables/surveys.ts';
import { type Cm, cm, inches } from './units.ts';
import type { Measurement } from './words.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** How a likely figure was found. */
export type UsualRule =
  /** The size of the industry's table whose bust comes nearest. */
  | { readonly by: 'size of this bust'; readonly size: string }
  /** The size named after the age at which this height is the median. */
  | { readonly by: 'size of this height'; readonly size: string }
  | { readonly by: 'band of chest'; readonly from: Cm; readonly below: Cm }
  | { readonly by: 'share of height' }
  | { readonly by: 'share of bust' }
  | { readonly by: 'median of all' }
  /** Patterns are drafted for a bust that exceeds the upper bust by so much. */
  | { readonly by: 'standard difference' };

export interface Usual {
  readonly value: Cm;
  readonly source: OriginName;
  readonly rule: UsualRule;
  readonly workings: readonly WorkingLine[];
}

/** A table's figure for a measurement, or undefined where there is none to be trusted. */
export function usual(measurement: Measurement, body: Body): Usual | undefined {
  switch (measurement) {
    case 'bust':
      return byHeightOfSize(measurement, body);
    case 'upper bust':
      return body.table === 'women' ? underStandardBust(body) : undefined;
    case 'waist':
    case 'upper arm':
    case 'cross back':
    case 'armhole depth':
      return bySize(measurement, body);
    case 'hip':
      // The men's sizes give no hip from a 50 in chest on: one source for all of them, so that hips never shrink.
      return body.table === 'men'
        ? (byChestBand(measurement, body) ?? bySize(measurement, body))
        : (bySize(measurement, body) ?? byChestBand(measurement, body));
    case 'back length':
    case 'arm length':
      return byShareOfHeight(measurement, body) ?? bySize(measurement, body);
    case 'wrist':
    case 'neck':
      return byChestBand(measurement, body) ?? medianOfAll(measurement, body);
    case 'bust span':
      return byShareOfBust(body);
    case 'head':
      return medianOfAll(measurement, body);
    case 'front length':
    case 'height':
      return undefined;
    default:
      return measurement satisfies never;
  }
}

function bySize(measurement: Measurement, body: Body): Usual | undefined {
  const bust = body.known.bust;
  if (bust === undefined) return byHeightOfSize(measurement, body);
  const size = nearestSize(bust, COUNCIL[body.table]);
  return size && fromSize(measurement, size, { by: 'size of this bust', size: size.size }, body);
}

/** Ages name the sizes of children and babies, and a height has an age at which it is the median. */
function byHeightOfSize(measurement: Measurement, { table, known }: Body): Usual | undefined {
  if (known.height === undefined || table === 'women' || table === 'men') return undefined;
  const tall = known.height;
  const distance = (row: { girls: number; boys: number }) => Math.abs((row.girls + row.boys) / 2 - tall);
  const nearest = HEIGHTS_BY_SIZE[table].reduce((a, b) => (distance(b) <= distance(a) ? b : a));
  const size = COUNCIL[table].find((s) => s.size === nearest.size);
  return (
    size && fromSize(measurement, size, { by: 'size of this height', size: size.size }, { table, known })
  );
}

/** The size whose bust range lies nearest; between two, the larger. */
function nearestSize(bust: Cm, sizes: readonly CouncilSize[]): CouncilSize | undefined {
  const distance = ({ bust: [low, high] }: CouncilSize) =>
    Math.max(inches(low) - bust, bust - inches(high), 0);
  return sizes.reduce<CouncilSize | undefined>(
    (a, b) => (a === undefined || distance(b) <= distance(a) + 1e-9 ? b : a),
    undefined,
  );
}

function fromSize(
  measurement: Measurement,
  size: CouncilSize,
  rule: UsualRule,
  { table }: Body,
): Usual | undefined {
  const column = councilMeasure(measurement);
  const listed = column === undefined ? undefined : size[column];
  if (column === undefined || listed === undefined) return undefined;
  const [low, high] = listed;
  const middle = workOut(
    `${column} of size ${size.size}`,
    '(a + b) / 2',
    {
      a: quantity(`${column}, least of size ${size.size}`, inches(low), 'cm'),
      b: quantity(`${column}, most of size ${size.size}`, inches(high), 'cm'),
    },
    { unit: 'cm' },
  );
  if (measurement !== 'back length') return result([middle], 'council', rule);
  return result([middle, fromShoulder(middle, table)], 'council', rule);
}

function byShareOfHeight(
  measurement: 'back length' | 'arm length',
  { table, known }: Body,
): Usual | undefined {
  if (known.height === undefined || (table !== 'women' && table !== 'men')) return undefined;
  const shares = SHARES_OF_HEIGHT[table];
  const height = quantity('height', known.height, 'cm');
  const rule = { by: 'share of height' } as const;
  if (measurement === 'back length') {
    const share = quantity('nape to waist, share of height', shares['nape to waist'], 'ratio');
    const nape = workOut('nape to waist', 'a * b', { a: height, b: share }, { unit: 'cm' });
    return result([nape, fromShoulder(nape, table)], 'soldiers', rule);
  }
  const arm = {
    a: height,
    b: quantity('shoulder to wrist, share of height', shares['shoulder to wrist'], 'ratio'),
    c: quantity('shoulder to armpit, share of height', shares['shoulder to armpit'], 'ratio'),
  };
  return result([workOut('underarm to wrist', 'a * (b - c)', arm, { unit: 'cm' })], 'soldiers', rule);
}

function fromShoulder(nape: WorkingLine, table: Body['table']): WorkingLine {
  const above = quantity("shoulder's highest point above the nape", SHOULDER_ABOVE_NAPE[table], 'cm');
  return workOut('back length', 'a + b', { a: nape.result, b: above }, { unit: 'cm' });
}

function byChestBand(measurement: 'wrist' | 'neck' | 'hip', { table, known }: Body): Usual | undefined {
  const bust = known.bust;
  if (bust === undefined || (table !== 'women' && table !== 'men')) return undefined;
  const bands = CHEST_BANDS[table];
  const band = bands.find((b) => bust < b.below) ?? bands.at(-1);
  if (band === undefined) return undefined;
  const rule = { by: 'band of chest', from: cm(band.from), below: cm(band.below) } as const;
  return taken(measurement, 'median of this chest', band[measurement], 'soldiers', rule);
}

function byShareOfBust({ known }: Body): Usual | undefined {
  if (known.bust === undefined) return undefined;
  const given = {
    a: quantity('bust', known.bust, 'cm'),
    b: quantity('bust point to bust point, share of the bust', BUST_SPAN.usual, 'ratio'),
  };
  return result([workOut('bust span', 'a * b', given, { unit: 'cm' })], 'trade', { by: 'share of bust' });
}

function medianOfAll(measurement: Measurement, { table }: Body): Usual | undefined {
  const row = ADULTS.find((r) => r.table === table && r.of === measurement);
  if (row?.median === undefined) return undefined;
  return taken(measurement, 'median of all', row.median, row.origin, { by: 'median of all' });
}

function underStandardBust({ known }: Body): Usual | undefined {
  if (known.bust === undefined) return undefined;
  const given = {
    a: quantity('bust', known.bust, 'cm'),
    b: quantity('bust above upper bust, as patterns are drafted', inches(STANDARD_BUST_DIFFERENCE), 'cm'),
  };
  const line = workOut('upper bust', 'a - b', given, { unit: 'cm' });
  return result([line], 'upper torso', { by: 'standard difference' });
}

function taken(
  measurement: Measurement,
  what: string,
  value: number,
  source: OriginName,
  rule: UsualRule,
): Usual {
  const line = workOut(measurement, 'a', { a: quantity(what, value, 'cm') }, { unit: 'cm' });
  return result([line], source, rule);
}

function result(workings: readonly WorkingLine[], source: OriginName, rule: UsualRule): Usual {
  return { value: cm(workings.at(-1)?.result.value ?? Number.NaN), source, rule, workings };
}
