import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { type Neck, type NeckAsk, neck } from '../../src/fit/neck.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitEdges } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';
import { over10cm } from './at-gauge.ts';
import { unstated } from './stated.ts';

const asks: fc.Arbitrary<NeckAsk> = fc
  .record({
    stitches: fc.integer({ min: 20, max: 140 }),
    width: fc.double({ min: 6, max: 28, noNaN: true }),
    depth: fc.double({ min: 0.5, max: 20, noNaN: true }),
    sts: fc.integer({ min: 10, max: 36 }),
    rows: fc.integer({ min: 12, max: 50 }),
    centre: fc.option(fc.integer({ min: 0, max: 40 }), { nil: undefined }),
    steps: fc.option(fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 4 }), { nil: undefined }),
  })
  .map((a) => ({
    stitches: stitches(a.stitches),
    width: cm(a.width),
    depth: cm(a.depth),
    gauge: over10cm(a.sts, a.rows),
    ...(a.centre === undefined ? {} : { centre: stitches(a.centre) }),
    ...(a.steps === undefined ? {} : { steps: a.steps.map(stitches) }),
  }));

/** What is wrong with a neck, in words; empty when it can be knitted as it says and adds up. */
function faults(a: Pick<NeckAsk, 'stitches' | 'gauge'>, made: Neck): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  const { first, last } = made.sides;
  const across = Needle.castOn(a.stitches, 'flat').knit(first.from).bindOff(made.centre).finish();
  must(across.count === first.from + last.from, 'the centre does not part the stitches in two');
  for (const side of [first, last]) {
    const needle = knitEdges(side.from, side.events, made.rows);
    must(needle.count === made.shoulder, `a shoulder of ${needle.count}`);
  }
  must(2 * made.shoulder + made.stitches === a.stitches, 'shoulders and neck do not make the whole');
  must(made.rows % 2 === 0, 'an odd number of rows');
  must(Math.abs(corners(made, a) - made.edge) < 1e-9, 'the edge is not as long as its corners say');
  const { stitches: ofNeck, width, rows, depth, centre, straight, shoulder, edge } = made;
  const figures = { ofNeck, width, rows, depth, centre, straight, shoulder, edge };
  must(unstated(figures, made.workings).length === 0, `no working for ${unstated(figures, made.workings)}`);
  for (const line of made.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

function corners(made: Neck, { gauge }: Pick<NeckAsk, 'gauge'>): number {
  let [side, below] = [0, 0];
  for (const event of made.sides.last.events) {
    side += Math.hypot(event.change / gauge.stitches.perCm, (event.row - 1 - below) / gauge.rows.perCm);
    below = event.row - 1;
  }
  side += (made.rows - below) / gauge.rows.perCm;
  return made.centre / gauge.stitches.perCm + 2 * side;
}

describe('a neck', () => {
  it('knits to two equal shoulders, row by row, as it says', () => {
    let knitted = 0;
    fc.assert(
      fc.property(asks, (a) => {
        const made = neck(a);
        if (made.kind !== 'neck') return;
        knitted += 1;
        expect(faults(a, made)).toEqual([]);
      }),
      { numRuns: 800 },
    );
    expect(knitted).toBeGreaterThan(80);
  });

  it('says why it cannot be shaped, and every way out it offers can be knitted', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(asks, (a) => {
        const made = neck(a);
        if (made.kind === 'neck') return;
        met.set(made.kind, (met.get(made.kind) ?? 0) + 1);
        for (const { neck: other } of made.alternatives) expect(faults(a, other)).toEqual([]);
        expect(made.alternatives).not.toEqual([]);
      }),
      { numRuns: 800 },
    );
    for (const kind of [
      'no shoulders left',
      'centre of the wrong parity',
      'shaping exceeds the neck',
      'too few rows',
    ])
      expect([kind, (met.get(kind) ?? 0) > 10]).toEqual([kind, true]);
  });

  it('always fits its rows where centre and steps are left to common practice', () => {
    fc.assert(
      fc.property(asks, ({ stitches: across, width, depth, gauge }) => {
        const made = neck({ stitches: across, width, depth, gauge });
        if (made.kind === 'too few rows') expect(made.available).toBe(0);
        else expect(['neck', 'no shoulders left']).toContain(made.kind);
        if (made.kind === 'neck') expect(made.decreases.carriers).toBe('odd rows');
      }),
    );
  });

  it('takes 76 stitches to a neck of 17 cm and 8 cm deep: 12 in the centre, then 3, 2 and 8 decreases', () => {
    const made = neck({ stitches: stitches(76), width: cm(17), depth: cm(8), gauge: over10cm(22, 30) });
    if (made.kind !== 'neck') throw new Error(made.kind);
    // 17 × 2.2 = 37.4, to an even count 38; 38 / 3 = 12.67, to an even count 12; (38 − 12) / 2 = 13 = 3 + 2 + 8.
    expect([made.stitches, made.centre, made.steps, made.shoulder]).toEqual([38, 12, [3, 2], 19]);
    expect(made.sides.last.events.map((e) => e.row)).toEqual([3, 5, 7, 9, 11, 13, 15, 17, 19, 21]);
    expect(made.sides.first.events.map((e) => e.row)).toEqual([2, 4, 7, 9, 11, 13, 15, 17, 19, 21]);
    expect(made.rows).toBe(24);
  });

  it('made 3 cm wider and 2 cm deeper takes 3 stitches off each shoulder and begins 6 rows earlier', () => {
    const ask: NeckAsk = {
      stitches: stitches(76),
      width: cm(20),
      depth: cm(10),
      gauge: over10cm(22, 30),
    };
    const front = neck(ask);
    if (front.kind !== 'neck') throw new Error(front.kind);
    // 17 cm and 8 cm, above: 38 stitches, so that 19 are left of the shoulder, over 24 rows.
    expect([front.stitches, front.shoulder, front.rows]).toEqual([44, 19 - 3, 24 + 6]);
  });
});
