/** What is wanted of a pattern, sum by sum: a bust of 104 cm over an upper bust of 93 cm; patterns allow 2 in, 5.08 cm. */
import { describe, expect, it } from 'vitest';
import { targetsFor, targetsFromGarment } from '../../src/fit/targets.ts';
import { cm } from '../../src/fit/units.ts';
import { told } from './told.ts';

const known = { bust: cm(104), 'upper bust': cm(93), 'upper arm': cm(31), neck: cm(37) };
const wanted = () => targetsFor({ table: 'women', known }, { ease: cm(5) });

describe('targets', () => {
  it('go by the upper bust, and tell what the front needs more', () => {
    expect(told(wanted().front?.workings ?? [])).toEqual([
      'bust to choose the size by: a + b = 98.08 cm',
      'more for the front: a - b = 5.92 cm',
    ]);
    expect(told(wanted().targets.bust?.workings ?? []).slice(0, 2)).toEqual(
      told(wanted().front?.workings ?? []),
    );
    expect(wanted().targets.bust).toMatchObject({ origin: null, atLeast: false });
    expect(wanted().targets.bust?.aim).toBeCloseTo(103.08, 9);
  });

  it('of other places have one sum each, in centimetres', () => {
    for (const region of ['upper arm', 'neck'] as const) {
      const workings = wanted().targets[region]?.workings ?? [];
      expect(workings.map((line) => line.result.unit)).toEqual(['cm']);
    }
  });

  it('are a least for the neck alone', () => {
    expect(wanted().targets.neck?.atLeast).toBe(true);
    expect(wanted().targets['upper arm']?.atLeast).toBe(false);
  });

  it('leave the front as it is where patterns allow for it, or where either bust is not known', () => {
    const none = (more: object) => 'front' in targetsFor({ table: 'women', known: more }, { ease: cm(5) });
    expect(none({ bust: cm(98.08), 'upper bust': cm(93) })).toBe(false);
    expect(none({ bust: cm(98.2), 'upper bust': cm(93) })).toBe(true);
    expect(none({ bust: cm(104) })).toBe(false);
    expect(none({ 'upper bust': cm(93) })).toBe(false);
  });

  it('have no ease of the body where the front is as wide: one sum for the bust', () => {
    const plain = targetsFor({ table: 'women', known: { bust: cm(96) } }, { ease: cm(5) });
    expect(told(plain.targets.bust?.workings ?? [])).toEqual([expect.stringContaining('= 101 cm')]);
    const classic = targetsFor({ table: 'women', known: { bust: cm(96) } }, { fit: 'classic' });
    expect(classic.targets.bust?.workings).toHaveLength(1);
  });

  it('read off a garment are its own widths', () => {
    const read = targetsFromGarment({ bust: cm(100) });
    expect(Object.keys(read)).toEqual(['bust']);
    expect(told(read.bust?.workings ?? [])).toEqual(['finished bust: a = 100 cm']);
  });
});
