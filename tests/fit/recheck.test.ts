import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type Gauge, rateFrom } from '../../src/fit/gauge.ts';
import { level, type Piece, piece } from '../../src/fit/outline.ts';
import { type Recheck, type RecheckAsk, recheck } from '../../src/fit/recheck.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import type { WorkingLine } from '../../src/fit/working.ts';

const gauge = (sts: number, rws: number, span = 10): Gauge => ({
  stitches: rateFrom([{ count: sts, span: cm(span), unit: 'cm' }]),
  rows: rateFrom([{ count: rws, span: cm(span), unit: 'cm' }]),
  worked: 'flat',
});

/** The sample's sleeve in size 4: 44 stitches at the wrist, 18 rows of cuff, 74 at the upper arm after 132 rows. */
const SLEEVE = piece('sleeve', 'flat', 'up', [
  level('cuff', 0, 44),
  level('wrist', 18, 44),
  level('upper arm', 132, 74),
]);
/** A straight body in the round, 220 stitches, 114 rounds to the underarm. */
const BODY = piece('body', 'round', 'up', [level('hem', 0, 220), level('underarm', 114, 220)]);

function ask(of: Piece, real: Gauge, row: number, count: number): RecheckAsk {
  const flat = of.worked === 'flat';
  return {
    piece: of,
    planned: gauge(22, 30),
    real,
    now: { row: rows(row), stitches: stitches(count) },
    shaped: flat
      ? { perRow: 2, carriers: 'odd rows', edge: 2 }
      : { perRow: 4, carriers: 'every row', edge: 0 },
  };
}

const measureAt = (measures: Extract<Recheck, { kind: 'on track' }>['measures'], name: string, of: string) =>
  measures.find((m) => m.level === name && m.of === of);

describe('a sleeve at the planned gauge', () => {
  it('is on track, with a range for every measurement', () => {
    const found = recheck(ask(SLEEVE, gauge(22, 30), 80, 60));
    expect(found.kind).toBe('on track');
    if (found.kind !== 'on track') return;
    const upper = measureAt(found.measures, 'upper arm', 'width');
    expect(upper?.expected.expected).toBeCloseTo(72 / 2.2, 9);
    expect(upper?.expected.low).toBeLessThan(upper?.expected.expected ?? 0);
    expect(measureAt(found.measures, 'upper arm', 'length')?.expected.expected).toBeCloseTo(44, 9);
  });

  it('is mended from this very row where increases were forgotten', () => {
    const found = recheck(ask(SLEEVE, gauge(22, 30), 80, 50));
    expect(found.kind).toBe('mend ahead');
    if (found.kind !== 'mend ahead') return;
    expect(found.off).toEqual([]);
    // 52 rows are left for 24 stitches: 12 shaping rows.
    expect(found.rest.piece.levels).toEqual([level('now', 0, 50), level('upper arm', 52, 74)]);
    expect(found.rest.sections[0]).toMatchObject({ kind: 'spaced', rows: 52, from: 50, to: 74 });
  });
});

describe('a sleeve at another row gauge', () => {
  it('keeps its stitches and is spaced over fewer rows where fewer make the length', () => {
    const found = recheck(ask(SLEEVE, gauge(22, 27), 18, 44));
    expect(found.kind).toBe('mend ahead');
    if (found.kind !== 'mend ahead') return;
    // 132 × 2.7 / 3.0 = 118.8, to an even row 118; 118 − 18 = 100 rows for 15 increases.
    expect(found.rest.piece.levels).toEqual([level('now', 0, 44), level('upper arm', 100, 74)]);
    expect(found.measures.every((m) => m.within)).toBe(true);
    const [section] = found.rest.sections;
    expect(section?.kind === 'spaced' && section.shaping.every((s) => s.row % 2 === 1)).toBe(true);
  });

  it('turns right-side rows round where the rest begins after an odd row', () => {
    const found = recheck(ask(SLEEVE, gauge(22, 27), 19, 46));
    if (found.kind !== 'mend ahead') throw new Error(found.kind);
    const [section] = found.rest.sections;
    expect(section?.kind === 'spaced' && section.shaping.every((s) => (s.row + 19) % 2 === 1)).toBe(true);
  });
});

describe('a body that is knitted too wide', () => {
  const loose = () => {
    const found = recheck(ask(BODY, gauge(20, 30), 60, 220));
    if (found.kind !== 'decide') throw new Error(found.kind);
    return found;
  };

  it('is for its knitter to decide: going on costs 10 cm, ripping back all 60 rows', () => {
    const { goOn, ripBack } = loose();
    expect(goOn.cost.map((m) => [m.level, m.off])).toEqual([['hem', expect.closeTo(10, 9)]]);
    expect(ripBack).toMatchObject({ rows: 60, to: 'the start, with another count' });
    // 220 × 2.0 / 2.2 = 200 stitches for the planned 100 cm.
    expect(ripBack.from).toEqual({ row: 0, stitches: 200 });
    expect(ripBack.measures.every((m) => m.within)).toBe(true);
  });

  it('may go on with the rest brought to the planned width', () => {
    const { goOn } = loose();
    expect(goOn.rest.piece.levels).toEqual([level('now', 0, 220), level('underarm', 54, 200)]);
    expect(measureAt(goOn.measures, 'underarm', 'width')?.off).toBeCloseTo(0, 9);
  });
});

describe('a body that is knitted too long', () => {
  it('is ripped back to the row that has the length, where nothing was shaped since', () => {
    const found = recheck(ask(BODY, gauge(22, 26), 110, 220));
    if (found.kind !== 'decide') throw new Error(found.kind);
    // 38 cm are 114 × 2.6 / 3.0 = 98.8 rounds: 99; 110 rounds measure 42.3 cm.
    expect(found.goOn.cost.map((m) => [m.of, Math.round(m.off * 10) / 10])).toEqual([['length', 4.3]]);
    expect(found.ripBack).toMatchObject({ rows: 11, to: 'within a straight section', from: { row: 99 } });
  });
});

describe('a rest that has too few rows', () => {
  it('goes back to the last level that is right, and tells what can be done without', () => {
    const found = recheck(ask(SLEEVE, gauge(22, 30), 118, 44));
    if (found.kind !== 'decide') throw new Error(found.kind);
    const [section] = found.goOn.rest.sections;
    expect(section?.kind).toBe('too few rows');
    expect(section?.kind === 'too few rows' && section.alternatives.length).toBeGreaterThan(0);
    expect(found.ripBack).toMatchObject({ rows: 100, to: 'wrist', from: { row: 18, stitches: 44 } });
  });
});

describe('how sure a recheck is', () => {
  it('does not call a width over two stitches sure', () => {
    const vague: Gauge = { ...gauge(22, 30), stitches: rateFrom([{ count: 2.2, span: cm(1), unit: 'cm' }]) };
    const found = recheck(ask(BODY, vague, 60, 220));
    if (found.kind !== 'on track') throw new Error(found.kind);
    expect(measureAt(found.measures, 'hem', 'width')?.sure).toBe(false);
  });
});

const anyAsk = fc
  .record({
    sleeve: fc.boolean(),
    sts: fc.integer({ min: 18, max: 26 }),
    rws: fc.integer({ min: 24, max: 36 }),
    row: fc.integer({ min: 0, max: 150 }),
    count: fc.integer({ min: 30, max: 240 }),
  })
  .map((a) => ask(a.sleeve ? SLEEVE : BODY, gauge(a.sts, a.rws), a.row, a.count));

function linesOf(found: Recheck): readonly WorkingLine[] {
  return found.workings;
}

describe('every recheck', () => {
  it('has an outcome that keeps its word', () => {
    fc.assert(
      fc.property(anyAsk, (asked) => {
        const found = recheck(asked);
        for (const w of linesOf(found)) expect(evaluate(w.formula, w.given)).toBe(w.exact);
        if (found.kind === 'on track') expect(found.measures.every((m) => m.within)).toBe(true);
        if (found.kind === 'mend ahead') {
          expect(found.measures.every((m) => m.within)).toBe(true);
          expect(found.rest.piece.levels[0]).toEqual(level('now', 0, asked.now.stitches));
          for (const s of found.rest.sections) expect(s.kind).toBe('spaced');
        }
        if (found.kind === 'decide') {
          expect(found.goOn.cost.length > 0 || !found.goOn.rest.possible).toBe(true);
          expect(found.ripBack.rows + found.ripBack.from.row).toBe(asked.now.row);
        }
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
      }),
      { numRuns: 400 },
    );
  });

  it('never describes a knitted row again', () => {
    fc.assert(
      fc.property(anyAsk, (asked) => {
        const found = recheck(asked);
        if (found.kind !== 'mend ahead') return;
        const knitted = asked.piece.levels.filter((l) => l.row <= asked.now.row).map((l) => l.name);
        for (const l of found.rest.piece.levels) expect(knitted).not.toContain(l.name);
      }),
    );
  });
});
