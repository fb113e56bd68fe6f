/**
 * What has been measured on bodies: ranges of a single measurement, and of one against another, from the tables.
 *
 * A figure is usual between the smallest and the largest one published for its table. It is possible between half the
 * smallest and twice the largest: the publications leave the rarest bodies out, and none of them is to be refused.
 */
import { CHILDREN_BY_AGE, YOUNG } from './tables/children.ts';
import { COUNCIL, type CouncilMeasure, type CouncilSize } from './tables/council.ts';
import { SHOULDER_ABOVE_NAPE } from './tables/fit-ease.ts';
import type { OriginName } from './tables/origin.ts';
import { BUST_SPAN, RELATIONS, RELATIONS_OF_ALL, type Relation } from './tables/relations.ts';
import { ADULTS, type Surveyed } from './tables/surveys.ts';
import { type Cm, cm, inches } from './units.ts';
import { MEASUREMENTS, type Measurement, TABLES, type Table } from './words.ts';

/** What is known of a body so far, and whose tables it is compared with. */
export interface Body {
  readonly table: Table;
  readonly known: Partial<Readonly<Record<Measurement, Cm>>>;
}

export interface Bounds {
  readonly low: Cm;
  readonly high: Cm;
}

/** A list of sizes shows typical bodies, not extremes: where it is the only source, a quarter is allowed on each side. */
const LIST_ALLOWANCE = 0.25;
const POSSIBLE = { low: 0.5, high: 2 };

/** Measurements that no table states, and the one whose range they share; dressmaking practice, from memory. */
const SHARES_RANGE_OF: Partial<Record<Measurement, Measurement>> = {
  'upper bust': 'bust',
  'front length': 'back length',
};

/** The yarn industry's name for a measurement, where its tables state it. */
export function councilMeasure(measurement: Measurement): CouncilMeasure | undefined {
  switch (measurement) {
    case 'bust':
    case 'waist':
    case 'hip':
    case 'upper arm':
    case 'cross back':
    case 'armhole depth':
    case 'arm length':
      return measurement;
    case 'back length':
      return 'nape to waist';
    case 'upper bust':
    case 'wrist':
    case 'neck':
    case 'head':
    case 'front length':
    case 'bust span':
    case 'height':
      return undefined;
    default:
      return measurement satisfies never;
  }
}

/** Smallest and largest published figure of a measurement; every measurement of every table has one. */
export function usualRange(measurement: Measurement, table: Table): Bounds {
  return RANGES[table][measurement];
}

/** Outside this range no body is known; nothing inside it is refused. */
export function possibleRange(measurement: Measurement, table: Table): Bounds {
  const usual = usualRange(measurement, table);
  return { low: cm(usual.low * POSSIBLE.low), high: cm(usual.high * POSSIBLE.high) };
}

/** Usual figures of a measurement beside another one of the same body. */
export interface Beside extends Bounds {
  readonly other: Measurement;
  readonly known: Cm;
  readonly origin: OriginName;
}

/** Every relation that a figure of this measurement can be held against. */
export function besides(measurement: Measurement, value: Cm, body: Body): readonly Beside[] {
  return RELATED[body.table].flatMap((r) => {
    const other = r.of === measurement ? r.to : r.to === measurement ? r.of : undefined;
    const known = other === undefined ? undefined : body.known[other];
    if (other === undefined || known === undefined) return [];
    const of = r.of === measurement;
    const base = of ? known : value;
    if (base < r.within[0] || base > r.within[1]) return [];
    const [low, high] = of ? [known * r.low, known * r.high] : [known / r.high, known / r.low];
    return [{ other, known, low: cm(low), high: cm(high), origin: r.origin }];
  });
}

const RANGES = byTable((table) => {
  const range = (m: Measurement) =>
    m === 'bust span' ? shareOfRange(BUST_SPAN, rangeFromTables('bust', table)) : rangeFromTables(m, table);
  return Object.fromEntries(MEASUREMENTS.map((m) => [m, range(m)])) as Record<Measurement, Bounds>;
});

const RELATED = byTable((table): readonly Relation[] => [
  ...RELATIONS.filter((r) => r.table === table),
  ...RELATIONS_OF_ALL.map((r) => ({ ...r, table, within: [0, Number.POSITIVE_INFINITY] as const })),
  ...(table === 'children' ? childrenByHeight() : []),
  ...besideBustInSizes(table),
]);

/** From the least share of the least to the greatest share of the greatest. */
function shareOfRange({ low, high }: { low: number; high: number }, of: Bounds): Bounds {
  return { low: cm(of.low * low), high: cm(of.high * high) };
}

function rangeFromTables(measurement: Measurement, table: Table): Bounds {
  const source = SHARES_RANGE_OF[measurement] ?? measurement;
  const surveyed = [...ADULTS, ...YOUNG, ...childrenSurveyed()].filter(
    (row) => row.table === table && row.of === source,
  );
  const listed = listedInCm(source, table);
  const allowance = surveyed.length === 0 || source !== measurement ? LIST_ALLOWANCE : 0;
  const low = Math.min(...surveyed.map((row) => row.smallest), ...listed);
  const high = Math.max(...surveyed.map((row) => row.largest), ...listed);
  return { low: cm(low * (1 - allowance)), high: cm(high * (1 + allowance)) };
}

function listedInCm(measurement: Measurement, table: Table): readonly number[] {
  const column = councilMeasure(measurement);
  if (column === undefined) return [];
  const above = measurement === 'back length' ? SHOULDER_ABOVE_NAPE[table] : 0;
  return COUNCIL[table].flatMap((size) => (size[column] ?? []).map((value) => inches(value) + above));
}

function childrenSurveyed(): readonly Surveyed[] {
  return CHILDREN_BY_AGE.flatMap((row) =>
    (['height', 'waist', 'upper arm'] as const).map((of) => ({
      table: 'children' as const,
      of,
      origin: 'civilians' as const,
      smallest: row[of][0],
      largest: row[of][2],
    })),
  );
}

/** A child's waist and upper arm against its height: 5th and 95th percentile over the median height of the same age. */
function childrenByHeight(): readonly Relation[] {
  const heights = CHILDREN_BY_AGE.map((row) => row.height);
  return (['waist', 'upper arm'] as const).map((of) => ({
    table: 'children',
    of,
    to: 'height',
    low: Math.min(...CHILDREN_BY_AGE.map((row) => row[of][0] / row.height[1])),
    high: Math.max(...CHILDREN_BY_AGE.map((row) => row[of][2] / row.height[1])),
    within: [Math.min(...heights.map((h) => h[0])), Math.max(...heights.map((h) => h[2]))],
    origin: 'civilians',
  }));
}

/** What the industry's sizes state beside the bust, wherever no survey does: adults' armholes, all of the children's. */
function besideBustInSizes(table: Table): readonly Relation[] {
  const sizes = COUNCIL[table];
  const busts = sizes.flatMap((size) => size.bust).map(inches);
  const surveyed = RELATIONS.filter((r) => r.table === table && r.to === 'bust').map((r) => r.of);
  return MEASUREMENTS.filter((of) => of !== 'bust' && !surveyed.includes(of)).flatMap((of) => {
    const shares = sizes.flatMap((size) => shareOfBust(of, size, table));
    if (shares.length === 0) return [];
    const low = Math.min(...shares) * (1 - LIST_ALLOWANCE);
    const high = Math.max(...shares) * (1 + LIST_ALLOWANCE);
    return [
      {
        table,
        of,
        to: 'bust',
        low,
        high,
        within: [Math.min(...busts), Math.max(...busts)],
        origin: 'council',
      },
    ];
  });
}

function shareOfBust(of: Measurement, size: CouncilSize, table: Table): readonly number[] {
  const column = councilMeasure(of);
  const listed = column === undefined ? undefined : size[column];
  if (listed === undefined) return [];
  const above = of === 'back length' ? SHOULDER_ABOVE_NAPE[table] : 0;
  return [
    (inches(listed[0]) + above) / inches(size.bust[0]),
    (inches(listed[1]) + above) / inches(size.bust[1]),
  ];
}

function byTable<T>(of: (table: Table) => T): Record<Table, T> {
  return Object.fromEntries(TABLES.map((table) => [table, of(table)])) as Record<Table, T>;
}
