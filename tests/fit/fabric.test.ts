import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shapeArmhole } from '../../src/fit/armhole-shape.ts';
import {
  type Fabric,
  fabricArea,
  type ShortRows,
  stitchesOfEdges,
  stitchesOfPiece,
  stitchesOfSpacing,
} from '../../src/fit/fabric.ts';
import { level, piece } from '../../src/fit/outline.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { knitEdges } from '../simulator/edges.ts';
import { over10cm } from './at-gauge.ts';

const GAUGE = { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) };
const BODY: Fabric = { name: 'body', pieces: 1, stitches: 12_000, gauge: GAUGE };
const SLEEVE: Fabric = { name: 'sleeve', pieces: 2, stitches: 3_600, gauge: GAUGE };
/** 6 cm deep over 20 cm, and tapering to nothing over 15 cm on either side. */
const HEM: ShortRows = {
  sides: 'both',
  flat: stitches(40),
  steps: [stitches(10), stitches(10), stitches(10)],
  depth: cm(6),
  gauge: GAUGE,
};

describe('the area of pieces', () => {
  it('is that of all their stitches, each a row high', () => {
    expect(fabricArea([BODY], []).area).toBeCloseTo(2000, 9);
    expect(fabricArea([BODY, SLEEVE], []).area).toBeCloseTo(2000 + 2 * 600, 9);
  });

  it('grows by the trapezium of each stretch of short rows', () => {
    const more = (...wedges: ShortRows[]) => fabricArea([BODY], wedges).area - 2000;
    expect(more(HEM)).toBeCloseTo(((20 + 50) / 2) * 6, 9);
    expect(more({ ...HEM, sides: 'end' })).toBeCloseTo(((20 + 35) / 2) * 6, 9);
    expect(more(HEM, HEM)).toBeCloseTo(2 * more(HEM), 9);
  });

  it('shows each part in its workings, and adds them up', () => {
    const { workings } = fabricArea([BODY, SLEEVE], [HEM]);
    expect(workings.map(({ label, formula }) => `${label}: ${formula}`)).toEqual([
      'area of the body: a / (b * c)',
      'area of the sleeve: n * a / (b * c)',
      'area that short rows add: (a + b) * c / d',
      'area in all: p1 + p2 + p3',
    ]);
  });
});

describe('the stitches of a piece', () => {
  it('are those of its sections, which change evenly', () => {
    const sleeve = piece('sleeve', 'flat', 'up', [
      level('cast-on', 0, 40),
      level('cuff', 10, 40),
      level('upper arm', 110, 60),
    ]);
    expect(stitchesOfPiece(sleeve)).toBe(10 * 40 + 100 * 50);
  });

  it('are counted row by row where its edges are shaped', () => {
    const events = [
      { row: rows(1), edge: 'right', by: 'bind off', change: -4, after: stitches(36) },
      { row: rows(2), edge: 'left', by: 'bind off', change: -4, after: stitches(32) },
      { row: rows(5), edge: 'both', by: 'decrease', change: -1, after: stitches(30) },
    ] as const;
    expect(stitchesOfEdges(stitches(40), { rows: rows(6), events })).toBe(36 + 32 + 32 + 32 + 30 + 30);
    expect(stitchesOfEdges(stitches(40), { rows: rows(6), events: [] })).toBe(240);
  });

  it('are counted row by row where shaping is spaced over them', () => {
    const spaced = {
      rows: rows(6),
      from: stitches(20),
      to: stitches(24),
      shaping: [
        { row: rows(2), after: stitches(22) },
        { row: rows(5), after: stitches(24) },
      ],
    };
    expect(stitchesOfSpacing(spaced)).toBe(20 + 22 + 22 + 22 + 24 + 24);
    expect(stitchesOfSpacing({ ...spaced, to: spaced.from, shaping: [] })).toBe(120);
  });

  it('are as many as a needle works that knits the armhole', () => {
    const asked = fc.record({
      cross: fc.integer({ min: 20, max: 90 }),
      lost: fc.integer({ min: 1, max: 12 }),
    });
    fc.assert(
      fc.property(asked, ({ cross, lost }) => {
        const bust = stitches(cross + 2 * lost);
        const made = shapeArmhole({
          bust,
          crossBack: stitches(cross),
          depth: cm(22),
          gauge: over10cm(22, 30),
          bindOffs: [stitches(Math.ceil(lost / 2))],
        });
        if (made.kind !== 'armhole') throw new Error(made.kind);
        const worked = knitEdges(bust, made.events, made.rows).log.reduce((sum, row) => sum + row.worked, 0);
        expect(stitchesOfEdges(bust, made)).toBe(worked);
      }),
    );
  });
});
