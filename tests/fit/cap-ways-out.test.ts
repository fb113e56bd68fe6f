/** What is offered where no cap fits, at 22 stitches and 30 rows to 10 cm: the nearest figure that works, and none nearer. */
import { describe, expect, it } from 'vitest';
import { type CapAlternative, type CapAsk, cap } from '../../src/fit/cap.ts';
import { shapeCap } from '../../src/fit/cap-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

interface Wanted {
  readonly upperArm: number;
  readonly edge: number;
  readonly depth?: number;
  readonly bindOff?: number;
  readonly top?: number;
  readonly ease?: number;
  readonly gauge?: CapAsk['gauge'];
}

function askFor(wanted: Wanted): CapAsk {
  const { upperArm, edge, depth = 20, bindOff = 6, top, ease, gauge = over10cm(22, 30) } = wanted;
  return {
    upperArm: stitches(upperArm),
    armhole: { front: cm(edge), back: cm(edge) },
    depth: cm(depth),
    bindOff: stitches(bindOff),
    gauge,
    ...(top === undefined ? {} : { top: stitches(top) }),
    ...(ease === undefined ? {} : { ease: cm(ease) }),
  };
}

function refused(wanted: Wanted, because: string): readonly CapAlternative[] {
  const found = cap(askFor(wanted));
  if (found.kind === 'cap') throw new Error('there is a cap');
  expect(found.kind).toBe(because);
  return found.alternatives;
}

const fits = (wanted: Wanted) => shapeCap(askFor(wanted)).kind === 'cap';

/** The stitches of the upper arm that are offered, by the way they are named. */
const arms = (alternatives: readonly CapAlternative[]) =>
  alternatives
    .filter(({ way }) => way.endsWith('upper arm'))
    .map(({ way, cap: { upperArm } }) => `${way}: ${upperArm}`);

const boundOff = (alternatives: readonly CapAlternative[]) =>
  alternatives.filter(({ way }) => way === 'bind off less').map(({ cap: made }) => made.events[0]?.change);

describe('where the bind-offs leave nothing for a cap', () => {
  it('fewer stitches are bound off, or the arm is wider: the first that leaves the eight of a cap', () => {
    // 18 − 2 × 6 = 6; 18 − 2 × 5 = 8; 20 − 2 × 6 = 8.
    const ways = refused({ upperArm: 18, edge: 7, depth: 10 }, 'nothing left for a cap');
    expect(ways.map(({ way }) => way)).toEqual(['bind off less', 'wider upper arm']);
    expect(boundOff(ways)).toEqual([-5]);
    expect(arms(ways)).toEqual(['wider upper arm: 20']);
  });

  it('the bind-off is the largest, and the arm the narrowest, of which the edges agree', () => {
    const tight = { upperArm: 18, edge: 6, depth: 10 };
    expect([5, 4, 3].map((bindOff) => fits({ ...tight, bindOff }))).toEqual([false, false, true]);
    const ways = refused(tight, 'nothing left for a cap');
    expect(boundOff(ways)).toEqual([-3]);
    expect(arms(ways)).toEqual([]);

    const long = { upperArm: 18, edge: 9, depth: 10 };
    expect([19, 20, 21].map((upperArm) => fits({ ...long, upperArm }))).toEqual([false, false, true]);
    expect(arms(refused(long, 'nothing left for a cap'))).toEqual(['wider upper arm: 21']);
  });

  it('a single stitch is still bound off, and never none', () => {
    // 10 − 2 × 1 = 8; of 7 stitches, none bound off at all would leave too few.
    const narrow = { edge: 5.1, depth: 10, bindOff: 2 };
    expect(boundOff(refused({ ...narrow, upperArm: 10 }, 'nothing left for a cap'))).toEqual([-1]);
    expect(boundOff(refused({ ...narrow, upperArm: 9 }, 'nothing left for a cap'))).toEqual([]);
    expect(fits({ ...narrow, upperArm: 9, bindOff: 0 })).toBe(true);
  });
});

describe('where the top cannot be reached in pairs', () => {
  it('the top is one stitch less, or one more', () => {
    const ways = refused({ upperArm: 74, edge: 23.85, top: 17 }, 'top of the wrong parity');
    expect(ways.map(({ way, cap: { top } }) => [way, top])).toEqual([
      ['nearest top', 16],
      ['nearest top', 18],
    ]);
  });
});

describe('where the armhole is too shallow', () => {
  it('it is made as much deeper as it must be, in pairs of rows, or the arm narrower', () => {
    const shallow = { upperArm: 44, edge: 10, depth: 2.7 };
    const ways = refused(shallow, 'armhole too shallow');
    expect(ways.map(({ way }) => way)).toEqual(['deeper armhole', 'narrower upper arm']);
    const grown = (rows: number) => ({ ...shallow, edge: 10 + rows / 3, depth: 2.7 + rows / 3 });
    expect([2, 4].map((rows) => fits(grown(rows)))).toEqual([false, true]);
    expect(ways[0]?.by).toBeCloseTo(4 / 3, 9);
    expect([42, 40, 38].map((upperArm) => fits({ ...shallow, upperArm }))).toEqual([false, false, true]);
    expect(arms(ways)).toEqual(['narrower upper arm: 38']);
  });

  it('no depth is offered that would still not do', () => {
    // 47.7 cm of edge are far more than two centimetres of depth and any arm of a person have.
    expect(refused({ upperArm: 74, edge: 23.85, depth: 2 }, 'armhole too shallow')).toEqual([]);
  });
});

describe('where the armhole’s edge is too short', () => {
  it('the cap is eased in by what is lacking, the armhole deeper by the least that does, or the arm narrower', () => {
    const short = { upperArm: 74, edge: 17.5 };
    const ways = refused(short, 'armhole edge too short');
    expect(ways.map(({ way }) => way)).toEqual(['ease the cap in', 'deeper armhole', 'narrower upper arm']);
    const [eased, deeper] = ways;
    // The shortest edge of such a cap is 37.83 cm; the armhole has 35.
    expect(eased?.by).toBeCloseTo(2.834, 3);
    expect(eased?.cap.wanted).toBeCloseTo(37.834, 3);
    expect(deeper?.by).toBeCloseTo(4 / 3, 9);
    expect(fits({ ...short, edge: 17.5 + 2 / 3, depth: 20 + 2 / 3 })).toBe(false);
    expect(arms(ways)).toEqual(['narrower upper arm: 68']);
    expect([72, 70].map((upperArm) => fits({ ...short, upperArm }))).toEqual([false, false]);
  });

  it('no more than three centimetres are eased in, those counted that were asked for already', () => {
    expect(refused({ upperArm: 74, edge: 17.42 }, 'armhole edge too short').map(({ way }) => way)).toContain(
      'ease the cap in',
    );
    expect(
      refused({ upperArm: 74, edge: 17.41 }, 'armhole edge too short').map(({ way }) => way),
    ).not.toContain('ease the cap in');
    const asked = { upperArm: 74, edge: 17, ease: 1 };
    const [first] = refused(asked, 'armhole edge too short');
    expect(first?.way).toBe('deeper armhole');
    const [eased] = refused({ ...asked, edge: 17.5 }, 'armhole edge too short');
    expect([eased?.way, eased?.cap.wanted]).toEqual(['ease the cap in', eased?.cap.edge]);
    expect(eased?.by).toBeCloseTo(1.834, 3);
  });
});

describe('where the armhole’s edge is too long', () => {
  it('the arm is made wider, by the fewest pairs of stitches', () => {
    const long = { upperArm: 74, edge: 40 };
    const ways = refused(long, 'armhole edge too long');
    expect(ways.map(({ way }) => way)).toEqual(['wider upper arm']);
    expect(arms(ways)).toEqual(['wider upper arm: 116']);
    for (let upperArm = 76; upperArm < 116; upperArm += 2) expect(fits({ ...long, upperArm })).toBe(false);
  });
});

describe('where no whole rows agree', () => {
  const coarse = { upperArm: 14, depth: 12, bindOff: 1, gauge: over10cm(10, 12) };

  it('the cap is eased in where the nearest is longer, or the arm takes a pair of stitches more or less', () => {
    const ways = refused({ ...coarse, edge: 11.75 }, 'no whole rows agree');
    expect(ways.map(({ way }) => way)).toEqual(['ease the cap in', 'wider upper arm', 'narrower upper arm']);
    // The nearest cap has 24.71 cm of edge; the armhole 23.5.
    expect(ways[0]?.by).toBeCloseTo(1.207, 3);
    expect(arms(ways)).toEqual(['wider upper arm: 16', 'narrower upper arm: 12']);
  });

  it('nothing is eased in where the nearest cap is shorter', () => {
    const ways = refused({ ...coarse, edge: 13.5 }, 'no whole rows agree');
    expect(ways.map(({ way }) => way)).toEqual(['wider upper arm', 'narrower upper arm']);
  });
});

describe('where the cap can be shaped', () => {
  it('nothing else is offered', () => {
    const ask = askFor({ upperArm: 74, edge: 23.85 });
    expect(cap(ask)).toEqual(shapeCap(ask));
  });
});
