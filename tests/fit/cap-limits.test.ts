/** Where a cap begins and ends to be possible, at 22 stitches and 30 rows to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { type CapAsk, shapeCap } from '../../src/fit/cap-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { gaugeOf } from './plain-pattern.ts';
import { told } from './told.ts';

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

  it('is told in five stages, which lose what lies between the arm and the top, in all its rows', () => {
    for (const [upperArm, edge] of [
      [74, 23.85],
      [74, 19.2],
      [50, 20],
    ] as const) {
      const made = capFor(upperArm, edge);
      if (made.kind !== 'cap') throw new Error(made.kind);
      let [lost, taken] = [0, 0];
      for (const stage of made.stages) {
        if (stage.stage === 'bind off') [lost, taken] = [lost + 2 * stage.stitches, taken + 2];
        else if (stage.stage === 'steps')
          [lost, taken] = [lost + 2 * stage.stitches * stage.times, taken + 2 * stage.times];
        else if (stage.stage === 'decreases')
          [lost, taken] = [lost + stage.spaced.from - stage.spaced.to, taken + stage.spaced.rows];
        else expect(stage.stitches).toBe(made.top);
      }
      expect([made.stages.length, upperArm - lost, taken]).toEqual([5, made.top, made.rows]);
    }
  });

  it('shows the spacing of its slow stretch under that name, between fast steps that need none', () => {
    // 35.4 cm of edge are few for 74 stitches: both fast stretches are bound off in steps.
    const made = capFor(74, 19.2);
    if (made.kind !== 'cap') throw new Error(made.kind);
    expect(made.stages.map(({ stage }) => stage)).toEqual(['bind off', 'steps', 'decreases', 'steps', 'top']);
    const named = made.workings.filter(({ label }) => label.includes(': ')).map(({ label }) => label);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((label) => !label.startsWith('slow: '))).toEqual([]);
  });

  it('shows the spacing of its fast stretches too where these are decreases', () => {
    const made = capFor(50, 20);
    if (made.kind !== 'cap') throw new Error(made.kind);
    const names = made.workings
      .filter(({ label }) => label.includes(': '))
      .map(({ label }) => label.split(': ')[0]);
    expect([...new Set(names)]).toEqual(['fast, below', 'slow', 'fast, above']);
  });

  it('takes a top that leaves its usual count by two or four, where only then the edges agree', () => {
    const tops = Array.from({ length: 120 }, (_, i) => capFor(30, 9.6 + i / 40, { depth: cm(9) })).flatMap(
      (made) => (made.kind === 'cap' ? [made.top] : []),
    );
    // A quarter of 30 is 7.5, to an even count 8.
    expect(new Set(tops)).toContain(8);
    for (const top of tops) expect([4, 6, 8, 10, 12]).toContain(top);
  });

  it('says how near it comes where no whole rows agree', () => {
    const gauge = { ...gaugeOf(10, 12, 'cm'), worked: 'flat' as const };
    const made = capFor(14, 11.75, { depth: cm(12), bindOff: stitches(1), gauge });
    if (made.kind !== 'no whole rows agree') throw new Error(made.kind);
    expect(made.wanted).toBe(23.5);
    // More than a row off, which is 10 / 12 cm, and less than the three rows that a pair more adds at either edge.
    expect(Math.abs(made.nearest - made.wanted)).toBeGreaterThan(10 / 12);
    expect(Math.abs(made.nearest - made.wanted)).toBeLessThan(30 / 12);
  });

  it('shows every figure that it has, in its unit', () => {
    const made = capFor(74, 23.85);
    if (made.kind !== 'cap') throw new Error(made.kind);
    const lines = told(made.workings);
    // 74 − 18 are 56, half of it 28, less the 6 bound off; the edge wanted is 2 × 23.85.
    expect(lines.slice(0, 3)).toEqual([
      'edge wanted: a + b + c = 47.7 cm',
      'usual stitches of the top: a / 4 = 18 stitches',
      'stitches to lose at each edge above the bind-off: (a - b) / 2 - c = 22 stitches',
    ]);
    expect(lines).toContain('stitches lost fast, slow and fast: a * (b + c) + d = 22 stitches');
    expect(lines).toContain(`rows of the cap: a + 2 * (b + c) + d = ${made.rows} rows`);
    expect(lines).toContain('width of the top: a / b = 8.181818 cm');
    expect(lines).toContain(`height of the cap: a / b = ${Math.round((made.rows / 3) * 1e6) / 1e6} cm`);
    expect(lines.at(-1)).toBe(
      'shoulder seam from the middle of the top, towards the back: (a - b) / 2 = 0 cm',
    );
    expect(lines.filter((line) => /^(?:edge of the cap|cap less armhole): .* cm$/.test(line))).toHaveLength(
      2,
    );
  });
});
