import { describe, expect, it } from 'vitest';
import { Needle } from './needle.ts';

describe('the simulated needle', () => {
  it('counts rows in every column of plain knitting, flat and round', () => {
    for (const way of ['flat', 'round'] as const) {
      const needle = Needle.castOn(5, way).plain(3);
      expect(needle.heights).toEqual([3, 3, 3, 3, 3]);
      expect(needle.counts).toEqual([5, 5, 5]);
    }
  });

  it('knits back and forth on a flat piece, and always on the right side in the round', () => {
    expect(
      Needle.castOn(4, 'flat')
        .plain(3)
        .log.map((row) => row.side),
    ).toEqual(['right side', 'wrong side', 'right side']);
    expect(Needle.castOn(4, 'round').plain(2).next).toEqual({ side: 'right side', at: 0 });
  });

  it('shapes at both ends from either side of the work', () => {
    const needle = Needle.castOn(10, 'flat').shaped({ start: -1, end: -1 }).shaped({ start: 2, end: -1 });
    expect(needle.counts).toEqual([8, 9]);
    expect(needle.heights).toEqual(Array(9).fill(2));
  });

  it('shapes at places within a row', () => {
    const raglan = Needle.castOn(12, 'round').shaped({
      at: [
        { before: 3, change: 1 },
        { before: 6, change: -2 },
        { before: 12, change: 1 },
      ],
    });
    expect(raglan.count).toBe(12);
  });

  it('knits a row as it is written', () => {
    const row = [
      { kind: 'edge', stitches: 2 },
      {
        kind: 'repeat',
        times: 3,
        of: [
          { kind: 'plain', stitches: 1 },
          { kind: 'change', change: 'k2tog' },
        ],
      },
      { kind: 'edge', stitches: 2 },
    ] as const;
    expect(Needle.castOn(13, 'flat').written(row).counts).toEqual([10]);
  });

  it('refuses a row that does not come out', () => {
    expect(() => Needle.castOn(9, 'flat').written([{ kind: 'plain', stitches: 8 }])).toThrow('leaves 1 of 9');
    expect(() => Needle.castOn(7, 'round').written([{ kind: 'plain', stitches: 8 }])).toThrow(
      'more than the 7',
    );
    expect(() => Needle.castOn(5, 'flat').shaped({ at: [{ before: 4, change: -1 }], end: -1 })).toThrow();
  });

  it('knits short rows over the stitches between the turns', () => {
    const needle = Needle.castOn(8, 'flat').knitTo(6).turn().knitTo(2).turn().finish();
    expect(needle.heights).toEqual([1, 1, 3, 3, 3, 3, 1, 1]);
    expect(needle.log.map((row) => row.worked)).toEqual([6, 4, 6]);
  });

  it('knits a whole round to a turn at the join', () => {
    const needle = Needle.castOn(3, 'round').knitTo(3).turn().knitTo(1).turn().finish();
    expect(needle.heights).toEqual([1, 3, 3]);
  });

  it('turns on either side of the join in the round', () => {
    const needle = Needle.castOn(8, 'round').knitTo(2).turn().knitTo(-2).turn().finish();
    expect(needle.heights).toEqual([2, 2, 0, 0, 0, 0, 2, 2]);
  });

  it('binds off and casts on at either side and in the middle', () => {
    const needle = Needle.castOn(20, 'flat').bindOff(3).finish().bindOff(3).finish();
    expect(needle.counts).toEqual([17, 14]);
    expect(needle.boundOff.map((off) => [off.at, off.heights])).toEqual([
      ['start', [0, 0, 0]],
      ['end', [1, 1, 1]],
    ]);
    needle.knit(5).bindOff(4).finish().castOn(2).finish();
    expect(needle.counts.slice(2)).toEqual([10, 12]);
    expect(needle.heights).toEqual(Array(12).fill(4));
  });

  it('takes stitches off onto a holder and joins needles', () => {
    const body = Needle.castOn(20, 'round').plain(4);
    const sleeve = body.takeOff(10, 14);
    expect([body.count, sleeve.count]).toEqual([16, 4]);
    const yoke = Needle.join([body, sleeve], 'round').plain(1);
    expect(yoke.heights).toEqual(Array(20).fill(5));
  });
});
