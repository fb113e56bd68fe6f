/** Where the dart lines of a waist lie: counted stitch by stitch from the rows that shape. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BodyAsk, type BodyShaping, shapeBody, toDartLine } from '../../src/fit/body-shaping.ts';
import { dartPoints } from '../../src/fit/dart-lines.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { bodyAsks } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';
import { withHem } from './drawn-in.ts';

const FLAT: BodyAsk = { ...withHem(124), lines: 'darts' };

function drawn(ask: BodyAsk): BodyShaping {
  const body = shapeBody(ask);
  if (body.kind !== 'body') throw new Error(body.why);
  return body;
}
const points = (ask: BodyAsk) => dartPoints(drawn(ask)).map(({ row, fromMiddle }) => [row, fromMiddle]);

/** Stitches between the two lines, row by row: each shaping row takes one on the inner side of each. */
function between({ ask, sections }: BodyShaping): ReadonlyMap<number, number> {
  const first = sections.find(({ spacing }) => spacing !== null)?.from ?? stitches(0);
  const piece = ask.gauge.worked === 'round' ? first / 2 : first - ask.edge;
  const counts = new Map<number, number>();
  let [row, inner] = [0, piece - 2 * toDartLine(first, ask).result.value];
  for (const { spacing, stretch, from, to } of sections) {
    const shaped = spacing?.kind === 'spaced' ? spacing.shaping.map((one) => one.row as number) : [];
    counts.set(row, inner);
    for (let i = 1; i <= stretch.rows; i++) {
      if (shaped.includes(i)) inner += to > from ? 2 : -2;
      counts.set(row + i, inner);
    }
    row += stretch.rows;
  }
  return counts;
}

describe('the dart lines of a waist', () => {
  // 31 of 61 stitches lie beside each line; six rows take two from each line to the waist, three give them back.
  it('lie a quarter of the piece in, and lean in with the stitches that are lost beside them', () => {
    expect(points(FLAT)).toEqual([
      [18, 30],
      [62, 24],
      [70, 24],
      [120, 27],
    ]);
    expect(points({ ...FLAT, direction: 'down' })).toEqual([
      [0, 27],
      [50, 24],
      [58, 24],
      [102, 30],
    ]);
  });

  it('lie on one half of a round, with that half’s own stitches', () => {
    const round = {
      ...FLAT,
      gauge: over10cm(22, 30, 'round'),
      edge: 0,
      pattern: { ...FLAT.pattern, hem: stitches(220), bust: stitches(220) },
    };
    // 28 of the 55 stitches from the side to the middle; 24 lost in eights are three rows, 28 in fours are seven.
    expect(points(round)).toEqual([
      [18, 27],
      [62, 24],
      [70, 24],
      [120, 27],
    ]);
    expect(points({ ...round, lines: 'back darts' })).toEqual([
      [18, 27],
      [62, 20],
      [70, 20],
      [120, 27],
    ]);
  });

  it('are none where the sides are shaped, or nothing is', () => {
    expect(points({ ...FLAT, lines: 'sides' })).toEqual([]);
    expect(
      points({
        ...FLAT,
        pattern: { ...FLAT.pattern, hem: stitches(112) },
        waist: { around: cm(100), belowUnderarm: cm(18) },
      }),
    ).toEqual([]);
  });

  it('have as many stitches between them as the shaping rows leave there', () => {
    let seen = 0;
    fc.assert(
      fc.property(bodyAsks, (ask) => {
        const body = shapeBody(ask);
        if (
          body.kind !== 'body' ||
          body.sections.some(({ spacing }) => spacing !== null && spacing.kind !== 'spaced')
        )
          return;
        const counted = between(body);
        for (const { row, fromMiddle } of dartPoints(body)) {
          seen += 1;
          expect(2 * fromMiddle).toBe(counted.get(row));
        }
      }),
      { numRuns: 600 },
    );
    expect(seen).toBeGreaterThan(200);
  });
});
