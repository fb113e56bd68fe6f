/**
 * The set-in cap held against an integer program at the sizes that are knitted, where writing out every schedule is out
 * of reach. With n_p slow decreases of p pairs of rows each, the edge is a plain sum, so that a general solver finds the
 * nearest, the shortest and the longest edge there is.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CapAsk, cap } from '../../src/fit/cap.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from '../fit/at-gauge.ts';
import { type Constraint, must, type Program, type Solved, solve, type Terms } from './solver.ts';

interface Case {
  readonly ask: CapAsk;
  readonly top: number;
  readonly pairs: number;
}

/** Sleeves of children to large adults in thick to fine yarn, into armholes from too tight to too long. */
const cases: fc.Arbitrary<Case> = fc
  .record({
    loss: fc.integer({ min: 6, max: 34 }),
    bindOff: fc.integer({ min: 1, max: 10 }),
    top: fc.integer({ min: 6, max: 30 }),
    pairs: fc.integer({ min: 10, max: 44 }),
    stretch: fc.double({ min: 0.95, max: 1.75, noNaN: true }),
    sts: fc.integer({ min: 10, max: 34 }),
    ratio: fc.double({ min: 1.2, max: 1.6, noNaN: true }),
  })
  .map(({ loss, bindOff, top, pairs, stretch, sts, ratio }) => {
    const gauge = over10cm(sts, Math.round(sts * ratio));
    const upperArm = 2 * (loss + bindOff) + top;
    const edge = cm((upperArm / gauge.stitches.perCm / 2) * stretch);
    const ask: CapAsk = {
      upperArm: stitches(upperArm),
      armhole: { front: edge, back: edge },
      // A little over whole pairs, so that no rounding decides.
      depth: cm((2 * pairs + 0.5) / gauge.rows.perCm),
      bindOff: stitches(bindOff),
      gauge,
      top: stitches(top),
    };
    return { ask, top, pairs };
  });

function slope({ gauge }: CapAsk, across: number, up: number): number {
  return Math.hypot(across / gauge.stitches.perCm, up / gauge.rows.perCm);
}

/** Intervals of a slow decrease, in pairs of rows: after single fast steps they are slower than those. */
function intervals({ pairs }: Case, step: number): readonly number[] {
  const least = step === 1 ? 2 : 1;
  return Array.from({ length: Math.max(0, pairs - least + 1) }, (_, i) => least + i);
}

/** Fast steps of `step` stitches, then slow decreases whose intervals differ by a pair at most, within the rows. */
function knittable(given: Case, step: number): readonly Constraint[] {
  const { ask, top, pairs } = given;
  const loss = (ask.upperArm - top) / 2 - ask.bindOff;
  const all = intervals(given, step);
  const sum = (of: string, factor: (p: number) => number): Terms =>
    Object.fromEntries(all.map((p) => [`${of}${p}`, factor(p)]));
  return [
    must({ fast: 1 }, '>=', 2),
    must(
      sum('n', () => 1),
      '>=',
      1,
    ),
    must({ fast: step, ...sum('n', () => 1) }, '=', loss),
    must({ fast: 1, ...sum('n', (p) => p) }, '<=', pairs - 1),
    must(
      sum('z', () => 1),
      '=',
      1,
    ),
    ...all.map((p) =>
      must(
        { [`n${p}`]: 1, [`z${p}`]: -loss, ...(all.includes(p - 1) ? { [`z${p - 1}`]: -loss } : {}) },
        '<=',
        0,
      ),
    ),
  ];
}

/** The edge in centimetres: what the solver may change, and what stands. */
function edgeOf(given: Case, step: number): { readonly sum: Terms; readonly fixed: number } {
  const { ask, top } = given;
  const slow = intervals(given, step).map((p) => [`n${p}`, 2 * slope(ask, 1, 2 * p)]);
  const fixed = 2 * (slope(ask, ask.bindOff, 0) + slope(ask, 0, 2)) + slope(ask, top, 0);
  return { sum: { fast: 2 * slope(ask, step, 2), ...Object.fromEntries(slow) }, fixed };
}

function whole(given: Case, step: number): string[] {
  return ['fast', ...intervals(given, step).flatMap((p) => [`n${p}`, `z${p}`])];
}

/** How near the edge can come to the armhole's; its least, or its greatest length. */
function best(given: Case, aim: 'nearest' | 'shortest' | 'longest'): number | null {
  const found = [1, 2, 3].flatMap((step) => {
    if (intervals(given, step).length === 0) return [];
    const { sum, fixed } = edgeOf(given, step);
    const wanted = given.ask.armhole.front + given.ask.armhole.back - fixed;
    const off = [must({ ...sum, off: -1 }, '<=', wanted), must({ ...sum, off: 1 }, '>=', wanted)];
    const program: Program = {
      aim: aim === 'longest' ? 'most' : 'least',
      of: aim === 'nearest' ? { off: 1 } : sum,
      where: [...knittable(given, step), ...(aim === 'nearest' ? off : [])],
      whole: whole(given, step),
    };
    const solved: Solved = solve(program);
    return solved.kind === 'none' ? [] : [solved.value + (aim === 'nearest' ? 0 : fixed)];
  });
  if (found.length === 0) return null;
  return aim === 'longest' ? Math.max(...found) : Math.min(...found);
}

describe('a cap, beside a general integer solver', () => {
  it('is found exactly where the solver finds one, and what it says of the edges is the solver’s own', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(cases, (given) => {
        const made = cap(given.ask);
        met.set(made.kind, (met.get(made.kind) ?? 0) + 1);
        const off = best(given, 'nearest');
        const row = 1 / given.ask.gauge.rows.perCm;
        if (off === null) {
          expect(made.kind).toBe('armhole too shallow');
          return;
        }
        // A tie to a millionth of a centimetre could fall on either side.
        if (Math.abs(off - row) < 1e-6) return;
        expect(made.kind === 'cap').toBe(off < row);
        if (made.kind === 'cap') expect(Math.abs(made.difference)).toBeGreaterThanOrEqual(off - 1e-6);
        if (made.kind === 'no whole rows agree')
          expect(Math.abs(made.nearest - made.wanted)).toBeCloseTo(off, 5);
        if (made.kind === 'armhole edge too short')
          expect(made.shortest).toBeCloseTo(best(given, 'shortest') ?? Number.NaN, 5);
        if (made.kind === 'armhole edge too long')
          expect(made.longest).toBeCloseTo(best(given, 'longest') ?? Number.NaN, 5);
      }),
      { numRuns: 80 },
    );
    for (const kind of ['cap', 'armhole edge too short', 'armhole edge too long'])
      expect([kind, (met.get(kind) ?? 0) > 0]).toEqual([kind, true]);
  });
});
