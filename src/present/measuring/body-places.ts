/** Where the tape lies on a body: around it, and along it. Alternatives are the words that the interview shows too. */
import type { Measurement } from '../../fit/words.ts';
import { box, line, placed, point, rectangle, type Shape } from '../draw/drawing.ts';
import { tape, tapeAround } from './curve.ts';
import { FRONT, SIDE, sideFigure } from './figure.ts';
import { ARM, arm, HAND, hand } from './limbs.ts';
import { landmark, type Shown } from './measuring-picture.ts';
import { across, along, around, both, left, pencil, side, trunk } from './places.ts';

const WAIST_STRING = across(left(FRONT.waist), FRONT.waist);
const BACK_WAIST = point(FRONT.neckSide.x, FRONT.waist.y);
const PENCIL = box(0.4, FRONT.armpit.y, 0.85, 0.07);
const ARMHOLE_TOP = point(0.72, 1.385);

export const BODY_PLACES: Readonly<Record<Measurement, Shown>> = {
  bust: trunk(
    'front',
    'Bust or chest',
    'A figure from the front. The tape runs level around the chest at its fullest, under the arms.',
    around(FRONT.bust, 8),
    [{ words: 'tape level, at the fullest part', to: FRONT.bust }],
  ),
  'upper bust': trunk(
    'front',
    'Upper bust',
    'A figure from the front. The tape runs close under both armpits, above the fullest part.',
    around(FRONT.underArm, 5),
    [
      { words: 'tape close under both armpits', to: FRONT.underArm },
      { words: 'the fullest part is lower', to: point(0.7, 2.5) },
    ],
  ),
  waist: trunk(
    'front',
    'Waist',
    'A figure from the front with a string at the narrowest part of the trunk and the tape over it.',
    both(
      across(point(-0.85, FRONT.waist.y - 0.02), point(0.85, FRONT.waist.y - 0.02)),
      around(FRONT.waist, 6),
    ),
    [{ words: 'string at the narrowest part, the tape over it', to: FRONT.waist }],
  ),
  hip: side(
    'Hip',
    'A figure from the side. The tape runs level around the widest part below the waist.',
    (at) => tapeAround(at(SIDE.hip.front), at(SIDE.hip.back), 7),
    [{ words: 'tape level, at the widest part', to: SIDE.hip.back }],
  ),
  'upper arm': {
    title: 'Upper arm',
    alternative: 'An arm from the side, hanging. The tape circles it a hand below the armpit.',
    scale: 108,
    figure: arm(),
    tape: (at) => [
      ...tapeAround(at(ARM.tapeInside), at(ARM.tapeOutside), 9),
      ...across(ARM.armpit, point(1.5, ARM.armpit.y))(at),
      ...landmark(at(ARM.armpit)),
    ],
    labels: [
      { words: 'height of the armpit', to: point(1.5, ARM.armpit.y) },
      { words: 'tape a hand below it', to: ARM.tapeOutside },
    ],
  },
  wrist: {
    title: 'Wrist',
    alternative: 'A hand and wrist from above. The tape circles the wrist over the bone.',
    scale: 112,
    figure: hand(),
    tape: (at) => [...tapeAround(at(HAND.wrist.left), at(HAND.wrist.right), 8)],
    labels: [{ words: 'tape over the wrist bone', to: HAND.wrist.right }],
  },
  neck: trunk(
    'front',
    'Neck',
    'A figure from the front. The tape lies around the base of the neck, where a neckband will sit.',
    around(FRONT.neckBase, 13),
    [{ words: 'tape around the base of the neck', to: FRONT.neckBase }],
  ),
  head: trunk(
    'front',
    'Head',
    'A figure from the front. The tape runs around the head above the brows.',
    around(FRONT.brow, 5),
    [{ words: 'tape around the head, above the brows', to: FRONT.brow }],
  ),
  'cross back': trunk(
    'back',
    'Cross back',
    'A figure from the back. The tape lies straight from shoulder tip to shoulder tip.',
    along(left(FRONT.shoulderTip), FRONT.shoulderTip),
    [{ words: 'the bone at the tip of the shoulder', to: FRONT.shoulderTip }],
  ),
  'bust span': trunk(
    'front',
    'Bust span',
    'A figure from the front. The tape lies level between the fullest points of the bust.',
    along(left(FRONT.bustPoint), FRONT.bustPoint),
    [{ words: 'bust point', to: FRONT.bustPoint }],
  ),
  'armhole depth': trunk(
    'back',
    'Armhole depth',
    'A figure from the back with a pencil level under one arm, the tape upright from shoulder to pencil.',
    both(pencil(PENCIL), along(ARMHOLE_TOP, point(ARMHOLE_TOP.x, FRONT.armpit.y))),
    [
      { words: 'top of the shoulder', to: ARMHOLE_TOP },
      { words: 'pencil, held level', to: point(PENCIL.x + PENCIL.width + 0.1, PENCIL.y) },
    ],
  ),
  'back length': trunk(
    'back',
    'Back length',
    'A figure from the back. The tape runs from the shoulder beside the neck straight down to the waist.',
    both(WAIST_STRING, along(FRONT.neckSide, BACK_WAIST)),
    [
      { words: 'shoulder, beside the neck', to: FRONT.neckSide },
      { words: 'string at the waist', to: FRONT.waist },
    ],
  ),
  'front length': trunk(
    'front',
    'Front length',
    'A figure from the front. The tape runs from the shoulder beside the neck over the fullest part down to the waist.',
    both(WAIST_STRING, along(FRONT.neckSide, FRONT.bustPoint, point(0.33, FRONT.waist.y))),
    [
      { words: 'shoulder, beside the neck', to: FRONT.neckSide },
      { words: 'over the fullest point', to: FRONT.bustPoint },
      { words: 'string at the waist', to: FRONT.waist },
    ],
  ),
  'arm length': trunk(
    'front',
    'Underarm to wrist',
    'A figure with one arm held a little out. The tape runs along its inside from armpit to wrist.',
    along(FRONT.armpit, point(0.95, 2.52), point(1.065, 2.9), point(1.18, 3.35), FRONT.wristInside),
    [
      { words: 'armpit', to: FRONT.armpit },
      { words: 'wrist bone', to: FRONT.wristInside },
    ],
  ),
  height: height(),
};

/** Against a wall: the wall, the book on the head, and the tape upright behind. */
function height(): Shown {
  const [wall, tapeAt] = [SIDE.back, SIDE.back + 0.35];
  const book = rectangle('ground', 'figure', box(-0.5, -0.17, wall + 0.5, 0.16));
  return {
    title: 'Height',
    alternative: 'A figure against a wall, a book level on the head, the tape upright from floor to book.',
    scale: 50,
    figure: [
      line('figure', point(wall, -0.5), point(wall, SIDE.sole), point(-1.1, SIDE.sole)),
      line('figure', point(wall, SIDE.sole), point(tapeAt + 0.3, SIDE.sole)),
      ...placed(sideFigure('hanging', 'feet'), point(0, 0)),
      book,
    ],
    tape: (at): Shape[] => [
      ...across(point(wall, 0), point(tapeAt + 0.2, 0))(at),
      ...tape([at(point(tapeAt, SIDE.sole)), at(point(tapeAt, 0))]),
    ],
    labels: [
      { words: 'book, level on the head', to: point(tapeAt + 0.2, 0) },
      { words: 'tape upright at the wall', to: point(tapeAt, 4) },
      { words: 'no shoes', to: point(tapeAt + 0.3, SIDE.sole) },
    ],
  };
}
