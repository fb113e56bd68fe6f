/** What the groups are called in which wishes are listed. */
import type { WishGroup } from '../flow/schema.ts';

export const WISH_TITLES: Readonly<Record<WishGroup, string>> = {
  check: 'Is it right? Gauge, size, ease, and what the pattern says',
  body: 'The body: measures, length, waist, hem and bust',
  tops: 'Sleeves, armholes, neck, shoulders and yokes',
  sums: 'One sum: stitches, rows, buttons, bands and yarn',
};
