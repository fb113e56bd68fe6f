import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SleeveShaping, shapeSleeve } from '../../src/fit/sleeve.ts';
import { cm } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { sleeveAsks } from './arbitrary.ts';

function drawn(check: (sleeve: SleeveShaping) => void, numRuns: number): void {
  let seen = 0;
  fc.assert(
    fc.property(sleeveAsks, (ask) => {
      const sleeve = shapeSleeve(ask);
      if (sleeve.kind !== 'sleeve') return;
      seen += 1;
      check(sleeve);
    }),
    { numRuns },
  );
  expect(seen).toBeGreaterThan(numRuns / 2);
}

describe('the sleeve, drawn anew', () => {
  it('is knitted by the simulator to the stated counts and rows, cuff up or shoulder down', () => {
    let shaped = 0;
    drawn((sleeve) => {
      const { ask, counts, spacing } = sleeve;
      if (spacing.kind !== 'spaced') return;
      shaped += 1;
      const up = ask.direction === 'up';
      const needle = Needle.castOn(up ? counts.wrist : counts.upperArm, ask.gauge.worked);
      if (up) needle.plain(sleeve.cuff.rows);
      expect(knitSection(needle, spacing, ask.gauge.worked)).toEqual([]);
      if (!up) needle.plain(sleeve.cuff.rows);
      expect(needle.log).toHaveLength(sleeve.inAll.result.value);
      expect(needle.count).toBe(up ? counts.upperArm : counts.wrist);
    }, 1_000);
    expect(shaped).toBeGreaterThan(400);
  });

  it('has counts nearest to the widths wanted that fit the cuff and paired shaping', () => {
    drawn(({ ask, counts }) => {
      const rate = ask.gauge.stitches.perCm;
      if (ask.wrist !== null) {
        expect(Math.abs(counts.wrist - ask.edge - ask.cuffRepeat.plus) % ask.cuffRepeat.multiple).toBe(0);
        const off = counts.wrist - ask.edge - ask.wrist * rate;
        expect(Math.abs(off)).toBeLessThanOrEqual(ask.cuffRepeat.multiple / 2 + 1e-6);
      }
      expect(Math.abs(counts.upperArm - counts.wrist) % 2).toBe(0);
      if (ask.upperArm !== null)
        expect(Math.abs(counts.upperArm - ask.edge - ask.upperArm * rate)).toBeLessThanOrEqual(1 + 1e-6);
    }, 2_000);
  });

  it('keeps an inch plain below the underarm', () => {
    drawn((sleeve) => {
      const { spacing, ask, plain } = sleeve;
      if (spacing.kind !== 'spaced' || spacing.shaping.length === 0) return;
      const first = (spacing.shaping[0]?.row ?? 0) - 1;
      expect(ask.direction === 'up' ? spacing.plainAfter : first).toBeGreaterThanOrEqual(plain.result.value);
    }, 1_000);
  });

  it('tells by how much its top differs from the pattern', () => {
    drawn(({ ask, counts, topDifference }) => {
      const difference = Math.abs(counts.upperArm - ask.pattern.upperArm);
      expect(topDifference?.result.value ?? 0).toBe(difference);
    }, 1_000);
  });

  it('says so when nothing is left above the cuff', () => {
    const [ask] = fc.sample(sleeveAsks, 1);
    if (ask === undefined) throw new Error('a sample has one');
    expect(shapeSleeve({ ...ask, length: cm(5), pattern: { ...ask.pattern, cuff: cm(6) } })).toMatchObject({
      kind: 'cannot',
      why: 'edging longer than the piece',
    });
  });
});
