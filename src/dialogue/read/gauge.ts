/**
 * Reads a gauge: stitches, rows or both over a span, however it is written. The span keeps the unit it was counted in:
 * 22 stitches over 4 in are not 22 over 10 cm.
 */
import { type LengthUnit, lengthIn } from '../../fit/units.ts';
import {
  type Candidate,
  doubt,
  type GaugeTyped,
  isPlausible,
  optionOf,
  type Spanned,
} from './gauge-doubt.ts';
import { type CountNoun, type GaugeParts, gaugeParts } from './gauge-parts.ts';
import { isSameRate, type Reading, readingsOf, type Span } from './gauge-readings.ts';
import { askBack, type Expected, type Heard, refused, which } from './heard.ts';
import { isRefused, listen } from './listen.ts';
import { judgeRest } from './rest.ts';

export interface GaugeAsked {
  /** The unit of the interview; undefined where none was chosen yet. */
  readonly unit: LengthUnit | undefined;
  /** What the question wants to know; a bare number counts stitches but where rows are asked for. */
  readonly asked: CountNoun | 'both';
  /** The span that the question named, for an answer that names none. */
  readonly over?: Span;
}

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
  const lacking = refused(asked.asked === 'both' ? 'incomplete' : 'other kind', expected);
  const turned = turnedRound(read);
  if (turned !== undefined) {
    return missingFrom([turned], asked.asked) ? lacking : askBack('turned round', optionOf([turned]));
  }
  const found = readingsOf(read.parts, asked.asked === 'row' ? 'row' : 'stitch', asked.unit);
  if (found.kind === 'no count') return refused('no number', expected);
  if (found.kind === 'several numbers') return refused('several numbers', expected);
  if (missingFrom(found.readings, asked.asked)) return lacking;
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
    : {
        what: asked === 'both' ? 'stitches and rows over a length' : 'stitches over a length',
        example: `22 stitches and 30 rows over ${span}`,
      };
}

const GAUGE_WORDS = new Set(
  (
    'stockinette stocking stockinet garter rib ribbing jersey glatt rechts kraus carre square squares equals swatch gauge ' +
    'tension flat blocked unblocked washed unwashed after before washing blocking using when knit knitted worked getting ' +
    'size us uk mit im an ² probe maschenprobe echantillon colour color stranded reverse'
  ).split(' '),
);

/** '5 inches per stitch' is five stitches per inch, typed backwards. */
function turnedRound({ parts }: GaugeParts): Spanned | undefined {
  const [span, noun, more] = parts.filter((p) => p.is !== 'joint');
  if (span?.is !== 'span' || !span.numbered || noun?.is !== 'noun' || more !== undefined) return undefined;
  return { of: noun.of, count: span.value, span: { value: 1, unit: span.unit } };
}

function missingFrom(readings: readonly Reading[], asked: GaugeAsked['asked']): boolean {
  const wanted: readonly CountNoun[] = asked === 'both' ? ['stitch', 'row'] : [asked];
  return !wanted.every((of) => readings.some((r) => r.of === of));
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
