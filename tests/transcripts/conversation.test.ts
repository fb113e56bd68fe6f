import { describe, expect, it } from 'vitest';
import { type Conversation, departures } from './conversation.ts';

const SPREAD: Conversation = {
  situation: 'adds ten stitches to 84',
  flow: 'spread',
  lines: [
    ['spread_stitches', '84'],
    ['spread_change', '+10'],
    ['spread_by', 'make one'],
    ['spread_worked', 'round'],
    ['review', 'yes'],
  ],
  ends: 'plan',
  says: ['94 stitches'],
};

describe('a conversation that is written down', () => {
  it('has no departures where it goes as written', () => {
    expect(departures(SPREAD)).toEqual([]);
  });

  it.each<[string, Partial<Conversation>, string]>([
    [
      'another question',
      { lines: [['spread_change', '+10']] },
      "before '+10' stands spread_stitches, not spread_change",
    ],
    ['a refusal', { lines: [['spread_stitches', 'many']] }, "'many' is refused: "],
    [
      'something else told',
      { lines: [['spread_stitches', '84', '85 stitches']] },
      `'84' is not told "85 stitches" but: `,
    ],
    ['another end', { ends: 'cannot' }, 'it ends at plan, not cannot'],
    ['words the plan does not say', { says: ['95 stitches'] }, 'not said: 95 stitches'],
    ['a sum that is not worked', { works: ['84 + 11'] }, 'not worked: 84 + 11'],
  ])('departs where there is %s', (_, change, told) => {
    expect(departures({ ...SPREAD, ...change })[0]).toContain(told);
  });
});
