/** What is offered where a waist's lines cannot take it: each offer can be knitted, and measures what it says. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BodyAsk, BodyLines, WaistAsk } from '../../src/fit/body-shaping.ts';
import { perBodyRow } from '../../src/fit/body-shaping.ts';
import { evaluate } from '../../src/fit/formula.ts';
import type { PhraseName } from '../../src/fit/phrases.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { otherWaists, shapeWaist, type WaistShaped, waistPart } from '../../src/fit/waist-ways.ts';
import type { Quantity } from '../../src/fit/working.ts';
import { bodyAsks } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';
import { DRAWN_IN } from './drawn-in.ts';

type Ask = BodyAsk & { readonly waist: WaistAsk };

const PIECES: Ask = {
  ...DRAWN_IN,
  waist: { ...DRAWN_IN.waist, around: cm(56) },
  lines: 'back darts',
};
const ROUND: Ask = {
  ...PIECES,
  gauge: over10cm(22, 30, 'round'),
  edge: 0,
  pattern: { ...PIECES.pattern, hem: stitches(40), bust: stitches(40) },
  waist: { around: cm(7.5), belowUnderarm: cm(18) },
};

const offered = (ask: Ask) =>
  otherWaists(ask, null).ways.map(({ say, with: gaps }): [PhraseName, number] => [
    say,
    Math.round(100 * (gaps.width as Quantity).value) / 100,
  ]);
const waistOf = (made: WaistShaped) =>
  waistPart(made, null).finished.find(({ name }) => name === 'waist')?.range.expected;
const sound = (made: ReturnType<typeof shapeWaist>): made is WaistShaped =>
  made.kind !== 'cannot' &&
  (made.kind === 'pieces' ? [made.back, made.front] : [made]).every(({ sections }) =>
    sections.every(({ spacing }) => spacing === null || spacing.kind === 'spaced'),
  );

describe('a waist that its lines cannot take, by hand', () => {
  it('in the back of pieces: what darts of both can, and the least that the back’s can', () => {
    // 56 cm leave 6 to the back: 16 stitches, 24 times four where 21 rows may carry it; so it is with two at each side,
    // 28 cm: 64 stitches, 24 times two. In fours of both pieces it is 12. The back reaches 112 − 21 × 4 = 28: 26 / 2.2 + 50.
    expect(shapeWaist(PIECES)).toMatchObject({
      kind: 'cannot',
      why: 'too few rows',
      needed: 24,
      available: 22,
    });
    expect(offered(PIECES)).toEqual([
      ['instead: waist in darts of both', 56.36],
      ['instead: wider waist in these lines', 61.82],
    ]);
  });

  it('in the round: what sides and four darts can, and the least that the back’s can', () => {
    // 16 of 40 stitches at the sides and in four darts; the back's darts leave two of five beside each line: 40 − 3 × 4.
    expect(shapeWaist(ROUND)).toMatchObject({ kind: 'cannot', why: 'darts meet' });
    expect(offered(ROUND)).toEqual([
      ['instead: waist at the sides', 7.27],
      ['instead: waist in darts of both', 7.27],
      ['instead: wider waist in these lines', 12.73],
    ]);
  });

  it('has no way where not even the rows of four darts are enough, nor anything to take in', () => {
    expect(offered({ ...PIECES, waist: { around: cm(170), belowUnderarm: cm(18) } })).toEqual([
      ['instead: waist in darts of both', 169.09],
    ]);
    expect(offered({ ...PIECES, waist: { around: cm(400), belowUnderarm: cm(18) } })).toEqual([]);
  });
});

describe('a waist that its lines cannot take, whatever is asked', () => {
  const LINES: Partial<Readonly<Record<PhraseName, BodyLines>>> = {
    'instead: waist at the sides': 'sides',
    'instead: waist in darts of both': 'darts',
  };

  it('is offered nothing but what can be shaped, at the width that is said', () => {
    const met = new Map<string, number>();
    fc.assert(
      fc.property(bodyAsks, fc.integer({ min: 10, max: 75 }), fc.boolean(), (body, share, darts) => {
        const pieces = body.gauge.worked === 'flat' ? 2 : 1;
        const bust = (pieces * (body.pattern.bust - body.edge)) / body.gauge.stitches.perCm;
        const ask: Ask = {
          ...body,
          lines: darts ? 'darts' : 'back darts',
          waist: { around: cm((bust * share) / 100), belowUnderarm: cm(body.length * 0.45) },
        };
        const made = shapeWaist(ask);
        if (made.kind !== 'cannot' || (made.why !== 'darts meet' && made.why !== 'too few rows')) return;
        const { ways, workings } = otherWaists(ask, null);
        for (const line of workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
        for (const { say, with: gaps } of ways) {
          met.set(say, (met.get(say) ?? 0) + 1);
          const width = (gaps.width as Quantity).value;
          expect(workings.some(({ result }) => result.value === width)).toBe(true);
          const lines = LINES[say];
          const again = lines === undefined ? wider(ask, width) : shapeWaist({ ...ask, lines });
          expect(sound(again)).toBe(true);
          if (sound(again)) expect(waistOf(again)).toBeCloseTo(width, 9);
          if (lines === undefined) expect(sound(wider(ask, width - oneCount(ask)))).toBe(false);
        }
      }),
      { numRuns: 600 },
    );
    expect([...met.keys()].sort()).toEqual([
      'instead: waist at the sides',
      'instead: waist in darts of both',
      'instead: wider waist in these lines',
    ]);
  });

  const wider = (ask: Ask, around: number) =>
    shapeWaist({ ...ask, waist: { ...ask.waist, around: cm(around) } });
  /** Around the body, from one count to the next. */
  const oneCount = ({ gauge, lines }: Ask) =>
    (perBodyRow(gauge, lines) * (lines === 'darts' && gauge.worked === 'flat' ? 2 : 1)) /
    gauge.stitches.perCm;
});
