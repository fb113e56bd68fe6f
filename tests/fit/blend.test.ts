import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Blended, blend } from '../../src/fit/blend.ts';
import { contradictions } from '../../src/fit/contradictions.ts';
import { evaluate } from '../../src/fit/formula.ts';
import type { Pattern } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { stitches } from '../../src/fit/units.ts';

function blended(pattern: Pattern, shoulders: string, bust: string, hip: string): Blended {
  const done = blend(pattern, { shoulders, bust, hip, sleeves: bust });
  if (done.kind !== 'blended') throw new Error(done.kind);
  return done;
}

describe('shoulders of size 3, bust of size 5, hip of size 6', () => {
  const done = blended(SAMPLE_ROUND, '3', '5', '6');

  it('takes each count from its size', () => {
    expect(done.size.label).toBe('3 / 5 / 6');
    expect(done.size.counts).toMatchObject({
      'body cast-on': 260,
      bust: 240,
      'cross back': 80,
      'back neck': 36,
    });
  });

  it('goes from 260 to 240 stitches between hem and underarm in five decrease rounds', () => {
    // 118 rounds less 18 of hem are 100: every 20th round 5 times.
    expect(done.passages[0]).toMatchObject({
      rows: 100,
      spacing: { kind: 'spaced', runs: [{ every: 20, times: 5 }], plainAfter: 0 },
    });
  });

  it('goes from 120 of the back to 80 by 7 bound off and 13 decreased at each side, in the lower half', () => {
    expect(done.size.armhole).toEqual({ boundOff: 7, decreased: 13 });
    expect(done.passages[1]).toMatchObject({ from: 106, to: 80, rows: 30, spacing: { kind: 'spaced' } });
  });

  it('asks for the cap to be fitted anew', () => {
    expect(done.capToFit).toBe(true);
    expect(blended(SAMPLE_ROUND, '5', '5', '6').capToFit).toBe(false);
  });
});

describe('a blended size', () => {
  it('gives a technical editor nothing to mark, and its passages are exact', () => {
    const label = fc.integer({ min: 1, max: 10 });
    fc.assert(
      fc.property(fc.constantFrom(SAMPLE_ROUND, SAMPLE_PIECES), label, label, label, (pattern, s, b, h) => {
        const done = blend(pattern, { shoulders: `${s}`, bust: `${b}`, hip: `${h}`, sleeves: `${s}` });
        if (done.kind !== 'blended') return;
        expect(contradictions({ ...pattern, sizes: [done.size] })).toEqual([]);
        for (const w of done.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
        for (const p of done.passages)
          if (p.spacing.kind === 'spaced') expect([p.spacing.from, p.spacing.to]).toEqual([p.from, p.to]);
      }),
    );
  });

  it('is the size itself where all labels are the same', () => {
    for (const size of SAMPLE_ROUND.sizes) {
      const { size: same } = blended(SAMPLE_ROUND, size.label, size.label, size.label);
      expect(same).toEqual(size);
    }
  });

  it('runs the other way on a garment that grows downward', () => {
    const down: Pattern = { ...SAMPLE_ROUND, direction: 'down' };
    expect(blended(down, '3', '5', '6').passages[0]).toMatchObject({ from: 240, to: 260 });
  });
});

describe('a blend that cannot be', () => {
  it('names the sizes that are wide enough for the shoulders', () => {
    expect(blend(SAMPLE_ROUND, { shoulders: '10', bust: '2', hip: '2', sleeves: '2' })).toEqual({
      kind: 'shoulders wider than the bust',
      back: 90,
      crossBack: 104,
      wideEnough: ['4', '5', '6', '7', '8', '9', '10'],
    });
  });

  it('names the counts that it lacks', () => {
    const sparse: Pattern = {
      ...SAMPLE_ROUND,
      sizes: SAMPLE_ROUND.sizes.map((s) => ({ ...s, counts: { bust: stitches(200) } })),
    };
    expect(blend(sparse, { shoulders: '3', bust: '4', hip: '4', sleeves: '4' })).toEqual({
      kind: 'counts missing',
      size: '3',
      places: ['cross back'],
    });
  });

  it('does not guess the height of a waist', () => {
    const waisted: Pattern = {
      ...SAMPLE_ROUND,
      sizes: SAMPLE_ROUND.sizes.map((s) => ({ ...s, counts: { ...s.counts, waist: stitches(180) } })),
    };
    expect(blend(waisted, { shoulders: '4', bust: '4', hip: '5', sleeves: '4' })).toEqual({
      kind: 'waist between',
    });
  });

  it('throws where the pattern lacks a size', () => {
    expect(() => blend(SAMPLE_ROUND, { shoulders: 'S', bust: '4', hip: '4', sleeves: '4' })).toThrow(
      RangeError,
    );
  });
});
