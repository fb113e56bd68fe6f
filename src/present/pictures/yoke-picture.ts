/** A round yoke as it lies flat, half of what goes around: its plain stretches and the rounds that shape between them. */
import { cm, formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import type { YokeShape } from '../../fit/yoke.ts';
import { area, line, named, type Point, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { framedPicture } from './framed.ts';
import type { Picture } from './picture.ts';
import { counted } from './words.ts';

export interface YokeShown {
  readonly yoke: YokeShape;
  /** As the pattern has it, where that is known. */
  readonly before: YokeShape | null;
  readonly gauge: Rates;
}

export function yokePicture({ yoke, before, gauge }: YokeShown, view: View): Picture {
  return framedPicture(
    {
      title: 'The yoke',
      shapes: [
        named('yoke', area('fabric', 'yours', outline(yoke, gauge))),
        ...(before === null ? [] : [named('yoke before', area(null, 'pattern', outline(before, gauge)))]),
        ...rounds(yoke, gauge),
      ],
      key: [
        { line: 'yours', words: 'yours' },
        ...(before === null ? [] : [{ line: 'pattern' as const, words: 'the pattern' }]),
      ],
      facts: [...plateauFacts(yoke, view), depthFact(yoke, view)],
      drawn:
        'The yoke as it lies flat, half of what goes around, to scale; a dotted line at each round that shapes.',
      names: [],
    },
    view,
  );
}

/** Heights in rounds from the beginning, with the half width there. */
function outline(yoke: YokeShape, gauge: Rates): Point[] {
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

function rounds(yoke: YokeShape, gauge: Rates): Shape[] {
  const sign = yoke.direction === 'up' ? -1 : 1;
  return yoke.shaping.map(({ round, spread }) => {
    const half = Math.min(spread.before, spread.after) / gauge.stitchesPerCm / 4;
    const y = (sign * (round - 1)) / gauge.rowsPerCm;
    return line('leader', point(-half, y), point(half, y));
  });
}

function plateauFacts({ plateaus, shaping }: YokeShape, { unit }: View): string[] {
  return plateaus.map(({ stitches, rounds: many, height }, i) => {
    const then = shaping[i];
    const plain = `${stitches} sts for ${counted(many, 'round', 'rounds')}, ${formatLength(height, unit)}`;
    return then === undefined
      ? `${plain}.`
      : `${plain}; round ${then.round} shapes to ${then.spread.after} sts.`;
  });
}

function depthFact({ depth, rows, neckAround }: YokeShape, { unit }: View): string {
  return `Depth: ${formatLength(depth, unit)}, ${rows} rounds. At the neck ${formatLength(cm(neckAround), unit)} around.`;
}
