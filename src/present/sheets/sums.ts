/**
 * The sums that a knitter does by hand, line by line as the engine does them: each list of lines is made by the engine
 * itself from a sample, and only its numbers are left open. So paper and program never differ in their order.
 */
import { bustDart } from '../../fit/bust-dart.ts';
import { countFor } from '../../fit/count.ts';
import { easeLine } from '../../fit/ease.ts';
import { ANY_COUNT, type Gauge, rateAsPrinted } from '../../fit/gauge.ts';
import { rowAt, stretch } from '../../fit/heights.ts';
import { space } from '../../fit/spacing.ts';
import { cm, rows, stitches } from '../../fit/units.ts';
import type { WorkingLine } from '../../fit/working.ts';

export const SUMS = ['rows over a length', 'stitches over a width', 'waist', 'wedge'] as const;
export type Sum = (typeof SUMS)[number];

export interface SumLines {
  readonly title: string;
  readonly about: string;
  readonly lines: readonly WorkingLine[];
}

/** 22 stitches and 30 rounds over 10 cm. */
const GAUGE: Gauge = {
  stitches: rateAsPrinted({ count: 22, span: cm(10), unit: 'cm' }),
  rows: rateAsPrinted({ count: 30, span: cm(10), unit: 'cm' }),
  worked: 'round',
};

export function sumLines(sum: Sum): SumLines {
  switch (sum) {
    case 'rows over a length':
      return {
        title: 'Rows over a length, and shaping spaced over them',
        about:
          'For any section between two heights, with the same number of stitches changed in each shaping row.',
        lines: shapedOver(6, 20.73, 220, 196),
      };
    case 'stitches over a width':
      return {
        title: 'Stitches over a width',
        about:
          'The nearest count is used; the counts on either side show what a stitch more or less would measure.',
        // A width between two counts, so that both are worked.
        lines: countFor('place', cm(51), GAUGE, ANY_COUNT).workings,
      };
    case 'waist':
      return {
        title: 'A waist',
        about:
          'For a body in the round, where a shaping round changes four stitches. Then space the shaping below and above it with the sheet for rows.',
        lines: waistLines(),
      };
    case 'wedge':
      return {
        title: 'A wedge of short rows',
        about:
          'For a bust dart between two side markers. The usual clearance is 2.5 cm (1 in). Every turn is counted from its marker.',
        lines: wedgeLines(),
      };
    default:
      return sum satisfies never;
  }
}

/** Heights in centimetres from the start, counts before and after. */
function shapedOver(from: number, to: number, before: number, after: number): WorkingLine[] {
  const [low, high] = [
    rowAt('start of the section', cm(from), GAUGE),
    rowAt('end of the section', cm(to), GAUGE),
  ];
  const between = stretch('rows of this section', low, high);
  const spaced = space({
    rows: between.rows,
    from: stitches(before),
    to: stitches(after),
    perRow: 4,
    carriers: 'every row',
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
  });
  return [...between.workings, ...(spaced.kind === 'spaced' ? spaced.workings : [])];
}

function waistLines(): WorkingLine[] {
  const eased = easeLine('waist', cm(80), cm(8));
  const rule = { multiple: 4, plus: 0, edge: 0, parity: 'any' as const };
  const start = rowAt('start of the plain waist', cm(20.73), GAUGE);
  const end = rowAt('end of the plain waist', cm(23.27), GAUGE);
  return [
    eased,
    ...countFor('waist', cm(eased.result.value), GAUGE, rule).workings,
    ...stretch('rows of the plain waist', start, end).workings,
  ];
}

function wedgeLines(): readonly WorkingLine[] {
  const rates = { stitchesPerCm: GAUGE.stitches.perCm, rowsPerCm: GAUGE.rows.perCm };
  const dart = bustDart({
    depth: { from: 'lengths', front: cm(46), back: cm(42) },
    gauge: rates,
    worked: 'flat',
    direction: 'up',
    sides: 'both',
    needle: stitches(112),
    front: { start: 0, stitches: stitches(112) },
    bustSpan: cm(19),
  });
  return dart.workings;
}
