import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { armhole } from '../../src/fit/armhole.ts';
import { type Cap, type CapAsk, cap } from '../../src/fit/cap.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { SAMPLE_PIECES } from '../../src/fit/sample.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitEdges } from '../simulator/edges.ts';
import { over10cm } from './at-gauge.ts';
import { unstated } from './stated.ts';

/** A body from which an armhole is shaped, and a sleeve for it: children to large adults, thick to fine yarn. */
const garments = fc.record({
  sts: fc.integer({ min: 10, max: 36 }),
  ratio: fc.double({ min: 1.2, max: 1.6, noNaN: true }),
  back: fc.integer({ min: 32, max: 76 }),
  lossShare: fc.double({ min: 0.06, max: 0.14, noNaN: true }),
  depthShare: fc.double({ min: 0.34, max: 0.46, noNaN: true }),
  armShare: fc.double({ min: 1.3, max: 1.75, noNaN: true }),
  frontDeeper: fc.integer({ min: -2, max: 2 }),
  ease: fc.constantFrom(0, 0, 1, 2),
});
type Garment = typeof garments extends fc.Arbitrary<infer T> ? T : never;

/** The cap to ask for, or null where the body's own armhole cannot be shaped. */
function askFor(g: Garment): CapAsk | null {
  const gauge = over10cm(g.sts, Math.round(g.sts * g.ratio));
  const bust = Math.round((g.back * g.sts) / 10);
  const loss = Math.round(bust * g.lossShare);
  const shape = (depth: number) =>
    armhole({ bust: stitches(bust), crossBack: stitches(bust - 2 * loss), depth: cm(depth), gauge });
  const depth = g.back * g.depthShare;
  const [back, front] = [shape(depth), shape(depth + g.frontDeeper)];
  if (back.kind !== 'armhole' || front.kind !== 'armhole') return null;
  return {
    upperArm: stitches(Math.round((g.back * g.depthShare * g.armShare * g.sts) / 10)),
    armhole: { front: front.edge, back: back.edge },
    depth: back.depth,
    bindOff: back.bindOffs[0] ?? stitches(1),
    gauge,
    ease: cm(g.ease),
  };
}

/** What is wrong with a cap, in words; empty when it can be knitted as it says and fits its armhole. */
function faults(a: Pick<CapAsk, 'gauge' | 'bindOff' | 'armhole'>, made: Cap, ease: number): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  const row = 1 / a.gauge.rows.perCm;
  const needle = knitEdges(made.upperArm, made.events, made.rows);
  must(needle.count === made.top, `${needle.count} stitches are left, not ${made.top}`);
  must(needle.next.side === 'right side', 'the final bind-off lies in a wrong-side row');
  const wanted = a.armhole.front + a.armhole.back + ease;
  const edge = corners(made, a);
  must(Math.abs(edge - made.edge) < 1e-9, `the edge measures ${edge}, not ${made.edge}`);
  must(Math.abs(edge - wanted) <= row + 1e-9, `the edge is off by ${edge - wanted}`);
  must(Math.abs(made.difference - (edge - wanted)) < 1e-9, 'the difference is not edge less wanted');
  must(made.events[0]?.change === -a.bindOff, 'the first bind-off does not match the body');
  const { rows, height, top, wanted: asked, difference, shoulderFromCentre } = made;
  const figures = { rows, height, top, edge: made.edge, wanted: asked, difference, shoulderFromCentre };
  must(unstated(figures, made.workings).length === 0, `no working for ${unstated(figures, made.workings)}`);
  must(JSON.stringify(JSON.parse(JSON.stringify(made))) === JSON.stringify(made), 'not plain data');
  const stages = made.stages.map((s) => s.stage);
  must(stages[0] === 'bind off' && stages.at(-1) === 'top' && stages.length === 5, stages.join());
  for (const line of made.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

/** Twice the right edge, from corner to corner, and the top. */
function corners(made: Cap, { gauge }: Pick<CapAsk, 'gauge'>): number {
  let [side, below] = [0, 0];
  for (const event of made.events.filter((e) => e.edge !== 'left')) {
    side += Math.hypot(event.change / gauge.stitches.perCm, (event.row - 1 - below) / gauge.rows.perCm);
    below = event.row - 1;
  }
  side += (made.rows - below) / gauge.rows.perCm;
  return 2 * side + made.top / gauge.stitches.perCm;
}

describe('a set-in cap', () => {
  it('has an edge as long as its armhole within one row, for 1,000 random armholes that can have one', () => {
    let [solved, refused] = [0, 0];
    fc.assert(
      fc.property(garments, (g) => {
        const ask = askFor(g);
        if (ask === null) return;
        const made = cap(ask);
        if (made.kind !== 'cap') {
          refused += 1;
          return;
        }
        solved += 1;
        expect(faults(ask, made, ask.ease ?? 0)).toEqual([]);
      }),
      { numRuns: 1_400 },
    );
    expect(solved).toBeGreaterThanOrEqual(1_000);
    expect(refused).toBeLessThan(solved / 5);
  });

  it('is found exactly where an exhaustive search over all schedules finds one', () => {
    const seen = { cap: 0, cannot: 0 };
    fc.assert(
      fc.property(smallCases, (ask) => {
        const made = cap(ask);
        const edges = allEdges(ask);
        const row = 1 / ask.gauge.rows.perCm;
        const wanted = ask.armhole.front + ask.armhole.back;
        const exists = edges.some((edge) => Math.abs(edge - wanted) <= row);
        expect(made.kind === 'cap').toBe(exists);
        seen[made.kind === 'cap' ? 'cap' : 'cannot'] += 1;
        if (made.kind === 'armhole edge too short') expect(made.shortest).toBeCloseTo(Math.min(...edges), 9);
        if (made.kind === 'armhole edge too long') expect(made.longest).toBeCloseTo(Math.max(...edges), 9);
        if (made.kind === 'no whole rows agree') {
          const nearest = Math.min(...edges.map((edge) => Math.abs(edge - wanted)));
          expect(Math.abs(made.nearest - wanted)).toBeCloseTo(nearest, 9);
        }
      }),
      { numRuns: 500 },
    );
    expect(seen.cap).toBeGreaterThan(60);
    expect(seen.cannot).toBeGreaterThan(60);
  });

  it('says why there is none, and every way out it offers fits', () => {
    const met = new Map<string, number>();
    const wild = fc.record({
      upperArm: fc.integer({ min: 4, max: 140 }),
      edge: fc.double({ min: 4, max: 40, noNaN: true }),
      depth: fc.double({ min: 2, max: 30, noNaN: true }),
      bindOff: fc.integer({ min: 1, max: 14 }),
      top: fc.option(fc.integer({ min: 2, max: 40 }), { nil: undefined }),
    });
    fc.assert(
      fc.property(wild, (w) => {
        const ask: CapAsk = {
          upperArm: stitches(w.upperArm),
          armhole: { front: cm(w.edge), back: cm(w.edge) },
          depth: cm(w.depth),
          bindOff: stitches(w.bindOff),
          gauge: over10cm(22, 30),
          ...(w.top === undefined ? {} : { top: stitches(w.top) }),
        };
        const made = cap(ask);
        if (made.kind === 'cap') return;
        met.set(made.kind, (met.get(made.kind) ?? 0) + 1);
        for (const { way, cap: other, by = 0 } of made.alternatives) {
          const edge = cm(w.edge + (way === 'deeper armhole' ? by : 0));
          const bindOff = way === 'bind off less' ? stitches(-(other.events[0]?.change ?? 0)) : ask.bindOff;
          const sewn = { ...ask, bindOff, armhole: { front: edge, back: edge } };
          expect(faults(sewn, other, way === 'ease the cap in' ? by : 0)).toEqual([]);
        }
      }),
      { numRuns: 800 },
    );
    for (const kind of [
      'nothing left for a cap',
      'top of the wrong parity',
      'armhole too shallow',
      'armhole edge too short',
      'armhole edge too long',
    ])
      expect([kind, (met.get(kind) ?? 0) > 10]).toEqual([kind, true]);
  });

  it('comes within two rows of the caps that the sample pattern prints, at each of its ten sizes', () => {
    for (const size of SAMPLE_PIECES.sizes) {
      const { bust, 'cross back': cross, 'upper arm': arm, 'cap top': top } = size.counts;
      const gauge = over10cm(22, 30);
      const made = armhole({
        bust: bust ?? stitches(0),
        crossBack: cross ?? stitches(0),
        depth: size.finished['armhole depth'] ?? cm(0),
        gauge,
        bindOffs: [size.armhole?.boundOff ?? stitches(0)],
      });
      if (made.kind !== 'armhole') throw new Error(`size ${size.label}: ${made.kind}`);
      const sleeve = cap({
        upperArm: arm ?? stitches(0),
        armhole: { front: made.edge, back: made.edge },
        depth: made.depth,
        bindOff: made.bindOffs[0] ?? stitches(0),
        gauge,
        top: top ?? stitches(0),
      });
      if (sleeve.kind !== 'cap') throw new Error(`size ${size.label}: ${sleeve.kind}`);
      expect(Math.abs(sleeve.rows - (size.rows?.cap ?? 0))).toBeLessThanOrEqual(2);
    }
  });

  it('over a fuller upper arm in the same armhole is flatter and two stitches wider at the top', () => {
    const over = (upperArm: number) => {
      const made = cap({
        upperArm: stitches(upperArm),
        armhole: { front: cm(23.5), back: cm(23.5) },
        depth: cm(20),
        bindOff: stitches(6),
        gauge: over10cm(22, 30),
      });
      if (made.kind !== 'cap') throw new Error(made.kind);
      return made;
    };
    const [before, after] = [over(70), over(78)];
    expect(after.rows).toBeLessThan(before.rows);
    expect(after.top - before.top).toBe(2);
    expect(Math.abs(after.edge - before.edge)).toBeLessThanOrEqual(2 / 3);
  });

  it('moves the shoulder seam off the middle of the top where front and back differ', () => {
    const made = cap({
      upperArm: stitches(70),
      armhole: { front: cm(24.5), back: cm(23) },
      depth: cm(20),
      bindOff: stitches(6),
      gauge: over10cm(22, 30),
    });
    if (made.kind !== 'cap') throw new Error(made.kind);
    expect(made.shoulderFromCentre).toBe(0.75);
  });
});

const smallCases: fc.Arbitrary<CapAsk> = fc
  .record({
    loss: fc.integer({ min: 3, max: 8 }),
    bindOff: fc.integer({ min: 1, max: 3 }),
    top: fc.integer({ min: 2, max: 9 }),
    depthRows: fc.integer({ min: 10, max: 26 }),
    stretch: fc.double({ min: 1, max: 1.9, noNaN: true }),
    sts: fc.integer({ min: 8, max: 24 }),
    rows: fc.integer({ min: 12, max: 32 }),
  })
  .map((s) => {
    const upperArm = 2 * (s.loss + s.bindOff) + s.top;
    const edge = cm(((upperArm * 10) / s.sts / 2) * s.stretch);
    return {
      upperArm: stitches(upperArm),
      armhole: { front: edge, back: edge },
      depth: cm((s.depthRows + 0.1) / (s.rows / 10)),
      bindOff: stitches(s.bindOff),
      gauge: over10cm(s.sts, s.rows),
      top: stitches(s.top),
    };
  });

/** The edges of all caps of fast, slow and fast, by writing out the change in every right-side row in all ways. */
function allEdges(ask: CapAsk): number[] {
  const top = ask.top ?? 0;
  const loss = (ask.upperArm - top) / 2 - ask.bindOff;
  const mostPairs = Math.floor((ask.depth * ask.gauge.rows.perCm) / 2) - 1;
  const found: number[] = [];
  const walk = (written: string, left: number): void => {
    if (left === 0) {
      if (isCap(written)) found.push(lengthOf(written, ask, top));
      return;
    }
    if (written.length === mostPairs) return;
    for (const change of [0, 1, 2, 3]) if (change <= left) walk(written + change, left - change);
  };
  walk('', loss);
  return found;
}

/** Steps of one size, then single decreases further apart whose intervals differ by one pair at most, then steps. */
function isCap(written: string): boolean {
  const [, slow] = /^(?:1+((?:0+1)+)1+|2+((?:0*1)+)2+|3+((?:0*1)+)3+)$/.exec(written)?.filter(Boolean) ?? [];
  if (slow === undefined) return false;
  const intervals = (slow.match(/0*1/g) ?? []).map((s) => s.length);
  return Math.max(...intervals) - Math.min(...intervals) <= 1;
}

function lengthOf(written: string, { gauge, bindOff }: CapAsk, top: number): number {
  let [side, up] = [bindOff / gauge.stitches.perCm, 0];
  for (const change of written) {
    up += 2;
    if (change === '0') continue;
    side += Math.hypot(Number(change) / gauge.stitches.perCm, up / gauge.rows.perCm);
    up = 0;
  }
  return 2 * (side + (up + 2) / gauge.rows.perCm) + top / gauge.stitches.perCm;
}
