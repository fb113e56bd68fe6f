/** Published examples of short-row darts, shoulder slopes, hems and necks, recomputed exactly and knitted on the simulator. */
import { describe, expect, it } from 'vitest';
import { bustDart } from '../../src/fit/bust-dart.ts';
import { type Gauge, rateAsPrinted, rowsFor } from '../../src/fit/gauge.ts';
import { type Neck, type NeckAsk, neck } from '../../src/fit/neck.ts';
import { neckWedge } from '../../src/fit/neck-wedge.ts';
import { type ShoulderAsk, shoulderSlope } from '../../src/fit/shoulder-slope.ts';
import { cm, inches, perCm, rows, stitches } from '../../src/fit/units.ts';
import { verticalDarts } from '../../src/fit/vertical-dart.ts';
import { layWedge, type Wedge } from '../../src/fit/wedge.ts';
import type { WedgeAsk } from '../../src/fit/wedge-base.ts';
import { knitEdges } from '../simulator/edges.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const perInch = (count: number) => perCm(count / 2.54);

function mustLay(ask: WedgeAsk): Wedge {
  const found = layWedge(ask);
  if (found.kind !== 'wedge') throw new Error(found.kind);
  return found;
}

/** Rows by which the deepest stitch outgrows the others. */
function knittedDepth(wedge: Wedge): number {
  const { heights } = knitWedge(Needle.castOn(wedge.needle, wedge.worked), wedge);
  return Math.max(...heights) - Math.min(...heights);
}

describe('How to Add Short Rows (for the bust) (knotions.com, year not given)', () => {
  // The bust points are not given; 8 in apart they leave the published inch at the side and outside the point.
  it('13 in at the side, 16 in over the bust, 20 stitches and 24 rows to 4 in: 18 short rows, 9 pairs, 95 stitches', () => {
    const front = stitches(95);
    const found = bustDart({
      depth: { from: 'lengths', front: inches(16), back: inches(13) },
      gauge: { stitchesPerCm: perInch(5), rowsPerCm: perInch(6) },
      worked: 'flat',
      direction: 'up',
      sides: 'both',
      needle: front,
      front: { start: 0, stitches: front },
      bustSpan: inches(8),
    });
    if (found.kind !== 'bust dart') throw new Error(found.kind);
    expect(19 * 5).toBe(front);
    expect(found.wedge.asked).toBeCloseTo(3 * 2.54, 9);
    expect([found.wedge.rows, found.wedge.turns.length / 2]).toEqual([18, 9]);
    expect(knittedDepth(found.wedge)).toBe(18);
    // One inch is 5 stitches: from the side to the first turn, and over both bust points with an inch beyond each.
    expect(found.wedge.turns[0]?.stitches).toBe(5);
    const last = found.wedge.turns.at(-1)?.stitches ?? Number.NaN;
    expect(Math.abs(front - 2 * last - (8 + 2) * 5)).toBeLessThanOrEqual(1);
  });
});

describe('Short Rows as Bust Darts, a doll-size sample (jg.net, 2010)', () => {
  it('1.5 cm at the side and 2.5 cm over the bust at 4.2 rows to the cm: 6 rows, 4 more, 10 in front', () => {
    const side = rowsFor(cm(1.5), perCm(4.2), 'even');
    const wedge = mustLay({
      purpose: 'bust dart',
      place: { level: 'bust', rows: rows(0), point: 'begins' },
      worked: 'round',
      sides: 'both',
      order: 'shortening',
      depth: cm(2.5 - 1.5),
      gauge: { stitchesPerCm: perCm(3), rowsPerCm: perCm(4.2) },
      needle: stitches(13 * 3),
      span: { start: 0, stitches: stitches(20) },
      inset: stitches(2),
      flat: stitches(8),
      outer: 'turn',
      counted: 'from the sides',
    });
    expect([side, wedge.rows, side + wedge.rows]).toEqual([6, 4, 10]);
    const needle = knitWedge(Needle.castOn(39, 'round').plain(5), wedge);
    expect(needle.heights[10]).toBe(10);
    expect(needle.heights[30]).toBe(6);
  });
});

describe('Bust Dart Math (Knitting Daily, interweave.com, 2008)', () => {
  it('42 in over the bust, 32 in below it, 4 stitches to the inch and 4 to a round: 10 rounds', () => {
    const found = verticalDarts({
      extra: { from: 'width', width: inches(42 - 32) },
      gauge: { stitchesPerCm: perInch(4), rowsPerCm: perInch(6) },
      front: stitches(64),
      bustSpan: inches(8),
      perRow: 4,
      carriers: 'every row',
      widenOver: rows(40),
      narrowOver: null,
    });
    if (found.kind !== 'vertical darts') throw new Error(found.kind);
    expect(found.widen.shaping.length).toBe(10);
    expect(found.width).toBeCloseTo(10 * 2.54, 9);
  });
});

const SHOULDER: ShoulderAsk = {
  how: 'bind-offs',
  direction: 'up',
  drop: cm(2),
  gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
  shoulder: stitches(16),
  on: { sides: 'start' },
  larger: 'innermost',
};

describe('Sweater shoulders: transform stair steps to short rows (TECHknitting, 2012)', () => {
  // The gauge is ours: 2 cm at 3 rows to the cm are the 6 rows of three steps.
  it.each(['bind-offs', 'short rows'] as const)(
    '16 stitches in 3 steps over 6 rows by %s: 5, 5 and 6 with 11, 6 and none left',
    (how) => {
      expect(shoulderSlope({ ...SHOULDER, how })).toMatchObject({
        rows: 6,
        steps: [5, 5, 6],
        remaining: [11, 6, 0],
      });
    },
  );

  it('as short rows leaves 5 and then 10 stitches unworked', () => {
    const found = shoulderSlope({ ...SHOULDER, how: 'short rows' });
    if (found.kind !== 'short-row shoulder') throw new Error(found.kind);
    expect(found.wedge.turns.map((turn) => turn.stitches)).toEqual([5, 10]);
  });
});

describe('A Question Answered? (a knitting weblog, 2013)', () => {
  it('75 stitches top-down in steps of 7, 8, 8 around 29 for the neck: first 29 + 8, then 8 + 29 + 8', () => {
    const found = shoulderSlope({
      ...SHOULDER,
      how: 'short rows',
      direction: 'down',
      shoulder: stitches(23),
      on: { sides: 'both', neck: stitches(29) },
    });
    if (found.kind !== 'short-row shoulder') throw new Error(found.kind);
    expect(found.steps).toEqual([7, 8, 8]);
    expect(found.wedge.needle).toBe(75);
    // The source counts the pair of rows over all the stitches among the six.
    expect(found.rows).toBe(6);
    const needle = knitWedge(Needle.castOn(75, 'flat'), found.wedge);
    const [first, second] = needle.log;
    expect(first?.worked).toBe(23 + 29 + 8);
    expect(second?.worked).toBe(8 + 29 + 8);
  });
});

describe('Shoulder Slope, Fitting part 2 (a knitting weblog, 2013)', () => {
  it('0.75 in at 7 rows to the inch: 5.25, so 6 rows in 3 steps', () => {
    const found = shoulderSlope({
      ...SHOULDER,
      drop: inches(0.75),
      gauge: { stitchesPerCm: perInch(5), rowsPerCm: perInch(7) },
    });
    if (found.kind !== 'stepped shoulder') throw new Error(found.kind);
    expect(found.workings[0]?.exact).toBeCloseTo(5.25, 9);
    expect([found.rows, found.steps.length]).toEqual([6, 3]);
  });
});

describe("How to lower the bottom edge on the back of a handknit sweater (a designer's tutorial, year not given)", () => {
  it('5 cm at 22 rounds to 10 cm and 120 stitches between the first turns: 12 rows, 10 stitches from turn to turn', () => {
    const wedge = mustLay({
      purpose: 'hem',
      place: { level: 'hem', rows: rows(0), point: 'begins' },
      worked: 'round',
      sides: 'both',
      order: 'shortening',
      depth: cm(5),
      gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2.2) },
      needle: stitches(240),
      span: { start: 120, stitches: stitches(120) },
      inset: stitches(0),
      flat: stitches(0),
      outer: 'turn',
      counted: 'from the centre',
    });
    expect(wedge.workings[0]?.exact).toBeCloseTo(11, 9);
    expect([wedge.rows, wedge.turns.length / 2]).toEqual([12, 6]);
    expect(wedge.steps).toEqual([10, 10, 10, 10, 10, 10]);
    expect(wedge.turns.filter((turn) => turn.side === 'end').map((turn) => turn.stitches)).toEqual([
      60, 50, 40, 30, 20, 10,
    ]);
    expect(wedge.depth).toBeCloseTo(5.45, 2);
    expect(knittedDepth(wedge)).toBe(12);
  });
});

describe('Why 120 stitches, a yoke pullover (miclasouris.over-blog.com, 2019)', () => {
  // The gauge is ours, chosen to give the published stitches and rows: 60 and 88 stitches, 10 rows.
  it('120 stitches, first turn 30 from the centre back, each further 3 or 4 on, 10 short rows', () => {
    const found = neckWedge({
      purpose: 'back neck raise',
      depth: cm(4),
      gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2.5) },
      worked: 'round',
      direction: 'down',
      needle: stitches(120),
      centre: 0,
      base: cm(44),
      middle: cm(30),
      after: rows(0),
    });
    if (found.kind !== 'wedge') throw new Error(found.kind);
    const end = found.turns.filter((turn) => turn.side === 'end').map((turn) => turn.stitches as number);
    expect([found.rows, end.length, end[0]]).toEqual([10, 5, 30]);
    for (const step of found.steps) expect([3, 4]).toContain(step);
    expect(end.at(-1)).toBeGreaterThanOrEqual(42);
    expect(end.at(-1)).toBeLessThanOrEqual(46);
    const needle = knitWedge(Needle.castOn(120, 'round'), found);
    expect(needle.log[1]?.worked).toBe(60);
    expect((needle.heights[0] ?? 0) - (needle.heights[60] ?? 0)).toBe(10);
  });
});

/** The gauges of the next two are ours where nothing is said; 60 rows leave room for every decrease. */
function neckOf(ask: Pick<NeckAsk, 'stitches' | 'width'> & Partial<NeckAsk>): Neck {
  const found = neck({ depth: inches(10), gauge: FOUR_BY_SIX, ...ask });
  if (found.kind !== 'neck') throw new Error(found.kind);
  return found;
}
const FOUR_BY_SIX: Gauge = {
  stitches: rateAsPrinted({ count: 4, span: inches(1), unit: 'in' }),
  rows: rateAsPrinted({ count: 6, span: inches(1), unit: 'in' }),
  worked: 'flat',
};

describe('Speed knitting: a crew neck, forum answer (forum.knittinghelp.com, year not given)', () => {
  it('47 stitches less 5 in the centre, then 2, 1, 1, 1 at each neck edge: 9 off at first, 15 in all, 16 left a side', () => {
    const found = neckOf({
      stitches: stitches(47),
      width: inches(15 / 4),
      centre: stitches(5),
      steps: [2, 1, 1, 1].map(stitches),
    });
    const { first, last } = found.sides;
    const takenAt = (side: typeof last) => side.events.map((event) => side.from - event.after);
    expect(takenAt(last)).toEqual([2, 3, 4, 5]);
    expect(5 + (takenAt(first)[0] ?? 0) + (takenAt(last)[0] ?? 0)).toBe(9);
    expect([found.stitches, found.shoulder]).toEqual([15, 16]);
    expect(knitEdges(21, last.events, found.rows).count).toBe(16);
  });
});

describe('Closing a V neck: rows available (a knitting weblog, 2014)', () => {
  it('20 cm of armhole at 34 rows to 10 cm are 68 rows', () => {
    expect(rowsFor(cm(20), perCm(34 / 10))).toBe(68);
    expect(rowsFor(cm(20), perCm(34 / 10), 'even')).toBe(68);
  });
});

describe('Convert a top-down crew, scoop or square neck to a V neck (knit1knitall.blogspot.com, 2015)', () => {
  // The source widens from the shoulders down and casts the odd stitch on at the point; the engine's V is knitted up to
  // the shoulders and binds it off there: the same stitches on the same rows. Shoulders of 20 stitches are ours.
  it.each([
    [30, 15, 0],
    [31, 15, 1],
  ])('a neck of %d stitches has %d at each front edge and %d at the point', (count, each, point) => {
    const found = neckOf({ stitches: stitches(2 * 20 + count), width: inches(count / 4), shape: 'V' });
    expect(found).toMatchObject({ stitches: count, centre: point, shoulder: 20 });
    expect(found.decreases.shaping).toHaveLength(each);
    expect(knitEdges(20 + each, found.sides.last.events, found.rows).count).toBe(20);
  });
});
