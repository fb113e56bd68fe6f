/**
 * What a size costs, sum by sum, at the pattern's own gauge of 22 stitches to 10 cm. The prices of a centimetre are the
 * project's own: 4 where a change is hard, 2 where it is work, a half where it is easy.
 */
import { describe, expect, it } from 'vitest';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { chooseSize } from '../../src/fit/size.ts';
import { type Target, type Targets, targetsFromGarment } from '../../src/fit/targets.ts';
import { cm } from '../../src/fit/units.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from './plain-pattern.ts';
import { told } from './told.ts';

const OWN = bothOf(gaugeOf(22, 30, 'cm'));
const plain = (sizes: readonly PatternSize[]): Pattern =>
  patternOf({ stitches: 22, rows: 30, unit: 'cm' }, sizes);
const THREE = plain(bustSizes('cm', 100, 90, 110));

function ranked(pattern: Pattern, targets: Targets) {
  const choice = chooseSize(pattern, targets, OWN);
  if (choice.kind !== 'ranked') throw new Error(choice.kind);
  return choice;
}

function target(low: number, aim: number, high: number | null, atLeast = false): Target {
  return {
    aim: cm(aim),
    low: cm(low),
    high: high === null ? null : cm(high),
    atLeast,
    origin: null,
    workings: [],
  };
}

const bust = (value: number) => targetsFromGarment({ bust: cm(value) });

describe('the price of a size', () => {
  it('is its difference times the price of a centimetre: 3 cm of the bust at 2', () => {
    const { best, ranking } = ranked(THREE, bust(103));
    expect(ranking.map(({ label, price }) => [label, Math.round(price * 1e6) / 1e6])).toEqual([
      ['100', 6],
      ['110', 14],
      ['90', 26],
    ]);
    expect(told(best.reasons[0]?.workings ?? []).slice(-2)).toEqual([
      'smaller by: b - a = 3 cm',
      'price of the bust: a * b = 6 ratio',
    ]);
    expect(best.reasons[0]?.workings).toHaveLength(3);
    expect(told(best.workings)).toEqual(['price of size 100: a = 6 ratio']);
    const larger = ranking[1]?.reasons[0]?.workings ?? [];
    expect(told(larger).at(-2)).toBe('larger by: a - b = 7 cm');
  });

  it('is the same for a size as much too small as another is too large: then the larger leads', () => {
    expect(ranked(THREE, bust(105)).ranking.map(({ label }) => label)).toEqual(['110', '100', '90']);
  });

  it('adds up region by region, the dearest first', () => {
    const one: PatternSize = {
      label: 'M',
      finished: { bust: cm(100), 'upper arm': cm(30), wrist: cm(18) },
      counts: {},
    };
    const { best } = ranked(
      plain([one]),
      targetsFromGarment({ bust: cm(101), 'upper arm': cm(33), wrist: cm(20) }),
    );
    // 1 × 2, 3 × 2 and 2 × ½.
    expect(best.reasons.map(({ region, price }) => `${region} ${price.toFixed(1)}`)).toEqual([
      'upper arm 6.0',
      'bust 2.0',
      'wrist 1.0',
    ]);
    expect(best.price).toBeCloseTo(9, 9);
  });

  it('is nothing for a neck that is wide enough, and dear for one that is not', () => {
    const neck = (value: number): PatternSize => ({
      label: `${value}`,
      finished: { neck: cm(value) },
      counts: {},
    });
    const { ranking } = ranked(plain([neck(38), neck(42)]), { neck: target(40, 40, 44, true) });
    expect(ranking.map(({ label, price }) => [label, price])).toEqual([
      ['42', 0],
      ['38', 8],
    ]);
    expect(ranking[0]?.reasons[0]).toMatchObject({ difference: 0, within: true });
    expect(ranking[0]?.reasons[0]?.workings).toHaveLength(1);
  });
});

describe('a size lies within what the fit allows', () => {
  const within = (value: number, one: Target) =>
    ranked(plain(bustSizes('cm', value)), { bust: one }).best.reasons[0]?.within;

  it('from the least to the most, both included', () => {
    const one = target(100, 103, 106);
    expect([99.9, 100, 103, 106, 106.1].map((value) => within(value, one))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
  });

  it('and without end where there is no most', () => {
    expect(within(160, target(100, 103, null))).toBe(true);
  });
});

describe('a bust beyond all sizes', () => {
  it('takes the largest, with stitches to add or a looser gauge: 20 cm at 2.2 are 44', () => {
    const { beyond } = ranked(THREE, { bust: target(128, 130, 132) });
    expect(beyond).toMatchObject({ end: 'largest', label: '110' });
    expect(beyond?.by).toBeCloseTo(20, 9);
    expect(told(beyond === undefined ? [] : [beyond.stitches])).toEqual([
      'stitches to add all round: (a - b) * c = 44 stitches',
    ]);
    // 242 stitches over 130 cm.
    expect(beyond?.gauge.result.value).toBeCloseTo(242 / 130, 9);
  });

  it('takes the smallest, with stitches to leave out', () => {
    const { beyond } = ranked(THREE, { bust: target(68, 70, 72) });
    expect(beyond).toMatchObject({ end: 'smallest', label: '90' });
    expect(told(beyond === undefined ? [] : [beyond.stitches])).toEqual([
      'stitches to leave out all round: (b - a) * c = 44 stitches',
    ]);
  });

  it('is none where the fit just reaches a size, has no most, or the bust is not asked for', () => {
    const arms = plain([{ label: 'M', finished: { 'upper arm': cm(30) }, counts: {} }]);
    for (const choice of [
      ranked(THREE, { bust: target(110, 114, 118) }),
      ranked(THREE, { bust: target(84, 87, 90) }),
      ranked(THREE, { bust: target(70, 75, null) }),
      ranked(arms, { 'upper arm': target(30, 31, 32) }),
    ])
      expect('beyond' in choice).toBe(false);
  });
});
