import { describe, expect, it } from 'vitest';
import { plain } from '../../../src/dialogue/read/plain.ts';

describe('Plain spelling', () => {
  it.each([
    ['18¾”', '18 3⁄4 "'],
    ['5¹⁄₂', '5 1⁄2'],
    ["7.25''", '7.25"'],
    ['6’4″', '6\'4"'],
    ['−3 – 4 — 5', '-3 - 4 - 5'],
    ['３８．５ｃｍ', '38.5cm'],
    ['٣٨', '38'],
    ['३८', '38'],
    ['3️⃣', '3'],
    ['\u200f38\u200e\u00a0cm', '38 cm'],
    ['Länge: 10 × 10', 'lange: 10 x 10'],
    ['5 more time(s)', '5 more times'],
    ['12 Masche(n)', '12 maschen'],
    ['38 🧶', '38'],
  ])('of “%s” is “%s”', (typed, expected) => {
    expect(plain(typed)).toBe(expected);
  });
});
