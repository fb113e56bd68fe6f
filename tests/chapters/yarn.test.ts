import { describe, expect, it } from 'vitest';
import { askedStops } from '../../src/dialogue/standing.ts';
import { cannotOf, expectSound, flowOf, planOf, textOf, workingNamed } from './scripted.ts';

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

  it('Figuring out what’s left, 100milewear, 2014: 14.7 g at 4 g a round, three in all, give one beside the bind-off', () => {
    // There one round's yarn is kept back, and two are worked. Others take more to bind off: here two rows' are kept.
    const plan = planOf('yarn', left('14.7 g', '4 g', '1', '1'));
    expect(workingNamed(plan, 'rows in the yarn left').result.value).toBe(3);
    expect(textOf(plan)).toContain(
      'The yarn that is left gives 1 row, with the yarn of 2 rows kept back to bind off. You need 1 row, so 0 rows can be added.',
    );
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: yarn lasts']);
    expectSound(plan);
  });

  it('The Asheville Scarf, day 3, destiknitions, 2017: 22 g at 2 g a row are 11 rows', () => {
    const plan = planOf('yarn', left('22 g', '2 g', '1', '12'));
    expect(workingNamed(plan, 'rows in the yarn left').result.value).toBe(11);
    // 12 rows and 2 to bind off are 28 g.
    expect(textOf(plan)).toContain(
      'You need 12 rows: 3 rows cannot be had, and about 6 g more would be wanted',
    );
    expectSound(plan);
  });

  it.each([
    ['as much as two rows: six widths, and three a row', 'blacksquirrelberkeley.com, Yarn Chicken', 6 / 3],
    ['one row and a half', 'forum.knittinghelp.com, How much yarn is needed for casting off?', 1.5],
    [
      'five widths, three of them a row',
      'nimble-needles.com, How much yarn do you need for a bind off?',
      5 / 3,
    ],
    ['a round', '100milewear.blogspot.com, Figuring out what’s left, 2014', 1],
  ])('keeps enough back for a bind-off that takes %s (%s)', (_, __, bindOff) => {
    for (const grams of ['9', '14.7', '20', '43.9']) {
      const plan = planOf('yarn', left(`${grams} g`, '4 g', '1', '1'));
      const worked = workingNamed(plan, 'rows to work').result.value;
      expect((worked + bindOff) * 4).toBeLessThanOrEqual(Number(grams));
    }
  });

  it('says so where the yarn is less than is kept back, and what is lacking for all that is wanted', () => {
    const plan = planOf('yarn', left('7 g', '4 g', '1', '3'));
    // Three rows and two to bind off are 20 g.
    expect(textOf(plan)).toContain(
      'The yarn that is left gives no more rows: it is less than 2 rows take, and so much is kept back to bind off. You need 3 rows before it, so about 13 g more would be wanted.',
    );
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: yarn runs short']);
    expectSound(plan);
    const bindOffAlone = planOf('yarn', left('7 g', '4 g', '1', '0'));
    expect(bindOffAlone.summary.map((p) => p.say)).toEqual(['summary: yarn runs short']);
    expectSound(bindOffAlone);
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

describe("the pattern's amount for another size", () => {
  const resized = {
    unit: 'cm',
    yarn_wish: "The pattern's amount, for another size",
    yarn_balls: '9',
    yarn_band: '125 m',
    yarn_own_band: '110 m',
    yarn_theirs_around: '96 cm',
    yarn_theirs_long: '58 cm',
    yarn_around: '104 cm',
    yarn_long: '62 cm',
    pattern_gauge: '22 sts and 30 rows over 10 cm',
    gauge: '22 sts and 30 rows over 10 cm',
  };

  // 9 × 125 m = 1125 m; 104 × 62 ÷ (96 × 58) = 1.158; 1302.8 m, with a tenth 1433 m: 13.03 balls of 110 m.
  it('grows as the area of the body does', () => {
    const plan = planOf('yarn', resized);
    expect(workingNamed(plan, 'yarn for the fabric').exact).toBeCloseTo((1125 * 104 * 62) / (96 * 58), 9);
    expect(textOf(plan)).toContain('It takes about 1303 m, and 1433 m with a margin. Balls to buy: 14.');
    expectSound(plan);
    expectSound(planOf('yarn', { ...resized, unit: 'in' }));
  });

  it('grows as the stitches to a centimetre do, and is that of the pattern at its own gauge', () => {
    const denser = planOf('yarn', { ...resized, gauge: '24 sts and 30 rows over 10 cm' });
    const own = workingNamed(
      planOf('yarn', { ...resized, gauge: "don't know" }),
      'yarn for the fabric',
    ).exact;
    expect(own).toBeCloseTo((1125 * 104 * 62) / (96 * 58), 9);
    expect(workingNamed(denser, 'yarn for the fabric').exact / own).toBeCloseTo(24 / 22, 9);
  });

  it('waits for what it cannot be worked out without', () => {
    expect(textOf(cannotOf('yarn', { ...resized, yarn_theirs_long: 'later' }))).toContain(
      'Pattern, hem to shoulder: The amount waits for it.',
    );
  });
});

describe('the yarn that is left for the rest of a sweater', () => {
  const rest = {
    unit: 'cm',
    yarn_wish: 'for the rest of the sweater',
    yarn_around: '100 cm',
    yarn_long: '60 cm',
    yarn_upper_arm: '35 cm',
    yarn_wrist: '20 cm',
    sleeve_length: '45 cm',
    yarn_body_done: '30 cm',
    yarn_sleeves_done: 'none',
    yarn_used_all: '120 g',
    yarn_left: '250 g',
  };

  it('asks eleven questions, as the amount for another size does', () => {
    const asked = (choice: string) =>
      askedStops(flowOf('yarn'), { yarn_wish: { given: 'value', value: { kind: 'choice', choice } } }).length;
    expect([asked('resized'), asked('rest')]).toEqual([11, 11]);
  });

  // 30 × 100 done of 100 × 60 + 2 × 27.5 × 45 = 8475: 5475 to knit at 120 g to 3000, 219 g and a tenth: 240.9 g.
  it('lasts where it is more than the rest takes with its margin', () => {
    const plan = planOf('yarn', rest);
    expect(workingNamed(plan, 'yarn for the rest, with the margin').exact).toBeCloseTo(240.9, 9);
    expect(textOf(plan)).toContain(
      'The rest takes about 241 g, margin included. You have 250 g, so about 9.1 g will be over.',
    );
    expect(plan.summary.map(({ say }) => say)).toEqual(['summary: yarn lasts']);
    expectSound(plan);
  });

  it('says how much of the rest it is enough for where it runs short', () => {
    const plan = planOf('yarn', { ...rest, yarn_left: '150 g' });
    // 150 g of 240.9 g are 62.2 per cent.
    expect(textOf(plan)).toContain(
      'about 91 g more would be wanted. What you have is enough for 62 % of the rest.',
    );
    expectSound(plan);
    expectSound(planOf('yarn', { ...rest, unit: 'in', yarn_left: '5 oz' }));
  });

  it('says how much of the body can be knitted where both sleeves are done', () => {
    const plan = planOf('yarn', {
      ...rest,
      yarn_sleeves_done: 'both',
      yarn_used_all: '219 g',
      yarn_left: '60 g',
    });
    // 3000 + 2475 cm² took 219 g, 0.04 g each; 60 ÷ 1.1 ÷ 0.04 = 1363.6 cm² are 13.6 cm of a body 100 cm around.
    expect(textOf(plan)).toContain('What you have is enough for 13.6 cm more of the body.');
    expectSound(plan);
  });

  it('knows of sleeves that were knitted first', () => {
    const plan = planOf('yarn', {
      ...rest,
      yarn_body_done: 'skip',
      yarn_sleeves_done: 'one',
      yarn_used_all: '50 g',
    });
    // One sleeve is 27.5 × 45 = 1237.5 cm²; the rest takes 7237.5 ÷ 1237.5 × 50 g and a tenth.
    expect(workingNamed(plan, 'yarn for the rest, with the margin').exact).toBeCloseTo(321.667, 3);
    expectSound(plan);
  });

  it.each([
    ['nothing is knitted yet', { yarn_body_done: 'skip' }, 'Knit a swatch, weigh it'],
    ['more is done than there is', { yarn_body_done: '61 cm' }, 'Look at both figures once more.'],
  ])('is not reckoned where %s', (_, odd, words) => {
    expect(textOf(cannotOf('yarn', { ...rest, ...odd }))).toContain(words);
  });
});
