import { describe, expect, it } from 'vitest';
import { changeDepth, type DropAsk, type SetInAsk } from '../../src/fit/armhole-depth.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { ANY_COUNT } from '../../src/fit/gauge.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitEdges } from '../simulator/edges.ts';
import { over10cm } from './at-gauge.ts';

const gauge = over10cm(22, 30);
const piece = { bust: stitches(104), crossBack: stitches(80), depth: cm(20), gauge };
const setIn: SetInAsk = {
  construction: 'set-in',
  front: piece,
  back: piece,
  sleeve: { upperArm: stitches(72), gauge },
};
const drop: DropAsk = {
  construction: 'drop shoulder',
  shoulder: {
    depth: cm(20),
    back: cm(56),
    crossBack: cm(38),
    upperArm: cm(34),
    body: gauge,
    sleeve: gauge,
    rule: ANY_COUNT,
  },
};

describe('another armhole depth', () => {
  it('moves neck and shoulders, lengthens both edges and solves the cap to them', () => {
    const made = changeDepth(setIn, cm(22), cm(8));
    if (made.kind !== 'depth changed' || made.top.construction !== 'set-in') throw new Error(made.kind);
    const { front, back, cap } = made.top;
    expect(made.later).toBe(6);
    // 60 rows less 24 of the neck before, 66 less 24 after.
    expect(made.neckBegins).toEqual({ before: 36, after: 42 });
    // Six rows at 3 rows/cm, straight up.
    expect(front.after.edge - (front.before?.edge ?? 0)).toBeCloseTo(2, 9);
    expect(Math.abs(cap.after.edge - front.after.edge - back.after.edge)).toBeLessThanOrEqual(1 / 3 + 1e-9);
    expect(cap.after.rows).toBeGreaterThan(cap.before?.rows ?? Number.POSITIVE_INFINITY);
    expect(knitEdges(72, cap.after.events, cap.after.rows).count).toBe(cap.after.top);
    for (const line of made.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
  });

  it('widens the top of a drop-shoulder sleeve by twice as much', () => {
    const made = changeDepth(drop, cm(22), cm(8));
    if (made.kind !== 'depth changed' || made.top.construction !== 'drop shoulder')
      throw new Error(made.kind);
    const { before, after } = made.top.shoulder;
    expect([before?.top, after.top]).toEqual([88, 97]);
    expect(made.later).toBe(6);
  });

  it('counts the rows of a pattern whose own armhole cannot be shaped in the usual way from its depth', () => {
    const shallow = { ...piece, depth: cm(13) };
    const made = changeDepth({ ...setIn, front: shallow, back: shallow }, cm(20), cm(8));
    if (made.kind !== 'depth changed' || made.top.construction !== 'set-in') throw new Error(made.kind);
    expect([made.top.back.before, made.top.cap.before]).toEqual([null, null]);
    // 13 and 20 cm at 3 rows/cm: 39, to the nearest even number 40, and 60.
    expect([made.rows, made.later]).toEqual([{ before: 40, after: 60 }, 20]);
    expect(made.neckBegins).toEqual({ before: 16, after: 36 });
  });

  it('returns the part that cannot follow, with its own ways out', () => {
    const shallow = changeDepth(setIn, cm(12), cm(8));
    if (shallow.kind !== 'cannot' || shallow.part !== 'cap') throw new Error(shallow.kind);
    expect(shallow.because.kind).toBe('armhole edge too short');
    expect(shallow.because.alternatives.length).toBeGreaterThan(0);
    const low = changeDepth(drop, cm(18), cm(19));
    if (low.kind !== 'cannot' || low.part !== 'neck') throw new Error(low.kind);
    expect(low.neckRows).toBeGreaterThan(low.armholeRows);
    const narrow = changeDepth(drop, cm(16), cm(8));
    expect(narrow).toMatchObject({ kind: 'cannot', part: 'sleeve top' });
  });
});
