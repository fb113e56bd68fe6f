/**
 * Ease (garment minus body) by fit, and lengths below the waist. In inches; a centimetre column is printed rounded.
 * Source: Craft Yarn Council's www.YarnStandards.com, Standards & Guidelines for Crochet and Knitting, 2015 and later:
 * names read at second hand, figures from memory. An older edition (to about 2014) means other amounts by `very close`
 * and `close`; the current one is used.
 */
import type { Fit, Region, Table } from '../words.ts';
import type { OriginName } from './origin.ts';

/** Least and most ease, in inches; `null` where there is no upper end. */
export type EaseInches = readonly [least: number, most: number | null];

export interface EaseOf {
  readonly region: Region;
  readonly origin: OriginName;
  readonly by: Readonly<Record<Fit, EaseInches>>;
}

// biome-ignore format: one region a line, as a table
export const EASE: readonly EaseOf[] = [
  { region: 'bust', origin: 'council', by: { 'very close': [-4, -2], close: [0, 0], classic: [2, 4], loose: [4, 6], oversized: [6, null] } },
  // The areas below have amounts of their own: common practice of the trade, from memory.
  { region: 'cross back', origin: 'trade', by: { 'very close': [-0.5, 0], close: [0, 0], classic: [0, 0.5], loose: [0.5, 1], oversized: [1, 2] } },
  { region: 'armhole depth', origin: 'trade', by: { 'very close': [0, 0], close: [0, 0.5], classic: [0.5, 1], loose: [1, 1.5], oversized: [1.5, 2.5] } },
  // The opening before a band is picked up: a round neck needs this much; wider is a matter of style.
  { region: 'neck', origin: 'trade', by: { 'very close': [1, null], close: [1, null], classic: [1, null], loose: [1, null], oversized: [1, null] } },
  { region: 'upper arm', origin: 'trade', by: { 'very close': [-1, 0], close: [0, 1], classic: [1, 2], loose: [2, 4], oversized: [4, 6] } },
  { region: 'wrist', origin: 'trade', by: { 'very close': [0, 0.5], close: [0.5, 1], classic: [1, 2], loose: [1.5, 2.5], oversized: [2, 4] } },
  { region: 'waist', origin: 'trade', by: { 'very close': [-2, 0], close: [0, 1], classic: [2, 4], loose: [4, 8], oversized: [6, 12] } },
  { region: 'hip', origin: 'trade', by: { 'very close': [-2, 0], close: [0, 1], classic: [1, 3], loose: [3, 5], oversized: [4, 8] } },
  { region: 'sleeve length', origin: 'trade', by: { 'very close': [0, 0], close: [0, 0], classic: [0, 0], loose: [0, 0], oversized: [0, 0] } },
];

/** How far beyond the least an open-ended amount is aimed: 2 in, common practice, from memory. */
export const OPEN_ENDED_AIM = 2;

/** How far below the waist a garment ends. */
export const GARMENT_LENGTHS = ['waist', 'hip', 'tunic'] as const;
export type GarmentLength = (typeof GARMENT_LENGTHS)[number];

/** Inches below the waist; none is published for men or babies. The children's were read at second hand. */
export const BELOW_WAIST: Partial<Readonly<Record<Table, Readonly<Record<GarmentLength, number>>>>> = {
  women: { waist: 0, hip: 6, tunic: 11 },
  children: { waist: 0, hip: 2, tunic: 6 },
};

/**
 * Patterns are drafted for a full bust 2 in (5 cm) above the upper bust.
 * Source: Demystifying Ease in Garment Patterns, part 2, digitsandthreads.ca (read; undated).
 */
export const STANDARD_BUST_DIFFERENCE = 2;

/** Centimetres by which the shoulder's highest point lies above the nape: dressmaking practice, from memory. */
export const SHOULDER_ABOVE_NAPE: Readonly<Record<Table, number>> = {
  women: 2,
  men: 2,
  children: 1.5,
  babies: 1,
};
