/**
 * The drawn person: neutral, from front, back and side, in heads (the height of the head is 1, the crown at 0).
 * The proportions are those of the standing figure of seven and a half heads in drawing manuals, from memory.
 */
import { area, line, type Point, point, type Shape } from '../draw/drawing.ts';
import { arc, mirrored, smooth, smoothAround } from './curve.ts';

/** Pairs of x and y. */
function points(...xy: readonly number[]): Point[] {
  return xy.flatMap((x, i) => (i % 2 === 0 ? [point(x, xy[i + 1] ?? 0)] : []));
}

const p = point;

/** Places on front and back, on the reader's right; mirrored they are those on the left. */
export const FRONT = {
  neckSide: p(0.235, 1.19),
  neckBase: p(0.3, 1.24),
  shoulderTip: p(0.93, 1.47),
  armpit: p(0.79, 2.12),
  underArm: p(0.79, 2.15),
  bust: p(0.752, 2.36),
  bustPoint: p(0.36, 2.36),
  waist: p(0.64, 2.95),
  hip: p(0.79, 3.75),
  wristInside: p(1.285, 3.78),
  brow: p(0.35, 0.4),
} as const;

// biome-ignore format: pairs of x and y stand together
const ARM = points(
  0.2, 0.85,  0.2, 1.05,  0.25, 1.2,  0.5, 1.32,  0.82, 1.4,  1, 1.56,  1.08, 1.85,  1.15, 2.4,  1.24, 2.9,
  1.36, 3.4,  1.45, 3.78,  1.54, 4,  1.6, 4.24,  1.54, 4.38,  1.43, 4.24,  1.34, 4,  1.285, 3.78,
  1.17, 3.35,  1.05, 2.9,  0.94, 2.5,  0.79, 2.12,
);
// biome-ignore format: pairs of x and y stand together
const TRUNK = points(
  0.79, 2.12,  0.755, 2.32,  0.68, 2.65,  0.64, 2.95,  0.69, 3.3,  0.79, 3.75,  0.8, 4.1,  0.77, 4.6,
);
// biome-ignore format: pairs of x and y stand together
const BETWEEN_LEGS = points(
  0.07, 4.6,  0.04, 4.25,  0, 4.08,
);

// biome-ignore format: pairs of x and y stand together
const SIDE_HEAD = points(
  -0.06, 0,  -0.32, 0.12,  -0.42, 0.34,  -0.43, 0.46,  -0.52, 0.62,  -0.44, 0.68,  -0.45, 0.8,  -0.4, 0.95,
  -0.16, 0.95,  0.1, 0.86,  0.3, 0.68,  0.37, 0.42,  0.24, 0.12,
);
// biome-ignore format: pairs of x and y stand together
const SIDE_FRONT = points(
  -0.18, 0.9,  -0.16, 1.1,  -0.2, 1.28,  -0.4, 1.65,  -0.56, 2.15,  -0.5, 2.55,  -0.46, 2.95,  -0.52, 3.35,
  -0.5, 3.72,  -0.47, 4.2,  -0.44, 4.6,
);
// biome-ignore format: pairs of x and y stand together
const SIDE_BACK = points(
  0.2, 0.72,  0.2, 1.08,  0.3, 1.3,  0.46, 1.65,  0.5, 2.05,  0.4, 2.6,  0.34, 2.95,  0.43, 3.3,
  0.56, 3.72,  0.48, 4.15,  0.38, 4.6,
);
// biome-ignore format: pairs of x and y stand together
const LEG_FRONT = points(
  -0.44, 4.6,  -0.38, 5.3,  -0.33, 5.7,  -0.29, 6.3,  -0.22, 7,  -0.3, 7.22,  -0.62, 7.4,  -0.64, 7.5,
);
// biome-ignore format: pairs of x and y stand together
const LEG_BACK = points(
  0.38, 4.6,  0.24, 5.4,  0.27, 5.95,  0.24, 6.4,  0.13, 7.05,  0.2, 7.35,  0.17, 7.5,
);

/** From the armpit round to the armpit: stretched forward, so that the armpit is seen, or hanging. */
const ARMS = {
  // biome-ignore format: pairs of x and y stand together
  forward: points(
    0.02, 2.1,  0.17, 1.95,  0.2, 1.66,  0.06, 1.46,  -0.4, 1.58,  -0.95, 1.83,  -1.5, 2.03,  -1.8, 2.12,
    -1.93, 2.22,  -1.78, 2.3,  -1.45, 2.24,  -0.95, 2.15,  -0.45, 2.08,  0.02, 2.1,
  ),
  // biome-ignore format: pairs of x and y stand together
  hanging: points(
    0.24, 1.9,  0.2, 1.56,  0, 1.44,  -0.18, 1.6,  -0.24, 2.1,  -0.2, 2.8,  -0.24, 3.4,  -0.21, 3.8,
    -0.17, 4.2,  -0.06, 4.32,  0.02, 4.15,  0.02, 3.8,  0.1, 3.3,  0.12, 2.8,  0.23, 2.2,  0.24, 1.9,
  ),
} as const;

/** From crown to thigh, the arms a little away; front and back are told apart by collarbones and spine. */
export function trunkFigure(side: 'front' | 'back'): Shape[] {
  const right = [...smooth(ARM), ...smooth(TRUNK)];
  const left = mirrored(right).reverse();
  const inside = smooth([...BETWEEN_LEGS, ...mirrored(BETWEEN_LEGS.slice(0, -1)).reverse()]);
  return [
    area('skin', null, [...right, ...inside, ...left]),
    line('figure', ...right),
    line('figure', ...left),
    line('figure', ...inside),
    area('skin', 'figure', arc(p(0, 0.5), 0.36, 0.5, 0, 360)),
    ...(side === 'front' ? collarbones() : spine()),
  ];
}

function collarbones(): Shape[] {
  const bone = smooth(points(0.08, 1.44, 0.3, 1.4, 0.6, 1.44));
  return [line('hidden', ...bone), line('hidden', ...mirrored(bone))];
}

function spine(): Shape[] {
  const blade = smooth(points(0.42, 1.72, 0.34, 1.95, 0.42, 2.2));
  return [line('hidden', p(0, 1.4), p(0, 3.3)), line('hidden', ...blade), line('hidden', ...mirrored(blade))];
}

/** Places on the side view, which looks to the left. */
export const SIDE = {
  armpit: p(0.02, 2.1),
  bustPoint: p(-0.57, 2.36),
  waist: { front: p(-0.46, 2.95), back: p(0.34, 2.95) },
  hip: { front: p(-0.5, 3.72), back: p(0.56, 3.72) },
  hem: p(0.02, 4.1),
  crown: p(-0.06, 0),
  sole: 7.5,
  back: 0.58,
} as const;

/** To the thigh, or to the feet. */
export function sideFigure(arm: keyof typeof ARMS, to: 'thigh' | 'feet'): Shape[] {
  const whole = to === 'feet';
  const front = [SIDE_FRONT, ...(whole ? [LEG_FRONT] : [])].flatMap(smooth);
  const back = [SIDE_BACK, ...(whole ? [LEG_BACK] : [])].flatMap(smooth);
  return [
    area('skin', null, [...front, ...[...back].reverse()]),
    line('figure', ...front),
    line('figure', ...back),
    ...(whole ? [line('figure', p(-0.64, SIDE.sole), p(0.17, SIDE.sole))] : []),
    area('skin', 'figure', smoothAround(SIDE_HEAD)),
    area('skin', 'figure', smooth(ARMS[arm])),
  ];
}
