/** A neck that begins while the armholes are still shaped, knitted side by side and held against both shaped apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Armhole, armhole } from '../../src/fit/armhole.ts';
import { type Neck, neck } from '../../src/fit/neck.ts';
import { neckInArmhole } from '../../src/fit/neck-in-armhole.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { type Event, knitEdges } from '../simulator/edges.ts';
import { gauges } from './arbitrary.ts';

const pairs = fc
  .record({
    gauge: gauges,
    side: fc.integer({ min: 4, max: 30 }),
    across: fc.integer({ min: 24, max: 120 }),
    depth: fc.integer({ min: 140, max: 300 }),
    share: fc.double({ min: 0.3, max: 0.98, noNaN: true }),
    shape: fc.constantFrom('round' as const, 'V' as const),
  })
  .map(({ gauge, side, across, depth, share, shape }): { hole: Armhole; round: Neck } | undefined => {
    const [high, crossBack] = [cm(depth / 10), stitches(across)];
    const hole = armhole({ bust: stitches(across + 2 * side), crossBack, depth: high, gauge });
    const width = cm(across / 3 / gauge.stitches.perCm);
    const round = neck({ stitches: crossBack, width, depth: cm(high * share), gauge, shape });
    return hole.kind === 'armhole' && round.kind === 'neck' ? { hole, round } : undefined;
  })
  .filter((pair) => pair !== undefined);

describe('a neck that begins within the armholes', () => {
  it('leaves each side with the shoulder, on every row that either of them shapes', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(pairs, ({ hole, round }) => {
        const met = neckInArmhole(hole, round);
        kinds.add(met?.kind ?? 'apart');
        const begins = hole.rows - round.rows;
        if (met === undefined) expect(begins).toBeGreaterThanOrEqual(hole.events.at(-1)?.row ?? 0);
        else if (met.kind === 'neck too low') {
          expect(begins).toBeLessThan(2 * hole.bindOffs.length);
          expect(hole.rows - met.most).toBe(2 * hole.bindOffs.length);
        } else {
          expect(met.begins).toBe(begins);
          const below = hole.events.filter(({ row }) => row <= begins);
          expect(knitEdges(hole.bust, below, begins).count).toBe(met.across);
          expect(2 * met.each + round.centre).toBe(met.across);
          for (const [name, side] of Object.entries(met.sides)) {
            const edge = name === 'first' ? 'right' : 'left';
            const dividing: Event[] =
              met.atEdges === 0
                ? []
                : [{ row: 1, edge, by: 'decrease', change: -met.atEdges, after: side.from }];
            const knitted = knitEdges(met.each, [...dividing, ...side.events], round.rows);
            expect(knitted.count).toBe(round.shoulder);
            expect(new Set(knitted.heights)).toEqual(new Set([round.rows]));
          }
        }
      }),
      { numRuns: 200 },
    );
    expect([...kinds].sort()).toEqual(['apart', 'neck in the armhole', 'neck too low']);
  });
});
