import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { extraRowsAt, layWedge } from '../../src/fit/wedge.ts';
import { checkAsk, mostTurns, turnsOf, type WedgeAsk } from '../../src/fit/wedge-base.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const small = fc
  .record({
    order: fc.constantFrom('shortening' as const, 'lengthening' as const),
    depth: fc.integer({ min: 1, max: 3 }),
    needle: fc.integer({ min: 2, max: 7 }),
    start: fc.integer({ min: 0, max: 6 }),
    span: fc.integer({ min: 2, max: 7 }),
    inset: fc.integer({ min: 0, max: 2 }),
    flat: fc.integer({ min: 0, max: 7 }),
    outer: fc.constantFrom('turn' as const, 'step' as const),
    counted: fc.constantFrom('from the sides' as const, 'from the centre' as const),
  })
  .map(
    (r): WedgeAsk => ({
      ...r,
      purpose: 'hem',
      place: { level: 'hem', rows: rows(0), point: 'begins' },
      worked: 'round',
      sides: 'both',
      // Two rows to a centimetre: so many turns as the depth.
      depth: cm(r.depth),
      gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2) },
      needle: stitches(r.needle),
      span: { start: r.start % r.needle, stitches: stitches(Math.min(r.span, r.needle)) },
      inset: stitches(r.inset),
      flat: stitches(r.flat),
    }),
  );

function fitsNeedle(ask: WedgeAsk): boolean {
  try {
    checkAsk(ask);
    return true;
  } catch {
    return false;
  }
}

describe('a wedge in a round of up to seven stitches, across, up to and from the join', () => {
  it('grows in every stitch by the rows that the engine says', () => {
    let knitted = 0;
    fc.assert(
      fc.property(small, (ask) => {
        fc.pre(fitsNeedle(ask) && turnsOf(ask) <= mostTurns(ask));
        knitted += 1;
        const wedge = layWedge(ask);
        if (wedge.kind !== 'wedge') throw new Error(wedge.kind);
        const { heights } = knitWedge(Needle.castOn(ask.needle, 'round'), wedge);
        const grown = heights.map((height) => height - wedge.closing.ordinaryRows);
        expect(grown).toEqual(Array.from({ length: ask.needle }, (_, i) => extraRowsAt(wedge, i)));
      }),
      { numRuns: 2_000, maxSkipsPerRun: 200 },
    );
    expect(knitted).toBeGreaterThan(1_000);
  });
});
