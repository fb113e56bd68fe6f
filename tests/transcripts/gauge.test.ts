/** Questions about gauge from public knitting talk (collected 2026), as they were typed; figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures, type Line } from './conversation.ts';

/** From the first question of the swatch to its stitches, in inches. */
const SWATCH: readonly Line[] = [
  ['unit', 'inches'],
  ['swatch_made', 'flat'],
  ['swatch_washed', 'yes'],
];

/** One place counted, and the rows. */
const ONE_PLACE = (rows: string): readonly Line[] => [
  ['swatch_stitches_2', 'skip'],
  ['swatch_rows', rows],
  ['swatch_rows_2', 'skip'],
];

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation: 'wants 20 stitches to four inches and gets 19: a chest of 40 comes out 42.1',
    flow: 'swatch',
    lines: [
      ...SWATCH,
      ['swatch_stitches', '19 stitches over 4"'],
      ...ONE_PLACE('24 rows over 4"'),
      ['pattern_gauge', '20 sts = 4"', 'For example:'],
      ['pattern_gauge', '20 sts = 4", 26 rows = 4"'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['40 in of width comes out 42.1 in', 'your fabric is looser'],
  },
  {
    situation: 'got 17 on the larger needle: a chest of 40 comes out 47.1',
    flow: 'swatch',
    lines: [
      ...SWATCH,
      ['swatch_stitches', '17 sts to 4"'],
      ...ONE_PLACE('24 rows over 4"'),
      ['pattern_gauge', '20 sts = 4", 26 rows = 4"'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['40 in of width comes out 47.1 in'],
  },
  {
    situation:
      'types 18 to four inches and 4.25 to the inch, which disagree: it is asked which one she counted',
    flow: 'swatch',
    lines: [
      ...SWATCH,
      ['swatch_stitches', '18 stitches per 4 inches (4.25 stitches per inch)', '4.25'],
      ['check', '2'],
      ...ONE_PLACE('24 rows over 4"'),
      ['pattern_gauge', '16 sts = 4", 24 rows = 4"'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 4 / 4.25 of 40 in.
    says: ['Your gauge is 4.25 stitches per in', '40 in of width comes out 37.6 in'],
  },
  {
    situation: 'measured a swatch three ways; the washed one counts: 4.25 stitches and 5.75 rows to the inch',
    flow: 'swatch',
    lines: [
      ...SWATCH,
      ['swatch_stitches', '4in. = 17 st', '17 stitches over 4 in'],
      ['swatch_stitches_2', 'skip'],
      ['swatch_rows', '4in = 23 rows'],
      ['swatch_rows_2', 'skip'],
      ['pattern_gauge', 'skip', 'a gauge like yours'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['Your gauge is 4.25 stitches per in and 5.75 rows per in'],
  },
  {
    situation:
      'types 20 stitches to the inch, which no yarn gives: it is asked whether four inches were meant',
    flow: 'swatch',
    lines: [
      ...SWATCH,
      ['swatch_stitches', '24 st./in.', 'Do you mean 24 stitches over 4 in?'],
      ['check', 'yes', '24 stitches over 4 in'],
      ...ONE_PLACE('28 rows = 4"'),
      ['pattern_gauge', '20 sts and 28 rows = 4"'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 20 / 24 of 40 in.
    says: ['40 in of width comes out 33.3 in'],
  },
  {
    situation: 'swatched 13 to four inches and knitted 18: a circumference of 48 would be 34.7',
    flow: 'stitches',
    lines: [
      ['unit', 'in'],
      ['swatch_stitches', '18sts over 4inches'],
      ['stitches_width', "34.7''"],
      ['stitches_multiple', 'any count', 'For example:'],
      ['stitches_multiple', '1'],
      ['stitches_edge', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 48 in at 13 to 4 in are 156 stitches, which are 34.7 in at 18.
    says: ['156 stitches: at your gauge they measure 34.7 in.'],
  },
  {
    situation: 'has gauges over different lengths, one strand for three: a back of 36 stitches becomes 84',
    flow: 'stitches',
    lines: [
      ['unit', 'in'],
      ['swatch_stitches', '7 sts and 9rows =2"', '7 stitches'],
      // 36 stitches at 6 to 4 in.
      ['stitches_width', '24 inches'],
      ['stitches_multiple', 'multiple of 1'],
      ['stitches_edge', 'skip'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['84 stitches: at your gauge they measure 24 in.'],
  },
  {
    situation:
      'spaces fourteen decreases over 22 rows for that yarn: eight on every second row and six on every row',
    flow: 'spacing',
    lines: [
      ['spacing_from', '84'],
      ['spacing_to', '56'],
      ['spacing_rows', '22'],
      ['spacing_worked', 'wrong-side rows too'],
      ['spacing_plain', '0'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['every row 6 times, then every 2nd row 8 times'],
  },
  {
    situation:
      'likes her looser cloth, 17 and 24 where 20 and 27 are wanted, and types it in French: 184 stitches become 156',
    flow: 'regauge',
    lines: [
      ['unit', 'cm'],
      ['pattern', 'own'],
      ['body_made', 'hem round'],
      ['sleeve_made', 'cuff flat'],
      ['pattern_gauge', '20 mailles et 27 rangs 10 x 10 cm'],
      ['regauge_gauge', '17 mailles et 24 rangs', '17 stitches and 24 rows over 10 cm'],
      ['regauge_repeat', 'multiple of 2'],
      ['p_bust', '184'],
      ['p_hem_stitches', '184'],
      ['regauge_cross_back', 'skip'],
      ['regauge_neck', 'skip'],
      ['p_wrist', 'skip'],
      ['p_upper_arm', 'skip'],
      ['regauge_armhole', '54 rows'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    // 184 × 17/20 = 156.4; 54 × 24/27 = 48.
    says: ['bust: 156 stitches in place of 184', '48 rows'],
  },
  {
    situation:
      'has a row gauge of seven that washes to eight, as the pattern wants: fifteen inches are 120 rounds',
    flow: 'length',
    lines: [
      ['unit', 'inches'],
      ['body_made', 'top down'],
      ['gauge', '8 rows/in', 'Half of it is missing there.'],
      ['gauge', '5 sts and 8 rows per inch'],
      ['p_body_length', '15"'],
      ['body_length', '15"'],
      ['p_bust', '200'],
      ['p_hem', '1'],
      ['p_hem_stitches', "I don't know"],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['at your gauge that is 120 rounds', 'That is as many as in the pattern.'],
  },
];

describe('a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
