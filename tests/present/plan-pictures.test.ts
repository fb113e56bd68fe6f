import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { parsePlan } from '../../src/fit/plan-schema.ts';
import { picturesOf } from '../../src/present/pictures.ts';
import { planText } from '../../src/present/plan-text.ts';
import { ALTERATIONS } from './alterations.ts';
import { numbersIn } from './geometry.ts';
import { wrongInPictures } from './wrong-pictures.ts';

const plans = Object.entries(ALTERATIONS).map(([name, make]) => ({ name, plan: make() }));

function namesOf(plan: Plan): string[] {
  return picturesOf(plan, 'us')
    .filter(({ kind }) => kind === 'shape')
    .map(({ name }) => name);
}

describe('the pictures in a plan', () => {
  it.each(plans)(
    'show to scale what it shapes, everything in its place and said in words: $name',
    ({ plan }) => {
      const pictures = picturesOf(plan, 'us');
      expect(pictures.filter(({ kind }) => kind === 'shape').length).toBeGreaterThan(0);
      expect(new Set(pictures.map(({ name }) => name)).size).toBe(pictures.length);
      expect(wrongInPictures(plan)).toEqual([]);
    },
  );

  it.each(plans)('are drawn from the plan alone, as another program reads it: $name', ({ plan }) => {
    const read = parsePlan(JSON.parse(JSON.stringify(plan)));
    const drawn = (of: Plan) => JSON.stringify(picturesOf(of, 'us').map(({ drawing }) => drawing));
    expect(drawn(read)).toBe(drawn(plan));
  });

  it('are of each alteration its own', () => {
    const shapes = Object.fromEntries(plans.map(({ name, plan }) => [name, namesOf(plan)]));
    expect(shapes).toMatchInlineSnapshot(`
      {
        "a V neck": [
          "shape-front-the-neck",
        ],
        "a dart by short rows": [
          "short-rows-front-the-bust-dart",
        ],
        "a deeper armhole": [
          "shape-sleeve-the-cap-and-its-armhole",
        ],
        "a dropped shoulder": [
          "shape-body-and-sleeve-the-dropped-shoulder",
        ],
        "a front neck": [
          "shape-front-the-neck",
        ],
        "a hem all round": [
          "short-rows-body-the-hem-lower-at-the-back-and-tapering-all-round",
        ],
        "a hem lower at the back": [
          "short-rows-body-the-hem-lower-across-the-back",
        ],
        "a raised back neck": [
          "short-rows-yoke-the-back-of-the-neck",
        ],
        "a round yoke": [
          "shape-yoke-all-its-rounds",
        ],
        "a round yoke from the neck": [
          "shape-yoke-all-its-rounds",
        ],
        "darts that run up and down": [
          "shape-front-widen-on-the-way-to-the-bust",
          "shape-front-narrow-again-beyond-the-bust",
        ],
        "every wish": [
          "schematic-body",
          "schematic-sleeve",
          "short-rows-body-the-hem-lower-across-the-back",
          "short-rows-front-the-bust-dart",
          "short-rows-back-the-back-of-the-neck",
          "short-rows-back-both-shoulders-of-the-back",
          "shape-front-the-neck",
          "short-rows-front-the-shoulder-at-the-right-seen-from-the-right-side",
          "short-rows-front-the-shoulder-at-the-left-seen-from-the-right-side",
          "shape-sleeve-the-cap-and-its-armhole",
        ],
        "every wish in pieces": [
          "schematic-back",
          "schematic-sleeve",
          "short-rows-back-the-hem-lower-across-the-back",
          "short-rows-back-the-back-of-the-neck",
          "shape-back-both-shoulders-of-the-back",
          "short-rows-front-the-bust-dart",
          "shape-front-the-neck",
          "shape-front-the-shoulder-at-the-right-seen-from-the-right-side",
          "shape-front-the-shoulder-at-the-left-seen-from-the-right-side",
          "shape-sleeve-the-cap-and-its-armhole",
        ],
        "raglan lines": [
          "shape-yoke-the-raglan-lines",
        ],
        "raglan lines from the neck": [
          "shape-yoke-the-raglan-lines",
        ],
        "shoulders bound off": [
          "shape-back-both-shoulders-of-the-back",
          "shape-front-the-shoulder-at-the-right-seen-from-the-right-side",
          "shape-front-the-shoulder-at-the-left-seen-from-the-right-side",
        ],
        "shoulders by short rows": [
          "short-rows-back-both-shoulders-of-the-back",
          "short-rows-front-the-shoulder-at-the-right-seen-from-the-right-side",
          "short-rows-front-the-shoulder-at-the-left-seen-from-the-right-side",
        ],
      }
    `);
  });

  it('give the figures of the text: cap and armhole, raglan, yoke, neck', () => {
    const said = (name: string) =>
      picturesOf(ALTERATIONS[name]?.() ?? fail(name), 'us')
        .map((p) => p.alternative)
        .join(' ');
    const text = (name: string) =>
      planText(ALTERATIONS[name]?.() ?? fail(name), { dialect: 'us', workings: true });
    for (const [name, figure] of FIGURES) {
      const [shown] = figure.exec(said(name)) ?? [];
      expect(shown, `${name}: ${figure}`).toBeDefined();
      for (const n of numbersIn(shown ?? '')) expect(numbersIn(text(name)), name).toContain(n);
    }
  });
});

/** Sentences of the words of a picture whose numbers the plan's text states too. */
const FIGURES: readonly (readonly [string, RegExp])[] = [
  ['a deeper armhole', /Edge of the cap: [^.]*\.\d cm/],
  ['a deeper armhole', /The cap begins with \d+ stitches, has \d+ rows/],
  ['a dropped shoulder', /Armhole: \d+ rows \([\d.]+ cm\)/],
  ['a dropped shoulder', /Top of the sleeve: \d+ stitches, [\d.]+ cm wide/],
  ['a dropped shoulder', /The shoulder hangs [\d.]+ cm over/],
  ['a dropped shoulder', /Before: \d+ rows, and \d+ stitches/],
  ['raglan lines', /Back: \d+ stitches at the underarm, \d+ at the neck/],
  ['raglan lines', /At the neck \d+ stitches, [\d.]+ cm around/],
  ['a round yoke', /round \d+ shapes to \d+ stitches/],
  ['a front neck', /Each shoulder: \d+ stitches\. Neck edge: [\d.]+ cm/],
  ['shoulders bound off', /Steps from the armhole edge to the neck: [\d, ]+ stitches/],
  ['darts that run up and down', /From either side to its dart line: \d+ stitches at the start/],
  ['a hem lower at the back', /all \d+ rows of them \([\d.]+ cm\)/],
];

function fail(name: string): never {
  throw new Error(`there is no alteration '${name}'`);
}
