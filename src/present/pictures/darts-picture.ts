/** The front while it widens or narrows at its two dart lines. */
import type { DartsOutline, ShapedPart } from '../../fit/shaped.ts';
import { cm, formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, line, named, type Point, point } from '../draw/drawing.ts';
import type { Voice } from '../wording.ts';
import { spacedOutline } from './edge-lines.ts';
import type { Framed } from './framed.ts';
import { countedRows } from './words.ts';

type ShapedDarts = Extract<ShapedPart, { shape: 'front darts' }>;

export function dartsFramed({ after, gauge }: ShapedDarts, { unit, worked }: Voice): Omit<Framed, 'title'> {
  const { spaced, direction, fromSide } = after;
  const up = direction === 'up';
  const top = up ? spaced.to : spaced.from;
  const [high, wide] = [spaced.rows / gauge.rowsPerCm, top / gauge.stitchesPerCm];
  const width = (count: number) => `${count} sts (${formatLength(cm(count / gauge.stitchesPerCm), unit)})`;
  const long = [formatLength(cm(high), unit), countedRows(spaced.rows, worked)] as const;
  return {
    shapes: [
      named('front', area('fabric', 'yours', spacedOutline(spaced, gauge, direction))),
      ...[1, -1].map((side) => named('dart', line('string', ...dartLine(after, gauge, side)))),
    ],
    across: { from: -wide / 2, to: wide / 2, words: [`${top} sts, ${formatLength(cm(wide), unit)}`] },
    upright: { from: up ? -high : 0, to: up ? 0 : high, words: long },
    names: [],
    key: [
      { line: 'yours', words: 'the front' },
      { line: 'string', words: 'dart lines' },
    ],
    facts: [
      `The front: ${width(spaced.from)} at the start, ${width(spaced.to)} at the end, over ${long[1]} (${long[0]}).`,
      `From either side to its dart line: ${fromSide} sts at the start, ${lastFromSide(after)} at the end.`,
    ],
    drawn: 'The front over these rows with its two dart lines, to scale.',
  };
}

/** Each shaping row sets one stitch, or takes one, between a side and its dart line. */
function sign({ from, to }: DartsOutline['spaced']): 1 | -1 {
  return to > from ? 1 : -1;
}

function lastFromSide({ spaced, fromSide }: DartsOutline): number {
  return fromSide + sign(spaced) * spaced.shaping.length;
}

/** The dart line at the right (1) or at the left (-1), around x = 0 and from y = 0 in the order of knitting. */
function dartLine({ spaced, fromSide, direction }: DartsOutline, gauge: Rates, side: number): Point[] {
  const steps = [
    { row: 0, count: spaced.from as number, shaped: 0 },
    ...spaced.shaping.map(({ row, after }, i) => ({
      row: row as number,
      count: after as number,
      shaped: i + 1,
    })),
    { row: spaced.rows as number, count: spaced.to as number, shaped: spaced.shaping.length },
  ];
  return steps.map(({ row, count, shaped }) =>
    point(
      (side * (count / 2 - fromSide - sign(spaced) * shaped)) / gauge.stitchesPerCm,
      ((direction === 'up' ? -1 : 1) * row) / gauge.rowsPerCm,
    ),
  );
}
