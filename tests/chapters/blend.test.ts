import { describe, expect, it } from 'vitest';
import { askedStops } from '../../src/dialogue/standing.ts';
import { SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { knitEdges } from '../simulator/edges.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

const sample = (shoulders: string, bust: string, hip: string, pattern = 'sample in the round') => ({
  unit: 'cm',
  pattern,
  blend_shoulders: shoulders,
  blend_bust: bust,
  blend_hip: hip,
});

/** The sample's own figures, as the owner of a pattern would paste them. */
const OWN = {
  ...sample('3', '5', '6', 'my own'),
  body_made: 'from the hem, in the round',
  pattern_gauge: '22 sts and 30 rows to 10 cm',
  sizes_bust: '72.7 (81.8, 90.9, 100, 109.1, 118.2) cm',
  checking_bust: '160 (180, 200, 220, 240, 260)',
  blend_hem: '160 (180, 200, 220, 240, 260)',
  checking_cross_back: '70 (76, 80, 84, 90, 94)',
  blend_length: '33.3 cm',
  blend_armhole: '19.3 cm',
  blend_bound_off: '8',
};

describe('sizes joined', () => {
  it('asks fourteen questions of the owner of a pattern, and five of who takes the sample', () => {
    const asked = (choice: string) =>
      askedStops(flowOf('blend'), { pattern: { given: 'value', value: { kind: 'choice', choice } } }).length;
    expect([asked('own'), asked('sample_round')]).toEqual([14, 5]);
  });

  it.each([
    ['3', '5', '6', 'sample in the round'],
    ['3', '5', '4', 'sample in the round'],
    ['4', '4', '7', 'sample in pieces'],
    ['2', '4', '4', 'sample in pieces'],
  ])('shoulders %s, bust %s, hips %s, %s: knitted stitch by stitch', (shoulders, bust, hip, pattern) => {
    const plan = planOf('blend', sample(shoulders, bust, hip, pattern));
    const count = (label: string, of: 'bust' | 'cross back') =>
      (SAMPLE_ROUND.sizes.find((s) => s.label === label)?.counts[of] ?? 0) /
        (pattern === 'sample in pieces' && of === 'bust' ? 2 : 1) +
      (pattern === 'sample in pieces' ? 2 : 0);
    const way = pattern === 'sample in pieces' ? 'flat' : 'round';
    const [castOn] = instructed(plan, 'cast on');
    expect(castOn?.stitches).toBe(count(hip, 'bust'));
    const needle = Needle.castOn(castOn?.stitches ?? 0, way);
    for (const i of instructed(plan, 'shape')) expect(knitSection(needle, i.spaced, way)).toEqual([]);
    expect(needle.count).toBe(count(bust, 'bust'));
    const [edges] = instructed(plan, 'shape edges');
    if (edges === undefined) throw new Error('no armhole is shaped');
    const { from, events, rows } = edges.schedule;
    expect(from).toBe(way === 'flat' ? needle.count : needle.count / 2);
    expect(knitEdges(from, events, rows).count).toBe(count(shoulders, 'cross back'));
    expectSound(plan, [shoulders, bust, hip]);
    for (const { workings } of plan.steps)
      expect(workings.filter(({ label }) => /^stitches to (?:gain|lose)$/.test(label)).length).toBeLessThan(
        2,
      );
    expectSound(planOf('blend', { ...sample(shoulders, bust, hip, pattern), unit: 'in' }), [
      shoulders,
      bust,
      hip,
    ]);
  });

  it('says which size is followed where, and that the cap is to be fitted anew', () => {
    const text = textOf(planOf('blend', sample('3', '5', '6')));
    expect(text).toContain('Size 3 at the shoulders, size 5 at the bust and size 6 at the hips');
    expect(text).toContain('The pattern: go from size 6 to size 5 here.');
    expect(text).toContain('fit it anew to the armhole');
  });

  it('takes the size of the bust at the hips where that is not known', () => {
    const plan = planOf('blend', { ...sample('3', '5', '5'), blend_hip: "don't know" });
    expect(instructed(plan, 'shape')).toEqual([]);
    expect(instructed(plan, 'work plain')).toHaveLength(1);
    expectSound(plan, ['3', '5']);
  });

  it('is the same from the rows of a pattern of one’s own', () => {
    const own = planOf('blend', OWN);
    const spaced = (plan: typeof own) => instructed(plan, 'shape').map((i) => i.spaced.shaping);
    expect(spaced(own)).toEqual(spaced(planOf('blend', sample('3', '5', '6'))));
    expect(instructed(own, 'shape edges')[0]?.schedule.to).toBe(80);
    expectSound(own, ['3', '5', '6']);
  });

  it('knits the armholes first where the garment grows downward, and casts on under the arms', () => {
    const plan = planOf('blend', { ...OWN, body_made: 'from the neck, in the round' });
    expect(plan.steps.map((s) => s.where.say)).toEqual([
      'where: armholes',
      'where: underarm to hem',
      'where: all else',
    ]);
    expect(textOf(plan)).toContain('Then cast on 8 stitches at each underarm.');
    const [armhole, body] = instructed(plan, 'shape');
    expect([armhole?.spaced.from, armhole?.spaced.to]).toEqual([80, 104]);
    expect([body?.spaced.from, body?.spaced.to]).toEqual([240, 260]);
    expectSound(plan, ['3', '5', '6']);
  });
});

describe('sizes that cannot be joined', () => {
  it('shoulders wider than the back below them: names the sizes that are wide enough', () => {
    const cannot = cannotOf('blend', sample('10', '1', '1'));
    const text = textOf(cannot);
    expect(text).toContain('The back above the armholes has 104 stitches, and below them only 80 stitches.');
    expect(text).toContain('These sizes have a back that is wide enough at the bust: 4, 5, 6, 7, 8, 9, 10.');
    expectSound(cannot, ['4', '5', '6', '7', '8', '9', '10']);
  });

  it('a size without its counts', () => {
    const cannot = cannotOf('blend', { ...OWN, checking_cross_back: "don't know" });
    expect(textOf(cannot)).toContain('Size 3 lacks the stitches at: cross back.');
  });
});
