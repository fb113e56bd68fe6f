/** Shaping lines of patterns, as knitters pasted them in public talk (collected 2026), and what each must come to. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures } from './conversation.ts';

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation:
      'cannot work out on which rows a baby sleeve is decreased: rows 1 to 41, and 52 stitches become 20',
    flow: 'reading',
    lines: [
      ['reading_line', 'dec at each end of next and 5 foll 4th rows, then on foll 10 alt rows. 20 st.'],
      ['reading_before', '52'],
      ['reading_after', '20 st.'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      '16 shaping rows over 41 rows. Each decreases 2 stitches.',
      '1 (50), 5 (48), 9 (46), 13 (44), 17 (42), 21 (40), 23 (38), 25 (36), 27 (34), 29 (32), 31 (30), 33 (28), 35 (26), 37 (24), 39 (22), 41 (20)',
      'From 52 stitches you reach 20 stitches, as the pattern says.',
    ],
  },
  {
    situation:
      'has 50 stitches where the same line needs 52: it is said that the line does not add up, and from which count it would',
    flow: 'reading',
    lines: [
      ['reading_line', 'dec at each end of next and 5 foll 4th rows, then on foll 10 alt rows'],
      ['reading_before', 'fifty'],
      ['reading_after', '20'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      'From 50 stitches you reach 18 stitches, but the pattern says 20 stitches.',
      'It would add up from 52 stitches.',
    ],
  },
  {
    situation:
      'wants shoulders explained from the start; she makes the fifth of six sizes: 37 after four rows, 23 left, 33 a shoulder',
    flow: 'reading',
    lines: [
      [
        'reading_line',
        'cast off 9(10:11:12:13:13) sts at beg of next 4 rows, 8(8:8:7:7:8) sts at beg of next 2 rows',
        'I read a line for 6 sizes. Which one is yours?',
      ],
      ['check', '5', 'cast off 13 sts at beg of next 4 rows, 7 sts at beg of next 2 rows'],
      ['reading_before', '89 stitches'],
      ['reading_after', '23'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['1 (−13, 76), 2 (−13, 63), 3 (−13, 50), 4 (−13, 37), 5 (−7, 30), 6 (−7, 23)'],
  },
  {
    situation:
      'asks whether a neck edge is decreased on every single row; seven and six fit the fourth size alone',
    flow: 'reading',
    lines: [
      [
        'reading_line',
        'dec 1 st at neck edge of next 5 (5-7-7-7-7) rows then on foll alt rows 4 (5-5-6-7-7) times more. 18 (20-21-23-24-26) sts rem',
        'Which one is yours?',
      ],
      ['check', '4', 'next 7 rows, on foll alt rows 6 times more. 23 sts rem'],
      ['reading_before', '36'],
      ['reading_after', '23'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      '13 shaping rows over 19 rows. Each decreases 1 stitch.',
      '1 (35), 2 (34), 3 (33), 4 (32), 5 (31), 6 (30), 7 (29), 9 (28), 11 (27), 13 (26), 15 (25), 17 (24), 19 (23)',
    ],
  },
  {
    situation:
      'mixes up the columns of an eight-size neck with dashes: 30 stitches become 24 on rows 1, 9, 17, 23, 29 and 35',
    flow: 'reading',
    lines: [
      [
        'reading_line',
        'Dec 1 st at neck edge on next row, then every 6th (8th, 6th, 6th, 4th, 4th, 4th) row 5 (2, 1, 6, 12, 10, 7) more times, then every – (6th, 4th, 4th, --, 2nd, 2nd) row – (3, 9, 2, --, 5, 12) times. 18 (24, 25, 27, 29, 32, 34) sts',
        'Which one is yours?',
      ],
      ['check', '2', 'every 8th row 2 more times, every 6th row 3 times'],
      ['reading_before', '30'],
      ['reading_after', '24'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      '1 (29), 9 (28), 17 (27), 23 (26), 29 (25), 35 (24)',
      'you reach 24 stitches, as the pattern says',
    ],
  },
  {
    situation: 'does not understand an armhole of her first sweater: rows 1, 2, 3, 5 and 9, from 49 to 39',
    flow: 'reading',
    lines: [
      ['reading_line', 'skip', 'There is nothing to read without it.'],
      ['reading_before', 'back'],
      [
        'reading_line',
        'dec 1 st at each end of next 3 rows, then on foll 1 alt rows, then on 1 foll 4th row. 39 sts',
      ],
      ['reading_before', '49'],
      ['reading_after', '39'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['1 (47), 2 (45), 3 (43), 5 (41), 9 (39)'],
  },
  {
    situation:
      'slips eight stitches and binds off two, two, one and one at the neck edge of one front: 23 become 17',
    flow: 'reading',
    lines: [
      ['reading_line', 'bind off at neck edge 2 sts 2 times, 1 st 2 times'],
      ['reading_before', 'about twenty', '20 stitches'],
      ['reading_after', 'change stitches before the line'],
      ['reading_before', '23'],
      ['reading_after', '17'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['2 (−2, 21), 4 (−2, 19), 6 (−1, 18), 8 (−1, 17)', 'you reach 17 stitches, as the pattern says'],
  },
  {
    situation:
      'reads German: every fourth and sixth row in turn, twelve times: rows 4 to 60, and 24 stitches more',
    flow: 'reading',
    lines: [
      ['reading_line', '12 x 1 Masche in jeder 4. und 6. Reihe beidseitig zunehmen'],
      ['reading_before', '44 Maschen'],
      ['reading_after', '68'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      '12 shaping rows over 60 rows. Each increases 2 stitches.',
      '4 (46), 10 (48), 14 (50), 20 (52), 24 (54), 30 (56), 34 (58), 40 (60), 44 (62), 50 (64), 54 (66), 60 (68)',
    ],
  },
  {
    situation: 'ripped a yoke back and asks how many are left of each front: nine of 40 go, 31 stay',
    flow: 'reading',
    lines: [
      ['reading_line', 'decrease 1 stitch at front edge every other row for 9 times'],
      ['reading_before', '40'],
      ['reading_after', "I don't know", 'Whether the line adds up is not known.'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['9 shaping rows over 18 rows. Each decreases 1 stitch.', '18 (31)'],
  },
];

describe('a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
