/** Which lines of a plan's workings a knitter is asked to work herself. */
import { describe, expect, it } from 'vitest';
import { isSame, sumsOf } from '../../src/fit/sum.ts';
import { cm } from '../../src/fit/units.ts';
import {
  type Quantity,
  type QuantityUnit,
  quantity,
  type Rounding,
  type WorkingLine,
} from '../../src/fit/working.ts';
import { line as lineOf, planWith } from './sums.ts';

const line = (
  label: string,
  formula: string,
  given: Readonly<Record<string, Quantity>>,
  unit: QuantityUnit = 'stitches',
  rounding?: Rounding,
) => lineOf(label, formula, given, unit, rounding);

const width = quantity('width', 40, 'cm');
const gauge = quantity('gauge', 2.2, 'stitches/cm');

/** 40 cm at 2.2 are 88 stitches: always worth a try. */
const GOOD = line('stitches all round', 'a * b', { a: width, b: gauge });
const asked = (...workings: readonly WorkingLine[]) =>
  sumsOf(planWith(workings, 'cm')).map((s) => s.line.label);

const rowsOf = (name: string, value: number) => quantity(name, value, 'rows');
const sixRows = {
  a: rowsOf('cuff', 12),
  b: rowsOf('arm', 60),
  c: rowsOf('cap', 40),
  d: rowsOf('band', 8),
  e: rowsOf('hem', 18),
  f: rowsOf('neck', 20),
};

describe('a sum is not asked', () => {
  it.each<[string, WorkingLine]>([
    ['where nothing is done', line('stitches again', 'a', { a: quantity('count', 88, 'stitches') })],
    [
      'with a root in it',
      line('slope', '√(a * a + b * b)', { a: width, b: quantity('height', 30, 'cm') }, 'cm'),
    ],
    [
      'of more than six figures',
      line('rows in all', 'a + b + c + d + e + f + g', { ...sixRows, g: rowsOf('collar', 30) }, 'rows'),
    ],
    [
      'that only compares two counts',
      line('width of the smaller count', 'a / b', { a: quantity('count', 86, 'stitches'), b: gauge }, 'cm'),
    ],
    [
      'about how sure a gauge is',
      line(
        'spread',
        'a / b',
        { a: quantity('standard error of the gauge', 0.3, 'ratio'), b: gauge },
        'ratio',
      ),
    ],
    [
      'about a figure that is printed',
      line('more than that', 'a - b', {
        a: quantity('count', 88, 'stitches'),
        b: quantity('printed count', 40, 'stitches'),
      }),
    ],
    [
      'about a numbered row',
      line('stitches after row 7', 'a - b', {
        a: quantity('count', 88, 'stitches'),
        b: quantity('lost', 12, 'stitches'),
      }),
    ],
    [
      'about a numbered figure',
      line('stitches left', 'a - b', {
        a: quantity('count', 88, 'stitches'),
        b: quantity('lost by row 7', 12, 'stitches'),
      }),
    ],
    [
      'for a length that is rounded',
      line('height', 'a / b', { a: rowsOf('rows', 100), b: quantity('row gauge', 3, 'rows/cm') }, 'cm', {
        to: 'whole',
      }),
    ],
    [
      'that adds no more than two',
      line('with the edge', 'a + b', {
        a: quantity('count', 88, 'stitches'),
        b: quantity('edge', 2, 'stitches'),
      }),
    ],
    [
      'with nought in it',
      line('with nothing', 'a * b + c', { a: width, b: gauge, c: quantity('edge', 0, 'stitches') }),
    ],
    [
      'that comes to nought',
      line('difference', 'a - b', { a: width, b: quantity('other width', 40, 'cm') }, 'cm'),
    ],
    [
      'that comes to less than nought',
      line('difference', 'a - b', { a: width, b: quantity('other width', 44, 'cm') }, 'cm'),
    ],
    [
      'whose result stands in it',
      line('rows left', 'a - b', { a: rowsOf('rows', 80), b: rowsOf('rows done', 40) }, 'rows'),
    ],
    [
      'whose result stands in its formula',
      line('twice', '16 * a', { a: quantity('parts', 1, 'times') }, 'times'),
    ],
    [
      'whose result is the repeat itself',
      line('count', 'a * b', { a: quantity('width', 5, 'cm'), b: gauge }, 'stitches', {
        to: 'multiple',
        multiple: 12,
        plus: 0,
      }),
    ],
  ])('%s', (_, left) => {
    expect(asked(left, GOOD)).toEqual([GOOD.label]);
  });
});

describe('a sum is asked', () => {
  it.each<[string, WorkingLine]>([
    ['of six figures', line('rows in all', 'a + b + c + d + e + f', sixRows, 'rows')],
    [
      'that adds three stitches',
      line('with the edge', 'a + b', {
        a: quantity('count', 88, 'stitches'),
        b: quantity('edge', 3, 'stitches'),
      }),
    ],
    [
      'that adds two centimetres',
      line('with ease', 'a + b', { a: width, b: quantity('ease', 2, 'cm') }, 'cm'),
    ],
    [
      'that adds one and a half',
      line('half a row more', 'a + b', { a: rowsOf('rows', 80), b: rowsOf('half', 1.5) }, 'rows'),
    ],
    [
      'that multiplies by two',
      line('both sides', 'a * b', {
        a: quantity('at one side', 14, 'stitches'),
        b: quantity('sides', 2, 'times'),
      }),
    ],
    [
      'whose result is no part of its repeat',
      line('count', 'a * b', { a: width, b: gauge }, 'stitches', { to: 'multiple', multiple: 12, plus: 4 }),
    ],
  ])('%s', (_, worth) => {
    expect(asked(worth)).toEqual([worth.label]);
  });

  it('about a finished measurement too, which is knitted neither flat nor round', () => {
    const plan = planWith([], 'cm');
    const range = { low: cm(39), expected: cm(40), high: cm(41) };
    const finished = { name: 'bust', pattern: null, range, hangsOn: null, worked: null, workings: [GOOD] };
    const [sum] = sumsOf({ ...plan, finished: [finished] });
    expect([sum?.line, sum?.worked]).toEqual([GOOD, null]);
  });
});

describe('of sums of one kind', () => {
  const other = { a: quantity('length', 30, 'cm'), b: gauge };

  it('the first is asked, whatever its letters are called', () => {
    expect(asked(GOOD, line('stitches of the front', 'length * g', { length: other.a, g: gauge }))).toEqual([
      GOOD.label,
    ]);
  });

  it('two are asked where what is put together differs: other signs, units, rounding or ease', () => {
    const minus = line('less the edge', 'a * b - c', { ...other, c: quantity('edge', 4, 'stitches') });
    const rowsUp = line('rows up', 'a * b', { a: width, b: quantity('row gauge', 3, 'rows/cm') }, 'rows');
    const whole = line('to the stitch', 'a * b', other, 'stitches', { to: 'even' });
    const plain = line('longer', 'a + b', { a: width, b: quantity('band', 6, 'cm') }, 'cm');
    const eased = line('wider', 'a + b', { a: width, b: quantity('ease', 5, 'cm') }, 'cm');
    expect(asked(GOOD, minus, rowsUp, whole, plain, eased)).toEqual(
      [GOOD, minus, rowsUp, whole, plain, eased].map(({ label }) => label),
    );
  });

  it('one is asked where one name stands for both', () => {
    expect(
      asked(GOOD, line(GOOD.label, 'a * b - c', { ...other, c: quantity('edge', 4, 'stitches') })),
    ).toEqual([GOOD.label]);
  });
});

describe('of more than ten sums', () => {
  const counts = { a: quantity('count', 90, 'stitches'), b: quantity('lost', 12, 'stitches') };
  const adding = line('stitches left', 'a - b', counts);
  const halving = line('stitches of a half', 'a / 2', { a: quantity('count', 90, 'stitches') });
  const spacing = line(
    'shaping rows',
    'a / b',
    { a: quantity('to lose', 36, 'stitches'), b: quantity('each time', 4, 'stitches') },
    'times',
  );
  /** As many kinds as are wanted: at a gauge, with ever more taken away. */
  const atGauge = (n: number) =>
    Array.from({ length: n }, (_, i) =>
      line(`count ${'abcdefghij'.charAt(i)}`, `a * b${' - c'.repeat(i)}`, {
        a: width,
        b: gauge,
        c: quantity('edge', 5, 'stitches'),
      }),
    );
  const labels = (lines: readonly WorkingLine[]) => lines.map(({ label }) => label);

  it('mere adding gives way to a product, and a product to what every garment needs', () => {
    expect(asked(adding, ...atGauge(10))).toEqual(labels(atGauge(10)));
    expect(asked(adding, halving, ...atGauge(9))).toEqual(labels([halving, ...atGauge(9)]));
    expect(asked(halving, spacing, ...atGauge(9))).toEqual(labels([spacing, ...atGauge(9)]));
  });

  it('what has ease in it and what comes to a gauge are kept', () => {
    const eased = line(
      'finished bust',
      'a + b',
      { a: quantity('bust', 96, 'cm'), b: quantity('ease', 5, 'cm') },
      'cm',
    );
    const rate = line(
      'gauge of the swatch',
      'a / b',
      { a: quantity('counted', 33, 'stitches'), b: quantity('span', 15, 'cm') },
      'stitches/cm',
    );
    expect(asked(halving, eased, rate, ...atGauge(8))).toEqual(labels([eased, rate, ...atGauge(8)]));
  });

  it('rows at a gauge are kept, and a length at a gauge gives way', () => {
    const upward = line('rows up', 'a * b', { a: width, b: quantity('row gauge', 3, 'rows/cm') }, 'rows');
    const length = line(
      'height',
      'a / b',
      { a: rowsOf('rows', 100), b: quantity('row gauge', 3, 'rows/cm') },
      'cm',
    );
    expect(asked(length, upward, ...atGauge(9))).toEqual(labels([upward, ...atGauge(9)]));
  });

  it('the earlier is kept of two of one rank, and all stand in the order of the plan', () => {
    const later = line('stitches of a third', 'a / 3', { a: quantity('count', 90, 'stitches') });
    expect(asked(adding, ...atGauge(8), halving, later)).toEqual(labels([...atGauge(8), halving, later]));
    expect(asked(...atGauge(9), halving, later)).toEqual(labels([...atGauge(9), halving]));
  });
});

describe('what leads to a sum', () => {
  const leads = (...workings: readonly WorkingLine[]) =>
    sumsOf(planWith(workings, 'cm'))
      .find((s) => s.line.label === 'last')
      ?.leads.map(({ label }) => label);
  const last = line('last', 'a * b', { a: quantity('width of the piece', 51, 'cm'), b: gauge });
  const half = (label: string, whole: number, unit: QuantityUnit) =>
    line(label, 'a / 2', { a: quantity('whole', whole, unit) }, unit);

  it('is a length worked out before it, whatever its name, and none after it', () => {
    expect(leads(half('half the bust', 102, 'cm'), last)).toEqual(['half the bust']);
    expect(leads(half('half the hip', 104, 'cm'), last)).toEqual([]);
    expect(leads(last, half('half the bust', 102, 'cm'))).toEqual([]);
  });

  it('is a count of the same name, not one that is alike by chance', () => {
    const counted = line('last', 'a - b', {
      a: quantity('stitches of the back', 110, 'stitches'),
      b: quantity('lost', 26, 'stitches'),
    });
    expect(leads(half('stitches of the back', 220, 'stitches'), counted)).toEqual(['stitches of the back']);
    expect(leads(half('stitches of the sleeve', 220, 'stitches'), counted)).toEqual([]);
    expect(leads(half('stitches of the back', 220, 'rows'), counted)).toEqual([]);
  });

  it('is no line with a number in its name', () => {
    expect(leads(half('width after row 7', 102, 'cm'), last)).toEqual([]);
  });
});

describe('two quantities are the same', () => {
  it('by unit and value, to what decimals leave', () => {
    const one = quantity('width', 40, 'cm');
    expect(isSame(one, quantity('other', 40 + 1e-12, 'cm'))).toBe(true);
    expect(isSame(one, quantity('other', 40.001, 'cm'))).toBe(false);
    expect(isSame(one, quantity('width', 40, 'rows'))).toBe(false);
  });
});
