/** Worked examples of gauge, width, size and ease as published, each recomputed exactly. Inches unless it says cm. */
import { describe, expect, it } from 'vitest';
import { easeOf, easeTable } from '../../src/fit/ease.ts';
import { rateAsPrinted, stitchesFor } from '../../src/fit/gauge.ts';
import { knitted } from '../../src/fit/knitted.ts';
import { chooseSize } from '../../src/fit/size.ts';
import { targetsFor } from '../../src/fit/targets.ts';
import { type Cm, cm, inches, type LengthUnit, lengthIn, stitches } from '../../src/fit/units.ts';
import { bothOf, bustSizes, gaugeOf, patternOf } from '../fit/plain-pattern.ts';

const perInch = (count: number) => rateAsPrinted({ count, span: inches(1), unit: 'in' });
const per10cm = (count: number) => rateAsPrinted({ count, span: cm(10), unit: 'cm' });

function stitchesAt(width: Cm, rate: ReturnType<typeof perInch>, multiple = 1) {
  const choice = stitchesFor(width, rate.perCm, { multiple, plus: 0, edge: 0, parity: 'any' });
  if ('impossible' in choice) throw new Error('a count was expected');
  return choice;
}

/** What so many stitches, counted for `bust`, measure at an own gauge to 4 in. */
function measures(count: number, own: number): number {
  const size = { label: '1', finished: {}, counts: { bust: stitches(count) } };
  const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, [size]);
  return (knitted('bust', size, pattern, bothOf(gaugeOf(own * 4, 28, 'in')))?.value ?? Number.NaN) / 2.54;
}

describe('Knitting Math: How Much Difference Can 1 Stitch Per Inch in Gauge Make? (mathsmagics.com, 2021)', () => {
  it('40 in at 4 stitches to the inch are 160 stitches', () => {
    expect(stitchesAt(inches(40), perInch(4))).toMatchObject({ chosen: 160 });
  });
  it.each([
    [5, 32],
    [3, 53.333],
  ])('which at %d to the inch measure %d in', (own, width) => {
    expect(measures(160, own)).toBeCloseTo(width, 3);
  });
});

describe('Gauge and Sizing (aknitica.com, 2014)', () => {
  it('36 in at 4 to the inch are 144 stitches, at 4.5 to the inch 32 in', () => {
    expect(stitchesAt(inches(36), perInch(4)).chosen).toBe(144);
    expect(measures(144, 4.5)).toBeCloseTo(32, 9);
  });
  it.each([
    [36, 2],
    [32, -2],
  ])('%d in on a chest of 34 in has %d in of ease', (finished, ease) => {
    expect(easeOf('bust', inches(finished), inches(34)).result.value).toBeCloseTo(inches(ease), 9);
  });
  it('36 in at 4.5 to the inch need 162 stitches', () => {
    expect(stitchesAt(inches(36), perInch(4.5)).chosen).toBe(162);
  });
});

describe('Pattern Help: Getting Gauge or Knitting a Different Size (craftsy.com, 2013)', () => {
  // Printed as 33.75 and 37.25, cut down to the quarter inch.
  it.each([
    [38, 228, 33.778],
    [42, 252, 37.333],
  ])('size %d at 6 to the inch has %d stitches and at 6.75 measures %d in', (size, count, width) => {
    expect(stitchesAt(inches(size), perInch(6)).chosen).toBe(count);
    expect(measures(count, 6.75)).toBeCloseTo(width, 3);
  });
});

describe('Knitting Math for Adapting Gauge (bellaonline.com, undated)', () => {
  it('286 stitches at 26 to 4 in are 44 in, at 20 to 4 in 57.2 in', () => {
    expect(measures(286, 26 / 4)).toBeCloseTo(44, 9);
    expect(measures(286, 20 / 4)).toBeCloseTo(57.2, 9);
  });
});

describe('Knitting notes: gauge conversion, yours/theirs (a knitting weblog, 2010)', () => {
  it.each([
    [96, 5, 4, 76.8, 78],
    [102, 5, 4, 81.6, 84],
    [102, 4, 5, 127.5, 126],
  ])(
    '%d stitches at %d to the inch are at %d to the inch %d, in sixes %d',
    (count, theirs, own, raw, rounded) => {
      const choice = stitchesAt(inches(count / theirs), perInch(own), 6);
      expect(choice.exact).toBeCloseTo(raw, 9);
      expect(choice.chosen).toBe(rounded);
    },
  );
  it.each([
    [102, 5, 20.4],
    [102, 4, 25.5],
    [126, 5, 25.2],
  ])('%d stitches at %d to the inch are %d in wide', (count, own, width) => {
    expect(measures(count, own)).toBeCloseTo(width, 9);
  });
});

describe('Gauge musings after blocking a swatch (livejournal.com, undated)', () => {
  it.each([
    [18, 189],
    [17, 178.5],
  ])('105 cm at %d to 10 cm are %d stitches', (count, exact) => {
    expect(stitchesAt(cm(105), per10cm(count)).exact).toBeCloseTo(exact, 9);
  });
  it.each([
    [18, 101.11],
    [17, 107.06],
  ])('182 stitches at %d to 10 cm are %d cm', (own, width) => {
    const size = { label: '1', finished: {}, counts: { bust: stitches(182) } };
    const pattern = patternOf({ stitches: 18, rows: 28, unit: 'cm' }, [size]);
    expect(knitted('bust', size, pattern, bothOf(gaugeOf(own, 28, 'cm')))?.value).toBeCloseTo(width, 2);
  });
});

describe('Altering a pattern, expert answer (allexperts.com, 2009)', () => {
  it('44 stitches for 32 in are 52.25 for 38 in, so 52', () => {
    const choice = stitchesAt(inches(38), rateAsPrinted({ count: 44, span: inches(32), unit: 'in' }));
    expect(choice.exact).toBeCloseTo(52.25, 9);
    expect(choice.chosen).toBe(52);
  });
});

describe('Ease and the All-Important Bust Measurement (interweave.com, Love of Knitting, winter 2015)', () => {
  it('standard ease on a bust of 40 in is 42 to 44 in finished', () => {
    const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, []);
    const standard = easeTable(inches(40), pattern, bothOf(gaugeOf(20, 28, 'in'))).find(
      (r) => r.fit === 'classic',
    );
    expect(standard?.low).toBeCloseTo(inches(42), 9);
    expect(standard?.high).toBeCloseTo(inches(44), 9);
  });
});

describe('At ease: some brief thoughts about sweater sizing (knitthehellout.com, 2013)', () => {
  it.each([
    [-2, 34],
    [-1, 35],
    [0, 36],
    [1, 37],
    [2, 38],
  ])('%d in of ease on a bust of 36 in is %d in finished', (ease, finished) => {
    expect(aimed(36, ease, 'in')).toBeCloseTo(inches(finished), 9);
  });
});

describe('How I Chose Both Size and Ease (interweave.com, Knitting Daily, undated)', () => {
  it('3 in of ease on 41.5 in is 44.5 in; of 43.5 and 47 in, 43.5 comes nearer and has 2 in of ease', () => {
    const { targets } = targetsFor({ table: 'women', known: { bust: inches(41.5) } }, { ease: inches(3) });
    const pattern = patternOf({ stitches: 20, rows: 28, unit: 'in' }, bustSizes('in', 43.5, 47));
    const choice = chooseSize(pattern, targets, bothOf(gaugeOf(20, 28, 'in')));
    if (choice.kind !== 'ranked') throw new Error(choice.kind);
    expect(targets.bust?.aim).toBeCloseTo(inches(44.5), 9);
    expect(choice.ranking.map((s) => s.label)).toEqual(['43.5', '47']);
    const away = choice.ranking.map((s) => Math.abs(s.reasons[0]?.difference ?? Number.NaN) / 2.54);
    expect(away[0]).toBeCloseTo(1, 9);
    expect(away[1]).toBeCloseTo(2.5, 9);
    expect(easeOf('bust', inches(43.5), inches(41.5)).result.value).toBeCloseTo(inches(2), 9);
  });
});

describe('October Sweater part two: building a waist (a knitting weblog, 2007)', () => {
  it('37 in at 7 to the inch are 259 stitches; 256 are 36.57 in, 0.43 less', () => {
    expect(stitchesAt(inches(37), perInch(7)).chosen).toBe(259);
    expect(measures(256, 7)).toBeCloseTo(36.57, 2);
    expect(measures(256, 7) - 37).toBeCloseTo(-0.43, 2);
  });
});

function aimed(bust: number, ease: number, unit: LengthUnit): number {
  const body = { table: 'women' as const, known: { bust: lengthIn(bust, unit) } };
  return targetsFor(body, { ease: lengthIn(ease, unit) }).targets.bust?.aim ?? Number.NaN;
}
