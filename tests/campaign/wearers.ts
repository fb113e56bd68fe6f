/** Random knitters of the whole way: a pattern, a gauge, a body, and any set of wishes. */
import fc from 'fast-check';
import type { Count } from '../../src/fit/gauge.ts';
import { lengthIn } from '../../src/fit/units.ts';

export const WISHES = [
  'sleeve',
  'length',
  'waist',
  'bust',
  'hem',
  'top',
  'front_neck',
  'shoulder',
  'back_neck',
  'yarn',
] as const;
export type Wish = (typeof WISHES)[number];

export const MADE = ['up_round', 'up_flat', 'down_round', 'down_flat'] as const;
export type Made = (typeof MADE)[number];

/** Whether it can be made is for the plan to say. */
export interface Wearer {
  readonly unit: 'cm' | 'in';
  readonly pattern: 'sample_round' | 'sample_pieces' | 'own';
  readonly joined: 'set_in' | 'drop' | 'raglan' | 'yoke';
  readonly body: Made;
  readonly sleeves: Made;
  readonly wishes: readonly Wish[];
  /** Of the sample, counted from nought. */
  readonly size: number;
  /** At each place of the swatch that was counted. */
  readonly stitches: readonly Count[];
  readonly rows: readonly Count[];
  /** Of the knitter's own pattern, around, in centimetres. */
  readonly bust: number;
  /** How often a question is answered by 'I don't know', from nought to one. */
  readonly unsure: number;
  /** Decides what else is drawn, in turn: each from nought to one. */
  readonly toss: readonly number[];
}

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarter) => quarter / 4);
const share = fc.noBias(fc.integer({ min: 0, max: 9999 })).map((n) => n / 10_000);

/** Odd counts over odd spans, at one place or several, rows 1.1 to 1.8 times as many as stitches. */
const swatches = fc
  .record({
    across: quarters(10, 36),
    near: fc.array(quarters(-1, 1), { maxLength: 2 }),
    more: fc.integer({ min: 110, max: 180 }),
    nearRows: fc.array(quarters(-1, 1), { maxLength: 1 }),
    unit: fc.constantFrom('cm' as const, 'in' as const),
    span: fc.constantFrom(4, 5, 6),
  })
  .map(({ across, near, more, nearRows, unit, span }) => {
    const long = unit === 'in' ? span : Math.round(span * 2.5);
    const over = (count: number): Count => ({ count, span: lengthIn(long, unit), unit });
    const first = Math.round(((across * long) / (unit === 'in' ? 4 : 10)) * 4) / 4;
    const rows = Math.round(((first * more) / 100) * 4) / 4;
    return {
      stitches: [over(first), ...near.map((by) => over(first + by))],
      rows: [over(rows), ...nearRows.map((by) => over(rows + by))],
    };
  });

export const wearers: fc.Arbitrary<Wearer> = fc
  .record({
    unit: fc.constantFrom('cm' as const, 'in' as const),
    pattern: fc.constantFrom(
      'sample_round' as const,
      'sample_pieces' as const,
      'own' as const,
      'own' as const,
    ),
    joined: fc.constantFrom('set_in' as const, 'drop' as const, 'raglan' as const, 'yoke' as const),
    body: fc.constantFrom(...MADE),
    sleeves: fc.constantFrom(...MADE),
    wishes: fc.oneof(fc.subarray([...WISHES], { minLength: 1 }), fc.constant<Wish[]>([...WISHES])),
    size: fc.integer({ min: 0, max: 9 }),
    swatch: swatches,
    bust: fc.integer({ min: 480, max: 1500 }).map((tenths) => tenths / 10),
    unsure: fc.constantFrom(0, 0, 0, 0.1),
    toss: fc.array(share, { minLength: 97, maxLength: 97 }),
  })
  .map(({ swatch, ...rest }) => ({ ...rest, ...swatch }));

/** Draws in turn, the same for the same tosses. */
export function drawsOf(toss: readonly number[]) {
  let next = 0;
  const between = (least: number, most: number) => {
    next += 1;
    return least + (most - least) * (toss[next % toss.length] ?? 0.5);
  };
  return {
    between,
    /** To the millimetre. */
    length: (least: number, most: number) => Math.round(10 * between(least, most)) / 10,
    whole: (least: number, most: number) => Math.min(most, Math.floor(between(least, most + 1))),
    often: (share: number) => between(0, 1) < share,
    one: <T>(of: readonly [T, ...T[]]): T => of[Math.floor(between(0, of.length))] ?? of[0],
  };
}
export type Draws = ReturnType<typeof drawsOf>;
