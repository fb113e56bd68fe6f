import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settle, type Wanted } from '../../src/present/draw/settle.ts';

const labels = fc
  .array(
    fc.record({
      middle: fc.double({ min: 0, max: 300, noNaN: true }),
      length: fc.integer({ min: 10, max: 60 }),
    }),
    {
      minLength: 1,
      maxLength: 9,
    },
  )
  .map((all) => all.sort((a, b) => a.middle - b.middle));

function moved(all: readonly Wanted[], at: readonly number[]): number {
  return all.reduce((sum, l, i) => sum + ((at[i] ?? 0) - l.middle) ** 2, 0);
}

describe('labels along a line', () => {
  it('keep their order and their gap', () => {
    fc.assert(
      fc.property(labels, (all) => {
        const at = settle(all, 5);
        expect(at).toHaveLength(all.length);
        all.slice(1).forEach((label, i) => {
          const apart = (at[i + 1] ?? 0) - (at[i] ?? 0);
          expect(apart).toBeGreaterThanOrEqual((label.length + (all[i]?.length ?? 0)) / 2 + 5 - 1e-9);
        });
      }),
    );
  });

  it('stay where they want to be when they have the room', () => {
    const all = [20, 100, 250].map((middle) => ({ middle, length: 30 }));
    expect(settle(all, 5)).toEqual([20, 100, 250]);
  });

  it('move no farther than any other arrangement with the same gaps would', () => {
    fc.assert(
      fc.property(
        labels,
        fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 9, maxLength: 9 }),
        (all, more) => {
          const best = moved(all, settle(all, 5));
          // Another arrangement: begun somewhere else, each further label pushed on by something.
          let at = (settle(all, 5)[0] ?? 0) + (more.at(-1) ?? 0) - 20;
          const other = all.map((label, i) => {
            const before = all[i - 1];
            if (before !== undefined) at += (before.length + label.length) / 2 + 5 + (more[i] ?? 0);
            return at;
          });
          expect(moved(all, other)).toBeGreaterThanOrEqual(best - 1e-6);
        },
      ),
    );
  });
});
