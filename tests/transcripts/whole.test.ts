/** The whole way as three knitters go it, question by question: a beginner, one who knows her pattern, one who is unsure. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures, type Line } from './conversation.ts';

const SWATCH: readonly Line[] = [
  ['swatch_made', 'in the round'],
  ['swatch_washed', 'yes'],
  ['swatch_stitches', '22 sts and 30 rows over 10 cm', '22 stitches and 30 rows over 10 cm'],
  ['swatch_stitches_2', 'skip', 'One place was counted.'],
  ['swatch_rows_2', 'skip'],
];

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation: 'is a beginner, takes the sample sweater and changes its sleeves alone: 17 questions',
    flow: 'whole',
    lines: [
      ['unit', 'cm'],
      ['pattern', 'sample'],
      ...SWATCH,
      ['table', 'women'],
      ['bust', '38', 'Do you mean 38 in, that is 96.5 cm?'],
      ['check', 'yes'],
      ['upper_bust', '92'],
      ['fit', 'classic'],
      ['size', '4'],
      ['wishes', 'sleeves'],
      ['upper_arm', '31,5'],
      ['wrist', "I don't know", "The cuff is a table's figure."],
      ['sleeve_length', '45'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['sleeve, cuff to underarm: 45', 'Wrist: '],
  },
  {
    situation: 'knows nothing but her gauge and her bust, and still holds a plan that says what is assumed',
    flow: 'whole',
    lines: [
      ['unit', 'skip', 'I take Centimetres'],
      ['pattern', 'no idea', 'The plan is for Pennywhin, our sample sweater.'],
      ['swatch_made', 'idk'],
      ['swatch_washed', 'not sure', 'Measure again after washing.'],
      ['swatch_stitches', '22 sts'],
      ['check', 'yes'],
      ['swatch_stitches_2', 'skip'],
      ['swatch_rows', '30 rows = 10cm'],
      ['swatch_rows_2', 'skip'],
      ['table', 'skip'],
      ['bust', '96.5 cm'],
      ['upper_bust', 'skip'],
      ['fit', 'skip', 'A classic fit is planned.'],
      ['size', 'dunno', 'The size ranked first is followed.'],
      ['wishes', 'length'],
      ['body_length', 'no clue', 'I take'],
      ['review', 'yes'],
    ],
    ends: 'plan',
    says: ['Taken for granted:', 'Measure again after washing.', "The body's length is a stand-in."],
  },
];

describe('on the whole way, a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
