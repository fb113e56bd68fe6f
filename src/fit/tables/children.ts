/**
 * Children and babies as surveyed, in centimetres.
 * By age: National Health and Nutrition Examination Survey 2015-2018, 113 to 218 children a cell, so that the outer
 * percentiles are rough. Heights by size: CDC Growth Charts, 2000, medians at the age that names the size.
 */
import type { Surveyed } from './surveys.ts';

type Percentiles = readonly [fifth: number, median: number, ninetyFifth: number];

export interface ChildrenOfAge {
  readonly age: number;
  readonly who: 'girls' | 'boys';
  readonly height: Percentiles;
  readonly waist: Percentiles;
  readonly 'upper arm': Percentiles;
}

// biome-ignore format: one age a line, as a table
export const CHILDREN_BY_AGE: readonly ChildrenOfAge[] = [
  { age: 2, who: 'girls', height: [83.6, 89.8, 97], waist: [43, 48.1, 53.6], 'upper arm': [14.1, 16, 18.2] },
  { age: 3, who: 'girls', height: [90.5, 97.2, 106.1], waist: [45, 50.8, 55.6], 'upper arm': [14.7, 16.5, 19.2] },
  { age: 4, who: 'girls', height: [97.6, 105.2, 114.3], waist: [47.3, 52.4, 66.2], 'upper arm': [15.4, 17.4, 21.1] },
  { age: 5, who: 'girls', height: [102.6, 113, 123], waist: [48.4, 54.6, 68.5], 'upper arm': [15.8, 18, 22.5] },
  { age: 6, who: 'girls', height: [109.2, 119.9, 127.3], waist: [48.6, 54.6, 77.3], 'upper arm': [16, 18.5, 25.9] },
  { age: 7, who: 'girls', height: [115.1, 124.1, 134.3], waist: [50.1, 58.6, 79.9], 'upper arm': [16.4, 19.5, 25.8] },
  { age: 8, who: 'girls', height: [120.4, 130, 142.7], waist: [51.5, 60.1, 82.9], 'upper arm': [17, 20.7, 27.8] },
  { age: 9, who: 'girls', height: [126, 136.7, 148.2], waist: [54.1, 62.4, 86.3], 'upper arm': [18, 21.3, 28] },
  { age: 10, who: 'girls', height: [130.9, 142.7, 156.5], waist: [54, 68.7, 91.4], 'upper arm': [18.1, 23.2, 30.7] },
  { age: 11, who: 'girls', height: [138.8, 151.6, 164.5], waist: [59, 70.4, 98.6], 'upper arm': [19.7, 24.4, 32.9] },
  { age: 12, who: 'girls', height: [143.7, 154.5, 165.1], waist: [60, 74.6, 97.5], 'upper arm': [19.5, 25.5, 33.3] },
  { age: 13, who: 'girls', height: [145.9, 157.6, 168.4], waist: [63.2, 77.5, 101.9], 'upper arm': [21.2, 26, 35.7] },
  { age: 14, who: 'girls', height: [150.4, 161.4, 173.8], waist: [66.8, 77.9, 98], 'upper arm': [22.2, 27.2, 36.1] },
  { age: 15, who: 'girls', height: [151.5, 160.3, 173.3], waist: [65.9, 76.4, 106.9], 'upper arm': [22.3, 26.5, 37.2] },
  { age: 16, who: 'girls', height: [151.8, 161.4, 173.1], waist: [67.4, 79.2, 109.6], 'upper arm': [22.7, 27.8, 37] },
  { age: 17, who: 'girls', height: [152.8, 162.5, 173.2], waist: [67.4, 82.1, 107.6], 'upper arm': [23.4, 28.6, 37.4] },
  { age: 18, who: 'girls', height: [150, 162.6, 171.4], waist: [66.5, 81.9, 117.3], 'upper arm': [22.8, 28.4, 39.9] },
  { age: 19, who: 'girls', height: [153.5, 161.1, 175.5], waist: [68.7, 83.6, 126.8], 'upper arm': [23.3, 29.7, 39.7] },
  { age: 2, who: 'boys', height: [84.8, 91.2, 98.6], waist: [42.8, 48.7, 54.6], 'upper arm': [14.3, 16.2, 18.3] },
  { age: 3, who: 'boys', height: [91.9, 99.8, 106.8], waist: [45.6, 50.3, 64.4], 'upper arm': [14.7, 16.4, 21.2] },
  { age: 4, who: 'boys', height: [98.2, 106.1, 115.6], waist: [47.7, 52.3, 62.4], 'upper arm': [15.2, 17.2, 20.5] },
  { age: 5, who: 'boys', height: [104.8, 112.8, 124.3], waist: [48.7, 53.8, 71.1], 'upper arm': [15.3, 17.8, 23.3] },
  { age: 6, who: 'boys', height: [110, 120.2, 129.1], waist: [49.1, 56.1, 75.3], 'upper arm': [16.1, 18.5, 24] },
  { age: 7, who: 'boys', height: [116.1, 126.1, 136.2], waist: [50.9, 57.4, 74.7], 'upper arm': [16.5, 19, 25.2] },
  { age: 8, who: 'boys', height: [121.3, 131.9, 143.6], waist: [52.4, 60.4, 84.5], 'upper arm': [16.7, 20.2, 28.1] },
  { age: 9, who: 'boys', height: [123.7, 136.7, 149.1], waist: [54.7, 62.9, 90.2], 'upper arm': [17.7, 21.1, 29.7] },
  { age: 10, who: 'boys', height: [131.2, 142.3, 153.3], waist: [55.5, 67.8, 94.1], 'upper arm': [18.8, 23, 31.1] },
  { age: 11, who: 'boys', height: [136.9, 148.6, 165.5], waist: [56, 69.3, 98], 'upper arm': [18.6, 23.8, 32.7] },
  { age: 12, who: 'boys', height: [140.4, 154.4, 169.8], waist: [59.1, 69.3, 98.3], 'upper arm': [19.1, 23.8, 33.5] },
  { age: 13, who: 'boys', height: [149.5, 163.5, 173], waist: [61.5, 72.8, 109.7], 'upper arm': [20.6, 25.7, 37.4] },
  { age: 14, who: 'boys', height: [156, 170.3, 180.8], waist: [64.6, 76, 109.1], 'upper arm': [21.6, 27.3, 39] },
  { age: 15, who: 'boys', height: [160.1, 173.4, 183.8], waist: [64, 78.9, 121.7], 'upper arm': [22.2, 29.5, 40.1] },
  { age: 16, who: 'boys', height: [160.3, 172.8, 185.9], waist: [67.4, 78.9, 112], 'upper arm': [24.4, 29.4, 38.2] },
  { age: 17, who: 'boys', height: [163.7, 175.2, 188.4], waist: [66.5, 79.7, 122.5], 'upper arm': [23.9, 30.3, 41.6] },
  { age: 18, who: 'boys', height: [164.3, 175.6, 186.2], waist: [67.4, 80.2, 125.7], 'upper arm': [24.7, 30.4, 41.6] },
  { age: 19, who: 'boys', height: [162.9, 176.1, 185.8], waist: [70, 85.4, 117.3], 'upper arm': [26.3, 31.9, 39.7] },
];

/** Median heights (length, lying, under two years) of girls and boys at the age after which a size is named. */
export interface SizeByHeight {
  readonly size: string;
  readonly girls: number;
  readonly boys: number;
}

export const HEIGHTS_BY_SIZE: Readonly<Record<'children' | 'babies', readonly SizeByHeight[]>> = {
  children: [
    { size: '2', girls: 85.4, boys: 86.86 },
    { size: '4', girls: 101.03, boys: 102.51 },
    { size: '6', girls: 115.01, boys: 115.66 },
    { size: '8', girls: 127.83, boys: 128.12 },
    { size: '10', girls: 138.21, boys: 138.82 },
    { size: '12', girls: 151.49, boys: 149.31 },
    { size: '14', girls: 160.48, boys: 164.14 },
    { size: '16', girls: 162.57, boys: 173.61 },
  ],
  babies: [
    { size: '3 months', girls: 60.46, boys: 62.08 },
    { size: '6 months', girls: 66.12, boys: 67.86 },
    { size: '12 months', girls: 74.4, boys: 76.12 },
    { size: '18 months', girls: 80.8, boys: 82.41 },
    { size: '24 months', girls: 86.2, boys: 87.66 },
  ],
};

/**
 * Extremes beside those of `CHILDREN_BY_AGE`. The bust of children is surveyed nowhere: the waist stands in. What no
 * publication here states (neck, wrist, head of children) is the trade's common practice, from memory.
 */
// biome-ignore format: one row a line, as a table
export const YOUNG: readonly Surveyed[] = [
  { table: 'children', of: 'height', origin: 'growth', smallest: 78.82, largest: 190.19 },
  { table: 'children', of: 'bust', origin: 'civilians', smallest: 42.8, largest: 126.8 },
  { table: 'children', of: 'hip', origin: 'civilians', smallest: 42.8, largest: 126.8 },
  { table: 'children', of: 'neck', origin: 'trade', smallest: 20, largest: 46 },
  { table: 'children', of: 'wrist', origin: 'trade', smallest: 9, largest: 20 },
  { table: 'children', of: 'head', origin: 'trade', smallest: 43, largest: 61 },
  { table: 'babies', of: 'height', origin: 'growth', smallest: 44.93, largest: 94.32 },
  { table: 'babies', of: 'upper arm', origin: 'civilians', smallest: 12, largest: 17.9 },
  { table: 'babies', of: 'neck', origin: 'trade', smallest: 14, largest: 28 },
  { table: 'babies', of: 'wrist', origin: 'trade', smallest: 6, largest: 15 },
  { table: 'babies', of: 'head', origin: 'trade', smallest: 26, largest: 52 },
];
