import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { CHANGES, left, MADE_OF, taken } from '../../src/fit/row.ts';
import { type CannotSpread, type Spread, type SpreadAsk, spread } from '../../src/fit/spread.ts';
import { ENDS } from '../../src/fit/stretches.ts';
import { stitches } from '../../src/fit/units.ts';
import { Needle } from '../simulator/needle.ts';

const count = (least: number, most: number) => fc.integer({ min: least, max: most }).map(stitches);

/** Rows with changes anywhere; only those that fit into one row are kept where a test needs them. */
const asks = fc
  .record({
    inner: fc.integer({ min: 1, max: 400 }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    by: fc.constantFrom(...CHANGES),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    ends: fc.constantFrom(...ENDS),
    edge: fc.integer({ min: 0, max: 6 }),
  })
  .map(({ inner, share, by, worked, ends, edge }): SpreadAsk => {
    const { takes, leaves } = MADE_OF[by];
    const most = takes === 0 ? inner - (worked === 'flat' ? 1 : 0) : Math.floor(inner / takes);
    const border = worked === 'flat' ? edge : 0;
    const change = Math.floor(share * most) * (leaves - takes);
    return { stitches: stitches(inner + 2 * border), change, by, worked, ends, edge: stitches(border) };
  });

function mustSpread(ask: SpreadAsk): Spread {
  const found = spread(ask);
  if (found.kind !== 'spread') throw new Error(`${JSON.stringify(ask)} gave ${found.kind}`);
  return found;
}

function mustNot(ask: SpreadAsk): CannotSpread {
  const found = spread(ask);
  if (found.kind === 'spread') throw new Error(`${JSON.stringify(ask)} was spread`);
  return found;
}

/** The stretches between two changes, and in the round all of them. */
function between(found: Spread, ask: SpreadAsk): readonly number[] {
  return ask.worked === 'round' ? found.stretches : found.stretches.slice(1, -1);
}

function unevenness(lengths: readonly number[]): number {
  return lengths.length === 0 ? 0 : Math.max(...lengths) - Math.min(...lengths);
}

describe('changes spread across a row', () => {
  it('are knitted from the row as written, with exactly the stitches stated before and after', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const found = mustSpread(ask);
        const needle = Needle.castOn(ask.stitches, ask.worked).written(found.row);
        expect(needle.count).toBe(ask.stitches + ask.change);
        expect([found.before, found.after]).toEqual([ask.stitches, ask.stitches + ask.change]);
        expect([taken(found.row), left(found.row)]).toEqual([found.before, found.after]);
      }),
      { numRuns: 1000 },
    );
  });

  it('lie between plain stretches that differ by at most one stitch', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const found = mustSpread(ask);
        expect(unevenness(between(found, ask))).toBeLessThanOrEqual(1);
        if (ask.ends === 'whole') expect(unevenness(found.stretches)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 1000 },
    );
  });

  it('leave half a stretch at either end of a flat row, to within half a stitch, or a stitch where none is the middle', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        fc.pre(ask.worked === 'flat');
        const found = mustSpread({ ...ask, ends: 'half' });
        if (found.changes === 0) return;
        const plain = found.stretches.reduce((sum, n) => sum + n, 0);
        const half = plain / found.changes / 2;
        const slack = found.symmetry === 'symmetrical' ? 0.5 : 1;
        const needs = found.by === 'm1' ? 1 : 0;
        for (const end of [found.stretches[0], found.stretches.at(-1)]) {
          expect(Math.abs((end ?? 0) - half)).toBeLessThanOrEqual(Math.max(slack, 1 + needs - half));
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('make a flat row its own mirror image, save one stitch at the last end where no row could be', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        fc.pre(ask.worked === 'flat');
        const found = mustSpread(ask);
        const plain = found.stretches.reduce((sum, n) => sum + n, 0);
        const odd = plain % 2 === 1 && found.changes % 2 === 1;
        expect(found.symmetry).toBe(odd ? 'last end one longer' : 'symmetrical');
        const last = (found.stretches.at(-1) ?? 0) - (odd ? 1 : 0);
        const evened = [...found.stretches.slice(0, -1), last];
        expect(evened).toEqual([...evened].reverse());
      }),
      { numRuns: 1000 },
    );
  });

  it('go round the join without a seam: between two of the rarer stretches lie equally many others, give or take one', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        fc.pre(ask.worked === 'round');
        const { stretches: lengths } = mustSpread(ask);
        const shortest = Math.min(...lengths);
        const longer = lengths.filter((n) => n > shortest).length;
        const rare = longer * 2 <= lengths.length ? shortest + 1 : shortest;
        const at = lengths.flatMap((n, i) => (n === rare ? [i] : []));
        const gaps = at.map((i, k) => ((at[k + 1] ?? (at[0] ?? 0) + lengths.length) as number) - i);
        expect(unevenness(gaps)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 1000 },
    );
  });

  it('leave the border stitches alone', () => {
    const found = mustSpread({ stitches: stitches(136), change: -54, worked: 'flat', edge: stitches(4) });
    expect(found.row[0]).toEqual({ kind: 'edge', stitches: 4 });
    expect(found.row.at(-1)).toEqual({ kind: 'edge', stitches: 4 });
  });

  it('say every figure of theirs in workings that evaluate to it', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const found = mustSpread(ask);
        for (const line of found.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = new Set(found.workings.map((line) => line.result.value));
        expect(told).toContain(found.after);
        if (found.changes === 0) return;
        for (const figure of [found.changes, ...found.stretches]) expect(told).toContain(figure);
      }),
      { numRuns: 1000 },
    );
  });

  it('survive being written to JSON', () => {
    const found = spread({ stitches: stitches(80), change: -10, worked: 'flat' });
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
});

/** Every way to put `total` into `parts` stretches of at least `least`. */
function* layouts(total: number, parts: number, least: number): Generator<readonly number[]> {
  if (parts === 1) {
    if (total >= least) yield [total];
    return;
  }
  for (let n = least; n <= total - least * (parts - 1); n++)
    for (const rest of layouts(total - n, parts - 1, least)) yield [n, ...rest];
}

describe('against every possible layout of a small row', () => {
  const small = fc.record({
    plain: fc.integer({ min: 1, max: 13 }),
    changes: fc.integer({ min: 1, max: 5 }),
    gains: fc.boolean(),
  });

  it('no layout of a round has a smaller difference between its stretches', () => {
    fc.assert(
      fc.property(small, ({ plain, changes, gains }) => {
        fc.pre(!gains || changes <= plain);
        const before = gains ? plain : plain + 2 * changes;
        const found = mustSpread({
          stitches: stitches(before),
          change: gains ? changes : -changes,
          worked: 'round',
        });
        const least = Math.min(...[...layouts(plain, changes, gains ? 1 : 0)].map(unevenness));
        expect(unevenness(found.stretches)).toBe(least);
      }),
      { numRuns: 300 },
    );
  });

  it('no layout of a flat row with whole ends is more even, and it mirrors itself wherever one as even does', () => {
    fc.assert(
      fc.property(small, ({ plain, changes, gains }) => {
        fc.pre(!gains || changes < plain);
        const found = mustSpread({
          stitches: stitches(gains ? plain : plain + 2 * changes),
          change: gains ? changes : -changes,
          worked: 'flat',
          ends: 'whole',
        });
        const all = [...layouts(plain, changes + 1, gains ? 1 : 0)];
        const least = Math.min(...all.map(unevenness));
        const mirrored = all.some((l) => unevenness(l) === least && l.every((n, i) => n === l.at(-1 - i)));
        expect(unevenness(found.stretches)).toBe(least);
        expect(found.symmetry === 'symmetrical').toBe(mirrored);
      }),
      { numRuns: 300 },
    );
  });

  it('no symmetrical flat row with half ends comes nearer to half a stretch at its ends', () => {
    fc.assert(
      fc.property(small, ({ plain, changes }) => {
        fc.pre(plain % 2 === 0 || changes % 2 === 0);
        const found = mustSpread({
          stitches: stitches(plain + 2 * changes),
          change: -changes,
          worked: 'flat',
          ends: 'half',
        });
        const half = plain / changes / 2;
        const off = (l: readonly number[]) => Math.abs((l[0] ?? 0) - half);
        const even = [...layouts(plain, changes + 1, 0)].filter(
          (l) => l.every((n, i) => n === l.at(-1 - i)) && unevenness(l.slice(1, -1)) <= 1,
        );
        expect(off(found.stretches)).toBeCloseTo(Math.min(...even.map(off)), 9);
      }),
      { numRuns: 300 },
    );
  });

  it('a row is refused only where no layout exists', () => {
    for (let before = 1; before <= 12; before++)
      for (const worked of ['flat', 'round'] as const)
        for (const by of ['m1', 'kfb', 'k2tog'] as const)
          for (let n = 1; n <= 13; n++) {
            const { takes, leaves } = MADE_OF[by];
            const parts = worked === 'flat' ? n + 1 : n;
            const plain = before - n * takes;
            const exists = plain >= 0 && !layouts(plain, parts, takes === 0 ? 1 : 0).next().done;
            const found = spread({ stitches: stitches(before), change: n * (leaves - takes), by, worked });
            expect([before, worked, by, n, found.kind === 'spread']).toEqual([before, worked, by, n, exists]);
          }
  });
});

describe('changes that keep to a pattern', () => {
  it('stand at the end of whole repeats only', () => {
    const each = fc.record({
      repeat: fc.integer({ min: 2, max: 12 }),
      repeats: fc.integer({ min: 2, max: 30 }),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      by: fc.constantFrom('m1' as const, 'kfb' as const, 'k2tog' as const),
      worked: fc.constantFrom('flat' as const, 'round' as const),
      ends: fc.constantFrom(...ENDS),
    });
    fc.assert(
      fc.property(each, ({ repeat, repeats, share, by, worked, ends }) => {
        const { takes, leaves } = MADE_OF[by];
        const changes = Math.floor(share * (worked === 'flat' ? repeats - 1 : repeats));
        const found = mustSpread({
          stitches: stitches(repeat * repeats),
          change: changes * (leaves - takes),
          by,
          worked,
          ends,
          repeat: stitches(repeat),
        });
        let place = 0;
        for (const length of found.stretches.slice(0, changes)) {
          place += length + takes;
          expect(place % repeat).toBe(0);
        }
        const needle = Needle.castOn(found.before, worked).written(found.row);
        expect(needle.count).toBe(found.after);
        const told = new Set(found.workings.map((line) => line.result.value));
        const inner =
          changes === 0 ? [] : between(found, { ...found, stitches: found.before, change: 0, worked });
        for (const length of inner) expect(told).toContain(length);
      }),
      { numRuns: 1000 },
    );
  });

  it('are refused where the stitches are no whole repeats, with how many are over', () => {
    const found = mustNot({ stitches: stitches(98), change: 6, worked: 'round', repeat: stitches(8) });
    expect(found).toMatchObject({ kind: 'no whole repeats', stitches: 98, repeat: 8, over: 2 });
    expect(found.alternatives.map((a) => a.way)).toEqual(['anywhere in the row']);
    expect(found.workings.map((line) => line.result.value)).toContain(2);
  });

  it('are refused where the result would break the multiple, with the nearest counts that keep it', () => {
    const rule = { multiple: 8, plus: 2, edge: 0, parity: 'any' } as const;
    const found = mustNot({ stitches: stitches(96), change: 12, worked: 'round', result: rule });
    expect(found).toMatchObject({ kind: 'result breaks the rule', after: 108 });
    expect(found.alternatives.map((a) => a.rows.at(-1)?.after)).toEqual([106, 114]);
  });
});

describe('changes that do not fit into one row', () => {
  it('come as two rows and as double decreases where more than half the stitches are to go', () => {
    const found = mustNot({ stitches: stitches(100), change: -60, worked: 'round' });
    expect(found).toMatchObject({ kind: 'too many changes', asked: 60, most: 50 });
    const [rows, doubles, fit] = found.alternatives;
    expect(rows).toMatchObject({ way: 'several rows', rows: [{ after: 70 }, { after: 40 }] });
    expect(doubles).toMatchObject({ way: 'double changes', rows: [{ by: 'cdd', changes: 30, after: 40 }] });
    expect(fit).toMatchObject({ way: 'as many as fit', rows: [{ after: 50 }] });
  });

  it('offer only ways that can be knitted and reach the count they state', () => {
    const crowded = fc.record({
      stitches: count(2, 300),
      change: fc.integer({ min: -400, max: 700 }),
      worked: fc.constantFrom('flat' as const, 'round' as const),
    });
    fc.assert(
      fc.property(crowded, (ask) => {
        const found = spread(ask);
        if (found.kind !== 'too many changes') return;
        const told = found.workings.map((line) => line.result.value);
        expect(told).toEqual(expect.arrayContaining([found.asked, found.most]));
        for (const { way, rows } of found.alternatives) {
          const needle = Needle.castOn(ask.stitches, ask.worked);
          for (const row of rows) needle.written(row.row);
          expect(needle.counts).toEqual(rows.map((row) => row.after));
          if (way !== 'as many as fit') expect(needle.count).toBe(ask.stitches + ask.change);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('are refused where each change counts twice and the difference is odd', () => {
    const found = mustNot({ stitches: stitches(60), change: -15, by: 'cdd', worked: 'round' });
    expect(found).toMatchObject({ kind: 'no multiple', change: -15, each: 2 });
    expect(found.alternatives.map((a) => a.rows[0]?.after)).toEqual([44, 46]);
  });

  it('throw where the caller asks for nonsense', () => {
    const row = { stitches: stitches(20), worked: 'flat' } as const;
    expect(() => spread({ ...row, change: 4, by: 'k2tog' })).toThrow(RangeError);
    expect(() => spread({ ...row, change: 4, edge: stitches(10) })).toThrow(RangeError);
    expect(() => spread({ ...row, change: 4, worked: 'round', edge: stitches(1) })).toThrow(RangeError);
  });
});
