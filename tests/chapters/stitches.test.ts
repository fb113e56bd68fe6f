import { describe, expect, it } from 'vitest';
import { outcomeText } from '../../src/present/plan-text.ts';
import { expectSound, flowOf, planOf, textOf } from './scripted.ts';

const typed = (gauge: string, width: string, multiple = '1', edge = '0', unit = 'in') => ({
  unit,
  swatch_stitches: gauge,
  stitches_width: width,
  stitches_multiple: multiple,
  stitches_edge: edge,
});

function countOf(plan: ReturnType<typeof planOf>): number {
  const said = plan.steps[0]?.instead[0];
  if (said?.do !== 'say' || typeof said.phrase.with.count !== 'object') throw new Error('no count is told');
  return said.phrase.with.count.value;
}

describe('stitches for a width in five questions', () => {
  it('asks five questions', () => {
    expect(flowOf('stitches').stops).toHaveLength(5);
  });

  // biome-ignore format: one example stands below another
  it.each([
    { source: 'Gauge and Sizing, aknitica, 2014: 36 in at 4.5 to the inch are 162', gauge: '18 sts = 4"', width: '36 in', multiple: '1', count: 162 },
    { source: 'Knitting Math, mathsmagics, 2021: 40 in at 4 to the inch are 160', gauge: '16 sts = 4"', width: '40 in', multiple: '1', count: 160 },
    { source: 'Knitting notes: gauge conversion, 2010: 96 stitches at 5 to the inch become 78 at 4, a multiple of 6', gauge: '16 sts = 4"', width: '19.2 in', multiple: '6', count: 78 },
    { source: 'Knitting notes: gauge conversion, 2010: 102 become 84', gauge: '16 sts = 4"', width: '20.4 in', multiple: '6', count: 84 },
    { source: 'Knitting notes: gauge conversion, 2010: the other way, 102 at 4 become 126 at 5', gauge: '20 sts = 4"', width: '25.5 in', multiple: '6', count: 126 },
    { source: 'a question met in knitting talk: a cuff of 9 in at 23 to 4 in, a multiple of 4, is 52', gauge: '23 sts in 4"', width: '9"', multiple: '4', count: 52 },
    { source: 'a question met in knitting talk: an upper arm of 15.5 in at 23 to 4 in, a multiple of 4, is 88', gauge: '23 sts in 4"', width: '15.5"', multiple: '4', count: 88 },
  ])('$source', ({ gauge, width, multiple, count }) => {
    const plan = planOf('stitches', typed(gauge, width, multiple));
    expect(countOf(plan)).toBe(count);
    expectSound(plan);
  });

  it('is the same count from centimetres and from inches', () => {
    const inch = planOf('stitches', typed('22 sts over 4 in', '20 in', '4 + 2', '2'));
    const metric = planOf('stitches', typed('22 sts over 10.16 cm', '50.8 cm', '4 + 2', '2', 'cm'));
    expect(countOf(inch)).toBe(112);
    expect(countOf(metric)).toBe(112);
    expectSound(metric);
  });

  it('names the counts on both sides with their widths, and how surely the width comes out', () => {
    const plan = planOf('stitches', typed('22 sts over 10 cm', '51 cm', '8 + 2', '2', 'cm'));
    const text = textOf(plan);
    expect(countOf(plan)).toBe(116);
    expect(text).toContain('The counts that fit are 108 stitches (48.2 cm) and 116 stitches (51.8 cm)');
    expect(text).toMatch(/cast-on: 51\.8 cm \(between 51\.\d cm and 52\.\d cm\)/);
    expectSound(plan);
  });

  it('says nothing of neighbours where the count is exact', () => {
    expect(textOf(planOf('stitches', typed('20 sts over 10 cm', '50 cm', '1', '0', 'cm')))).not.toContain(
      'The counts that fit',
    );
  });

  it('counts edge stitches that fill a repeat among the repeats, in words as in figures', () => {
    const workings = (edge: string) => {
      const plan = planOf('stitches', typed('21 sts over 10 cm', '50 cm', '4 + 2', edge, 'cm'));
      return outcomeText({ kind: 'plan', plan }, { dialect: 'us', workings: true });
    };
    // 50 × 2.1 and 2 edge stitches: 107. Repeats of 4 and 2 more, and the 2: 104 or 108.
    expect(workings('2')).toContain('= 107, to the nearest multiple of 4: 108 stitches');
    expect(workings('0')).toContain('= 105, to the nearest multiple of 4, plus 2: 106 stitches');
  });

  it('takes any count and no edge where these are not known, and says so', () => {
    const plan = planOf('stitches', {
      ...typed('20 sts over 10 cm', '51.2 cm', '1', '0', 'cm'),
      stitches_multiple: "I don't know",
      stitches_edge: 'no idea',
    });
    expect(countOf(plan)).toBe(102);
    expect(plan.assumed.map((a) => a.question)).toEqual(['Stitch multiple', 'Edge stitches']);
    expectSound(plan, ['0']);
  });
});
