import fc from 'fast-check';
import { expect, it } from 'vitest';
import { LENGTH_UNITS } from '../../src/fit/units.ts';
import { garments } from '../present/garments.ts';
import { shapedParts } from '../present/shaped-parts.ts';
import { wrongInPictures, wrongInShape } from '../present/wrong-pictures.ts';
import { budget, tell } from './budget.ts';

const { runs, seed } = budget();
/** The pictures of a garment take about as long as five garments that are knitted: 2,000 where nothing else is said. */
const drawn = Math.ceil(runs / 5);

it(`draws ${drawn} random garments, each line to its scale and each label in its room, from seed ${seed}`, () => {
  tell(`pictures: EASEWRIGHT_RUNS=${runs} EASEWRIGHT_SEED=${seed}`);
  let shapes = 0;
  fc.assert(
    fc.property(
      garments,
      fc.array(shapedParts, { maxLength: 3 }),
      fc.constantFrom(...LENGTH_UNITS),
      (plan, shaped, unit) => {
        shapes += plan.pieces.length + shaped.length;
        expect([...wrongInPictures(plan), ...shaped.flatMap((one) => wrongInShape(one, unit))]).toEqual([]);
      },
    ),
    { numRuns: drawn, seed },
  );
  expect(shapes).toBeGreaterThan(drawn);
});
