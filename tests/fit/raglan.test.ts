import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type RaglanAsk, type RaglanShape, raglan } from '../../src/fit/raglan.ts';
import { RAGLAN_PARTS } from '../../src/fit/raglan-shape.ts';
import { CARRIERS } from '../../src/fit/spacing.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';
import { over10cm } from './at-gauge.ts';

/** Mostly counts that pairs of stitches can reach; now and then an odd difference, or a neck wider than the underarm. */
const part = (most: number) =>
  fc
    .record({
      neck: fc.integer({ min: 1, max: 40 }),
      pairs: fc.integer({ min: 0, max: most }),
      odd: fc.constantFrom(0, 0, 0, 0, 0, 0, 0, 1, -3),
    })
    .map(({ neck, pairs, odd }) => ({
      underarm: stitches(Math.max(2, neck + 2 * pairs + odd)),
      neck: stitches(neck),
    }));

const asks: fc.Arbitrary<RaglanAsk> = fc
  .record({
    direction: fc.constantFrom('up' as const, 'down' as const),
    depth: fc.double({ min: 8, max: 34, noNaN: true }),
    sts: fc.integer({ min: 10, max: 32 }),
    rows: fc.integer({ min: 14, max: 48 }),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    back: part(30),
    front: part(30),
    sleeve: part(20),
    carriers: fc.constantFrom(...CARRIERS),
    plain: fc.integer({ min: 0, max: 6 }),
    neckWanted: fc.double({ min: 30, max: 60, noNaN: true }),
  })
  .map((a) => ({
    direction: a.direction,
    depth: cm(a.depth),
    gauge: over10cm(a.sts, a.rows, a.worked),
    parts: { back: a.back, front: a.front, sleeve: a.sleeve },
    carriers: a.carriers,
    plain: rows(a.plain),
    neckWanted: cm(a.neckWanted),
  }));

/** What is wrong with a raglan, in words; empty when the whole yoke can be knitted as its rows say. */
function faults(a: RaglanAsk, made: RaglanShape): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  const count = (name: 'back' | 'front' | 'sleeve') => made.lines[name].spaced.from as number;
  const parts = [count('back'), count('sleeve'), count('front'), count('sleeve')];
  const order = ['back', 'sleeve', 'front', 'sleeve'] as const;
  const needle = Needle.castOn(
    parts.reduce((sum, n) => sum + n, 0),
    'round',
  );
  for (let row = 1; row <= made.rows; row++) {
    const shaping = made.shaping.find((s) => s.row === row);
    if (shaping === undefined) {
      needle.plain(1);
      continue;
    }
    const at = order.flatMap((name, i) => {
      const from = parts.slice(0, i).reduce((sum, n) => sum + n, 0);
      const to = from + (parts[i] ?? 0);
      const each = shaping.change[name] / 2;
      if (each === 0) return [];
      return [
        { before: from, change: each },
        { before: each < 0 ? to - 2 : to, change: each },
      ];
    });
    needle.shaped({ at });
    for (const [i, name] of order.entries()) parts[i] = (parts[i] ?? 0) + shaping.change[name];
    must(needle.count === shaping.after, `round ${row} leaves ${needle.count}, not ${shaping.after}`);
  }
  const neck = a.direction === 'up' ? needle.count : made.neck.stitches;
  must(neck === made.neck.stitches, `${neck} stitches at the neck`);
  must(Math.abs(made.neck.around - made.neck.stitches / a.gauge.stitches.perCm) < 1e-9, 'neck around');
  for (const name of RAGLAN_PARTS) {
    const { spaced } = made.lines[name];
    must(spaced.rows === made.rows, `the ${name} has other rows`);
    must(parts[order.indexOf(name)] === spaced.to, `the ${name} ends with ${parts[order.indexOf(name)]}`);
  }
  const beside = a.direction === 'up' ? (made.shaping[0]?.row ?? made.rows) - 1 : made.rows - last(made);
  must(made.shaping.length === 0 || beside >= a.plain, 'too few plain rows beside the underarm');
  for (const line of made.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

function last(made: RaglanShape): number {
  return made.shaping.at(-1)?.row ?? 0;
}

describe('a raglan', () => {
  it('knits back, front and sleeves together, each line at its own rate over the same rows', () => {
    let knitted = 0;
    fc.assert(
      fc.property(asks, (a) => {
        const made = raglan(a);
        if (made.kind !== 'raglan') return;
        knitted += 1;
        expect(faults(a, made)).toEqual([]);
      }),
      { numRuns: 1_000 },
    );
    expect(knitted).toBeGreaterThan(200);
  });

  it('names every part that cannot be shaped, and every way out it offers can be knitted', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(asks, (a) => {
        const made = raglan(a);
        if (made.kind === 'raglan') return;
        for (const { fault } of made.faults) met.set(fault.kind, (met.get(fault.kind) ?? 0) + 1);
        expect(made.alternatives).not.toEqual([]);
        for (const { raglan: other } of made.alternatives) expect(faults(a, other)).toEqual([]);
      }),
      { numRuns: 600 },
    );
    for (const kind of ['no multiple', 'too few rows', 'neck wider', 'neck too small'])
      expect([kind, (met.get(kind) ?? 0) > 5]).toEqual([kind, true]);
  });

  it('holds the neck that remains against the one wanted, and offers counts that come to it', () => {
    const made = raglan({
      direction: 'up',
      depth: cm(22),
      gauge: over10cm(20, 28, 'round'),
      parts: {
        back: { underarm: stitches(88), neck: stitches(34) },
        front: { underarm: stitches(88), neck: stitches(34) },
        sleeve: { underarm: stitches(60), neck: stitches(10) },
      },
      carriers: 'every row',
      plain: rows(0),
      neckWanted: cm(50),
    });
    if (made.kind !== 'raglan') throw new Error(made.kind);
    // 34 + 34 + 10 + 10 = 88 stitches at 2 per cm.
    expect(made.neck).toMatchObject({ stitches: 88, around: 44, difference: -6, verdict: 'too narrow' });
    expect(made.alternatives[0]?.raglan.neck).toMatchObject({ stitches: 100, verdict: 'as wanted' });
    expect(faults(baseOf(made), made.alternatives[0]?.raglan ?? made)).toEqual([]);
  });

  it('makes a compound line where one rate is not enough: faster beside the underarm', () => {
    const made = raglan({
      direction: 'up',
      depth: cm(20),
      gauge: over10cm(20, 28, 'round'),
      parts: {
        back: { underarm: stitches(110), neck: stitches(34) },
        front: { underarm: stitches(110), neck: stitches(34) },
        sleeve: { underarm: stitches(52), neck: stitches(12) },
      },
      carriers: 'every row',
      plain: rows(0),
      neckWanted: cm(46),
    });
    if (made.kind !== 'raglan') throw new Error(made.kind);
    // 56 rounds: 38 pairs on the body, 20 on a sleeve.
    expect(made.lines.back.spaced.runs).toEqual([
      { every: 1, times: 20 },
      { every: 2, times: 18 },
    ]);
    expect(made.lines.sleeve.spaced.runs).toEqual([
      { every: 2, times: 4 },
      { every: 3, times: 16 },
    ]);
  });

  it('is the same outline from the neck down as from the underarm up', () => {
    fc.assert(
      fc.property(asks, (a) => {
        const up = raglan({ ...a, carriers: 'every row', direction: 'up' });
        const down = raglan({ ...a, carriers: 'every row', direction: 'down' });
        expect(down.kind).toBe(up.kind);
        if (up.kind !== 'raglan' || down.kind !== 'raglan') return;
        for (const name of RAGLAN_PARTS) {
          const [rising, falling] = [up.lines[name].spaced, down.lines[name].spaced];
          expect(falling.shaping.length).toBe(rising.shaping.length);
          expect([falling.from, falling.to]).toEqual([rising.to, rising.from]);
        }
      }),
      { numRuns: 300 },
    );
  });
});

function baseOf(made: RaglanShape): RaglanAsk {
  const parts = Object.fromEntries(
    RAGLAN_PARTS.map((name) => {
      const { from, to } = made.lines[name].spaced;
      return [name, { underarm: from, neck: to }];
    }),
  ) as RaglanAsk['parts'];
  return {
    direction: made.direction,
    depth: made.depth,
    gauge: over10cm(20, 28, 'round'),
    parts,
    carriers: 'every row',
    plain: rows(0),
    neckWanted: made.neck.wanted,
  };
}
