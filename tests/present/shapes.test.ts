import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bustDart } from '../../src/fit/bust-dart.ts';
import { hemWedge } from '../../src/fit/hem-wedge.ts';
import type { TurnedWedge } from '../../src/fit/plan.ts';
import type { ShapedDrop } from '../../src/fit/shaped.ts';
import { cm, LENGTH_UNITS, perCm, rows, stitches } from '../../src/fit/units.ts';
import type { Point } from '../../src/present/draw/drawing.ts';
import { wedgePicture } from '../../src/present/pictures/of-plan.ts';
import type { Picture } from '../../src/present/pictures/picture.ts';
import { shapedPicture } from '../../src/present/pictures/shaped-picture.ts';
import {
  RATES,
  sampleCap,
  sampleDarts,
  sampleDrop,
  sampleNeck,
  sampleRaglan,
  sampleShoulders,
  sampleYoke,
} from '../../tools/sample-garment.ts';
import { faultsOf, pathNamed, pathsOf, scaleOf, textsOf } from './geometry.ts';
import { shapedParts } from './shaped-parts.ts';
import { wrongIn, wrongInShape } from './wrong-pictures.ts';

const VIEW = { unit: 'cm', dialect: 'us' } as const;
const FLAT = { ...VIEW, worked: 'flat' } as const;
const ROUND = { ...VIEW, worked: 'round' } as const;

function long(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, to, i) => {
    const from = points[i] ?? to;
    return sum + Math.hypot(to.x - from.x, to.y - from.y);
  }, 0);
}

/** By the lengths of its corners' cross products (Gauss). */
function areaOf(points: readonly Point[]): number {
  const sum = points.reduce((all, p, i) => {
    const next = points[(i + 1) % points.length] ?? p;
    return all + p.x * next.y - next.x * p.y;
  }, 0);
  return Math.abs(sum) / 2;
}

describe('the cap and its armhole', () => {
  const shown = sampleCap();
  const { drawing, alternative } = shapedPicture(shown, 'The cap', FLAT);
  const scale = scaleOf(drawing);

  it('draws an edge as long as the cap’s edge is: bind-offs, slopes and top', () => {
    const outline = pathNamed(drawing, 'cap').points;
    // From the right underarm over the top to the left one.
    const drawn = long(outline) / scale;
    expect(drawn).toBeCloseTo(shown.after.edge, 6);
  });

  it('lays both edges straight, as long as they are', () => {
    expect(long(pathNamed(drawing, 'cap edge').points) / scale).toBeCloseTo(shown.after.edge, 6);
    const { front, back } = shown.armhole;
    expect(long(pathNamed(drawing, 'armhole edge').points) / scale).toBeCloseTo(front.edge + back.edge, 6);
    expect(long(pathNamed(drawing, 'armhole').points) / scale).toBeCloseTo(back.edge, 6);
  });

  it('says how the two agree', () => {
    expect(alternative).toMatch(
      /Edge of the cap: [\d.]+ cm\. Armhole: front [\d.]+ cm, back [\d.]+ cm, together [\d.]+ cm\./,
    );
    expect(alternative).toMatch(/equally long|takes that up|ease it in|stretch it/);
  });
});

describe('the dropped shoulder', () => {
  const shown = sampleDrop();
  const picture = (of: ShapedDrop) => shapedPicture(of, 'The dropped shoulder', FLAT);
  const sides = ({ drawing }: Picture, name: string) => {
    const { points } = pathNamed(drawing, name);
    const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
    return { left: Math.min(...xs), right: Math.max(...xs), high: Math.min(...ys), low: Math.max(...ys) };
  };

  // 60 rows at 3 to the centimetre; 88 stitches at 2.2; a back of 55 cm on a body 38 cm across.
  it('draws the sleeve’s top as wide as the armhole is deep twice, and the body as wide as it lies', () => {
    const drawn = picture(shown);
    const scale = scaleOf(drawn.drawing);
    const [body, sleeve] = [sides(drawn, 'body'), sides(drawn, 'sleeve')];
    const deep = pathNamed(drawn.drawing, 'upright').points.map((p) => p.y);
    expect((sleeve.right - sleeve.left) / scale).toBeCloseTo(40, 6);
    expect((body.right - body.left) / scale).toBeCloseTo(55, 6);
    expect(((deep[1] ?? 0) - (deep[0] ?? 0)) / scale).toBeCloseTo(20, 6);
    expect(deep[0]).toBeCloseTo(body.high, 6);
  });

  it('marks where the arm begins, as far from each side as the shoulder hangs over', () => {
    const drawn = picture(shown);
    const { left, right } = sides(drawn, 'body');
    const arms = pathsOf(drawn.drawing).filter((p) => p.name === 'arm');
    const xs = arms.map((p) => (p.points[0]?.x ?? 0) - left);
    const scale = scaleOf(drawn.drawing);
    expect(xs.map((x) => x / scale)).toEqual([expect.closeTo(8.5, 6), expect.closeTo(46.5, 6)]);
    expect((right - left) / scale).toBeCloseTo(46.5 + 8.5, 6);
  });

  it('draws before under yours, and says its rows and stitches: 18 cm are 54 rows, and 36 cm are 79 stitches', () => {
    const drawn = picture(shown);
    const kinds = pathsOf(drawn.drawing).flatMap((p) => (p.closed && p.line !== null ? [p.line] : []));
    expect(kinds).toEqual(['pattern', 'pattern', 'yours', 'yours']);
    expect(drawn.alternative).toContain('Before: 54 rows, and 79 stitches at the top of the sleeve.');
    expect(picture({ ...shown, before: null }).alternative).not.toContain('Before');
  });

  it('has no line where the arm begins and nothing measured across where no shoulder hangs over', () => {
    const { drawing, alternative } = picture({ ...shown, overhang: cm(0) });
    expect(pathsOf(drawing).map((p) => p.name)).not.toContain('arm');
    expect(pathsOf(drawing).map((p) => p.name)).not.toContain('across');
    expect(alternative).not.toContain('over the arm');
  });
});

describe('the raglan lines', () => {
  const shown = sampleRaglan();
  const { drawing } = shapedPicture(shown, 'The raglan lines', ROUND);
  const scale = scaleOf(drawing);

  it.each(['back', 'front', 'sleeve'] as const)(
    'draws the %s as wide as its counts and as deep as its rows',
    (part) => {
      const { points } = pathNamed(drawing, part);
      const { spaced } = shown.after.parts[part];
      const low = Math.max(...points.map((p) => p.y));
      const high = Math.min(...points.map((p) => p.y));
      const widthAt = (y: number) => {
        const xs = points.filter((p) => Math.abs(p.y - y) < 1e-6).map((p) => p.x);
        return (Math.max(...xs) - Math.min(...xs)) / scale;
      };
      expect(widthAt(low)).toBeCloseTo(spaced.from / RATES.stitchesPerCm, 6);
      expect(widthAt(high)).toBeCloseTo(spaced.to / RATES.stitchesPerCm, 6);
      expect((low - high) / scale).toBeCloseTo(shown.after.depth, 6);
    },
  );
});

describe('the yoke', () => {
  const shown = sampleYoke();
  const { drawing } = shapedPicture(shown, 'The yoke', ROUND);
  const scale = scaleOf(drawing);

  it('draws each plain stretch half as wide as it goes around, and the whole as deep as it is', () => {
    const { points } = pathNamed(drawing, 'yoke');
    const half = points.slice(0, points.length / 2).map((right, i) => {
      const left = points.at(-1 - i) ?? right;
      return (right.x - left.x) / scale;
    });
    const wanted = shown.after.plateaus.flatMap((p) =>
      [p.stitches, p.stitches].map((s) => s / RATES.stitchesPerCm / 2),
    );
    expect(half).toHaveLength(wanted.length);
    half.forEach((w, i) => {
      expect(w).toBeCloseTo(wanted[i] ?? 0, 6);
    });
    const ys = points.map((p) => p.y);
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(shown.after.depth, 6);
  });
});

describe('the neck', () => {
  const shown = sampleNeck();
  const { drawing } = shapedPicture(shown, 'The neck', FLAT);
  const scale = scaleOf(drawing);

  it('draws the opening as wide and as deep as the neck, and an edge as long as it is', () => {
    const { points } = pathNamed(drawing, 'piece');
    const [, , outer] = points;
    const edge = points.slice(3, -1);
    const [first, last] = [edge[0], edge.at(-1)];
    expect(((first?.x ?? 0) - (last?.x ?? 0)) / scale).toBeCloseTo(shown.after.width, 6);
    expect(((outer?.x ?? 0) - (first?.x ?? 0)) / scale).toBeCloseTo(
      shown.after.shoulder / RATES.stitchesPerCm,
      6,
    );
    const ys = edge.map((p) => p.y);
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(shown.after.depth, 6);
    expect(long(edge) / scale).toBeCloseTo(shown.after.edge, 6);
  });
});

describe('pictures of what a step shapes', () => {
  const samples = {
    cap: sampleCap(),
    'a dropped shoulder': sampleDrop(),
    neck: sampleNeck(),
    raglan: sampleRaglan(),
    yoke: sampleYoke(),
    'both shoulders': sampleShoulders('both'),
    'the right shoulder': sampleShoulders('start'),
    'the left shoulder': sampleShoulders('end'),
    'darts up': sampleDarts('up'),
    'darts down': sampleDarts('down'),
  };
  const cases = Object.entries(samples).flatMap(([name, shaped]) =>
    LENGTH_UNITS.map((unit) => ({ name, unit, shaped })),
  );

  it.each(cases)(
    'have everything in its place, as long as it says, and said in words: $name, $unit',
    ({ shaped, unit }) => {
      expect(wrongInShape(shaped, unit)).toEqual([]);
    },
  );

  it('hold for random garments', () => {
    fc.assert(
      fc.property(shapedParts, fc.constantFrom(...LENGTH_UNITS), (shaped, unit) => {
        expect(wrongInShape(shaped, unit)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('would not hold for a neck whose figures differ from its edge', () => {
    const { after, ...neck } = sampleNeck();
    const wider = { ...after, width: cm(after.width + 1) };
    expect(wrongInShape({ ...neck, after: wider }, 'cm')).toEqual([
      "'42 sts, 20.1 cm' ends at no corner of what is drawn",
      "'42 sts, 20.1 cm' ends at no corner of what is drawn",
    ]);
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

/** Stitches of all short rows: of each pair those between its turns, or from its turn to the edge. */
function knittedIn({ turns, sides, needle }: TurnedWedge): number {
  const ats = (side: 'start' | 'end') => turns.filter((t) => t.side === side).map((t) => t.at);
  const [starts, ends] = [ats('start'), ats('end')];
  if (sides === 'start') return 2 * starts.reduce((sum, at) => sum + needle - at, 0);
  if (sides === 'end') return 2 * ends.reduce((sum, at) => sum + at, 0);
  return 2 * ends.reduce((sum, at, i) => sum + at - (starts[i] ?? at), 0);
}

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

  it('is drawn to scale above it: an area of as many stitches as it adds, and every number said in words', () => {
    fc.assert(
      fc.property(wedges, fc.constantFrom(...LENGTH_UNITS), (wedge, unit) => {
        const picture = wedgePicture(wedge, 'Front: short rows', { ...VIEW, unit });
        const { stitchesPerCm, rowsPerCm } = wedge.gauge;
        const area = areaOf(pathNamed(picture.drawing, 'wedge').points) / scaleOf(picture.drawing) ** 2;
        expect(area * stitchesPerCm * rowsPerCm).toBeCloseTo(knittedIn(wedge), 6);
        expect(wrongIn(picture, unit)).toEqual([]);
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
