/** Spacing held against an integer program: each shaping row is a whole number, and nothing is known of even shares. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CARRIERS, type SpacingAsk, space } from '../../src/fit/spacing.ts';
import { rows, stitches } from '../../src/fit/units.ts';
import { type Constraint, must, type Program, solve } from './solver.ts';

interface Case {
  readonly ask: SpacingAsk;
  readonly times: number;
}

const cases: fc.Arbitrary<Case> = fc
  .record({
    length: fc.integer({ min: 4, max: 130 }),
    lead: fc.integer({ min: 0, max: 12 }),
    trail: fc.integer({ min: 0, max: 12 }),
    times: fc.integer({ min: 1, max: 16 }),
    perRow: fc.constantFrom(1, 2, 4),
    carriers: fc.constantFrom(...CARRIERS),
    order: fc.constantFrom('grouped' as const, 'interleaved' as const),
    down: fc.boolean(),
  })
  .map(({ length, lead, trail, times, perRow, carriers, order, down }) => {
    const [few, many] = [stitches(40), stitches(40 + times * perRow)];
    const ends = down ? { from: many, to: few } : { from: few, to: many };
    const ask = {
      rows: rows(length),
      lead: rows(lead),
      trail: rows(trail),
      perRow,
      carriers,
      order,
      ...ends,
    };
    return { ask, times };
  });

/** Row n may carry shaping where n = step × k + least for a whole k. */
function rhythm({ carriers }: SpacingAsk): { readonly step: number; readonly least: number } {
  if (carriers === 'every row') return { step: 1, least: 0 };
  return { step: 2, least: carriers === 'odd rows' ? 1 : 0 };
}

/** The last row at or before `row` that could carry shaping; the row before the section where there is none. */
function carrierBy(row: number, ask: SpacingAsk): number {
  const { step, least } = rhythm(ask);
  return least + step * Math.floor((row - least) / step);
}

/** Shaping row i is `step × ki + least`; all lie between the plain rows wanted, each beyond the one before. */
function rowsOf({ ask, times }: Case): readonly Constraint[] {
  const { step, least } = rhythm(ask);
  const first = must({ k1: step }, '>=', ask.lead + 1 - least);
  const apart = Array.from({ length: times - 1 }, (_, i) =>
    must({ [`k${i + 2}`]: step, [`k${i + 1}`]: -step }, '>=', 1),
  );
  return [first, ...apart];
}

function withinSection({ ask, times }: Case): Constraint {
  const { step, least } = rhythm(ask);
  return must({ [`k${times}`]: step }, '<=', ask.rows - ask.trail - least);
}

function names({ times }: Case): string[] {
  return Array.from({ length: times }, (_, i) => `k${i + 1}`);
}

/** The least difference between the longest and the shortest interval, the last row that may carry shaping being used. */
function evenest(given: Case): Program {
  const { ask, times } = given;
  const { step, least } = rhythm(ask);
  const start = carrierBy(ask.lead, ask);
  const bounds = Array.from({ length: times }, (_, i) => {
    const interval = i === 0 ? { k1: step } : { [`k${i + 1}`]: step, [`k${i}`]: -step };
    const known = i === 0 ? start - least : 0;
    return [
      must({ ...interval, longest: -1 }, '<=', known),
      must({ ...interval, shortest: -1 }, '>=', known),
    ];
  });
  const end = carrierBy(ask.rows - ask.trail, ask) - least;
  return {
    aim: 'least',
    of: { longest: 1, shortest: -1 },
    where: [
      ...rowsOf(given),
      withinSection(given),
      must({ [`k${times}`]: step }, '=', end),
      ...bounds.flat(),
    ],
    whole: names(given),
  };
}

describe('spacing, beside a general integer solver', () => {
  it('has intervals as equal as the solver can make them, and is refused where the solver finds no rows', () => {
    const seen = { spaced: 0, refused: 0 };
    fc.assert(
      fc.property(cases, (given) => {
        const mine = space(given.ask);
        const best = solve(evenest(given));
        if (best.kind === 'none') {
          seen.refused += 1;
          expect(mine).toMatchObject({ kind: 'too few rows', needed: given.times });
          return;
        }
        seen.spaced += 1;
        if (mine.kind !== 'spaced') throw new Error(`the solver spaces what is ${mine.kind} here`);
        const intervals = mine.runs.map((run) => run.every as number);
        expect(Math.max(...intervals) - Math.min(...intervals)).toBeCloseTo(best.value, 6);
      }),
      { numRuns: 120 },
    );
    expect(seen.spaced).toBeGreaterThan(40);
    expect(seen.refused).toBeGreaterThan(5);
  });

  it('offers the shortest section that the solver finds, where the rows are too few', () => {
    let offered = 0;
    fc.assert(
      fc.property(cases, (drawn) => {
        const given = { ...drawn, ask: { ...drawn.ask, rows: rows(3) } };
        const mine = space(given.ask);
        if (mine.kind !== 'too few rows') return;
        offered += 1;
        const { step, least } = rhythm(given.ask);
        const last = `k${given.times}`;
        const best = solve({ aim: 'least', of: { [last]: step }, where: rowsOf(given), whole: names(given) });
        if (best.kind === 'none') throw new Error('without an end there are always rows');
        const longer = mine.alternatives.find((way) => way.way === 'longer section');
        expect(longer?.spaced.rows).toBe(Math.round(best.value) + least + given.ask.trail);
      }),
      { numRuns: 60 },
    );
    expect(offered).toBeGreaterThan(40);
  });
});
