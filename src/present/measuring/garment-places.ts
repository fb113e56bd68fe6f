/** Where tape and ruler lie for lengths that belong to a garment: on the body, on a finished piece, on the knitting. */
import { area, box, line, named, type Point, point, type Shape } from '../draw/drawing.ts';
import { tape } from './curve.ts';
import { FRONT, SIDE } from './figure.ts';
import { halfKnitted, SLEEVE, sleeve } from './limbs.ts';
import { landmark, type Shown } from './measuring-picture.ts';
import { across, along, both, pencil, side, type Tape, trunk } from './places.ts';

/** Each has the name of the question that asks for it. */
export const GARMENT_LENGTHS = [
  'sleeve length',
  'body length',
  'underarm to waist',
  'bust below underarm',
  'bust above waist',
  'shoulder drop',
] as const;
export type GarmentLength = (typeof GARMENT_LENGTHS)[number];

/** On the knitting itself, in mid-project. */
export const RECHECKED = ['recheck length', 'recheck counted', 'recheck counted rows'] as const;
export type Rechecked = (typeof RECHECKED)[number];

const { armpit, waist, hem, bustPoint } = SIDE;
const UNDER_ARM = point(armpit.x, armpit.y + 0.12);
/** Where a tape hangs in front of the arm, so that it is seen. */
const FORWARD = -0.2;
const BUST_HEIGHT = across(bustPoint, point(waist.back.x, bustPoint.y));

export const GARMENT_PLACES: Readonly<Record<GarmentLength | Rechecked, Shown>> = {
  'sleeve length': {
    title: 'Sleeve length',
    alternative: 'A sleeve laid flat. The tape runs along its underarm seam from armpit to cuff edge.',
    scale: 78,
    figure: sleeve(),
    tape: seam(SLEEVE.cuff),
    labels: [{ words: 'from the armpit along the seam to the edge of the cuff', to: SLEEVE.armpit }],
  },
  'body length': side(
    'Body length',
    'A figure from the side. The tape hangs straight from the armpit to below the waist.',
    along(armpit, hem),
    [
      { words: 'armpit', to: armpit },
      { words: 'where the sweater should end', to: hem },
    ],
  ),
  'underarm to waist': side(
    'Underarm to waist',
    'A figure from the side. The tape runs from a string at the waist up to just under the arm.',
    both(across(waist.front, waist.back), along(point(armpit.x, waist.front.y), UNDER_ARM)),
    [
      { words: 'just under the arm', to: UNDER_ARM },
      { words: 'string at the waist', to: waist.back },
    ],
  ),
  'bust below underarm': {
    ...side(
      'Bust point below underarm',
      'A figure from the side with a pencil level under the arm. The tape hangs from it to the height of the bust point.',
      both(
        pencil(box(-0.42, armpit.y + 0.02, 0.75, 0.06)),
        BUST_HEIGHT,
        along(point(FORWARD, armpit.y + 0.08), point(FORWARD, bustPoint.y)),
      ),
      [
        { words: 'pencil, held level under the arm', to: point(0.4, armpit.y + 0.05) },
        { words: 'height of the bust point', to: point(waist.back.x, bustPoint.y) },
      ],
    ),
    scale: 98,
  },
  'bust above waist': side(
    'Bust point above waist',
    'A figure from the side. The tape runs from a string at the waist up to the height of the bust point.',
    both(
      across(waist.front, waist.back),
      BUST_HEIGHT,
      along(point(FORWARD, waist.front.y), point(FORWARD, bustPoint.y)),
    ),
    [
      { words: 'height of the bust point', to: point(waist.back.x, bustPoint.y) },
      { words: 'string at the waist', to: waist.back },
    ],
  ),
  'shoulder drop': trunk(
    'front',
    'Shoulder, how steep',
    "A figure from the front. A ruler lies level from the base of the neck, and the tape hangs from it to the shoulder's tip.",
    both(
      pencil(box(FRONT.neckSide.x, FRONT.neckSide.y - 0.09, 1.05, 0.09), 0),
      along(point(FRONT.shoulderTip.x, FRONT.neckSide.y), FRONT.shoulderTip),
    ),
    [
      {
        words: 'ruler, level from the base of the neck',
        to: point(FRONT.neckSide.x + 1.05, FRONT.neckSide.y - 0.05),
      },
      { words: 'tip of the shoulder', to: FRONT.shoulderTip },
    ],
  ),
  'recheck length': {
    title: 'Length of the part',
    alternative: 'A sleeve laid flat. The tape runs from the top of its edging up to the underarm.',
    scale: 78,
    figure: sleeve(),
    tape: seam(SLEEVE.edging),
    labels: [{ words: 'from the top of the edging to the underarm', to: SLEEVE.armpit }],
  },
  'recheck counted': {
    title: 'Stitches of the knitting',
    alternative: 'A half-knitted sleeve laid flat, a ruler across its middle, the stitches under it marked.',
    scale: 84,
    figure: halfKnitted(),
    tape: ruler(box(0.85, 1.5, 1.3, 0.2), 'lying'),
    labels: [
      { words: 'ruler across the middle, away from the needle', to: point(2.15, 1.6) },
      { words: 'stitches to count', to: point(2.05, 1.85) },
    ],
  },
  'recheck counted rows': {
    title: 'Rows of the knitting',
    alternative:
      'A half-knitted sleeve laid flat, a ruler standing upright on it, the rows beside it marked.',
    scale: 84,
    figure: halfKnitted(),
    tape: ruler(box(1.2, 0.95, 0.2, 1.4), 'standing'),
    labels: [
      { words: 'rows to count, away from needle and edging', to: point(1.75, 1.4) },
      { words: 'ruler, upright', to: point(1.4, 2.3) },
    ],
  },
};

/** Along the underarm seam of a sleeve that lies flat. */
function seam(to: Point): Tape {
  return (at) => [...tape([at(SLEEVE.armpit), at(to)]), ...landmark(at(SLEEVE.armpit)), ...landmark(at(to))];
}

/** A ruler with its strokes, and beside it ten stitches or rows that are counted, every other one darker. */
function ruler({ x, y, width, height }: ReturnType<typeof box>, way: 'lying' | 'standing'): Tape {
  const long = way === 'lying' ? width : height;
  /** Along and across the ruler. */
  const place = (along: number, over: number) =>
    way === 'lying' ? point(x + along, y + over) : point(x + over, y + along);
  const wide = way === 'lying' ? height : width;
  return (at): Shape[] => {
    const strip = (from: number, to: number, low: number, high: number) =>
      [place(from, low), place(to, low), place(to, high), place(from, high)].map(at);
    const counted = Array.from({ length: 10 }, (_, i) => {
      const [from, to] = [0.1, 0.9].map((share) => long * share) as [number, number];
      const one = (to - from) / 10;
      const corners = strip(from + i * one, from + (i + 1) * one, wide, wide + 0.3);
      return named('counted', area(i % 2 === 0 ? 'ground' : 'fabric', 'dimension', corners));
    });
    const strokes = Array.from({ length: Math.floor(long / 0.05) - 1 }, (_, i) => {
      const along = 0.05 * (i + 1);
      return line(
        'stitch',
        at(place(along, wide)),
        at(place(along, wide - ((i + 1) % 5 === 0 ? 0.12 : 0.06))),
      );
    });
    return [...counted, named('ruler', area('ground', 'figure', strip(0, long, 0, wide))), ...strokes];
  };
}
