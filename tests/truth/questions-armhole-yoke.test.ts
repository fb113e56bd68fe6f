/**
 * Questions met in public knitting talk, worked answers collected 2026; the situations in our own words.
 * Each answer was worked out by hand, apart from this program. Figures that the asker did not give are our own and
 * marked so.
 */
import { describe, expect, it } from 'vitest';
import { type ArmholeAsk, armhole } from '../../src/fit/armhole.ts';
import { printedArmhole } from '../../src/fit/armhole-printed.ts';
import { type CapAsk, cap } from '../../src/fit/cap.ts';
import { dropShoulder } from '../../src/fit/drop-shoulder.ts';
import { asPrinted, boundOff, countAfter, together } from '../../src/fit/edge-shaping.ts';
import { ANY_COUNT, rowsFor } from '../../src/fit/gauge.ts';
import { type NeckAsk, neck } from '../../src/fit/neck.ts';
import { cm, inches, perCm, rows, stitches } from '../../src/fit/units.ts';
import { yoke } from '../../src/fit/yoke.ts';
import { asPattern, THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { over4in, over10cm } from '../fit/at-gauge.ts';
import { knitEdges } from '../simulator/edges.ts';

const every = (interval: number, times: number) => ({ every: rows(interval), times });
const rowsOf = (events: readonly { readonly row: number }[]) => [
  ...new Set(events.map((e) => e.row as number)),
];

describe('a question about an armhole', () => {
  it('first sweater, 55 stitches: 3 off at each side, then the next three rows, one alternate, one 4th row, to 39', () => {
    const made = printedArmhole({
      bust: stitches(55),
      bindOffs: [stitches(3)],
      decreases: [every(1, 3), every(2, 1), every(4, 1)],
      rows: rows(40),
      gauge: over10cm(20, 28),
    });
    if (made.kind !== 'armhole as printed') throw new Error(made.kind);
    // The decreases lie in rows 1, 2, 3, 5 and 9 counted after the two rows of the bind-off.
    expect(rowsOf(made.events).map((row) => row - 2)).toEqual([-1, 0, 1, 2, 3, 5, 9]);
    expect(made.crossBack).toBe(39);
    expect(knitEdges(55, made.events, 40).count).toBe(39);
  });

  it('broad shoulders: 1 in more across at 5.5 stitches is 6 stitches, three decreases fewer at each side', () => {
    // Counts of our own; the asker gave none.
    const ask: ArmholeAsk = {
      bust: stitches(104),
      crossBack: stitches(76),
      depth: inches(8),
      gauge: over4in(22, 30),
    };
    const [narrow, wide] = [armhole(ask), armhole({ ...ask, crossBack: stitches(76 + 6) })];
    if (narrow.kind !== 'armhole' || wide.kind !== 'armhole') throw new Error('both can be knitted');
    expect(narrow.decreases.shaping.length - wide.decreases.shaping.length).toBe(3);
    expect(wide.rows).toBe(narrow.rows);
    const across: NeckAsk = { stitches: ask.crossBack, width: inches(6), depth: inches(3), gauge: ask.gauge };
    const [before, after] = [neck(across), neck({ ...across, stitches: stitches(82) })];
    if (before.kind !== 'neck' || after.kind !== 'neck') throw new Error('both can be knitted');
    expect(after.shoulder - before.shoulder).toBe(3);
  });
});

describe('a question about a sleeve top', () => {
  it('cap 2 in too short at 7 rows to the inch: 7 rows more by the sides alone, 8 in whole pairs', () => {
    // Armhole and sleeve of our own. Sides that slope gain a little less than two rows for each row added.
    const ask: CapAsk = {
      upperArm: stitches(70),
      armhole: { front: inches(9), back: inches(9) },
      depth: inches(8),
      bindOff: stitches(6),
      gauge: over4in(20, 28),
      top: stitches(18),
    };
    const longer = { front: inches(10), back: inches(10) };
    const [short, long] = [cap(ask), cap({ ...ask, armhole: longer })];
    if (short.kind !== 'cap' || long.kind !== 'cap') throw new Error('both can be knitted');
    expect(rowsFor(inches(2 / 2), ask.gauge.rows.perCm)).toBe(7);
    expect(rowsFor(inches(2 / 2), ask.gauge.rows.perCm, 'even')).toBe(8);
    expect(long.rows - short.rows).toBeGreaterThanOrEqual(8);
    expect(long.rows - short.rows).toBeLessThanOrEqual(12);
    expect(Math.abs(long.edge - short.edge - 2 * 2.54)).toBeLessThanOrEqual(2 / ask.gauge.rows.perCm);
  });

  it.each([
    [9.5, 76, 19],
    [7.25, 58, 14.5],
  ])(
    'drop shoulder at 4 stitches: an armhole of %d in takes a sleeve of %d stitches, %d in',
    (deep, top, wide) => {
      // Row gauge of our own, so that the depth is whole pairs of rows.
      const gauge = over4in(16, 32);
      const made = dropShoulder({
        depth: inches(deep),
        back: inches(24),
        crossBack: inches(16),
        upperArm: inches(11 + 2),
        body: gauge,
        sleeve: gauge,
        rule: ANY_COUNT,
      });
      expect(made).toMatchObject({ kind: 'drop shoulder', top });
      expect(made.kind === 'drop shoulder' ? made.topWidth / 2.54 : 0).toBeCloseTo(wide, 9);
    },
  );

  it('drop shoulder of 5.5 in, four rows more at 8 to the inch: 6 in deep, the sleeve opens to 12 in', () => {
    const gauge = { ...over4in(19, 32) };
    const made = dropShoulder({
      depth: inches(5.5 + 4 / 8),
      back: inches(24),
      crossBack: inches(16),
      upperArm: inches(11),
      body: gauge,
      sleeve: gauge,
      rule: ANY_COUNT,
    });
    if (made.kind !== 'drop shoulder') throw new Error(made.kind);
    expect(made.armholeRows).toBe(48);
    expect(made.top).toBe(57);
    expect(made.topWidth / 2.54).toBeCloseTo(12, 9);
  });
});

describe('a question about a yoke', () => {
  it('too shallow by 1.5 in at 6 rounds to the inch: 9 rounds more, 10 in whole pairs', () => {
    // Counts and depth are our own; the asker gave none.
    const of = (depth: number) => {
      const made = yoke({
        direction: 'up',
        gauge: over4in(20, 24, 'round'),
        depth: inches(depth),
        underarm: stitches(280),
        neck: stitches(100),
        scheme: THREE_ROUNDS,
      });
      if (made.kind !== 'yoke') throw new Error(made.kind);
      return made;
    };
    expect(of(7 + 1.5).rows - of(7).rows).toBe(9);
    expect(of(7 + 1.5).shaping.map(({ spread }) => spread.after)).toEqual(
      of(7).shaping.map(({ spread }) => spread.after),
    );
    expect(rowsFor(inches(1.5), perCm(6 / 2.54), 'even')).toBe(10);
  });

  it('6 rounds to the inch for 8, a yoke of 72 written rounds: 9 in are 54 rounds, 18 plain ones left out', () => {
    // The asker's 3 in too deep give the 72: 72 / 6 − 72 / 8 = 3. Decreases every other round, counts of our own.
    const rounds = Array.from({ length: 36 }, (_, i) => ({
      round: rows(2 * (i + 1)),
      after: stitches(280 - 5 * (i + 1)),
    }));
    const scheme = asPattern({ direction: 'up', rows: rows(72), before: stitches(280), rounds });
    if ('kind' in scheme) throw new Error(scheme.kind);
    const made = yoke({
      direction: 'up',
      gauge: over4in(20, 24, 'round'),
      depth: inches(72 / 8),
      underarm: stitches(280),
      neck: stitches(100),
      scheme,
    });
    if (made.kind !== 'yoke') throw new Error(made.kind);
    expect(made.rows).toBe(54);
    expect(made.shaping).toHaveLength(36);
    const at = [0, ...made.shaping.map((s) => s.round as number)];
    const intervals = at.slice(1).map((round, i) => round - (at[i] ?? 0));
    expect(intervals.filter((n) => n === 1)).toHaveLength(18);
    expect(intervals.filter((n) => n === 2)).toHaveLength(18);
  });

  it('fronts of 40 and a back of 81, a decrease at each yoke edge every other row 9 times: 31 and 63', () => {
    const front = asPrinted('left', stitches(40), 1, [every(2, 9)], -1);
    const back = asPrinted('both', stitches(81), 1, [every(2, 9)], -1);
    expect(countAfter(stitches(40), front)).toBe(31);
    expect(countAfter(stitches(81), back)).toBe(63);
    // A front is half the back without the stitch at its front edge.
    expect(2 * countAfter(stitches(40), front) + 1).toBe(countAfter(stitches(81), back));
  });
});

describe('a question about a raglan', () => {
  it('flat, for a baby: each end of the next and five following 4th rows, then ten alternate rows: 52 to 20', () => {
    const events = asPrinted('both', stitches(52), 1, [every(4, 6), every(2, 10)], -1);
    expect(rowsOf(events)).toEqual([1, 5, 9, 13, 17, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41]);
    expect(knitEdges(52, events, 42).count).toBe(20);
  });

  it('front of a baby cardigan: five rows with the raglan edge on 1, 3, 5 and the neck edge on every row lose 8', () => {
    const [twelve, three] = [
      asPrinted('both', stitches(40), 1, [every(2, 6)], -1),
      asPrinted('left', stitches(28), 1, [every(2, 2)], -1),
    ];
    const raglanEdge = asPrinted('left', stitches(26), 1, [every(2, 3)], -1);
    const neckEdge = asPrinted('right', stitches(26), 1, [every(1, 5)], -1);
    const both = together(stitches(26), raglanEdge, neckEdge);
    expect([40 - countAfter(stitches(40), twelve), 28 - countAfter(stitches(28), three)]).toEqual([12, 2]);
    expect(26 - knitEdges(26, both, 5).count).toBe(8);
  });
});

describe('a question about neck and shoulders', () => {
  it('cardigan front of 31: 8 held, then 2, 2, 1, 1 off at the neck: 17 for the shoulder, 14 of the neck', () => {
    // Both fronts as one piece of 62 with a centre of 16; the gauge is our own.
    const made = neck({
      stitches: stitches(62),
      width: cm(14),
      depth: cm(8),
      gauge: over10cm(20, 28),
      centre: stitches(16),
      steps: [2, 2, 1, 1].map(stitches),
    });
    if (made.kind !== 'neck') throw new Error(made.kind);
    expect([made.sides.first.from, made.shoulder, made.stitches / 2]).toEqual([23, 17, 14]);
    expect(made.decreases.shaping).toEqual([]);
    expect(knitEdges(23, made.sides.last.events, made.rows).count).toBe(17);
  });

  it('hooded pullover of 72: ten off in the centre, nine rows of decreases: both shoulders 22, the neck 28', () => {
    // The gauge and depth are our own: ten rows, fewer than nine right-side ones.
    const made = neck({
      stitches: stitches(72),
      width: cm(14),
      depth: cm(12 / 2.8),
      gauge: over10cm(20, 28),
      centre: stitches(10),
      steps: [],
    });
    if (made.kind !== 'neck') throw new Error(made.kind);
    expect([made.sides.first.from, made.sides.last.from]).toEqual([31, 31]);
    expect(made.decreases.shaping).toHaveLength(9);
    expect([made.shoulder, made.stitches]).toEqual([22, 28]);
  });

  it('neck edge, fourth of six sizes: the next seven rows, then six alternate ones: 36 to 23', () => {
    const events = asPrinted('right', stitches(36), 1, [every(1, 7), every(2, 6)], -1);
    expect(rowsOf(events)).toEqual([1, 2, 3, 4, 5, 6, 7, 9, 11, 13, 15, 17, 19]);
    expect(knitEdges(36, events, 20).count).toBe(23);
  });

  it('neck of 30, second of seven sizes with dashes: rows 1, 9, 17, 23, 29, 35 leave 24', () => {
    const events = asPrinted('right', stitches(30), 1, [every(8, 3), every(6, 3)], -1);
    expect(rowsOf(events)).toEqual([1, 9, 17, 23, 29, 35]);
    expect(countAfter(stitches(30), events)).toBe(24);
  });

  it('shoulders of 89, fifth of six sizes: 13 off over four rows leave 37, 7 over two leave 23; 33 each', () => {
    const events = boundOff(stitches(89), [13, 13, 7], 0);
    expect(events.map((e) => e.after)).toEqual([76, 63, 50, 37, 30, 23]);
    expect(knitEdges(89, events, 6).count).toBe(23);
    const shoulder = events.filter((e) => e.edge === 'right').reduce((sum, e) => sum - e.change, 0);
    expect(shoulder).toBe(33);
  });
});
