/** Yarn: how much of another, how much from a swatch, and whether the rest lasts. Figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures } from './conversation.ts';

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation:
      'would hold one strand for the pattern’s two: 1250 yards doubled are 625 single, five balls of 145',
    flow: 'yarn',
    lines: [
      ['unit', 'in'],
      ['yarn_wish', 'another yarn'],
      ['yarn_balls', 'ten balls', '10'],
      // Two strands held together: one ball of each length gives half of it in fabric.
      ['yarn_band', '62.5 yards'],
      ['yarn_own_band', '145 yards'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['It takes about 625 yd, and 688 yd with a margin. Balls to buy: 5.'],
  },
  {
    situation:
      'has a cone for the pattern’s balls, and is asked by which count it is numbered: 6773 m of 1183 and a tenth',
    flow: 'yarn',
    lines: [
      ['unit', 'cm'],
      ['yarn_wish', 'another yarn'],
      ['yarn_balls', '13'],
      ['yarn_band', '91 m'],
      ['yarn_own_band', '2/24 worsted', 'I need the weight of the cone'],
      ['yarn_own_band', '500 g of 2/24', 'By which one is your yarn numbered?'],
      ['check', '1', '500 g, size 24 in 2 plies by the worsted count: 6773 m'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['It takes about 1183 m, and 1301 m with a margin. Balls to buy: 1.'],
  },
  {
    situation:
      'weighs a swatch of 9 g, six inches square: a sweater of 40 in takes 339 g, eight balls with the margin',
    flow: 'yarn',
    lines: [
      ['unit', 'in'],
      ['yarn_wish', 'swatch'],
      ['yarn_swatch', '9 g'],
      ['yarn_swatch_width', '6'],
      ['yarn_swatch_height', '6'],
      ['yarn_around', '40'],
      ['yarn_long', '24'],
      ['yarn_upper_arm', '14'],
      ['yarn_wrist', '8'],
      ['sleeve_length', '18'],
      ['yarn_ball', '50g'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // ¼ g a square inch; 40 × 24 and twice 11 × 18 are 1356 square inches; 339 g and a tenth are 372.9 g.
    says: ['It takes about 339 g, and 373 g with a margin. Balls to buy: 8.'],
  },
  {
    situation:
      'has 15 g left where two rows took eight: one more row and the binding off, five cannot be had',
    flow: 'yarn',
    lines: [
      ['unit', 'cm'],
      ['yarn_wish', 'running out'],
      ['yarn_left', '15 grams'],
      ['yarn_used', '8', 'I need a weight of yarn with its unit.'],
      ['yarn_used', '8g'],
      ['yarn_used_rows', '2'],
      ['yarn_rows', '6'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // Four grams a row: three rows in all, two of them to bind off; six rows and those are 32 g.
    says: [
      'gives 1 row, with the yarn of 2 rows kept back to bind off',
      '5 rows cannot be had, and about 17 g more',
    ],
  },
];

describe('a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
