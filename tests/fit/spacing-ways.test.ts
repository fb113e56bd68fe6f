/** What is offered where shaping does not come out, count by count; worked by hand. */
import { describe, expect, it } from 'vitest';
import { type SpacingAsk, space } from '../../src/fit/spacing.ts';
import { rows, stitches } from '../../src/fit/units.ts';

/** Each way with the count it ends at and its shaping rows. */
function ways(from: number, to: number, within: number, perRow: number, more: Partial<SpacingAsk> = {}) {
  const done = space({
    from: stitches(from),
    to: stitches(to),
    rows: rows(within),
    perRow,
    carriers: 'odd rows',
    lead: rows(0),
    trail: rows(0),
    order: 'grouped',
    ...more,
  });
  if (done.kind === 'spaced') return 'none is needed';
  return done.alternatives.map(
    ({ way, spaced }) => `${way}: ${spaced.to} on ${spaced.shaping.map((s) => s.row).join(' ')}`,
  );
}

describe('seven shaping rows in eight rows, of which four are right-side rows,', () => {
  it('are worked on wrong-side rows too, or four stitches at a time, or in more rows, or as far as they go', () => {
    // 44 and 7 times 2 are 58; four times 4 are 60, the nearest; 7 right-side rows end with the 13th; 44 and 4 times 2 are 52.
    expect(ways(44, 58, 8, 2)).toEqual([
      'wrong-side rows too: 58 on 2 3 4 5 6 7 8',
      'more stitches a row: 60 on 1 3 5 7',
      'longer section: 58 on 1 3 5 7 9 11 13',
      'count within reach: 52 on 1 3 5 7',
    ]);
  });

  it('are offered no wrong-side rows where those are worked already', () => {
    expect(ways(44, 62, 8, 2, { carriers: 'every row' })).toEqual([
      'more stitches a row: 64 on 2 4 6 7 8',
      'longer section: 62 on 1 2 3 4 5 6 7 8 9',
      'count within reach: 60 on 1 2 3 4 5 6 7 8',
    ]);
  });
});

describe('a count between two that shaping reaches', () => {
  it('is led to either', () => {
    expect(ways(44, 75, 60, 2)).toEqual([
      'nearest count: 74 on 3 7 11 15 19 23 27 31 35 39 43 47 51 55 59',
      expect.stringContaining('nearest count: 76 on '),
    ]);
  });

  it('is led to a single stitch, and never to none', () => {
    expect(ways(3, 2, 10, 2)).toEqual(['nearest count: 3 on ', 'nearest count: 1 on 9']);
    expect(ways(4, 1, 10, 4)).toEqual(['nearest count: 4 on ']);
  });
});
