/** Every figure to which a slip leads in a sum, worked by hand; that knitters slip so is common practice of the trade. */
import { describe, expect, it } from 'vitest';
import { type Mistake, variantsOf } from '../../src/fit/mistake.ts';
import type { Sum } from '../../src/fit/sum.ts';
import { figureOf } from '../../src/fit/tried.ts';
import { quantity, type WorkingLine } from '../../src/fit/working.ts';
import { line } from './sums.ts';

/** A sum as it is read: what is called cm is inches where inches are read. */
function sumOf(read: WorkingLine, more: Partial<Sum> = {}): Sum {
  return {
    line: read,
    read,
    leads: [],
    unit: 'in',
    worked: null,
    rates: { stitches: null, rows: null },
    ...more,
  };
}

const figures = (mistake: Mistake, sum: Sum) =>
  variantsOf(mistake, sum).map((one) => Math.round(figureOf(one) * 1000) / 1000);

const whole = { to: 'whole' } as const;
const gauge = quantity('gauge', 5.5, 'stitches/cm');
const width = quantity('width all round', 40, 'cm');
/** 40 in at 5.5 are 220. */
const around = line('stitches all round', 'a * b', { a: width, b: gauge }, 'stitches', whole);
/** 16 in at 7.5 are 120. */
const upward = line(
  'rows up',
  'a * b',
  { a: quantity('height', 16, 'cm'), b: quantity('row gauge', 7.5, 'rows/cm') },
  'rows',
  whole,
);
/** 196 stitches at 2.2 are 89.09 cm. */
const across = line(
  'width at the waist',
  'a / b',
  { a: quantity('stitches', 196, 'stitches'), b: quantity('gauge', 2.2, 'stitches/cm') },
  'cm',
);
const counted = line(
  'gauge of the swatch',
  'a / b',
  { a: quantity('counted', 22, 'stitches'), b: quantity('span', 10, 'cm') },
  'stitches/cm',
);
/** 17 cm at 2.2 and 2 edge stitches are 39.4: 38, of a multiple of 4 and 2. */
const cuff = line(
  'stitches at the wrist',
  'a * b + c',
  {
    a: quantity('width', 17, 'cm'),
    b: quantity('gauge', 2.2, 'stitches/cm'),
    c: quantity('edge stitches', 2, 'stitches'),
  },
  'stitches',
  { to: 'multiple', multiple: 4, plus: 2 },
);
const shapings = line(
  'shaping rows',
  'a / b',
  { a: quantity('stitches to gain', 32, 'stitches'), b: quantity('stitches a shaping row', 2, 'stitches') },
  'times',
);
const interval = line(
  'rows to an interval',
  'a / b',
  { a: quantity('rows', 117, 'rows'), b: quantity('shaping rows', 16, 'times') },
  'rows',
  { to: 'whole down' },
);
const shoulder = (label: string) =>
  line(
    label,
    '(a - b) / 2',
    { a: quantity('across', 82, 'stitches'), b: quantity('neck', 40, 'stitches') },
    'stitches',
  );
const section = line(
  'rows of this section',
  'b - a',
  { a: quantity('rows to the edging', 18, 'rows'), b: quantity('rows to the underarm', 135, 'rows') },
  'rows',
);
const bust = quantity('bust', 38, 'cm');
const ease = quantity('ease', 3, 'cm');
const eased = line('finished bust', 'a + b', { a: bust, b: ease }, 'cm');
/** 41 in at 5.5 are 225.5: 226, of a multiple of 8 and 2. */
const repeated = line(
  'stitches at the bust',
  'a * b',
  { a: quantity('width', 41, 'cm'), b: gauge },
  'stitches',
  { to: 'multiple', multiple: 8, plus: 2 },
);
/** 9.5 cm at 3 are 28.5: 28, an even number. */
const even = line(
  'rows of the neck',
  'a * b',
  { a: quantity('depth', 9.5, 'cm'), b: quantity('row gauge', 3, 'rows/cm') },
  'rows',
  { to: 'even' },
);
/** 97 cm at 2.27 are 220.19. */
const fine = line(
  'stitches of the hem',
  'a * b',
  { a: quantity('hem', 97, 'cm'), b: quantity('gauge', 2.27, 'stitches/cm') },
  'stitches',
  whole,
);
/** 1183 m of balls of 100 m: 11.83, so 12. */
const balls = line(
  'balls',
  'a / b',
  { a: quantity('yarn', 1183, 'm'), b: quantity('a ball', 100, 'm') },
  'times',
  { to: 'whole up' },
);
const parted = line(
  'stitches in all',
  '(a + b) * c',
  { a: quantity('back', 30, 'cm'), b: quantity('front', 10, 'cm'), c: gauge },
  'stitches',
);
const wide = line('stitches with ease', '(a + b) * c', { a: bust, b: ease, c: gauge }, 'stitches');
const half = line(
  'stitches of a part',
  'a * b / p',
  { a: width, b: gauge, p: quantity('parts', 2, 'times') },
  'stitches',
);

describe('the figures of a slip', () => {
  it.each<[Mistake, WorkingLine, readonly number[]]>([
    // 40 / 5.5; 10 / 22
    ['gauge turned round', around, [7]],
    ['gauge turned round', counted, [0.455]],
    ['gauge turned round', section, []],
    // 40 × 22; 196 / 8.8, as four inches hold four times what one holds
    ['gauge of the whole swatch', around, [880]],
    ['gauge of the whole swatch', across, [22.273]],
    ['half a width', around, [110]],
    ['whole width for a part', around, [440]],
    // 98 / 2.2 and 392 / 2.2: stitches go across too
    ['half a width', across, [44.545]],
    ['whole width for a part', across, [178.182]],
    // 8.5 × 2.2 + 2 = 20.7 and 34 × 2.2 + 2 = 76.8, to a multiple of 4 and 2: edge stitches are never halved
    ['half a width', cuff, [22]],
    ['whole width for a part', cuff, [78]],
    // 25 × 5.5, 35 × 5.5, 20 × 5.5: either width, or both
    ['half a width', parted, [137.5, 192.5, 110]],
    // (19 + 3) × 5.5 and (76 + 3) × 5.5: ease is no width
    ['half a width', wide, [121]],
    ['whole width for a part', wide, [434.5]],
    // 20 × 5.5 / 2: parts are no width
    ['half a width', half, [55]],
    ['half a width', upward, []],
    ['whole width for a part', section, []],
    ['one side only', shapings, [32]],
    ['one side only', shoulder('stitches of each shoulder'), [42]],
    ['one side only', shoulder('stitches at either side'), [42]],
    ['one side only', shoulder('stitches of both'), [42]],
    ['one side only', shoulder('stitches of a part'), []],
    ['one side only', around, []],
    ['two left out', shoulder('stitches of a part'), [42]],
    ['two left out', shoulder('stitches of each shoulder'), []],
    ['two left out', line('edge', '2 * a', { a: quantity('armhole edge', 26, 'cm') }, 'cm'), [26]],
    ['two left out', around, []],
    // 101.6 × 5.5 and 40 × 2.165
    ['inches and centimetres mixed', around, [559, 87]],
    ['inches and centimetres mixed', eased, [99.52, 45.62, 104.14, 104.14]],
    ['inches and centimetres mixed', section, []],
    ['ease forgotten', eased, [38]],
    ['ease twice', eased, [44]],
    ['ease the wrong way', eased, [35]],
    ['ease forgotten', around, []],
    ['edging forgotten', section, [135]],
    ['edging forgotten', line('above it', 'a - b', { a: width, b: quantity('edging', 6, 'cm') }, 'cm'), [40]],
    ['edging forgotten', line('above it', 'a - b', { a: width, b: quantity('cuff', 7, 'cm') }, 'cm'), [40]],
    // stitches of a cuff are no depth that is left out
    [
      'edging forgotten',
      line(
        'more',
        'a - b',
        { a: quantity('arm', 74, 'stitches'), b: quantity('cuff', 44, 'stitches') },
        'stitches',
      ),
      [],
    ],
    // 17 × 2.2 = 37.4
    ['edge stitches forgotten', cuff, [38]],
    ['edge stitches forgotten', around, []],
    // 97 × 2, 97 × 2.3
    ['rounded too early', fine, [194, 223]],
    ['rounded too early', section, []],
    ['off by one', shapings, [17, 15]],
    // 117 / 16 and one more or less; 117 / 15, 117 / 17
    ['off by one', interval, [8, 6, 7, 6]],
    ['off by one', section, [118, 116]],
    // stitches are no posts, but the parts are: 220 / 1, 220 / 3
    ['off by one', around, []],
    ['off by one', half, [220, 73.333]],
    ['multiplied for divided', shapings, [64, 0.063]],
    [
      'multiplied for divided',
      line(
        'both',
        'one * two',
        { one: quantity('a', 14, 'stitches'), two: quantity('b', 3, 'times') },
        'stitches',
      ),
      [4.667],
    ],
    [
      'multiplied for divided',
      line(
        'each',
        'one / two',
        { one: quantity('a', 42, 'stitches'), two: quantity('b', 3, 'times') },
        'stitches',
      ),
      [126, 0.071],
    ],
    // only a lone quotient is turned round
    [
      'multiplied for divided',
      line(
        'less',
        'a / b - c',
        { a: quantity('a', 42, 'rows'), b: quantity('b', 3, 'times'), c: quantity('c', 4, 'rows') },
        'rows',
      ),
      [122],
    ],
    [
      'multiplied for divided',
      line(
        'more',
        'c + a / b',
        { a: quantity('a', 42, 'rows'), b: quantity('b', 3, 'times'), c: quantity('c', 4, 'rows') },
        'rows',
      ),
      [130],
    ],
    ['multiplied for divided', shoulder('stitches of a part'), []],
    ['multiplied for divided', around, []],
    ['multiplied for divided', counted, []],
    ['added for taken away', section, [153]],
    [
      'added for taken away',
      line('all', 'one + two', { one: quantity('a', 40, 'cm'), two: quantity('b', 6, 'cm') }, 'cm'),
      [34],
    ],
    [
      'added for taken away',
      line(
        'rest',
        'a - b - c',
        { a: quantity('a', 40, 'rows'), b: quantity('b', 6, 'rows'), c: quantity('c', 4, 'rows') },
        'rows',
      ),
      [],
    ],
    [
      'added for taken away',
      line(
        'rest',
        'a / b - c',
        { a: quantity('a', 40, 'rows'), b: quantity('b', 4, 'times'), c: quantity('c', 4, 'rows') },
        'rows',
      ),
      [],
    ],
    ['added for taken away', eased, []],
    // 39.4: 39; to a multiple of 4 alone 40
    ['repeat forgotten', cuff, [39]],
    ['extra stitches forgotten', cuff, [40]],
    [
      'repeat forgotten',
      line('stitches', 'a * b', { a: width, b: gauge }, 'stitches', { to: 'multiple', multiple: 1, plus: 0 }),
      [],
    ],
    [
      'extra stitches forgotten',
      line('stitches', 'a * b', { a: width, b: gauge }, 'stitches', { to: 'multiple', multiple: 8, plus: 0 }),
      [],
    ],
    ['repeat forgotten', fine, []],
    ['extra stitches forgotten', even, []],
    ['repeat forgotten', shapings, []],
    ['odd rows', even, [29]],
    ['odd rows', fine, []],
    // 39.4 up to 42, down to 38; 220.19 to 221 or 220; 28.5 to 30 or 28; 7.3 to 8; 11.83 to 11
    ['rounded the wrong way', cuff, [42, 38]],
    ['rounded the wrong way', fine, [221, 220]],
    ['rounded the wrong way', even, [30, 28]],
    ['rounded the wrong way', interval, [8]],
    ['rounded the wrong way', balls, [11]],
    ['rounded the wrong way', around, []],
    ['not rounded', interval, [7.313]],
    ['not rounded', balls, [11.83]],
    ['not rounded', around, []],
    ['not rounded', shapings, []],
  ])('%s: %o', (mistake, read, expected) => {
    expect(figures(mistake, sumOf(read))).toEqual(expected);
  });

  it('other gauge: 40 at 7.5, 16 at 5.5, and none where the plan has no other', () => {
    const rates = { stitches: 5.5, rows: 7.5 };
    expect(figures('other gauge', sumOf(around, { rates }))).toEqual([300]);
    expect(figures('other gauge', sumOf(upward, { rates }))).toEqual([88]);
    expect(figures('other gauge', sumOf(around))).toEqual([]);
  });

  it('gauge of the whole swatch: ten centimetres hold ten times what one holds', () => {
    expect(figures('gauge of the whole swatch', sumOf(fine, { unit: 'cm' }))).toEqual([2202]);
  });

  it('inches and centimetres mixed: a reader of centimetres divides where one of inches multiplies', () => {
    // 40 / 2.54 × 5.5 and 40 × 13.97
    expect(figures('inches and centimetres mixed', sumOf(around, { unit: 'cm' }))).toEqual([87, 559]);
    // 196 / (2.2 × 2.54), and 89.09 / 2.54
    expect(figures('inches and centimetres mixed', sumOf(across, { unit: 'cm' }))).toEqual([35.075, 35.075]);
    expect(figures('inches and centimetres mixed', sumOf(across))).toEqual([226.291, 226.291]);
  });

  it('the ease of the line before: 38, 44 and 35 in at 5.5, to a multiple of 8 and 2', () => {
    const sum = sumOf(repeated, { leads: [eased] });
    expect(figures('ease forgotten', sum)).toEqual([210]);
    expect(figures('ease twice', sum)).toEqual([242]);
    expect(figures('ease the wrong way', sum)).toEqual([194]);
  });
});
