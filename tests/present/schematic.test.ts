import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shapePieces } from '../../src/fit/body-pieces.ts';
import { piecesPart } from '../../src/fit/body-pieces-steps.ts';
import type { Plan } from '../../src/fit/plan.ts';
import { schematicsOf } from '../../src/present/pictures/of-plan.ts';
import { picturesOf } from '../../src/present/pictures.ts';
import { samplePlan } from '../../tools/sample-garment.ts';
import { withHem } from '../fit/drawn-in.ts';
import { garments, planOf } from './garments.ts';
import { pathsOf, textsOf } from './geometry.ts';
import { wrongInPictures } from './wrong-pictures.ts';

const sample = samplePlan();

describe('the schematic of a piece', () => {
  it('has every label in its box, none upon another or on a line, is to the scale of its bar, states what it draws, and is said in words', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        expect(wrongInPictures(plan)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('has no letter smaller than 12 units: what a phone shows as twelve pixels', () => {
    const sizes = picturesOf(sample, 'us').flatMap((p) => textsOf(p.drawing).map((t) => t.size));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
    expect(sizes.length).toBeGreaterThan(100);
  });

  it('draws the pattern dashed behind the knitter’s own solid line, told apart without colour', () => {
    const [body] = schematicsOf(sample, { unit: 'cm', dialect: 'us' });
    const names = pathsOf(body?.drawing ?? { width: 0, height: 0, shapes: [] }).map((p) => p.name);
    expect(names.indexOf('pattern')).toBeGreaterThanOrEqual(0);
    expect(names.indexOf('yours')).toBeGreaterThan(names.indexOf('pattern'));
  });

  it('shows where the pattern’s measurements change, and says it in words as well', () => {
    const [body, sleeve] = schematicsOf(sample, { unit: 'cm', dialect: 'us' });
    // 220 stitches at 22.17 to 10 cm; 196 at the waist; 80 and 74 less the two of the seam at the upper arm.
    const said = textsOf(body?.drawing ?? { width: 0, height: 0, shapes: [] }).map((t) => t.text);
    expect(said).toEqual(
      expect.arrayContaining(['waist: 196 sts', '88.4 cm around', 'not in the pattern', 'underarm: 220 sts']),
    );
    expect(body?.alternative).toContain(
      'Waist: 196 stitches, 88.4 cm around, for 7 rounds, not in the pattern.',
    );
    expect(sleeve?.alternative).toContain(
      'Upper arm: 80 stitches, 35.2 cm wide, pattern: 74 stitches, 32.5 cm.',
    );
  });
});

describe('a piece in the shapes that plans give', () => {
  const plan: Plan = samplePlan({ pattern: ['Pennywhin, in pieces'], swatch_made: ['flat'], unit: ['in'] });

  it('states the width of one flat piece between its edge stitches, in inches for who measures in inches', () => {
    const [back] = schematicsOf(plan, { unit: 'in', dialect: 'us' });
    expect(back?.title).toBe('Back, flat');
    expect(back?.alternative).toContain('in wide');
    expect(back?.alternative).not.toContain('around');
  });
});

describe('the dart lines of a waist', () => {
  const made = shapePieces(withHem(124));
  if (made.kind !== 'pieces') throw new Error(made.why);
  const plan = planOf([piecesPart(made, null)], 'cm');
  const [back, front] = schematicsOf(plan, { unit: 'cm', dialect: 'us' });

  it('are drawn on the back alone where the back alone has them, to scale, and said in words and characters', () => {
    expect(wrongInPictures(plan)).toEqual([]);
    const lines = (picture: typeof back) =>
      pathsOf(picture?.drawing ?? { width: 0, height: 0, shapes: [] }).filter((p) => p.name === 'dart line');
    expect([lines(back).length, lines(front).length]).toEqual([2, 0]);
    expect([back?.title, front?.title]).toEqual(['Back, flat', 'Front, flat']);
    expect(textsOf(back?.drawing ?? { width: 0, height: 0, shapes: [] }).map((t) => t.text)).toContain(
      'dart lines',
    );
    expect(back?.alternative).toContain('Two dart lines run from the top of the hem to the underarm.');
    expect(front?.alternative).not.toContain('dart');
    // 30 of the 61 stitches from the middle of the back to its edge at the hem, 19 of 39 at the waist.
    expect(back?.characters(72)).toContain('|-------+---------------+-------|  top of the hem: 124 sts');
    expect(back?.characters(72)).toContain('|----+---------+----|');
    expect(back?.characters(72)).toContain('+ dart lines');
    expect(front?.characters(72)).not.toContain('+');
  });
});
