import { describe, expect, it } from 'vitest';
import { type Gauge, rateFrom } from '../../src/fit/gauge.ts';
import { type Part, phrase, type Way } from '../../src/fit/plan.ts';
import { takingRows } from '../../src/fit/rows-taken.ts';
import { step } from '../../src/fit/steps.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { layWedge, type Wedge } from '../../src/fit/wedge.ts';

const over10cm = (count: number) => rateFrom([{ count, span: cm(10), unit: 'cm' }]);
const GAUGE: Gauge = { stitches: over10cm(20), rows: over10cm(40), worked: 'flat' };

/** Short rows over a flat piece, which count as one row of it. */
function wedge(depth: number): Wedge {
  const laid = layWedge({
    purpose: 'back neck raise',
    place: { level: 'neck', rows: rows(0), point: 'begins' },
    worked: 'flat',
    sides: 'both',
    order: 'shortening',
    depth: cm(depth),
    gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(4) },
    needle: stitches(80),
    span: { start: 10, stitches: stitches(60) },
    inset: stitches(0),
    flat: stitches(20),
    outer: 'turn',
    counted: 'from the sides',
    larger: 'outermost',
  });
  if (laid.kind !== 'wedge') throw new Error(laid.kind);
  return laid;
}

const WEDGE = wedge(2);
const OWN = WEDGE.closing.ordinaryRows;
const way = (depth: number): Way => ({
  name: phrase('way: straight across'),
  instead: [{ do: 'short rows', wedge: wedge(depth) }],
});
const partOf = (instead: Parameters<typeof step>[2]['instead']): Part => ({
  steps: [step('back', phrase('where: back of the neck'), instead === undefined ? {} : { instead })],
  finished: [],
  pieces: [],
});
const CHOICE = partOf([{ do: 'choose one', ways: [way(2), way(3)] }]);

describe('short rows that must take so many rows of what lies beside them', () => {
  it('stay as they are where they do', () => {
    const part = partOf([{ do: 'short rows', wedge: WEDGE }]);
    expect(takingRows(part, OWN, GAUGE)).toEqual(part);
    expect(takingRows(part, OWN + 1, GAUGE)).toBeUndefined();
  });

  it.each([1, 2, 3])(
    'are filled up with %i plain rows where a way takes fewer, as high as its working says',
    (lacking) => {
      const [filled] = takingRows(CHOICE, OWN + lacking, GAUGE)?.steps ?? [];
      const plain = filled?.instead.flatMap((one) =>
        one.do === 'choose one' ? one.ways.map(({ instead }) => instead.at(-1)) : [],
      );
      const last = { do: 'work plain', rows: lacking, length: lacking / 4, stitches: 80 };
      expect(plain).toMatchObject([last, last]);
      expect(filled?.workings.map(({ exact }) => exact)).toEqual([lacking / 4]);
    },
  );

  it('are not to be had where every way takes more', () => {
    expect(takingRows(CHOICE, OWN - 1, GAUGE)).toBeUndefined();
  });
});
