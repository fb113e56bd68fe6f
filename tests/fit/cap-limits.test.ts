/** Where a cap begins and ends to be possible, at 22 stitches and 30 rows to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { type CapAsk, shapeCap } from '../../src/fit/cap-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { gaugeOf } from './plain-pattern.ts';

function capFor(upperArm: number, edge: number, more: Partial<CapAsk> = {}) {
  return shapeCap({
    upperArm: stitches(upperArm),
    armhole: { front: cm(edge), back: cm(edge) },
    depth: cm(20),
    bindOff: stitches(6),
    gauge: { ...gaugeOf(22, 30, 'cm'), worked: 'flat' },
    ...more,
  });
}
const labels = (more: Partial<CapAsk> = {}) => {
  const made = capFor(74, 23.85, more);
  return made.kind === 'cap' ? made.workings.map((line) => line.label) : [made.kind];
};

describe('a cap', () => {
  it('has a top of a quarter of the arm, even where the arm is even: 74 / 4 = 18.5, so 18', () => {
    expect(capFor(74, 23.85)).toMatchObject({ kind: 'cap', top: 18 });
    expect(labels()).toContain('usual stitches of the top');
  });

  it('has the top that is asked for, and works none out', () => {
    expect(capFor(74, 23.85, { top: stitches(20) })).toMatchObject({ kind: 'cap', top: 20 });
    expect(labels({ top: stitches(20) })).not.toContain('usual stitches of the top');
  });

  it('never leads from an even arm to an odd top, or the other way about', () => {
    expect(capFor(74, 23.85, { top: stitches(17) })).toEqual({ kind: 'top of the wrong parity', top: 17 });
    expect(capFor(75, 23.85, { top: stitches(18) })).toEqual({ kind: 'top of the wrong parity', top: 18 });
    expect(capFor(75, 23.85)).toMatchObject({ kind: 'cap', top: 19 });
  });

  it('needs eight stitches between its bind-offs: three lost at each edge, and two at the top', () => {
    expect(capFor(18, 20)).toEqual({ kind: 'nothing left for a cap', left: 6, needed: 8 });
    expect(capFor(20, 20).kind).not.toBe('nothing left for a cap');
  });

  it('needs six stitches more than the top that is asked for', () => {
    expect(capFor(28, 20, { top: stitches(12) })).toEqual({
      kind: 'nothing left for a cap',
      left: 16,
      needed: 18,
    });
    expect(capFor(30, 20, { top: stitches(12) }).kind).not.toBe('nothing left for a cap');
  });

  it('needs more rows than two centimetres have', () => {
    expect(capFor(74, 23.85, { depth: cm(2) })).toEqual({ kind: 'armhole too shallow', rows: 6 });
  });

  it('counts whole pairs of rows of the armhole: 2.6 cm are 7.8 rows, so 6', () => {
    expect(capFor(74, 23.85, { depth: cm(2.6) })).toEqual({ kind: 'armhole too shallow', rows: 6 });
  });

  it('says by how much an armhole’s edge is too short or too long for it', () => {
    const short = capFor(74, 12);
    if (short.kind !== 'armhole edge too short') throw new Error(short.kind);
    expect(short.wanted).toBe(24);
    // No cap is shorter than the arm is wide across: 74 / 2.2 = 33.6 cm.
    expect(short.shortest).toBeGreaterThan(74 / 2.2);
    const long = capFor(74, 40);
    if (long.kind !== 'armhole edge too long') throw new Error(long.kind);
    expect(long.wanted).toBe(80);
    // Nor longer than that and twice the armhole's depth.
    expect(long.longest).toBeLessThan(74 / 2.2 + 2 * 20);
    expect(long.longest).toBeGreaterThan(2 * 20);
  });

  it('counts ease into the edge that is wanted', () => {
    expect(capFor(74, 23.85, { ease: cm(1) })).toMatchObject({ kind: 'cap', wanted: 48.7 });
  });

  it('meets the shoulder seam behind its middle by half of what the front’s edge is longer', () => {
    const made = capFor(74, 23.85, { armhole: { front: cm(24.85), back: cm(22.85) } });
    expect(made.kind === 'cap' ? made.shoulderFromCentre : made.kind).toBeCloseTo(1, 9);
  });
});
