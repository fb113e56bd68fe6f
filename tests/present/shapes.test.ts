import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bustDart } from '../../src/fit/bust-dart.ts';
import { hemWedge } from '../../src/fit/hem-wedge.ts';
import type { TurnedWedge } from '../../src/fit/plan.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import type { Drawing, Point } from '../../src/present/draw/drawing.ts';
import { capPicture } from '../../src/present/pictures/cap-picture.ts';
import { neckPicture } from '../../src/present/pictures/neck-picture.ts';
import { wedgePicture } from '../../src/present/pictures/of-plan.ts';
import { raglanPicture } from '../../src/present/pictures/raglan-picture.ts';
import { yokePicture } from '../../src/present/pictures/yoke-picture.ts';
import { RATES, sampleCap, sampleNeck, sampleRaglan, sampleYoke } from '../../tools/sample-garment.ts';
import { faultsOf, pathNamed, pathsOf, textsOf } from './geometry.ts';
import { readLength } from './read-length.ts';

const VIEW = { unit: 'cm', dialect: 'us' } as const;

function long(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, to, i) => {
    const from = points[i] ?? to;
    return sum + Math.hypot(to.x - from.x, to.y - from.y);
  }, 0);
}

/** Units of the drawing for a centimetre. */
function scaleOf(drawing: Drawing): number {
  return long(pathNamed(drawing, 'scale bar').points) / readLength(textsOf(drawing).at(-1)?.text ?? '');
}

describe('the cap and its armhole', () => {
  const shown = sampleCap();
  const { drawing, alternative } = capPicture(shown, VIEW);
  const scale = scaleOf(drawing);

  it('draws an edge as long as the cap’s edge is: bind-offs, slopes and top', () => {
    const outline = pathNamed(drawing, 'cap').points;
    // From the right underarm over the top to the left one.
    const drawn = long(outline) / scale;
    expect(drawn).toBeCloseTo(shown.cap.edge, 6);
  });

  it('lays both edges straight, as long as they are', () => {
    expect(long(pathNamed(drawing, 'cap edge').points) / scale).toBeCloseTo(shown.cap.edge, 6);
    const { front, back } = shown.armhole;
    expect(long(pathNamed(drawing, 'armhole edge').points) / scale).toBeCloseTo(front.edge + back.edge, 6);
    expect(long(pathNamed(drawing, 'armhole').points) / scale).toBeCloseTo(back.edge, 6);
  });

  it('says how the two agree', () => {
    expect(alternative).toMatch(
      /Edge of the cap: [\d.]+ cm\. Armhole: front [\d.]+ cm, back [\d.]+ cm, together [\d.]+ cm\./,
    );
    expect(alternative).toMatch(/equally long|ease it in|stretch it/);
  });
});

describe('the raglan lines', () => {
  const shown = sampleRaglan();
  const { drawing } = raglanPicture(shown, VIEW);
  const scale = scaleOf(drawing);

  it.each(['back', 'front', 'sleeve'] as const)(
    'draws the %s as wide as its counts and as deep as its rows',
    (part) => {
      const { points } = pathNamed(drawing, part);
      const { spaced } = shown.raglan.lines[part];
      const low = Math.max(...points.map((p) => p.y));
      const high = Math.min(...points.map((p) => p.y));
      const widthAt = (y: number) => {
        const xs = points.filter((p) => Math.abs(p.y - y) < 1e-6).map((p) => p.x);
        return (Math.max(...xs) - Math.min(...xs)) / scale;
      };
      expect(widthAt(low)).toBeCloseTo(spaced.from / RATES.stitchesPerCm, 6);
      expect(widthAt(high)).toBeCloseTo(spaced.to / RATES.stitchesPerCm, 6);
      expect((low - high) / scale).toBeCloseTo(shown.raglan.depth, 6);
    },
  );
});

describe('the yoke', () => {
  const shown = sampleYoke();
  const { drawing } = yokePicture(shown, VIEW);
  const scale = scaleOf(drawing);

  it('draws each plain stretch half as wide as it goes around, and the whole as deep as it is', () => {
    const { points } = pathNamed(drawing, 'yoke');
    const half = points.slice(0, points.length / 2).map((right, i) => {
      const left = points.at(-1 - i) ?? right;
      return (right.x - left.x) / scale;
    });
    const wanted = shown.yoke.plateaus.flatMap((p) =>
      [p.stitches, p.stitches].map((s) => s / RATES.stitchesPerCm / 2),
    );
    expect(half).toHaveLength(wanted.length);
    half.forEach((w, i) => {
      expect(w).toBeCloseTo(wanted[i] ?? 0, 6);
    });
    const ys = points.map((p) => p.y);
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(shown.yoke.depth, 6);
  });
});

describe('the neck', () => {
  const shown = sampleNeck();
  const { drawing } = neckPicture(shown, VIEW);
  const scale = scaleOf(drawing);

  it('draws the opening as wide and as deep as the neck, and an edge as long as it is', () => {
    const { points } = pathNamed(drawing, 'piece');
    const [, , outer] = points;
    const edge = points.slice(3, -1);
    const [first, last] = [edge[0], edge.at(-1)];
    expect(((first?.x ?? 0) - (last?.x ?? 0)) / scale).toBeCloseTo(shown.neck.width, 6);
    expect(((outer?.x ?? 0) - (first?.x ?? 0)) / scale).toBeCloseTo(
      shown.neck.shoulder / RATES.stitchesPerCm,
      6,
    );
    const ys = edge.map((p) => p.y);
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(shown.neck.depth, 6);
    expect(long(edge) / scale).toBeCloseTo(shown.neck.edge, 6);
  });
});

describe('pictures of cap, neck, raglan and yoke', () => {
  it.each([
    ['cap', capPicture(sampleCap(), VIEW)],
    ['neck', neckPicture(sampleNeck(), VIEW)],
    ['raglan', raglanPicture(sampleRaglan(), VIEW)],
    ['yoke', yokePicture(sampleYoke(), VIEW)],
    ['cap in inches', capPicture(sampleCap(), { unit: 'in', dialect: 'uk' })],
    ['raglan in inches', raglanPicture(sampleRaglan(), { unit: 'in', dialect: 'uk' })],
  ])('have everything in its place: %s', (_, { drawing }) => {
    expect(faultsOf(drawing)).toEqual([]);
  });
});

/** Darts between two side markers and hems all round and across, from flat to steep. */
const wedges: fc.Arbitrary<TurnedWedge> = fc
  .record({
    sts: fc.integer({ min: 14, max: 34 }),
    depth: fc.integer({ min: 8, max: 80 }).map((mm) => cm(mm / 10)),
    front: fc.integer({ min: 70, max: 160 }),
    kind: fc.constantFrom('dart', 'one front', 'hem', 'all round'),
  })
  .map(({ sts, depth, front, kind }) => {
    const gauge = { stitchesPerCm: perCm(sts / 10), rowsPerCm: perCm((sts * 1.4) / 10) };
    const half = { start: 0, stitches: stitches(front) };
    if (kind === 'dart' || kind === 'one front') {
      const found = bustDart({
        depth: { from: 'lengths', front: cm(42 + depth), back: cm(42) },
        gauge,
        worked: 'flat',
        direction: 'up',
        sides: kind === 'dart' ? 'both' : 'end',
        needle: stitches(front),
        front: half,
        bustSpan: cm(18),
      });
      return found.kind === 'bust dart' ? found.wedge : null;
    }
    const found = hemWedge({
      depth,
      gauge,
      worked: kind === 'hem' ? 'flat' : 'round',
      direction: 'up',
      edging: rows(12),
      needle: stitches(kind === 'hem' ? front : 2 * front),
      over:
        kind === 'hem'
          ? { across: 'between the sides', ...half }
          : { across: 'all round', deepest: Math.floor(front / 2) },
      middle: cm(6),
    });
    return found.kind === 'wedge' ? found : null;
  })
  .filter((wedge) => wedge !== null);

describe('the staircase of a wedge', () => {
  it('has every turn with its row and its stitches, the yarn’s way from turn to turn, and one step a pair of rows', () => {
    fc.assert(
      fc.property(wedges, (wedge) => {
        const { drawing } = wedgePicture(wedge, 'Front: short rows', VIEW);
        const labels = textsOf(drawing).filter((t) => t.name === 'turn');
        expect(labels.map((t) => t.text)).toEqual(wedge.turns.map((t) => `row ${t.row}: ${t.stitches}`));
        expect(pathsOf(drawing).filter((p) => p.name === 'step')).toHaveLength(wedge.rows / 2);
        expect(pathNamed(drawing, 'short rows').points).toHaveLength(2 * wedge.rows);
        expect(faultsOf(drawing)).toEqual([]);
      }),
    );
  });

  it('has turns as far apart as their stitches, right-side rows beginning at the right', () => {
    fc.assert(
      fc.property(wedges, (wedge) => {
        const { drawing } = wedgePicture(wedge, 'Front: short rows', VIEW);
        const way = pathNamed(drawing, 'short rows').points;
        const drawn = wedge.turns.map(({ row, at }) => ({ at, x: way[2 * row - 1]?.x ?? 0 }));
        const [a, b] = [drawn[0], drawn.reduce((far, d) => (d.at === far.at ? far : d))];
        if (a === undefined || a.at === b.at) return;
        const perStitch = (b.x - a.x) / (b.at - a.at);
        expect(perStitch).toBeLessThan(0);
        for (const { at, x } of drawn) expect(x).toBeCloseTo(a.x + (at - a.at) * perStitch, 6);
      }),
    );
  });
});
