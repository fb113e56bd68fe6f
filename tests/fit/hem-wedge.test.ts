import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type HemAsk, hemWedge } from '../../src/fit/hem-wedge.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const ask: HemAsk = {
  depth: cm(5),
  gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2.8) },
  worked: 'round',
  direction: 'up',
  edging: rows(16),
  needle: stitches(200),
  over: { across: 'between the sides', start: 100, stitches: stitches(100) },
  middle: cm(0),
};

const asks = fc
  .record({
    depth: fc.double({ min: 1, max: 12, noNaN: true }),
    needle: fc.integer({ min: 80, max: 300 }),
    start: fc.double({ min: 0, max: 1, noNaN: true }),
    middle: fc.double({ min: 0, max: 20, noNaN: true }),
    around: fc.boolean(),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    direction: fc.constantFrom('up' as const, 'down' as const),
  })
  .map((r): HemAsk => {
    const half = Math.floor(r.needle / 2);
    const start = Math.floor(r.start * (r.worked === 'round' ? r.needle - 1 : r.needle - half));
    return {
      ...ask,
      depth: cm(r.depth),
      worked: r.worked,
      direction: r.direction,
      needle: stitches(r.needle),
      over: r.around
        ? { across: 'all round', deepest: r.worked === 'round' ? start : half }
        : { across: 'between the sides', start, stitches: stitches(half) },
      middle: cm(r.middle),
    };
  });

describe('a hem that dips', () => {
  it('is deeper by its rows in the middle and by nothing at the other side', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = hemWedge(any);
        if (found.kind !== 'wedge') return;
        const { heights } = knitWedge(Needle.castOn(any.needle, any.worked), found);
        const { over, needle } = any;
        const middle =
          over.across === 'all round' ? over.deepest : over.start + Math.floor(over.stitches / 2);
        const opposite = any.worked === 'flat' ? 0 : (middle + Math.floor(needle / 2)) % needle;
        expect(heights[middle % needle]).toBe(Math.max(...heights));
        expect(heights[opposite]).toBe(Math.min(...heights));
        expect(Math.max(...heights) - Math.min(...heights)).toBe(found.rows);
      }),
      { numRuns: 1000 },
    );
  });

  it('divides the whole of its base between the turns, all round as well as across the back', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = hemWedge(any);
        if (found.kind !== 'wedge') return;
        const base = any.over.across === 'all round' ? any.needle : any.over.stitches;
        expect(2 * found.steps.reduce((sum, n) => sum + n, 0) + found.flat).toBe(base);
      }),
      { numRuns: 500 },
    );
  });

  it('shows its figures in workings that evaluate to them', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = hemWedge(any);
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = found.workings.map((line) => line.result.value);
        if (found.kind === 'wedge')
          expect(told).toEqual(expect.arrayContaining(found.turns.map((turn) => turn.stitches)));
      }),
      { numRuns: 500 },
    );
  });

  it('comes after the edging bottom-up and before it top-down', () => {
    expect(hemWedge(ask)).toMatchObject({
      place: { level: 'hem', rows: 16, point: 'begins' },
      order: 'lengthening',
    });
    expect(hemWedge({ ...ask, direction: 'down' })).toMatchObject({
      place: { level: 'hem', rows: -16, point: 'is complete' },
      order: 'shortening',
    });
  });

  it('with a middle wider than the back says so', () => {
    expect(hemWedge({ ...ask, middle: cm(51) })).toMatchObject({
      kind: 'no room',
      needed: 102,
      available: 100,
    });
  });
});
