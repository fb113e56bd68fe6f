import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { CARRIERS, capacity, type Spaced, type SpacingAsk, space } from '../../src/fit/spacing.ts';
import { perCm, rows, stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

const ask = fc
  .record({
    rows: fc.integer({ min: 0, max: 200 }),
    from: fc.integer({ min: 1, max: 320 }),
    to: fc.integer({ min: 1, max: 320 }),
    perRow: fc.constantFrom(1, 2, 4),
    carriers: fc.constantFrom(...CARRIERS),
    lead: fc.integer({ min: 0, max: 20 }),
    trail: fc.integer({ min: 0, max: 20 }),
    order: fc.constantFrom('grouped' as const, 'interleaved' as const),
  })
  .map((a) => a as unknown as SpacingAsk);

/** Cases that can be spaced: the end count is built from a number of shaping rows that fits. */
const feasible = fc
  .tuple(ask, fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean())
  .map(([a, share, down]) => {
    const times = Math.floor(share * capacity(a));
    const change = times * a.perRow;
    return down
      ? { ...a, from: stitches(a.from + change), to: a.from }
      : { ...a, to: stitches(a.from + change) };
  });

function mayCarry(a: SpacingAsk, row: number): boolean {
  if (row <= a.lead || row > a.rows - a.trail) return false;
  return a.carriers === 'every row' || row % 2 === (a.carriers === 'odd rows' ? 1 : 0);
}

/** What is wrong with a spacing, in words; empty when it adds up. */
function faults(a: SpacingAsk, s: Spaced): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  let [row, count] = [0, a.from as number];
  for (const shaped of s.shaping) {
    must(mayCarry(a, shaped.row), `row ${shaped.row} may not carry shaping`);
    must(shaped.row > row, `row ${shaped.row} comes twice`);
    must(Math.abs(shaped.after - count) === a.perRow, `row ${shaped.row} changes ${shaped.after - count}`);
    [row, count] = [shaped.row, shaped.after];
  }
  must(count === a.to, `ends with ${count}`);
  const inRuns = s.runs.reduce((sum, r) => sum + r.every * r.times, 0);
  must(s.base + inRuns + s.plainAfter === a.rows, 'rows do not add up');
  must(s.runs.reduce((sum, r) => sum + r.times, 0) === s.shaping.length, 'runs and rows disagree');
  must(s.shaping.length === 0 || s.plainAfter >= a.trail, 'too few plain rows at the end');
  const intervals = s.runs.map((r) => r.every as number);
  const step = a.carriers === 'every row' ? 1 : 2;
  must(Math.max(...intervals) - Math.min(...intervals) <= step || intervals.length === 0, 'uneven intervals');
  for (const line of s.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

describe('shaping spaced over a section', () => {
  it('adds up in stitches and rows and never shapes on a row that may not carry it', () => {
    fc.assert(
      fc.property(feasible, (a) => {
        const s = space(a);
        if (s.kind !== 'spaced') throw new Error(`expected a spacing, got ${s.kind}`);
        expect(faults(a, s)).toEqual([]);
      }),
      { numRuns: 10_000 },
    );
  });

  it('fills the rows: no later row could carry the last shaping', () => {
    fc.assert(
      fc.property(feasible, (a) => {
        const s = space(a) as Spaced;
        const last = s.shaping.at(-1)?.row;
        if (last === undefined) return;
        const later = Array.from({ length: a.rows - last }, (_, i) => last + 1 + i);
        expect(later.filter((row) => mayCarry(a, row))).toEqual([]);
      }),
      { numRuns: 2_000 },
    );
  });

  it('is as even as the best of all arrangements, by exhaustive search up to 24 rows', () => {
    let cases = 0;
    for (const carriers of CARRIERS) {
      const step = carriers === 'every row' ? 1 : 2;
      for (let length = 1; length <= 24; length += 1) {
        for (const [lead, trail] of [
          [0, 0],
          [2, 0],
          [0, 3],
          [1, 4],
        ] as const) {
          const carrying = Array.from({ length }, (_, i) => i + 1).filter((row) =>
            mayCarry({ rows: length, carriers, lead, trail } as unknown as SpacingAsk, row),
          );
          const bound = { rows: rows(length), carriers, lead: rows(lead), trail: rows(trail) };
          expect(capacity(bound)).toBe(carrying.length);
          for (let times = 1; times <= carrying.length; times += 1) {
            const s = space({
              ...bound,
              from: stitches(10),
              to: stitches(10 + 2 * times),
              perRow: 2,
              order: 'grouped',
            });
            if (s.kind !== 'spaced') throw new Error('a case within capacity must be spaced');
            const intervals = s.runs.map((r) => r.every as number);
            expect(Math.max(...intervals) - Math.min(...intervals)).toBe(
              leastSpread(carrying.length, times) * step,
            );
            cases += 1;
          }
        }
      }
    }
    expect(cases).toBeGreaterThan(1_500);
  });

  it('puts the steeper run beside the wider level, whichever way the piece is knitted', () => {
    fc.assert(
      fc.property(feasible, (a) => {
        const s = space({ ...a, order: 'grouped' }) as Spaced;
        const [first, second] = s.runs;
        if (first === undefined || second === undefined) return;
        if (a.to > a.from) expect(second.every).toBeLessThan(first.every);
        else expect(first.every).toBeLessThan(second.every);
      }),
      { numRuns: 2_000 },
    );
  });

  const section: SpacingAsk = {
    rows: rows(60),
    from: stitches(46),
    to: stitches(74),
    perRow: 2,
    carriers: 'odd rows',
    lead: rows(0),
    trail: rows(8),
    order: 'grouped',
  };

  it('shows how it came about where only right-side rows shape: the first interval begins in the row before', () => {
    // The last right-side row before 8 plain rows is row 51: 26 pairs of rows from row −1 on, for 14 increases.
    const widened = space(section) as Spaced;
    expect(widened.runs).toEqual([
      { every: 4, times: 12 },
      { every: 2, times: 2 },
    ]);
    expect(told(widened.workings)).toEqual([
      'stitches to gain: b - a = 28 stitches',
      'shaping rows: a / b = 14 times',
      'rows from the first interval to the last shaping row: a + b = 52 rows',
      'pairs of rows to a shorter interval: a / 2 / b = 1 times',
      'longer intervals: a / 2 - b * c = 12 times',
      'shorter intervals: a - b = 2 times',
      'a shorter interval: 2 * a = 2 rows',
      'a longer interval: a + b = 4 rows',
      'plain rows after the last shaping row: a - b = 9 rows',
      'first shaping row: a - b = 3 rows',
      'plain rows before it: a - b = 2 rows',
      'shaping rows after it in the first run: a - b = 11 times',
    ]);
  });

  it('shows how it came about where every row may shape, from plain rows on', () => {
    const every = { carriers: 'every row' as const, from: stitches(74), to: stitches(46) };
    const narrowed = space({ ...section, ...every, lead: rows(3), trail: rows(1) }) as Spaced;
    expect(narrowed.runs).toEqual([{ every: 4, times: 14 }]);
    expect(told(narrowed.workings)).toEqual([
      'stitches to lose: a - b = 28 stitches',
      'shaping rows: a / b = 14 times',
      'rows from the first interval to the last shaping row: a - b = 56 rows',
      'rows to a shorter interval: a / b = 4 rows',
      'longer intervals: a - b * c = 0 times',
      'shorter intervals: a - b = 14 times',
      'a shorter interval: a = 4 rows',
      'plain rows after the last shaping row: a - b = 1 rows',
      'first shaping row: a + b = 7 rows',
      'plain rows before it: a - b = 6 rows',
      'shaping rows after it in the first run: a - b = 13 times',
    ]);
  });

  it('shows no more than the plain rows where nothing changes', () => {
    const straight = space({ ...section, to: section.from }) as Spaced;
    expect([straight.runs, straight.base, straight.plainAfter]).toEqual([[], 0, 60]);
    expect(told(straight.workings)).toEqual([
      'stitches to gain: b - a = 0 stitches',
      'shaping rows: a / b = 0 times',
      'rows to work plain: a = 60 rows',
    ]);
  });

  it('spreads the longer intervals among the shorter ones on request', () => {
    const mixed = space({
      ...section,
      carriers: 'every row',
      trail: rows(2),
      order: 'interleaved',
    }) as Spaced;
    // 58 rows for 14 increases: 12 of 4 and 2 of 5, one in the middle of each half.
    expect(mixed.runs.map((run) => `${run.every} × ${run.times}`).join(', ')).toBe(
      '5 × 1, 4 × 6, 5 × 1, 4 × 6',
    );
  });

  it('tells how wide the count of a way out is, where the gauge is known', () => {
    const odd = { ...section, to: stitches(75), stitchesPerCm: perCm(2) };
    const found = space(odd);
    expect(found.kind === 'no multiple' && found.alternatives.map((way) => way.width)).toEqual([37, 38]);
  });

  it('says so, and offers worked ways out, when it cannot be done', () => {
    let [noMultiple, tooFew] = [0, 0];
    fc.assert(
      fc.property(ask, (a) => {
        const s = space(a);
        if (s.kind === 'spaced') return;
        if (s.kind === 'no multiple') {
          noMultiple += 1;
          for (const { spaced } of s.alternatives) expect(Math.abs(spaced.to - a.to)).toBeLessThan(a.perRow);
        } else {
          tooFew += 1;
          expect(s.needed).toBeGreaterThan(s.available);
          expect(s.alternatives.map((o) => o.way)).toContain('longer section');
        }
        for (const { spaced } of s.alternatives) expect(faults({ ...a, ...spaced }, spaced)).toEqual([]);
      }),
      { numRuns: 10_000 },
    );
    expect(noMultiple).toBeGreaterThan(100);
    expect(tooFew).toBeGreaterThan(100);
  });

  it('offers ways out that come as near to the count asked for as their rows allow', () => {
    fc.assert(
      fc.property(ask, (a) => {
        const s = space(a);
        if (s.kind !== 'too few rows') return;
        const ends = new Map(s.alternatives.map((o) => [o.way, o.spaced.to as number]));
        const sign = a.to > a.from ? 1 : -1;
        expect(ends.has('wrong-side rows too') && a.carriers === 'every row').toBe(false);
        for (const way of ['wrong-side rows too', 'longer section'] as const)
          expect(ends.get(way) ?? a.to).toBe(a.to);
        const doubled = ends.get('more stitches a row');
        if (doubled !== undefined) expect(Math.abs(doubled - a.to)).toBeLessThanOrEqual(a.perRow);
        const reach = a.from + sign * s.available * a.perRow;
        expect(ends.get('count within reach')).toBe(s.available === 0 || reach < 1 ? undefined : reach);
      }),
      { numRuns: 3_000 },
    );
  });

  it('offers the shortest section that is long enough', () => {
    fc.assert(
      fc.property(ask, (a) => {
        const s = space(a);
        if (s.kind !== 'too few rows') return;
        const longer = s.alternatives.find((o) => o.way === 'longer section');
        if (longer === undefined) throw new Error('a longer section is always possible');
        expect(space({ ...a, rows: longer.spaced.rows }).kind).toBe('spaced');
        expect(space({ ...a, rows: rows(longer.spaced.rows - 1) }).kind).toBe('too few rows');
      }),
      { numRuns: 3_000 },
    );
  });
});

/**
 * The least difference between longest and shortest interval over all choices of `times` carrying rows that end on the
 * last of them, in carrying rows: depth first, with the shortest and longest so far.
 */
function leastSpread(carriers: number, times: number): number {
  let best = Number.POSITIVE_INFINITY;
  const walk = (from: number, left: number, low: number, high: number): void => {
    if (high - low >= best) return;
    if (left === 0) {
      if (from === carriers) best = high - low;
      return;
    }
    for (let next = from + 1; next <= carriers - left + 1; next += 1) {
      walk(next, left - 1, Math.min(low, next - from), Math.max(high, next - from));
    }
  };
  walk(0, times, Number.POSITIVE_INFINITY, 0);
  return best;
}
