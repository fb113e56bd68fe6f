/**
 * How one measurement of an adult relates to another, as the smallest and largest share among those surveyed.
 * Soldiers: 2012 Anthropometric Survey of U.S. Army Personnel, 2014 (extremes). Civilians: National Health and Nutrition
 * Examination Survey 2015-2018 (1st and 99th percentile; beside the waist, the low end is the 5th percentile of the
 * widest waist band, 140 to 180 cm, over its middle, so that large bodies are not questioned for being large; the high
 * end of hip beside waist is that of the soldiers). Outside
 * `within`, no one was surveyed and nothing is claimed.
 * Where a survey's landmark is not the knitter's, the share is widened on that side by a factor named below.
 */
import type { Measurement, Table } from '../words.ts';
import type { OriginName } from './origin.ts';
import { SHARES_OF_HEIGHT } from './surveys.ts';

export interface Relation {
  readonly table: Table;
  readonly of: Measurement;
  readonly to: Measurement;
  /** `of` divided by `to`. */
  readonly low: number;
  readonly high: number;
  /** Figures of `to`, in centimetres, for which the relation was surveyed. */
  readonly within: readonly [low: number, high: number];
  readonly origin: OriginName;
}

/** A natural waist is narrower than one at the navel or hip bone: by up to a tenth, common practice, from memory. */
const NATURAL = 0.9;
/** A relaxed upper arm is thinner than a flexed one: by up to a twentieth, from memory. */
const RELAXED = 0.95;
/** A neck at the larynx against one round its base: the survey's medians, 32.8 of 37.0 cm and 39.5 of 43.3 cm. */
const LARYNX = { women: 32.8 / 37, men: 39.5 / 43.3 };
/** A tape over the back against a caliper between the shoulder bones: up to a tenth longer, from memory. */
const TAPE = 1.1;
/** Nape to the natural waist against nape to navel: the survey's medians, straight drop against tape. */
const NATURAL_BACK = { women: 36.95 / 42.45, men: 42.65 / 47.7 };
/** A back length starts at the shoulder's highest point, some 2 cm above the nape: a twentieth of it. */
const FROM_SHOULDER = 1.05;
/** The arm length starts at the underarm, the survey's at the shoulder point. */
const DROP = {
  women: SHARES_OF_HEIGHT.women['shoulder to armpit'],
  men: SHARES_OF_HEIGHT.men['shoulder to armpit'],
};

// biome-ignore format: one relation a line, as a table
export const RELATIONS: readonly Relation[] = [
  { table: 'women', of: 'waist', to: 'bust', low: 0.7172 * NATURAL, high: 1.149, within: [69.5, 126.6], origin: 'soldiers' },
  { table: 'women', of: 'hip', to: 'bust', low: 0.8376, high: 1.3286, within: [69.5, 126.6], origin: 'soldiers' },
  { table: 'women', of: 'hip', to: 'waist', low: 138.5 / 160, high: 1.4273 / NATURAL, within: [55, 180], origin: 'civilians' },
  { table: 'women', of: 'upper arm', to: 'bust', low: 0.2597 * RELAXED, high: 0.3959, within: [69.5, 126.6], origin: 'soldiers' },
  { table: 'women', of: 'upper arm', to: 'waist', low: 37.9 / 160, high: 0.4052 / NATURAL, within: [55, 180], origin: 'civilians' },
  { table: 'women', of: 'upper arm', to: 'hip', low: 0.2425, high: 0.3553, within: [79.5, 178.1], origin: 'civilians' },
  { table: 'women', of: 'wrist', to: 'upper arm', low: 0.3839, high: 0.6352 / RELAXED, within: [21.6, 43.5], origin: 'soldiers' },
  { table: 'women', of: 'neck', to: 'bust', low: 0.3202 * LARYNX.women, high: 0.4869, within: [69.5, 126.6], origin: 'soldiers' },
  { table: 'women', of: 'cross back', to: 'bust', low: 0.2938, high: 0.4921 * TAPE, within: [69.5, 126.6], origin: 'soldiers' },
  { table: 'women', of: 'back length', to: 'height', low: 0.2189 * NATURAL_BACK.women, high: 0.3151 * FROM_SHOULDER, within: [140.9, 182.9], origin: 'soldiers' },
  { table: 'women', of: 'arm length', to: 'height', low: 0.2835 - DROP.women, high: 0.37 - DROP.women, within: [140.9, 182.9], origin: 'soldiers' },
  { table: 'men', of: 'waist', to: 'bust', low: 0.6963 * NATURAL, high: 1.09, within: [77.4, 146.9], origin: 'soldiers' },
  { table: 'men', of: 'hip', to: 'bust', low: 0.7956, high: 1.1259, within: [77.4, 146.9], origin: 'soldiers' },
  { table: 'men', of: 'hip', to: 'waist', low: 125.4 / 160, high: 1.328 / NATURAL, within: [55, 180], origin: 'civilians' },
  { table: 'men', of: 'upper arm', to: 'bust', low: 0.2583 * RELAXED, high: 0.4226, within: [77.4, 146.9], origin: 'soldiers' },
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the survey's 99th percentile, not log10(e)
  { table: 'men', of: 'upper arm', to: 'waist', low: 39.7 / 160, high: 0.4343 / NATURAL, within: [55, 180], origin: 'civilians' },
  { table: 'men', of: 'upper arm', to: 'hip', low: 0.2695, high: 0.3906, within: [77.7, 159.5], origin: 'civilians' },
  { table: 'men', of: 'wrist', to: 'upper arm', low: 0.3803, high: 0.7033 / RELAXED, within: [24.6, 49], origin: 'soldiers' },
  { table: 'men', of: 'neck', to: 'bust', low: 0.3423 * LARYNX.men, high: 0.4881, within: [77.4, 146.9], origin: 'soldiers' },
  { table: 'men', of: 'cross back', to: 'bust', low: 0.305, high: 0.5045 * TAPE, within: [77.4, 146.9], origin: 'soldiers' },
  { table: 'men', of: 'back length', to: 'height', low: 0.2203 * NATURAL_BACK.men, high: 0.3283 * FROM_SHOULDER, within: [149.1, 199.3], origin: 'soldiers' },
  { table: 'men', of: 'arm length', to: 'height', low: 0.2994 - DROP.men, high: 0.3758 - DROP.men, within: [149.1, 199.3], origin: 'soldiers' },
];

/** From bust point to bust point beside the bust; no survey states it: dressmaking, from memory, and wide. */
export const BUST_SPAN = { low: 0.15, usual: 0.2, high: 0.27 };

/** For every table; common practice of dressmaking, from memory: wide, and meant to catch slips of the tape alone. */
export const RELATIONS_OF_ALL: readonly Omit<Relation, 'table' | 'within'>[] = [
  { of: 'upper bust', to: 'bust', low: 0.75, high: 1.1, origin: 'trade' },
  { of: 'front length', to: 'back length', low: 0.85, high: 1.4, origin: 'trade' },
  { of: 'bust span', to: 'bust', low: BUST_SPAN.low, high: BUST_SPAN.high, origin: 'trade' },
];
