import { describe, expect, it } from 'vitest';
import { askedStops } from '../../src/dialogue/standing.ts';
import { expectSound, flowOf, planOf, textOf, workingNamed } from './scripted.ts';

const other = (balls: string, band: string, own: string, unit = 'cm') => ({
  unit,
  yarn_wish: 'other',
  yarn_balls: balls,
  yarn_band: band,
  yarn_own_band: own,
});
const left = (weight: string, used: string, rows: string, wanted: string) => ({
  unit: 'cm',
  yarn_wish: 'left',
  yarn_left: weight,
  yarn_used: used,
  yarn_used_rows: rows,
  yarn_rows: wanted,
});

describe('yarn', () => {
  it('asks five questions for another yarn, eleven for a sweater, six for a rest', () => {
    const asked = (choice: string) =>
      askedStops(flowOf('yarn'), { yarn_wish: { given: 'value', value: { kind: 'choice', choice } } }).length;
    expect([asked('other'), asked('swatch'), asked('left')]).toEqual([5, 11, 6]);
  });

  it('Tips and tricks: replace the yarn, iknitknitwear: 13 balls of 91 m are 1183 m, 11.83 of 100 m', () => {
    const plan = planOf('yarn', other('13 balls', '91 m', '100 m'));
    expect(workingNamed(plan, 'yarn of the pattern').exact).toBeCloseTo(1183, 9);
    // With a margin of a tenth: 13.01 balls, so one more than 13.
    expect(textOf(plan)).toContain('It takes about 1183 m, and 1301 m with a margin. Balls to buy: 14.');
    expectSound(plan);
  });

  it('Let’s talk about yarn: yardage, notsogranny, 2014: 7 balls of 125 yd, in yards for who measures in inches', () => {
    const plan = planOf('yarn', other('7', '125 yards', '85 yd', 'in'));
    const { exact } = workingNamed(plan, 'yarn of the pattern');
    expect(exact / 0.9144 / 85).toBeCloseTo(10.294, 3);
    expect(textOf(plan)).toContain('It takes about 875 yd, and 963 yd with a margin. Balls to buy: 12.');
    expectSound(plan);
  });

  it('Figuring out what’s left, 100milewear, 2014: 14.7 g at 4 g a round give 2 rounds and the cast-off', () => {
    const plan = planOf('yarn', left('14.7 g', '4 g', '1', '2'));
    expect(textOf(plan)).toContain(
      'The yarn that is left gives 2 rows, with one kept back to bind off. You need 2 rows',
    );
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: yarn lasts']);
    expectSound(plan);
  });

  it('The Asheville Scarf, day 3, destiknitions, 2017: 22 g at 2 g a row are 11 rows', () => {
    const plan = planOf('yarn', left('22 g', '2 g', '1', '12'));
    expect(workingNamed(plan, 'rows in the yarn left').result.value).toBe(11);
    expect(textOf(plan)).toContain(
      'You need 12 rows: 2 rows cannot be had, and about 4 g more would be wanted',
    );
    expectSound(plan);
  });

  it('reckons a sweater from a weighed swatch', () => {
    const typed = {
      unit: 'cm',
      yarn_wish: 'from a swatch',
      yarn_swatch: '9 g',
      yarn_swatch_width: '15 cm',
      yarn_swatch_height: '15 cm',
      yarn_around: '100 cm',
      yarn_long: '60 cm',
      yarn_upper_arm: '35 cm',
      yarn_wrist: '20 cm',
      sleeve_length: '45 cm',
      yarn_ball: '50 g',
    };
    const plan = planOf('yarn', typed);
    // 100 × 60 + 2 × 27.5 × 45 = 8475 square centimetres at 9 g to 225.
    expect(workingNamed(plan, 'yarn for the fabric').exact).toBeCloseTo(339, 9);
    expect(textOf(plan)).toContain('Balls to buy: 8.');
    expectSound(plan);
    expectSound(planOf('yarn', { ...typed, unit: 'in' }));
    const bare = planOf('yarn', { ...typed, yarn_ball: "don't know" });
    expect(textOf(bare)).toContain('It takes about 339 g. A margin comes on top.');
    expect(bare.waiting).toHaveLength(1);
    expectSound(bare);
  });
});
