/** Where the tape lies for lengths that a garment takes from body or sleeve. */
import { point } from '../draw/drawing.ts';
import { across, along, both, side } from './body-places.ts';
import { tape } from './curve.ts';
import { SIDE } from './figure.ts';
import { SLEEVE, sleeve } from './limbs.ts';
import { landmark, type Shown } from './measuring-picture.ts';

export const GARMENT_LENGTHS = ['sleeve length', 'body length', 'underarm to waist'] as const;
export type GarmentLength = (typeof GARMENT_LENGTHS)[number];

const { armpit, waist, hem } = SIDE;

export const GARMENT_PLACES: Readonly<Record<GarmentLength, Shown>> = {
  'sleeve length': {
    title: 'Sleeve length',
    alternative: 'A sleeve laid flat. The tape runs along its underarm seam from armpit to cuff edge.',
    scale: 78,
    figure: sleeve(),
    tape: (at) => [
      ...tape([at(SLEEVE.armpit), at(SLEEVE.cuff)]),
      ...landmark(at(SLEEVE.armpit)),
      ...landmark(at(SLEEVE.cuff)),
    ],
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
    both(
      across(waist.front, waist.back),
      along(point(armpit.x, waist.front.y), point(armpit.x, armpit.y + 0.12)),
    ),
    [
      { words: 'just under the arm', to: point(armpit.x, armpit.y + 0.12) },
      { words: 'string at the waist', to: waist.back },
    ],
  ),
};
