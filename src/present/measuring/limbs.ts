/** Parts drawn large: an arm, a hand, a sleeve laid flat. Each in units of its own, about as large as a head is on a figure. */
import { area, line, type Point, point, type Shape } from '../draw/drawing.ts';
import { arc, smooth } from './curve.ts';

const p = point;

export const ARM = {
  armpit: p(0.62, 1.3),
  tapeOutside: p(1.42, 1.95),
  tapeInside: p(0.74, 1.95),
} as const;

/** An arm hanging from its shoulder, with the edge of the trunk beside it. */
export function arm(): Shape[] {
  const outside = smooth([
    p(0.1, 0.1),
    p(0.6, 0.16),
    p(1.12, 0.42),
    p(1.36, 0.95),
    p(1.42, 1.9),
    p(1.3, 2.9),
    p(1.34, 3.5),
  ]);
  const inside = smooth([p(0.62, 1.3), p(0.72, 1.7), p(0.76, 2.2), p(0.78, 2.8), p(0.8, 3.5)]);
  const trunk = smooth([p(0.62, 1.3), p(0.56, 1.8), p(0.46, 2.5), p(0.44, 3.1), p(0.48, 3.5)]);
  return [
    area('skin', null, [...outside, ...[...inside].reverse(), p(0.1, 1.3)]),
    area('skin', null, [p(0.1, 1.3), ...trunk, p(0.1, 3.5)]),
    line('figure', ...outside),
    line('figure', ...inside),
    line('figure', ...trunk),
  ];
}

export const HAND = { wrist: { left: p(0.62, 2.62), right: p(1.38, 2.62) }, bone: p(1.3, 2.55) } as const;

/** A left hand from above: fingers, thumb, and the palm laid over their roots. */
export function hand(): Shape[] {
  const fingers: readonly [root: Point, tip: Point, half: number][] = [
    [p(0.66, 1.35), p(0.5, 0.72), 0.1],
    [p(0.86, 1.3), p(0.78, 0.38), 0.115],
    [p(1.09, 1.3), p(1.09, 0.26), 0.12],
    [p(1.32, 1.35), p(1.4, 0.44), 0.115],
    [p(1.3, 2.05), p(1.86, 1.42), 0.125],
  ];
  const left = smooth([p(0.54, 1.3), p(0.55, 1.75), p(0.62, 2.3), p(0.63, 2.62), p(0.6, 3.4)]);
  const right = smooth([p(1.44, 1.3), p(1.45, 1.65), p(1.47, 1.8)]);
  const heel = smooth([p(1.5, 2), p(1.44, 2.3), p(1.38, 2.62), p(1.42, 3.4)]);
  return [
    ...fingers.map(([root, tip, half]) => area('skin', 'figure', capsule(root, tip, half))),
    area('skin', null, [...left, ...[...heel].reverse(), ...[...right].reverse()]),
    line('figure', ...left),
    line('figure', ...right),
    line('figure', ...heel),
    area(null, 'hidden', arc(HAND.bone, 0.07, 0.07, 0, 360)),
  ];
}

function capsule(root: Point, tip: Point, half: number): Point[] {
  const angle = (Math.atan2(tip.y - root.y, tip.x - root.x) * 180) / Math.PI;
  return [...arc(tip, half, half, angle - 90, angle + 90), ...arc(root, half, half, angle + 90, angle + 270)];
}

export const SLEEVE = { armpit: p(2.7, 1.75), cuff: p(0.3, 1.62), edging: p(0.62, 1.637) } as const;

/** A sleeve laid flat beside the edge of its sweater: the fold above, the underarm seam below. */
export function sleeve(): Shape[] {
  const cap = smooth([p(2.98, 0.42), p(2.86, 0.9), p(2.76, 1.3), p(2.7, 1.75)]);
  const fold = smooth([p(0.3, 0.98), p(1.2, 0.78), p(2.3, 0.5), p(2.98, 0.42)]);
  const body = smooth([p(2.98, 0.42), p(3.3, 0.3), p(3.6, 0.24)]);
  const cuff = [p(0.62, 0.92), p(0.62, 1.66)];
  return [
    area('fabric', null, [...fold, ...cap, SLEEVE.cuff]),
    area('fabric', null, [...cap, p(2.74, 2.6), p(3.6, 2.6), p(3.6, 0.24), ...[...body].reverse()]),
    line('figure', ...fold),
    line('figure', SLEEVE.cuff, p(0.3, 0.98)),
    line('hidden', ...cuff),
    line('figure', ...cap),
    line('figure', SLEEVE.cuff, SLEEVE.armpit, p(2.74, 2.6)),
    line('figure', ...body),
  ];
}

/** A sleeve on the needle, knitted half way: its cuff below, the needle above. */
export const KNITTING = { middle: p(1.5, 1.55), needle: p(2.75, 0.5), cuff: p(1.1, 2.9) } as const;

export function halfKnitted(): Shape[] {
  const left = [p(0.55, 0.52), p(0.9, 2.6), p(0.9, 2.95)];
  const right = left.map((q) => p(3 - q.x, q.y)).reverse();
  const loops = Array.from({ length: 13 }, (_, i) => {
    const x = 0.62 + (i * (2.38 - 0.62)) / 12;
    return line('stitch', ...arc(p(x, 0.5), 0.06, 0.08, 150, 390));
  });
  return [
    area('fabric', 'figure', [...left, ...right]),
    line('hidden', p(0.9, 2.6), p(2.1, 2.6)),
    ...loops,
    line('figure', p(0.2, 0.5), p(2.85, 0.5)),
    area('ground', 'figure', arc(p(0.2, 0.5), 0.06, 0.06, 0, 360)),
  ];
}
