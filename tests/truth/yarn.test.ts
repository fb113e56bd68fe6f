/** Published worked examples of yarn amounts, and questions met in public knitting talk. */
import { describe, expect, it } from 'vitest';
import { cm, inches, perCm } from '../../src/fit/units.ts';
import { METRES_PER_YARD, replaceBalls, yarnFromPattern, yarnFromSwatch } from '../../src/fit/yarn.ts';
import { type Sweater, sweaterArea } from '../../src/fit/yarn-garment.ts';
import { rowsLeft, yarnLeft } from '../../src/fit/yarn-left.ts';
import { GRAMS_PER_POUND, metresPerGram, type YarnCount } from '../../src/fit/yarn-number.ts';

const SQUARE_INCH = 2.54 ** 2;
/** What a sweater takes of which nothing is knitted but what is given, in square inches. */
const squareInches = (knitted: Partial<Record<keyof Sweater, number>>) => {
  const part = (measure: keyof Sweater) => inches(knitted[measure] ?? 0);
  const [bust, length, upperArm] = [part('bust'), part('length'), part('upperArm')];
  return (
    sweaterArea({ bust, length, upperArm, wrist: part('wrist'), sleeve: part('sleeve') }).area / SQUARE_INCH
  );
};
const rectangle = (width: number, height: number) => squareInches({ bust: width, length: height });
/** A pair of triangles is what two sleeves are that end in a point. */
const triangles = (base: number, height: number) => squareInches({ upperArm: base, sleeve: height });
const sum = (areas: readonly number[]) => areas.reduce((a, b) => a + b, 0);

describe('area of a back (thechillydog.com, Design It Yourself Sweater, step 6: estimating yarn)', () => {
  const rectangles = [
    [21, 20, 420],
    [15, 8, 120],
    [9, 2, 18],
  ] as const;
  const pairs = [
    [1.25, 21, 26.25],
    [2, 3, 6],
    [3, 2, 6],
  ] as const;

  it.each(rectangles)('a rectangle of %i by %i in is %i square inches', (width, height, area) => {
    expect(rectangle(width, height)).toBeCloseTo(area, 9);
  });

  it.each(pairs)('a pair of triangles of %f by %i in is %f', (base, height, area) => {
    expect(triangles(base, height)).toBeCloseTo(area, 9);
  });

  it('is 558 square inches of rectangles in all, and 596.25 with the triangles, 38.25 of which they are', () => {
    const [straight, sloped] = [
      rectangles.map(([w, h]) => rectangle(w, h)),
      pairs.map(([b, h]) => triangles(b, h)),
    ];
    expect(sum(straight)).toBeCloseTo(558, 9);
    expect(sum(sloped)).toBeCloseTo(38.25, 9);
    expect(sum([...straight, ...sloped])).toBeCloseTo(596.25, 9);
  });
});

describe('another yarn for the pattern’s', () => {
  it('650 g of 91 m a ball of 50 g are 1183 m, 11.83 balls of 100 m: 12 (iknitknitwear.com, Replace the yarn in the pattern)', () => {
    expect(replaceBalls(650 / 50, { metres: 91 }, { metres: 100 }, 0)).toMatchObject({
      estimate: { value: 1183, unit: 'm' },
      balls: 12,
    });
  });

  it('7 balls of 125 yd are 10.29 of 85 yd: 11 (notsogranny.com, Let’s talk about yarn: yardage, 2014)', () => {
    const yards = (n: number) => ({ metres: n * METRES_PER_YARD });
    const need = replaceBalls(7, yards(125), yards(85), 0);
    expect(need).toMatchObject({ kind: 'need', balls: 11 });
    expect(need.estimate.value / yards(85).metres).toBeCloseTo(10.294, 3);
  });
});

describe('the last of the yarn', () => {
  it('14.7 g at 4 g a round are 3 whole rounds: 2 and the cast-off (100milewear.blogspot.com, 2014)', () => {
    expect(rowsLeft('g', 14.7, 4, 1).rows).toBe(2);
    expect(rowsLeft('g', 14.7, 4, 1).workings[0]?.exact).toBeCloseTo(3.675, 9);
  });

  it('22 g at 2 g a row are 11 rows; 8 planned with 3 kept back (destiknitions.blogspot.com, 2017)', () => {
    expect(rowsLeft('g', 22, 2, 3).rows).toBe(8);
    expect(rowsLeft('g', 22, 2, 0).rows).toBe(11);
  });

  it.each([
    ['a row', 1, 0, 126, 315],
    ['a bind-off', 0, 2, 246, 615],
    ['a row and the bind-off', 1, 2, 366, 915],
  ])(
    '%s takes so much at three widths a row, and twice that to bind off (blacksquirrelberkeley.com, Yarn Chicken)',
    (_, rows, bindOff, inchesKept, cmKept) => {
      // Over 40 in with an end of 6 in, and over 100 cm with an end of 15 cm.
      expect(rowsLeft('m', inches(inchesKept - 6) / 100, inches(3 * 40) / 100, bindOff).rows).toBe(rows);
      expect(rowsLeft('m', (cmKept - 15) / 100, 3, bindOff).rows).toBe(rows);
    },
  );
});

const yardsToThePound = (count: YarnCount, size: number, plies: number, strands?: number) =>
  (metresPerGram(count, size, plies, strands).exact * GRAMS_PER_POUND) / METRES_PER_YARD;
const metresToTheKilogram = (count: YarnCount, size: number, plies: number) =>
  metresPerGram(count, size, plies).exact * 1000;

describe('yarn count (mypollywogs.com, Yarn count systems)', () => {
  it.each<[YarnCount, number, number, number]>([
    ['worsted', 24, 2, 6720],
    ['worsted', 28, 2, 7840],
    ['worsted', 15, 3, 2800],
    ['cotton', 16, 2, 6720],
    ['cotton', 20, 2, 8400],
  ])('%s size %i in %i plies has %i yd to the pound', (count, size, plies, yards) => {
    expect(yardsToThePound(count, size, plies)).toBeCloseTo(yards, 6);
  });

  it('two strands of 2/24 worsted have 3360', () => {
    expect(yardsToThePound('worsted', 24, 2, 2)).toBeCloseTo(3360, 6);
  });
});

describe('metric yarn count', () => {
  it.each([
    ['georgeweil.com, Understanding yarn count measurements', 60, 2, 30_000],
    ['pashminas-cashmere.blogspot.com, Details about yarn count, 2017', 60, 4, 15_000],
    ['miniknittingstuff.com, Yarn count', 30, 2, 15_000],
    ['support.kniterate.com, Yarn count and converting yarn counts', 120, 4, 30_000],
    ['support.kniterate.com, Yarn count and converting yarn counts', 12, 2, 6000],
  ])('%s: Nm %i in %i plies has %i m to the kilogram', (_, size, plies, metres) => {
    expect(metresToTheKilogram('metric', size, plies)).toBeCloseTo(metres, 6);
  });

  // textileschool.com, Yarn conversions: Nm = 1.6934 × cotton count. Printed to four decimals.
  it('is 1.6934 times the cotton count', () => {
    expect(metresToTheKilogram('cotton', 1, 1) / metresToTheKilogram('metric', 1, 1)).toBeCloseTo(1.6934, 4);
  });

  // miniknittingstuff.com, Yarn count: tex = 590.50 / cotton, 885.80 / worsted, 1000 / Nm. Printed to a tenth, cotton cut.
  it.each<[YarnCount, number]>([
    ['cotton', 590.5],
    ['worsted', 885.8],
    ['metric', 1000],
  ])('size 1 of the %s count weighs %f g to the kilometre', (count, tex) => {
    expect(Math.abs(1_000_000 / metresToTheKilogram(count, 1, 1) - tex)).toBeLessThan(0.1);
  });
});

describe('a question met in public knitting talk, worked answer collected 2026', () => {
  it('cardigan 10 cm shorter with sleeves 5 cm longer saves 640 cm², 80 m of the 124 that are short', () => {
    const sweater = { bust: cm(92), length: cm(60), upperArm: cm(28), wrist: cm(28), sleeve: cm(45) };
    const altered = { ...sweater, length: cm(60 - 10), sleeve: cm(45 + 5) };
    const saved = sweaterArea(sweater).area - sweaterArea(altered).area;
    expect(saved).toBe(640);
    const swatch = { amount: { value: 0.125 * 100, unit: 'm' }, width: cm(10), height: cm(10) } as const;
    expect(yarnFromSwatch(saved, swatch, { metres: 175 }, 0).estimate.value).toBeCloseTo(80, 9);
    // 999 m are needed of 875: 44 m short after the saving, one skein.
    const left = yarnLeft({
      unit: 'm',
      left: 875,
      used: { amount: 12.5, area: 100 },
      rest: 999 / 0.125 - 640,
      margin: 0,
    });
    expect(left.kind === 'runs short' && left.short.value).toBeCloseTo(44, 9);
  });

  it('child’s hoodie in one strand for two: 625 yd of 145 yd a ball are 5 balls, at the same gauge', () => {
    const yards = (n: number) => n * METRES_PER_YARD;
    const asked = { amount: { value: yards(625), unit: 'm' }, areaRatio: 1 } as const;
    const same = { pattern: perCm(14 / 10.16), own: perCm(14 / 10.16) };
    expect(yarnFromPattern({ ...asked, gauge: same }, { metres: yards(145) }, 0)).toMatchObject({ balls: 5 });
    // At 17 to 4 in for 14 about a fifth more length.
    const denser = yarnFromPattern(
      { ...asked, gauge: { ...same, own: perCm(17 / 10.16) } },
      { metres: yards(145) },
      0,
    );
    expect(denser.estimate.value / asked.amount.value).toBeCloseTo(1.21, 2);
  });

  it('four skeins left, sleeves of one and a half, half of one done: 2.25 for the sleeves, 1.75 for the rest', () => {
    // A sleeve as the unit of area: half a sleeve has taken 0.75 of a skein of 100 g.
    const sleeves = yarnLeft({ unit: 'g', left: 400, used: { amount: 75, area: 0.5 }, rest: 1.5, margin: 0 });
    expect(sleeves).toMatchObject({ kind: 'lasts', needed: { value: 225 }, over: { value: 175 } });
  });
});
