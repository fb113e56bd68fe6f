/**
 * Reads a gauge: stitches, rows or both over a span, however it is written. The span keeps the unit it was counted in:
 * 22 stitches over 4 in are not 22 over 10 cm.
 */
import type { Count } from '../../fit/gauge.ts';
import { formatTape, type LengthUnit, lengthIn } from '../../fit/units.ts';
import { counted } from './count.ts';
import { type CountNoun, type GaugeParts, gaugeParts } from './gaugeparts.ts';
import { isSameRate, type Reading, ratePerCm, readingsOf, type Span } from './gaugereadings.ts';
import { askBack, type Expected, type Heard, heard, type Option, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';

/** What was counted; at least one of the two is there. */
export interface GaugeTyped {
  readonly stitches: Count | undefined;
  readonly rows: Count | undefined;
}

export interface GaugeAsked {
  /** The unit of the interview; undefined where none was chosen yet. */
  readonly unit: LengthUnit | undefined;
  /** What a bare number counts. */
  readonly asked: CountNoun;
  /** The span that the question named, for an answer that names none. */
  readonly over?: Span;
}

type Spanned = Reading & { readonly span: Span };
/** Stitches, rows or both, each with its span. */
type Candidate = readonly Spanned[];

/**
 * Counts per centimetre beyond which a reading is asked back. The yarn standard's table runs from 6 and fewer stitches
 * (jumbo) to 40 (lace) over 4 in (Standards & Guidelines for Crochet and Knitting, Craft Yarn Council); fine lace goes
 * to about 50, and rows to 1.5 times that (common practice).
 */
const PLAUSIBLE: Readonly<Record<CountNoun, { least: number; most: number }>> = {
  stitch: { least: 5.5 / 10.16, most: 50 / 10.16 },
  row: { least: 5.5 / 10.16, most: 75 / 10.16 },
};
/** Rows to a stitch's width: stocking stitch about 1.3 to 1.5, garter stitch 2; brioche and slipped stitches less than 1. */
const USUAL_RATIO = { least: 1, most: 2.3 };
const MOST_COUNTED = 1000;
const LONGEST_SPAN_CM = 100;
const MOST_OPTIONS = 4;

const OWN = ['stitch', 'row', 'inch', 'cm', 'per', 'article', 'needle'] as const;

export function readGauge(text: string, asked: GaugeAsked): Heard<GaugeTyped> {
  const expected = expectedFor(asked);
  const tokens = listen(text, expected);
  if (isRefused(tokens)) return tokens;
  const read = gaugeParts(tokens);
  const verdict = judgeRest(
    read.rest.filter((t) => !GAUGE_WORDS.has(t.text)),
    OWN,
  );
  if (verdict === 'other kind' || verdict === 'not understood') return refused(verdict, expected);
  if (tokens[0]?.text === '-' || tokens[0]?.text === 'minus') return refused('negative', expected);
  const turned = turnedRound(read);
  if (turned !== undefined) {
    return askBack('turned round', optionOf([turned]), `Do you mean ${echoOf([turned])}?`);
  }
  const found = readingsOf(read.parts, asked.asked, asked.unit);
  if (found.kind === 'no count') return refused('no number', expected);
  if (found.kind === 'several numbers') return refused('several numbers', expected);
  if (!found.readings.every(isSound)) return refused('out of range', expected);
  const spans = found.readings.some((r) => r.span === undefined)
    ? assumedSpans(found.readings, read, asked)
    : [];
  const candidates = candidatesOf(found.readings, spans);
  const [only, another] = candidates;
  if (only === undefined || candidates.length > MOST_OPTIONS) return refused('several numbers', expected);
  if (another !== undefined) {
    const question =
      spans.length > 1
        ? 'Over which length did you count?'
        : 'Those figures differ. Which one did you count?';
    return which(question, candidates.map(optionOf));
  }
  const isAssumed = spans.length > 0 && asked.over === undefined && !goesWithoutSpan(read, asked);
  return doubt(only, { isAssumed, isGuessed: found.guessed, isExtra: verdict === 'extra words', read });
}

function expectedFor({ unit, asked }: GaugeAsked): Expected {
  const span = unit === 'in' ? '4 in' : '10 cm';
  return asked === 'row'
    ? { what: 'rows over a length', example: `30 rows over ${span}` }
    : { what: 'stitches (and rows) over a length', example: `22 stitches and 30 rows over ${span}` };
}

const GAUGE_WORDS = new Set(
  (
    'stockinette stocking stockinet garter rib ribbing jersey glatt rechts kraus carre square squares equals swatch gauge ' +
    'tension flat blocked unblocked washed unwashed after before washing blocking using when knit knitted worked getting ' +
    'size us uk mit im an ² probe maschenprobe echantillon colour color stranded reverse but which'
  ).split(' '),
);

/** '5 inches per stitch' is five stitches per inch, typed backwards. */
function turnedRound({ parts }: GaugeParts): Spanned | undefined {
  const things = parts.filter((p) => p.is !== 'joint');
  const [span, noun, more] = things;
  if (span?.is !== 'span' || noun?.is !== 'noun' || more !== undefined) return undefined;
  return { of: 'stitch', count: span.value, span: { value: 1, unit: span.unit } };
}

function isSound({ count, span }: Reading): boolean {
  const length = span === undefined ? 1 : lengthIn(span.value, span.unit);
  return count > 0 && count <= MOST_COUNTED && length > 0 && length <= LONGEST_SPAN_CM;
}

/** German and French patterns count over 10 cm without saying so; in a metric interview that is taken as read. */
function goesWithoutSpan({ metricWords }: GaugeParts, { unit }: GaugeAsked): boolean {
  return metricWords === 'words' && unit === 'cm';
}

/** The spans that an answer without one may have meant, those first that give a plausible fabric. */
function assumedSpans(
  readings: readonly Reading[],
  { metricWords }: GaugeParts,
  asked: GaugeAsked,
): readonly Span[] {
  if (asked.over !== undefined) return [asked.over];
  const unit = metricWords === 'none' ? asked.unit : 'cm';
  const units = unit === undefined ? (['cm', 'in'] as const) : [unit];
  const spans = units.map((u): Span => (u === 'cm' ? { value: 10, unit: u } : { value: 4, unit: u }));
  const perOne = units.map((u): Span => ({ value: 1, unit: u }));
  const fits = (span: Span) => readings.every((r) => isPlausible({ ...r, span: r.span ?? span }));
  const fitting = [...spans, ...perOne].filter(fits);
  return fitting.length > 0 ? fitting : spans.slice(0, 1);
}

/** Every way to take one reading of the stitches and one of the rows; figures that say the same count once. */
function candidatesOf(readings: readonly Reading[], spans: readonly Span[]): readonly Candidate[] {
  const ways = spans.length === 0 ? [undefined] : spans;
  return ways.flatMap((assumed) => {
    const spanned = readings.flatMap((r): Spanned[] => {
      const span = r.span ?? assumed;
      return span === undefined ? [] : [{ ...r, span }];
    });
    const [stitches, rows] = (['stitch', 'row'] as const).map((of) =>
      distinct(spanned.filter((r) => r.of === of)),
    );
    const rowWays: readonly Candidate[] =
      rows === undefined || rows.length === 0 ? [[]] : rows.map((r) => [r]);
    if (stitches === undefined || stitches.length === 0) return rowWays;
    return stitches.flatMap((s) => rowWays.map((r) => [s, ...r]));
  });
}

function distinct(readings: readonly Spanned[]): readonly Spanned[] {
  return readings.filter((r, i) => readings.findIndex((other) => isSameRate(other, r)) === i);
}

function isPlausible(reading: Spanned): boolean {
  const { least, most } = PLAUSIBLE[reading.of];
  const rate = ratePerCm(reading);
  return rate >= least && rate <= most;
}

interface Doubts {
  readonly isAssumed: boolean;
  readonly isGuessed: boolean;
  readonly isExtra: boolean;
  readonly read: GaugeParts;
}

/** Puts a single reading back where anything about it is unusual; hears it otherwise. */
function doubt(candidate: Candidate, { isAssumed, isGuessed, isExtra, read }: Doubts): Heard<GaugeTyped> {
  const option = optionOf(candidate);
  const odd = candidate.find((r) => !isPlausible(r));
  if (odd !== undefined) return implausible(candidate);
  if (isAssumed) return askBack('span missing', option);
  const [stitches, rows] = [find(candidate, 'stitch'), find(candidate, 'row')];
  if (stitches !== undefined && rows !== undefined) {
    const ratio = ratePerCm(rows) / ratePerCm(stitches);
    const unusual = ratio < USUAL_RATIO.least ? 'more' : ratio > USUAL_RATIO.most ? 'far fewer' : undefined;
    if (unusual !== undefined) {
      const question = `Is it really ${option.echo}? Most fabrics do not have ${unusual} stitches than rows.`;
      return askBack('unlikely', option, question);
    }
  }
  if (read.parts.some((p) => p.is === 'count' && p.approximate)) {
    const question = `About ${option.echo}: shall I take these figures? A count over ${wider(candidate)} is surer.`;
    return askBack('approximate', option, question);
  }
  if (isGuessed || isExtra) return askBack('extra words', option);
  return heard(option.value, option.echo);
}

/** Offers the span that makes a fabric of it: '20 per inch' was counted over 4 in, '5.5 over 4 in' is per inch. */
function implausible(candidate: Candidate): Heard<GaugeTyped> {
  const typed = optionOf(candidate);
  const others = (['in', 'cm'] as const)
    .filter((unit) => candidate.every((r) => r.span.unit === unit))
    .flatMap((unit): Span[] => [
      { value: 1, unit },
      { value: unit === 'in' ? 4 : 10, unit },
    ])
    .map((span) => candidate.map((r) => ({ ...r, span })))
    .filter((c) => c.every(isPlausible));
  const [other] = others;
  if (other === undefined) {
    return askBack('unlikely', typed, `That would be an unusual fabric: ${typed.echo}. Is it right?`);
  }
  return askBack('unlikely', optionOf(other), `Do you mean ${echoOf(other)}?`);
}

function wider(candidate: Candidate): string {
  return candidate[0]?.span.unit === 'cm' ? '10 cm' : '4 in';
}

function find(candidate: Candidate, of: CountNoun): Spanned | undefined {
  return candidate.find((r) => r.of === of);
}

function optionOf(candidate: Candidate): Option<GaugeTyped> {
  return {
    value: { stitches: countOf(candidate, 'stitch'), rows: countOf(candidate, 'row') },
    echo: echoOf(candidate),
  };
}

function countOf(candidate: Candidate, of: CountNoun): Count | undefined {
  const reading = find(candidate, of);
  if (reading === undefined) return undefined;
  const { count, span } = reading;
  return { count, span: lengthIn(span.value, span.unit), unit: span.unit };
}

/** '22 stitches and 30 rows over 4 in', '5.5 stitches per inch'. */
function echoOf(candidate: Candidate): string {
  const [first, second] = candidate;
  if (first === undefined) return '';
  if (second === undefined) return `${counted(first.count, first.of)} ${spanText(first.span)}`;
  const [a, b] = [counted(first.count, first.of), counted(second.count, second.of)];
  const shared = first.span.value === second.span.value && first.span.unit === second.span.unit;
  if (shared) return `${a} and ${b} ${spanText(first.span)}`;
  return `${a} ${spanText(first.span)} and ${b} ${spanText(second.span)}`;
}

function spanText({ value, unit }: Span): string {
  if (value === 1) return unit === 'in' ? 'per inch' : 'per centimetre';
  return `over ${formatTape(lengthIn(value, unit), unit)} ${unit}`;
}
