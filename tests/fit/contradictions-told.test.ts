/** What a technical editor is told of gauge, widths, lengths and sizes that cannot all be right, sum by sum. */
import { describe, expect, it } from 'vitest';
import { contradictions } from '../../src/fit/contradictions.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { gaugeAlone, PIECES, ROUND, type Told, toldOf } from './told-contradiction.ts';
import { withLength } from './with-size.ts';

const GAUGE = ['stitches of the gauge: 22 stitches', 'span of the stitch gauge: 10 cm'];
const ROW_GAUGE = ['rows of the gauge: 30 rows', 'span of the row gauge: 10 cm'];
const AT_EACH_SIDE = 'difference allowed: one stitch at each side: 2 * a = 2 stitches';

describe('what is told of a contradiction', () => {
  it.each<[string, Pattern, Told]>([
    [
      '52 cm at 2.2 stitches a cm and two edge stitches are 116.4, where 112 are printed',
      withLength(PIECES, '4', 'bust', 104),
      {
        code: 'count and width disagree',
        figures: ['bust stitches: 112 stitches', 'finished bust: 104 cm', ...GAUGE],
        sums: [
          'stitches of one piece for the finished bust: a * b / c / p + e = 116.4 stitches',
          'stitches short of them: a - b = 4.4 stitches',
          AT_EACH_SIDE,
        ],
        agree: ['bust stitches: 116 stitches', 'finished bust: 100 cm'],
      },
    ],
    [
      '96 cm at 2.2 stitches a cm are 211.2, where 220 are printed',
      withLength(ROUND, '4', 'bust', 96),
      {
        code: 'count and width disagree',
        figures: ['bust stitches: 220 stitches', 'finished bust: 96 cm', ...GAUGE],
        sums: [
          'stitches of one piece for the finished bust: a * b / c / p + e = 211.2 stitches',
          'stitches printed beyond them: b - a = 8.8 stitches',
          AT_EACH_SIDE,
        ],
        agree: ['bust stitches: 212 stitches', 'finished bust: 100 cm'],
      },
    ],
    [
      '254 cm are 100 in: somebody turned centimetres into inches the wrong way',
      withLength(ROUND, '4', 'bust', 254),
      {
        code: 'inches for centimetres',
        figures: ['bust stitches: 220 stitches', 'finished bust: 254 cm', ...GAUGE],
        sums: [
          'stitches of one piece for the finished bust: a * b / c / p + e = 558.8 stitches',
          'stitches short of them: a - b = 338.8 stitches',
          AT_EACH_SIDE,
        ],
        agree: ['finished bust: 100 cm'],
      },
    ],
    [
      '40 in of 220 stitches are 22 to 4 in, not to 10 cm',
      withLength(ROUND, '4', 'bust', 101.6),
      {
        code: 'four inches for ten centimetres',
        figures: ['bust stitches: 220 stitches', 'finished bust: 101.6 cm', ...GAUGE],
        sums: [
          'stitches of one piece for the finished bust: a * b / c / p + e = 223.52 stitches',
          'stitches short of them: a - b = 3.52 stitches',
          AT_EACH_SIDE,
        ],
        agree: ['span of the stitch gauge: 10.16 cm'],
      },
    ],
    [
      '22 cm at 3 rows a cm are 66, where 60 are printed',
      withLength(ROUND, '4', 'armhole depth', 22),
      {
        code: 'rows and length disagree',
        figures: ['armhole rows: 60 rows', 'finished armhole depth: 22 cm', ...ROW_GAUGE],
        sums: [
          'rows for the finished armhole depth: a * b / c = 66 rows',
          'rows short of them: a - b = 6 rows',
        ],
        agree: ['armhole rows: 66 rows', 'finished armhole depth: 20 cm'],
      },
    ],
    [
      '18 cm at 3 rows a cm are 54, where 60 are printed',
      withLength(ROUND, '4', 'armhole depth', 18),
      {
        code: 'rows and length disagree',
        figures: ['armhole rows: 60 rows', 'finished armhole depth: 18 cm', ...ROW_GAUGE],
        sums: [
          'rows for the finished armhole depth: a * b / c = 54 rows',
          'rows printed beyond them: b - a = 6 rows',
        ],
        agree: ['armhole rows: 54 rows', 'finished armhole depth: 20 cm'],
      },
    ],
    [
      '7.875 is a depth in inches',
      withLength(ROUND, '4', 'armhole depth', 7.875),
      {
        code: 'inches for centimetres',
        figures: ['armhole rows: 60 rows', 'finished armhole depth: 7.88 cm', ...ROW_GAUGE],
        // 7.875 × 3 are 23.6 rows.
        sums: [
          'rows for the finished armhole depth: a * b / c = 24 rows',
          'rows printed beyond them: b - a = 36 rows',
        ],
        agree: ['finished armhole depth: 20 cm'],
      },
    ],
    [
      '50.8 are 20 cm, made inches twice over',
      withLength(ROUND, '4', 'armhole depth', 50.8),
      {
        code: 'inches for centimetres',
        figures: ['armhole rows: 60 rows', 'finished armhole depth: 50.8 cm', ...ROW_GAUGE],
        // 50.8 × 3 are 152.4 rows.
        sums: [
          'rows for the finished armhole depth: a * b / c = 152 rows',
          'rows short of them: a - b = 92 rows',
        ],
        agree: ['finished armhole depth: 20 cm'],
      },
    ],
    [
      'a hem as deep as the body leaves nothing above it',
      { ...ROUND, edging: { hem: cm(38), cuff: cm(6) } },
      {
        code: 'lengths out of order',
        figures: ['finished body length: 38 cm', 'hem edging: 38 cm'],
        sums: ['length above the edging: a - b = 0 cm'],
        agree: [],
      },
    ],
    [
      'a back neck of 34 after one of 38',
      {
        ...ROUND,
        sizes: [
          { label: '4', finished: {}, counts: { 'back neck': stitches(38) } },
          { label: '5', finished: {}, counts: { 'back neck': stitches(34) } },
        ],
      },
      {
        code: 'sizes out of order',
        figures: ['back neck stitches, size 4: 38 stitches', 'back neck stitches: 34 stitches'],
        sums: ['from this size back to the one before: a - b = 4 stitches'],
        agree: ['back neck stitches: 38 stitches'],
      },
    ],
    [
      '88 stitches and 120 rows were counted over four times the span',
      gaugeAlone(88, 120),
      {
        code: 'gauge out of bounds',
        figures: ['stitches over the usual span: 88 stitches', 'rows over the usual span: 120 rows'],
        sums: [
          'stitches over the usual span: c * a / b = 88 stitches',
          'rows over the usual span: c * a / b = 120 rows',
        ],
        agree: ['stitches over the usual span: 22 stitches'],
      },
    ],
    [
      '120 rows to 22 stitches likewise',
      gaugeAlone(22, 120),
      {
        code: 'gauge out of bounds',
        figures: ['stitches over the usual span: 22 stitches', 'rows over the usual span: 120 rows'],
        sums: [
          'stitches over the usual span: c * a / b = 22 stitches',
          'rows over the usual span: c * a / b = 120 rows',
        ],
        agree: ['rows over the usual span: 30 rows'],
      },
    ],
    [
      'two stitches to 10 cm are no knitting, whatever they should have been',
      gaugeAlone(2, 3),
      {
        code: 'gauge out of bounds',
        figures: ['stitches over the usual span: 2 stitches', 'rows over the usual span: 3 rows'],
        sums: [
          'stitches over the usual span: c * a / b = 2 stitches',
          'rows over the usual span: c * a / b = 3 rows',
        ],
        agree: [],
      },
    ],
    [
      '16 rows to 19 stitches are the two figures changed about',
      gaugeAlone(19, 16),
      {
        code: 'rows fewer than stitches',
        figures: ['stitches over the usual span: 19 stitches', 'rows over the usual span: 16 rows'],
        sums: [
          'stitches over the usual span: c * a / b = 19 stitches',
          'rows over the usual span: c * a / b = 16 rows',
        ],
        agree: ['stitches over the usual span: 16 stitches', 'rows over the usual span: 19 rows'],
      },
    ],
  ])('%s', (_, pattern, expected) => {
    expect(contradictions(pattern).map(toldOf)[0]).toEqual(expected);
  });

  it('counts how often a label stands, whatever its case and the blanks about it', () => {
    const size = (label: string): PatternSize => ({ label, finished: {}, counts: {} });
    const found = contradictions({ ...ROUND, sizes: ['M', 'L', ' m ', 'l', 'XL'].map(size) });
    expect(found.map((c) => c.size)).toEqual([' m ', 'l']);
    const [first] = SAMPLE_ROUND.sizes;
    if (first === undefined) throw new Error('the sample has sizes');
    const thrice = contradictions({ ...SAMPLE_ROUND, sizes: [first, first, first] }).map(toldOf);
    expect(thrice).toEqual([thrice[0], thrice[0]]);
    expect(thrice[0]).toEqual({
      code: 'label twice',
      figures: ['sizes with this label: 3 times'],
      sums: ['sizes with this label: a + b = 3 times'],
      agree: ['sizes with this label: 1 times'],
    });
  });
});
