/** What a technical editor is told of counts that cannot all be right, sum by sum. */
import { describe, expect, it } from 'vitest';
import { contradictions } from '../../src/fit/contradictions.ts';
import type { Pattern } from '../../src/fit/pattern.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { bare, PIECES, ROUND, type Told, toldOf } from './told-contradiction.ts';
import { withCount, withSize } from './with-size.ts';

describe('what is told of a contradiction', () => {
  it.each<[string, Pattern, Told]>([
    [
      '220 are 18 repeats of 12, and 4 over',
      { ...ROUND, repeat: { multiple: 12, plus: 0 } },
      {
        code: 'repeat not fitted',
        figures: [
          'bust stitches: 220 stitches',
          'edge stitches: 0 stitches',
          'stitches beyond the repeats: 0 stitches',
          'stitch repeat: 12 stitches',
        ],
        sums: [
          'whole repeats: (a - e - p) / m = 18 times',
          'stitches left over: a - e - p - m * k = 4 stitches',
        ],
        agree: ['bust stitches: 216 stitches', 'bust stitches: 228 stitches'],
      },
    ],
    [
      'two edge stitches on a body in the round',
      { ...ROUND, edge: { body: 2, sleeves: 2 } },
      {
        code: 'edge stitches in the round',
        figures: ['edge stitches of the body: 2 stitches'],
        sums: [],
        agree: ['edge stitches of the body: 0 stitches'],
      },
    ],
    [
      '44 to 75 cannot be made by a stitch at each side',
      withCount(bare({ counts: { wrist: stitches(44) } }), '4', 'upper arm', 75),
      {
        code: 'odd change',
        figures: ['wrist stitches: 44 stitches', 'upper arm stitches: 75 stitches'],
        sums: ['stitches gained: b - a = 31 stitches'],
        agree: [
          'wrist stitches: 43 stitches',
          'wrist stitches: 45 stitches',
          'upper arm stitches: 74 stitches',
          'upper arm stitches: 76 stitches',
        ],
      },
    ],
    [
      '75 to 24 cannot either',
      bare({ counts: { 'upper arm': stitches(75), 'cap top': stitches(24) } }),
      {
        code: 'odd change',
        figures: ['upper arm stitches: 75 stitches', 'cap top stitches: 24 stitches'],
        sums: ['stitches lost: a - b = 51 stitches'],
        agree: [
          'upper arm stitches: 74 stitches',
          'upper arm stitches: 76 stitches',
          'cap top stitches: 23 stitches',
          'cap top stitches: 25 stitches',
        ],
      },
    ],
    [
      '221 in the round have no half',
      bare({ counts: { bust: stitches(221) } }, { repeat: { multiple: 1, plus: 0 } }),
      {
        code: 'odd change',
        figures: ['bust stitches: 221 stitches'],
        sums: ['stitches of the back: a / 2 = 110.5 stitches'],
        agree: ['bust stitches: 220 stitches', 'bust stitches: 222 stitches'],
      },
    ],
    [
      'half of 220 less twice 6 and 8 are 82, where 84 are printed',
      withSize(ROUND, '4', (s) => ({ ...s, armhole: { boundOff: stitches(6), decreased: stitches(8) } })),
      {
        code: 'armhole does not add up',
        figures: [
          'stitches of the back: 110 stitches',
          'stitches bound off at each side of the back: 6 stitches',
          'stitches decreased at each side of the back: 8 stitches',
          'cross back stitches: 84 stitches',
        ],
        sums: [
          'stitches of the back: a / 2 = 110 stitches',
          'stitches left of the back: a - 2 * (b + c) = 82 stitches',
        ],
        agree: [
          'cross back stitches: 82 stitches',
          'stitches bound off at each side of the back: 5 stitches',
          'stitches decreased at each side of the back: 7 stitches',
        ],
      },
    ],
    [
      'two shoulders of 25 and 38 for the neck are 88, where 86 are printed',
      withCount(PIECES, '4', 'shoulder', 25),
      {
        code: 'shoulders do not add up',
        figures: [
          'cross back stitches: 86 stitches',
          'shoulder stitches: 25 stitches',
          'back neck stitches: 38 stitches',
        ],
        sums: ['two shoulders and the back neck: 2 * a + b = 88 stitches'],
        agree: [
          'cross back stitches: 88 stitches',
          'back neck stitches: 36 stitches',
          'shoulder stitches: 24 stitches',
        ],
      },
    ],
    [
      '120 across above 110 of the back',
      bare({ counts: { bust: stitches(220), 'cross back': stitches(120) } }),
      {
        code: 'wider above the armhole',
        figures: ['stitches of the back: 110 stitches', 'cross back stitches: 120 stitches'],
        sums: ['stitches of the back: a / 2 = 110 stitches', 'stitches gained above: b - a = 10 stitches'],
        agree: ['cross back stitches: 110 stitches'],
      },
    ],
    [
      'a wrist of 74 below an upper arm of 44',
      bare({ counts: { wrist: stitches(74), 'upper arm': stitches(44) } }),
      {
        code: 'sleeve narrows upward',
        figures: ['wrist stitches: 74 stitches', 'upper arm stitches: 44 stitches'],
        sums: ['narrower above by: a - b = 30 stitches'],
        agree: ['upper arm stitches: 74 stitches', 'wrist stitches: 44 stitches'],
      },
    ],
    [
      'a wrist of 30 cm below an upper arm of 28 cm',
      bare({ finished: { wrist: cm(30), 'upper arm': cm(28) } }),
      {
        code: 'sleeve narrows upward',
        figures: ['finished wrist: 30 cm', 'finished upper arm: 28 cm'],
        sums: ['narrower above by: a - b = 2 cm'],
        agree: ['finished upper arm: 30 cm', 'finished wrist: 28 cm'],
      },
    ],
    [
      '24 rows above the cuff hold 12 right-side rows, and 15 increases are needed',
      withSize(ROUND, '4', (s) => ({ ...s, finished: { ...s.finished, 'sleeve length': cm(14) }, rows: {} })),
      {
        code: 'shaping out of reach',
        figures: [
          'wrist stitches: 44 stitches',
          'upper arm stitches: 74 stitches',
          'finished sleeve length: 14 cm',
        ],
        sums: [
          'rows above the cuff: (a - b) * c / d = 24 rows',
          'shaping rows needed: (b - a) / 2 = 15 times',
        ],
        agree: ['upper arm stitches: 68 stitches', 'wrist stitches: 50 stitches'],
      },
    ],
    [
      'a straight armhole of 20 cm takes a sleeve of 40 cm, not of 36',
      bare({ finished: { 'armhole depth': cm(20), 'upper arm': cm(36) } }, { construction: 'drop shoulder' }),
      {
        code: 'sleeve top and armhole disagree',
        figures: ['finished upper arm: 36 cm', 'finished armhole depth: 20 cm'],
        sums: ['armhole all round: 2 * a = 40 cm'],
        agree: ['finished upper arm: 40 cm', 'finished armhole depth: 18 cm'],
      },
    ],
  ])('%s', (_, pattern, expected) => {
    expect(contradictions(pattern).map(toldOf)[0]).toEqual(expected);
  });
});
