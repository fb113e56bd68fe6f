/** What a step shapes, as a picture to scale. */
import type { ShapedPart } from '../../fit/shaped.ts';
import type { Voice } from '../wording.ts';
import { capFramed } from './cap-picture.ts';
import { dartsFramed } from './darts-picture.ts';
import { dropFramed } from './drop-picture.ts';
import { type Framed, framedPicture } from './framed.ts';
import { neckFramed } from './neck-picture.ts';
import type { Picture } from './picture.ts';
import { raglanFramed } from './raglan-picture.ts';
import { shoulderFramed } from './shoulder-picture.ts';
import { yokeFramed } from './yoke-picture.ts';

export function shapedPicture(shaped: ShapedPart, title: string, voice: Voice): Picture {
  return framedPicture({ title, ...framed(shaped, voice) }, voice);
}

function framed(shaped: ShapedPart, voice: Voice): Omit<Framed, 'title'> {
  switch (shaped.shape) {
    case 'cap':
      return capFramed(shaped, voice);
    case 'neck':
      return neckFramed(shaped, voice);
    case 'drop shoulder':
      return dropFramed(shaped, voice);
    case 'raglan':
      return raglanFramed(shaped, voice);
    case 'yoke':
      return yokeFramed(shaped, voice);
    case 'stepped shoulders':
      return shoulderFramed(shaped, voice);
    case 'front darts':
      return dartsFramed(shaped, voice);
    default:
      return shaped satisfies never;
  }
}
