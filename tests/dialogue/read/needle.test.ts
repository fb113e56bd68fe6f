import { describe, expect, it } from 'vitest';
import { readNeedle } from '../../../src/dialogue/read/needle.ts';
import { NEEDLES } from '../../../src/fit/tables/needles.ts';

describe('A needle size', () => {
  it.each([
    ['4mm', '4 mm (US 6)'],
    ['4,5 mm circular', '4.5 mm (US 7)'],
    ['5.5', '5.5 mm (US 9)'],
    ['10½', '6.5 mm (US 10½)'],
    ['10.5', '6.5 mm (US 10½)'],
    ['US 00', '1.75 mm (US 00)'],
    ['UK 8', '4 mm (old UK 8)'],
    ['old UK 000', '10 mm (old UK 000)'],
    ['aiguilles 4', '4 mm (US 6)'],
    ['6 mm (US 10)', '6 mm (US 10)'],
    ['US 8/5 mm', '5 mm (US 8)'],
    ['from US7 to US6', '4 mm (US 6) instead of 4.5 mm (US 7)'],
  ])('“%s” is heard as %s', (text, echo) => {
    expect(readNeedle(text)).toMatchObject({ kind: 'heard', echo });
  });

  it('that is a size in more than one system is offered in each', () => {
    expect(readNeedle('size 9')).toMatchObject({
      kind: 'which',
      options: [{ echo: '5.5 mm (US 9)' }, { echo: '9 mm (US 13)' }, { echo: '3.75 mm (old UK 9)' }],
    });
    expect(readNeedle('00')).toMatchObject({ kind: 'which' });
  });

  it('that charts give two diameters for is offered in both', () => {
    expect(readNeedle('US 17')).toMatchObject({
      kind: 'which',
      options: [{ value: { needle: { mm: 12 } } }, { value: { needle: { mm: 12.75 } } }],
    });
  });

  it('whose two labels contradict each other is offered twice', () => {
    expect(readNeedle('US 10 1/2 (7 mm)')).toMatchObject({ kind: 'which', options: [{}, {}] });
  });

  it('that no chart lists is put back', () => {
    expect(readNeedle('4.25 mm')).toMatchObject({
      kind: 'ask back',
      why: 'unlikely',
      value: { needle: { mm: 4.25 } },
    });
  });

  it.each([
    ['US 12', 'unknown size'],
    ['80 mm', 'unknown size'],
    ['8 in', 'other kind'],
    ['-3 mm', 'negative'],
    ['3 4 5', 'several numbers'],
    ['bamboo', 'no number'],
  ])('“%s” is refused: %s', (text, reason) => {
    expect(readNeedle(text)).toMatchObject({ kind: 'refused', reason });
  });
});

describe('The table of needles', () => {
  it('rises strictly in millimetres', () => {
    const sizes = NEEDLES.map((n) => n.mm);
    expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
  });

  // The old UK scale falls as needles thicken, then goes on with 0, 00, 000.
  it('falls in old UK numbers as the needles thicken', () => {
    const labels = NEEDLES.flatMap((n) => n.ukOld ?? []);
    const ranks = labels.map((label) => (/^0+$/.test(label) ? 1 - label.length : Number(label)));
    expect(ranks).toEqual([...ranks].sort((a, b) => b - a));
  });

  // Guide to yarn weights (Craft Yarn Council, undated) pairs these in its ranges.
  it.each([
    ['1', 2.25],
    ['3', 3.25],
    ['5', 3.75],
  ])('pairs US %s with %f mm as the Council does', (us, mm) => {
    expect(NEEDLES.filter((n) => n.us === us).map((n) => n.mm)).toEqual([mm]);
  });
});
