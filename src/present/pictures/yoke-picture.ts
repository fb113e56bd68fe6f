/** A round yoke as it lies flat, half of what goes around: its plain stretches and the rounds that shape between them. */
import type { ShapedPart, YokeOutline } from '../../fit/shaped.ts';
import { formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, line, named, type Point, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import type { Framed } from './framed.ts';
import { countedRows } from './words.ts';

type ShapedYoke = Extract<ShapedPart, { shape: 'yoke' }>;

export function yokeFramed({ after: yoke, gauge }: ShapedYoke, { unit }: View): Omit<Framed, 'title'> {
  const { direction, depth, rows } = yoke;
  return {
    shapes: [named('yoke', area('fabric', 'yours', outline(yoke, gauge))), ...rounds(yoke, gauge)],
    across: null,
    upright: {
      from: direction === 'up' ? -depth : 0,
      to: direction === 'up' ? 0 : depth,
      words: [formatLength(depth, unit), countedRows(rows, 'round')],
    },
    names: [],
    key: [{ line: 'yours', words: 'yours' }],
    facts: [...plateauFacts(yoke, unit), depthFact(yoke, unit)],
    drawn:
      'The yoke as it lies flat, half of what goes around, to scale; a dotted line at each round that shapes.',
  };
}

/** Heights in rounds from the beginning, with the half width there. */
function outline(yoke: YokeOutline, gauge: Rates): Point[] {
  const sign = yoke.direction === 'up' ? -1 : 1;
  let row = 0;
  const right = yoke.plateaus.flatMap(({ stitches, rounds: many }) => {
    const half = stitches / gauge.stitchesPerCm / 4;
    const from = row;
    row += many;
    return [from, row].map((r) => point(half, (sign * r) / gauge.rowsPerCm));
  });
  return [...right, ...right.map((p) => point(-p.x, p.y)).reverse()];
}

function rounds(yoke: YokeOutline, gauge: Rates): Shape[] {
  const sign = yoke.direction === 'up' ? -1 : 1;
  return yoke.shaping.map(({ round, before, after }) => {
    const half = Math.min(before, after) / gauge.stitchesPerCm / 4;
    const y = (sign * (round - 1)) / gauge.rowsPerCm;
    return line('leader', point(-half, y), point(half, y));
  });
}

/** One a plain stretch, in the order of knitting, each with the round that ends it; a yoke may begin with such a round. */
function plateauFacts({ plateaus, shaping }: YokeOutline, unit: View['unit']): string[] {
  const ending = (count: number) => {
    const next = shaping.find(({ before }) => before === count);
    return next === undefined ? '' : `; round ${next.round} shapes to ${next.after} sts`;
  };
  const begins = shaping[0]?.before ?? 0;
  const first = plateaus[0]?.stitches === begins ? [] : [`${begins} sts at the start${ending(begins)}.`];
  const plain = plateaus.map(
    ({ stitches, rounds: many, height }) =>
      `${stitches} sts for ${countedRows(many, 'round')}, ${formatLength(height, unit)}${ending(stitches)}.`,
  );
  return [...first, ...plain];
}

function depthFact({ depth, rows, neckAround }: YokeOutline, unit: View['unit']): string {
  return `Depth: ${formatLength(depth, unit)}, ${countedRows(rows, 'round')}. At the neck ${formatLength(neckAround, unit)} around.`;
}
