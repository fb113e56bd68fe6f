/** Knitters half way: what is on the needle is measured, and the rest is planned from it. Figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import { type Conversation, departures, type Line } from './conversation.ts';

const recheck = (piece: string, figures: readonly string[]): readonly Line[] => {
  const asked = ['from', 'to', 'length', 'gauge', 'rows', 'stitches', 'counted', 'counted_rows'];
  return [
    ['unit', 'in'],
    ['recheck_piece', piece],
    ...asked.map((id, i): Line => [`recheck_${id}`, figures[i] ?? 'skip']),
    ['review', 'yes'],
  ];
};

const CONVERSATIONS: readonly Conversation[] = [
  {
    situation: 'has twelve of 21 increases and is on track: nine more, every fourth round',
    flow: 'recheck',
    lines: recheck('sleeve round', [
      '34',
      '76',
      '16',
      '4 sts and 6 rows per inch',
      '60',
      '58',
      '16 sts = 4"',
      '24 rows = 4"',
    ]),
    ends: 'plan',
    // 16 in are 96 rounds; 36 are left for (76 − 58) / 2 = 9.
    says: ['Nothing need be undone', 'every 4th round 9 times', 'You end with 76 stitches.'],
  },
  {
    situation:
      'finds the sleeve 7¼ in at row 47 with two increases missing: they fit into the five rows that are left of 8 in',
    flow: 'recheck',
    lines: recheck('sleeve', [
      '47',
      '59',
      '8',
      '5 sts and 7 rows per inch',
      '47',
      '55',
      '20 sts = 4"',
      '26 rows = 4"',
    ]),
    ends: 'plan',
    // 8 in at 6.5 rows to the inch are 52 rows.
    says: ['Nothing need be undone', '8.6 in', 'Rows that shape, with the count after each: 2 (57), 4 (59).'],
  },
  {
    situation:
      'is near the armholes of a clownish body, 133 stitches at three to the inch where 3.5 was planned: 44.3 for 38 in',
    flow: 'recheck',
    lines: recheck('body round', [
      '133',
      '133',
      '14',
      '3.5 sts and 5 rows per inch',
      '65',
      '133',
      '3 stitches per inch',
      '5 rows per inch',
    ]),
    ends: 'plan',
    says: [
      '44.3 in',
      '38 in planned, so 6.3 in wider. Off.',
      'Body: The other way: rip back',
      'Rip back all 65 rounds',
    ],
  },
  {
    situation: 'cannot say how long the part is to be: the check waits, and says for what',
    flow: 'recheck',
    lines: recheck('pieces', [
      '90',
      '100',
      "I don't know",
      '20 sts and 28 rows = 4"',
      '30',
      '94',
      '20 sts = 4"',
      '28 rows = 4"',
    ]),
    ends: 'cannot',
    says: ['Length of this part'],
  },
];

describe('half way, a knitter who', () => {
  it.each(CONVERSATIONS)('$situation', (conversation) => {
    expect(departures(conversation)).toEqual([]);
  });
});
