/** What a step says of its figures, held against what lies on the needle: tape checks and sentences. */
import type { Phrase, Step } from '../../src/fit/plan.ts';
import type { Quantity } from '../../src/fit/working.ts';
import { edgeOf } from '../simulator/edges.ts';
import { type OnNeedle, type Place, rowsOf } from './bench.ts';
import type { Knitting } from './knitting.ts';

export function figure(phrase: Phrase, name: string): number {
  const gap: Quantity | string | undefined = phrase.with[name];
  if (gap === undefined || typeof gap === 'string') throw new Error(`'${phrase.say}' names no ${name}`);
  return gap.value;
}

/** What the tape shows at the end of a step, `section` rows long. */
export function checked({ printed, findings }: Knitting, step: Step, on: OnNeedle, section: number): void {
  const { check } = step;
  if (check === null) return;
  const { stitchesPerCm, rowsPerCm } = printed;
  const edge = step.worked === 'round' ? 0 : 2;
  const width = (on.needle.count - edge) / stitchesPerCm;
  switch (check.say) {
    case 'check: width':
    case 'check: width around':
      findings.near(figure(check, 'width'), width, check.say);
      return;
    case 'check: width of both':
      findings.near(figure(check, 'width'), 2 * width, check.say);
      return;
    case 'check: length so far':
      findings.near(figure(check, 'length'), section / rowsPerCm, check.say);
      return;
    case 'check: length in all':
      if (on.whole) findings.near(figure(check, 'length'), rowsOf(on) / rowsPerCm, check.say);
      return;
    case 'check: wedge': {
      const [wedge] = step.instead.flatMap((one) => (one.do === 'short rows' ? [one.wedge] : []));
      findings.near(figure(check, 'depth'), (wedge?.rows ?? 0) / rowsPerCm, check.say);
      return;
    }
    case 'check: yoke depth':
      findings.near(figure(check, 'depth'), rowsOf(on) / rowsPerCm, check.say);
      return;
    case 'check: neck around':
      findings.near(figure(check, 'around'), on.needle.count / stitchesPerCm, check.say);
      return;
    case 'check: cap edge':
      findings.near(figure(check, 'edge'), capEdge(step, printed), check.say);
      return;
    // Held where the whole piece is known.
    case 'check: armhole depth':
    case 'check: armhole depth from the markers':
    case 'check: length to the shoulder':
    case 'check: shoulder drop':
    case 'check: front is wider':
    case 'check: sleeve top':
      return;
    default:
      findings.must(false, `nobody knows how to do '${check.say}'`);
  }
}

function capEdge({ instead }: Step, { stitchesPerCm, rowsPerCm }: Knitting['printed']): number {
  const [schedule] = instead.flatMap((one) => (one.do === 'shape edges' ? [one.schedule] : []));
  if (schedule === undefined) return Number.NaN;
  const side = edgeOf(schedule.events, schedule.rows, stitchesPerCm, rowsPerCm);
  return 2 * side + schedule.to / stitchesPerCm;
}

/** A sentence with figures, held against the needle that it is about. */
export function said(
  { plan, bench, printed, findings }: Knitting,
  phrase: Phrase,
  step: Step,
  place: Place,
): void {
  const on = bench.at(place);
  const height = (rows: string, length: string) =>
    findings.near(figure(phrase, length), figure(phrase, rows) / printed.rowsPerCm, phrase.say);
  switch (phrase.say) {
    case 'do: front neck begins above the underarm':
      if (on !== undefined)
        findings.same(figure(phrase, 'rows'), rowsOf(on) - (bench.marks.get(place) ?? 0), phrase.say);
      return;
    case 'do: dart complete at the bust point': {
      height('rows', 'height');
      const length = plan.finished.find(({ name }) => name === 'body, lower edge to underarm');
      if (on?.whole === true && length !== undefined)
        findings.near(
          figure(phrase, 'rows'),
          length.range.expected * printed.rowsPerCm - rowsOf(on),
          `${phrase.say}: rows to the underarm`,
        );
      return;
    }
    case 'do: dart begins at the bust point':
      height('rows', 'height');
      if (on?.whole === true) findings.same(figure(phrase, 'rows'), rowsOf(on), phrase.say);
      return;
    case 'do: more rows than the pattern':
    case 'do: fewer rows than the pattern': {
      if (step.pattern === null) return;
      const theirs = figure(step.pattern, 'rows');
      const length = plan.finished.find(({ name }) => name === 'body, lower edge to underarm');
      const mine = (length?.range.expected ?? 0) * printed.rowsPerCm;
      findings.near(figure(phrase, 'rows'), Math.abs(mine - theirs), phrase.say);
      return;
    }
    case 'do: one stitch more in front': {
      const needle = on?.needle;
      if (needle === undefined) return;
      findings.same(figure(phrase, 'front'), needle.count, phrase.say);
      needle.takeOff(0, 1);
      return;
    }
    case 'do: mark the underarm':
    case 'do: neck begins before the shoulder':
      height('rows', 'height');
      return;
    default:
      return;
  }
}
