/** Random gauges and pieces within what is knitted. */
import fc from 'fast-check';
import type { BodyAsk } from '../../src/fit/body-shaping.ts';
import { type Gauge, rateFrom } from '../../src/fit/gauge.ts';
import type { SleeveAsk } from '../../src/fit/sleeve.ts';
import { cm, lengthIn, stitches } from '../../src/fit/units.ts';
import { DIRECTIONS, type Worked } from '../../src/fit/words.ts';

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarter) => quarter / 4);

/** From thick to fine: 10 to 36 stitches over 10 cm or 4 in, rows 1.1 to 1.8 times as many. */
export const gauges: fc.Arbitrary<Gauge> = fc
  .record({
    across: fc.array(quarters(10, 36), { minLength: 1, maxLength: 1 }),
    more: fc.double({ min: 1.1, max: 1.8, noNaN: true }),
    unit: fc.constantFrom('cm' as const, 'in' as const),
    worked: fc.constantFrom<Worked>('flat', 'round'),
    second: fc.boolean(),
  })
  .map(({ across, more, unit, worked, second }) => {
    const span = lengthIn(unit === 'cm' ? 10 : 4, unit);
    const count = across[0] ?? 20;
    const places = second ? [count, count + 0.5] : [count];
    return {
      stitches: rateFrom(places.map((c) => ({ count: c, span, unit }))),
      rows: rateFrom([{ count: Math.round(count * more * 4) / 4, span, unit }]),
      worked,
    };
  });

const lengths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((mm) => cm(mm / 10));

export const bodyAsks: fc.Arbitrary<BodyAsk> = fc
  .record({
    gauge: gauges,
    direction: fc.constantFrom(...DIRECTIONS),
    bust: lengths(60, 160),
    spread: fc.integer({ min: -12, max: 12 }),
    length: lengths(20, 70),
    patternLength: lengths(20, 70),
    edging: lengths(0, 10),
    waist: fc.option(fc.record({ around: lengths(50, 160), belowUnderarm: lengths(5, 40) }), { nil: null }),
    hip: fc.option(lengths(60, 170), { nil: null }),
    drawnIn: fc.constantFrom('sides' as const, 'sides' as const, 'darts' as const, 'back darts' as const),
  })
  .map(({ gauge, bust, spread, patternLength, edging, drawnIn, ...rest }) => {
    const edge = gauge.worked === 'flat' ? 2 : 0;
    const share = gauge.worked === 'flat' ? 2 : 1;
    const count = Math.round((bust / share) * gauge.stitches.perCm) + edge;
    return {
      ...rest,
      gauge,
      edge,
      // Darts lie where a waist is drawn in; those of the back alone in the round.
      lines: rest.waist === null || (drawnIn === 'back darts' && edge > 0) ? 'sides' : drawnIn,
      pattern: { hem: stitches(count + spread), bust: stitches(count), length: patternLength, edging },
    };
  });

export const sleeveAsks: fc.Arbitrary<SleeveAsk> = fc
  .record({
    gauge: gauges,
    direction: fc.constantFrom(...DIRECTIONS),
    wrist: lengths(14, 30),
    upperArm: lengths(24, 60),
    length: lengths(8, 60),
    patternLength: fc.option(lengths(20, 60), { nil: null }),
    cuff: lengths(0, 10),
    newWrist: fc.option(lengths(14, 30), { nil: null }),
    newUpperArm: fc.option(lengths(24, 60), { nil: null }),
    repeat: fc.constantFrom({ multiple: 1, plus: 0 }, { multiple: 2, plus: 0 }, { multiple: 4, plus: 2 }),
  })
  .map((r) => {
    const edge = r.gauge.worked === 'flat' ? 2 : 0;
    const count = (width: number) => stitches(Math.round(width * r.gauge.stitches.perCm) + edge);
    return {
      gauge: r.gauge,
      direction: r.direction,
      edge,
      pattern: { wrist: count(r.wrist), upperArm: count(r.upperArm), length: r.patternLength, cuff: r.cuff },
      wrist: r.newWrist,
      upperArm: r.newUpperArm,
      length: r.length,
      cuffRepeat: r.repeat,
    };
  });
