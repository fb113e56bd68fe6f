/**
 * Questions met in public knitting talk, worked answers collected 2026; the situations in our own words.
 * Each answer was worked out by hand, apart from this program.
 */
import { describe, expect, it } from 'vitest';
import { bustAdvice } from '../../src/fit/bust-advice.ts';
import { bustDart } from '../../src/fit/bust-dart.ts';
import { hemWedge } from '../../src/fit/hem-wedge.ts';
import { spread } from '../../src/fit/spread.ts';
import { cm, inches, perCm, rows, stitches } from '../../src/fit/units.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

const perInch = (count: number) => perCm(count / 2.54);

function tally(lengths: readonly number[]): Record<number, number> {
  const counts: Record<number, number> = {};
  for (const n of lengths) counts[n] = (counts[n] ?? 0) + 1;
  return counts;
}

describe('a question about spreading changes evenly', () => {
  it.each([
    [130, { 5: 26 }],
    [134, { 5: 22, 6: 4 }],
  ])('after the rib of a child’s pullover in the round, 26 more on %d stitches', (count, gaps) => {
    const found = spread({ stitches: stitches(count), change: 26, worked: 'round' });
    if (found.kind !== 'spread') throw new Error(found.kind);
    expect(tally(found.stretches)).toEqual(gaps);
    expect(Needle.castOn(count, 'round').written(found.row).count).toBe(count + 26);
  });

  it('the longer gaps of that round are spread out, never side by side', () => {
    const found = spread({ stitches: stitches(134), change: 26, worked: 'round' });
    if (found.kind !== 'spread') throw new Error(found.kind);
    const longer = found.stretches.flatMap((n, i) => (n === 6 ? [i] : []));
    const apart = longer.map((at, i) => (longer[i + 1] ?? (longer[0] ?? 0) + 26) - at);
    expect(apart).toEqual([6, 7, 6, 7]);
  });

  it('a girl’s pinafore with borders of four: 54 fewer from 136, 34 decreases at once and 20 after a plain stitch', () => {
    const found = spread({
      stitches: stitches(136),
      change: -54,
      worked: 'flat',
      edge: stitches(4),
    });
    if (found.kind !== 'spread') throw new Error(found.kind);
    expect(found.stretches.reduce((sum, n) => sum + n, 0) + 2 * 54).toBe(128);
    expect(tally(found.stretches.slice(0, 54))).toEqual({ 0: 34, 1: 20 });
    expect(Needle.castOn(136, 'flat').written(found.row).count).toBe(82);
  });
});

describe('a question about short rows', () => {
  it('a loose cardigan with 3 in of ease: under an inch of extra length it needs no darts', () => {
    const loose = { width: cm(4), ease: inches(3), fabric: 'plain' } as const;
    expect(bustAdvice({ ...loose, length: inches(0.9) }).suits).toBe('none');
    expect(bustAdvice({ ...loose, length: inches(1.5) }).suits).toBe('short rows');
  });

  it('above that the rows are the difference by the row gauge, made even', () => {
    const found = bustDart({
      depth: { from: 'lengths', front: inches(18.5), back: inches(17) },
      gauge: { stitchesPerCm: perInch(5), rowsPerCm: perInch(7) },
      worked: 'round',
      direction: 'down',
      sides: 'both',
      needle: stitches(200),
      front: { start: 0, stitches: stitches(100) },
      bustSpan: inches(8),
    });
    if (found.kind !== 'bust dart') throw new Error(found.kind);
    expect(found.wedge.rows).toBe(10);
  });

  it('a vest that rides up over the stomach: 1.5 in at 7 rows are 10 rows, five turns a side 6 or 7 stitches apart', () => {
    // A hundred front stitches at 5 to the inch; the middle third, 34 stitches, stays free of turns.
    const found = hemWedge({
      depth: inches(1.5),
      gauge: { stitchesPerCm: perInch(5), rowsPerCm: perInch(7) },
      worked: 'round',
      direction: 'up',
      edging: rows(14),
      needle: stitches(200),
      over: { across: 'between the sides', start: 0, stitches: stitches(100) },
      middle: inches(34 / 5),
    });
    if (found.kind !== 'wedge') throw new Error(found.kind);
    expect([found.rows, found.turns.length / 2, found.flat]).toEqual([10, 5, 34]);
    expect(found.steps).toEqual([7, 7, 7, 6, 6]);
    const { heights } = knitWedge(Needle.castOn(200, 'round'), found);
    expect((heights[50] ?? 0) - (heights[150] ?? 0)).toBe(10);
  });
});
