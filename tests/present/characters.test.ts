import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wedgePicture } from '../../src/present/pictures/of-plan.ts';
import { shapedPicture } from '../../src/present/pictures/shaped-picture.ts';
import { picturesOf } from '../../src/present/pictures.ts';
import {
  sampleCap,
  sampleDart,
  sampleDarts,
  sampleHem,
  sampleNeck,
  samplePlan,
  sampleRaglan,
  sampleShoulders,
  sampleYoke,
} from '../../tools/sample-garment.ts';
import { garments } from './garments.ts';
import { textsOf } from './geometry.ts';

const VIEW = { unit: 'cm', dialect: 'us' } as const;
const FLAT = { ...VIEW, worked: 'flat' } as const;
const ROUND = { ...VIEW, worked: 'round' } as const;

const samples = [
  ...picturesOf(samplePlan(), 'us'),
  shapedPicture(sampleCap(), 'The cap', FLAT),
  shapedPicture(sampleNeck(), 'The neck', FLAT),
  shapedPicture(sampleRaglan(), 'The raglan lines', ROUND),
  shapedPicture(sampleYoke(), 'The yoke', ROUND),
  shapedPicture(sampleShoulders('both'), 'Shoulders', FLAT),
  shapedPicture(sampleDarts('up'), 'Darts', ROUND),
  wedgePicture(sampleDart(), 'Front: bust dart', VIEW),
  wedgePicture(sampleHem(), 'Back: hem', VIEW),
];

/** Letters, figures and signs that every terminal has: those of the basic set, and the fractions of a tape. */
const PLAIN = /^[\x20-\x7e\n⅛¼⅜½⅝¾⅞−]*$/;

describe('a picture in plain characters', () => {
  it.each(samples)('fits any window from 40 columns on: $name', ({ characters }) => {
    for (let columns = 40; columns <= 140; columns += 4) {
      const drawn = characters(columns);
      expect(Math.max(...drawn.split('\n').map((l) => l.length))).toBeLessThanOrEqual(columns);
      expect(drawn).toMatch(PLAIN);
      expect(drawn).not.toMatch(/ $/m);
    }
  });

  it('is drawn for 40 columns where fewer are asked for', () => {
    for (const { characters } of samples) expect(characters(10)).toBe(characters(40));
  });

  it('fits for random garments too, and says every count and width of the drawing', () => {
    fc.assert(
      fc.property(garments, fc.integer({ min: 40, max: 120 }), (plan, columns) => {
        for (const { drawing, characters, name } of picturesOf(plan, 'uk')) {
          const drawn = characters(columns);
          expect(Math.max(...drawn.split('\n').map((l) => l.length))).toBeLessThanOrEqual(columns);
          if (!name.startsWith('schematic')) continue;
          const words = drawn.replace(/\s+/g, ' ');
          for (const { text, name: label = '' } of textsOf(drawing))
            if (/^(count|width) at/.test(label)) expect(words).toContain(text.split(': ').at(-1));
        }
      }),
    );
  });

  it('draws a piece wider where it is wider, the pattern beside it', () => {
    const [, sleeve] = picturesOf(samplePlan(), 'us');
    expect(sleeve?.characters(60).split('\n').slice(3, 16).join('\n')).toMatchInlineSnapshot(`
      "\\:-----------------------------:/  upper arm: 80 sts
       \\:                           :/   35.2 cm wide
        \\:                         :/    pattern: 74 sts, 32.5 cm
         \\:                       :/
           \\                     /         118 rows, 39 cm
            \\                   /
             |-----------------|         top of the cuff: 46 sts
             |                 |         19.8 cm wide
             |                 |         pattern: 44 sts, 18.9 cm
             |                 |
             |                 |           18 rows, 6 cm
             |                 |
             |-----------------|         cast-on edge: 46 sts"
    `);
  });
});

describe('the pictures of a plan', () => {
  it('have names that can be files, none twice', () => {
    const names = picturesOf(samplePlan(), 'us').map((p) => p.name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(names).toEqual(
      expect.arrayContaining([
        'schematic-body',
        'schematic-sleeve',
        'sizes',
        'shaping-sleeve-from-the-cuff-to-the-underarm',
      ]),
    );
  });
});
