import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { type YokeAsk, type YokeShape, yoke } from '../../src/fit/yoke.ts';
import { asPattern, evenly, THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { Needle } from '../simulator/needle.ts';
import { over10cm } from './at-gauge.ts';
import { unstated } from './stated.ts';

const asks: fc.Arbitrary<YokeAsk> = fc
  .record({
    direction: fc.constantFrom('up' as const, 'down' as const),
    depth: fc.double({ min: 1, max: 34, noNaN: true }),
    sts: fc.integer({ min: 10, max: 32 }),
    rows: fc.integer({ min: 14, max: 48 }),
    underarm: fc.integer({ min: 20, max: 320 }),
    neckShare: fc.double({ min: 0.15, max: 1.02, noNaN: true }),
    scheme: fc.constantFrom(THREE_ROUNDS, evenly(1), evenly(2), evenly(4), evenly(6), evenly(9)),
    multiple: fc.constantFrom(1, 1, 1, 4, 6, 8, 12, 24),
    fitted: fc.boolean(),
  })
  .map((a) => {
    const inRepeats = (count: number) =>
      a.fitted ? a.multiple * Math.max(1, Math.round(count / a.multiple)) : count;
    return {
      direction: a.direction,
      gauge: over10cm(a.sts, a.rows, 'round'),
      depth: cm(a.depth),
      underarm: stitches(inRepeats(a.underarm)),
      neck: stitches(inRepeats(Math.max(1, Math.round(a.underarm * a.neckShare)))),
      scheme: a.scheme,
      ...(a.multiple === 1 ? {} : { multiples: Array(a.scheme.length + 1).fill(a.multiple) }),
    };
  });

/** What is wrong with a yoke, in words; empty when it can be knitted round by round as it says. */
function faults(made: YokeShape, multiple: number): string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string) => holds || found.push(what);
  const [first, last] = [made.plateaus[0], made.plateaus.at(-1)];
  const begun = made.shaping[0]?.spread.before ?? first?.stitches ?? 0;
  const needle = Needle.castOn(begun, 'round');
  const counts: number[] = [];
  for (let round = 1; round <= made.rows; round++) {
    const shaped = made.shaping.find((s) => s.round === round);
    if (shaped === undefined) needle.plain(1);
    else needle.written(shaped.spread.row);
    counts.push(needle.count);
  }
  const stated = made.plateaus.flatMap((p) => Array<number>(p.rounds).fill(p.stitches));
  must(stated.join() === counts.join(), `rounds have ${counts}, not ${stated}`);
  must(
    made.shaping.every((s) => s.round >= 1 && s.round <= made.rows),
    'a shaping lies outside the yoke',
  );
  must(
    [begun, ...counts].every((count) => count % multiple === 0),
    'a count breaks the repeat',
  );
  must(needle.count === last?.stitches, `ends with ${needle.count}`);
  const figures = {
    rows: made.rows,
    depth: made.depth,
    neck: made.neckAround,
    ...Object.fromEntries(made.shaping.map((s, i) => [`round ${i}`, s.round])),
    ...Object.fromEntries(made.plateaus.map((p, i) => [`height ${i}`, p.height])),
    ...Object.fromEntries(made.plateaus.map((p, i) => [`stretch ${i}`, p.rounds])),
  };
  must(unstated(figures, made.workings).length === 0, `no working for ${unstated(figures, made.workings)}`);
  for (const line of made.workings)
    must(evaluate(line.formula, line.given) === line.exact, `${line.label} is not its formula`);
  return found;
}

describe('a round yoke', () => {
  it('knits from one end to the other in whole repeats, round by round as it says', () => {
    let knitted = 0;
    fc.assert(
      fc.property(asks, (a) => {
        const made = yoke(a);
        if (made.kind !== 'yoke') return;
        knitted += 1;
        expect(faults(made, a.multiples?.[0] ?? 1)).toEqual([]);
        const ends = [made.shaping[0]?.spread.before, made.shaping.at(-1)?.spread.after];
        expect(a.direction === 'up' ? ends : ends.reverse()).toEqual([a.underarm, a.neck]);
      }),
      { numRuns: 1_000 },
    );
    expect(knitted).toBeGreaterThan(200);
  });

  it('says why it cannot be shaped, and every way out it offers can be knitted', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(asks, (a) => {
        const made = yoke(a);
        if (made.kind === 'yoke') return;
        met.set(made.kind, (met.get(made.kind) ?? 0) + 1);
        for (const { way, yoke: other } of made.alternatives) {
          const kept = way === 'nearest count' || way === 'usual neck' || way === 'deeper yoke';
          expect(faults(other, kept ? (a.multiples?.[0] ?? 1) : 1)).toEqual([]);
        }
        if (made.kind === 'yoke too shallow') {
          const needed = cm(made.needed / a.gauge.rows.perCm);
          const less = cm((made.needed - 1) / a.gauge.rows.perCm);
          expect(yoke({ ...a, depth: needed }).kind).not.toBe('yoke too shallow');
          expect(yoke({ ...a, depth: less }).kind).toBe('yoke too shallow');
        }
      }),
      { numRuns: 2_000 },
    );
    for (const kind of [
      'neck not smaller',
      'no multiple',
      'repeat too wide',
      'yoke too shallow',
      'round too full',
    ])
      expect([kind, (met.get(kind) ?? 0) > 8]).toEqual([kind, true]);
  });

  it('is the same yoke from the neck down, its rounds mirrored', () => {
    fc.assert(
      fc.property(asks, (a) => {
        const [up, down] = [yoke({ ...a, direction: 'up' }), yoke({ ...a, direction: 'down' })];
        expect(down.kind).toBe(up.kind);
        if (up.kind !== 'yoke' || down.kind !== 'yoke') return;
        expect(down.shaping.map((s) => up.rows + 1 - s.round).reverse()).toEqual(
          up.shaping.map((s) => s.round),
        );
        expect(down.shaping.map((s) => [s.spread.after, s.spread.before]).reverse()).toEqual(
          up.shaping.map((s) => [s.spread.before, s.spread.after]),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('moves its rounds in proportion when it is knitted over other rows', () => {
    const scheme = asPattern({
      direction: 'up',
      rows: rows(60),
      before: stitches(240),
      rounds: [
        { round: rows(20), after: stitches(200) },
        { round: rows(44), after: stitches(140) },
        { round: rows(60), after: stitches(80) },
      ],
    });
    if ('kind' in scheme) throw new Error(scheme.kind);
    const made = yoke({
      direction: 'up',
      gauge: over10cm(20, 30, 'round'),
      depth: cm(15),
      underarm: stitches(240),
      neck: stitches(80),
      scheme,
    });
    if (made.kind !== 'yoke') throw new Error(made.kind);
    // 45 of 60 rounds: 20 × 0.75, 44 × 0.75, 60 × 0.75; the counts stay.
    expect(made.shaping.map((s) => s.round)).toEqual([15, 33, 45]);
    expect(made.shaping.map((s) => s.spread.after)).toEqual([200, 140, 80]);
  });

  it('gives back the rounds of a pattern that is knitted as it is, from either end', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 9 }),
        fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 9, maxLength: 9 }),
        fc.constantFrom('up' as const, 'down' as const),
        (places, takes, direction) => {
          const sorted = [...places].sort((a, b) => a - b);
          const sign = direction === 'up' ? -1 : 1;
          let count = direction === 'up' ? 500 : 200;
          const before = stitches(count);
          const rounds = sorted.map((round, i) => {
            count += sign * (takes[i] ?? 1);
            return { round: rows(round), after: stitches(count) };
          });
          const scheme = asPattern({ direction, rows: rows(90), before, rounds });
          if ('kind' in scheme) throw new Error(scheme.kind);
          const [underarm, neck] = direction === 'up' ? [before, stitches(count)] : [stitches(count), before];
          const gauge = over10cm(20, 30, 'round');
          const made = yoke({ direction, gauge, depth: cm(30), underarm, neck, scheme });
          if (made.kind !== 'yoke') throw new Error(made.kind);
          expect(made.shaping.map((s) => ({ round: s.round, after: s.spread.after }))).toEqual(rounds);
        },
      ),
      { numRuns: 100 },
    );
  });

  it.each([
    ['a round that comes again', [20, 20, 60], [200, 140, 80], 2],
    ['a round past the top', [20, 44, 61], [200, 140, 80], 3],
    ['a round before the first', [0, 44, 60], [200, 140, 80], 1],
    ['a count that grows', [20, 44, 60], [200, 210, 80], 2],
    ['a count that stays', [20, 44, 60], [240, 140, 80], 1],
  ])('names the round at which a pattern is out of order: %s', (_, places, counts, nth) => {
    const rounds = places.map((round, i) => ({ round: rows(round), after: stitches(counts[i] ?? 0) }));
    expect(asPattern({ direction: 'up', rows: rows(60), before: stitches(240), rounds })).toEqual({
      kind: 'rounds out of order',
      nth,
    });
  });
});
