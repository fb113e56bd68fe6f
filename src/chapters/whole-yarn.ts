/** The yarn for a garment that is planned: from its own measurements and a swatch, or from the pattern's amount. */
import { piecesAround } from '../fit/pattern.ts';
import { type Part, phrase } from '../fit/plan.ts';
import { widthLine } from '../fit/steps.ts';
import { type Cm, cm } from '../fit/units.ts';
import { type ShortRows, sweaterArea } from '../fit/yarn-garment.ts';
import { yarnPart } from '../fit/yarn-steps.ts';
import { sampleSize } from './figures.ts';
import type { Ledger } from './ledger.ts';
import { ownGauge } from './own-gauge.ts';
import { needFromSwatch, needOfBalls } from './yarn.ts';

/** Of the sample all measurements are known; of another pattern the amount that it prints is. */
export function yarnOfGarment(book: Ledger, garment: readonly Part[]): Part[] {
  const planned = sampleSize(book) === undefined ? undefined : measured(book, garment);
  if (planned === undefined) {
    const need = needOfBalls(book);
    return need === undefined ? [] : [yarnPart(need, [], [phrase('note: yarn of the pattern as printed')])];
  }
  const area = sweaterArea(planned, shortRowsOf(garment));
  const need = needFromSwatch(book, area.area);
  return need === undefined
    ? []
    : [yarnPart(need, area.workings, [phrase('note: area is reckoned roughly')])];
}

function shortRowsOf(garment: readonly Part[]): readonly ShortRows[] {
  return garment
    .flatMap((part) => part.steps)
    .flatMap((step) => step.instead)
    .flatMap((one) => (one.do === 'short rows' ? [one.wedge] : []));
}

/** As it will come out: what the plan changes, and the rest as the sample has it at the knitter's gauge. */
function measured(book: Ledger, garment: readonly Part[]) {
  const sample = sampleSize(book);
  const [around, flat] = [ownGauge(book, sample?.pattern.body ?? 'round'), ownGauge(book, 'flat')];
  if (sample === undefined || around === undefined || flat === undefined) return undefined;
  const { counts, finished } = sample.size;
  const { edge } = sample.pattern;
  const planned = (name: string): Cm | undefined =>
    garment.flatMap((part) => part.finished).find((f) => f.name === name)?.range.expected;
  const width = (count: number | undefined, stitches: number, pieces: 1 | 2) =>
    count === undefined ? undefined : cm(widthLine('', count, flat, stitches, pieces).result.value);
  const bust = planned('bust') ?? width(counts.bust, edge.body, piecesAround(sample.pattern));
  const upperArm = planned('upper arm') ?? width(counts['upper arm'], edge.sleeves, 1);
  const wrist = planned('wrist') ?? width(counts.wrist, edge.sleeves, 1);
  const sleeve = planned('sleeve, cuff to underarm') ?? finished['sleeve length'];
  const body = planned('body, lower edge to underarm') ?? finished['body length'];
  const armhole = planned('armhole depth') ?? finished['armhole depth'];
  if (bust === undefined || upperArm === undefined || wrist === undefined) return undefined;
  if (sleeve === undefined || body === undefined || armhole === undefined) return undefined;
  return { bust, length: cm(body + armhole), upperArm, wrist, sleeve };
}
