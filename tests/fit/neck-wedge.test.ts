import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type NeckWedgeAsk, neckWedge } from '../../src/fit/neck-wedge.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const ask: NeckWedgeAsk = {
  purpose: 'back neck raise',
  depth: cm(3),
  gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
  worked: 'round',
  direction: 'down',
  needle: stitches(120),
  centre: 0,
  base: cm(44),
  middle: cm(30),
  after: rows(0),
};

const asks = fc
  .record({
    depth: fc.double({ min: 1, max: 8, noNaN: true }),
    base: fc.double({ min: 5, max: 60, noNaN: true }),
    share: fc.double({ min: 0, max: 1.1, noNaN: true }),
    needle: fc.integer({ min: 60, max: 200 }),
    centre: fc.double({ min: 0.3, max: 0.7, noNaN: true }),
    atJoin: fc.boolean(),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    direction: fc.constantFrom('up' as const, 'down' as const),
  })
  .map(
    (r): NeckWedgeAsk => ({
      ...ask,
      depth: cm(r.depth),
      worked: r.worked,
      direction: r.direction,
      needle: stitches(r.needle),
      centre: r.worked === 'round' && r.atJoin ? 0 : Math.round(r.centre * r.needle),
      base: cm(r.base),
      middle: cm(r.base * r.share),
    }),
  );

describe('a wedge at the back of the neck', () => {
  it('raises the centre back by its rows above the front, wherever the round begins', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = neckWedge(any);
        if (found.kind !== 'wedge') return;
        const { heights } = knitWedge(Needle.castOn(any.needle, any.worked), found);
        const front = any.worked === 'round' ? (any.centre + Math.floor(any.needle / 2)) % any.needle : 0;
        expect((heights[any.centre] ?? 0) - (heights[front] ?? 0)).toBe(found.rows);
        expect(Math.max(...heights) - Math.min(...heights)).toBe(found.rows);
      }),
      { numRuns: 1000 },
    );
  });

  it('has its turns counted from the centre, from half the middle width to half the base', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = neckWedge(any);
        if (found.kind !== 'wedge') return;
        const outermost = Math.max(...found.turns.map((turn) => turn.stitches));
        expect(Math.abs(outermost - any.base)).toBeLessThanOrEqual(1);
        if (found.turns.length < 4 || any.middle < 0.5) return;
        const innermost = Math.min(...found.turns.map((turn) => turn.stitches));
        expect(Math.abs(innermost - any.middle)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 1000 },
    );
  });

  it('shows its figures in workings that evaluate to them', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = neckWedge(any);
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = found.workings.map((line) => line.result.value);
        if (found.kind === 'wedge')
          expect(told).toEqual(expect.arrayContaining(found.turns.map((turn) => turn.stitches)));
        if (found.kind === 'no room')
          expect(told).toEqual(expect.arrayContaining([found.needed, found.available]));
      }),
      { numRuns: 500 },
    );
  });

  it('is the same wedge whether the back is raised or the front lowered', () => {
    const raised = neckWedge(ask);
    const lowered = neckWedge({ ...ask, purpose: 'lower front neck' });
    expect({ ...lowered, purpose: 'back neck raise' }).toEqual(raised);
  });

  it('lengthens from the neck down and shortens on the way up to it', () => {
    expect(neckWedge(ask)).toMatchObject({ order: 'lengthening', place: { point: 'begins' } });
    expect(neckWedge({ ...ask, direction: 'up' })).toMatchObject({
      order: 'shortening',
      place: { point: 'is complete' },
    });
  });

  it('wider than the piece comes as the widest that leaves a stitch outside each turn', () => {
    const found = neckWedge({ ...ask, base: cm(62) });
    if (found.kind !== 'no room') throw new Error(found.kind);
    expect([found.needed, found.available]).toEqual([124, 118]);
    expect(found.alternatives.map((a) => a.way)).toEqual(['widest base']);
  });

  it('with a middle wider than its base comes with turns up to the centre', () => {
    const found = neckWedge({ ...ask, middle: cm(50) });
    if (found.kind !== 'no room') throw new Error(found.kind);
    expect([found.needed, found.available]).toEqual([100, 88]);
    expect(found.alternatives.map((a) => a.way)).toEqual(['narrower middle']);
  });
});
