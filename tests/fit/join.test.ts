import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { join } from '../../src/fit/join.ts';
import { stitches } from '../../src/fit/units.ts';
import { told } from './told.ts';

const asks = fc
  .record({
    body: fc.integer({ min: 10, max: 400 }),
    sleeve: fc.integer({ min: 5, max: 120 }),
    underarm: fc.integer({ min: 1, max: 60 }),
  })
  .map(({ body, sleeve, underarm }) => ({
    body: stitches(body),
    sleeve: stitches(sleeve),
    underarm: stitches(underarm),
  }));

describe('body and sleeves joined', () => {
  it('leave all stitches but those of the four underarm edges, parted into front, back and sleeves', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const made = join(ask);
        const least = Math.min(ask.sleeve, Math.floor(ask.body / 2));
        expect(made.kind).toBe(ask.underarm < least ? 'joined' : 'underarms take all');
        if (made.kind !== 'joined') return;
        expect(made.yoke).toBe(ask.body + 2 * ask.sleeve - 4 * ask.underarm);
        expect(made.front + made.back + 2 * made.sleeve).toBe(made.yoke);
        expect(made.front - made.back).toBe(ask.body % 2);
        for (const line of made.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
      }),
    );
  });

  it('show how each count came about', () => {
    const made = join({ body: stitches(201), sleeve: stitches(70), underarm: stitches(12) });
    if (made.kind !== 'joined') throw new Error(made.kind);
    expect(told(made.workings)).toEqual([
      'stitches of the yoke: a + 2 * b - 4 * c = 293 stitches',
      'stitches of the back: a / 2 - b = 88 stitches',
      'stitches of the front: a / 2 - b = 89 stitches',
      'stitches of each sleeve in the yoke: a - b = 58 stitches',
    ]);
  });

  it('are refused where the underarms take a whole part, with the most that may be set aside', () => {
    fc.assert(
      fc.property(asks, (ask) => {
        const made = join(ask);
        if (made.kind !== 'underarms take all') return;
        expect(join({ ...ask, underarm: made.most }).kind).toBe('joined');
        expect(join({ ...ask, underarm: stitches(made.most + 1) }).kind).toBe('underarms take all');
      }),
    );
  });
});
