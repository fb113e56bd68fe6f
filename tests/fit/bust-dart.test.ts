import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BustDartAsk, bustDart } from '../../src/fit/bust-dart.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, perCm, stitches } from '../../src/fit/units.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const ask: BustDartAsk = {
  depth: { from: 'lengths', front: cm(45), back: cm(40) },
  gauge: { stitchesPerCm: perCm(2.2), rowsPerCm: perCm(3) },
  worked: 'round',
  direction: 'up',
  sides: 'both',
  needle: stitches(210),
  front: { start: 0, stitches: stitches(105) },
  bustSpan: cm(19),
};

const asks = fc
  .record({
    extra: fc.double({ min: -3, max: 12, noNaN: true }),
    stitchesPerCm: fc.double({ min: 0.8, max: 4.5, noNaN: true }),
    rowsPerCm: fc.double({ min: 1, max: 6, noNaN: true }),
    width: fc.double({ min: 30, max: 80, noNaN: true }),
    bustSpan: fc.double({ min: 14, max: 28, noNaN: true }),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    direction: fc.constantFrom('up' as const, 'down' as const),
    cardigan: fc.constantFrom('both' as const, 'start' as const, 'end' as const),
    offset: fc.integer({ min: 0, max: 400 }),
  })
  .map((r): BustDartAsk => {
    const sides = r.worked === 'flat' ? r.cardigan : 'both';
    const whole = Math.round(r.width * r.stitchesPerCm);
    const front = sides === 'both' ? whole : Math.round(whole / 2);
    const needle = r.worked === 'round' ? 2 * whole : front;
    const start = r.worked === 'round' ? r.offset % needle : 0;
    return {
      depth: { from: 'lengths', front: cm(40 + r.extra), back: cm(40) },
      gauge: { stitchesPerCm: perCm(r.stitchesPerCm), rowsPerCm: perCm(r.rowsPerCm) },
      worked: r.worked,
      direction: r.direction,
      sides,
      needle: stitches(needle),
      front: { start, stitches: stitches(front) },
      bustSpan: cm(r.bustSpan),
    };
  });

describe('a bust dart', () => {
  it('keeps a stitch beside its outermost turn, however wide the stitches are', () => {
    const wide = { stitchesPerCm: perCm(0.1), rowsPerCm: perCm(3) };
    const found = bustDart({ ...ask, gauge: wide });
    // 2.5 cm of clearance are a quarter of a stitch.
    expect(found.workings.find(({ label }) => label.startsWith('first turn'))?.result.value).toBe(1);
    expect(found.kind).toBe('bust dart');
  });

  it('adds to the front what it is longer than the back, and nothing to the back', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = bustDart(any);
        if (found.kind !== 'bust dart') return;
        const { wedge } = found;
        const { heights } = knitWedge(Needle.castOn(any.needle, any.worked), wedge);
        const grown = Math.max(...heights) - Math.min(...heights);
        expect(grown).toBe(wedge.rows);
        const wanted = any.depth.from === 'lengths' ? any.depth.front - any.depth.back : Number.NaN;
        expect(Math.abs(grown / any.gauge.rowsPerCm - wanted)).toBeLessThanOrEqual(
          1 / any.gauge.rowsPerCm + 1e-9,
        );
        if (any.worked === 'flat') return;
        const behind = (i: number) => (i - any.front.start + any.needle) % any.needle >= any.front.stitches;
        expect(new Set(heights.filter((_, i) => behind(i))).size).toBe(1);
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps its first turn 2.5 cm from the side and its last 2.5 cm outside the bust point, to the stitch', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = bustDart(any);
        if (found.kind !== 'bust dart' || found.wedge.rows < 4) return;
        const { turns } = found.wedge;
        const stitch = 1 / any.gauge.stitchesPerCm;
        const front = any.front.stitches * stitch * (any.sides === 'both' ? 1 : 2);
        const point = (front - any.bustSpan) / 2;
        const distance = (turn: (typeof turns)[number] | undefined) =>
          (turn?.stitches ?? Number.NaN) * stitch;
        expect(Math.abs(distance(turns[0]) - 2.5)).toBeLessThanOrEqual(stitch / 2 + 1e-9);
        expect(Math.abs(distance(turns.at(-1)) - (point - 2.5))).toBeLessThanOrEqual(stitch + 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  it('shows its figures in workings that evaluate to them, and survives being written to JSON', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = bustDart(any);
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
        const told = found.workings.map((line) => line.result.value);
        if (found.kind === 'bust dart')
          expect(told).toEqual(expect.arrayContaining(found.wedge.turns.map((turn) => turn.stitches)));
        if (found.kind === 'no room') expect(told).toContain(found.needed);
      }),
      { numRuns: 500 },
    );
  });

  it('is complete where the bust point is reached bottom-up, and begins there top-down', () => {
    const up = bustDart(ask);
    const down = bustDart({ ...ask, direction: 'down' });
    if (up.kind !== 'bust dart' || down.kind !== 'bust dart') throw new Error('no dart');
    expect(up.wedge.place).toEqual({ level: 'bust', rows: 0, point: 'is complete' });
    expect(down.wedge.place).toEqual({ level: 'bust', rows: 0, point: 'begins' });
  });

  it('is not needed where the front is no longer than the back', () => {
    expect(bustDart({ ...ask, depth: { from: 'lengths', front: cm(40), back: cm(40.5) } })).toMatchObject({
      kind: 'not needed',
      depth: -0.5,
    });
  });

  it('comes from girths by a rule of thumb that says so, with its range', () => {
    const found = bustDart({ ...ask, depth: { from: 'girths', bust: cm(104), upperBust: cm(94) } });
    if (found.kind !== 'bust dart') throw new Error(found.kind);
    expect(found.thumb?.low).toBeCloseTo(0.75 * 4.92, 9);
    expect(found.thumb?.high).toBeCloseTo(4.92, 9);
    expect(found.wedge.asked).toBeCloseTo(0.875 * 4.92, 9);
  });

  it('with no room outside the bust points says how many stitches it needs, and turns closer where that fits', () => {
    const found = bustDart({ ...ask, front: { start: 0, stitches: stitches(60) } });
    if (found.kind !== 'no room') throw new Error(found.kind);
    // (19 + 2 × 2.5) cm × 2.2 = 52.8 → 53 stitches, and 2.5 cm × 2.2 = 5.5 → 6 at each side.
    expect([found.needed, found.available]).toEqual([65, 60]);
    expect(found.alternatives).toEqual([]);
    const shallow = bustDart({
      ...ask,
      depth: { from: 'lengths', front: cm(42), back: cm(40) },
      front: { start: 0, stitches: stitches(60) },
    });
    if (shallow.kind !== 'no room') throw new Error(shallow.kind);
    expect(shallow.alternatives.map((a) => [a.way, a.wedges.map((w) => w.rows)])).toEqual([
      ['closer turns', [6]],
    ]);
  });
});
