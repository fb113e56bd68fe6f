import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { level, type Piece, piece, sections, widthAt } from '../../src/fit/outline.ts';
import type { LevelName } from '../../src/fit/words.ts';

/** A body from the hem: 200 stitches to the underarm, 12 bound off there, 150 at the shoulder. */
const BODY = piece('body', 'round', 'up', [
  level('hem', 0, 200),
  level('underarm', 100, 200),
  level('cross back', 100, 188),
  level('shoulder', 150, 150),
]);

const NAMES: readonly LevelName[] = ['hem', 'hip', 'waist', 'bust', 'underarm'];

const anyPiece = fc
  .array(fc.tuple(fc.nat({ max: 60 }), fc.integer({ min: 1, max: 400 })), { minLength: 1, maxLength: 5 })
  .map((steps) => {
    let row = 0;
    const levels = steps.map(([rise, count], i) => {
      row += i === 0 ? 0 : rise;
      return level(NAMES[i] ?? 'now', row, count);
    });
    return piece('body', 'flat', 'up', levels);
  });

const heightOf = (p: Piece) => p.levels.at(-1)?.row ?? 0;

describe('the outline of a piece', () => {
  it('starts at row 0', () => {
    expect(() => piece('body', 'round', 'up', [level('hem', 2, 100)])).toThrow(/row 0/);
    expect(() => piece('body', 'round', 'up', [])).toThrow(/row 0/);
  });

  it('never runs downward', () => {
    const levels = [level('hem', 0, 100), level('waist', 40, 90), level('bust', 30, 100)];
    expect(() => piece('body', 'round', 'up', levels)).toThrow(/lies below waist/);
  });

  it('has a stitch on the needle at every level', () => {
    expect(() => piece('body', 'round', 'up', [level('hem', 0, 0)])).toThrow(/at least one stitch/);
  });

  it('has sections whose rows and changes add up from the first level to the last', () => {
    fc.assert(
      fc.property(anyPiece, (p) => {
        const parts = sections(p);
        expect(parts.reduce((sum, s) => sum + s.rows, 0)).toBe(heightOf(p));
        const change = parts.reduce((sum, s) => sum + s.change, 0);
        expect((p.levels[0]?.stitches ?? 0) + change).toBe(p.levels.at(-1)?.stitches);
      }),
    );
  });

  it.each([
    [0, 200],
    [50, 200],
    [100, 200],
    [125, 169],
    [150, 150],
    [170, 150],
  ])('is at row %d %d stitches wide', (row, width) => {
    expect(widthAt(BODY, row)).toBe(width);
  });

  it('is nowhere wider or narrower than its levels', () => {
    fc.assert(
      fc.property(anyPiece, fc.nat({ max: 300 }), (p, row) => {
        const counts = p.levels.map((l) => l.stitches);
        expect(widthAt(p, row)).toBeGreaterThanOrEqual(Math.min(...counts) - 1e-9);
        expect(widthAt(p, row)).toBeLessThanOrEqual(Math.max(...counts) + 1e-9);
      }),
    );
  });
});
