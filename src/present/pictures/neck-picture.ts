/** The neck of a flat front or back: its shoulders, and the edge along which stitches are bound off and decreased. */
import type { NeckEdges, ShapedPart } from '../../fit/shaped.ts';
import { formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, named, type Point, point } from '../draw/drawing.ts';
import { inDialect } from '../terms.ts';
import type { View } from '../view.ts';
import { rightEdge } from './edge-lines.ts';
import type { Framed } from './framed.ts';
import { counted, countedRows } from './words.ts';

type ShapedNeck = Extract<ShapedPart, { shape: 'neck' }>;

/** Centimetres of the piece that are shown below the neck. */
const BELOW = 4;

export function neckFramed(shown: ShapedNeck, view: View): Omit<Framed, 'title'> {
  const { after: neck, before, gauge } = shown;
  return {
    shapes: [
      named('piece', area('fabric', 'yours', outline(neck, gauge))),
      ...(before === null ? [] : [named('piece before', area(null, 'pattern', outline(before, gauge)))]),
    ],
    across: {
      from: -neck.width / 2,
      to: neck.width / 2,
      words: [`${neck.stitches} sts, ${formatLength(neck.width, view.unit)}`],
    },
    upright: {
      from: -neck.depth,
      to: 0,
      words: [formatLength(neck.depth, view.unit), countedRows(neck.rows, 'flat')],
    },
    names: [],
    key: [
      { line: 'yours', words: 'yours' },
      ...(before === null ? [] : [{ line: 'pattern' as const, words: 'the pattern' }]),
    ],
    facts: facts(shown, view),
    drawn:
      'The piece from a little below the neck to its shoulders, its sides as they are above the armholes, to scale.',
  };
}

/** Around x = 0, the row of the centre bind-off at y = 0. */
function outline(neck: NeckEdges, gauge: Rates): Point[] {
  const half = (neck.stitches + 2 * neck.shoulder) / gauge.stitchesPerCm / 2;
  const centre = neck.centre / gauge.stitchesPerCm / 2;
  const edge = rightEdge(neck.events, neck.rows, gauge);
  const left = edge.map((p) => point(-centre - p.x, p.y));
  const right = left.map((p) => point(-p.x, p.y)).reverse();
  const top = edge.at(-1)?.y ?? 0;
  return [point(-half, BELOW), point(half, BELOW), point(half, top), ...right, ...left, point(-half, top)];
}

function facts({ after: neck, before, slope }: ShapedNeck, view: View): string[] {
  const length = (n: NeckEdges['width']) => formatLength(n, view.unit);
  const { stitches, width, depth, rows, centre, shoulder, edge } = neck;
  return [
    `${stitches} sts (${length(width)}) wide, ${countedRows(rows, 'flat')} (${length(depth)}) deep.`,
    ...(slope === 0 ? [] : [`The slope of the shoulders adds ${countedRows(slope, 'flat')} above that.`]),
    inDialect(`${atTheCentre(centre)}${atEachEdge(neck)}`, view.dialect),
    `Each shoulder: ${shoulder} sts. Neck edge: ${length(edge)}.`,
    ...(before === null
      ? []
      : [
          `The pattern: ${before.stitches} sts (${length(before.width)}) wide, ${countedRows(before.rows, 'flat')} (${length(before.depth)}) deep, ${before.shoulder} sts at each shoulder.`,
        ]),
  ];
}

/** A V begins at a point: between two stitches, or with one of its own. */
function atTheCentre(centre: number): string {
  return centre === 0 ? 'It begins at a point.' : `Centre: [bind off] ${counted(centre, 'st', 'sts')}.`;
}

/** ' Then at each neck edge bind off 3, 2 sts and decrease 1 st 9 times.' */
function atEachEdge({ steps, events }: NeckEdges): string {
  const decreases = events.filter((e) => e.by === 'decrease').length;
  const said = [
    ...(steps.length === 0 ? [] : [`[bind off] ${steps.join(', ')} sts`]),
    ...(decreases === 0 ? [] : [`decrease 1 st ${decreases === 1 ? 'once' : `${decreases} times`}`]),
  ];
  return said.length === 0 ? '' : ` Then at each neck edge ${said.join(' and ')}.`;
}
