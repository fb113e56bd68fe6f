/** A set-in cap beside the armhole edge that it is sewn into, and both edges laid straight, all to one scale. */
import { LEAST_SEEN } from '../../fit/cap-steps.ts';
import type { ArmholeOutline, CapOutline, ShapedCap } from '../../fit/shaped.ts';
import { type Cm, cm, formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, line, named, type Point, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { rightEdge, symmetrical } from './edge-lines.ts';
import type { Framed } from './framed.ts';

/** Centimetres between the parts of the drawing. */
const GAP = 3;

export function capFramed(shown: ShapedCap, view: View): Omit<Framed, 'title'> {
  const { after: cap, before, gauge, armhole } = shown;
  const width = cap.upperArm / gauge.stitchesPerCm;
  const right = width / 2 + GAP;
  const armholes = armhole.front.edge === armhole.back.edge ? [armhole.back] : [armhole.back, armhole.front];
  return {
    shapes: [
      named('cap', area('fabric', 'yours', capOutline(cap, gauge))),
      ...(before === null ? [] : [named('cap before', area(null, 'pattern', capOutline(before, gauge)))]),
      ...armholes.map((a, i) =>
        named('armhole', line('second', ...armholeEdge(a, armhole.gauge, right + i * GAP))),
      ),
      ...straightened(shown, -width / 2),
    ],
    across: null,
    upright: null,
    names: [],
    key: [
      { line: 'yours', words: 'cap' },
      ...(before === null ? [] : [{ line: 'pattern' as const, words: 'cap before' }]),
      { line: 'second', words: 'armhole' },
    ],
    facts: capFacts(shown, view),
    drawn:
      'The cap, the edge of the armhole beside it, and under them both edges laid straight, to one scale.',
  };
}

function capOutline(cap: CapOutline, gauge: Rates): Point[] {
  return symmetrical(rightEdge(cap.events, cap.rows, gauge), cap.upperArm / gauge.stitchesPerCm);
}

function armholeEdge({ events, rows }: ArmholeOutline, gauge: Rates, x: number): Point[] {
  return rightEdge(events, rows, gauge).map((p) => point(p.x + x, p.y));
}

/** The cap's edge above, front and back of the armhole below, from the same beginning. */
function straightened({ after: cap, armhole }: ShapedCap, left: number): Shape[] {
  const { front, back } = armhole;
  const y = GAP;
  const joint = left + front.edge;
  const stroke = (x: number, at: number) => line('dimension', point(x, at - 0.5), point(x, at + 0.5));
  const end = joint + back.edge;
  return [
    named('cap edge', line('yours', point(left, y), point(left + cap.edge, y))),
    stroke(left, y),
    stroke(left + cap.edge, y),
    named('armhole edge', line('second', point(left, y + 1.8), point(end, y + 1.8))),
    ...[left, joint, end].map((x) => stroke(x, y + 1.8)),
  ];
}

function capFacts({ after: cap, before, armhole }: ShapedCap, { unit }: View): string[] {
  const length = (l: Cm) => formatLength(l, unit);
  const { front, back } = armhole;
  const around = cm(front.edge + back.edge);
  return [
    `Edge of the cap: ${length(cap.edge)}. Armhole: front ${length(front.edge)}, back ${length(back.edge)}, together ${length(around)}.`,
    fitWords(cap, around, unit),
    `The cap begins with ${cap.upperArm} sts, has ${cap.rows} rows (${length(cap.height)}) and ends with ${cap.top} sts.`,
    ...(before === null
      ? []
      : [
          `Before: ${before.upperArm} sts, ${before.rows} rows (${length(before.height)}), ${before.top} sts at the end.`,
        ]),
  ];
}

function fitWords(cap: CapOutline, around: Cm, unit: View['unit']): string {
  const off = cm(cap.edge - around);
  const size = formatLength(cm(Math.abs(off)), unit);
  if (size === `0 ${unit}`) return 'The two edges are equally long.';
  const differs = `The cap's edge is ${size} ${off > 0 ? 'longer' : 'shorter'}`;
  if (Math.abs(off) < LEAST_SEEN) return `${differs}: the seam takes that up.`;
  return off > 0 ? `${differs}: ease it in.` : `${differs}: stretch it a little when sewing.`;
}
