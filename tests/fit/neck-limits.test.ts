/** Where a neck begins and ends to be possible, and its usual shaping, at 22 stitches and 30 rows to 10 cm; worked by hand. */
import { describe, expect, it } from 'vitest';
import { type NeckAsk, shapeNeck } from '../../src/fit/neck-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** A neck of so many stitches, among 76 and 8 cm deep, which are 24 rows. */
function neckOf(count: number, more: Partial<NeckAsk> = {}) {
  return shapeNeck({
    stitches: stitches(76),
    width: cm(count / 2.2),
    depth: cm(8),
    gauge: over10cm(22, 30),
    ...more,
  });
}
const steps = (count: number) => {
  const made = neckOf(count);
  return made.kind === 'neck' ? [made.centre, made.steps] : made.kind;
};
const lines = (more: Partial<NeckAsk> = {}) => {
  const made = neckOf(38, more);
  return made.kind === 'neck' ? told(made.workings) : [made.kind];
};

describe('a neck', () => {
  it('leaves a stitch for each shoulder', () => {
    expect(neckOf(38, { stitches: stitches(40) })).toMatchObject({ kind: 'neck', shoulder: 1 });
    expect(neckOf(40, { stitches: stitches(40) })).toEqual({
      kind: 'no shoulders left',
      neck: 40,
      stitches: 40,
    });
  });

  it('has a third of its stitches for a centre; steps of 3 and 2 where a side loses 8, of 2 where it loses 4', () => {
    // 24 / 3 = 8 leaves 8; 22 / 3 = 7.3 is 8 and leaves 7; 12 / 3 = 4 leaves 4; 10 / 3 = 3.3 is 4 and leaves 3.
    expect([24, 22, 12, 10].map(steps)).toEqual([
      [8, [3, 2]],
      [8, [2]],
      [4, [2]],
      [4, []],
    ]);
  });

  it('takes a centre that is even where it is even, and odd where it is odd', () => {
    expect(neckOf(38, { centre: stitches(10) }).kind).toBe('neck');
    expect(neckOf(38, { centre: stitches(11) })).toEqual({
      kind: 'centre of the wrong parity',
      centre: 11,
      neck: 38,
    });
    const odd = { stitches: stitches(75) };
    expect(neckOf(37, { ...odd, centre: stitches(11) }).kind).toBe('neck');
    expect(neckOf(37, { ...odd, centre: stitches(10) }).kind).toBe('centre of the wrong parity');
  });

  it('shows how its centre was found: the usual third, or the least that its rows allow; nothing where it was asked for', () => {
    expect(lines().slice(1, 3)).toEqual([
      'rows of the neck: a * b = 24 rows',
      'usual centre of the neck: a / 3 = 12 stitches',
    ]);
    // 4 cm have 12 rows: (12 − 6) / 2 decreases beside steps of five are 8 at either side of 22.
    expect(lines({ depth: cm(4) })[2]).toBe(
      'least centre for the rows there are: a - 2 * (b + c) = 22 stitches',
    );
    expect(lines({ centre: stitches(12) }).filter((line) => line.includes('centre of the neck'))).toEqual([]);
    expect(lines().filter((line) => line.startsWith('least centre'))).toEqual([]);
  });

  it('shows every figure that it has, in its unit', () => {
    expect(lines().slice(3, 8)).toEqual([
      'stitches of each shoulder: (a - b) / 2 = 19 stitches',
      'stitches of each side after the centre: (a - b) / 2 = 32 stitches',
      'decreases at each neck edge: (a - b) / 2 - c = 8 times',
      'neck depth as knitted: a / b = 8 cm',
      'straight rows to the shoulder: a - b = 3 rows',
    ]);
    const [width, edge] = lines().slice(-2);
    expect(width).toBe('neck width as knitted: a / b = 17.272727 cm');
    expect(edge).toMatch(/^edge of the neck: a \/ b \+ 2 \* c = [\d.]+ cm$/);
  });

  it('as a V decreases from its point on, over all its rows; an odd stitch is its point', () => {
    const even = neckOf(16, { shape: 'V' });
    const odd = neckOf(15, { shape: 'V', stitches: stitches(75) });
    if (even.kind !== 'neck' || odd.kind !== 'neck') throw new Error('both can be shaped');
    expect([even.centre, even.steps, odd.centre, odd.steps]).toEqual([0, [], 1, []]);
    // Eight decreases in 22 rows after the first two: every second row or third, not all at once.
    const rows = even.sides.last.events.map(({ row }) => row);
    expect(rows).toHaveLength(8);
    expect(Math.max(...rows)).toBeGreaterThan(16 + 2);
    expect(lines({ shape: 'V' }).filter((line) => line.includes('centre of the neck'))).toEqual([]);
  });
});
