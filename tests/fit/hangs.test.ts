import { describe, expect, it } from 'vitest';
import { rateAsPrinted, rateFrom } from '../../src/fit/gauge.ts';
import { hangsMostOn } from '../../src/fit/hangs.ts';
import { finishedLength, finishedWidth } from '../../src/fit/steps.ts';
import { cm } from '../../src/fit/units.ts';

const count = (n: number, span: number) => ({ count: n, span: cm(span), unit: 'cm' as const });
const swatch = {
  stitches: rateFrom([count(22, 10)]),
  rows: rateFrom([count(30, 10)]),
  worked: 'round' as const,
};

describe('the figure that a plan hangs on most', () => {
  it('is the gauge of the most unsure measurement, with its two standard errors', () => {
    const bust = finishedWidth('bust', null, 220, swatch, 1, 0);
    const length = finishedLength('body', null, 114, swatch);
    const [said] = hangsMostOn([length, bust]);
    expect(said?.say).toBe('summary: hangs on stitches');
    // 22 stitches over 10 cm, once: 100 cm are unsure by 0.874 either way, as tests/fit/gauge.test.ts works out.
    expect(said?.with.error).toMatchObject({ value: expect.closeTo(0.874, 3) });
  });

  it('is the row gauge where rows were counted over a shorter stretch', () => {
    const uneven = { ...swatch, rows: rateFrom([count(6, 2)]) };
    const [said] = hangsMostOn([
      finishedWidth('bust', null, 220, uneven, 1, 0),
      finishedLength('body', null, 114, uneven),
    ]);
    expect(said).toMatchObject({ say: 'summary: hangs on rows', with: { name: 'body' } });
  });

  it('is none where the gauge is taken as printed, or the error is lost in the fabric', () => {
    const printed = {
      stitches: rateAsPrinted(count(22, 10)),
      rows: rateAsPrinted(count(30, 10)),
      worked: 'flat' as const,
    };
    expect(hangsMostOn([finishedWidth('bust', null, 220, printed, 1, 0)])).toEqual([]);
    expect(hangsMostOn([finishedWidth('wrist', null, 40, swatch, 1, 0)])).toEqual([]);
    expect(hangsMostOn([])).toEqual([]);
  });
});
