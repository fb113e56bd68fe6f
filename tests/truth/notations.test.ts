/**
 * Ninety-one ways in which people write knitting numbers, with what each means and whether a careful reader asks back.
 * Origin: met in public knitting texts (patterns, questions and answers among knitters), collected 2026; a few made up
 * after such pairs. Gauges are compared over the span that was typed: 4 in and 10 cm are not one length.
 */
import { describe, expect, it } from 'vitest';
import { readAges } from '../../src/dialogue/read/ages.ts';
import { readEase } from '../../src/dialogue/read/ease.ts';
import { type GaugeAsked, readGauge } from '../../src/dialogue/read/gauge.ts';
import type { GaugeTyped } from '../../src/dialogue/read/gauge-doubt.ts';
import type { Heard } from '../../src/dialogue/read/heard.ts';
import { readLength } from '../../src/dialogue/read/length.ts';
import { readMultiple } from '../../src/dialogue/read/multiple.ts';
import { readNeedle } from '../../src/dialogue/read/needle.ts';
import { readShaping } from '../../src/dialogue/read/shaping.ts';
import { readLengthRow, readRowRow, readStitchRow } from '../../src/dialogue/read/sizes.ts';
import { readYarn } from '../../src/dialogue/read/yarn.ts';
import { type LengthUnit, lengthIn } from '../../src/fit/units.ts';
import type { Measurement } from '../../src/fit/words.ts';

type Asks = 'heard' | 'asks back';
type Over = readonly [count: number, span: number, unit: LengthUnit];
/** The units an interview may have: a unit that was typed reads the same in all of them. */
const ANY = ['cm', 'in', undefined] as const;
type Units = readonly (LengthUnit | undefined)[];
const METRIC: Units = ['cm'];
const IMPERIAL: Units = ['in'];
const NOT_CHOSEN: Units = [undefined];

// biome-ignore format: one notation a line, as a table
const GAUGES: readonly (readonly [string, Over | null, Over | null, Asks, Units?])[] = [
  ['22 sts x 30 rows to 4"', [22, 4, 'in'], [30, 4, 'in'], 'heard'],
  ['22 m/10 cm', [22, 10, 'cm'], null, 'heard'], // French mailles or German Maschen, not metres
  ['20M 28R', [20, 10, 'cm'], [28, 10, 'cm'], 'asks back'],
  ['10 stitches = 4 inches, and 13 rows = 4 inches', [10, 4, 'in'], [13, 4, 'in'], 'heard'],
  ['10.5 stitches = 4 inches', [10.5, 4, 'in'], null, 'heard'],
  ['16 sts equal 4 inches', [16, 4, 'in'], null, 'heard'],
  ['5 inches per stitch', [5, 1, 'in'], null, 'asks back'], // typed backwards
  ['6.75 stitches per inch', [6.75, 1, 'in'], null, 'heard'],
  ['19 stitches and 16 rows to 4"', [19, 4, 'in'], [16, 4, 'in'], 'asks back'], // 26 rows?
  ['16sts x 23rows = 4"', [16, 4, 'in'], [23, 4, 'in'], 'heard'],
  ['7 sts and 9rows =2"', [7, 2, 'in'], [9, 2, 'in'], 'heard'],
  ['20 sts = 4"', [20, 4, 'in'], null, 'heard'],
  ['8 sts x 10 rows should equal the 10cm square', [8, 10, 'cm'], [10, 10, 'cm'], 'heard'],
  ['16.5 sts over 10cm', [16.5, 10, 'cm'], null, 'heard'],
  // German and French patterns count over 10 cm unsaid: taken as read where the interview is metric, else asked.
  ['16Maschen x 20 Reihen', [16, 10, 'cm'], [20, 10, 'cm'], 'asks back', NOT_CHOSEN],
  ['17Maschen auf 22 Reihen', [17, 10, 'cm'], [22, 10, 'cm'], 'heard', METRIC],
  ['36 Reihen auf 10 cm', null, [36, 10, 'cm'], 'heard'],
  ['24 mailles x 32 rangs', [24, 10, 'cm'], [32, 10, 'cm'], 'heard', METRIC],
  ['20 m x 20 rgs', [20, 10, 'cm'], [20, 10, 'cm'], 'heard', METRIC],
  ['12 sts x 20 rows = 10 x 10 cm', [12, 10, 'cm'], [20, 10, 'cm'], 'heard'],
  ['8 st to 1"', [8, 1, 'in'], null, 'heard'],
  ['30.5s and 42.8r to 10cm', [30.5, 10, 'cm'], [42.8, 10, 'cm'], 'heard'],
  ['5.12 stitches and 8 rows per inch', [5.12, 1, 'in'], [8, 1, 'in'], 'heard'],
  ['18sts over 4inches', [18, 4, 'in'], null, 'heard'],
  ['17 stitches over 4 inches or 4.25', [17, 4, 'in'], null, 'heard'], // 4.25 repeats it per inch
  ['14st = 4"', [14, 4, 'in'], null, 'heard'],
  ['4.25spi', [4.25, 1, 'in'], null, 'heard'],
  ['20 st./in.', [20, 4, 'in'], null, 'asks back'], // no such fabric per inch
  ['6 rnds per inch', null, [6, 1, 'in'], 'heard'],
  ['33.5 rows to 10cm', null, [33.5, 10, 'cm'], 'heard'],
  ['3 3/4 stitches and just short of 5 1/2 rows per inch', [3.75, 1, 'in'], [5.5, 1, 'in'], 'asks back'],
  ['5.51 stsiuches per inch', [5.51, 1, 'in'], null, 'heard'],
  ['8 sts/inch', [8, 1, 'in'], null, 'heard'],
];
/** Two figures that disagree, per inch: the person chooses. */
const GAUGE_CONFLICTS = [['18 stitches per 4 inches (4.25 stitches per inch)', [4.5, 4.25]]] as const;

// biome-ignore format: one notation a line, as a table
const LENGTHS: readonly (readonly [string, number, LengthUnit, Asks, Units?, Measurement?])[] = [
  ['18¾', 18.75, 'in', 'asks back', ['cm', undefined]],
  ['10,5 cm', 10.5, 'cm', 'heard'],
  ['12 1/4 inches', 12.25, 'in', 'heard'],
  ['1 1/2"', 1.5, 'in', 'heard'],
  ['11½"', 11.5, 'in', 'heard'],
  ['7¾"', 7.75, 'in', 'heard'],
  ['3 and 5/8ths of an inch', 3.625, 'in', 'heard'],
  ["7.25''", 7.25, 'in', 'heard'],
  ['10 1/4"', 10.25, 'in', 'heard'],
  ['49 inch waist', 49, 'in', 'asks back', ANY, 'bust'], // sizes go by the bust
  ['17½"', 17.5, 'in', 'heard'],
  ['8.8”', 8.8, 'in', 'heard'],
  ["26'", 26, 'in', 'asks back'], // 26 feet are no part of a sweater
  ['6′ tall', 72, 'in', 'heard', ANY, 'height'],
  ['6’4″', 76, 'in', 'heard', ANY, 'height'],
  ['5’3”', 63, 'in', 'heard', ANY, 'height'],
  ['5ft 4', 64, 'in', 'heard', ANY, 'height'],
  ['241/2”', 24.5, 'in', 'asks back'], // a lost space, not 120.5
  ['18 ½"/47', 18.5, 'in', 'heard', ['in', undefined]],
];
const LENGTH_RANGES = [
  ['38-40', 38, 40],
  ['34/35”', 34, 35],
] as const;

// biome-ignore format: one notation a line, as a table
const EASES: readonly (readonly [string, number, number, LengthUnit, Asks, Units])[] = [
  ['5-10 cm / 2-4" of positive ease', 5, 10, 'cm', 'heard', ['cm', undefined]],
  ['3" ease', 3, 3, 'in', 'heard', ANY],
  ['-1', -1, -1, 'in', 'asks back', NOT_CHOSEN],
];

// biome-ignore format: one notation a line, as a table
const LENGTH_ROWS: readonly (readonly [string, readonly number[], LengthUnit, (readonly string[])?])[] = [
  ['81 [86:91:97] cm', [81, 86, 91, 97], 'cm'],
  ['Sm(32"),Med (35"),Lg(38"),XL(41")', [32, 35, 38, 41], 'in', ['S', 'M', 'L', 'XL']],
  ['5 1/2 (6, 6 1/2, 6 1/2, 7) in. (14 (15, 16.5, 16.5, 18) cm)', [5.5, 6, 6.5, 6.5, 7], 'in'],
  ['21(21-1/2:22)"', [21, 21.5, 22], 'in'],
  ['23¼ / 23½ / 24 inches', [23.25, 23.5, 24], 'in'],
  ['52 [53.5:54.5] cm', [52, 53.5, 54.5], 'cm'],
  ['(60) 69 (77) 86 cm', [60, 69, 77, 86], 'cm'],
  ['38”, (42 ½, 47, 51, 55)', [38, 42.5, 47, 51, 55], 'in'],
  ['13cm (14) (16)', [13, 14, 16], 'cm'],
  ['medium (chest 43") or large (chest 46")', [43, 46], 'in', ['M', 'L']],
];

// biome-ignore format: one notation a line, as a table
const COUNT_ROWS: readonly (readonly [string, readonly number[], 'stitches' | 'rows', Asks])[] = [
  ['25 (26-27-29-31-33) sts', [25, 26, 27, 29, 31, 33], 'stitches', 'heard'], // hyphens separate sizes here
  ['15 (23)(23)(27)(29)', [15, 23, 23, 27, 29], 'rows', 'heard'],
  ['31 (33) (35) st', [31, 33, 35], 'stitches', 'heard'],
  ['3 (5, 3, 5 7) sts', [3, 5, 3, 5, 7], 'stitches', 'asks back'], // a comma is missing
  ['3 5: 6: 7 sts', [3, 5, 6, 7], 'stitches', 'heard'], // the opening bracket is lost
  ['118/122/126 stitches', [118, 122, 126], 'stitches', 'heard'],
  ['45 [47:49] sts', [45, 47, 49], 'stitches', 'heard'],
  ['35 [40, 44, 46] sts', [35, 40, 44, 46], 'stitches', 'heard'],
];

// biome-ignore format: one notation a line, as a table
const AGES: readonly (readonly [string, readonly (readonly [number, number])[], 'months' | 'years'])[] = [
  ['(1-2) 4-6 (8-10) 12 yrs', [[1, 2], [4, 6], [8, 10], [12, 12]], 'years'], // here hyphens are ranges
  ['0-6 mo', [[0, 6]], 'months'],
];

// biome-ignore format: one notation a line, as a table
const SHAPINGS = [
  ['every 12th row 7 (9, 0, 0, 0, 0, 0) times', { every: [[12]], times: [7, 9, 0, 0, 0, 0, 0] }],
  ['– (6th, 4th, 4th, --, 2nd, 2nd) row', { every: [[null, 6, 4, 4, null, 2, 2]] }],
  ['5 (2, 1, 6, 12, 10, 7) more time(s)', { times: [5, 2, 1, 6, 12, 10, 7], more: true }],
  ['12 x 1 Masche', { times: [12], stitches: [1] }],
  ['in jeder 4. und 6. Reihe', { every: [[4], [6]] }], // the ordinal's dot is no decimal point
  ['1 foll 4th row', { every: [[4]], times: [1] }],
  ['next 5 (5-7-7-7- 7) rows', { every: [[1]], times: [5, 5, 7, 7, 7, 7] }],
  ['every 6th row 12 times', { every: [[6]], times: [12] }],
] as const;

/** Size, and size before. German needles are numbered in millimetres: size 3 is not US 3 (3.25 mm). */
const NEEDLE_SIZES = [
  ['10 1/2 needles', { mm: 6.5, us: '10.5' }, undefined],
  ['US6 from the US7', { mm: 4, us: '6' }, { mm: 4.5, us: '7' }],
  ['3er Nadeln', { mm: 3 }, undefined],
] as const;
const MULTIPLES = [['multiple of 4 +2', { multiple: 4, plus: 2 }]] as const;
/** Yards, and whole metres. */
const YARNS = [['nearly 2000 yards', 2000, 1829]] as const;

describe('Notations met in public knitting texts', () => {
  it('number ninety-one', () => {
    const tables = [GAUGES, GAUGE_CONFLICTS, LENGTHS, LENGTH_RANGES, EASES, LENGTH_ROWS, COUNT_ROWS, AGES];
    const others = [SHAPINGS, NEEDLE_SIZES, MULTIPLES, YARNS];
    const texts = [...tables, ...others].flatMap((table) => table.map((row) => row[0]));
    expect(new Set(texts).size).toBe(91);
  });

  for (const [text, stitches, rows, asks, units = ANY] of GAUGES) {
    it(`the gauge “${text}”`, () => {
      for (const unit of units) {
        const read = readGauge(text, { unit, asked: askedFor(stitches, rows) });
        expectKind(read, asks);
        const value = likeliest(read);
        expectCount(value.stitches, stitches);
        expectCount(value.rows, rows);
      }
    });
  }

  it.each(GAUGE_CONFLICTS)('the two gauges of “%s”', (text, perInch) => {
    const read = readGauge(text, { unit: undefined, asked: 'stitch' });
    if (read.kind !== 'which') throw new Error(`expected a choice, got ${read.kind}`);
    const rates = read.options.map(({ value: { stitches: s } }) => ((s?.count ?? 0) / (s?.span ?? 1)) * 2.54);
    expect(rates).toHaveLength(perInch.length);
    rates.forEach((rate, i) => {
      expect(rate).toBeCloseTo(perInch[i] ?? 0, 9);
    });
  });

  for (const [text, value, typed, asks, units = ANY, measurement] of LENGTHS) {
    it(`the length “${text}”`, () => {
      for (const unit of units) {
        const read = readLength(text, measurement === undefined ? { unit } : { unit, measurement });
        expectKind(read, asks);
        expect(likeliest(read)).toEqual({ cm: lengthIn(value, typed), typed: { value, unit: typed } });
      }
    });
  }

  it('the second half of “18 ½"/47” where the interview is metric', () => {
    expect(readLength('18 ½"/47', { unit: 'cm' })).toMatchObject({ kind: 'heard', value: { cm: 47 } });
  });

  it.each(LENGTH_RANGES)('the two lengths of “%s”', (text, low, high) => {
    const read = readLength(text, { unit: 'in', measurement: 'bust' });
    if (read.kind !== 'which') throw new Error(`expected a choice, got ${read.kind}`);
    expect(read.options.map((o) => o.value.typed)).toEqual(
      [low, high].map((value) => ({ value, unit: 'in' })),
    );
  });

  it.each(EASES)('the ease “%s”', (text, low, high, typed, asks, units) => {
    for (const unit of units) {
      const read = readEase(text, unit);
      expectKind(read, asks);
      const value = likeliest(read);
      expect([value.low.typed, value.high.typed]).toEqual(
        [low, high].map((v) => ({ value: v, unit: typed })),
      );
    }
  });

  it('the inches of “5-10 cm / 2-4"” where the interview is in inches', () => {
    const read = likeliest(readEase('5-10 cm / 2-4" of positive ease', 'in'));
    expect([read.low.cm, read.high.cm]).toEqual([lengthIn(2, 'in'), lengthIn(4, 'in')]);
  });

  for (const [text, values, typed, labels] of LENGTH_ROWS) {
    it(`the row of lengths “${text}”`, () => {
      for (const unit of typed === 'in' && text.includes('cm') ? IMPERIAL : ANY) {
        const read = readLengthRow(text, unit);
        expectKind(read, 'heard');
        const row = likeliest(read);
        expect(row.lengths.map((l) => l?.typed)).toEqual(values.map((value) => ({ value, unit: typed })));
        expect(row.labels).toEqual(labels);
      }
    });
  }

  it('the metric row that stands beside the inches', () => {
    const read = readLengthRow('5 1/2 (6, 6 1/2, 6 1/2, 7) in. (14 (15, 16.5, 16.5, 18) cm)', 'cm');
    expectKind(read, 'heard');
    expect(likeliest(read).lengths.map((l) => l?.cm)).toEqual([14, 15, 16.5, 16.5, 18]);
  });

  it.each(COUNT_ROWS)('the row of counts “%s”', (text, counts, of, asks) => {
    const read = of === 'rows' ? readRowRow(text) : readStitchRow(text);
    expectKind(read, asks);
    expect(likeliest(read)).toEqual({ counts, labels: undefined });
  });

  it.each(AGES)('the ages “%s”', (text, ranges, unit) => {
    const read = readAges(text);
    expectKind(read, 'heard');
    expect(likeliest(read)).toEqual({ unit, ages: ranges.map(([from, to]) => ({ from, to })) });
  });

  it.each(SHAPINGS)('the shaping “%s”', (text, expected) => {
    const read = readShaping(text);
    expectKind(read, 'heard');
    expect(likeliest(read)).toEqual({
      every: [],
      times: undefined,
      more: false,
      stitches: undefined,
      ...expected,
    });
  });

  it.each(MULTIPLES)('the stitch multiple “%s”', (text, expected) => {
    const read = readMultiple(text);
    expectKind(read, 'heard');
    expect(likeliest(read)).toEqual(expected);
  });

  it.each(NEEDLE_SIZES)('the needles “%s”', (text, needle, before) => {
    const read = readNeedle(text);
    expectKind(read, 'heard');
    expect(likeliest(read).needle).toMatchObject(needle);
    if (before === undefined) expect(likeliest(read).before).toBeUndefined();
    else expect(likeliest(read).before).toMatchObject(before);
  });

  it.each(YARNS)('the yarn “%s”', (text, yards, metres) => {
    const read = readYarn(text);
    expectKind(read, 'heard');
    const value = likeliest(read);
    if (value.in !== 'metres') throw new Error(`expected a length, got ${value.in}`);
    // A yard is 0.9144 m exactly.
    expect(value.metres).toBeCloseTo(yards * 0.9144, 9);
    expect(Math.round(value.metres)).toBe(metres);
    expect(value.approximate).toBe(true);
  });
});

function askedFor(stitches: Over | null, rows: Over | null): GaugeAsked['asked'] {
  if (stitches === null) return 'row';
  return rows === null ? 'stitch' : 'both';
}

function expectKind<T>(read: Heard<T>, asks: Asks): void {
  if (asks === 'heard') expect(read).toMatchObject({ kind: 'heard' });
  else expect(['ask back', 'which']).toContain(read.kind);
}

/** The value that was heard or is put back first. */
function likeliest<T>(read: Heard<T>): T {
  if (read.kind === 'refused') throw new Error(`refused: ${read.message}`);
  if (read.kind !== 'which') return read.value;
  const [first] = read.options;
  if (first === undefined) throw new Error('a choice without options');
  return first.value;
}

function expectCount(read: GaugeTyped['stitches'], expected: Over | null): void {
  if (expected === null) {
    expect(read).toBeUndefined();
    return;
  }
  const [count, span, unit] = expected;
  expect(read).toEqual({ count, span: lengthIn(span, unit), unit });
}
