import { describe, expect, it } from 'vitest';
import { CASES, outcomeOfCase } from './told-cases.ts';

const SUMS = new Set([
  'spacing',
  'spread',
  'stitches',
  'buttons',
  'pickup',
  'yarn',
  'reading',
  'checking',
  'ease',
  'size',
]);
const KNITTED = new Set([
  'armhole',
  'back_neck',
  'front_neck',
  'hem',
  'length',
  'raglan',
  'shoulder',
  'sleeve',
  'waist',
  'yoke',
]);

/** What each plan of these flows warns of. */
const careIn = (flows: ReadonlySet<string>) =>
  CASES.filter(({ flow }) => flows.has(flow)).flatMap((one) => {
    const outcome = outcomeOfCase(one);
    if (outcome.kind !== 'plan') return [];
    const { cautions, steps } = outcome.plan;
    const knits = steps.some(({ instead }) => instead.some((i) => i.do !== 'say'));
    return [{ name: one.name, knits, care: cautions.map(({ say }) => say) }];
  });

describe('a plan', () => {
  it('that has a garment knitted tells to rest the hands and to try the fibre on the skin', () => {
    const plans = careIn(KNITTED).filter(({ knits }) => knits);
    expect(plans.length).toBeGreaterThan(20);
    expect(plans.filter(({ care }) => !care.includes('care: hands') || !care.includes('care: skin'))).toEqual(
      [],
    );
  });

  it('of one sum is short, and warns of nothing', () => {
    const plans = careIn(SUMS);
    expect(plans.length).toBeGreaterThan(10);
    expect(plans.filter(({ care }) => care.length > 0)).toEqual([]);
  });
});
