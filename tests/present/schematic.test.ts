import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceChange, Plan } from '../../src/fit/plan.ts';
import { CM_PER, type LengthUnit } from '../../src/fit/units.ts';
import type { PathShape } from '../../src/present/draw/drawing.ts';
import { schematicsOf } from '../../src/present/pictures/of-plan.ts';
import { pieceFigures } from '../../src/present/pictures/piece-figures.ts';
import { drawSchematic } from '../../src/present/pictures/schematic.ts';
import { picturesOf } from '../../src/present/pictures.ts';
import { samplePlan } from '../../tools/sample-garment.ts';
import { garments } from './garments.ts';
import { faultsOf, numbersIn, pathNamed, pathsOf, saidIn, scaleOf, textNamed, textsOf } from './geometry.ts';
import { readLength } from './read-length.ts';

const RUNS = { numRuns: 2000 };

/** Left and right of each level, in the order of the piece's levels. */
function pairsOf({ points }: PathShape) {
  return points.slice(0, points.length / 2).map((right, i) => ({ right, left: points.at(-1 - i) ?? right }));
}

/** What is drawn otherwise than the piece has it, in centimetres. */
function wrongDimensions(change: PieceChange, unit: LengthUnit): string[] {
  const drawing = drawSchematic(pieceFigures(change), [], { unit, dialect: 'us' });
  const scale = scaleOf(drawing);
  const { gauge, edge, after } = change;
  const halves = gauge.worked === 'round' ? 2 : 1;
  const pairs = pairsOf(pathNamed(drawing, 'yours'));
  return after.levels.flatMap((level, i) => {
    const { left, right } = pairs[i] ?? { left: { x: 0, y: 0 }, right: { x: 0, y: 0 } };
    const wide = (halves * (right.x - left.x)) / scale;
    const high = Math.abs(right.y - (pairs[0]?.right.y ?? 0)) / scale;
    const wants = { wide: (level.stitches - edge) / gauge.stitchesPerCm, high: level.row / gauge.rowsPerCm };
    return [
      ...(Math.abs(wide - wants.wide) < 1e-6
        ? []
        : [`${level.name} is drawn ${wide} cm wide, not ${wants.wide}`]),
      ...(Math.abs(high - wants.high) < 1e-6
        ? []
        : [`${level.name} is drawn ${high} cm high, not ${wants.high}`]),
    ];
  });
}

/** Labels that state another width than the one drawn; a tape is read to a tenth of its unit. */
function wrongLabels(change: PieceChange, unit: LengthUnit): string[] {
  const figures = pieceFigures(change);
  const drawing = drawSchematic(figures, [], { unit, dialect: 'us' });
  const scale = scaleOf(drawing);
  const pairs = pairsOf(pathNamed(drawing, 'yours'));
  return figures.levels.flatMap(({ name, stitches, row }) => {
    const index = change.after.levels.findIndex((l) => l.row === row && l.stitches === stitches);
    const pair = pairs[index];
    const drawn = ((pair?.right.x ?? 0) - (pair?.left.x ?? 0)) / scale / CM_PER[unit];
    const halves = change.gauge.worked === 'round' ? 2 : 1;
    const said = readLength(textNamed(drawing, `width at ${name}`).text);
    const count = textNamed(drawing, `count at ${name}`).text;
    return [
      ...(Math.abs(halves * drawn - said) <= 0.0501
        ? []
        : [`${name} says ${said} and is drawn ${halves * drawn}`]),
      ...(count === `${name}: ${stitches} sts` ? [] : [`${count} is not ${stitches}`]),
    ];
  });
}

describe('the schematic of a piece', () => {
  it('has every label in its box, none upon another or on a line, and nothing off the picture', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        expect(picturesOf(plan, 'uk').flatMap((p) => faultsOf(p.drawing))).toEqual([]);
      }),
      RUNS,
    );
  });

  it('is drawn to the scale of its bar, and states what it draws', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        expect(plan.pieces.flatMap((p) => wrongDimensions(p, plan.unit))).toEqual([]);
        expect(plan.pieces.flatMap((p) => wrongLabels(p, plan.unit))).toEqual([]);
      }),
      RUNS,
    );
  });

  it('has no letter smaller than 12 units: what a phone shows as twelve pixels', () => {
    const sizes = picturesOf(samplePlan(), 'us').flatMap((p) => textsOf(p.drawing).map((t) => t.size));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
    expect(sizes.length).toBeGreaterThan(100);
  });

  it('draws the pattern dashed behind the knitter’s own solid line, told apart without colour', () => {
    const [body] = schematicsOf(samplePlan(), { unit: 'cm', dialect: 'us' });
    const names = pathsOf(body?.drawing ?? { width: 0, height: 0, shapes: [] }).map((p) => p.name);
    expect(names.indexOf('pattern')).toBeGreaterThanOrEqual(0);
    expect(names.indexOf('yours')).toBeGreaterThan(names.indexOf('pattern'));
  });

  it('shows where the pattern’s measurements change, and says it in words as well', () => {
    const [body, sleeve] = schematicsOf(samplePlan(), { unit: 'cm', dialect: 'us' });
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

  it('says in words every number that it draws', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        for (const { drawing, alternative } of schematicsOf(plan, { unit: plan.unit, dialect: 'us' })) {
          const words = new Set(numbersIn(alternative));
          const missing = saidIn(drawing)
            .flatMap(numbersIn)
            .filter((n) => !words.has(n));
          expect(missing).toEqual([]);
        }
      }),
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
