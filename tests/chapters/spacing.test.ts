import { describe, expect, it } from 'vitest';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, flowOf, instructed, planOf, textOf } from './scripted.ts';

const typed = (from: number, to: number, rows: number, worked: string, plain = 0) => ({
  spacing_from: `${from} sts`,
  spacing_to: `${to}`,
  spacing_rows: `${rows} rows`,
  spacing_worked: worked,
  spacing_plain: `${plain}`,
});

function waysOf(plan: ReturnType<typeof planOf>) {
  return instructed(plan, 'choose one').flatMap(({ ways }) =>
    ways.flatMap((way) => way.instead.flatMap((i) => (i.do === 'shape' ? [i.spaced] : []))),
  );
}

describe('shaping spaced over rows in five questions', () => {
  it('asks five questions and no unit', () => {
    expect(flowOf('spacing').stops.map((s) => s.id)).toEqual([
      'spacing_from',
      'spacing_to',
      'spacing_rows',
      'spacing_worked',
      'spacing_plain',
    ]);
  });

  it('says of no row that it is a right-side row where wrong-side rows may shape too', () => {
    const [flat, anyRow] = ['flat', 'any row'].map((worked) =>
      textOf(planOf('spacing', typed(218, 164, 60, worked))),
    );
    expect(flat).toContain('every shaping row is a right-side row');
    expect(anyRow).not.toContain('every shaping row is a right-side row');
    expect(anyRow).toContain('rows with an even number are wrong-side rows');
  });

  // biome-ignore format: one example stands below another
  it.each([
    { source: 'How to figure out decrease and increase placement, knittingunplugged, 2016: 50 to 72 over 84 rows', from: 50, to: 72, rows: 84, worked: 'any row', runs: [[8, 7], [7, 4]] },
    { source: 'Sleeve, designyourownsweater, 2007: 72 to 156 over 176 rows', from: 72, to: 156, rows: 176, worked: 'any row', runs: [[5, 8], [4, 34]] },
    { source: 'Waist Shaping, Interweave (Knitting Daily), 2008: 319 to 267 over 78 rounds of 4', from: 319, to: 267, rows: 78, worked: 'body', runs: [[6, 13]] },
    { source: 'Top-down to measure, wollequeen: 70 to 44 over 150 rounds', from: 70, to: 44, rows: 150, worked: 'round', runs: [[11, 6], [12, 7]] },
  ])('$source', ({ from, to, rows, worked, runs }) => {
    const plan = planOf('spacing', typed(from, to, rows, worked));
    const [shape] = instructed(plan, 'shape');
    expect(shape?.spaced.runs.map((r) => [r.every, r.times])).toEqual(runs);
    expectSound(plan);
  });

  it.each([
    [50, 72, 84, 'flat', 0],
    [80, 44, 91, 'flat', 6],
    [60, 60, 40, 'round', 0],
    [220, 200, 50, 'body', 3],
    [72, 52, 84, 'any row', 10],
  ])('can be knitted: %d to %d over %d rows, %s, %d plain at each end', (from, to, rows, worked, plain) => {
    const plan = planOf('spacing', typed(from, to, rows, worked, plain));
    const [shape] = instructed(plan, 'shape');
    const way = worked === 'round' || worked === 'body' ? 'round' : 'flat';
    const needle = Needle.castOn(from, way);
    if (shape === undefined) throw new Error('nothing to shape');
    expect(knitSection(needle, shape.spaced, way)).toEqual([]);
    expect(needle.count).toBe(to);
    const shaped = shape.spaced.shaping.map((s) => s.row);
    expect(shaped.every((r) => r > plain && r <= rows - plain)).toBe(true);
    if (worked === 'flat') expect(shaped.every((r) => r % 2 === 1)).toBe(true);
    expectSound(plan);
  });

  it('says in words on which rows to shape, and that they are right-side rows', () => {
    const text = textOf(planOf('spacing', typed(50, 72, 84, 'back and forth, at both edges')));
    expect(text).toContain(
      'Work 6 rows plain. Increase 1 stitch at each edge on the next row and on every 8th row after it 8 times more, then every 6th row 2 times.',
    );
    expect(text).toContain('every shaping row is a right-side row');
  });
});

describe('shaping that cannot be spaced as asked', () => {
  it('How do you calculate a decrease in sleeve?, bkkquilt: 80 to 45 is odd, and 46 and 44 are offered', () => {
    const plan = planOf('spacing', typed(80, 45, 144, 'round'));
    expect(textOf(plan)).toContain('35 stitches cannot be shared out by 2 stitches a shaping round.');
    expect(waysOf(plan).map((spaced) => [spaced.shaping.length, spaced.to])).toEqual([
      [17, 46],
      [18, 44],
    ]);
    expectSound(plan);
  });

  it('a question met in knitting talk: 218 to 164 in 42 rows takes 27 shaping rows where 21 right-side rows are', () => {
    const plan = planOf('spacing', typed(218, 164, 42, 'flat'));
    const text = textOf(plan);
    expect(text).toContain('it needs 27 shaping rows, and only 21 rows here may carry them');
    expect(text).toContain('Shape on wrong-side rows too: 27 shaping rows, ending with 164 stitches.');
    // 15 decreases every 2nd row, 12 every row.
    expect(waysOf(plan)[0]?.runs.map((r) => [r.every, r.times])).toEqual([
      [1, 12],
      [2, 15],
    ]);
    expectSound(plan);
  });

  it.each([
    [218, 164, 42, 'flat'],
    [50, 75, 30, 'round'],
    [220, 194, 20, 'body'],
  ])('%d to %d over %d rows, %s: every way that is offered can be knitted', (from, to, rows, worked) => {
    const ways = waysOf(planOf('spacing', typed(from, to, rows, worked)));
    expect(ways.length).toBeGreaterThan(1);
    const way = worked === 'flat' ? 'flat' : 'round';
    for (const spaced of ways) expect(knitSection(Needle.castOn(from, way), spaced, way)).toEqual([]);
  });

  it('offers a longer section where there are no rows at all', () => {
    const plan = planOf('spacing', typed(50, 54, 8, 'round', 5));
    expect(textOf(plan)).toContain('only 0 rounds here may carry them');
    expect(waysOf(plan).map((spaced) => spaced.rows)).toEqual([12]);
    expectSound(plan);
  });

  it('waits for a count that is not known', () => {
    const cannot = cannotOf('spacing', { ...typed(50, 54, 8, 'round'), spacing_to: "I don't know" });
    expect(textOf(cannot)).toContain('Stitches wanted: The shaping waits for it.');
  });
});
