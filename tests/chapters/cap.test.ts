/** The sleeve of the sample sweater, whose cap is fitted anew where the upper arm has another count. */
import { describe, expect, it } from 'vitest';
import { knitEdges } from '../simulator/edges.ts';
import { expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const WHOLE: Typed = {
  unit: 'cm',
  pattern: 'Pennywhin, in pieces',
  swatch_made: 'back and forth',
  swatch_washed: 'yes',
  swatch_stitches: '22 sts over 10 cm',
  swatch_stitches_2: "I don't know",
  swatch_rows: '30 rows over 10 cm',
  swatch_rows_2: "I don't know",
  table: 'women',
  bust: '96.5 cm',
  upper_bust: '91 cm',
  fit: 'classic',
  size: '4',
  wishes: 'sleeves',
  upper_arm: '34 cm',
  wrist: '16 cm',
  sleeve_length: '44 cm',
};

describe('the cap of a sleeve with another upper arm', () => {
  it('is knitted from the new count to its top, with the bind-offs of the armhole', () => {
    const [cap] = instructed(planOf('whole', WHOLE), 'shape edges').map((i) => i.schedule);
    if (cap === undefined) throw new Error(textOf(planOf('whole', WHOLE)));
    expect(knitEdges(cap.from, cap.events, cap.rows).count).toBe(cap.to);
    expect(cap.events.slice(0, 2).map((e) => e.change)).toEqual([-6, -6]);
    const plan = planOf('whole', WHOLE);
    expectSound({ ...plan, summary: [], steps: plan.steps.slice(-1), finished: [], assumed: [] });
  });

  it('says by how many stitches the arm differs, and what the cap fits', () => {
    expect(textOf(planOf('whole', WHOLE))).toContain('it fits the armhole of the pattern');
  });
});
