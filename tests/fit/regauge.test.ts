import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contradictions } from '../../src/fit/contradictions.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { type Gauge, rateAsPrinted } from '../../src/fit/gauge.ts';
import { knitted } from '../../src/fit/knitted.ts';
import { needleWay } from '../../src/fit/needle-way.ts';
import type { Pattern, PatternSize } from '../../src/fit/pattern.ts';
import { regauge } from '../../src/fit/regauge.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { chooseSize } from '../../src/fit/size.ts';
import { targetsFor } from '../../src/fit/targets.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

const gauge = (sts: number, rws: number): Gauge => ({
  stitches: rateAsPrinted({ count: sts, span: cm(10), unit: 'cm' }),
  rows: rateAsPrinted({ count: rws, span: cm(10), unit: 'cm' }),
  worked: 'flat',
});
/** The pattern with only the size as worked out, at the knitter's own gauge. */
const rewritten = (pattern: Pattern, size: PatternSize, sts: number, rws: number): Pattern => ({
  ...pattern,
  gauge: {
    stitches: { count: sts, span: cm(10), unit: 'cm' },
    rows: { count: rws, span: cm(10), unit: 'cm' },
  },
  sizes: [size],
});

describe('a size at another gauge', () => {
  const at20 = () => regauge(SAMPLE_ROUND, '4', gauge(20, 27));

  it('has all its counts anew', () => {
    // × 20/22: 220 → 200; 84 → 76.4, even 76; 38 → 34.5, even 34; (76 − 34) / 2 = 21; (74 − 2) → 65.5 + 2 = 67.5.
    expect(at20().size.counts).toEqual({
      'body cast-on': 200,
      bust: 200,
      'cross back': 76,
      'back neck': 34,
      shoulder: 21,
      'sleeve cast-on': 40,
      wrist: 40,
      'upper arm': 68,
      'cap top': 22,
    });
  });

  it('has an armhole that adds up: 100 of the back less twice 5 and 7 are 76', () => {
    expect(at20().size.armhole).toEqual({ boundOff: 5, decreased: 7 });
  });

  it('has all its rows anew, told as a length and back', () => {
    // 114 rounds are 38 cm, 102.6 at 2.7; 132 rows are 44 cm, 118.8, even 118; 60 are 20 cm, 54; 36 are 12 cm, 32.4.
    expect(at20().size.rows).toEqual({ body: 103, armhole: 54, sleeve: 118, cap: 32 });
  });

  it('says what each count would measure unchanged', () => {
    const bust = at20().counts.find((c) => c.place === 'bust');
    expect(bust?.width).toBeCloseTo(100, 9);
    expect(bust?.widthUnchanged).toBeCloseTo(110, 9);
  });

  it('keeps every count where only the rows differ', () => {
    for (const pattern of [SAMPLE_ROUND, SAMPLE_PIECES])
      for (const size of pattern.sizes) {
        const same = regauge(pattern, size.label, gauge(22, 26)).size;
        expect(same.counts).toEqual(size.counts);
        expect(same.armhole).toEqual(size.armhole);
      }
  });

  it('fits the repeat at the bust, with the nearest counts on either side', () => {
    const cable: Pattern = { ...SAMPLE_ROUND, repeat: { multiple: 12, plus: 0 } };
    const bust = regauge(cable, '4', gauge(20, 27)).counts.find((c) => c.place === 'bust');
    expect(bust).toMatchObject({ stitches: 204, below: 192, above: 204 });
  });

  it('is refused for a size that the pattern lacks', () => {
    expect(() => regauge(SAMPLE_ROUND, 'XL', gauge(20, 27))).toThrow(RangeError);
  });

  it('keeps back and front alike where a round is divided, and only there', () => {
    // 220 × 20.5 / 22 are 205 stitches: no two halves.
    const bustOf = (pattern: Pattern) => regauge(pattern, '4', gauge(20.5, 28)).size.counts.bust;
    const any: Pattern = { ...SAMPLE_ROUND, repeat: { multiple: 1, plus: 0 } };
    expect(bustOf(any)).toBe(206);
    expect(bustOf({ ...any, construction: 'drop shoulder' })).toBe(206);
    expect(bustOf({ ...any, construction: 'raglan' })).toBe(205);
    // A repeat that is always odd goes before it: 4 × 51 + 1.
    expect(bustOf({ ...any, repeat: { multiple: 4, plus: 1 } })).toBe(205);
  });

  it('gives a waist the parity of the bust, so that shaping at both sides reaches it', () => {
    const waisted: Pattern = {
      ...SAMPLE_PIECES,
      repeat: { multiple: 1, plus: 0 },
      sizes: SAMPLE_PIECES.sizes.map((s) => ({ ...s, counts: { ...s.counts, waist: stitches(97) } })),
    };
    // 110 × 20 / 22 + 2 are 102; 95 × 20 / 22 + 2 are 88.4, of the bust's parity 88.
    const { counts } = regauge(waisted, '4', gauge(20, 27)).size;
    expect([counts.bust, counts.waist]).toEqual([102, 88]);
    const [, , , size] = waisted.sizes;
    const figures = regauge(waisted, '4', gauge(20, 27)).counts;
    const waist = figures.find((f) => f.place === 'waist');
    expect([waist?.width, waist?.widthUnchanged]).toEqual([43, ((size?.counts.waist ?? 0) - 2) / 2]);
  });

  it('leaves out what the pattern leaves out, and scales an armhole whose back it does not know', () => {
    const [, , , size] = SAMPLE_ROUND.sizes;
    if (size === undefined) throw new Error('no size 4');
    const { rows: _, armhole: __, ...bare } = size;
    const sparse = regauge({ ...SAMPLE_ROUND, sizes: [bare] }, '4', gauge(20, 27)).size;
    expect(Object.keys(sparse)).toEqual(['label', 'finished', 'counts']);
    const { 'cross back': ___, ...counts } = size.counts;
    const alone = regauge({ ...SAMPLE_ROUND, sizes: [{ ...size, counts }] }, '4', gauge(20, 27));
    // 6 and 7 × 20 / 22 are 5.45 and 6.36.
    expect(alone.size.armhole).toEqual({ boundOff: 5, decreased: 6 });
  });

  it('shows how each figure came about', () => {
    const [, , , size] = SAMPLE_ROUND.sizes;
    if (size === undefined) throw new Error('no size 4');
    const { workings } = regauge(SAMPLE_ROUND, '4', gauge(20, 27));
    const lines = told(workings);
    for (const line of [
      'stitches at the bust: a * b / c = 200 stitches',
      'width at the bust: a / b = 100 cm',
      'stitches at the upper arm: (a - e) * b / c + e = 68 stitches',
      'width at the upper arm: (a - e) / b = 33 cm',
      'stitches at the shoulder: (a - b) / 2 = 21 stitches',
      'length of the armhole: a / c = 20 cm',
      'rows of the armhole: a * b = 54 rows',
      'stitches bound off at each side of the back: a * b / c = 5 stitches',
      'stitches to lose at each side of the back: (a - b) / 2 = 12 stitches',
      'stitches decreased at each side of the back: a - b = 7 stitches',
    ])
      expect(lines).toContain(line);
  });

  it('gives a technical editor nothing to mark, at any gauge', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(SAMPLE_ROUND, SAMPLE_PIECES),
        fc.integer({ min: 1, max: 10 }),
        fc.integer({ min: 28, max: 68 }),
        fc.double({ min: 1.15, max: 1.6, noNaN: true }),
        (pattern, n, halves, ratio) => {
          const [sts, rws] = [halves / 2, (halves / 2) * ratio];
          const done = regauge(pattern, `${n}`, gauge(sts, rws));
          expect(contradictions(rewritten(pattern, done.size, sts, rws))).toEqual([]);
          for (const w of done.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('another size’s counts', () => {
  it('come nearest to 100 cm at 20 stitches in size 3, which then measures 100', () => {
    const own = { body: gauge(20, 27), sleeves: gauge(20, 27) };
    const { targets } = targetsFor({ table: 'women', known: { bust: cm(100) } }, { ease: cm(0) });
    const choice = chooseSize(SAMPLE_ROUND, targets, own);
    if (choice.kind !== 'ranked') throw new Error(choice.kind);
    expect(choice.ranking.slice(0, 2).map((size) => size.label)).toEqual(['3', '4']);
    expect(choice.best.reasons[0]?.knitted.value).toBeCloseTo(200 / 2, 9);
    const third = SAMPLE_ROUND.sizes[2];
    if (third === undefined) throw new Error('no size 3');
    // The armhole's 58 rows make 21.5 cm at 27 rows to 10 cm.
    expect(knitted('armhole depth', third, SAMPLE_ROUND, own)?.value).toBeCloseTo(58 / 2.7, 9);
  });
});

describe('width by the needle alone', () => {
  const [, , , size] = SAMPLE_ROUND.sizes;

  it('changes every other measurement in the same proportion', () => {
    if (size === undefined) throw new Error('no size 4');
    const way = needleWay(SAMPLE_ROUND, size, 'bust', cm(105));
    expect(way.gauge).toBeCloseTo(22 / 10 / 1.05, 12);
    expect(way.fabric).toBe('much the same');
    for (const w of way.widths) expect(w.becomes / w.printed).toBeCloseTo(1.05, 9);
    expect(way.lengths.find((l) => l.stretch === 'armhole')?.becomes).toBeCloseTo(20 * 1.05, 9);
  });

  it('is another fabric beyond a tenth', () => {
    if (size === undefined) throw new Error('no size 4');
    expect(needleWay(SAMPLE_ROUND, size, 'bust', cm(120)).fabric).toBe('looser');
    expect(needleWay(SAMPLE_ROUND, size, 'bust', cm(85)).fabric).toBe('denser');
  });
});
