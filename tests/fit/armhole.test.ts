import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Armhole, type ArmholeAsk, armhole } from '../../src/fit/armhole.ts';
import { printedArmhole } from '../../src/fit/armhole-printed.ts';
import { legs } from '../../src/fit/edge-length.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { knitEdges } from '../simulator/edges.ts';
import { over10cm } from './at-gauge.ts';
import { unstated } from './stated.ts';
import { told } from './told.ts';

const asks: fc.Arbitrary<ArmholeAsk> = fc
  .record({
    crossBack: fc.integer({ min: 10, max: 160 }),
    loss: fc.integer({ min: -3, max: 70 }),
    depth: fc.double({ min: 4, max: 34, noNaN: true }),
    sts: fc.integer({ min: 8, max: 40 }),
    rows: fc.integer({ min: 10, max: 56 }),
    bindOffs: fc.option(fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 4 }), { nil: undefined }),
    shapedBy: fc.option(fc.double({ min: 1, max: 30, noNaN: true }), { nil: undefined }),
    decreases: fc.constantFrom('quick' as const, 'spread' as const),
  })
  .map((a) => ({
    bust: stitches(Math.max(1, a.crossBack + a.loss)),
    crossBack: stitches(a.crossBack),
    depth: cm(a.depth),
    gauge: over10cm(a.sts, a.rows),
    decreases: a.decreases,
    ...(a.bindOffs === undefined ? {} : { bindOffs: a.bindOffs.map(stitches) }),
    ...(a.shapedBy === undefined ? {} : { shapedBy: cm(a.shapedBy) }),
  }));

/** What is wrong with an armhole, in words; empty when it can be knitted as it says and adds up. */
function faults(a: ArmholeAsk, made: Armhole): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  const needle = knitEdges(a.bust, made.events, made.rows);
  must(needle.count === a.crossBack, `ends with ${needle.count}`);
  must(made.rows % 2 === 0, 'an odd number of rows');
  must(Math.abs(made.rows / a.gauge.rows.perCm - made.depth) < 1e-9, 'rows and depth disagree');
  must(made.straight === made.rows - (made.events.at(-1)?.row ?? 0), 'the straight rows do not add up');
  must(Math.abs(walk(a, made) - made.edge) < 1e-9, 'the edge is not as long as its corners say');
  const { bust, crossBack, rows, depth, straight, edge } = made;
  const figures = { bust, crossBack, rows, depth, straight, edge };
  must(unstated(figures, made.workings).length === 0, `no working for ${unstated(figures, made.workings)}`);
  for (const line of made.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

/** The edge from the counts alone: corner to corner at the right edge, without the product's own legs. */
function walk(a: ArmholeAsk, made: Armhole): number {
  let [length, below] = [0, 0];
  for (const event of made.events.filter((e) => e.edge !== 'left')) {
    const up = (event.row - 1 - below) / a.gauge.rows.perCm;
    length += Math.hypot(event.change / a.gauge.stitches.perCm, up);
    below = event.row - 1;
  }
  return length + (made.rows - below) / a.gauge.rows.perCm;
}

describe('an armhole', () => {
  it('knits from the bust to the cross back, row by row, as it says', () => {
    let knitted = 0;
    fc.assert(
      fc.property(asks, (a) => {
        const made = armhole(a);
        if (made.kind !== 'armhole') return;
        knitted += 1;
        expect(faults(a, made)).toEqual([]);
      }),
      { numRuns: 2_000 },
    );
    expect(knitted).toBeGreaterThan(250);
  });

  it('says why it cannot be shaped, and every way out it offers can be knitted', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(asks, (a) => {
        const made = armhole(a);
        if (made.kind === 'armhole') return;
        met.set(made.kind, (met.get(made.kind) ?? 0) + 1);
        for (const { armhole: other } of made.alternatives) {
          const asked = { ...a, bust: other.bust, crossBack: other.crossBack };
          expect(faults(asked, other)).toEqual([]);
        }
        if (made.kind === 'too few rows') {
          expect(made.needed).toBeGreaterThan(made.available);
          expect(made.alternatives.map((o) => o.way)).toContain('deeper');
        }
      }),
      { numRuns: 2_000 },
    );
    for (const kind of ['odd loss', 'cross back wider', 'bind-offs exceed the loss', 'too few rows'])
      expect(met.get(kind)).toBeGreaterThan(50);
  });

  it('decreases on right-side rows alone wherever they are enough', () => {
    fc.assert(
      fc.property(asks, (a) => {
        const made = armhole(a);
        if (made.kind !== 'armhole' || made.decreases.carriers === 'odd rows') return;
        const shapedBy = a.shapedBy === undefined ? made.depth / 2 : Math.min(a.shapedBy, made.depth);
        const pairs = Math.floor((shapedBy * a.gauge.rows.perCm) / 2 + 0.5 + 1e-9);
        expect(made.decreases.shaping.length).toBeGreaterThan(pairs - made.bindOffs.length);
      }),
      { numRuns: 2_000 },
    );
  });

  it('shapes 100 stitches to 78 over 20 cm: 6 off, 5 right-side decreases, then straight', () => {
    const made = armhole({
      bust: stitches(100),
      crossBack: stitches(78),
      depth: cm(20),
      gauge: over10cm(22, 30),
    });
    if (made.kind !== 'armhole') throw new Error(made.kind);
    expect(made.bindOffs).toEqual([6]);
    expect(made.events.map((e) => [e.row, e.edge, e.change, e.after])).toEqual([
      [1, 'right', -6, 94],
      [2, 'left', -6, 88],
      [3, 'both', -1, 86],
      [5, 'both', -1, 84],
      [7, 'both', -1, 82],
      [9, 'both', -1, 80],
      [11, 'both', -1, 78],
    ]);
    expect(made.straight).toBe(49);
    expect(legs(made.events, made.rows)).toEqual([
      { stitches: 6, rows: 0, times: 1 },
      { stitches: 1, rows: 2, times: 5 },
      { stitches: 0, rows: 50, times: 1 },
    ]);
    const lines = told(made.workings);
    expect(lines.slice(0, 7)).toEqual([
      'rows of the armhole: a * b = 60 rows',
      'rows by which shaping is done: a / 2 = 30 rows',
      'stitches bound off at each underarm: a * b = 6 stitches',
      'stitches to lose at each side: (a - b) / 2 = 11 stitches',
      'decreases at each side: a - b = 5 times',
      'straight rows to the shoulder: a - b = 49 rows',
      'armhole depth as knitted: a / b = 20 cm',
    ]);
    expect(lines.slice(-4)).toEqual([
      'armhole edge, flat: a / b = 2.727273 cm',
      'armhole edge, sloping: √((a / b) * (a / b) + (c / d) * (c / d)) * n = 4.034402 cm',
      'armhole edge, upright: c / d = 16.666667 cm',
      'armhole edge: e1 + e2 + e3 = 23.428342 cm',
    ]);
    // By hand: 6 sts flat 2.727; five slopes of 1 st over 2 rows 5 × 0.8069; 50 rows upright 16.667 cm.
    expect(made.edge).toBeCloseTo(23.43, 2);
  });

  it('binds off an inch at most, all there is to lose at least, and nothing where nothing is lost', () => {
    const across = (crossBack: number, more: Partial<ArmholeAsk> = {}) =>
      armhole({
        bust: stitches(100),
        crossBack: stitches(crossBack),
        depth: cm(20),
        gauge: over10cm(22, 30),
        ...more,
      });
    expect([100, 94, 88].map((count) => across(count))).toMatchObject([
      { kind: 'armhole', bindOffs: [], events: [] },
      { kind: 'armhole', bindOffs: [3], straight: 58 },
      { kind: 'armhole', bindOffs: [6], straight: 58 },
    ]);
    expect(across(122)).toMatchObject({ kind: 'cross back wider', by: 22 });
    const both = [stitches(4), stitches(3)];
    expect(across(90, { bindOffs: both })).toMatchObject({
      kind: 'bind-offs exceed the loss',
      boundOff: 7,
      loss: 5,
    });
    expect(across(86, { bindOffs: both })).toMatchObject({ kind: 'armhole', straight: 56 });
    const shaped = across(78, { shapedBy: cm(9) });
    if (shaped.kind !== 'armhole') throw new Error(shaped.kind);
    expect(told(shaped.workings)).toContain('rows by which shaping is done: a * b = 28 rows');
    const straight = across(88);
    if (straight.kind !== 'armhole') throw new Error(straight.kind);
    expect(told(straight.workings).some((line) => line.startsWith('decreases at each side'))).toBe(false);
  });

  it('as printed measures the same as when it was shaped here, and says where it does not come out', () => {
    const gauge = over10cm(22, 30);
    const made = armhole({ bust: stitches(100), crossBack: stitches(78), depth: cm(20), gauge });
    if (made.kind !== 'armhole') throw new Error(made.kind);
    const ask = {
      bust: stitches(100),
      bindOffs: made.bindOffs,
      decreases: made.decreases.runs,
      rows: made.rows,
      gauge,
    };
    expect(printedArmhole(ask)).toMatchObject({ crossBack: 78, edge: made.edge, events: made.events });
    const cut = printedArmhole({ ...ask, rows: rows(8) });
    expect(cut).toMatchObject({ kind: 'does not come out', lastShapingRow: 11, rows: 8 });
    const tooMany = printedArmhole({ ...ask, decreases: [{ every: rows(1), times: 50 }] });
    expect(tooMany).toMatchObject({ kind: 'does not come out', left: -12 });
  });
});
