import { describe, expect, it } from 'vitest';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

const band = (rows: string, fabric: string, stitches: string, multiple = '1', unit = 'in') => ({
  unit,
  pickup_rows: rows,
  swatch_rows: fabric,
  pickup_band: stitches,
  pickup_multiple: multiple,
});

/** Stitches and rows that a picked-up edge comes to when it is done as written. */
function done(plan: ReturnType<typeof planOf>) {
  const [picked] = instructed(plan, 'pick up');
  if (picked === undefined) throw new Error('nothing is picked up');
  const each = { 'a row skipped': [0, 1], 'a stitch more': [1, 0], nothing: [0, 0] } as const;
  const [more, skipped] = each[picked.between];
  return picked.runs.reduce(
    (sum, { pick, times }) => ({
      stitches: sum.stitches + times * (pick + more),
      rows: sum.rows + times * (pick + skipped),
    }),
    { stitches: 0, rows: 0 },
  );
}

describe('picking up along an edge', () => {
  it('asks five questions', () => {
    expect(flowOf('pickup').stops).toHaveLength(5);
  });

  // biome-ignore format: one example stands below another
  it.each([
    { source: 'Picking Up Stitches, menwhoknit: 120 rows at 16 and 24 to 4 in are 80 stitches, 2 of 3', typed: band('120', '24 rows to 4 in', '16 sts = 4"'), stitches: 80, rows: 120, ratio: [2, 3] },
    { source: 'a question met in knitting talk: 11.5 in at 22 stitches to 4 in want 63', typed: band('80', '80 rows to 11.5 in', '22 sts = 4"'), stitches: 63, rows: 80, ratio: [4, 5] },
    { source: 'twice as many stitches as rows: a stitch more between rows', typed: band('30', '12 rows to 4 in', '16 sts = 4"'), stitches: 40, rows: 30, ratio: [4, 3] },
    { source: 'a rib of a multiple of 4 plus 2', typed: band('88', '28 rows to 4 in', '22 sts = 4"', '4 + 2'), stitches: 70, rows: 88, ratio: [4, 5] },
  ])('$source', ({ typed, stitches, rows, ratio }) => {
    const plan = planOf('pickup', typed);
    const [picked] = instructed(plan, 'pick up');
    expect(picked?.stitches).toBe(stitches);
    expect([picked?.ratio.stitches, picked?.ratio.rows]).toEqual(ratio);
    expect(done(plan)).toEqual({ stitches, rows });
    expectSound(plan);
    expectSound(planOf('pickup', { ...typed, unit: 'cm' }));
  });

  it('says in words how to spread them', () => {
    const text = textOf(planOf('pickup', band('120', '24 rows to 4 in', '16 sts = 4"')));
    expect(text).toContain(
      'Pick up 80 stitches along 120 rows, about 2 in every 3 rows. Spread them so: (pick up 2, one in each row, then skip a row) 40 times.',
    );
  });
});

const buttons = (length: string, number: string, ends: string, hole: string, along = 'stitches') => ({
  buttons_along: along,
  buttons_length: length,
  buttons_number: number,
  buttons_ends: ends,
  buttons_hole: hole,
});

describe('buttonholes along a band', () => {
  it('asks five questions and no unit', () => {
    expect(flowOf('buttons').stops).toHaveLength(5);
  });

  it('fill the band to the stitch, the gaps equal within one', () => {
    const plan = planOf('buttons', buttons('98 sts', '7 buttons', '4', '2'));
    const [placed] = instructed(plan, 'place buttonholes');
    const { holes = [], gaps = [] } = placed ?? {};
    expect(holes[0]?.from).toBe(5);
    expect(holes.at(-1)?.to).toBe(98 - 4);
    expect(4 + 4 + 7 * 2 + gaps.reduce((a, b) => a + b, 0)).toBe(98);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
    expect(textOf(plan)).toContain('Work the buttonholes over stitches 5 to 6, 19 to 20,');
    expectSound(plan);
  });

  it('Placing buttons and buttonholes by rows, slippedstitches, 2016: 3 buttons, 4 rows at each end, 11 rows between their middles', () => {
    // 9 rows to the inch: 4.5 rows to the first, 11.25 between two, cut to whole rows as it does.
    const plan = planOf('buttons', buttons('31 rows', '3', '4', '1', 'rows'));
    const [placed] = instructed(plan, 'place buttonholes');
    expect(placed?.holes.map((h) => h.from)).toEqual([5, 16, 27]);
    expect(textOf(plan)).toContain('Work the buttonholes over rows 5, 16 and 27');
    expectSound(plan);
  });

  it('takes a single button', () => {
    const plan = planOf('buttons', buttons('10', '1', '3', '2'));
    expect(textOf(plan)).toContain('Work the buttonhole over stitches 4 to 5');
    expectSound(plan);
  });

  it('says how many go in where the band is too short', () => {
    const cannot = cannotOf('buttons', buttons('20', '7', '4', '2'));
    const text = textOf(cannot);
    expect(text).toContain(
      'The band has 20 stitches, and 7 buttonholes with their ends and a gap between each two need at least 28 stitches.',
    );
    expect(text).toContain('At most 4 go in.');
    expectSound(cannot);
    expect(planOf('buttons', buttons('20', '4', '4', '2')).steps).toHaveLength(1);
  });
});
