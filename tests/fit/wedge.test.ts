import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { extraRowsAt, layWedge, type Wedge } from '../../src/fit/wedge.ts';
import { mostTurns, turnsOf, type WedgeAsk } from '../../src/fit/wedge-base.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

/** Wedges of any kind anywhere on the needle, in the round also across the join; too steep and too flat ones too. */
const asks = fc
  .record({
    worked: fc.constantFrom('flat' as const, 'round' as const),
    oneSided: fc.constantFrom('both' as const, 'start' as const, 'end' as const),
    order: fc.constantFrom('shortening' as const, 'lengthening' as const),
    depth: fc.double({ min: 0.1, max: 20, noNaN: true }),
    rowsPerCm: fc.double({ min: 1, max: 6, noNaN: true }),
    needle: fc.integer({ min: 2, max: 300 }),
    place: fc.tuple(fraction, fraction, fraction, fraction),
    outer: fc.constantFrom('turn' as const, 'step' as const),
    counted: fc.constantFrom('from the sides' as const, 'from the centre' as const),
    larger: fc.constantFrom('outermost' as const, 'innermost' as const),
  })
  .map((r): WedgeAsk => {
    const sides = r.worked === 'round' ? 'both' : r.oneSided;
    const [a, b, c, d] = r.place;
    const span = 2 + Math.floor(a * (r.needle - 2));
    const free = r.worked === 'round' ? r.needle - 1 : r.needle - span;
    const start = sides === 'end' ? 0 : sides === 'start' ? r.needle - span : Math.round(b * free);
    const inset = Math.floor((c * (span - 1)) / 2);
    const base = span - (sides === 'both' ? 2 : 1) * inset;
    const full = inset === 0 && (r.worked === 'flat' || span === r.needle);
    return {
      purpose: 'hem',
      place: { level: 'hem', rows: rows(0), point: 'begins' },
      worked: r.worked,
      sides,
      order: r.order,
      depth: cm(r.depth),
      gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(r.rowsPerCm) },
      needle: stitches(r.needle),
      span: { start, stitches: stitches(span) },
      inset: stitches(inset),
      flat: stitches(Math.floor(d * base)),
      outer: full ? 'step' : r.outer,
      counted: sides === 'both' ? r.counted : 'from the sides',
      larger: r.larger,
    };
  });

function mustLay(ask: WedgeAsk): Wedge {
  const found = layWedge(ask);
  if (found.kind !== 'wedge') throw new Error(`${JSON.stringify(ask)} gave ${found.kind}`);
  return found;
}

/** Only those that can be knitted. */
const knittable = asks.filter((ask) => turnsOf(ask) > 0 && turnsOf(ask) <= mostTurns(ask));

/** Rows knitted in each stitch by the wedge alone, by the simulator. */
function grown(wedge: Wedge): readonly number[] {
  const needle = knitWedge(Needle.castOn(wedge.needle, wedge.worked), wedge);
  const before = wedge.firstRow === 'wrong side' ? 1 : 0;
  return needle.heights.map((height) => height - before - wedge.closing.ordinaryRows);
}

describe('a short-row wedge', () => {
  it('is as deep as stated where it is deepest, and adds nothing beside it', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        const heights = grown(wedge);
        expect(Math.max(...heights)).toBe(wedge.rows);
        expect(Math.min(...heights)).toBe(0);
        expect(wedge.depth).toBeCloseTo(wedge.rows / ask.gauge.rowsPerCm, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it('grows in every stitch by the rows that the engine says', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        expect(grown(wedge)).toEqual(Array.from({ length: ask.needle }, (_, i) => extraRowsAt(wedge, i)));
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps every stitch on the needle and knits exactly the short rows stated', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        const needle = knitWedge(Needle.castOn(ask.needle, ask.worked), wedge);
        expect(new Set(needle.counts)).toEqual(new Set([ask.needle]));
        const turned = needle.log.filter((row) => row.short).length;
        expect(turned).toBe(wedge.turns.length);
        expect(wedge.turns.length).toBe(ask.sides === 'both' ? wedge.rows : wedge.rows / 2);
        expect(wedge.closing.gaps).toBe(turned);
      }),
      { numRuns: 1000 },
    );
  });

  it('rises by two rows at a time, in steps that differ by at most one stitch, the larger where they were asked for', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        const sorted = [...wedge.steps].sort((a, b) => (ask.larger === 'innermost' ? a - b : b - a));
        expect(wedge.steps).toEqual(sorted);
        if (wedge.steps.length > 0)
          expect(Math.max(...wedge.steps) - Math.min(...wedge.steps)).toBeLessThanOrEqual(1);
        const sloped = ask.sides === 'both' ? 2 : 1;
        const inSteps = wedge.steps.reduce((sum, n) => sum + n, 0) * sloped;
        const base = ask.span.stitches - sloped * ask.inset;
        if (wedge.steps.length > 0) expect(inSteps + wedge.flat).toBe(base);
        expect(new Set(grown(wedge).map((height) => height % 2))).toEqual(new Set([0]));
      }),
      { numRuns: 1000 },
    );
  });

  it('is the same on both sides, give or take the odd stitch beside a centre marker', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        fc.pre(ask.sides === 'both');
        const { turns } = mustLay(ask);
        const odd = ask.counted === 'from the centre' ? ask.span.stitches % 2 : 0;
        for (let i = 0; i < turns.length; i += 2)
          expect((turns[i]?.stitches ?? 0) - (turns[i + 1]?.stitches ?? 0)).toBe(odd);
      }),
      { numRuns: 500 },
    );
  });

  it('turns nearer to the middle each time where it shortens, and farther where it lengthens', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const needle = knitWedge(Needle.castOn(ask.needle, ask.worked), mustLay(ask));
        const lengths = needle.log.filter((row) => row.short).map((row) => row.worked);
        const later = lengths.slice(1);
        const sign = ask.order === 'shortening' ? -1 : 1;
        expect(later).toEqual(later.toSorted((a, b) => sign * (a - b)));
      }),
      { numRuns: 500 },
    );
  });

  it('takes the even number of rows nearest to its depth', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        expect(wedge.rows % 2).toBe(0);
        expect(Math.abs(ask.depth * ask.gauge.rowsPerCm - wedge.rows)).toBeLessThanOrEqual(1 + 1e-8);
      }),
      { numRuns: 500 },
    );
  });

  it('shows every figure in workings that evaluate to it', () => {
    fc.assert(
      fc.property(knittable, (ask) => {
        const wedge = mustLay(ask);
        for (const line of wedge.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const told = new Set(wedge.workings.map((line) => line.result.value));
        const figures = [
          wedge.rows,
          wedge.depth,
          ...wedge.steps,
          ...wedge.turns.map((turn) => turn.stitches),
        ];
        for (const figure of figures) expect(told).toContain(figure);
        if (wedge.steps.length > 0) expect(told).toContain(wedge.flat);
      }),
      { numRuns: 500 },
    );
  });

  it('survives being written to JSON', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const found = layWedge(ask);
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
      }),
      { numRuns: 200 },
    );
  });
});

describe('against every possible division of a small base', () => {
  /** Every way to divide `total` stitches into `parts` steps of at least one. */
  function* divisions(total: number, parts: number): Generator<readonly number[]> {
    if (parts === 1) {
      if (total >= 1) yield [total];
      return;
    }
    for (let n = 1; n <= total - (parts - 1); n++)
      for (const rest of divisions(total - n, parts - 1)) yield [n, ...rest];
  }

  it('no division has a smaller difference between its steps, and one is found wherever there is any', () => {
    for (let base = 1; base <= 12; base++)
      for (let turns = 1; turns <= 8; turns++)
        for (const outer of ['turn', 'step'] as const) {
          const outside = outer === 'turn' ? 1 : 0;
          const found = layWedge({
            purpose: 'shoulder slope',
            place: { level: 'shoulder', rows: rows(0), point: 'begins' },
            worked: 'flat',
            sides: 'end',
            order: 'shortening',
            depth: cm(turns),
            gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2) },
            needle: stitches(base + outside),
            span: { start: 0, stitches: stitches(base + outside) },
            inset: stitches(outside),
            flat: stitches(0),
            outer,
            counted: 'from the sides',
          });
          const all = [...divisions(base, outer === 'step' ? turns + 1 : turns)];
          expect(found.kind).toBe(all.length > 0 ? 'wedge' : 'too many turns');
          if (found.kind !== 'wedge') continue;
          const uneven = (steps: readonly number[]) => Math.max(...steps) - Math.min(...steps);
          expect(uneven(found.steps)).toBe(Math.min(...all.map(uneven)));
        }
  });
});

describe('a wedge that cannot be knitted as asked', () => {
  const ask: WedgeAsk = {
    purpose: 'bust dart',
    place: { level: 'bust', rows: rows(0), point: 'begins' },
    worked: 'flat',
    sides: 'both',
    order: 'shortening',
    depth: cm(8),
    gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
    needle: stitches(60),
    span: { start: 0, stitches: stitches(60) },
    inset: stitches(5),
    flat: stitches(36),
    outer: 'turn',
    counted: 'from the sides',
  };

  it('for too many turns comes as two wedges, with a narrower middle, or shallower', () => {
    const found = layWedge(ask);
    if (found.kind !== 'too many turns') throw new Error(found.kind);
    expect([found.asked, found.most]).toEqual([12, 8]);
    expect(found.alternatives.map((a) => [a.way, a.wedges.map((w) => w.rows)])).toEqual([
      ['two wedges', [12, 12]],
      ['narrower middle', [24]],
      ['shallower', [16]],
    ]);
  });

  it('for too little depth comes as two rows or is left out', () => {
    const found = layWedge({ ...ask, depth: cm(0.3) });
    if (found.kind !== 'too flat') throw new Error(found.kind);
    expect(found.alternatives.map((a) => [a.way, a.wedges.map((w) => w.rows)])).toEqual([
      ['two rows', [2]],
      ['leave it out', []],
    ]);
  });

  it('for one side in the round comes with both sides sloped', () => {
    const found = layWedge({ ...ask, depth: cm(2), worked: 'round', sides: 'end' });
    if (found.kind !== 'one side in the round') throw new Error(found.kind);
    expect(found.alternatives.map((a) => [a.way, a.wedges.map((w) => w.sides)])).toEqual([
      ['both sides', ['both']],
    ]);
  });

  it('offers only wedges that can be knitted', () => {
    fc.assert(
      fc.property(asks, (any) => {
        const found = layWedge(any);
        if (found.kind === 'wedge') return;
        for (const wedge of found.alternatives.flatMap((a) => a.wedges))
          expect(Math.max(...grown(wedge))).toBe(wedge.rows);
        const told = found.workings.map((line) => line.result.value);
        if (found.kind === 'too many turns')
          expect(told).toEqual(expect.arrayContaining([found.asked, found.most]));
      }),
      { numRuns: 1000 },
    );
  });

  it('throws where the caller puts it outside its needle', () => {
    expect(() => layWedge({ ...ask, span: { start: 10, stitches: stitches(60) } })).toThrow(RangeError);
    expect(() => layWedge({ ...ask, flat: stitches(51) })).toThrow(RangeError);
    expect(() =>
      layWedge({ ...ask, sides: 'end', needle: stitches(70), span: { ...ask.span, start: 5 } }),
    ).toThrow(RangeError);
  });
});
