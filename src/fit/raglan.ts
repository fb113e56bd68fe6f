/** Raglan lines as asked for, or the reasons why not; with ways that work, each worked out. */
import {
  type ByPart,
  byPart,
  LEAST_NECK,
  type RaglanAsk,
  type RaglanFault,
  type RaglanShape,
  shapeRaglan,
} from './raglan-shape.ts';
import { cm, stitches } from './units.ts';

export type { ByPart, RaglanAsk, RaglanLine, RaglanPart, RaglanRow, RaglanShape } from './raglan-shape.ts';

/** Alternatives are offered where the neck that remains is not the one wanted. */
export type Raglan = RaglanShape & { readonly alternatives: readonly RaglanAlternative[] };

export interface CannotRaglan {
  readonly kind: 'cannot';
  /** Every part that cannot be shaped, each with its own ways out. */
  readonly faults: readonly RaglanFault[];
  readonly alternatives: readonly RaglanAlternative[];
}

/** A whole raglan that works. */
export interface RaglanAlternative {
  readonly way:
    | 'neck as wanted'
    | 'nearest neck counts'
    | 'every row'
    | 'deeper yoke'
    | 'neck counts within reach';
  readonly raglan: RaglanShape;
}

export function raglan(ask: RaglanAsk): Raglan | CannotRaglan {
  const found = shapeRaglan(ask);
  if (found.kind === 'cannot') return { ...found, alternatives: waysOut(ask) };
  return { ...found, alternatives: found.neck.verdict === 'as wanted' ? [] : neckAsWanted(ask, found) };
}

/** Changes the neck of back and front by pairs of stitches, each by half as nearly as pairs allow. */
function neckAsWanted(ask: RaglanAsk, found: RaglanShape): readonly RaglanAlternative[] {
  const pairs = Math.round((ask.neckWanted * ask.gauge.stitches.perCm - found.neck.stitches) / 2);
  const more = { back: 2 * Math.ceil(pairs / 2), front: 2 * Math.floor(pairs / 2), sleeve: 0 };
  return offer(
    'neck as wanted',
    withNeck(
      ask,
      byPart((part) => ask.parts[part].neck + more[part]),
    ),
  );
}

function waysOut(ask: RaglanAsk): readonly RaglanAlternative[] {
  const lower = withNeck(ask, nearest(ask, -1));
  const upper = withNeck(ask, nearest(ask, 1));
  const rest = shapeRaglan(upper);
  if (rest.kind === 'raglan')
    return [...offer('nearest neck counts', lower), { way: 'nearest neck counts', raglan: rest }];
  return [
    ...(ask.carriers === 'every row' ? [] : offer('every row', { ...upper, carriers: 'every row' })),
    ...deeper(upper, rest.faults),
    ...offer('neck counts within reach', withNeck(upper, withinReach(upper, rest.faults))),
  ];
}

/** Neck counts that can be reached in pairs: an odd difference goes up or down by one; two at least, underarm at most. */
function nearest(ask: RaglanAsk, by: 1 | -1): ByPart<number> {
  return byPart((part) => {
    const { underarm, neck } = ask.parts[part];
    const wanted = Math.min(underarm, Math.max(neck, LEAST_NECK));
    if ((underarm - wanted) % 2 === 0) return wanted;
    return wanted + by < LEAST_NECK ? wanted + 1 : wanted + by;
  });
}

/** As deep as the part needs that needs most. */
function deeper(ask: RaglanAsk, faults: readonly RaglanFault[]): readonly RaglanAlternative[] {
  const lengths = faults.flatMap(({ fault }) =>
    fault.kind === 'too few rows'
      ? fault.alternatives.flatMap((o) => (o.way === 'longer section' ? [o.spaced.rows as number] : []))
      : [],
  );
  const even = ask.gauge.worked === 'flat' ? 2 : 1;
  const most = even * Math.ceil(Math.max(0, ...lengths) / even);
  return offer('deeper yoke', { ...ask, depth: cm(most / ask.gauge.rows.perCm) });
}

function withinReach(ask: RaglanAsk, faults: readonly RaglanFault[]): ByPart<number> {
  return byPart((part) => {
    const fault = faults.find((f) => f.part === part)?.fault;
    const { underarm, neck } = ask.parts[part];
    return fault?.kind === 'too few rows' ? underarm - 2 * fault.available : neck;
  });
}

function withNeck(ask: RaglanAsk, necks: ByPart<number>): RaglanAsk {
  const parts = byPart((part) => ({ ...ask.parts[part], neck: stitches(necks[part]) }));
  return { ...ask, parts };
}

function offer(way: RaglanAlternative['way'], ask: RaglanAsk): readonly RaglanAlternative[] {
  const found = shapeRaglan(ask);
  return found.kind === 'raglan' ? [{ way, raglan: found }] : [];
}
