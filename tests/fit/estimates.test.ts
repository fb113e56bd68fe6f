/** Doubt of gauge and tape, carried on line by line: 220 stitches at 2.2 ± 0.022 to the centimetre are 100 ± 1 cm. */
import { describe, expect, it } from 'vitest';
import type { Rate } from '../../src/fit/gauge.ts';
import {
  type Estimate,
  fromCount,
  fromSlope,
  fromTape,
  together,
  uncertainty,
} from '../../src/fit/uncertainty.ts';
import { cm, perCm } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const rate = (value: number, se: number): Rate => ({
  ...over10cm(22, 30).stitches,
  perCm: perCm(value),
  se: perCm(se),
});
const through = (estimate: Estimate) =>
  Object.entries(estimate.through).map(([on, by]) => `${on}: ${Math.round(by * 1000) / 1000}`);

const bust = fromCount('bust', 220, rate(2.2, 0.022), 'stitch gauge');
const body = fromTape('body', cm(80), cm(0.5));

describe('an estimate', () => {
  it('of a count moves against its gauge', () => {
    expect(told(bust.workings)).toEqual([
      'bust: a / r = 100 cm',
      'bust, moved by one standard error of the stitch gauge: a * s / (r * r) = 1 cm',
    ]);
    expect(through(bust)).toEqual(['stitch gauge: -1']);
  });

  it('counts stitches or rows, as its gauge does', () => {
    const unitOf = (on: Parameters<typeof fromCount>[3]) => {
      const given = fromCount('it', 60, rate(3, 0.03), on).workings[0]?.given;
      return [given?.a?.unit, given?.r?.unit];
    };
    expect(unitOf('stitch gauge of the sleeves')).toEqual(['stitches', 'stitches/cm']);
    expect(unitOf('row gauge')).toEqual(['rows', 'rows/cm']);
  });

  it('by the tape is what was measured, and as sure as that', () => {
    expect(told(body.workings)).toEqual(['body: a = 80 cm']);
    expect(through(body)).toEqual(['body measurement: 0.5']);
    expect(through(fromTape('body', cm(80), cm(0)))).toEqual([]);
  });

  it('of a slope is the root of both squares: 10 cm across and 10 cm up', () => {
    const slope = fromSlope('edge', 22, 30, {
      stitches: rate(2.2, 0.022),
      rows: rate(3, 0.03),
      worked: 'flat',
    });
    expect(slope.expected).toBeCloseTo(Math.sqrt(200), 9);
    expect(told(slope.workings)).toEqual([
      'width of the edge: a / r = 10 cm',
      'width of the edge, moved by one standard error of the stitch gauge: a * s / (r * r) = 0.1 cm',
      'height of the edge: a / r = 10 cm',
      'height of the edge, moved by one standard error of the row gauge: a * s / (r * r) = 0.1 cm',
      'square of the edge: a * a + b * b = 200 cm²',
    ]);
    // Each side moves it by its share: 0.1 × 10 / 14.14.
    expect(through(slope)).toEqual(['stitch gauge: -0.071', 'row gauge: -0.071']);
    const none = fromSlope('edge', 0, 0, { stitches: rate(2.2, 0.022), rows: rate(3, 0.03), worked: 'flat' });
    expect(through(none)).toEqual(['stitch gauge: 0', 'row gauge: 0']);
  });

  it('of a difference adds up what comes through one figure, sign by sign', () => {
    const ease = together('ease', [
      { of: bust, times: 1 },
      { of: body, times: -1 },
    ]);
    expect(told(ease.workings)).toEqual([
      ...told(bust.workings),
      ...told(body.workings),
      'ease: 0 + n1 * a1 - n2 * a2 = 20 cm',
    ]);
    expect(through(ease)).toEqual(['stitch gauge: -1', 'body measurement: -0.5']);
    const turned = together('lacking', [
      { of: body, times: -1 },
      { of: bust, times: 2 },
      { of: bust, times: 0 },
    ]);
    expect(told(turned.workings).at(-1)).toBe('lacking: 0 - n1 * a1 + n2 * a2 + n3 * a3 = 120 cm');
    expect(through(turned)).toEqual(['stitch gauge: -2', 'body measurement: -0.5']);
  });

  it('of what cancels out is sure', () => {
    const nothing = together('nothing', [
      { of: bust, times: 1 },
      { of: bust, times: -1 },
    ]);
    expect(through(nothing)).toEqual([]);
    expect(told(uncertainty(nothing).workings).at(-1)).toBe(
      'square of one standard error of nothing: 0 = 0 cm²',
    );
  });

  it('has a range of two standard errors, and hangs on the greater first: 1 and 0.5 cm, four to one', () => {
    const ease = together('ease', [
      { of: body, times: -1 },
      { of: bust, times: 1 },
    ]);
    const found = uncertainty(ease);
    expect(told(found.workings).at(-1)).toBe(
      'square of one standard error of ease: s1 * s1 + s2 * s2 = 1.25 cm²',
    );
    expect(found.workings).toHaveLength(ease.workings.length + 1);
    expect(found.range.low).toBeCloseTo(20 - 2 * Math.sqrt(1.25), 9);
    expect(found.range.high).toBeCloseTo(20 + 2 * Math.sqrt(1.25), 9);
    expect(found.hangs.map(({ on, share }) => `${on} ${share.toFixed(2)}`)).toEqual([
      'stitch gauge 0.80',
      'body measurement 0.20',
    ]);
  });
});
