import { readdirSync, readFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { type Drawing, line, point } from '../../src/present/draw/drawing.ts';
import { pngOf } from '../../src/present/render/png.ts';
import { GOLDEN, GOLDEN_SCALE } from '../../tools/golden.ts';
import { faultsOf } from './geometry.ts';
import { TWELVE } from './twelve.ts';

/**
 * The share of pixels that may differ by more than a tenth of the way from black to white, smoothed edges left aside:
 * three in a hundred thousand, for another build of the rasteriser. One digit that is changed differs by more.
 */
const TOLERANCE = 0.00003;

function differing(drawing: Drawing, golden: PNG): number {
  const made = PNG.sync.read(Buffer.from(pngOf(drawing, 'light', GOLDEN_SCALE)));
  expect([made.width, made.height]).toEqual([golden.width, golden.height]);
  const count = pixelmatch(made.data, golden.data, undefined, made.width, made.height, { threshold: 0.1 });
  return count / (made.width * made.height);
}

function goldenOf(name: string): PNG {
  return PNG.sync.read(readFileSync(new URL(`${name}.png`, GOLDEN)));
}

describe('the golden pictures', () => {
  it('are twelve garments, each with its file', () => {
    const files = readdirSync(GOLDEN).sort();
    expect(files).toEqual(
      Object.keys(TWELVE)
        .map((name) => `${name}.png`)
        .sort(),
    );
    expect(files).toHaveLength(12);
  });

  it.each(Object.entries(TWELVE))('are matched pixel by pixel: %s', (name, draw) => {
    expect(faultsOf(draw())).toEqual([]);
    expect(differing(draw(), goldenOf(name))).toBeLessThanOrEqual(TOLERANCE);
  });

  it('would not be matched if a digit changed or a line moved', () => {
    const drawing = TWELVE['sleeve-flat-fuller']?.();
    if (drawing === undefined) throw new Error('no such garment');
    const golden = goldenOf('sleeve-flat-fuller');
    const digit = drawing.shapes.map((s) =>
      s.shape === 'text' && s.text === '37.3 cm wide' ? { ...s, text: '37.8 cm wide' } : s,
    );
    expect(differing({ ...drawing, shapes: digit }, golden)).toBeGreaterThan(TOLERANCE);
    const moved = [...drawing.shapes, line('dimension', point(40, 200), point(80, 200))];
    expect(differing({ ...drawing, shapes: moved }, golden)).toBeGreaterThan(TOLERANCE);
  });
});
