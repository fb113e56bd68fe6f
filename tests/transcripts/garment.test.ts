/** Alterations of one part, each from the first question to the plan. Figures worked out by hand beside them. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures } from './conversation.ts';

const SLEEVES_AND_BODY: readonly Conversation[] = [
  {
    situation:
      'would get a sleeve of nineteen inches for an arm of eleven: 52 stitches with their seam, and 24 fewer than the pattern',
    flow: 'sleeve',
    lines: [
      ['unit', 'in'],
      ['sleeve_made', 'from the cuff, flat'],
      ['gauge', '16 sts and 22 rows = 4"'],
      ['table', 'women'],
      ['upper_arm', '11 inches (28 cm)', '11 in (27.9 cm)'],
      ['wrist', '60 cm', 'cannot be right for this'],
      ['wrist', '6'],
      ['fit', 'classic'],
      ['sleeve_length', '17"'],
      ['p_wrist', '34'],
      ['p_upper_arm', '76 stitches'],
      ['p_cuff', '2'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 11 in and 1½ in of ease at 4 to the inch are 50, and one stitch at each edge for the seam.
    says: [
      'You end with 52 stitches.',
      'Your upper arm has 24 stitches fewer than the pattern.',
      'upper arm: 12½ in',
    ],
  },
  {
    situation: 'has a cuff of 34 and twelve of 21 increases done: 34 and 12 times 2 are the 58 on her needle',
    flow: 'reading',
    lines: [
      ['reading_line', 'increase 1 st at each end of every 4th row 12 times'],
      ['reading_before', '34'],
      ['reading_after', '58 stitches'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['From 34 stitches you reach 58 stitches, as the pattern says.', '48 (58)'],
  },
  {
    situation:
      'wants a cardigan of 35 in drawn in to 28 at 17 to four inches: four a round, seven rounds, 28½ in',
    flow: 'waist',
    lines: [
      ['unit', 'in'],
      ['body_made', 'top down'],
      ['gauge', '17 sts and 24 rows = 4"'],
      ['p_body_length', '14'],
      ['p_bust', '149'],
      ['p_hem', '1"'],
      ['table', 'women'],
      ['waist', '26 inches'],
      ['waist_ease', '2 inches', 'positive ease'],
      ['underarm_to_waist', '7'],
      ['p_hem_stitches', "don't know", 'I take 149 stitches'],
      ['waist_lines', 'at the sides'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 28 in are 119 stitches; from 149 by fours 121 is nearest.
    says: ['You end with 121 stitches.', 'waist: 28.5 in', 'bust: 35.1 in', '39 (121)'],
  },
  {
    situation: 'knits from the hem and wants the body four centimetres longer: twelve rounds more',
    flow: 'length',
    lines: [
      ['unit', 'cm'],
      ['body_made', 'bottom up round'],
      ['gauge', '22 sts, 30 rows/10cm'],
      ['p_body_length', '36'],
      ['body_length', '40 cm'],
      ['p_bust', '220'],
      ['p_hem', '5,0', '5 cm'],
      ['p_hem_stitches', '220'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 40 cm are 120 rounds, 15 of them the edging; the pattern's 36 cm are 108.
    says: ['Work 105 rounds plain', '12 rounds more than', 'body, lower edge to underarm: 40 cm'],
  },
  {
    situation: 'makes a body longer that is wider at the hem: 240 become 220 in five rounds of four',
    flow: 'length',
    lines: [
      ['unit', 'cm'],
      ['body_made', 'bottom up round'],
      ['gauge', '22 sts, 30 rows/10cm'],
      ['p_body_length', '36'],
      ['body_length', '40 cm'],
      ['p_bust', '220'],
      ['p_hem', '5 cm'],
      ['p_hem_stitches', '240 sts'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // (240 − 220) / 4 = 5 decrease rounds; an inch, 8 rounds, stays plain: 105 − 8 = 3 × 19 + 2 × 20.
    says: [
      'Cast on 240 stitches',
      'every 19th round 3 times, then every 20th round 2 times',
      'lower edge: 109.1 cm',
    ],
  },
  {
    situation:
      'has a vest that rides up and wants an inch and a half more behind: ten rows at seven to the inch',
    flow: 'hem',
    lines: [
      ['unit', 'in'],
      ['body_made', 'hem pieces'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_hem_stitches', '100'],
      ['p_hem', '1'],
      ['hem_drop', '1 1/2"', '1½ in (3.8 cm)'],
      ['hem_middle', 'skip', 'A third of the back hangs lowest.'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['That adds 10 rows (1.4 in) where it is deepest.', 'rows 9 and 10: 7'],
  },
];

const UPPER_BODY: readonly Conversation[] = [
  {
    situation:
      'chokes in a sweater from the neck down: two and a half centimetres are eight short rows behind',
    flow: 'back_neck',
    lines: [
      ['unit', 'cm'],
      ['body_made', 'top down'],
      ['gauge', '22 sts and 30 rows over 10 cm'],
      ['neck_needle', '120'],
      ['neck_raise', '2,5 cm'],
      ['neck_middle', 'why', 'The last turns stand beside this stretch.'],
      ['neck_middle', 'skip', 'A third of the stitches is raised in full.'],
      ['neck_base', 'skip', 'I take 36.4 cm'],
      ['neck_after', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 2.5 cm at 3 rows to the cm are 7.5, and short rows come in pairs.
    says: ['8 rounds', '2.7 cm'],
  },
  {
    situation: 'slopes shoulders of 33 stitches around a neck of 23 by an inch',
    flow: 'shoulder',
    lines: [
      ['unit', 'in'],
      ['body_made', 'hem pieces'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_shoulder', '33'],
      ['p_back_neck', '23'],
      ['shoulder_how', 'cast off in steps'],
      ['shoulder_drop', 'one inch', '1 in (2.5 cm)'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 89 less 9, 8, 8 and 8 at each side.
    says: ['1 (80), 2 (71), 3 (63), 4 (55), 5 (47), 6 (39), 7 (31), 8 (23)', 'No stitch is left.'],
  },
  {
    situation: 'works a child’s front of 72 with a neck of 28: both shoulders are 22',
    flow: 'front_neck',
    lines: [
      ['unit', 'in'],
      ['neck_how', 'shaped'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_cross', '72 stitches'],
      ['p_neck_stitches', '28'],
      ['p_neck_depth', '3'],
      ['neck_shape', 'crew'],
      ['neck_width', 'skip', 'The neck is as wide as in the pattern.'],
      ['neck_depth', '3 1/2"'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['work 31 stitches, bind off the next 10, and work the last 31', 'You end with 22 stitches.'],
  },
  {
    situation: 'has a front that is three inches longer than her back: short rows of three inches',
    flow: 'bust',
    lines: [
      ['unit', 'in'],
      ['body_made', 'hem round'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_bust', '200'],
      ['bust', '42'],
      ['upper_bust', '38'],
      ['front_length', '19'],
      ['back_length', '16'],
      ['bust_fabric', 'plain'],
      ['bust_shaping', 'short rows'],
      ['bust_span', '8'],
      ['bust_below_underarm', '2'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['Over the bust the front needs 3 in more length than the back.', 'That adds 22 rounds (3.1 in)'],
  },
  {
    situation: 'wears it loose and asks whether darts are needed at all: they are not',
    flow: 'bust',
    lines: [
      ['unit', 'in'],
      ['body_made', 'hem round'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_bust', '200'],
      ['bust', '38'],
      ['upper_bust', '37'],
      ['front_length', 'no idea', 'Length over the bust is judged by the girths.'],
      ['bust_fabric', 'stockinette'],
      ['bust_shaping', 'none'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['Your figures ask for no shaping at the bust.'],
  },
];

const TOPS: readonly Conversation[] = [
  {
    situation: 'wants armholes an inch deeper: 56 rows from 100 stitches to 82, and a cap to fit',
    flow: 'armhole',
    lines: [
      ['unit', 'in'],
      ['armhole_top', 'set in'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['p_armhole', '7'],
      ['armhole_wanted', '8'],
      ['p_neck_depth', '3'],
      ['p_back', '100'],
      ['p_cross', '82'],
      ['p_bind_off', '5'],
      ['p_upper_arm', '70'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      'work straight until row 56 is done',
      'Shoulders and front neck come 6 rows later',
      'You end with 82 stitches.',
    ],
  },
  {
    situation: 'has dropped shoulders and wants 22 cm of armhole: 62 rows, and a sleeve top twice as long',
    flow: 'armhole',
    lines: [
      ['unit', 'cm'],
      ['armhole_top', 'drop shoulder'],
      ['gauge', '20 sts and 28 rows = 10 cm'],
      ['p_armhole', '20'],
      ['armhole_wanted', '22'],
      ['p_neck_depth', 'skip'],
      ['back_width', '56'],
      ['cross_back', '38'],
      ['upper_arm', '30'],
      ['fit', 'classic'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 62 rows are 22.14 cm; 44.29 cm at 2 to the cm are 88.6; (56 − 38) / 2 = 9.
    says: [
      'Work 62 rows (22.1 cm)',
      'End the sleeve with 89 stitches',
      'The shoulder hangs 9 cm over the arm.',
    ],
  },
  {
    situation:
      'spaces raglan lines over eight and a half inches: 96 stitches at the neck, 312 at the underarm',
    flow: 'raglan',
    lines: [
      ['unit', 'in'],
      ['body_made', 'top down'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['yoke_depth', '8 1/2'],
      ['p_back_yoke', '90'],
      ['p_sleeve_yoke', '66'],
      ['p_back_neck', '38'],
      ['p_front_neck', '30'],
      ['p_sleeve_neck', '14'],
      ['neck_around', '18'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['60 (312)', 'The neck has 96 stitches, 19.2 in around. You want 18 in: it is 1.2 in too wide.'],
  },
  {
    situation: 'shapes a round yoke of 268 stitches in three rounds down to 80',
    flow: 'yoke',
    lines: [
      ['unit', 'in'],
      ['body_made', 'hem round'],
      ['gauge', '20 sts and 28 rows = 4"'],
      ['yoke_depth', '8'],
      ['p_yoke_underarm', '268'],
      ['p_yoke_neck', '80'],
      ['yoke_rounds', 'three'],
      ['yoke_repeat', '4'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // A third goes at half of the depth, a third of what is left then, a third again: 180, 120, 80.
    says: [
      'You then have 180 stitches.',
      '(k1, k2tog) 60 times',
      '(k1, k2tog) 40 times',
      'neck around: 16 in',
    ],
  },
];

describe.each([
  ['sleeves and body', SLEEVES_AND_BODY],
  ['the upper body', UPPER_BODY],
  ['armholes and yokes', TOPS],
] as const)('%s: a knitter who', (_, conversations) => {
  it.each(conversations)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
