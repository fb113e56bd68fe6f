/** A set-in cap beside the armhole edge that it is sewn into, and both edges laid straight, all to one scale. */

import type { Armhole } from '../../fit/armhole.ts';
import type { Cap } from '../../fit/cap.ts';
import { type Cm, cm, formatLength } from '../../fit/units.ts';
import type { Rates } from '../../fit/wedge-base.ts';
import { area, line, named, type Point, placed, point, type Shape } from '../draw/drawing.ts';
import type { View } from '../view.ts';
import { rightEdge, symmetrical } from './edge-lines.ts';
import { type Framed, framedPicture } from './framed.ts';
import type { Picture } from './picture.ts';

export interface CapShown {
  readonly cap: Cap;
  /** The cap as it was, where it is known. */
  readonly before: Cap | null;
  readonly gauge: Rates;
  readonly armhole: { readonly front: Armhole; readonly back: Armhole; readonly gauge: Rates };
}

/** Centimetres between the parts of the drawing. */
const GAP = 3;

export function capPicture(shown: CapShown, view: View): Picture {
  return framedPicture(capFramed(shown, view), view);
}

function capFramed(shown: CapShown, view: View): Framed {
  const { cap, before, gauge, armhole } = shown;
  const width = cap.upperArm / gauge.stitchesPerCm;
  const right = width / 2 + GAP;
  const armholes = armhole.front.edge === armhole.back.edge ? [armhole.back] : [armhole.back, armhole.front];
  return {
    title: 'The cap and its armhole',
    shapes: [
      named('cap', area('fabric', 'yours', capOutline(cap, gauge))),
      ...(before === null ? [] : [named('cap before', area(null, 'pattern', capOutline(before, gauge)))]),
      ...armholes.map((a, i) =>
        named('armhole', line('second', ...armholeEdge(a, armhole.gauge, right + i * GAP))),
      ),
      ...straightened(shown, -width / 2),
    ],
    key: [
      { line: 'yours', words: 'cap' },
      ...(before === null ? [] : [{ line: 'pattern' as const, words: 'cap before' }]),
      { line: 'second', words: 'armhole' },
    ],
    facts: capFacts(shown, view),
    drawn:
      'The cap, the edge of the armhole beside it, and under them both edges laid straight, to one scale.',
    names: [],
  };
}

function capOutline(cap: Cap, gauge: Rates): Point[] {
  return symmetrical(rightEdge(cap.events, cap.rows, gauge), cap.upperArm / gauge.stitchesPerCm);
}

function armholeEdge(armhole: Armhole, gauge: Rates, x: number): Point[] {
  return placed([line('second', ...rightEdge(armhole.events, armhole.rows, gauge))], point(x, 0)).flatMap(
    (s) => (s.shape === 'path' ? s.points : []),
  );
}

/** The cap's edge above, front and back of the armhole below, from the same beginning. */
function straightened({ cap, armhole }: CapShown, left: number): Shape[] {
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

function capFacts({ cap, armhole }: CapShown, { unit }: View): string[] {
  const length = (l: Cm) => formatLength(l, unit);
  const { front, back } = armhole;
  const around = cm(front.edge + back.edge);
  return [
    `Edge of the cap: ${length(cap.edge)}. Armhole: front ${length(front.edge)}, back ${length(back.edge)}, together ${length(around)}.`,
    fitWords(cap, around, unit),
    `The cap begins with ${cap.upperArm} sts, has ${cap.rows} rows (${length(cap.height)}) and ends with ${cap.top} sts.`,
  ];
}

function fitWords(cap: Cap, around: Cm, unit: View['unit']): string {
  const off = cm(cap.edge - around);
  const size = formatLength(cm(Math.abs(off)), unit);
  if (size === `0 ${unit}`) return 'The two edges are equally long.';
  return off > 0
    ? `The cap's edge is ${size} longer: ease it in.`
    : `The cap's edge is ${size} shorter: stretch it a little when sewing.`;
}
