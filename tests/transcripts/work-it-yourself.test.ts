/**
 * Knitters who work the sums of their plan themselves. The figures are plain arithmetic, worked by hand beside each; the
 * slips are those of common practice.
 */
import { describe, expect, it } from 'vitest';
import { COMES_BACK, type Conversation, departures, type Line } from './conversation.ts';

/** 20 in at 5.5 stitches to the inch and 2 edge stitches: 112. To a multiple of 4 beside the edges: 110 or, on a tie, 114. */
const CAST_ON: readonly Line[] = [
  ['unit', 'inches'],
  ['swatch_stitches', '22 sts = 4 in'],
  ['stitches_width', '20 in'],
  ['stitches_multiple', '4'],
  ['stitches_edge', '2'],
  ['review', 'yes'],
  ['plan', 'Work it yourself'],
];

/** 12 stitches to gain, two in a shaping row: 6 rows; 48 rows are 24 pairs, 4 to an interval; 8 rows. */
const SPACED: readonly Line[] = [
  ['spacing_from', '47'],
  ['spacing_to', '59'],
  ['spacing_rows', '48'],
  ['spacing_worked', 'flat'],
  ['spacing_plain', '0'],
  ['review', 'yes'],
  ['plan', 'work it myself'],
];

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation: 'divides by her gauge where it multiplies, is told so, asks for a hint, and gets it right',
    flow: 'stitches',
    lines: [
      ...CAST_ON,
      // 20 / 5.5 = 3.6, and the 2
      ['sum', '5.6', 'The stitches per in went in the wrong way round'],
      ['sum', 'hint', '× stitches per in + edge stitches'],
      ['sum', '114 sts', 'Right: stitches at the cast-on'],
      // 112 / 5.5 = 20.36 in, which is 51.7 cm
      ['sum', 'centimetres', 'Width at the cast-on, in cm: what do you get?'],
      ['sum', '51.7', 'Right: width at the cast-on'],
      ['tally', 'plan', 'plan'],
    ],
    ends: 'plan',
    says: ['114 stitches'],
  },
  {
    situation: 'forgets the repeat, then the edge stitches, and asks to be shown',
    flow: 'stitches',
    lines: [
      ...CAST_ON,
      ['sum', '112', 'The count does not fit the repeat.'],
      ['sum', '110.0 sts', 'parts from the workings at "stitches at the cast-on"'],
      ['sum', 'show me', 'This is how it goes: stitches at the cast-on'],
      ['sum', 'stop', '1 shown'],
      ['tally', 'plan', 'plan'],
    ],
    ends: 'plan',
    says: ['114 stitches'],
  },
  {
    situation: 'counts one side of the sleeve, goes away over night, and finds the sum where she left it',
    flow: 'spacing',
    lines: [
      ...SPACED,
      ['sum', '12', 'Right: stitches to gain'],
      // 12 / 1
      ['sum', '12', 'There are two sides to it.'],
      ['sum', COMES_BACK, 'Shaping rows: what do you get?'],
      ['sum', '6', 'Right: shaping rows'],
      // 48 / 6
      ['sum', '8', 'There is a two in this line'],
      ['sum', 'next', 'A shorter interval: what do you get?'],
      ['sum', 'banana', 'For example: 84'],
      ['sum', "I don't know", 'A shorter interval = 2 × pairs of rows to a shorter interval.'],
      ['sum', '8 rows', 'Right: a shorter interval'],
      ['sum', 'stop', '2 of 4 right at once, 1 after another try and 1 passed over.'],
      ['tally', 'plan', 'plan'],
    ],
    ends: 'plan',
    says: ['You end with 59 stitches.'],
  },
  {
    situation: 'types a figure that no known slip gives, and is told where to begin, and no figure',
    flow: 'spacing',
    lines: [
      ...SPACED,
      ['sum', '31', 'I get another figure. Compare "stitches to gain" first.'],
      ['sum', 'yes', 'Type your figure, or say "hint".'],
      ['sum', 'help', 'hint (how it is put together)'],
      ['sum', 'stop', 'No sum is done yet.'],
      ['tally', 'plan', 'plan'],
    ],
    ends: 'plan',
    says: ['You end with 59 stitches.'],
  },
  {
    situation: 'changes an answer in the middle of the sums, and is shown the plan that comes of it',
    flow: 'spacing',
    lines: [
      ...SPACED,
      ['sum', '12', 'Right: stitches to gain'],
      ['sum', 'change rows', 'Over how many rows or rounds?'],
      ['spacing_rows', '60'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['You end with 59 stitches.'],
  },
];

describe('a knitter who works the sums herself', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
