/**
 * The percentage rule for yoke sweaters, as published in Knitting Without Tears, 1971, and Knitting Around, 1989: all
 * counts are shares of the body's stitches. A rule of thumb for an average adult: told beside counts that follow the
 * body, never in their place.
 */
import type { Gauge } from './gauge.ts';
import { type Cm, cm, type Stitches, stitches } from './units.ts';
import { quantity, type WorkingLine, workOut } from './working.ts';

/** Per cent of the body's stitches; at the cuff of a long sleeve. */
const PER_CENT = { cuff: 20, 'upper arm': 33, underarm: 8, neck: 40 } as const;
export type RulePlace = keyof typeof PER_CENT;

/** Per cent of the body's girth. */
const YOKE_DEPTH = 25;

export interface PercentageRule {
  /** Stitches around the body at its largest part: the key of the rule. */
  readonly key: Stitches;
  readonly counts: Readonly<Record<RulePlace, Stitches>>;
  readonly yokeDepth: Cm;
  readonly workings: readonly WorkingLine[];
}

/** The rule's counts for a garment of this girth at this gauge. */
export function percentageRule(around: Cm, gauge: Gauge): PercentageRule {
  const girth = quantity('garment at its largest part', around, 'cm');
  const key = workOut(
    'stitches around the body',
    'a * b',
    { a: girth, b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm') },
    { unit: 'stitches', rounding: { to: 'whole' } },
  );
  const share = (place: RulePlace) =>
    workOut(
      `${place} by the rule`,
      'a * p / 100',
      { a: key.result, p: quantity('per cent', PER_CENT[place], 'ratio') },
      { unit: 'stitches', rounding: { to: 'whole' } },
    );
  const lines = {
    cuff: share('cuff'),
    'upper arm': share('upper arm'),
    underarm: share('underarm'),
    neck: share('neck'),
  };
  const depth = workOut(
    'yoke depth by the rule',
    'a * p / 100',
    { a: girth, p: quantity('per cent', YOKE_DEPTH, 'ratio') },
    { unit: 'cm' },
  );
  const count = (place: RulePlace) => stitches(lines[place].result.value);
  return {
    key: stitches(key.result.value),
    counts: {
      cuff: count('cuff'),
      'upper arm': count('upper arm'),
      underarm: count('underarm'),
      neck: count('neck'),
    },
    yokeDepth: cm(depth.result.value),
    workings: [key, ...Object.values(lines), depth],
  };
}

/** What the rule would make of a yoke with this count all round at the underarm: body and sleeves without the underarms. */
export function ruleForYoke(underarm: Stitches, gauge: Gauge): PercentageRule {
  const joined = 100 + 2 * PER_CENT['upper arm'] - 4 * PER_CENT.underarm;
  const around = workOut(
    'garment around by the rule',
    '100 * a / p / b',
    {
      a: quantity('stitches at the underarm', underarm, 'stitches'),
      p: quantity('per cent of the body, joined', joined, 'ratio'),
      b: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
    },
    { unit: 'cm' },
  );
  const rule = percentageRule(cm(around.exact), gauge);
  return { ...rule, workings: [around, ...rule.workings] };
}
