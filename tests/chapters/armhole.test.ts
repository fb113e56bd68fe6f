/** The armhole chapter: what is typed, the rows of armhole and sleeve top, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitEdges } from '../simulator/edges.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const SET_IN: Typed = {
  unit: 'cm',
  armhole_top: 'set in',
  gauge: '22 sts and 30 rows to 10 cm',
  p_armhole: '20 cm',
  armhole_wanted: '22 cm',
  p_neck_depth: '8 cm',
  p_back: '112',
  p_cross: '84',
  p_bind_off: '6',
  p_upper_arm: '74',
};
const DROP: Typed = {
  unit: 'cm',
  armhole_top: 'drop shoulder',
  gauge: '22 sts and 30 rows to 10 cm',
  p_armhole: '18 cm',
  armhole_wanted: '20 cm',
  p_neck_depth: '8 cm',
  back_width: '55 cm',
  cross_back: '38 cm',
  upper_arm: '30 cm',
  fit: 'classic',
};

describe('armholes of another depth', () => {
  it('tell the rows of the pattern by its own depth, where its armhole has another shape than the usual one', () => {
    const plan = planOf('armhole', { ...SET_IN, p_armhole: '12 cm' });
    expect(textOf(plan)).toContain('its armhole is 12 cm deep; at your gauge that is 36 rows');
    expect(textOf(plan)).toContain('come 30 rows later than in the pattern');
    expect(plan.steps.find((s) => s.shaped !== null)?.shaped).toMatchObject({ before: null });
    expectSound(plan);
  });

  it('ask ten questions either way', () => {
    expect([Object.keys(SET_IN).length, Object.keys(DROP).length]).toEqual([10, 10]);
    expect(planOf('armhole', SET_IN).steps.map((s) => s.piece)).toEqual(['back', 'front', 'sleeve']);
  });

  it('are knitted to the stitches across, and the cap to its top', () => {
    const plan = planOf('armhole', SET_IN);
    const schedules = instructed(plan, 'shape edges').map((i) => i.schedule);
    expect(schedules.map(({ from, events, rows }) => knitEdges(from, events, rows).count)).toEqual([
      84,
      84,
      instructed(plan, 'bind off')[0]?.stitches,
    ]);
    expect(schedules.map((s) => s.rows)).toEqual([66, 42, 46]);
  });

  it('move shoulders and front neck by as many rows: 22 cm for 20 are 6 rows', () => {
    const text = textOf(planOf('armhole', SET_IN));
    expect(text).toContain('Shoulders and front neck come 6 rows later than in the pattern.');
    expect(text).toContain('The front neck begins 42 rows above the first bind-off.');
  });

  it('have a cap whose edge is as long as both armhole edges, to a row', () => {
    const plan = planOf('armhole', SET_IN);
    const check = plan.steps.at(-1)?.check?.with;
    const [edge, wanted] = [check?.edge, check?.wanted];
    if (typeof edge !== 'object' || typeof wanted !== 'object') throw new Error('two lengths');
    expect(Math.abs(edge.value - wanted.value)).toBeLessThanOrEqual(1 / 3);
  });

  it('are the same to the row from inches', () => {
    const inches = {
      ...SET_IN,
      unit: 'in',
      p_armhole: '7.874',
      armhole_wanted: '8.6614',
      p_neck_depth: '3.1496',
    };
    const schedules = (typed: Typed) => instructed(planOf('armhole', typed), 'shape edges');
    expect(schedules(inches).map((i) => i.schedule.events)).toEqual(
      schedules(SET_IN).map((i) => i.schedule.events),
    );
  });

  it('say how the count across must differ where both sides cannot be alike', () => {
    const plan = planOf('armhole', { ...SET_IN, p_cross: '85' });
    expect(textOf(plan)).toContain('27 stitches cannot be lost alike at both sides');
    const [choice] = instructed(plan, 'choose one');
    const ends = choice?.ways.flatMap((w) =>
      w.instead.flatMap((i) =>
        i.do === 'shape edges' ? [knitEdges(i.schedule.from, i.schedule.events, i.schedule.rows).count] : [],
      ),
    );
    expect(ends).toEqual([84, 86]);
    expectSound(plan);
  });

  it('say why a sleeve is too wide for its armholes, and what would fit', () => {
    const plan = planOf('armhole', { ...SET_IN, armhole_wanted: '18 cm', p_upper_arm: '120' });
    expect(textOf(plan)).toContain('the sleeve is too wide for them');
    expect(instructed(plan, 'choose one')[0]?.ways.length).toBeGreaterThan(1);
    expectSound(plan);
  });

  it('are not planned where the front neck would begin below the underarm', () => {
    const cannot = cannotOf('armhole', { ...SET_IN, p_neck_depth: '30 cm' });
    expect(textOf(cannot)).toContain('it would begin below the underarm');
    expectSound(cannot);
  });
});

describe('a drop shoulder', () => {
  // 'How to shape armholes in knitting' (The Knitter masterclass, gathered.how, 2020): 20 cm at 22 stitches to 10 cm: 88.
  it('has a sleeve top twice as wide as the armhole is deep', () => {
    const text = textOf(planOf('armhole', DROP));
    expect(text).toContain('End the sleeve with 88 stitches: 40 cm all along the armhole.');
    expect(text).toContain('straight up from the markers to the shoulder it is 20 cm.');
    expect(text).toContain('The shoulder hangs 8.5 cm over the arm.');
    expect(text).toContain('A sleeve with a seam has one more at each edge for it.');
  });

  it('has a longer sleeve where the body is narrower than it is across the back: 36 cm of 38 end 1 cm before the arm', () => {
    const plan = planOf('armhole', { ...DROP, back_width: '36 cm' });
    expect(textOf(plan)).toContain(
      'The shoulder ends 1 cm before the arm begins. Make the sleeve longer than the arm by that.',
    );
    expectSound(plan);
  });

  // A question met in public knitting talk, answered by hand: at 4 stitches to the inch 9.5 in take 76 stitches.
  it('holds in inches too', () => {
    const inches = {
      ...DROP,
      unit: 'in',
      gauge: '16 sts and 32 rows to 4 in',
      p_armhole: '8',
      armhole_wanted: '9.5',
      p_neck_depth: '3',
      back_width: '24',
      cross_back: '16',
      upper_arm: '12',
    };
    expect(textOf(planOf('armhole', inches))).toContain('End the sleeve with 76 stitches: 19 in');
    expectSound(planOf('armhole', inches));
  });

  it('is made deeper where the arm needs more than twice the armhole', () => {
    const plan = planOf('armhole', { ...DROP, armhole_wanted: '14 cm', upper_arm: '36 cm' });
    expect(textOf(plan)).toContain('A sleeve top along this armhole is 28.2 cm wide, and the arm needs');
    expect(instructed(plan, 'choose one')[0]?.ways).toHaveLength(1);
    expectSound(plan);
  });
});

it.each([
  SET_IN,
  DROP,
  { ...SET_IN, unit: 'in' },
  { ...SET_IN, p_neck_depth: "I don't know", p_bind_off: "I don't know" },
])('a plan for armholes states no number that its workings do not hold: %o', (typed) => {
  expectSound(planOf('armhole', typed));
});
