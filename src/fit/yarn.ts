/**
 * How much yarn: from the fabric's area and a weighed swatch, or from the amount that the pattern states. All answers are
 * estimates with a stated margin, in whole balls. Grams and metres; a yard is 0.9144 m and an ounce 28.349523125 g exactly
 * (international yard and pound agreement, 1959).
 */
import type { Cm, PerCm } from './units.ts';
import { type Quantity, quantity, type WorkingLine, workOut } from './working.ts';

export const METRES_PER_YARD = 0.9144;
export const GRAMS_PER_OUNCE = 28.349523125;

/** Added to an estimate for joins, seams and a second try (common practice: a tenth, or a ball). */
export const USUAL_MARGIN = 0.1;

/** What yarn is measured in: by weight, or by length. */
export const YARN_UNITS = ['g', 'm'] as const;
export type YarnUnit = (typeof YARN_UNITS)[number];

export interface YarnAmount {
  readonly value: number;
  readonly unit: YarnUnit;
}

/** What a ball's band says; one of the two may not be known. */
export interface Ball {
  readonly grams?: number;
  readonly metres?: number;
}

export interface YarnNeed {
  readonly kind: 'need';
  readonly estimate: YarnAmount;
  readonly withMargin: YarnAmount;
  readonly balls: number;
  readonly workings: readonly WorkingLine[];
}

/** The amount is known by weight and the ball by length, or the other way about. */
export interface BallUnknown {
  readonly kind: 'ball unknown';
  readonly estimate: YarnAmount;
  /** What has to be known of the ball. */
  readonly needed: YarnUnit;
  readonly workings: readonly WorkingLine[];
}

export interface Swatch {
  readonly amount: YarnAmount;
  readonly width: Cm;
  readonly height: Cm;
}

/** From an area in square centimetres and a swatch that was weighed, or unravelled and measured. */
export function yarnFromSwatch(
  area: number,
  swatch: Swatch,
  ball: Ball,
  margin: number,
): YarnNeed | BallUnknown {
  const { unit } = swatch.amount;
  const estimate = workOut(
    'yarn for the fabric',
    'a * s / (w * h)',
    {
      a: quantity('area of the fabric', area, 'cm²'),
      s: amount('yarn of the swatch', swatch.amount),
      w: quantity('width of the swatch', swatch.width, 'cm'),
      h: quantity('height of the swatch', swatch.height, 'cm'),
    },
    { unit },
  );
  return inBalls(estimate, unit, ball, margin);
}

export interface PatternYarn {
  readonly amount: YarnAmount;
  /** Area of the new garment over the pattern's. */
  readonly areaRatio: number;
  /** Stitches to a centimetre of the pattern, and of the knitter. */
  readonly gauge: { readonly pattern: PerCm; readonly own: PerCm };
}

/**
 * From the amount that a pattern states, by area and by stitch density. A fabric of denser stitches has more of them, each
 * with a shorter loop: at the same area its yarn is longer as the stitches to a centimetre are more (the loop is as long
 * as the stitch is wide). By length only; weights may be compared between yarns of one thickness.
 */
export function yarnFromPattern(asked: PatternYarn, ball: Ball, margin: number): YarnNeed | BallUnknown {
  const { unit } = asked.amount;
  const estimate = workOut(
    'yarn for the fabric',
    'p * r * b / c',
    {
      p: amount('yarn of the pattern', asked.amount),
      r: quantity('area over the area of the pattern', asked.areaRatio, 'ratio'),
      b: quantity('own gauge', asked.gauge.own, 'stitches/cm'),
      c: quantity('gauge of the pattern', asked.gauge.pattern, 'stitches/cm'),
    },
    { unit },
  );
  return inBalls(estimate, unit, ball, margin);
}

/** Another yarn for the pattern's: so many balls of one length are so many of another. Throws on an empty ball. */
export function replaceBalls(
  balls: number,
  pattern: { readonly metres: number },
  own: { readonly metres: number },
  margin: number,
): YarnNeed | BallUnknown {
  const estimate = workOut(
    'yarn of the pattern',
    'a * b',
    {
      a: quantity('balls of the pattern', balls, 'times'),
      b: quantity('length of one', pattern.metres, 'm'),
    },
    { unit: 'm' },
  );
  return inBalls(estimate, 'm', own, margin);
}

function inBalls(estimate: WorkingLine, unit: YarnUnit, ball: Ball, margin: number): YarnNeed | BallUnknown {
  const size = unit === 'g' ? ball.grams : ball.metres;
  const needed = { value: estimate.exact, unit };
  if (size === undefined)
    return { kind: 'ball unknown', estimate: needed, needed: unit, workings: [estimate] };
  if (!(size > 0)) throw new RangeError(`a ball holds more than ${size} ${unit}`);
  const more = workOut(
    'yarn with the margin',
    'a * (1 + m)',
    { a: estimate.result, m: quantity('margin', margin, 'ratio') },
    { unit },
  );
  const balls = workOut(
    'balls to buy',
    'a / b',
    { a: more.result, b: quantity('one ball', size, unit) },
    { unit: 'times', rounding: { to: 'whole up' } },
  );
  return {
    kind: 'need',
    estimate: needed,
    withMargin: { value: more.exact, unit },
    balls: balls.result.value,
    workings: [estimate, more, balls],
  };
}

export function amount(name: string, { value, unit }: YarnAmount): Quantity {
  return quantity(name, value, unit);
}
