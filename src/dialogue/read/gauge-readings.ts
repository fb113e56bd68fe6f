/** From the parts of an answer to readings: which count lies over which span, and what only repeats another figure. */
import { type LengthUnit, lengthIn } from '../../fit/units.ts';
import type { CountNoun, Part } from './gauge-parts.ts';

export interface Span {
  readonly value: number;
  readonly unit: LengthUnit;
}

export interface Reading {
  readonly of: CountNoun;
  readonly count: number;
  /** Undefined where the answer named none. */
  readonly span: Span | undefined;
}

export type Readings =
  | { readonly kind: 'readings'; readonly readings: readonly Reading[]; readonly guessed: boolean }
  | { readonly kind: 'several numbers' }
  | { readonly kind: 'no count' };

type CountPart = Extract<Part, { is: 'count' }>;
type SpanPart = Extract<Part, { is: 'span' }>;
/** A count with the spans that belong to it; `follows`: they stand behind it. */
type Place = {
  readonly part: CountPart;
  readonly spans: readonly Span[];
  readonly follows: boolean;
  readonly joint: string;
};

/** 4 in and 10 cm stand for each other in print; 0.25 cm allows for 6 in and 15 cm too. */
const PRINTED_AS_EQUAL_CM = 0.25;
/** A figure that repeats another one in the other unit or per inch may be rounded by this share. */
const REPEATS_WITHIN = 0.02;
/** Fewer rows than this to a stitch are rare: two bare numbers so near to each other count the same thing. */
const USUAL_LEAST_RATIO = 1.12;

/** Readings of stitches and rows. `own` chooses between '4 in' and '(10 cm)' where print gives both. */
export function readingsOf(all: readonly Part[], asked: CountNoun, own: LengthUnit | undefined): Readings {
  const places = placesOf(withoutSquares(all), own);
  if (places.length === 0) return { kind: 'no count' };
  const named = places.some((p) => p.part.of !== undefined) ? alternatives(places) : nameBare(places, asked);
  if (named === undefined) return { kind: 'several numbers' };
  const counts = named.places.filter((p) => p.part.of !== undefined).flatMap(readingsAt);
  const bare = named.places.filter((p) => p.part.of === undefined && !repeats(p, counts));
  const [stray, another] = bare;
  if (stray === undefined) return { kind: 'readings', readings: counts, guessed: named.guessed };
  if (another !== undefined) return { kind: 'several numbers' };
  // 'or 5' and '(5 per inch)' that do not fit contradict; '22 sts x 30' leaves the rows unnamed.
  const contradicts = ['or', '(', '='].includes(stray.joint) || counts.some((c) => c.of === 'row');
  if (contradicts) {
    const per = stray.follows ? stray.spans : [{ value: 1, unit: counts[0]?.span?.unit ?? 'in' } as const];
    const more = per.map((span) => ({ of: counts[0]?.of ?? asked, count: stray.part.value, span }));
    return { kind: 'readings', readings: [...counts, ...more], guessed: true };
  }
  const rows = { ...stray, part: { ...stray.part, of: 'row' as const } };
  return { kind: 'readings', readings: [...counts, ...readingsAt(rows)], guessed: true };
}

/** '10 x 10 cm' and '4" x 4"' are one span. */
function withoutSquares(parts: readonly Part[]): readonly Part[] {
  return parts.filter((part, i) => {
    const [joint, side] = parts.slice(i + 1, i + 3);
    const isSide = part.is === 'span' || (part.is === 'count' && part.of === undefined);
    if (!isSide || joint?.is !== 'joint' || !['x', 'by'].includes(joint.text) || side?.is !== 'span')
      return true;
    return side.value !== part.value;
  });
}

/** Each count with the spans that belong to it: those that follow it, or, where none does, the last before it. */
function placesOf(parts: readonly Part[], own: LengthUnit | undefined): readonly Place[] {
  const groups = spanGroups(parts, own);
  const firstSpan = groups[0]?.at ?? Number.POSITIVE_INFINITY;
  const spanLeads = parts.findIndex((p) => p.is === 'count') > firstSpan;
  return parts.flatMap((part, i): readonly Place[] => {
    if (part.is !== 'count') return [];
    const before = groups.findLast((g) => g.at < i);
    const after = groups.find((g) => g.at > i);
    const group = spanLeads ? (before ?? after) : (after ?? before);
    const joint = parts[i - 1];
    const follows = group !== undefined && group === after;
    return [{ part, spans: group?.spans ?? [], follows, joint: joint?.is === 'joint' ? joint.text : '' }];
  });
}

interface SpanGroup {
  readonly at: number;
  readonly spans: readonly Span[];
}

/** Spans without a count between them belong together: '4" (10 cm)'. Of a printed pair the reader's own unit counts. */
function spanGroups(parts: readonly Part[], own: LengthUnit | undefined): readonly SpanGroup[] {
  const groups: { at: number; spans: SpanPart[] }[] = [];
  let open = false;
  parts.forEach((part, at) => {
    if (part.is === 'count') open = false;
    if (part.is !== 'span') return;
    if (open) groups.at(-1)?.spans.push(part);
    else groups.push({ at, spans: [part] });
    open = true;
  });
  return groups.map(({ at, spans }) => ({ at, spans: arePrintedAsEqual(spans) ? ownOf(spans, own) : spans }));
}

function arePrintedAsEqual(spans: readonly Span[]): boolean {
  const lengths = spans.map((s) => lengthIn(s.value, s.unit));
  return Math.max(...lengths) - Math.min(...lengths) <= PRINTED_AS_EQUAL_CM;
}

function ownOf(spans: readonly Span[], own: LengthUnit | undefined): readonly Span[] {
  return [spans.find((s) => s.unit === own), ...spans].filter((s) => s !== undefined).slice(0, 1);
}

/** '20/21 mailles': a bare number joined to a named one by a slash or hyphen is another reading of it. */
function alternatives(places: readonly Place[]): { places: readonly Place[]; guessed: boolean } {
  const named = places.map((place, i) => {
    const next = places[i + 1];
    const joins = place.part.of === undefined && next?.part.of !== undefined;
    if (!joins || !['/', '-', 'to', 'or', 'oder', 'ou'].includes(next.joint)) return place;
    return { ...place, part: { ...place.part, of: next.part.of } };
  });
  return { places: named, guessed: false };
}

/** Bare numbers: one is what was asked for; two are stitches and rows, or '22/10' and '22/4', stitches over a span. */
function nameBare(
  places: readonly Place[],
  asked: CountNoun,
): { places: readonly Place[]; guessed: boolean } | undefined {
  const [first, second, third] = places;
  if (first === undefined || third !== undefined) return undefined;
  const name = (place: Place, of: CountNoun): Place => ({ ...place, part: { ...place.part, of } });
  if (second === undefined) return { places: [name(first, asked)], guessed: false };
  const over = second.part.value;
  if (
    second.joint === '/' &&
    second.spans.length === 0 &&
    (over === 10 || over === 4) &&
    first.part.value > over
  ) {
    const spans: readonly Span[] = [{ value: over, unit: over === 10 ? 'cm' : 'in' }];
    return { places: [{ ...name(first, asked), spans }], guessed: true };
  }
  if (isSameThing(first, second)) return { places: [name(first, asked), name(second, asked)], guessed: true };
  return { places: [name(first, 'stitch'), name(second, 'row')], guessed: true };
}

/** '22-23' and '5 or 5.5' are two readings of one thing; '22 x 22' are stitches and rows. */
function isSameThing(first: Place, { part, joint }: Place): boolean {
  if (joint === 'x' || joint === 'by') return false;
  return ['-', 'to', 'or', 'oder', 'ou'].includes(joint) || part.value < first.part.value * USUAL_LEAST_RATIO;
}

function readingsAt({ part, spans }: Place): readonly Reading[] {
  if (part.of === undefined) return [];
  const { of, value: count } = part;
  return spans.length === 0 ? [{ of, count, span: undefined }] : spans.map((span) => ({ of, count, span }));
}

/** Whether a bare number is another reading's rate per inch or centimetre, or over the span behind it. */
function repeats({ part, spans, follows }: Place, counts: readonly Reading[]): boolean {
  return counts.some(({ count, span }) => {
    if (span === undefined) return false;
    const per = follows ? spans : [{ value: 1, unit: span.unit }, ...spans];
    return per.some((s) => isSameRate({ count: part.value, span: s }, { count, span }));
  });
}

interface Rated {
  readonly count: number;
  readonly span: Span;
}

export function isSameRate(a: Rated, b: Rated): boolean {
  return Math.abs(ratePerCm(a) / ratePerCm(b) - 1) <= REPEATS_WITHIN;
}

export function ratePerCm({ count, span }: Rated): number {
  return count / lengthIn(span.value, span.unit);
}
