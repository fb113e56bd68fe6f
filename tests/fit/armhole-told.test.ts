/** What a plan says of an armhole of another depth, at 22 stitches and 30 rows to 10 cm. */
import { describe, expect, it } from 'vitest';
import { changeDepth, type SetInAsk } from '../../src/fit/armhole-depth.ts';
import { type ArmholePlan, armholePart } from '../../src/fit/armhole-steps.ts';
import type { Step } from '../../src/fit/plan.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const GAUGE = over10cm(22, 30);
/** 12 stitches to lose at each side: 6 bound off, 6 decreased in rows 3 to 13. */
const PIECE = { bust: stitches(104), crossBack: stitches(80), depth: cm(20), gauge: GAUGE };
const SET_IN: SetInAsk = {
  construction: 'set-in',
  front: PIECE,
  back: PIECE,
  sleeve: { upperArm: stitches(72), gauge: GAUGE },
};
const PLAN: ArmholePlan = {
  gauge: GAUGE,
  edge: 2,
  sleeveTold: false,
  printed: cm(20),
  ownSleeve: false,
  neckKnown: true,
  neckTold: false,
  oddFront: false,
  kept: rows(0),
};

/** Back and front of an armhole of such a depth, with a front neck of so many centimetres. */
function steps(depth: number, neck: number, more: Partial<ArmholePlan> = {}): { back: Step; front: Step } {
  const part = armholePart(changeDepth(SET_IN, cm(depth), cm(neck)), { ...PLAN, ...more });
  if ('kind' in part) throw new Error('there is an armhole');
  const [back, front] = part.steps;
  if (back === undefined || front === undefined) throw new Error('back and front are told');
  return { back, front };
}

const edgesOf = (one: Step) =>
  one.instead.flatMap((what) => (what.do === 'shape edges' ? [what.schedule] : []))[0];
const said = (one: Step) => one.instead.flatMap((what) => (what.do === 'say' ? [what.phrase.say] : []));
/** Notes with the figures in them. */
const notes = (one: Step) =>
  one.notes.map(({ say, with: gaps }) =>
    [say, ...Object.values(gaps).map((gap) => (typeof gap === 'string' ? gap : gap.value))].join(' '),
  );

describe('the back of a deeper armhole', () => {
  it('says by how many rows the shoulders come later, or earlier', () => {
    // 20 cm are 60 rows, 22 cm 66, 18 cm 54.
    expect(notes(steps(22, 8).back)[0]).toBe('note: shoulders come later 6');
    expect(notes(steps(18, 8).back)[0]).toBe('note: shoulders come earlier 6');
    expect(notes(steps(20, 8).back)).toEqual(['note: shaping is usual']);
  });

  it('leaves the rows to the short rows of its neck that these take', () => {
    expect(edgesOf(steps(22, 8).back)).toMatchObject({ rows: 66, from: 104, to: 80 });
    expect(edgesOf(steps(22, 8, { kept: rows(4) }).back)).toMatchObject({ rows: 62, to: 80 });
  });
});

describe('its front', () => {
  it('is told up to the row in which the neck begins, where all shaping is done by then', () => {
    // 66 rows less the 24 of a neck of 8 cm.
    const { front } = steps(22, 8);
    expect(edgesOf(front)).toMatchObject({ rows: 42, to: 80 });
    expect(said(front)).toEqual(['do: like the back', 'do: front neck begins above the underarm']);
    expect(front.notes).toEqual([]);
  });

  it('is told to its end where the neck begins sooner, with the last row that shapes', () => {
    // A neck of 20 cm has 60 rows and begins after 6; row 13 is the last to decrease.
    const { front } = steps(22, 20);
    expect(edgesOf(front)).toMatchObject({ rows: 66, to: 80 });
    expect(notes(front)).toEqual(['note: neck begins within the armhole 6 13']);
    expect(told(front.workings)).toContain('last shaping row of the armhole: a = 13 rows');
  });

  it('is told as far as the neck that is told itself, with what it has lost by then', () => {
    // By row 6: 12 bound off, and two decreased in rows 3 and 5 each.
    const { front } = steps(22, 20, { neckTold: true });
    expect(edgesOf(front)).toMatchObject({ rows: 6, to: 88 });
    expect(edgesOf(front)?.events.map(({ row }) => row)).toEqual([1, 2, 3, 5]);
    expect(front.notes).toEqual([]);
    expect(told(front.workings).filter((line) => line.startsWith('last shaping row'))).toEqual([]);
    // Both bind-offs lie in the two rows before a neck of 64.
    expect(edgesOf(steps(22, 64 / 3, { neckTold: true }).front)?.events.map(({ row }) => row)).toEqual([
      1, 2,
    ]);
  });

  it('is told to its end where nobody knows the neck', () => {
    const { front } = steps(22, 20, { neckKnown: false });
    expect(edgesOf(front)).toMatchObject({ rows: 66, to: 80 });
    expect(said(front)).toEqual(['do: like the back']);
    expect(front.notes).toEqual([]);
    expect(edgesOf(steps(22, 8, { neckKnown: false }).front)?.rows).toBe(66);
  });

  it('has the odd stitch of a body in the round', () => {
    const { front } = steps(22, 8, { oddFront: true });
    expect(front.instead[0]).toMatchObject({
      phrase: {
        say: 'do: one stitch more in front',
        with: { front: { value: 105, unit: 'stitches' }, back: { value: 104, unit: 'stitches' } },
      },
    });
    expect(told(front.workings).slice(0, 2)).toEqual([
      'stitches of the front: a = 105 stitches',
      'stitches of the back: a = 104 stitches',
    ]);
  });
});

describe('its cap', () => {
  const capOf = (more: Partial<ArmholePlan>) => {
    const part = armholePart(changeDepth(SET_IN, cm(22), cm(8)), { ...PLAN, ...more });
    if ('kind' in part) throw new Error('there is an armhole');
    return part;
  };

  it('is drawn beside the pattern’s where the sleeve is the pattern’s', () => {
    expect(capOf({}).steps[2]?.shaped).toMatchObject({ shape: 'cap', before: { upperArm: 72 } });
    expect(capOf({ ownSleeve: true }).steps[2]?.shaped).toMatchObject({ shape: 'cap', before: null });
  });

  it('is measured when finished, as the armhole is beside the pattern’s', () => {
    const { finished } = capOf({});
    expect(finished.map(({ name, pattern }) => [name, pattern])).toEqual([
      ['armhole depth', 20],
      ['height of the cap', null],
    ]);
    expect(finished[0]?.range.expected).toBe(22);
  });
});
