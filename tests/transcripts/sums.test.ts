/** Sums asked in public knitting talk (collected 2026), as they were typed: spacing, spreading, bands, yarn, counts. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures } from './conversation.ts';

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation:
      'wants eight inches of sleeve at six rows to the inch with six increases: every eighth row of 48, from 47 to 59',
    flow: 'spacing',
    lines: [
      ['spacing_from', '47'],
      ['spacing_to', '59 stitches'],
      ['spacing_rows', '48'],
      ['spacing_worked', 'flat'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['on every 8th row after it 5 times more', 'You end with 59 stitches.'],
  },
  {
    situation:
      'has 58 rounds to the waist and 24 stitches to lose, four a round: every tenth round four times, every ninth twice',
    flow: 'spacing',
    lines: [
      ['spacing_from', '180'],
      ['spacing_to', '156'],
      ['spacing_rows', '58 rnds'],
      ['spacing_worked', 'body'],
      ['spacing_plain', 'none', 'For example: 0'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every 9th round 2 times, then every 10th round 4 times', 'You end with 156 stitches.'],
  },
  {
    situation:
      'changes her mind and loses 20 in the same 58 rounds: every twelfth round three times, every eleventh twice',
    flow: 'spacing',
    lines: [
      ['spacing_from', '180'],
      ['spacing_to', '156'],
      ['spacing_rows', '58'],
      ['spacing_worked', 'body in the round'],
      ['spacing_plain', '0'],
      ['review', 'change stitches wanted', 'Keep: 156 stitches'],
      ['spacing_to', '160'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every 11th round 2 times, then every 12th round 3 times', 'You end with 160 stitches.'],
  },
  {
    situation:
      'asks for 54 stitches less at the sides alone in 42 rows: on right-side rows it cannot be, and she is told what can',
    flow: 'spacing',
    lines: [
      ['spacing_from', '218 stitches'],
      ['spacing_to', '164 stitches'],
      ['spacing_rows', '42 rows'],
      ['spacing_worked', 'both edges'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      'it needs 27 shaping rows, and only 21 rows here may carry them',
      'Shape on wrong-side rows too: 27 shaping rows, ending with 164 stitches.',
    ],
  },
  {
    situation:
      'then shapes on wrong-side rows too: fifteen times every second row and twelve times every row',
    flow: 'spacing',
    lines: [
      ['spacing_from', '218'],
      ['spacing_to', '164'],
      ['spacing_rows', '42'],
      ['spacing_worked', 'wrong side too'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every row 12 times, then every 2nd row 15 times', 'rows with an even number are wrong-side rows'],
  },
  {
    situation:
      'picks up 88 for a fitted sleeve and wants 52 at the cuff over 100 rounds: sixth round ten times, fifth eight times',
    flow: 'spacing',
    lines: [
      ['spacing_from', '88'],
      ['spacing_to', '52'],
      ['spacing_rows', '100 rounds'],
      ['spacing_worked', 'sleeve in the round'],
      ['spacing_plain', "I don't know", 'I take 0 rows'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every 5th round 8 times, then every 6th round 10 times', 'You end with 52 stitches.'],
  },
  {
    situation:
      'tapers 58 stitches to a cuff of 40 over 105 rounds: every twelfth round six times, every eleventh three times',
    flow: 'spacing',
    lines: [
      ['spacing_from', '58'],
      ['spacing_to', '40'],
      ['spacing_rows', '105'],
      ['spacing_worked', 'round'],
      ['spacing_plain', 'back'],
      ['spacing_worked', 'keep', 'Kept as it was.'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every 11th round 3 times, then every 12th round 6 times'],
  },
  {
    situation: 'must increase 26 evenly after a rib of 134: 22 gaps of five and four of six',
    flow: 'spread',
    lines: [
      ['spread_stitches', '134'],
      ['spread_change', '+26'],
      ['spread_by', 'make one'],
      ['spread_worked', 'in the round'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['[(k5, m1) 6 times, k6, m1, (k5, m1) 5 times, k6, m1] 2 times. You then have 160 stitches.'],
  },
  {
    situation:
      'must lose 54 between borders of four, from 136 to 82: twenty with a stitch between, the rest without',
    flow: 'spread',
    lines: [
      ['spread_stitches', '136 stitches'],
      ['spread_change', '82 sts'],
      ['spread_by', 'k2tog'],
      ['spread_worked', 'flat'],
      ['spread_border', '4'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['work 4 border stitches', 'You then have 82 stitches.'],
  },
  {
    situation: 'counts 102 rows and must pick up 80: four and skip one 14 times, three and skip one 8 times',
    flow: 'pickup',
    lines: [
      ['unit', 'inches'],
      ['pickup_rows', '102 rows'],
      ['swatch_rows', '28 rows = 4"'],
      ['pickup_band', '22 sts = 4"'],
      ['pickup_multiple', '1'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: [
      'Pick up 80 stitches along 102 rows',
      '(pick up 4, one in each row, then skip a row) 14 times; (pick up 3, one in each row, then skip a row) 8 times',
    ],
  },
  {
    situation: 'finds 53 stitches up a front of 11½ inches very few: at 22 to four inches the band wants 63',
    flow: 'pickup',
    lines: [
      ['unit', 'ins'],
      ['pickup_rows', '80'],
      ['swatch_rows', '7 rows per inch', '7 rows per inch'],
      ['pickup_band', '22 sts over 4 in'],
      ['pickup_multiple', 'any', 'For example: multiple of 4 + 2'],
      ['pickup_multiple', 'skip', 'A rib may not begin and end alike.'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['Pick up 63 stitches along 80 rows', 'the edge is 11.4 in long'],
  },
  {
    situation: 'wants seven buttonholes on 98 stitches, and counts in no unit at all',
    flow: 'buttons',
    lines: [
      ['buttons_along', 'sts'],
      ['buttons_length', '98'],
      ['buttons_number', 'seven'],
      ['buttons_ends', '4'],
      ['buttons_hole', '2 sts'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 98 less 2 × 4 less 7 × 2 leaves 76 for six gaps: two of 12 and four of 13.
    says: ['Between two buttonholes lie 12 stitches, and one more in 4 of the gaps.', '5 to 6', '93 to 94'],
  },
  {
    situation:
      'restarts for 38 inches at three stitches to the inch: 114, of which she types the half inch as a fraction first',
    flow: 'stitches',
    lines: [
      ['unit', 'in'],
      ['swatch_stitches', '3 stitches per inch'],
      ['stitches_width', '38½"', '38½ in'],
      ['stitches_multiple', 'change width wanted'],
      ['stitches_width', '38"'],
      ['stitches_multiple', 'multiple of 2'],
      ['stitches_edge', 'none', 'For example:'],
      ['stitches_edge', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['114 stitches: at your gauge they measure 38 in.'],
  },
];

describe('a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
