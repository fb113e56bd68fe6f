/** Where a contradiction begins and ends, and what is offered in its place. */
import { describe, expect, it } from 'vitest';
import { contradictions } from '../../src/fit/contradictions.ts';
import type { StatedShaping } from '../../src/fit/contradictions-sums.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { bare, codes, figure, gaugeAlone, ROUND, toldOf } from './told-contradiction.ts';
import { withCount, withLength } from './with-size.ts';

describe('a width of every place', () => {
  it.each(['waist', 'hip', 'cross back', 'upper arm', 'wrist'] as const)(
    'is held against its count: %s',
    (place) => {
      const wide = withLength(withCount(bare({}), '4', place, 40), '4', place, 60);
      expect(codes(wide)).toContain('4: count and width disagree');
    },
  );
});

describe('figures at the very limit', () => {
  it.each<[string, Pattern]>([
    ['3 stitches to 10 cm', gaugeAlone(3, 4)],
    ['60 stitches to 10 cm', gaugeAlone(60, 80)],
    ['three rows to a stitch', gaugeAlone(20, 60)],
    [
      'a cross back as wide as the back below it',
      bare({ counts: { bust: stitches(220), 'cross back': stitches(110) } }),
    ],
    [
      'an upper arm as wide as the wrist',
      bare({ counts: { wrist: stitches(44), 'upper arm': stitches(44) } }),
    ],
    // 30 rows above the cuff hold 15 right-side rows, for 15 increases.
    [
      'as many right-side rows as increases',
      bare({
        counts: { wrist: stitches(44), 'upper arm': stitches(74) },
        finished: { 'sleeve length': cm(16) },
      }),
    ],
    [
      'a sleeve within an inch of its straight armhole',
      bare(
        { finished: { 'armhole depth': cm(20), 'upper arm': cm(42.5) } },
        { construction: 'drop shoulder' },
      ),
    ],
  ])('are let stand: %s', (_, pattern) => {
    expect(codes(pattern)).toEqual([]);
  });

  it('are named just beyond it: a sleeve more than an inch off its straight armhole, either way', () => {
    for (const upper of [37.4, 42.6])
      expect(
        codes(
          bare(
            { finished: { 'armhole depth': cm(20), 'upper arm': cm(upper) } },
            { construction: 'drop shoulder' },
          ),
        ),
      ).toEqual(['4: sleeve top and armhole disagree']);
  });
});

describe('where a pattern does not say', () => {
  it.each<[string, Partial<PatternSize>, Partial<Pattern>]>([
    ['the bust', { counts: { 'cross back': stitches(84) } }, {}],
    ['bind-offs and decreases', { counts: { bust: stitches(220), 'cross back': stitches(84) } }, {}],
    ['the shoulder', { counts: { 'cross back': stitches(84), 'back neck': stitches(38) } }, {}],
    ['the back neck', { counts: { 'cross back': stitches(84), shoulder: stitches(23) } }, {}],
    ['the cross back', { counts: { shoulder: stitches(23), 'back neck': stitches(38) } }, {}],
    ['the upper arm', { counts: { wrist: stitches(44) }, finished: { 'sleeve length': cm(14) } }, {}],
    ['the wrist', { counts: { 'upper arm': stitches(74) }, finished: { 'sleeve length': cm(14) } }, {}],
    ['the sleeve’s length', { counts: { wrist: stitches(44), 'upper arm': stitches(74) } }, {}],
    ['the width of the wrist', { finished: { 'upper arm': cm(30) } }, {}],
    ['the width of the upper arm', { finished: { wrist: cm(20) } }, {}],
    [
      'the depth of a straight armhole',
      { finished: { 'upper arm': cm(30) } },
      { construction: 'drop shoulder' },
    ],
    [
      'the top of a straight sleeve',
      { finished: { 'armhole depth': cm(20) } },
      { construction: 'drop shoulder' },
    ],
  ])('nothing is held against it: %s', (_, size, more) => {
    expect(codes(bare(size, more))).toEqual([]);
  });

  it('an odd difference between back and cross back is named still', () => {
    const found = contradictions(bare({ counts: { bust: stitches(220), 'cross back': stitches(85) } }));
    expect(found.map(toldOf)).toMatchObject([
      {
        code: 'odd change',
        figures: ['stitches of the back: 110 stitches', 'cross back stitches: 85 stitches'],
        sums: ['stitches lost: a - b = 25 stitches'],
      },
    ]);
  });

  it('sizes are in order where one lacks a figure that the other has', () => {
    const sizes: PatternSize[] = [
      { label: 'S', finished: { bust: cm(90) }, counts: {} },
      { label: 'M', finished: {}, counts: { bust: stitches(200) }, rows: { armhole: rows(50) } },
      { label: 'L', finished: { bust: cm(80) }, counts: {} },
    ];
    expect(codes({ ...ROUND, sizes })).toEqual([]);
  });

  it('armhole rows that fall from one size to the next are named by size', () => {
    const sizes = [60, 58].map(
      (n, i): PatternSize => ({ label: `${i}`, finished: {}, counts: {}, rows: { armhole: rows(n) } }),
    );
    expect(contradictions({ ...ROUND, sizes }).map(toldOf)).toEqual([
      {
        code: 'sizes out of order',
        figures: ['armhole rows, size 0: 60 rows', 'armhole rows: 58 rows'],
        sums: ['from this size back to the one before: a - b = 2 rows'],
        agree: ['armhole rows: 60 rows'],
      },
    ]);
  });
});

describe('what depends on how it is made', () => {
  it('an odd bust in the round is halved at the underarm where back and front part, and nowhere else', () => {
    const odd = { counts: { bust: stitches(221) } };
    const plain = { repeat: { multiple: 1, plus: 0 } };
    expect(codes(bare(odd, { ...plain, construction: 'drop shoulder' }))).toEqual(['4: odd change']);
    expect(codes(bare(odd, { ...plain, construction: 'raglan' }))).toEqual([]);
    expect(codes(bare(odd, { ...plain, body: 'flat' }))).toEqual([]);
  });

  it('a sleeve in the round increases on every round, and reaches in half the length', () => {
    const short = bare({
      counts: { wrist: stitches(44), 'upper arm': stitches(74) },
      finished: { 'sleeve length': cm(12) },
    });
    expect(codes(short)).toEqual(['4: shaping out of reach']);
    expect(codes({ ...short, sleeves: 'round' })).toEqual([]);
  });

  it('a sleeve shorter than its cuff is out of order, and nothing is said of its shaping', () => {
    const cuff = bare({
      counts: { wrist: stitches(44), 'upper arm': stitches(74) },
      finished: { 'sleeve length': cm(5) },
    });
    expect(codes(cuff)).toEqual(['4: lengths out of order']);
  });
});

describe('what would agree is offered only where it can be knitted', () => {
  const agree = (pattern: Pattern, lines: readonly StatedShaping[] = []) =>
    contradictions(pattern, lines).map((c) => c.wouldAgree.map(figure));
  const shoulders = (cross: number, shoulder: number, neck: number) =>
    agree(
      bare({
        counts: { 'cross back': stitches(cross), shoulder: stitches(shoulder), 'back neck': stitches(neck) },
      }),
    ).at(-1);
  const armhole = (cross: number, boundOff: number, decreased: number) =>
    agree(
      bare({
        counts: { bust: stitches(200), 'cross back': stitches(cross) },
        armhole: { boundOff: stitches(boundOff), decreased: stitches(decreased) },
      }),
    ).at(-1);

  it('no back neck where the shoulders take all, and no half stitch for a shoulder', () => {
    expect(shoulders(80, 40, 20)).toEqual([
      'cross back stitches: 100 stitches',
      'shoulder stitches: 30 stitches',
    ]);
    expect(shoulders(81, 20, 40)).toEqual([
      'cross back stitches: 80 stitches',
      'back neck stitches: 41 stitches',
    ]);
    expect(shoulders(40, 10, 40)).toEqual([
      'cross back stitches: 60 stitches',
      'back neck stitches: 20 stitches',
    ]);
  });

  it('no bind-off or decrease of half a stitch, or of fewer than none', () => {
    expect(armhole(81, 4, 4)).toEqual(['cross back stitches: 84 stitches']);
    // 100 to 92 are 4 at each side: less than the 6 that are decreased.
    expect(armhole(92, 3, 6)).toEqual([
      'cross back stitches: 82 stitches',
      'stitches decreased at each side of the back: 1 stitches',
    ]);
    // 100 to 92 are 4 at each side: all of them decreased, and none bound off.
    expect(armhole(92, 2, 4)).toEqual([
      'cross back stitches: 88 stitches',
      'stitches bound off at each side of the back: 0 stitches',
      'stitches decreased at each side of the back: 2 stitches',
    ]);
    expect(armhole(92, 25, 25)).toEqual([]);
  });

  const between = (from: number, to: number, by: StatedShaping['by'], perRow: number, times: number) => {
    const [lower, upper] = by === 'increase' ? (['hip', 'bust'] as const) : (['bust', 'hip'] as const);
    const pattern = bare(
      { counts: { [lower]: stitches(from), [upper]: stitches(to) } },
      { repeat: { multiple: 1, plus: 0 }, construction: 'raglan' },
    );
    return agree(pattern, [{ size: '4', from: lower, to: upper, by, perRow, times }])[0];
  };

  it('no part of a shaping row, and no count of no stitches', () => {
    // 30 stitches are seven and a half rows of four.
    expect(between(44, 74, 'increase', 4, 7)).toEqual([
      'bust stitches: 72 stitches',
      'hip stitches: 46 stitches',
    ]);
    // 20 less 14 times 2 are none at all.
    expect(between(20, 10, 'decrease', 2, 10)).toEqual([
      'shaping rows: 5 times',
      'bust stitches: 30 stitches',
    ]);
    // 10 and 20 times 2 are 50: it would have to begin with fewer than none to end at 12.
    expect(between(10, 12, 'increase', 2, 20)).toEqual([
      'shaping rows: 1 times',
      'bust stitches: 50 stitches',
    ]);
    // Increases never lead from 74 to 44; no row of them leads from 74 to 74.
    expect(between(74, 44, 'increase', 2, 15)).toEqual([
      'bust stitches: 104 stitches',
      'hip stitches: 14 stitches',
    ]);
    expect(between(74, 74, 'increase', 2, 1)).toEqual([
      'shaping rows: 0 times',
      'bust stitches: 76 stitches',
      'hip stitches: 72 stitches',
    ]);
  });

  it('a shaping line speaks of its own size, and of counts that are printed', () => {
    const line: StatedShaping = {
      size: '5',
      from: 'wrist',
      to: 'upper arm',
      by: 'increase',
      perRow: 2,
      times: 15,
    };
    // Size 5 goes from 48 to 78 in 15 rows; size 4 from 44 to 74, as well, but in 14 it would miss.
    expect(codes(SAMPLE_ROUND, [line])).toEqual([]);
    expect(codes(SAMPLE_ROUND, [{ ...line, times: 14 }])).toEqual(['5: shaping misses the count']);
    for (const counts of [{}, { wrist: stitches(44) }, { 'upper arm': stitches(74) }])
      expect(codes(bare({ counts }), [{ ...line, size: '4' }])).toEqual([]);
  });

  it('states the figures and the sum of a line that misses', () => {
    const line: StatedShaping = {
      size: '4',
      from: 'upper arm',
      to: 'wrist',
      by: 'decrease',
      perRow: 2,
      times: 14,
    };
    expect(contradictions(ROUND, [line]).map(toldOf)).toEqual([
      {
        code: 'shaping misses the count',
        figures: [
          'upper arm stitches: 74 stitches',
          'shaping rows: 14 times',
          'stitches a shaping row: 2 stitches',
          'wrist stitches: 44 stitches',
        ],
        sums: ['stitches after the line: a - n * s = 46 stitches'],
        agree: ['shaping rows: 15 times', 'wrist stitches: 46 stitches', 'upper arm stitches: 72 stitches'],
      },
    ]);
  });
});
