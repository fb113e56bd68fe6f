import { describe, expect, it } from 'vitest';
import { type Gauge, rateFrom } from '../../src/fit/gauge.ts';
import { type Part, phrase, type Way } from '../../src/fit/plan.ts';
import { takingRows } from '../../src/fit/rows-taken.ts';
import { plain, say, step } from '../../src/fit/steps.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { layWedge, type Wedge } from '../../src/fit/wedge.ts';

const over10cm = (count: number) => rateFrom([{ count, span: cm(10), unit: 'cm' }]);
const GAUGE: Gauge = { stitches: over10cm(20), rows: over10cm(40), worked: 'flat' };

/** Short rows over a flat piece, which count as one row of it. */
function wedge(depth: number, sides: Wedge['sides'] = 'both'): Wedge {
  const laid = layWedge({
    purpose: 'back neck raise',
    place: { level: 'neck', rows: rows(0), point: 'begins' },
    worked: 'flat',
    sides,
    order: 'shortening',
    depth: cm(depth),
    gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(4) },
    needle: stitches(80),
    span: { start: 10, stitches: stitches(sides === 'both' ? 60 : 70) },
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
/** A way that takes a row more. */
const longer: Way = {
  name: phrase('way: straight across'),
  instead: [{ do: 'short rows', wedge: wedge(2, 'start') }],
};
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

  it('take one row more where they begin with a wrong-side row, which comes after a plain one', () => {
    // Sloped where right-side rows start, the first turn stands at the end of a wrong-side row.
    const part = partOf([{ do: 'short rows', wedge: wedge(2, 'start') }]);
    expect(takingRows(part, OWN + 1, GAUGE)).toEqual(part);
    expect(takingRows(part, OWN, GAUGE)).toBeUndefined();
  });

  it('take the plain rows told beside them too, and none by what is only said', () => {
    const part = partOf([
      say(phrase('do: this way instead')),
      { do: 'short rows', wedge: WEDGE },
      plain(3, stitches(80), GAUGE),
    ]);
    expect(takingRows(part, OWN + 3, GAUGE)).toEqual(part);
    expect(takingRows(part, OWN, GAUGE)).toBeUndefined();
  });

  it('are not to be had where one of two steps takes others', () => {
    const [one] = partOf([{ do: 'short rows', wedge: WEDGE }]).steps;
    const [other] = partOf([{ do: 'short rows', wedge: wedge(2, 'start') }]).steps;
    if (one === undefined || other === undefined) throw new Error('a part has its steps');
    const part = { steps: [one, other], finished: [], pieces: [] };
    expect(takingRows(part, OWN, GAUGE)).toBeUndefined();
    expect(takingRows({ ...part, steps: [one, one] }, OWN, GAUGE)?.steps).toEqual([one, one]);
  });

  it('leave ways as they are that take as many', () => {
    expect(takingRows(CHOICE, OWN, GAUGE)).toEqual(CHOICE);
  });

  it('fill up only the ways that take fewer', () => {
    const [one] =
      takingRows(partOf([{ do: 'choose one', ways: [way(2), longer] }]), OWN + 1, GAUGE)?.steps ?? [];
    const [choice] = one?.instead ?? [];
    expect(choice).toEqual({
      do: 'choose one',
      ways: [{ ...way(2), instead: [...way(2).instead, plain(1, stitches(80), GAUGE)] }, longer],
    });
    expect(one?.workings.map(({ exact }) => exact)).toEqual([1 / 4]);
  });

  it('offer the one way that is left as the one, not as one of several', () => {
    const why = say(phrase('cannot: darts in rows that shape'));
    const choice = (ways: readonly Way[]) => ({ do: 'choose one' as const, ways });
    const offered = (said: 'do: one of these instead' | 'do: this way instead', ways: readonly Way[]) =>
      partOf([why, say(phrase(said)), choice(ways)]);
    expect(takingRows(offered('do: one of these instead', [way(2), longer]), OWN, GAUGE)).toEqual(
      offered('do: this way instead', [way(2)]),
    );
    expect(takingRows(offered('do: one of these instead', [way(2), way(3)]), OWN, GAUGE)).toEqual(
      offered('do: one of these instead', [way(2), way(3)]),
    );
  });

  it('are counted wherever they stand among what a way tells', () => {
    const told = { ...way(2), instead: [say(phrase('do: this way instead')), ...way(2).instead] };
    const [filled] = takingRows(partOf([{ do: 'choose one', ways: [told] }]), OWN + 2, GAUGE)?.steps ?? [];
    expect(filled?.instead).toEqual([
      { do: 'choose one', ways: [{ ...told, instead: [...told.instead, plain(2, stitches(80), GAUGE)] }] },
    ]);
  });

  it('cannot be filled up where no way has short rows: the stitches of a plain row are not known', () => {
    const leftOut = { name: phrase('way: straight across'), instead: [] };
    expect(takingRows(partOf([{ do: 'choose one', ways: [leftOut] }]), OWN, GAUGE)).toBeUndefined();
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
