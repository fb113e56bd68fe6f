/** A back with all the darts and a front with none: what both measure together, and that they can be sewn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BodyPieces, type PiecesAsk, shapePieces } from '../../src/fit/body-pieces.ts';
import { piecesPart } from '../../src/fit/body-pieces-steps.ts';
import { type BodyShaping, shapeBody } from '../../src/fit/body-shaping.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { cm, type Stitches, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { bodyAsks } from './arbitrary.ts';
import { DRAWN_IN, withHem } from './drawn-in.ts';
import { told } from './told.ts';

function shaped(ask: PiecesAsk): BodyPieces {
  const made = shapePieces(ask);
  if (made.kind !== 'pieces') throw new Error(made.why);
  return made;
}

const finishedOf = (made: BodyPieces) =>
  Object.fromEntries(piecesPart(made, null).finished.map(({ name, range }) => [name, range.expected]));
const levelsOf = ({ after }: BodyShaping) => after.levels.map(({ row, stitches: on }) => [row, on]);

const asks: fc.Arbitrary<PiecesAsk> = bodyAsks.chain((ask) =>
  fc
    .record({ share: fc.integer({ min: 55, max: 105 }), below: fc.integer({ min: 25, max: 65 }) })
    .map(({ share, below }): PiecesAsk => {
      const { lines: _, ...rest } = ask;
      const count =
        ask.gauge.worked === 'flat' ? ask.pattern.bust : stitches(Math.round(ask.pattern.bust / 2) + 2);
      const hem = stitches(count + ask.pattern.hem - ask.pattern.bust);
      const around = cm((share / 100) * 2 * ((count - 2) / ask.gauge.stitches.perCm));
      return {
        ...rest,
        gauge: { ...ask.gauge, worked: 'flat' },
        edge: 2,
        pattern: { ...ask.pattern, hem, bust: count },
        waist: { around, belowUnderarm: cm((below / 100) * ask.length) },
      };
    }),
);

function drawn(check: (made: BodyPieces, ask: PiecesAsk) => void, numRuns: number): void {
  let seen = 0;
  fc.assert(
    fc.property(asks, (ask) => {
      const made = shapePieces(ask);
      if (made.kind !== 'pieces') return;
      seen += 1;
      check(made, ask);
    }),
    { numRuns },
  );
  expect(seen).toBeGreaterThan(numRuns / 4);
}

/** Knitted section by section; counts after each row. */
function knitted({ sections }: BodyShaping): { needle: Needle; counts: readonly number[] } {
  const needle = Needle.castOn(sections[0]?.from ?? 0, 'flat');
  const begun = needle.count;
  for (const { spacing, stretch } of sections) {
    if (spacing === null) needle.plain(stretch.rows);
    else if (spacing.kind === 'spaced') expect(knitSection(needle, spacing, 'flat')).toEqual([]);
    else throw new Error(spacing.kind);
  }
  return { needle, counts: [begun, ...needle.counts] };
}

describe('darts in the back alone of a body in pieces, by hand', () => {
  // The front is 110 stitches between its edges, 50 cm; that leaves 38 cm to the back: 83.6 stitches and 2, in fours 84.
  it('take all of it out of the back: 112 to 84, seven times four, and the front stays at 112', () => {
    const made = shaped(DRAWN_IN);
    expect(levelsOf(made.back)).toEqual([
      [0, 112],
      [18, 112],
      [62, 84],
      [70, 84],
      [120, 112],
    ]);
    expect(levelsOf(made.front)).toEqual([
      [0, 112],
      [18, 112],
      [120, 112],
    ]);
    expect(
      made.back.sections.map(({ spacing }) => spacing?.kind === 'spaced' && spacing.shaping.length),
    ).toEqual([false, 7, false, 7]);
    // 82 stitches are 37.27 cm, and 50 cm.
    expect(finishedOf(made).waist).toBeCloseTo(82 / 2.2 + 50, 9);
    expect(told(piecesPart(made, null).steps[2]?.workings ?? []).slice(0, 9)).toEqual([
      'rows to the waist: a * b = 66 rows',
      'stitches of the front at the waist: a = 112 stitches',
      'width at the waist of the front: (a - c) / b = 50 cm',
      'width at the waist that is left to the back: a - b = 38 cm',
      'stitches at the waist: a * b + c = 84 stitches',
      'width of the smaller count: (a - c) / b = 37.272727 cm',
      'width of the larger count: (a - c) / b = 39.090909 cm',
      'width at the waist of the back: (a - c) / b = 37.272727 cm',
      'width at the waist: a + b = 87.272727 cm',
    ]);
  });

  // The front goes from 124 to 112 in rows 13, 29, 45, 61, 77, 93 above the edging: three of them lie by row 66 − 18.
  it('count the front as it stands in the row of the waist where the pattern goes in', () => {
    const made = shaped(withHem(124));
    expect(made.front.sections[1]?.spacing).toMatchObject({
      shaping: [13, 29, 45, 61, 77, 93].map((row) => ({ row })),
    });
    expect(made.atWaist.stitches).toBe(118);
    // 88 cm less 116 stitches, 52.73 cm: 35.27 cm are 77.6 stitches and 2, in fours 80.
    expect(made.back.waist?.stitches).toBe(80);
    expect(finishedOf(made)).toMatchObject({
      waist: (78 + 116) / 2.2,
      'lower edge': (122 + 122) / 2.2,
    });
  });

  it('move each hem no further than its own shaping needs', () => {
    const hems = (hem: number) => {
      const { back, front } = shaped(withHem(hem));
      return [back, front].map(({ sections, hemMoved }) => [sections[0]?.from, hemMoved]);
    };
    expect(hems(112)).toEqual([
      [112, false],
      [112, false],
    ]);
    // 114 is two more than 112: the front can shape it, the back's fours cannot.
    expect(hems(114)).toEqual([
      [116, true],
      [114, false],
    ]);
    expect(hems(123)).toEqual([
      [124, true],
      [124, true],
    ]);
    const { 'lower edge': lower } = finishedOf(shaped(withHem(114)));
    expect(lower).toBeCloseTo((114 + 112) / 2.2, 9);
  });

  it('tell back and front one after the other, and where the front differs', () => {
    const { steps, pieces } = piecesPart(shaped(DRAWN_IN), null);
    expect(steps.map(({ piece, where }) => `${piece}, ${where.say}`)).toEqual([
      'back, where: cast-on and hem',
      'back, where: hem to waist',
      'back, where: at the waist',
      'back, where: waist to underarm',
      'front, where: cast-on and hem',
      'front, where: hem to underarm',
    ]);
    const notes = (i: number) => steps[i]?.notes.map(({ say }) => say);
    expect(notes(1)).toContain('note: dart lines of a piece');
    expect(notes(2)).toContain('note: waist of back and front');
    expect(notes(4)).toEqual(['note: front without darts']);
    expect(steps.flatMap((one) => one.notes.map(({ say }) => say))).not.toContain('note: pieces alike');
    expect(pieces.map(({ before, after }) => [before?.name, after.name])).toEqual([
      ['back', 'back'],
      ['front', 'front'],
    ]);
  });

  it('say why not: darts that meet, rows that are too few in back or front, a waist outside the body', () => {
    const around = (waist: number) =>
      shapePieces({ ...DRAWN_IN, waist: { ...DRAWN_IN.waist, around: cm(waist) } });
    // 51 cm leave 1 cm to the back: 2.2 stitches and 2, in fours 4, of 112: 27 of the 28 stitches beside each line.
    expect(around(51)).toMatchObject({ kind: 'cannot', why: 'darts meet' });
    expect(around(40)).toMatchObject({ kind: 'cannot', why: 'darts meet' });
    // 60 cm leave 10: 22 and 2 stitches, 24: 22 times four; the 42 rows above the waist have 21 right-side rows.
    expect(around(60)).toEqual({ kind: 'cannot', why: 'too few rows', needed: 22, available: 21 });
    expect(around(62)).toMatchObject({ kind: 'pieces', back: { waist: { stitches: 28 } } });
    expect(shapePieces(withHem(400))).toMatchObject({ kind: 'cannot', why: 'too few rows', needed: 144 });
    expect(shapePieces({ ...DRAWN_IN, waist: { ...DRAWN_IN.waist, belowUnderarm: cm(36) } })).toMatchObject({
      kind: 'cannot',
      why: 'waist outside the body',
    });
  });

  it('are never shaped without the front: that would be a mistake of the program', () => {
    expect(() => shapeBody({ ...DRAWN_IN, lines: 'back darts' })).toThrow(/width of the front/);
  });
});

describe('back and front that differ, whatever is asked', () => {
  it('have the same rows, so that they can be sewn, and the pattern’s count at the underarm', () => {
    drawn(({ back, front }, ask) => {
      const [one, other] = [back, front].map((piece) => knitted(piece));
      expect(one?.needle.log.length).toBe(other?.needle.log.length);
      expect(one?.needle.log.length).toBe(back.inAll.result.value);
      const bust = (of: typeof one) => (ask.direction === 'up' ? of?.counts.at(-1) : of?.counts[0]);
      expect([bust(one), bust(other)]).toEqual([ask.pattern.bust, ask.pattern.bust]);
    }, 400);
  });

  it('measure what is stated, stitch by stitch in the row of the waist and at the lower edge', () => {
    drawn((made, ask) => {
      const [back, front] = [knitted(made.back).counts, knitted(made.front).counts];
      const row = made.atWaist.workings[0]?.result.value ?? -1;
      const wide = (at: number) => ((back[at] ?? 0) + (front[at] ?? 0) - 4) / ask.gauge.stitches.perCm;
      const finished = finishedOf(made);
      expect(finished.waist).toBeCloseTo(wide(row), 9);
      expect(finished['lower edge']).toBeCloseTo(wide(ask.direction === 'up' ? 0 : back.length - 1), 9);
      const plain = made.back.after.levels.filter(({ name }) => name === 'waist').map((level) => level.row);
      expect(plain[0]).toBeLessThanOrEqual(row);
      expect(plain[1]).toBeGreaterThanOrEqual(row);
      // Two stitches on either side of what is asked for, where the back can be so narrow at all.
      const off = Math.abs(wide(row) - ask.waist.around) * ask.gauge.stitches.perCm;
      expect(off).toBeLessThanOrEqual(2 + 1e-6);
    }, 400);
  });

  it('keep the pattern’s hem where it can be shaped: in the front within one stitch, in the back within two', () => {
    drawn(({ back, front }, { hip, pattern }) => {
      if (hip !== null) return;
      const moved = ({ sections, ask }: BodyShaping) =>
        Math.abs(
          ((ask.direction === 'up' ? sections[0]?.from : sections.at(-1)?.to) as Stitches) - pattern.hem,
        );
      expect(moved(front)).toBe(Math.abs(pattern.hem - pattern.bust) % 2);
      expect(moved(back)).toBeLessThanOrEqual(2);
    }, 600);
  });

  it('show workings whose formulas give their values, and every figure of a note or check in one of them', () => {
    drawn((made) => {
      for (const { workings, notes, check } of piecesPart(made, null).steps) {
        for (const line of workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        const known = workings.flatMap(({ given, result, rounding }) => [
          ...Object.values(given),
          result,
          // 'To the nearest multiple of 4' shows the 4.
          ...(rounding?.to === 'multiple' ? [{ unit: result.unit, value: rounding.multiple }] : []),
        ]);
        const said = [...notes, ...(check === null ? [] : [check])].flatMap((one) => Object.values(one.with));
        for (const gap of said)
          if (typeof gap !== 'string')
            expect(known.some((q) => q.unit === gap.unit && Math.abs(q.value - gap.value) < 1e-9)).toBe(true);
      }
    }, 150);
  });
});
