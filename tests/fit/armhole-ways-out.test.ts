/** What is offered where no armhole can be shaped, at 22 stitches and 30 rows to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { type ArmholeAsk, armhole } from '../../src/fit/armhole.ts';
import { shapeArmhole } from '../../src/fit/armhole-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

/** 20 cm are 60 rows, so that shaping is done by row 30. */
function askFor(bust: number, crossBack: number, more: Partial<ArmholeAsk> = {}): ArmholeAsk {
  return {
    bust: stitches(bust),
    crossBack: stitches(crossBack),
    depth: cm(20),
    gauge: over10cm(22, 30),
    ...more,
  };
}

const off = (...counts: readonly number[]) => ({ bindOffs: counts.map(stitches) });

/** Each way with its cross back, its bind-offs, its rows and the row in which the last stitch is lost. */
function ways(ask: ArmholeAsk, because: string) {
  const found = armhole(ask);
  if (found.kind === 'armhole') throw new Error('there is an armhole');
  expect(found.kind).toBe(because);
  return found.alternatives.map(
    ({ way, armhole: { crossBack, bindOffs, rows, straight } }) =>
      `${way}: ${crossBack}, off ${bindOffs.join('+')}, ${rows} rows, shaped by ${rows - straight}`,
  );
}

const counts = (told: readonly string[]) => told.map((way) => way.split(',')[0]);

describe('where an odd number of stitches is to be lost', () => {
  it('the cross back is one less, or one more', () => {
    expect(counts(ways(askFor(100, 77), 'odd loss'))).toEqual([
      'nearest cross back: 76',
      'nearest cross back: 78',
    ]);
  });

  it('a stitch is always left', () => {
    expect(counts(ways(askFor(4, 1), 'odd loss'))).toEqual(['nearest cross back: 2']);
    expect(counts(ways(askFor(5, 2), 'odd loss'))).toEqual([
      'nearest cross back: 1',
      'nearest cross back: 3',
    ]);
  });
});

describe('where the cross back is wider than the bust', () => {
  it('the armhole is straight, and nothing bound off', () => {
    expect(ways(askFor(100, 122, off(4)), 'cross back wider')).toEqual([
      'straight: 100, off , 60 rows, shaped by 0',
    ]);
  });
});

describe('where the bind-offs take more than there is to lose', () => {
  it('they are cut short from the last, or the cross back is what they leave', () => {
    // Five to lose at each side of seven: 4 + 1. 100 − 2 × 7 = 86.
    expect(ways(askFor(100, 90, off(4, 3)), 'bind-offs exceed the loss')).toEqual([
      'bind off less: 90, off 4+1, 60 rows, shaped by 4',
      'nearest cross back: 86, off 4+3, 60 rows, shaped by 4',
    ]);
  });

  it('those fall away of which nothing is left', () => {
    expect(ways(askFor(100, 90, off(5, 3)), 'bind-offs exceed the loss')[0]).toBe(
      'bind off less: 90, off 5, 60 rows, shaped by 2',
    );
    expect(ways(askFor(100, 100, off(3)), 'bind-offs exceed the loss')).toEqual([
      'bind off less: 100, off , 60 rows, shaped by 0',
      'nearest cross back: 94, off 3, 60 rows, shaped by 2',
    ]);
  });

  it('no cross back is offered of which nothing is left', () => {
    expect(counts(ways(askFor(10, 8, off(5)), 'bind-offs exceed the loss'))).toEqual(['bind off less: 8']);
  });
});

describe('where there are too few rows', () => {
  it('all of it may be shaped, more bound off, the cross back wider, or the armhole deeper by the least that does', () => {
    // 37 to lose, 31 of them after the bind-off and its two rows: 33 rows, three too many.
    expect(ways(askFor(100, 26), 'too few rows')).toEqual([
      'shape higher: 26, off 6, 60 rows, shaped by 59',
      'bind off more: 26, off 9, 60 rows, shaped by 30',
      'wider cross back: 32, off 6, 60 rows, shaped by 30',
      // Half of 64 rows would be 32; of 66 it is 33.
      'deeper: 26, off 6, 66 rows, shaped by 33',
    ]);
  });

  it('a first bind-off saves two rows less than it takes stitches', () => {
    // 35 decreases in 30 rows: seven bound off in two rows leave 28.
    expect(ways(askFor(100, 30, off()), 'too few rows')[1]).toBe(
      'bind off more: 30, off 7, 60 rows, shaped by 30',
    );
  });

  it('the height by which shaping is done grows with the depth', () => {
    // 8 cm are 24 rows; 30 to lose take 2 + 24.
    expect(ways(askFor(100, 40, { shapedBy: cm(8) }), 'too few rows').at(-1)).toBe(
      'deeper: 40, off 6, 62 rows, shaped by 26',
    );
  });

  it('nothing is offered that the armhole’s own depth does not allow', () => {
    // 48 to lose take 2 + 42 rows; 10 cm have 30.
    expect(counts(ways(askFor(100, 4, { depth: cm(10) }), 'too few rows'))).toEqual([
      'bind off more: 4',
      'wider cross back: 60',
      'deeper: 4',
    ]);
  });
});

describe('where the armhole can be shaped', () => {
  it('nothing else is offered', () => {
    expect(armhole(askFor(100, 78))).toEqual(shapeArmhole(askFor(100, 78)));
  });
});
