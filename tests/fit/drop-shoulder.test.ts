import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DropShoulderAsk, dropShoulder } from '../../src/fit/drop-shoulder.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { ANY_COUNT } from '../../src/fit/gauge.ts';
import { cm } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

const asks: fc.Arbitrary<DropShoulderAsk> = fc
  .record({
    depth: fc.double({ min: 8, max: 32, noNaN: true }),
    back: fc.double({ min: 30, max: 80, noNaN: true }),
    crossBack: fc.double({ min: 24, max: 50, noNaN: true }),
    upperArm: fc.double({ min: 18, max: 60, noNaN: true }),
    sts: fc.integer({ min: 8, max: 36 }),
    rows: fc.integer({ min: 10, max: 50 }),
    edge: fc.constantFrom(0, 2),
    parity: fc.constantFrom('any' as const, 'even' as const, 'odd' as const),
  })
  .map((a) => ({
    depth: cm(a.depth),
    back: cm(a.back),
    crossBack: cm(a.crossBack),
    upperArm: cm(a.upperArm),
    body: over10cm(a.sts, a.rows),
    sleeve: over10cm(a.sts, a.rows, 'round'),
    rule: { ...ANY_COUNT, edge: a.edge, parity: a.parity },
  }));

describe('a drop shoulder', () => {
  it('gives a sleeve top twice as wide as the armhole is deep, to the nearest count', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const made = dropShoulder(ask);
        const shoulder = made.kind === 'drop shoulder' ? made : made.alternatives[0]?.shoulder;
        if (shoulder === undefined) throw new Error('a deeper armhole is always possible');
        const step = ask.rule.parity === 'any' ? 1 : 2;
        const off = shoulder.top - ask.rule.edge - 2 * shoulder.depth * ask.sleeve.stitches.perCm;
        expect(Math.abs(off)).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(shoulder.armholeRows % 2).toBe(0);
        expect(shoulder.topWidth).toBeGreaterThanOrEqual(ask.upperArm - 1e-9);
        for (const line of shoulder.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
      }),
    );
  });

  it('refuses an armhole whose sleeve is narrower than the arm, and deepens it by no pair of rows too many', () => {
    let refused = 0;
    fc.assert(
      fc.property(asks, (ask) => {
        const made = dropShoulder(ask);
        if (made.kind === 'drop shoulder') return;
        refused += 1;
        expect(made.top).toBeLessThan(made.upperArm);
        const depth = made.alternatives[0]?.shoulder.depth ?? cm(0);
        const shallower = cm(depth - 2 / ask.body.rows.perCm);
        expect(dropShoulder({ ...ask, depth }).kind).toBe('drop shoulder');
        expect(dropShoulder({ ...ask, depth: shallower }).kind).toBe('armhole narrower than the arm');
      }),
      { numRuns: 500 },
    );
    expect(refused).toBeGreaterThan(50);
  });

  it('hangs over the arm by half of what the back is wider than the cross back', () => {
    const made = dropShoulder({
      depth: cm(22),
      back: cm(60),
      crossBack: cm(38),
      upperArm: cm(36),
      body: over10cm(20, 28),
      sleeve: over10cm(20, 28),
      rule: ANY_COUNT,
    });
    if (made.kind !== 'drop shoulder') throw new Error(made.kind);
    expect(made.overhang).toBe(11);
  });
});
