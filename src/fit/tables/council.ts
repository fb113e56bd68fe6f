/**
 * The yarn industry's body tables: bodies without ease, inches, lowest and highest of each size as published.
 * Source: Craft Yarn Council's www.YarnStandards.com (editions of 2015 and 2018), set down from memory. Memory is sure
 * but for men's waist and hip (medium); the children's lengths, cross back and upper arm were also read at second hand.
 * The published centimetres are these inches rounded to half a centimetre, so the inches are kept.
 * The men's largest hip and all men's sizes above it are not known.
 */
import type { Table } from '../words.ts';

/** What the tables state. Their back length starts at the nape; their arm length runs from underarm to wrist. */
export const COUNCIL_MEASURES = [
  'bust',
  'waist',
  'hip',
  'upper arm',
  'cross back',
  'armhole depth',
  'nape to waist',
  'arm length',
] as const;
export type CouncilMeasure = (typeof COUNCIL_MEASURES)[number];

type Inches = readonly [low: number, high: number];

export type CouncilSize = { readonly size: string; readonly bust: Inches } & Partial<
  Readonly<Record<CouncilMeasure, Inches>>
>;

// biome-ignore format: one size a line, as a table
export const COUNCIL: Readonly<Record<Table, readonly CouncilSize[]>> = {
  women: [
    { size: 'X-Small', bust: [28, 30], waist: [23, 24], hip: [33, 34], 'upper arm': [9.75, 9.75], 'cross back': [14, 14.5], 'armhole depth': [6, 6.5], 'nape to waist': [16.5, 16.5], 'arm length': [16.5, 16.5] },
    { size: 'Small', bust: [32, 34], waist: [25, 26.5], hip: [35, 36], 'upper arm': [10.25, 10.25], 'cross back': [14.5, 15], 'armhole depth': [6.5, 7], 'nape to waist': [17, 17], 'arm length': [17, 17] },
    { size: 'Medium', bust: [36, 38], waist: [28, 30], hip: [38, 40], 'upper arm': [11, 11], 'cross back': [16, 16.5], 'armhole depth': [7, 7.5], 'nape to waist': [17.25, 17.25], 'arm length': [17, 17] },
    { size: 'Large', bust: [40, 42], waist: [32, 34], hip: [42, 44], 'upper arm': [12, 12], 'cross back': [17, 17.5], 'armhole depth': [7.5, 8], 'nape to waist': [17.5, 17.5], 'arm length': [17.5, 17.5] },
    { size: 'X-Large', bust: [44, 46], waist: [36, 38], hip: [46, 48], 'upper arm': [13.5, 13.5], 'cross back': [17.5, 17.5], 'armhole depth': [8, 8.5], 'nape to waist': [17.75, 17.75], 'arm length': [17.5, 17.5] },
    { size: '2X', bust: [48, 50], waist: [40, 42], hip: [52, 53], 'upper arm': [15.5, 15.5], 'cross back': [18, 18], 'armhole depth': [8.5, 9], 'nape to waist': [18, 18], 'arm length': [18, 18] },
    { size: '3X', bust: [52, 54], waist: [44, 45], hip: [54, 55], 'upper arm': [17, 17], 'cross back': [18, 18], 'armhole depth': [9, 9.5], 'nape to waist': [18, 18], 'arm length': [18, 18] },
    { size: '4X', bust: [56, 58], waist: [46, 47], hip: [56, 57], 'upper arm': [18.5, 18.5], 'cross back': [18.5, 18.5], 'armhole depth': [9.5, 10], 'nape to waist': [18.5, 18.5], 'arm length': [18.5, 18.5] },
    { size: '5X', bust: [60, 62], waist: [49, 50], hip: [61, 62], 'upper arm': [19.5, 19.5], 'cross back': [18.5, 18.5], 'armhole depth': [10, 10.5], 'nape to waist': [18.5, 18.5], 'arm length': [18.5, 18.5] },
  ],
  men: [
    { size: 'Small', bust: [34, 36], waist: [28, 30], hip: [35, 37], 'upper arm': [12, 12], 'cross back': [15.5, 16], 'armhole depth': [8.5, 9], 'arm length': [18, 18] },
    { size: 'Medium', bust: [38, 40], waist: [32, 34], hip: [39, 41], 'upper arm': [13, 13], 'cross back': [16.5, 17], 'armhole depth': [9, 9.5], 'arm length': [18.5, 18.5] },
    { size: 'Large', bust: [42, 44], waist: [36, 38], hip: [43, 45], 'upper arm': [15, 15], 'cross back': [17.5, 18], 'armhole depth': [9.5, 10], 'arm length': [19.5, 19.5] },
    { size: 'X-Large', bust: [46, 48], waist: [42, 44], hip: [47, 49], 'upper arm': [16, 16], 'cross back': [18, 18.5], 'armhole depth': [10, 10.5], 'arm length': [20, 20] },
    { size: 'XX-Large', bust: [50, 52], waist: [46, 48], 'upper arm': [17, 17], 'cross back': [18.5, 19], 'armhole depth': [10.5, 11], 'arm length': [20.5, 20.5] },
  ],
  children: [
    { size: '2', bust: [21, 21], waist: [21, 21], hip: [22, 22], 'upper arm': [7, 7], 'cross back': [9.25, 9.25], 'armhole depth': [4.25, 4.25], 'nape to waist': [8.5, 8.5], 'arm length': [8.5, 8.5] },
    { size: '4', bust: [23, 23], waist: [21.5, 21.5], hip: [23.5, 23.5], 'upper arm': [7.5, 7.5], 'cross back': [9.75, 9.75], 'armhole depth': [4.75, 4.75], 'nape to waist': [9.5, 9.5], 'arm length': [10.5, 10.5] },
    { size: '6', bust: [25, 25], waist: [22.5, 22.5], hip: [25, 25], 'upper arm': [8, 8], 'cross back': [10.25, 10.25], 'armhole depth': [5, 5], 'nape to waist': [10.5, 10.5], 'arm length': [11.5, 11.5] },
    { size: '8', bust: [26.5, 26.5], waist: [23.5, 23.5], hip: [28, 28], 'upper arm': [8.5, 8.5], 'cross back': [10.75, 10.75], 'armhole depth': [5.5, 5.5], 'nape to waist': [12.5, 12.5], 'arm length': [12.5, 12.5] },
    { size: '10', bust: [28, 28], waist: [24.5, 24.5], hip: [29.5, 29.5], 'upper arm': [8.75, 8.75], 'cross back': [11.25, 11.25], 'armhole depth': [6, 6], 'nape to waist': [14, 14], 'arm length': [13.5, 13.5] },
    { size: '12', bust: [30, 30], waist: [25, 25], hip: [31.5, 31.5], 'upper arm': [9, 9], 'cross back': [12, 12], 'armhole depth': [6.5, 6.5], 'nape to waist': [15, 15], 'arm length': [15, 15] },
    { size: '14', bust: [31.5, 31.5], waist: [26.5, 26.5], hip: [33, 33], 'upper arm': [9.25, 9.25], 'cross back': [12.25, 12.25], 'armhole depth': [7, 7], 'nape to waist': [15.5, 15.5], 'arm length': [16, 16] },
    { size: '16', bust: [32.5, 32.5], waist: [27.5, 27.5], hip: [35.5, 35.5], 'upper arm': [9.5, 9.5], 'cross back': [13, 13], 'armhole depth': [7.5, 7.5], 'nape to waist': [16, 16], 'arm length': [16.5, 16.5] },
  ],
  babies: [
    { size: '3 months', bust: [16, 16], waist: [18, 18], hip: [19, 19], 'upper arm': [5.5, 5.5], 'cross back': [7.25, 7.25], 'armhole depth': [3.25, 3.25], 'nape to waist': [6, 6], 'arm length': [6, 6] },
    { size: '6 months', bust: [17, 17], waist: [19, 19], hip: [20, 20], 'upper arm': [6, 6], 'cross back': [7.75, 7.75], 'armhole depth': [3.5, 3.5], 'nape to waist': [7, 7], 'arm length': [6.5, 6.5] },
    { size: '12 months', bust: [18, 18], waist: [20, 20], hip: [20, 20], 'upper arm': [6.5, 6.5], 'cross back': [8.25, 8.25], 'armhole depth': [3.75, 3.75], 'nape to waist': [7.5, 7.5], 'arm length': [7.5, 7.5] },
    { size: '18 months', bust: [19, 19], waist: [20.5, 20.5], hip: [21, 21], 'upper arm': [7, 7], 'cross back': [8.5, 8.5], 'armhole depth': [4, 4], 'nape to waist': [8, 8], 'arm length': [8, 8] },
    { size: '24 months', bust: [20, 20], waist: [21, 21], hip: [22, 22], 'upper arm': [7.5, 7.5], 'cross back': [8.75, 8.75], 'armhole depth': [4.25, 4.25], 'nape to waist': [8.5, 8.5], 'arm length': [8.5, 8.5] },
  ],
};
