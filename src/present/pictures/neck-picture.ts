/** The neck of a flat front or back: its shoulders, and the edge along which stitches are bound off and decreased. */
import type { Neck } from '../../fit/neck.ts';
import { formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, named, type Point, point } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { rightEdge } from './edge-lines.ts';
import { framedPicture } from './framed.ts';
import type { Picture } from './picture.ts';

export interface NeckShown {
  readonly neck: Neck;
  /** As the pattern has it, where that is known. */
  readonly before: Neck | null;
  readonly gauge: Rates;
}

/** Centimetres of the piece that are shown below the neck. */
const BELOW = 4;

export function neckPicture({ neck, before, gauge }: NeckShown, view: View): Picture {
  return framedPicture(
    {
      title: 'The neck',
      shapes: [
        named('piece', area('fabric', 'yours', outline(neck, gauge))),
        ...(before === null ? [] : [named('piece before', area(null, 'pattern', outline(before, gauge)))]),
      ],
      key: [
        { line: 'yours', words: 'yours' },
        ...(before === null ? [] : [{ line: 'pattern' as const, words: 'the pattern' }]),
      ],
      facts: facts(neck, view),
      drawn: 'The piece from a little below the neck to its shoulders, to scale.',
      names: [],
    },
    view,
  );
}

/** Around x = 0, the row of the centre bind-off at y = 0. */
function outline(neck: Neck, gauge: Rates): Point[] {
  const half = (neck.stitches + 2 * neck.shoulder) / gauge.stitchesPerCm / 2;
  const centre = neck.centre / gauge.stitchesPerCm / 2;
  const edge = rightEdge(
    neck.sides.last.events.map((e) => ({ ...e, edge: 'right' as const })),
    neck.rows,
    gauge,
  );
  const left = edge.map((p) => point(-centre - p.x, p.y));
  const right = left.map((p) => point(-p.x, p.y)).reverse();
  const top = edge.at(-1)?.y ?? 0;
  return [point(-half, BELOW), point(half, BELOW), point(half, top), ...right, ...left, point(-half, top)];
}

function facts({ width, depth, rows, centre, shoulder, edge, steps }: Neck, { unit }: View): string[] {
  const then = steps.length === 0 ? '' : ` Then at each neck edge ${steps.join(', ')} sts.`;
  return [
    `${formatLength(width, unit)} wide, ${formatLength(depth, unit)} deep (${rows} rows).`,
    `Centre: ${centre} sts.${then}`,
    `Each shoulder: ${shoulder} sts. Neck edge: ${formatLength(edge, unit)}.`,
  ];
}
