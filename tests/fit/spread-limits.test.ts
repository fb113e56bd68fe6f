/** Where spreading over one row ends, and what is offered beyond it. Counts are worked by hand beside each. */
import { describe, expect, it } from 'vitest';
import { type SpreadAsk, spread } from '../../src/fit/spread.ts';
import { stitches } from '../../src/fit/units.ts';

type Asked = Partial<Omit<SpreadAsk, 'stitches' | 'change'>>;

function asked(count: number, change: number, more: Asked = {}) {
  return spread({ stitches: stitches(count), change, worked: 'flat', ...more });
}

/** The ways out with the counts that their rows lead to. */
function ways(count: number, change: number, more: Asked = {}) {
  const found = asked(count, change, more);
  if (found.kind === 'spread') return 'none is needed';
  return found.alternatives.map(
    ({ way, rows }) => `${way}: ${[count, ...rows.map((row) => row.after)].join(' ')}`,
  );
}

describe('more changes than one row holds', () => {
  it('are made in the fewest rows that hold them, or as many as fit', () => {
    // Ten pairs stand in 20 stitches; 12 are 6 in each of two rows, or six double decreases over 18 stitches.
    expect(ways(20, -12)).toEqual(['several rows: 20 14 8', 'double changes: 20 8', 'as many as fit: 20 10']);
    // 13 are 7 and 6: 20 to 13, and six pairs in 13. No double decrease makes an odd difference.
    expect(ways(20, -13)).toEqual(['several rows: 20 13 7', 'as many as fit: 20 10']);
  });

  it('take six rows at most', () => {
    // Between two stitches there is one place: a row gains one, and shares are equal.
    expect(ways(2, 6)).toEqual(['several rows: 2 3 4 5 6 7 8', 'as many as fit: 2 3']);
    expect(ways(2, 7)).toEqual(['as many as fit: 2 3']);
  });

  it('offer nothing where nothing fits', () => {
    // One stitch has no place beside it on a flat row.
    expect(asked(5, 1, { edge: stitches(2) })).toMatchObject({ kind: 'too many changes', asked: 1, most: 0 });
    expect(ways(5, 1, { edge: stitches(2) })).toEqual([]);
  });

  it('that are double already offer no more rows of them', () => {
    // Six double decreases in 20 stitches; 14 lost are seven.
    expect(ways(20, -14, { by: 'cdd' })).toEqual(['as many as fit: 20 8']);
    expect(ways(20, -16, { by: 'cdd' })).toEqual(['as many as fit: 20 8']);
  });

  it('between repeats are offered anywhere in the row, or as many as repeats meet', () => {
    // Six repeats of four meet at five places on a flat row, at six in the round.
    expect(asked(24, -6, { repeat: stitches(4) })).toMatchObject({
      kind: 'too many changes',
      asked: 6,
      most: 5,
    });
    expect(ways(24, -6, { repeat: stitches(4) })).toEqual([
      'anywhere in the row: 24 18',
      'as many as fit: 24 19',
    ]);
    expect(asked(24, -6, { repeat: stitches(4), worked: 'round' }).kind).toBe('spread');
    // Twelve repeats of two meet at eleven places; in other rows the repeat would be another.
    expect(ways(24, -12, { repeat: stitches(2) })).toEqual([
      'anywhere in the row: 24 12',
      'as many as fit: 24 13',
    ]);
  });
});

describe('a count that cannot be', () => {
  it('of half a double decrease is led to the one beside it, never to no change at all', () => {
    expect(ways(40, -1, { by: 'cdd' })).toEqual(['nearest count: 40 38']);
    expect(ways(40, -5, { by: 'cdd' })).toEqual(['nearest count: 40 34', 'nearest count: 40 36']);
  });

  it('against the rule of the pattern is led to those beside it, in the direction that was asked for', () => {
    const multipleOf = (multiple: number) => ({
      result: { multiple, plus: 0, edge: 0, parity: 'any' as const },
    });
    expect(ways(80, -10, multipleOf(8))).toEqual(['nearest count: 80 64', 'nearest count: 80 72']);
    // 70 lies between 8 × 8 + 4 and 8 × 9 + 4.
    expect(ways(80, -10, { result: { ...multipleOf(8).result, plus: 4 } })).toEqual([
      'nearest count: 80 68',
      'nearest count: 80 76',
    ]);
    // 77 lies between 50 and 100: but stitches were to be lost.
    expect(ways(80, -3, multipleOf(50))).toEqual(['nearest count: 80 50']);
    expect(ways(80, 10, multipleOf(100))).toEqual(['nearest count: 80 100']);
  });
});

describe('a row that would leave nothing', () => {
  const result = { multiple: 8, plus: 2, edge: 0, parity: 'any' as const };

  it('has too many changes, whatever count the pattern asks for; one stitch is a count', () => {
    expect(asked(4, -4, { result }).kind).toBe('too many changes');
    expect(asked(4, -3, { result }).kind).toBe('result breaks the rule');
  });
});

describe('a programmer’s mistake throws', () => {
  it.each<[string, number, number, Asked]>([
    ['a decrease that should gain', 40, 4, { by: 'k2tog' }],
    ['an increase that should lose', 40, -4, { by: 'm1' }],
    ['borders that fill the row', 10, 1, { edge: stitches(5) }],
    ['a border of less than nothing', 40, 4, { edge: -1 as SpreadAsk['stitches'] }],
    ['a border in the round', 40, 4, { edge: stitches(2), worked: 'round' }],
    ['a repeat too narrow for its change', 40, -4, { by: 'cdd', repeat: stitches(2) }],
  ])('%s', (_, count, change, more) => {
    expect(() => asked(count, change, more)).toThrow(RangeError);
  });
});
