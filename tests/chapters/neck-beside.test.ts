/** A front neck beside the pattern's own armhole: figures worked out by hand, and the front knitted from the underarm. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import { knitEdges } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';
import { expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

const OWN: Typed = {
  unit: 'cm',
  pattern: 'my own',
  swatch_made: 'flat',
  swatch_washed: 'yes',
  swatch_stitches: '22 sts over 10 cm',
  swatch_stitches_2: 'skip',
  swatch_stitches_3: 'skip',
  swatch_rows: '30 rows over 10 cm',
  swatch_rows_2: 'skip',
  pattern_gauge: '22 sts and 30 rows over 10 cm',
  body_made: 'from the hem, in pieces',
  sizes_bust: '91 (100, 109) cm',
  table: 'women',
  bust: '96.5 cm',
  upper_bust: '91 cm',
  fit: 'classic',
  size: '2',
  wishes: 'front neck',
  checking_joined: 'set in',
  p_cross: '82',
  p_neck_stitches: '38',
  p_neck_depth: '8 cm',
  neck_shape: 'v neck',
  neck_width: '18 cm',
  neck_depth: '16 cm',
  neck_beside: 'no',
  p_armhole: '20 cm',
  p_back: '110',
  p_bind_off: '6',
  p_armhole_pace: 'every right-side row',
};

/** Rows of the pattern's armhole in which a stitch is lost at both edges: 8 of them after the bind-offs, to 82 stitches. */
const DECREASES = [3, 5, 7, 9, 11, 13, 15, 17];

/** The front from the underarm: the pattern's armhole up to the neck, then what the plan says. The stitches of both shoulders. */
function shoulders(plan: Plan, begins: number, decreases = DECREASES): number[] {
  const front = Needle.castOn(110, 'flat');
  for (let row = 1; row <= begins; row++) {
    if (row <= 2) front.bindOff(6).finish();
    else if (decreases.includes(row)) front.shaped({ start: -1, end: -1 });
    else front.finish();
  }
  const [row] = instructed(plan, 'divide');
  const [last, first] = instructed(plan, 'shape edges').map((i) => i.schedule);
  if (row === undefined || last === undefined || first === undefined) throw new Error(textOf(plan));
  expect(row.first + row.bindOff + row.last).toBe(front.count);
  expect([last.from, first.from]).toEqual([row.last - row.atEdges, row.first - row.atEdges]);
  return [last, first].map(({ from, events, rows }) => knitEdges(from, events, rows).count);
}

const notesOf = (plan: Plan) => plan.steps.flatMap((step) => step.notes.map(({ say }) => say));

describe('a front neck beside an armhole that is not changed', () => {
  // 20 cm are 60 rows, 16 cm are 48: after row 12 five of the eight decreases are done, 110 - 12 - 10 = 88.
  it('that begins before the last armhole decrease shapes both edges in the same rows', () => {
    const plan = planOf('whole', OWN);
    expect(instructed(plan, 'divide')).toEqual([
      { do: 'divide', first: 44, bindOff: 0, last: 44, atEdges: 1 },
    ]);
    const text = textOf(plan);
    expect(text).toContain("The neck begins 12 rows above the pattern's first armhole bind-off");
    expect(text).toContain('you have 88 stitches. Its last decrease is in row 17 of the armhole.');
    // 18 cm are 40 of 82 stitches.
    expect(shoulders(plan, 12)).toEqual([21, 21]);
    const [last] = instructed(plan, 'shape edges').map((i) => i.schedule);
    const atArmhole = last?.events.filter(({ edge }) => edge === 'left').map(({ row }) => row);
    // Rows 13, 15 and 17 of the armhole are rows 1, 3 and 5 of the neck; row 1 is the one that divides.
    expect(atArmhole).toEqual([3, 5]);
    expectSound(plan, ['1', '2', '3']);
  });

  // Every 4th row: 3, 7, 11 and so on up to row 31; after row 12 three are done.
  it('follows the pace of the pattern', () => {
    const plan = planOf('whole', { ...OWN, p_armhole_pace: 'every 4th row' });
    const every4th = DECREASES.map((_, i) => 3 + 4 * i);
    expect(shoulders(plan, 12, every4th)).toEqual([21, 21]);
    expect(textOf(plan)).toContain('you have 92 stitches. Its last decrease is in row 31 of the armhole.');
  });

  it('is told by its own rows where the armhole is straight there', () => {
    const plan = planOf('whole', { ...OWN, neck_depth: '10 cm', neck_beside: 'yes' });
    expect(instructed(plan, 'divide')).toEqual([
      { do: 'divide', first: 41, bindOff: 0, last: 41, atEdges: 0 },
    ]);
    expect(notesOf(plan)).not.toContain('note: armhole may go on beside the neck');
  });

  it('is told by its own rows where its figures show that it begins above all shaping', () => {
    const plan = planOf('whole', { ...OWN, neck_depth: '10 cm' });
    expect(instructed(plan, 'divide')).toEqual([
      { do: 'divide', first: 41, bindOff: 0, last: 41, atEdges: 0 },
    ]);
  });

  it.each([
    ['the knitter does not know', { neck_beside: "I don't know" }],
    ['the pattern decreases in a way of its own', { p_armhole_pace: 'in another way' }],
    ['its depth is not known', { p_armhole: "I don't know" }],
  ])('says for which armhole its counts hold where %s', (_, unsure) => {
    const plan = planOf('whole', { ...OWN, ...unsure });
    expect(notesOf(plan)).toContain('note: armhole may go on beside the neck');
    expectSound(plan, ['1', '2', '3']);
  });

  it('is refused in the bind-offs at the underarm, with the deepest that can be had', () => {
    const plan = planOf('whole', { ...OWN, neck_depth: '20 cm' });
    // All 60 rows but the two of the bind-offs: 58 rows are 19.3 cm.
    expect(textOf(plan)).toContain('19.3 cm');
    expect(instructed(plan, 'divide')).toEqual([]);
    expectSound(plan, ['1', '2', '3']);
  });

  it.each([
    ['stitches that are lost on one side alone', { p_back: '111' }, '29 stitches cannot be lost alike'],
    ['a bind-off of more than there is to lose', { p_bind_off: '16' }, 'only 14 stitches are to be lost'],
    [
      'decreases past the shoulder',
      { p_armhole: '6 cm', neck_depth: '5 cm', neck_shape: 'round', p_armhole_pace: 'every 4th row' },
      'in row 31',
    ],
  ])('asks to look again at a pattern with %s', (_, wrong, words) => {
    const plan = planOf('whole', { ...OWN, ...wrong });
    expect(textOf(plan)).toContain(words);
    expect(textOf(plan)).toContain('Look at both figures once more.');
    expectSound(plan, ['1', '2', '3']);
  });

  it('says the same beside each way out of a neck that cannot be had', () => {
    const plan = planOf('whole', { ...OWN, neck_width: '40 cm' });
    expect(instructed(plan, 'choose one')).toHaveLength(1);
    expect(notesOf(plan)).toContain('note: armhole may go on beside the neck');
  });

  it('takes about an inch as bound off where that is not known', () => {
    // 2.5 cm are 5.5 stitches, to 6.
    expect(shoulders(planOf('whole', { ...OWN, p_bind_off: "I don't know" }), 12)).toEqual([21, 21]);
  });

  // Size 4 of the sample: 6 bound off and 7 decreased at each side, in rows 3 to 15 of 60.
  it('knows the armhole of the sample, and asks nothing about it', () => {
    const { unit, swatch_made, swatch_washed, swatch_stitches, swatch_rows, table, bust, fit } = OWN;
    const plan = planOf('whole', {
      unit: unit ?? 'cm',
      pattern: 'Pennywhin, in pieces',
      swatch_made: swatch_made ?? 'flat',
      swatch_washed: swatch_washed ?? 'yes',
      swatch_stitches: swatch_stitches ?? '',
      swatch_stitches_2: 'skip',
      swatch_stitches_3: 'skip',
      swatch_rows: swatch_rows ?? '',
      swatch_rows_2: 'skip',
      table: table ?? 'women',
      bust: bust ?? '',
      upper_bust: '91 cm',
      fit: fit ?? 'classic',
      size: '4',
      wishes: 'front neck',
      neck_width: '18 cm',
      neck_depth: '16 cm',
    });
    const [row] = instructed(plan, 'divide');
    // 112 with its edge stitches; 6 bound off at each side, 5 of 7 decreases done after row 12: 90.
    expect((row?.first ?? 0) + (row?.bindOff ?? 0) + (row?.last ?? 0)).toBe(90);
    expect(row?.atEdges).toBe(1);
    expectSound(plan, ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10']);
  });
});
