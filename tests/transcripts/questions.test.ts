/**
 * Questions met in public knitting talk (worked answers collected 2026), as conversations: what the knitter says as she
 * typed it, what must be asked back, and the right figures at the end. Situations are told in our words.
 */
import { describe, expect, it } from 'vitest';
import { talk } from './talk.ts';

interface Case {
  readonly situation: string;
  readonly says: readonly string[];
  readonly must: readonly (string | RegExp)[];
}

const swatch = (own: readonly string[], pattern: string): string[] => [
  'swatch',
  'inches',
  'flat',
  'yes',
  ...own,
  pattern,
  'yes',
  'pause',
];

const CASES: readonly Case[] = [
  {
    situation: 'wants 20 stitches to 4 in and gets 19: a 40 in chest comes out 42.1 in',
    says: swatch(['19 stitches over 4"', 'skip', '24 rows over 4"', 'skip'], '20 sts = 4", 26 rows = 4"'),
    must: ['40 in of width comes out 42.1 in', 'your fabric is looser'],
  },
  {
    situation: 'wants 20 stitches to 4 in and gets 17: a 40 in chest comes out 47.1 in',
    says: swatch(['17 sts to 4"', 'skip', '24 rows over 4"', 'skip'], '20 sts = 4", 26 rows = 4"'),
    must: ['40 in of width comes out 47.1 in'],
  },
  {
    situation:
      'types 18 stitches to 4 in and 4.25 to the inch, which disagree: it must be asked which one was counted',
    says: swatch(
      ['18 stitches per 4 inches (4.25 stitches per inch)', '2', 'skip', '24 rows over 4"', 'skip'],
      '16 sts = 4", 24 rows = 4"',
    ),
    must: [/which|Which/, 'Your gauge is 4.25 stitches per in', '40 in of width comes out 37.6 in'],
  },
  {
    situation: 'has 17 stitches and 23 rows to 4 in after washing: 4.25 and 5.75 to the inch',
    says: swatch(['4in. = 17 st', 'yes', 'skip', '4in = 23 rows', 'skip'], 'skip'),
    must: ['Your gauge is 4.25 stitches per in and 5.75 rows per in'],
  },
  {
    situation: 'swatched 3.5 to the inch but the sweater measures 3: 133 stitches are 44.3 in, not 38',
    says: swatch(['3 stitches per inch', 'skip', '4 rows per inch', 'skip'], '3.5 sts and 5 rows per inch'),
    must: [/40 in of width comes out 46\.7 in/],
  },
  {
    situation:
      'bust 40, four sizes, 14 stitches to 4 in on the thick needle: the second size comes out 42.3 in',
    says: [
      'size',
      'inches',
      'my own',
      'from the hem, in pieces',
      '16sts x 23rows = 4"',
      '34 (37, 40, 43) in',
      '14 sts and 20 rows = 4"',
      'women',
      '40"',
      'skip',
      'classic',
      'yes',
      'pause',
    ],
    must: ['Size 2', 'bust 42.3 in'],
  },
  {
    situation:
      'knits 4.75 to the inch where 5 is wanted and wants ten inches of ease on 38: 227 stitches come out 47.8 in',
    says: [
      'size',
      'in',
      'own',
      'hem round',
      '5 sts and 8 rows per inch',
      '45.4 (49.4) in',
      '4.75 sts and 8 rows per inch',
      'women',
      '38',
      'skip',
      'oversized',
      'yes',
      'pause',
    ],
    must: ['bust 47.8 in'],
  },
  {
    situation: 'measures 38 and the sizes jump over her: 40.5 in has 2.5 in of ease',
    says: [
      'size',
      'in',
      'own',
      'hem pieces',
      '18 sts and 24 rows = 4"',
      '32 (36, 40.5, 44, 48) in',
      '18 sts and 24 rows = 4"',
      'women',
      '38"',
      'skip',
      'classic',
      'yes',
      'pause',
    ],
    must: ['Follow the counts of size 3', 'bust 40½ in'],
  },
  {
    situation:
      'has 18 stitches over 3.5 in where 18 over 4 is wanted: for 49 in she follows the size printed as 56',
    says: [
      'size',
      'in',
      'own',
      'top down',
      '18 sts and 26 rows / 4"',
      '49 (53, 56) in',
      '18 sts over 3.5 in, 26 rows over 4 in',
      'women',
      '47"',
      'skip',
      'classic',
      'yes',
      'pause',
    ],
    must: ['bust 49 in'],
  },
  {
    situation: 'fills 3½ in where the pattern wants 4: a printed 44 in comes out 38.5 in',
    says: [
      'size',
      'in',
      'own',
      'hem round',
      '16 sts and 22 rows = 4"',
      '40 (44) in',
      '16 sts and 22 rows = 3.5"',
      'women',
      '38" bust',
      'skip',
      'close',
      'yes',
      'pause',
    ],
    must: ['bust 38½ in'],
  },
];

describe('questions of knitters, as they were typed', () => {
  it.each(CASES)('$situation', async ({ says, must }) => {
    const shown = await talk(says);
    for (const said of must)
      expect(shown.replace(/\s+/g, ' ')).toMatch(
        typeof said === 'string' ? new RegExp(said.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')) : said,
      );
  });
});
