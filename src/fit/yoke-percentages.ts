/**
 * The percentage rule for yoke sweaters, as published in Knitting Without Tears, 1971, and Knitting Around, 1989: all
 * counts are shares of the body's stitches. A rule of thumb for an average adult: returned to be compared with counts
 * that follow the body, never to replace them.
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

/** How far one's own count lies from the rule's. */
export interface BesideRule {
  readonly place: RulePlace;
  readonly own: Stitches;
  readonly rule: Stitches;
  /** Own less rule, over the width. */
  readonly difference: Cm;
  readonly workings: readonly WorkingLine[];
}

export function besideRule(
  rule: PercentageRule,
  own: Partial<Readonly<Record<RulePlace, Stitches>>>,
  gauge: Gauge,
): readonly BesideRule[] {
  return (Object.keys(PER_CENT) as RulePlace[]).flatMap((place) => {
    const count = own[place];
    if (count === undefined) return [];
    const line = workOut(
      `${place}, own count less the rule's`,
      '(a - b) / c',
      {
        a: quantity('own count', count, 'stitches'),
        b: quantity(`count by the rule`, rule.counts[place], 'stitches'),
        c: quantity('stitches', gauge.stitches.perCm, 'stitches/cm'),
      },
      { unit: 'cm' },
    );
    return [
      { place, own: count, rule: rule.counts[place], difference: cm(line.result.value), workings: [line] },
    ];
  });
}

/** Counts when each shaping round keeps a share of the round before: two of three, three of four … */
export function keptInTurn(
  from: Stitches,
  shares: readonly { readonly keep: number; readonly of: number }[],
): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  let before = quantity('stitches before the round', from, 'stitches');
  for (const [i, { keep, of }] of shares.entries()) {
    const line = workOut(
      `stitches after shaping round ${i + 1}`,
      'a * b / c',
      { a: before, b: quantity('kept', keep, 'stitches'), c: quantity('of', of, 'stitches') },
      { unit: 'stitches', rounding: { to: 'whole' } },
    );
    lines.push(line);
    before = line.result;
  }
  return lines;
}
