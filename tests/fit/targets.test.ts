import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import { targetsFor, targetsFromGarment } from '../../src/fit/targets.ts';
import { cm, inches } from '../../src/fit/units.ts';
import type { Measurement } from '../../src/fit/words.ts';
import { REGIONS } from '../../src/fit/words.ts';

const body = (
  known: Partial<Record<Measurement, number>>,
  table: 'women' | 'men' | 'children' = 'women',
) => ({
  table,
  known: Object.fromEntries(Object.entries(known).map(([m, v]) => [m, inches(v)])),
});
const inIn = (length: number | undefined | null) => Math.round(((length ?? Number.NaN) / 2.54) * 1e6) / 1e6;

describe('targets from a body', () => {
  it('are given for the regions that were measured, and for no others', () => {
    const { targets } = targetsFor(body({ bust: 38, 'upper arm': 12, 'arm length': 17 }), { fit: 'classic' });
    expect(Object.keys(targets)).toEqual(['bust', 'upper arm', 'sleeve length']);
  });

  it('add to each region its own ease', () => {
    const { targets } = targetsFor(body({ bust: 38, waist: 30, 'upper arm': 12, wrist: 6 }), {
      fit: 'classic',
    });
    expect(inIn(targets.bust?.aim)).toBe(41);
    expect([inIn(targets.bust?.low), inIn(targets.bust?.high)]).toEqual([40, 42]);
    expect(inIn(targets.waist?.aim)).toBe(33);
    expect(inIn(targets['upper arm']?.aim)).toBe(13.5);
    expect(inIn(targets.wrist?.aim)).toBe(7.5);
  });

  it('take an amount of ease at the bust, and the other regions from the fit that it is called', () => {
    const wanted = targetsFor(body({ bust: 38, 'upper arm': 12 }), { ease: inches(10) });
    expect(wanted.fit).toBe('oversized');
    expect(inIn(wanted.targets.bust?.aim)).toBe(48);
    expect(wanted.targets.bust?.high).toBe(wanted.targets.bust?.low);
    expect(inIn(wanted.targets['upper arm']?.aim)).toBe(17);
  });

  it('take a neck as wide enough or not', () => {
    const { targets } = targetsFor(body({ neck: 14.5 }), { fit: 'classic' });
    expect(targets.neck).toMatchObject({ atLeast: true, high: null });
  });

  it('work a body length out from the back, the armhole and the length below the waist', () => {
    // Hip length is 6 in below a woman's waist; a classic armhole is ¾ in deeper than the body's.
    const measured = body({ 'back length': 17, 'armhole depth': 7.25 });
    expect(inIn(targetsFor(measured, { fit: 'classic' }, 'hip').targets['body length']?.aim)).toBe(15);
    expect(targetsFor(measured, { fit: 'classic' }).targets['body length']).toBeUndefined();
    expect(
      targetsFor({ ...measured, table: 'men' }, { fit: 'classic' }, 'hip').targets['body length'],
    ).toBeUndefined();
  });

  it('are what their workings say', () => {
    const measured = body({ bust: 42, 'upper bust': 37, neck: 14, 'back length': 17, 'armhole depth': 7 });
    const { targets, front } = targetsFor(measured, { fit: 'loose' }, 'tunic');
    for (const region of REGIONS) {
      const target = targets[region];
      if (target === undefined) continue;
      expect(target.workings.at(-1)?.result.value).toBe(target.aim);
      for (const line of target.workings) expect(evaluate(line.formula, line.given)).toBe(line.exact);
    }
    expect(front?.workings.at(-1)?.result.value).toBe(front?.extra);
  });
});

/**
 * Patterns assume a full bust 2 in above the upper torso; the size goes by upper torso plus ease, and what exceeds the
 * 2 in is a bust adjustment. Source: Demystifying Ease in Garment Patterns, part 2, digitsandthreads.ca, undated.
 */
describe('a full bust', () => {
  it.each([
    [42, 36, 38, 4],
    [40, 37, 39, 1],
  ])(
    'of %d in over an upper bust of %d in is sized as %d in, with %d in more for the front',
    (bust, upper, size, extra) => {
      const { targets, front } = targetsFor(body({ bust, 'upper bust': upper }), { fit: 'close' });
      expect(inIn(front?.sizeBust)).toBe(size);
      expect(inIn(front?.extra)).toBe(extra);
      expect(inIn(targets.bust?.aim)).toBe(size);
    },
  );

  it('that is 2 in or less above the upper bust is sized as it is', () => {
    for (const upper of [36, 37, 39]) {
      const { targets, front } = targetsFor(body({ bust: 38, 'upper bust': upper }), { fit: 'close' });
      expect(front).toBeUndefined();
      expect(inIn(targets.bust?.aim)).toBe(38);
    }
  });

  it('has all its ease in size and front together', () => {
    const { targets, front } = targetsFor(body({ bust: 44, 'upper bust': 37 }), { fit: 'classic' });
    expect(inIn(cm((targets.bust?.aim ?? 0) + (front?.extra ?? 0)))).toBe(47);
  });
});

describe('targets from a garment that fits', () => {
  it('are its own measurements: the ease is in it', () => {
    const targets = targetsFromGarment({ bust: cm(104), neck: cm(60) });
    expect(targets.bust).toMatchObject({ aim: 104, low: 104, high: 104, origin: null });
    expect(targets.neck).toMatchObject({ aim: 60, atLeast: false });
    expect(Object.keys(targets)).toEqual(['bust', 'neck']);
  });
});
