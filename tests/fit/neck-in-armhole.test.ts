/** A neck that begins while the armholes are still shaped, knitted side by side and held against both shaped apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Armhole, armhole } from '../../src/fit/armhole.ts';
import { type Neck, neck } from '../../src/fit/neck.ts';
import { type ArmholeLines, type NeckInArmhole, neckInArmhole } from '../../src/fit/neck-in-armhole.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { type Event, knitEdges } from '../simulator/edges.ts';
import { gauges } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const pairs = fc
  .record({
    gauge: gauges,
    side: fc.integer({ min: 4, max: 30 }),
    across: fc.integer({ min: 24, max: 120 }),
    depth: fc.integer({ min: 140, max: 300 }),
    share: fc.double({ min: 0.3, max: 0.98, noNaN: true }),
    shape: fc.constantFrom('round' as const, 'V' as const),
  })
  .map(({ gauge, side, across, depth, share, shape }): { hole: Armhole; round: Neck } | undefined => {
    const [high, crossBack] = [cm(depth / 10), stitches(across)];
    const hole = armhole({ bust: stitches(across + 2 * side), crossBack, depth: high, gauge });
    const width = cm(across / 3 / gauge.stitches.perCm);
    const round = neck({ stitches: crossBack, width, depth: cm(high * share), gauge, shape });
    return hole.kind === 'armhole' && round.kind === 'neck' ? { hole, round } : undefined;
  })
  .filter((pair) => pair !== undefined);

describe('a neck that begins within the armholes', () => {
  it('leaves each side with the shoulder, on every row that either of them shapes', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(pairs, ({ hole, round }) => {
        const met = neckInArmhole(hole, round);
        kinds.add(met?.kind ?? 'apart');
        const begins = hole.rows - round.rows;
        if (met === undefined) expect(begins).toBeGreaterThanOrEqual(hole.events.at(-1)?.row ?? 0);
        else if (met.kind === 'neck too low') {
          expect(begins).toBeLessThan(2 * hole.bindOffs.length);
          expect(hole.rows - met.most).toBe(2 * hole.bindOffs.length);
        } else {
          expect(met.begins).toBe(begins);
          const below = hole.events.filter(({ row }) => row <= begins);
          expect(knitEdges(hole.bust, below, begins).count).toBe(met.across);
          expect(2 * met.each + round.centre).toBe(met.across);
          for (const [name, side] of Object.entries(met.sides)) {
            const edge = name === 'first' ? 'right' : 'left';
            const dividing: Event[] =
              met.atEdges === 0
                ? []
                : [{ row: 1, edge, by: 'decrease', change: -met.atEdges, after: side.from }];
            const knitted = knitEdges(met.each, [...dividing, ...side.events], round.rows);
            expect(knitted.count).toBe(round.shoulder);
            expect(new Set(knitted.heights)).toEqual(new Set([round.rows]));
          }
        }
      }),
      { numRuns: 200 },
    );
    expect([...kinds].sort()).toEqual(['apart', 'neck in the armhole', 'neck too low']);
  });
});

/** 100 stitches, 6 bound off at each side, then one decreased at each in rows 3, 7 and 11 of 60: 82 are left. */
const LINES: ArmholeLines = {
  bust: stitches(100),
  bindOffs: [stitches(6)],
  rows: rows(60),
  events: [
    { row: rows(1), edge: 'right', by: 'bind off', change: -6, after: stitches(94) },
    { row: rows(2), edge: 'left', by: 'bind off', change: -6, after: stitches(88) },
    { row: rows(3), edge: 'both', by: 'decrease', change: -1, after: stitches(86) },
    { row: rows(7), edge: 'both', by: 'decrease', change: -1, after: stitches(84) },
    { row: rows(11), edge: 'both', by: 'decrease', change: -1, after: stitches(82) },
  ],
};
/** As many rows as are wanted, at 3 to the centimetre; 17 cm of 82 stitches are 38, of which 12 are the centre. */
function neckOf(length: number): Neck {
  const made = neck({
    stitches: stitches(82),
    width: cm(17),
    depth: cm(length / 3),
    gauge: over10cm(22, 30),
  });
  if (made.kind !== 'neck') throw new Error(made.kind);
  expect([made.rows, made.centre]).toEqual([length, 12]);
  return made;
}
function within(length: number, lines: ArmholeLines = LINES): NeckInArmhole {
  const met = neckInArmhole(lines, neckOf(length));
  if (met?.kind !== 'neck in the armhole') throw new Error(met?.kind ?? 'apart');
  return met;
}

describe('a neck of 54 rows in an armhole of 60', () => {
  const met = () => within(54);

  it('divides the 86 stitches that are left by then, one decreased at either armhole in the same row', () => {
    // 100 − 12 − 2 = 86; (86 − 12) / 2 = 37.
    expect([met().begins, met().across, met().each, met().atEdges]).toEqual([6, 86, 37, 1]);
    expect([met().sides.first.from, met().sides.last.from]).toEqual([36, 36]);
  });

  it('shapes what is left of the armhole at the outer edge of each side, counted from the dividing row', () => {
    // Row 11 of the armhole is row 5 of the neck, in which the neck edge is shaped too.
    const inRow5 = (edge: 'first' | 'last') =>
      met()
        .sides[edge].events.filter(({ row }) => row === 5)
        .map((event) => [event.edge, event.change]);
    expect(inRow5('last')).toContainEqual(['left', -1]);
    expect(
      met()
        .sides.first.events.filter((event) => event.row === 5)
        .map((event) => event.edge),
    ).not.toEqual([]);
    expect(Math.min(...met().sides.last.events.map(({ row }) => row))).toBeGreaterThan(1);
  });

  it('shows how its figures come about', () => {
    expect(told(met().workings)).toEqual([
      'rows of the armhole before the neck: a - b = 6 rows',
      'last shaping row of the armhole, counted from the dividing row: a - b = 5 rows',
      'stitches of each side in the dividing row: (a - b) / 2 = 37 stitches',
      'stitches of each side after the dividing row: a - b = 36 stitches',
    ]);
    const given = met().workings.map((line) => Object.values(line.given).map(({ value }) => value));
    expect(given).toEqual([
      [60, 54],
      [11, 6],
      [86, 12],
      [37, 1],
    ]);
  });
});

describe('where a neck begins', () => {
  it('decreases nothing at the armholes in the dividing row unless that row is one of theirs', () => {
    expect(within(56)).toMatchObject({ begins: 4, across: 86, atEdges: 0 });
    expect(within(52)).toMatchObject({ begins: 8, across: 84, atEdges: 0 });
    expect(within(50)).toMatchObject({ begins: 10, across: 84, atEdges: 1 });
  });

  it('is apart from an armhole whose shaping is done by then, or that has none', () => {
    expect(neckInArmhole(LINES, neckOf(48))).toBeUndefined();
    const boundOff = { ...LINES, events: LINES.events.slice(0, 2) };
    expect(neckInArmhole(boundOff, neckOf(58))).toBeUndefined();
    expect(neckInArmhole({ ...LINES, bindOffs: [], events: [] }, neckOf(60))).toBeUndefined();
  });

  it('is too low within the rows that bind off at the underarm, two for each bind-off', () => {
    expect(neckInArmhole(LINES, neckOf(60))).toEqual({ kind: 'neck too low', most: 58 });
    const stepped = { ...LINES, bindOffs: [stitches(4), stitches(2)] };
    expect(neckInArmhole(stepped, neckOf(58))).toEqual({ kind: 'neck too low', most: 56 });
    expect(neckInArmhole(stepped, neckOf(56))).toMatchObject({ begins: 4 });
  });
});
