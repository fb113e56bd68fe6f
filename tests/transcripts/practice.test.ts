/** Knitters who practise: the exercise's figures, figures of their own in between, and the sums afterwards. */
import { describe, expect, it } from 'vitest';
import { COMES_BACK, type Conversation, departures } from './conversation.ts';

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation:
      'takes every figure of the exercise, sees the worked answer, and works its first sum the wrong way round',
    flow: 'stitches',
    practice: true,
    lines: [
      ['unit', 'cm', "21 sts over 10 cm the exercise's"],
      ['swatch_stitches', '21 sts over 10 cm', "50 cm the exercise's"],
      ['stitches_width', '50 cm', "multiple of 4 + 2 the exercise's"],
      ['stitches_multiple', 'multiple of 4 + 2', "2 the exercise's"],
      ['stitches_edge', '2'],
      ['review', 'yes', 'Practice: this is the worked answer. None of its figures is kept as yours.'],
      ['plan', 'work it yourself'],
      // 50 / 2.1 = 23.8, and the 2 edge stitches
      ['sum', '25.8', 'The stitches per cm went in the wrong way round'],
      // 50 × 2.1 = 105, and 2: 107; a multiple of 4 beside the edges, plus 2: 104 or 108
      ['sum', '108', 'Right: stitches at the cast-on'],
      ['sum', 'stop', 'right'],
      ['tally', 'plan', 'Practice: this is the worked answer.'],
    ],
    ends: 'plan',
    says: ['108 stitches'],
    works: ['50 cm (width at the cast-on) × 2.1 stitches per cm'],
  },
  {
    situation: 'reads inches, and is given figures that are round in inches',
    flow: 'sleeve',
    practice: true,
    lines: [
      ['unit', 'inches', "From the cuff, flat the exercise's"],
      ['sleeve_made', 'from the cuff, flat', "21 sts and 28 rows to 4 in the exercise's"],
      ['gauge', '21 sts and 28 rows to 4 in', "Women's the exercise's"],
      ['table', 'women', "13 in the exercise's"],
      ['upper_arm', '13 in', "6.5 in the exercise's"],
      ['wrist', '6.5 in'],
      ['fit', 'classic', "18 in the exercise's"],
      // Her own thought: what if the sleeve were longer?
      ['sleeve_length', '19 in', "44 the exercise's"],
      ['p_wrist', '44'],
      ['p_upper_arm', '74'],
      ['p_cuff', '2.5 in'],
      ['review', 'change sleeve length', "18 in the exercise's"],
      ['sleeve_length', '18 in'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // Three inches of ease above the cuff and the upper arm: 13 + 1.5 in at 5.25 to the inch, and 2: 78.1, to an even count.
    says: ['You end with 78 stitches.'],
  },
  {
    situation:
      'comes back the next day, is told the story again, and is not told that her measurements are kept',
    flow: 'size',
    practice: true,
    lines: [
      ['unit', 'cm', "Pennywhin, in the round the exercise's"],
      ['pattern', 'Pennywhin, in the round'],
      ['gauge', COMES_BACK, 'Practice. The beekeeper knits our sample sweater'],
      ['gauge', '21 sts and 28 rows to 10 cm'],
      ['table', 'women', "96 cm the exercise's"],
      ['bust', '96 cm', "92 cm the exercise's"],
      ['upper_bust', 'start over', 'We start over.'],
      ['unit', 'cm'],
      ['pattern', 'Pennywhin, in the round'],
      ['gauge', '21 sts and 28 rows to 10 cm'],
      ['table', 'women', "96 cm the exercise's"],
      ['bust', '96 cm'],
      ['upper_bust', '92 cm', "Classic: 5 to 10 cm (2 to 4 in) the exercise's"],
      ['fit', 'classic'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 220 stitches at 2.1 to the centimetre.
    says: ['size 4', '104.8 cm'],
  },
];

describe('a knitter who practises', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
