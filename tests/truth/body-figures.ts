/**
 * Published figures of real bodies, in centimetres, against which the checks are held.
 * Soldiers: 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, 2014; smallest, 1st and 99th
 * percentile, largest, computed from its public data files. Civilians: National Health and Nutrition Examination Survey,
 * US National Center for Health Statistics, 2015-2018; 1st and 99th percentile from age 20, and 5th and 95th percentile
 * of upper arm and hip within bands of the waist, computed from its public-use files.
 */
import type { Measurement, Table } from '../../src/fit/words.ts';

export interface RealFigures {
  readonly table: Table;
  readonly of: Measurement;
  readonly from: string;
  readonly figures: readonly number[];
}

// biome-ignore format: one row a line, as a table
export const REAL_FIGURES: readonly RealFigures[] = [
  { table: 'women', of: 'bust', from: 'soldiers, chest circumference', figures: [69.5, 78.4, 116.02, 126.6] },
  { table: 'women', of: 'waist', from: 'soldiers, waist circumference omphalion', figures: [61.1, 66.5, 111.51, 133.4] },
  { table: 'women', of: 'hip', from: 'soldiers, buttock circumference', figures: [79.8, 86.7, 120.63, 134.1] },
  { table: 'women', of: 'upper arm', from: 'soldiers, biceps circumference flexed', figures: [21.6, 24.4, 38.8, 43.5] },
  { table: 'women', of: 'wrist', from: 'soldiers, wrist circumference', figures: [12.4, 13.8, 17.4, 18.3] },
  { table: 'women', of: 'neck', from: 'soldiers, neck circumference base', figures: [30.2, 32.9, 42.3, 45.7] },
  { table: 'women', of: 'head', from: 'soldiers, head circumference', figures: [50, 52.1, 61.1, 63.5] },
  { table: 'women', of: 'cross back', from: 'soldiers, biacromial breadth', figures: [28.3, 32.2, 40.6, 42.2] },
  { table: 'women', of: 'cross back', from: 'soldiers, interscye ii', figures: [30.6, 33.1, 45.72, 49.3] },
  { table: 'women', of: 'back length', from: 'soldiers, waist back length omphalion', figures: [34.5, 36.48, 49.42, 53.2] },
  { table: 'women', of: 'height', from: 'soldiers, stature', figures: [140.9, 148.26, 177.76, 182.9] },
  { table: 'women', of: 'upper arm', from: 'civilians by age group', figures: [22.5, 47.8, 21.9, 48, 23.3, 48.1, 22.5, 46.8] },
  { table: 'women', of: 'waist', from: 'civilians by age group', figures: [68.6, 147.1, 66.5, 148.1, 70, 149.2, 70.2, 141.9] },
  { table: 'women', of: 'hip', from: 'civilians by age group', figures: [84.2, 156.7, 83, 161.7, 84.6, 156.2, 85, 151.2] },
  { table: 'women', of: 'height', from: 'civilians by age group', figures: [144.9, 177.2, 146.5, 178, 145.7, 177.8, 143, 175] },
  { table: 'men', of: 'bust', from: 'soldiers, chest circumference', figures: [77.4, 87.28, 127.62, 146.9] },
  { table: 'men', of: 'waist', from: 'soldiers, waist circumference omphalion', figures: [64.8, 72.48, 121.4, 137.9] },
  { table: 'men', of: 'hip', from: 'soldiers, buttock circumference', figures: [73.7, 86.18, 121.8, 130.5] },
  { table: 'men', of: 'upper arm', from: 'soldiers, biceps circumference flexed', figures: [24.6, 28, 44.8, 49] },
  { table: 'men', of: 'wrist', from: 'soldiers, wrist circumference', figures: [14.1, 15.6, 19.8, 21.6] },
  { table: 'men', of: 'neck', from: 'soldiers, neck circumference base', figures: [35, 38.08, 50.2, 54.5] },
  { table: 'men', of: 'head', from: 'soldiers, head circumference', figures: [51.6, 53.8, 61.42, 63.3] },
  { table: 'men', of: 'cross back', from: 'soldiers, biacromial breadth', figures: [33.7, 37.1, 46.3, 48.9] },
  { table: 'men', of: 'cross back', from: 'soldiers, interscye ii', figures: [34.5, 38.1, 52.32, 57.7] },
  { table: 'men', of: 'back length', from: 'soldiers, waist back length omphalion', figures: [38.3, 41.5, 54.82, 59.8] },
  { table: 'men', of: 'height', from: 'soldiers, stature', figures: [149.1, 160.16, 192.7, 199.3] },
  { table: 'men', of: 'upper arm', from: 'civilians by age group', figures: [25, 47.7, 24.9, 49.1, 25.6, 47.8, 24.6, 45.7] },
  { table: 'men', of: 'waist', from: 'civilians by age group', figures: [70.7, 149.5, 68.8, 150.5, 73.2, 148.5, 77.4, 149.5] },
  { table: 'men', of: 'hip', from: 'civilians by age group', figures: [84.6, 144.4, 84, 145, 85.8, 144.3, 85.4, 143.9] },
  { table: 'men', of: 'height', from: 'civilians by age group', figures: [157, 192.5, 157.3, 192.9, 157, 193.9, 156.3, 190] },
];

/** A band of waists, and the 5th and 95th percentile of upper arm and hip within it. */
export interface WaistBand {
  readonly table: 'women' | 'men';
  readonly waist: readonly [from: number, below: number];
  readonly upperArm: readonly [number, number];
  readonly hip: readonly [number, number];
}

// biome-ignore format: one band a line, as a table
export const WAIST_BANDS: readonly WaistBand[] = [
  { table: 'women', waist: [60, 70], upperArm: [20.2, 27.6], hip: [79.5, 94.1] },
  { table: 'women', waist: [70, 75], upperArm: [22.2, 27.9], hip: [83.4, 97.4] },
  { table: 'women', waist: [75, 80], upperArm: [23.2, 30.8], hip: [86.1, 103.7] },
  { table: 'women', waist: [80, 85], upperArm: [24.8, 31.7], hip: [88.5, 107.3] },
  { table: 'women', waist: [85, 90], upperArm: [25.9, 33.7], hip: [91.1, 110] },
  { table: 'women', waist: [90, 95], upperArm: [26.8, 34.2], hip: [94.4, 114] },
  { table: 'women', waist: [95, 100], upperArm: [27.5, 36.4], hip: [97.6, 119] },
  { table: 'women', waist: [100, 105], upperArm: [28.9, 38.6], hip: [99.5, 123] },
  { table: 'women', waist: [105, 110], upperArm: [29.7, 41], hip: [105.9, 126.9] },
  { table: 'women', waist: [110, 115], upperArm: [31, 42.5], hip: [109.1, 134.2] },
  { table: 'women', waist: [115, 120], upperArm: [31.7, 43.5], hip: [112.2, 137.6] },
  { table: 'women', waist: [120, 130], upperArm: [32.3, 47.3], hip: [118.7, 148.6] },
  { table: 'women', waist: [130, 140], upperArm: [35.7, 48.4], hip: [132.1, 153.7] },
  { table: 'women', waist: [140, 180], upperArm: [37.9, 53.2], hip: [138.5, 178.1] },
  { table: 'men', waist: [60, 70], upperArm: [23, 29.7], hip: [77.7, 88.3] },
  { table: 'men', waist: [70, 75], upperArm: [23.9, 31.2], hip: [83, 94.2] },
  { table: 'men', waist: [75, 80], upperArm: [25, 34.5], hip: [85.6, 97.2] },
  { table: 'men', waist: [80, 85], upperArm: [26.2, 35.7], hip: [87.5, 100.1] },
  { table: 'men', waist: [85, 90], upperArm: [27, 36], hip: [88.6, 102.8] },
  { table: 'men', waist: [90, 95], upperArm: [28.2, 36.6], hip: [90.6, 105.4] },
  { table: 'men', waist: [95, 100], upperArm: [28.8, 37.8], hip: [94.3, 108.3] },
  { table: 'men', waist: [100, 105], upperArm: [30, 39], hip: [97, 113.2] },
  { table: 'men', waist: [105, 110], upperArm: [30.5, 40.9], hip: [100.5, 118.2] },
  { table: 'men', waist: [110, 115], upperArm: [32.6, 40.9], hip: [101.9, 118] },
  { table: 'men', waist: [115, 120], upperArm: [33, 42.4], hip: [105.6, 123.6] },
  { table: 'men', waist: [120, 130], upperArm: [35.3, 45.5], hip: [106.9, 129.3] },
  { table: 'men', waist: [130, 140], upperArm: [36.1, 47], hip: [119.9, 136.1] },
  { table: 'men', waist: [140, 180], upperArm: [39.7, 52.1], hip: [125.4, 159.5] },
];
