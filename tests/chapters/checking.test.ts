import { describe, expect, it } from 'vitest';
import { SAMPLE_PIECES, type SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

const NO = "don't know";
/** Every row left out but those that a test gives. */
const BARE = {
  unit: 'in',
  checking_joined: 'set-in sleeves',
  body_made: 'from the hem, in pieces',
  checking_repeat: '1',
  checking_bust: NO,
  checking_cross_back: NO,
  checking_shoulder: NO,
  checking_neck: NO,
  checking_upper_arm: NO,
  checking_upper_arm_stitches: NO,
  checking_wrist_stitches: NO,
  checking_sleeve_length: NO,
};

/** The sample's rows as a person would paste them. */
function pasted(pattern: typeof SAMPLE_ROUND) {
  const counts = (of: 'bust' | 'cross back' | 'shoulder' | 'back neck' | 'upper arm' | 'wrist') => {
    const [first, ...others] = pattern.sizes.map((s) => s.counts[of]);
    return `${first} (${others.join(', ')}) sts`;
  };
  const lengths = (of: 'bust' | 'upper arm' | 'sleeve length') => {
    const [first, ...others] = pattern.sizes.map((s) => s.finished[of]);
    return `${first} (${others.join(', ')}) cm`;
  };
  return {
    unit: 'cm',
    checking_joined: 'set-in',
    body_made: pattern.body === 'round' ? 'from the hem, in the round' : 'from the hem, in pieces',
    pattern_gauge: '22 sts and 30 rows to 10 cm',
    checking_repeat: 'multiple of 2',
    sizes_bust: lengths('bust'),
    checking_bust: counts('bust'),
    checking_cross_back: counts('cross back'),
    checking_shoulder: counts('shoulder'),
    checking_neck: counts('back neck'),
    checking_upper_arm: lengths('upper arm'),
    checking_upper_arm_stitches: counts('upper arm'),
    checking_wrist_stitches: counts('wrist'),
    checking_sleeve_length: lengths('sleeve length'),
  };
}

describe("a pattern's rows of figures, checked", () => {
  it('asks fourteen questions', () => {
    expect(flowOf('checking').stops).toHaveLength(14);
  });

  it('finds nothing in the sample in pieces, and says what was compared', () => {
    const plan = planOf('checking', pasted(SAMPLE_PIECES));
    expect(plan.summary.map((p) => p.say)).toEqual(['summary: no contradiction']);
    expect(textOf(plan)).toContain(
      'In all 10 sizes: Finished bust, Finished upper arm, Sleeve length, Bust stitches',
    );
    expectSound(plan);
  });

  it('names the size, the printed figures, and each figure that alone would agree', () => {
    const typed = pasted(SAMPLE_PIECES);
    const plan = planOf('checking', {
      ...typed,
      checking_shoulder: typed.checking_shoulder.replace('24,', '27,'),
    });
    const found = instructed(plan, 'note contradiction');
    expect(found.map((f) => [f.size, f.code])).toContainEqual(['4', 'shoulders do not add up']);
    expect(textOf(plan)).toContain(
      'Two shoulders and the back neck do not make up the back above the armholes.',
    );
    expectSound(plan, ['4', '5']);
  });

  it('leaves out a row that has not one figure for each size, once that is confirmed, and says so', () => {
    const plan = planOf('checking', { ...pasted(SAMPLE_PIECES), checking_neck: ['34 (36, 36)', 'yes'] });
    expect(textOf(plan)).toContain('Back neck stitches: it has 3 figures for 10 sizes, so it was left out.');
    expect(instructed(plan, 'note contradiction')).toEqual([]);
    expectSound(plan);
  });

  it('takes the labels of the sizes where they are printed', () => {
    const plan = planOf('checking', {
      ...BARE,
      pattern_gauge: '16 sts and 23 rows = 4"',
      sizes_bust: 'Sm(34"),Med (37"),Lg(40"),XL(43")',
      checking_bust: '70 (74, 82, 88)',
    });
    expect(instructed(plan, 'note contradiction').map((f) => f.size)).toEqual([]);
    const broken = planOf('checking', {
      ...BARE,
      pattern_gauge: '16 sts and 23 rows = 4"',
      sizes_bust: 'Sm(34"),Med (37"),Lg(40"),XL(43")',
      checking_bust: '70 (84, 86, 88)',
    });
    expect(instructed(broken, 'note contradiction').map((f) => f.size)).toContain('M');
    expectSound(broken);
  });

  it('waits for the finished bust, without which there are no sizes', () => {
    const cannot = cannotOf('checking', {
      ...BARE,
      pattern_gauge: '16 sts and 23 rows = 4"',
      sizes_bust: NO,
    });
    expect(textOf(cannot)).toContain('Finished bust, all sizes');
  });
});

describe('figures that were published or asked about', () => {
  it('Knitting Math for Adapting Gauge, bellaonline: 286 stitches at 26 to 4 in are 44 in', () => {
    const plan = planOf('checking', {
      ...BARE,
      body_made: 'from the hem, in the round',
      pattern_gauge: '26 sts and 36 rows = 4"',
      sizes_bust: '44 in',
      checking_bust: '286 sts',
    });
    expect(instructed(plan, 'note contradiction')).toEqual([]);
    expectSound(plan);
  });

  it('a question met in knitting talk: a back of 79 stitches at 18 to 4 in is half of 34 in, its seams taken off', () => {
    const plan = planOf('checking', {
      ...BARE,
      pattern_gauge: '18 sts and 26 rows = 4"',
      sizes_bust: '34 in',
      checking_bust: '79',
    });
    expect(instructed(plan, 'note contradiction')).toEqual([]);
  });

  it('a question met in knitting talk: 218 stitches at 6 to the inch, a stitch for each seam, are 36 in, not 26', () => {
    const plan = planOf('checking', {
      ...BARE,
      pattern_gauge: '24 sts and 26 rows = 4"',
      sizes_bust: '52 in',
      checking_bust: '218',
    });
    const [found] = instructed(plan, 'note contradiction');
    const width = found?.wouldAgree.find((q) => q.name === 'finished bust')?.value ?? 0;
    expect(width / 2 / 2.54).toBeCloseTo(36, 6);
    expect(textOf(plan)).toContain('finished bust 72 in');
    expectSound(plan);
  });
});
