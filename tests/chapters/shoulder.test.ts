/** The shoulder chapter: what is typed, the steps of the slope, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitEdges } from '../simulator/edges.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const SHORT_ROWS: Typed = {
  unit: 'cm',
  body_made: 'from the hem, in the round',
  gauge: '20 sts and 30 rows to 10 cm',
  p_shoulder: '23',
  p_back_neck: '29',
  shoulder_how: 'short rows',
  shoulder_drop: '2 cm',
};
const BIND_OFFS: Typed = { ...SHORT_ROWS, body_made: 'from the hem, in pieces', shoulder_how: 'bind off' };
const DOWN: Typed = { ...SHORT_ROWS, body_made: 'from the neck, in pieces' };

describe('a sloped shoulder', () => {
  it('asks seven questions', () => {
    expect(Object.keys(SHORT_ROWS)).toHaveLength(7);
    expect(planOf('shoulder', SHORT_ROWS).steps).toHaveLength(3);
  });

  // 'A Question Answered?' (a knitting weblog, 2013): 75 stitches in steps of 7, 8 and 8 around 29 for the neck. Ours puts
  // the larger steps outermost: 8, 8 and 7. 2 cm at 3 rows to the cm are the 6 rows of three steps; the gauge is ours.
  it('has three steps of 8, 8 and 7 on 75 stitches, by short rows as knitted', () => {
    const [both, right, left] = instructed(planOf('shoulder', SHORT_ROWS), 'short rows');
    if (both === undefined || right === undefined || left === undefined) throw new Error('three wedges');
    expect(both.wedge.turns.map((turn) => turn.stitches)).toEqual([8, 8, 16, 16]);
    const heights = (needle: number, wedge: typeof both.wedge) =>
      knitWedge(Needle.castOn(needle, 'flat'), wedge).heights;
    const of = (row: readonly number[], stitches: readonly number[]) => stitches.map((s) => row[s]);
    expect(of(heights(75, both.wedge), [0, 8, 16, 37, 58, 66, 74])).toEqual([1, 3, 5, 5, 5, 3, 1]);
    // A wedge at the right edge is knitted after one plain row.
    expect(of(heights(23, right.wedge), [0, 8, 16, 22])).toEqual([2, 4, 6, 6]);
    expect(of(heights(23, left.wedge), [22, 14, 6, 0])).toEqual([1, 3, 5, 5]);
  });

  it('binds off in the same steps, both shoulders down to the neck', () => {
    const schedules = instructed(planOf('shoulder', BIND_OFFS), 'shape edges').map((i) => i.schedule);
    const left = schedules.map(({ from, events, rows }) => knitEdges(from, events, rows).count);
    expect(left).toEqual([29, 0, 0]);
    expect(schedules.map((s) => s.events.map((e) => -e.change))).toEqual([
      [8, 8, 8, 8, 7, 7],
      [8, 8, 7],
      [8, 8, 7],
    ]);
    expect(textOf(planOf('shoulder', BIND_OFFS))).toContain(
      'Bind off 8 stitches at the beginning of each row from row 1 to row 4. Bind off 7 stitches at the beginning of row 5 and of row 6.',
    );
  });

  // 'Shoulder Slope, Fitting part 2' (a knitting weblog, 2013): 0.75 in at 7 rows to the inch are 6 rows in 3 steps.
  it('has the rows of a published slope, from inches', () => {
    const published = {
      ...BIND_OFFS,
      unit: 'in',
      gauge: '20 sts and 28 rows to 4 in',
      p_shoulder: '16',
      shoulder_drop: '0.75',
    };
    const [back] = instructed(planOf('shoulder', published), 'shape edges');
    expect(back?.schedule.rows).toBe(6);
    expectSound(planOf('shoulder', published));
  });

  it('goes by short rows where the shoulder is knitted first, whatever was chosen', () => {
    const plan = planOf('shoulder', { ...DOWN, shoulder_how: 'bind off' });
    expect(instructed(plan, 'short rows').map((i) => i.wedge.order)).toEqual(Array(3).fill('lengthening'));
    expect(textOf(plan)).toContain('A shoulder that is knitted first has nothing to bind off');
  });

  it('plans each shoulder by itself where the back neck is not known', () => {
    const plan = planOf('shoulder', { ...SHORT_ROWS, p_back_neck: "I don't know" });
    expect(plan.steps.map((s) => s.piece)).toEqual(['front', 'front']);
    expect(plan.assumed).toHaveLength(1);
  });

  it.each([
    ['12 cm', '4', 'The slope needs 18 steps, and the shoulder has 4 stitches'],
    ['0.5 cm', '23', '0.5 cm is too little for a slope'],
  ])('says why %s on %s stitches is no slope, and what is', (shoulder_drop, p_shoulder, words) => {
    const plan = planOf('shoulder', { ...SHORT_ROWS, shoulder_drop, p_shoulder });
    expect(textOf(plan)).toContain(words);
    expect(instructed(plan, 'choose one')[0]?.ways.length).toBeGreaterThan(0);
    expectSound(plan);
  });

  it.each([SHORT_ROWS, BIND_OFFS, DOWN, { ...SHORT_ROWS, unit: 'in' }])(
    'states no number that its workings do not hold: %o',
    (typed) => {
      expectSound(planOf('shoulder', typed));
    },
  );
});
