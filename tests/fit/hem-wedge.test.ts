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

describe('a hem whose full depth is wider than the stitches that it lies across', () => {
  const wide = (middle: number, depth = 5) => hemWedge({ ...ask, middle: cm(middle), depth: cm(depth) });

  it('has no room, and is offered with a middle as narrow as its turns allow', () => {
    // 50.5 cm at 2 to the centimetre are 101 stitches, of 100 between the sides.
    const found = wide(50.5);
    if (found.kind !== 'no room') throw new Error(found.kind);
    expect([found.needed, found.available]).toEqual([101, 100]);
    expect(found.workings.map(({ label, result }) => [label, result.value])).toEqual([
      ['stitches of the full depth', 101],
    ]);
    const [only, ...others] = found.alternatives;
    expect(only?.wedges[0]?.markers.map(({ name }) => name)).toEqual(['start', 'end']);
    expect([only?.way, only?.wedges.length, others]).toEqual(['narrower middle', 1, []]);
    // 5 cm are 14 rows: seven turns at each side.
    expect(only?.wedges[0]).toMatchObject({ kind: 'wedge', rows: 14, asked: 5 });
  });

  it('is offered nothing where even that has too many turns', () => {
    // 50 cm are 140 rows: 70 turns at each side of 100 stitches.
    expect(wide(50.5, 50)).toMatchObject({ kind: 'no room', alternatives: [] });
  });

  it('is not without room while the stitches are just enough', () => {
    expect(wide(50).kind).not.toBe('no room');
  });
});

describe('a hem that dips all round', () => {
  const around = (worked: 'flat' | 'round') =>
    hemWedge({ ...ask, worked, over: { across: 'all round', deepest: 130 }, needle: stitches(201) });

  it('is nothing half a round from where it is deepest, an odd stitch on the end side', () => {
    const found = around('round');
    if (found.kind !== 'wedge') throw new Error(found.kind);
    // What crosses the join is counted before it: 130 − 201.
    expect(found.markers).toEqual([{ name: 'centre', at: 130 - 201 }]);
    const reach = found.turns.map(({ at }) => at - (130 - 201));
    expect([Math.min(...reach) > -100, Math.max(...reach) < 101]).toEqual([true, true]);
  });

  it('runs from edge to edge of a flat piece', () => {
    const found = around('flat');
    if (found.kind !== 'wedge') throw new Error(found.kind);
    expect(found.markers).toEqual([{ name: 'centre', at: 100 }]);
    expect(found.turns.every(({ at }) => at > 0 && at < 201)).toBe(true);
  });
});
