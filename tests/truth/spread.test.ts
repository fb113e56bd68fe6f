/** Published examples of increases and decreases spread across a row, each recomputed exactly. */
import { describe, expect, it } from 'vitest';
import { type Spread, type SpreadAsk, spread } from '../../src/fit/spread.ts';
import { stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';

function spreadOver(count: number, change: number, how: Omit<SpreadAsk, 'stitches' | 'change'>): Spread {
  const found = spread({ stitches: stitches(count), change, ...how });
  if (found.kind !== 'spread') throw new Error(found.kind);
  return found;
}

/** Stitches from one change to the next with those that the change takes: what the sources call a group. */
function groups(found: Spread, takes: number): number[] {
  return found.stretches.slice(0, found.changes).map((length) => length + takes);
}

/** How often each length of group comes. */
function tally(lengths: readonly number[]): Record<number, number> {
  const counts: Record<number, number> = {};
  for (const n of lengths) counts[n] = (counts[n] ?? 0) + 1;
  return counts;
}

function figure(found: Spread, label: string): number | undefined {
  return found.workings.find((line) => line.label === label)?.result.value;
}

describe('Calculating where to place the increases (woolpackyarn.com, year not given)', () => {
  it('51 stitches and 4 increases in a round: one every 12.75, in groups of 13, 13, 13 and 12', () => {
    const found = spreadOver(51, 4, { worked: 'round' });
    expect(figure(found, 'stitches to a change')).toBe(12.75);
    expect(groups(found, 0)).toEqual([13, 13, 13, 12]);
  });

  it('the same 51 stitches flat: after stitches 6, 19, 32 and 45, with 6 left at either end', () => {
    const found = spreadOver(51, 4, { worked: 'flat' });
    let place = 0;
    expect(groups(found, 0).map((n) => (place += n))).toEqual([6, 19, 32, 45]);
    expect(found.stretches.at(-1)).toBe(6);
  });

  it('112 stitches and 16 increases: one every 7, half of which is 3.5, to 128', () => {
    const round = spreadOver(112, 16, { worked: 'round' });
    expect(groups(round, 0)).toEqual(Array(16).fill(7));
    const flat = spreadOver(112, 16, { worked: 'flat' });
    expect(flat.workings.find((line) => line.label === 'plain stitches before the first change')?.exact).toBe(
      3.5,
    );
    expect([round.after, flat.after]).toEqual([128, 128]);
  });
});

describe('Magic Formula for Placement of Increases or Decreases (workshop handout, 2010)', () => {
  it('124 stitches and 14 increases: every 8 stitches twice and every 9 twelve times, to 138', () => {
    const found = spreadOver(124, 14, { worked: 'round' });
    expect(tally(groups(found, 0))).toEqual({ 8: 2, 9: 12 });
    expect(found.after).toBe(138);
  });
});

describe('Math Monday: Decreasing part II, across a row/round (papermoonknits.com, year not given)', () => {
  it('55 to 38: 17 decreases, 4 groups of 4 stitches and 13 of 3', () => {
    const found = spreadOver(55, -17, { worked: 'round' });
    expect(found.changes).toBe(17);
    expect(tally(groups(found, 2))).toEqual({ 4: 4, 3: 13 });
    expect(Needle.castOn(55, 'round').written(found.row).count).toBe(38);
  });
});

describe('Decreasing evenly, forum answer (forum.knittinghelp.com, year not given)', () => {
  it('80 to 70, flat with balanced ends: k3, k2tog, (k6, k2tog) 9 times, k3', () => {
    expect(spreadOver(80, -10, { worked: 'flat' }).row).toEqual([
      { kind: 'plain', stitches: 3 },
      { kind: 'change', change: 'k2tog' },
      {
        kind: 'repeat',
        times: 9,
        of: [
          { kind: 'plain', stitches: 6 },
          { kind: 'change', change: 'k2tog' },
        ],
      },
      { kind: 'plain', stitches: 3 },
    ]);
  });
});

describe('Teach Yourself Visually Knitting, p. 71 (book, year not given)', () => {
  it('30 stitches and 5 increases with whole ends: 5 stitches before, between and after, to 35', () => {
    const found = spreadOver(30, 5, { worked: 'flat', ends: 'whole' });
    expect(found.stretches).toEqual([5, 5, 5, 5, 5, 5]);
    expect(found.after).toBe(35);
  });
});

describe('Decrease step help, forum answer (forum.knittinghelp.com, year not given)', () => {
  // Printed as 40, cut from 40.75; with the first decrease taking the first two stitches 161 are left for four groups.
  it('163 stitches and 5 decreases, the first at the edge: 40 stitches and a fraction from one to the next', () => {
    const found = spreadOver(163, -5, { worked: 'flat', ends: 'none' });
    expect(groups(found, 2)).toEqual([2, 40, 40, 40, 40]);
    expect(found.after).toBe(158);
  });
});
