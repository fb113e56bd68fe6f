/**
 * Adults as surveyed, in centimetres: the smallest and largest figure published, and the median where it stands in for
 * a measurement that was not taken.
 *
 * Soldiers (2012 Anthropometric Survey of U.S. Army Personnel, 2014; 1,986 women and 4,082 men aged 17 to 58): smallest
 * and largest person measured. Their waist is taken at the navel, the upper arm flexed, the neck round its base.
 * Civilians (National Health and Nutrition Examination Survey 2015-2018, ages 20 and over, about 5,100 women and 4,900
 * men): no extremes are published with percentiles, so smallest and largest are the 5th and 95th percentile of the
 * lowest and highest waist band, and the edges of these bands for the waist itself, which is taken at the hip bone.
 */
import type { Measurement, Table } from '../words.ts';
import type { OriginName } from './origin.ts';

export interface Surveyed {
  readonly table: Table;
  readonly of: Measurement;
  readonly origin: OriginName;
  readonly smallest: number;
  readonly median?: number;
  readonly largest: number;
}

// biome-ignore format: one row a line, as a table
export const ADULTS: readonly Surveyed[] = [
  { table: 'women', of: 'bust', origin: 'soldiers', smallest: 69.5, largest: 126.6 },
  // No survey measures a civilian bust: the widest waist stands in for the largest.
  { table: 'women', of: 'bust', origin: 'civilians', smallest: 69.5, largest: 180 },
  { table: 'women', of: 'waist', origin: 'soldiers', smallest: 61.1, largest: 133.4 },
  { table: 'women', of: 'waist', origin: 'civilians', smallest: 60, largest: 180 },
  { table: 'women', of: 'hip', origin: 'soldiers', smallest: 79.8, largest: 134.1 },
  { table: 'women', of: 'hip', origin: 'civilians', smallest: 79.5, largest: 178.1 },
  { table: 'women', of: 'upper arm', origin: 'soldiers', smallest: 21.6, largest: 43.5 },
  { table: 'women', of: 'upper arm', origin: 'civilians', smallest: 20.2, largest: 53.2 },
  { table: 'women', of: 'wrist', origin: 'soldiers', smallest: 12.4, median: 15.4, largest: 18.3 },
  { table: 'women', of: 'neck', origin: 'soldiers', smallest: 27.5, median: 37, largest: 45.7 },
  { table: 'women', of: 'head', origin: 'soldiers', smallest: 50, median: 56, largest: 63.5 },
  { table: 'women', of: 'height', origin: 'soldiers', smallest: 140.9, largest: 182.9 },
  { table: 'women', of: 'cross back', origin: 'soldiers', smallest: 27, largest: 49.3 },
  { table: 'women', of: 'back length', origin: 'soldiers', smallest: 31, largest: 53.2 },
  { table: 'women', of: 'arm length', origin: 'soldiers', smallest: 31.45, largest: 56.65 },
  { table: 'men', of: 'bust', origin: 'soldiers', smallest: 77.4, largest: 146.9 },
  { table: 'men', of: 'bust', origin: 'civilians', smallest: 77.4, largest: 180 },
  { table: 'men', of: 'waist', origin: 'soldiers', smallest: 64.8, largest: 137.9 },
  { table: 'men', of: 'waist', origin: 'civilians', smallest: 60, largest: 180 },
  { table: 'men', of: 'hip', origin: 'soldiers', smallest: 73.7, largest: 130.5 },
  { table: 'men', of: 'hip', origin: 'civilians', smallest: 77.7, largest: 159.5 },
  { table: 'men', of: 'upper arm', origin: 'soldiers', smallest: 24.6, largest: 49 },
  { table: 'men', of: 'upper arm', origin: 'civilians', smallest: 23, largest: 52.1 },
  { table: 'men', of: 'wrist', origin: 'soldiers', smallest: 14.1, median: 17.6, largest: 21.6 },
  { table: 'men', of: 'neck', origin: 'soldiers', smallest: 31.1, median: 43.3, largest: 54.5 },
  { table: 'men', of: 'head', origin: 'soldiers', smallest: 51.6, median: 57.4, largest: 63.3 },
  { table: 'men', of: 'height', origin: 'soldiers', smallest: 149.1, largest: 199.3 },
  { table: 'men', of: 'cross back', origin: 'soldiers', smallest: 32.8, largest: 57.7 },
  { table: 'men', of: 'back length', origin: 'soldiers', smallest: 34.45, largest: 59.8 },
  { table: 'men', of: 'arm length', origin: 'soldiers', smallest: 37.7, largest: 59.8 },
];
// Neck: smallest at the larynx, largest round the base. Cross back: tape across the back between the arms, by both of
// the survey's ways (interscye I smallest, interscye II largest).
// Back length: from the nape, smallest to the middle between rib and hip bone, largest to the navel.
// Arm length: shoulder point to wrist less the median drop from shoulder point to armpit (women 9.55, men 11.1).

/** Medians of soldiers within a band of chest girth, for what the yarn industry's tables leave out. */
export interface ChestBand {
  readonly from: number;
  readonly below: number;
  readonly wrist: number;
  readonly neck: number;
  readonly hip: number;
}

// biome-ignore format: one band a line, as a table
export const CHEST_BANDS: Readonly<Record<'women' | 'men', readonly ChestBand[]>> = {
  women: [
    { from: 71, below: 79, wrist: 14.6, neck: 34.5, hip: 89.6 },
    { from: 79, below: 84, wrist: 14.8, neck: 35, hip: 92.2 },
    { from: 84, below: 89, wrist: 15.1, neck: 35.7, hip: 96.4 },
    { from: 89, below: 94, wrist: 15.3, neck: 36.7, hip: 100.1 },
    { from: 94, below: 99, wrist: 15.5, neck: 37.3, hip: 103.5 },
    { from: 99, below: 104, wrist: 15.8, neck: 38.1, hip: 106.4 },
    { from: 104, below: 109, wrist: 15.9, neck: 38.7, hip: 108.7 },
    { from: 109, below: 119, wrist: 16.4, neck: 39.8, hip: 113.2 },
  ],
  men: [
    { from: 77, below: 86, wrist: 16.4, neck: 38.3, hip: 86.2 },
    { from: 86, below: 92, wrist: 16.6, neck: 40, hip: 89.3 },
    { from: 92, below: 97, wrist: 16.9, neck: 41, hip: 93.4 },
    { from: 97, below: 102, wrist: 17.2, neck: 42.2, hip: 97.5 },
    { from: 102, below: 107, wrist: 17.5, neck: 43, hip: 101.3 },
    { from: 107, below: 112, wrist: 17.8, neck: 44.2, hip: 104.5 },
    { from: 112, below: 117, wrist: 18.1, neck: 45.4, hip: 107.6 },
    { from: 117, below: 127, wrist: 18.4, neck: 46.5, hip: 111.7 },
    { from: 127, below: 150, wrist: 19.1, neck: 48.4, hip: 119.8 },
  ],
};

/** Median shares of height among soldiers: nape to navel along the back, and underarm to wrist. */
export const SHARES_OF_HEIGHT = {
  women: { 'nape to waist': 0.2604, 'shoulder to wrist': 0.3331, 'shoulder to armpit': 9.55 / 162.6 },
  men: { 'nape to waist': 0.2713, 'shoulder to wrist': 0.3372, 'shoulder to armpit': 11.1 / 175.5 },
} as const;
