import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SleeveShaping, shapeSleeve } from '../../src/fit/sleeve.ts';
import { sleevePart } from '../../src/fit/sleeve-steps.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { sleeveAsks } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';

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

  it('speaks of its top where that is knitted: first from the shoulder down, last from the cuff up', () => {
    const pattern = { wrist: stitches(48), upperArm: stitches(80), length: cm(45), cuff: cm(6) };
    const figures = { gauge: over10cm(22, 30, 'round'), edge: 0, pattern, wrist: null, upperArm: cm(38) };
    const places = (direction: 'up' | 'down') => {
      const ask = { ...figures, direction, length: cm(45), cuffRepeat: { multiple: 2, plus: 0 } };
      const sleeve = shapeSleeve(ask);
      if (sleeve.kind !== 'sleeve') throw new Error(sleeve.why);
      return sleevePart(sleeve, { wrist: null, upperArm: null }).steps.map((step) => step.where.say);
    };
    expect(places('up')).toEqual(['where: cast-on and cuff', 'where: cuff to underarm', 'where: sleeve top']);
    expect(places('down')).toEqual(['where: sleeve top', 'where: underarm to cuff', 'where: last edging']);
  });

  it('says so when nothing is left above the cuff, or above the pattern’s own', () => {
    const [ask] = fc.sample(sleeveAsks, 1);
    if (ask === undefined) throw new Error('a sample has one');
    expect(shapeSleeve({ ...ask, length: cm(5), pattern: { ...ask.pattern, cuff: cm(6) } })).toMatchObject({
      kind: 'cannot',
      why: 'edging longer than the piece',
      length: 5,
    });
    const short = { ...ask.pattern, length: cm(6), cuff: cm(7) };
    expect(shapeSleeve({ ...ask, length: cm(40), pattern: short })).toMatchObject({
      kind: 'cannot',
      length: 6,
    });
  });
});
