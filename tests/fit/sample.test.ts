import { describe, expect, it } from 'vitest';
import { armhole } from '../../src/fit/armhole.ts';
import { cap } from '../../src/fit/cap.ts';
import { contradictions } from '../../src/fit/contradictions.ts';
import { type Gauge, rateAsPrinted } from '../../src/fit/gauge.ts';
import type { PatternSize } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';

describe('the sample sweater', () => {
  it.each([SAMPLE_ROUND, SAMPLE_PIECES])('gives a technical editor nothing to mark: $name', (pattern) => {
    expect(contradictions(pattern)).toEqual([]);
  });

  it('has ten sizes, labelled 1 to 10, with 160 to 340 stitches at the bust', () => {
    expect(SAMPLE_ROUND.sizes.map((s) => s.label)).toEqual(Array.from({ length: 10 }, (_, i) => `${i + 1}`));
    expect(SAMPLE_ROUND.sizes.map((s) => s.counts.bust)).toEqual([
      160, 180, 200, 220, 240, 260, 280, 300, 320, 340,
    ]);
  });

  it('prints finished busts that 22 stitches to 10 cm give, to the millimetre', () => {
    expect(SAMPLE_ROUND.sizes.map((s) => s.finished.bust)).toEqual([
      72.7, 81.8, 90.9, 100, 109.1, 118.2, 127.3, 136.4, 145.5, 154.5,
    ]);
  });

  it('is the same garment in the round and in pieces', () => {
    expect(SAMPLE_PIECES.sizes.map((s) => s.finished)).toEqual(SAMPLE_ROUND.sizes.map((s) => s.finished));
    const [round, flat] = [SAMPLE_ROUND.sizes[3], SAMPLE_PIECES.sizes[3]];
    expect(round?.counts).toMatchObject({ bust: 220, 'cross back': 84, shoulder: 23, 'back neck': 38 });
    expect(flat?.counts).toMatchObject({ bust: 112, 'cross back': 86, shoulder: 24, 'back neck': 38 });
  });

  it.each(SAMPLE_PIECES.sizes)(
    'has in size $label a cap that the printed rows fit into the printed armhole',
    (size) => {
      const { bust, 'cross back': crossBack, 'upper arm': upperArm, 'cap top': top } = size.counts;
      const bindOff = size.armhole?.boundOff;
      const depth = size.finished['armhole depth'];
      if (!bust || !crossBack || !upperArm || !top || !bindOff || !depth)
        throw new Error('a figure is missing');
      const back = armhole({ bust, crossBack, depth, gauge: GAUGE, bindOffs: [bindOff] });
      if (back.kind !== 'armhole') throw new Error(back.kind);
      expect(back.rows).toBe(size.rows?.armhole);
      const edges = { front: back.edge, back: back.edge };
      const sleeve = cap({ upperArm, armhole: edges, depth, bindOff, gauge: GAUGE, top });
      expect(sleeve).toMatchObject({ kind: 'cap', rows: size.rows?.cap, top });
    },
  );
});

const GAUGE: Gauge = {
  stitches: rateAsPrinted(SAMPLE_PIECES.gauge.stitches),
  rows: rateAsPrinted(SAMPLE_PIECES.gauge.rows),
  worked: 'flat',
};

/**
 * Craft Yarn Council, Standards & Guidelines for Crochet and Knitting, 2018 edition, woman's table: body measurements
 * in cm, X-Small to 4X, the figures given here from memory. Lower and upper end of each size's bust.
 */
const WOMAN = [
  { bust: [71, 76], crossBack: 35.5, upperArm: 25, armhole: [15.5, 16.5], arm: 42 },
  { bust: [81, 86], crossBack: 37, upperArm: 26, armhole: [16.5, 17.5], arm: 43 },
  { bust: [91.5, 96.5], crossBack: 40.5, upperArm: 28, armhole: [17.5, 19], arm: 43 },
  { bust: [101.5, 106.5], crossBack: 43, upperArm: 30.5, armhole: [19, 20.5], arm: 44.5 },
  { bust: [111.5, 117], crossBack: 44.5, upperArm: 34.5, armhole: [20.5, 21.5], arm: 44.5 },
  { bust: [122, 127], crossBack: 45.5, upperArm: 39.5, armhole: [21.5, 23], arm: 45.5 },
  { bust: [132, 137], crossBack: 45.5, upperArm: 43, armhole: [23, 24], arm: 45.5 },
  { bust: [142, 147], crossBack: 47, upperArm: 47, armhole: [24, 25.5], arm: 47 },
] as const;

describe('the sample on the bodies of the yarn industry’s table', () => {
  it.each(WOMAN)(
    'has a size with 5 to 10 cm of ease for a bust between $bust cm',
    ({ bust, crossBack, upperArm, armhole, arm }) => {
      const [low, high] = bust;
      const fitting = SAMPLE_ROUND.sizes.filter((s) => {
        const finished = s.finished.bust ?? 0;
        return finished - high <= 10 && finished - low >= 5;
      });
      expect(fitting.length).toBeGreaterThan(0);
      const close = (size: PatternSize) => {
        const f = size.finished;
        return (
          (f['upper arm'] ?? 0) - upperArm >= 2 &&
          (f['upper arm'] ?? 0) - upperArm <= 8 &&
          (f['armhole depth'] ?? 0) >= armhole[0] &&
          (f['armhole depth'] ?? 0) <= armhole[1] + 4 &&
          Math.abs((f['cross back'] ?? 0) - crossBack) <= 4 &&
          Math.abs((f['sleeve length'] ?? 0) - arm) <= 4
        );
      };
      expect(fitting.some(close)).toBe(true);
    },
  );
});
