/** The front-neck chapter: what is typed, the rows that come of it, and their knitting. */
import { describe, expect, it } from 'vitest';
import { knitEdges } from '../simulator/edges.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const SHAPED: Typed = {
  unit: 'cm',
  neck_how: 'shaped on the front',
  gauge: '20 sts and 28 rows to 10 cm',
  p_cross: '72',
  p_neck_stitches: '28',
  p_neck_depth: '8 cm',
  neck_shape: 'round',
  neck_width: '15 cm',
  neck_depth: '10 cm',
};
const YOKE: Typed = {
  unit: 'cm',
  neck_how: 'in a yoke',
  gauge: '20 sts and 25 rows to 10 cm',
  body_made: 'from the neck, in the round',
  neck_needle: '120',
  neck_lower: '4 cm',
  neck_middle: '30 cm',
  neck_base: '44 cm',
  neck_after: '0',
};

/** Knits the divided row and both sides as they are written; the stitches left at either shoulder. */
function shoulders(typed: Typed): number[] {
  const plan = planOf('front_neck', typed);
  const [row] = instructed(plan, 'divide');
  const [last, first] = instructed(plan, 'shape edges').map((i) => i.schedule);
  if (row === undefined || last === undefined || first === undefined) throw new Error(textOf(plan));
  const front = Needle.castOn(row.first + row.bindOff + row.last, 'flat');
  front.knit(row.first).bindOff(row.bindOff).finish();
  expect(front.count).toBe(row.first + row.last);
  expect([first.from, last.from]).toEqual([row.first, row.last]);
  return [last, first].map(({ from, events, rows }) => knitEdges(from, events, rows).count);
}

describe('a V neck', () => {
  const V: Typed = { ...SHAPED, neck_shape: 'v neck', neck_depth: '20 cm' };

  it('divides at its point and decreases on right-side rows, spread from there to the shoulder', () => {
    const plan = planOf('front_neck', V);
    expect(instructed(plan, 'divide')).toEqual([
      { do: 'divide', first: 36, bindOff: 0, last: 36, atEdges: 0 },
    ]);
    const [last] = instructed(plan, 'shape edges').map((i) => i.schedule);
    // 15 cm are 30 stitches, 15 at each side; 20 cm are 56 rows, of which 54 come after the row back.
    const rows = last?.events.map(({ row }) => row) ?? [];
    expect(rows).toHaveLength(15);
    expect(rows.every((row) => row % 2 === 1)).toBe(true);
    const apart = rows.slice(1).map((row, i) => row - (rows[i] ?? 0));
    expect(Math.max(...apart) - Math.min(...apart)).toBeLessThanOrEqual(2);
    expect(rows.at(-1)).toBeGreaterThan(50);
    expectSound(plan);
  });

  it('keeps the shoulders of a round neck of the same width', () => {
    expect(shoulders(V)).toEqual(shoulders(SHAPED));
  });

  it('has a stitch at its point where the count across is odd', () => {
    const plan = planOf('front_neck', { ...V, p_cross: '73' });
    expect(instructed(plan, 'divide')).toEqual([
      { do: 'divide', first: 36, bindOff: 1, last: 36, atEdges: 0 },
    ]);
    expect(textOf(plan)).toContain('bind off the next one, and work the last 36');
    expect(shoulders({ ...V, p_cross: '73' })).toEqual([21, 21]);
    expectSound(plan);
  });

  it('says nothing of the neckband of a pattern whose outline is not known', () => {
    expect(textOf(planOf('front_neck', V))).not.toMatch(/neck edge of the front is/);
  });
});

describe('a front neck shaped anew', () => {
  it('asks nine questions, nine in a yoke', () => {
    expect([Object.keys(SHAPED).length, Object.keys(YOKE).length]).toEqual([9, 9]);
    expect(planOf('front_neck', SHAPED).steps).toHaveLength(3);
  });

  it('ends with as many stitches at both shoulders: 15 cm are 30 of 72', () => {
    expect(shoulders(SHAPED)).toEqual([21, 21]);
  });

  it('begins 28 rows before the shoulder, 6 more than the 22 of the pattern', () => {
    const text = textOf(planOf('front_neck', SHAPED));
    expect(text).toContain('Begin the neck 28 rows (10 cm) before the shoulder.');
    expect(text).toContain('The neck begins 6 rows earlier than in the pattern.');
    expect(text).toContain('Each shoulder has 1 stitch fewer than in the pattern.');
  });

  // A question met in public knitting talk, answered by hand: 72 across, shoulders of 22 leave a neck of 28.
  it('leaves the shoulders of the pattern where the neck is as wide', () => {
    const same = { ...SHAPED, neck_width: '14 cm', neck_depth: '8 cm' };
    expect(shoulders(same)).toEqual([22, 22]);
    expect(textOf(planOf('front_neck', same))).not.toContain('than in the pattern');
  });

  it('is the same to the row from inches', () => {
    const inches = {
      ...SHAPED,
      unit: 'in',
      p_neck_depth: '3.1496',
      neck_width: '5.9055',
      neck_depth: '3.937',
    };
    const schedules = (typed: Typed) => instructed(planOf('front_neck', typed), 'shape edges');
    expect(schedules(inches)).toEqual(schedules(SHAPED));
  });

  it('takes the figures of the pattern where none is wanted, and waits where there are none', () => {
    const unknown = { ...SHAPED, neck_width: "I don't know", neck_depth: "I don't know" };
    expect(shoulders(unknown)).toEqual([22, 22]);
    const nothing = { ...unknown, p_neck_stitches: "I don't know", p_neck_depth: "I don't know" };
    expect(textOf(cannotOf('front_neck', nothing))).toContain('Neck width: The neck waits for it.');
  });

  it('offers a narrower neck where no shoulders are left', () => {
    const plan = planOf('front_neck', { ...SHAPED, neck_width: '40 cm' });
    expect(textOf(plan)).toContain('A neck of 80 stitches leaves no shoulders on 72 stitches');
    const [choice] = instructed(plan, 'choose one');
    for (const way of choice?.ways ?? []) {
      for (const i of way.instead)
        if (i.do === 'shape edges')
          expect(knitEdges(i.schedule.from, i.schedule.events, i.schedule.rows).count).toBe(i.schedule.to);
    }
    expectSound(plan);
  });

  it('in a yoke is the wedge at the back, seen from in front', () => {
    const [found] = instructed(planOf('front_neck', YOKE), 'short rows');
    if (found === undefined) throw new Error('short rows');
    expect(found.wedge.purpose).toBe('lower front neck');
    const { heights } = knitWedge(Needle.castOn(120, 'round'), found.wedge);
    expect((heights[0] ?? 0) - (heights[60] ?? 0)).toBe(10);
  });

  it.each([SHAPED, { ...SHAPED, unit: 'in' }, { ...SHAPED, neck_width: '12 cm', neck_depth: '5 cm' }, YOKE])(
    'states no number that its workings do not hold: %o',
    (typed) => {
      expectSound(planOf('front_neck', typed));
    },
  );
});
