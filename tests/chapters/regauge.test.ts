import { describe, expect, it } from 'vitest';
import { askedStops } from '../../src/dialogue/standing.ts';
import { SAMPLE_PIECES } from '../../src/fit/sample.ts';
import { cannotOf, expectSound, flowOf, instructed, planOf, type Typed, textOf } from './scripted.ts';

const NO = "don't know";
const OWN = {
  unit: 'in',
  pattern: 'my own',
  body_made: 'from the hem, in the round',
  sleeve_made: 'from the cuff, in the round',
  pattern_gauge: '20 sts and 28 rows = 4"',
  regauge_gauge: '16 sts and 24 rows = 4"',
  regauge_repeat: 'multiple of 6',
  p_bust: '102',
  p_hem_stitches: '96',
  regauge_cross_back: NO,
  regauge_neck: NO,
  p_wrist: NO,
  p_upper_arm: NO,
  regauge_armhole: NO,
};

const countsOf = (id: string, typed: Typed) =>
  Object.fromEntries(
    instructed(planOf(id, typed), 'compare counts').flatMap((i) => [
      ...i.counts.map((c) => [c.place, c.stitches] as const),
      ...i.rows.map((r) => [`${r.stretch} rows`, r.rows] as const),
    ]),
  );

describe('a size at another gauge', () => {
  it('asks fourteen questions of the owner of a pattern, and four of who takes the sample', () => {
    const flow = flowOf('regauge');
    const asked = (choice: string) =>
      askedStops(flow, { pattern: { given: 'value', value: { kind: 'choice', choice } } }).length;
    expect([asked('own'), asked('sample_round')]).toEqual([14, 4]);
  });

  it('is the pattern itself at the pattern’s own gauge', () => {
    const size = SAMPLE_PIECES.sizes[3];
    const plan = { unit: 'cm', pattern: 'sample in pieces', regauge_size: '4' };
    const counts = countsOf('regauge', { ...plan, regauge_gauge: '22 sts and 30 rows to 10 cm' });
    expect(counts).toMatchObject({ ...size?.counts, 'armhole rows': size?.rows?.armhole });
  });

  it('keeps the widths: 20 stitches for 22 to 10 cm', () => {
    const typed = {
      unit: 'cm',
      pattern: 'sample in pieces',
      regauge_size: '4',
      regauge_gauge: '20 sts and 28 rows to 10 cm',
    };
    const plan = planOf('regauge', typed);
    const text = textOf(plan);
    expect(text).toContain('bust: 102 stitches in place of 112. They measure 50 cm');
    expect(text).toContain('armhole: bind off 5 stitches at each underarm, then decrease 7 stitches');
    expect(text).toContain('armhole: 56 rows in place of 60, for 20 cm.');
    expectSound(plan);
    expectSound(planOf('regauge', { ...typed, unit: 'in' }));
    expect(countsOf('regauge', { ...typed, unit: 'in' })).toEqual(countsOf('regauge', typed));
  });

  it('leaves out what is not known, and says so', () => {
    const plan = planOf('regauge', OWN);
    expect(plan.waiting).toHaveLength(2);
    expect(plan.steps.map((s) => s.piece)).toEqual(['body']);
    expectSound(plan);
  });

  it('waits for a gauge', () => {
    expect(textOf(cannotOf('regauge', { ...OWN, regauge_gauge: NO }))).toContain(
      'Every count waits for your gauge.',
    );
  });
});

describe('other gauges that were published or asked about', () => {
  it('Knitting notes: gauge conversion, 2010: 96 and 102 at 5 to the inch become 78 and 84 at 4, a multiple of 6', () => {
    expect(countsOf('regauge', OWN)).toEqual({ bust: 84, 'body cast-on': 78 });
  });

  it('Knitting notes: gauge conversion, 2010: the other way, 102 at 4 become 126 at 5', () => {
    const other = {
      ...OWN,
      pattern_gauge: '16 sts and 24 rows = 4"',
      regauge_gauge: '20 sts and 28 rows = 4"',
    };
    expect(countsOf('regauge', other)).toMatchObject({ bust: 126 });
  });

  it('Row gauge: why it matters, oliveknits: 48 rows of armhole would be 8.7 in at 22 for 24 rows to 4 in, and 44 make 8 in', () => {
    const typed = {
      ...OWN,
      pattern_gauge: '20 sts and 24 rows = 4"',
      regauge_gauge: '20 sts and 22 rows = 4"',
      regauge_armhole: '48',
    };
    expect(countsOf('regauge', typed)).toMatchObject({ 'armhole rows': 44 });
    expect(textOf(planOf('regauge', typed))).toContain("The pattern's number would be 8.7 in long.");
  });

  it('Altering a pattern for 17 for 18 stitches to 10 cm (Gauge musings after blocking a swatch): 182 measure 107 cm', () => {
    const typed = {
      ...OWN,
      unit: 'cm',
      pattern_gauge: '18 sts and 24 rows to 10 cm',
      regauge_gauge: '17 sts and 24 rows to 10 cm',
      regauge_repeat: '1',
      p_bust: '182',
      p_hem_stitches: '182',
    };
    const [body] = instructed(planOf('regauge', typed), 'compare counts');
    expect(body?.counts[0]?.widthUnchanged).toBeCloseTo(107.06, 2);
  });
});
