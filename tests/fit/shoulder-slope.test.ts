import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type ShoulderAsk, type ShoulderSlope, shoulderSlope } from '../../src/fit/shoulder-slope.ts';
import { cm, perCm, stitches } from '../../src/fit/units.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const ask: ShoulderAsk = {
  how: 'short rows',
  direction: 'up',
  drop: cm(2.5),
  gauge: { stitchesPerCm: perCm(2.2), rowsPerCm: perCm(3) },
  shoulder: stitches(27),
  on: { sides: 'both', neck: stitches(36) },
};

const asks = fc
  .record({
    how: fc.constantFrom('short rows' as const, 'bind-offs' as const),
    direction: fc.constantFrom('up' as const, 'down' as const),
    drop: fc.double({ min: 0, max: 8, noNaN: true }),
    rowsPerCm: fc.double({ min: 1, max: 6, noNaN: true }),
    shoulder: fc.integer({ min: 1, max: 70 }),
    neck: fc.integer({ min: 0, max: 80 }),
    sides: fc.constantFrom('both' as const, 'start' as const, 'end' as const),
    larger: fc.constantFrom('outermost' as const, 'innermost' as const),
  })
  .map(
    (r): ShoulderAsk => ({
      how: r.how,
      direction: r.direction,
      drop: cm(r.drop),
      gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(r.rowsPerCm) },
      shoulder: stitches(r.shoulder),
      on: r.sides === 'both' ? { sides: 'both', neck: stitches(r.neck) } : { sides: r.sides },
      larger: r.larger,
    }),
  );

const needleFor = ({ on, shoulder }: ShoulderAsk) =>
  on.sides === 'both' ? 2 * shoulder + on.neck : shoulder;

function isSlope(found: ReturnType<typeof shoulderSlope>): found is ShoulderSlope {
  return found.kind === 'short-row shoulder' || found.kind === 'stepped shoulder';
}

/** Height of each step, outermost first, over the outermost: as it was bound off, or by short rows. */
function stepHeights(any: ShoulderAsk, slope: ShoulderSlope): number[] {
  if (slope.kind === 'short-row shoulder') {
    const { heights } = knitWedge(Needle.castOn(needleFor(any), 'flat'), slope.wedge);
    const fromEdge = any.on.sides === 'start' ? heights : [...heights].reverse();
    const least = Math.min(...heights);
    return slope.steps.map((step, i) => {
      const inner = any.shoulder - (slope.remaining[i] ?? Number.NaN);
      const heightsOfStep = new Set(fromEdge.slice(inner - step, inner).map((height) => height - least));
      expect(heightsOfStep.size).toBe(1);
      return [...heightsOfStep][0] ?? Number.NaN;
    });
  }
  const needle = Needle.castOn(needleFor(any), 'flat');
  const first = slope.bindOffs[0]?.side;
  if (first === 'end') needle.finish();
  let row = 1;
  for (const off of slope.bindOffs) {
    for (; row < off.row; row++) needle.finish();
    expect(needle.next.side).toBe(off.side === 'start' ? 'right side' : 'wrong side');
    needle.bindOff(off.stitches);
  }
  const offs = needle.boundOff.filter((off) => off.at === first);
  const least = offs[0]?.heights[0] ?? Number.NaN;
  return offs.map((off) => (off.heights[0] ?? Number.NaN) - least);
}

describe('a shoulder slope', () => {
  it('rises two rows a step, by short rows as by bind-offs', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = shoulderSlope(any);
        if (!isSlope(found)) return;
        expect(stepHeights(any, found)).toEqual(found.steps.map((_, i) => 2 * i));
      }),
      { numRuns: 1000 },
    );
  });

  it('uses up the shoulder exactly, in one step for every two rows of the drop, the steps within one stitch', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = shoulderSlope(any);
        if (!isSlope(found)) return;
        expect(found.steps.reduce((sum, n) => sum + n, 0)).toBe(any.shoulder);
        expect(found.remaining.at(-1)).toBe(0);
        expect(2 * found.steps.length).toBe(found.rows);
        expect(Math.max(...found.steps) - Math.min(...found.steps)).toBeLessThanOrEqual(1);
        expect(Math.abs(found.drop - any.drop) * any.gauge.rowsPerCm).toBeLessThanOrEqual(1 + 1e-9);
        const sign = any.larger === 'outermost' ? -1 : 1;
        expect(found.steps).toEqual(found.steps.toSorted((a, b) => sign * (a - b)));
      }),
      { numRuns: 1000 },
    );
  });

  it('leaves the neck alone: it is as high as the innermost step', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = shoulderSlope(any);
        if (found.kind !== 'short-row shoulder' || any.on.sides !== 'both') return;
        const { heights } = knitWedge(Needle.castOn(needleFor(any), 'flat'), found.wedge);
        const within = heights.slice(any.shoulder - 1, any.shoulder + any.on.neck + 1);
        expect(new Set(within).size).toBe(1);
      }),
      { numRuns: 500 },
    );
  });

  it('shortens bottom-up, where the slope comes last, and lengthens top-down', () => {
    expect(shoulderSlope(ask)).toMatchObject({ wedge: { order: 'shortening' } });
    expect(shoulderSlope({ ...ask, direction: 'down' })).toMatchObject({ wedge: { order: 'lengthening' } });
  });

  it('shows its figures in workings that evaluate to them, and survives being written to JSON', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = shoulderSlope(any);
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
        if (!isSlope(found)) return;
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = found.workings.map((line) => line.result.value);
        expect(told).toEqual(
          expect.arrayContaining([found.rows, found.drop, ...found.steps, ...found.remaining]),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('with nothing to bind off top-down comes as short rows', () => {
    const found = shoulderSlope({ ...ask, how: 'bind-offs', direction: 'down' });
    if (found.kind !== 'nothing to bind off') throw new Error(found.kind);
    expect(found.alternatives).toMatchObject([{ way: 'short rows', slope: { kind: 'short-row shoulder' } }]);
  });

  it('too flat for two steps comes in two steps or straight across', () => {
    const found = shoulderSlope({ ...ask, drop: cm(0.5) });
    if (found.kind !== 'too flat') throw new Error(found.kind);
    expect(found.alternatives).toMatchObject([
      { way: 'two steps', slope: { steps: [14, 13] } },
      { way: 'straight across', slope: null },
    ]);
  });

  it('too steep comes with a step for each stitch', () => {
    const found = shoulderSlope({ ...ask, drop: cm(8), shoulder: stitches(7) });
    if (found.kind !== 'too many steps') throw new Error(found.kind);
    expect([found.asked, found.most]).toEqual([12, 7]);
    expect(found.alternatives).toMatchObject([{ way: 'a step for each stitch', slope: { rows: 14 } }]);
  });
});
