/** Whether a reading makes a fabric, what is put back to the person where it does not, and how it is shown. */
import type { Count } from '../../fit/gauge.ts';
import { formatTape, lengthIn } from '../../fit/units.ts';
import { counted } from './count.ts';
import type { CountNoun, GaugeParts } from './gauge-parts.ts';
import { type Reading, ratePerCm, type Span } from './gauge-readings.ts';
import { askBack, type Heard, heard, type Option } from './heard.ts';

/** What was counted; at least one of the two is there. */
export interface GaugeTyped {
  readonly stitches: Count | undefined;
  readonly rows: Count | undefined;
}

export type Spanned = Reading & { readonly span: Span };
/** Stitches, rows or both, each with its span. */
export type Candidate = readonly Spanned[];

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
export function isPlausible(reading: Spanned): boolean {
  const { least, most } = PLAUSIBLE[reading.of];
  const rate = ratePerCm(reading);
  return rate >= least && rate <= most;
}

export interface Doubts {
  readonly isAssumed: boolean;
  readonly isGuessed: boolean;
  readonly isExtra: boolean;
  readonly read: GaugeParts;
}

/** Puts a single reading back where anything about it is unusual; hears it otherwise. */
export function doubt(
  candidate: Candidate,
  { isAssumed, isGuessed, isExtra, read }: Doubts,
): Heard<GaugeTyped> {
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

export function optionOf(candidate: Candidate): Option<GaugeTyped> {
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
export function echoOf(candidate: Candidate): string {
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
