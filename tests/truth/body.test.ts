import { describe, expect, it } from 'vitest';
import { type Body, checkMeasurement } from '../../src/fit/body.ts';
import { CHILDREN_BY_AGE, HEIGHTS_BY_SIZE } from '../../src/fit/tables/children.ts';
import { COUNCIL, COUNCIL_MEASURES, type CouncilSize } from '../../src/fit/tables/council.ts';
import { cm, inches } from '../../src/fit/units.ts';
import { type Measurement, TABLES, type Table } from '../../src/fit/words.ts';
import { REAL_FIGURES, WAIST_BANDS } from './body-figures.ts';

const alone = (table: Table): Body => ({ table, known: {} });

describe('a real body is never refused', () => {
  it.each(REAL_FIGURES)('$table, $of: $from', ({ table, of, figures }) => {
    for (const value of figures)
      expect(checkMeasurement(of, { value, unit: 'cm' }, alone(table)).kind).not.toBe('impossible');
  });

  it.each(REAL_FIGURES)(
    'by the other adults table either: $of of $table, $from',
    ({ table, of, figures }) => {
      const other = table === 'women' ? 'men' : 'women';
      for (const value of figures)
        expect(checkMeasurement(of, { value, unit: 'cm' }, alone(other)).kind).not.toBe('impossible');
    },
  );

  // Longest waist on record, about 300 cm; smallest newborns, about 25 cm long: from memory.
  it.each([
    ['waist', 'women', 300],
    ['waist', 'men', 302],
    ['height', 'men', 272],
    ['height', 'babies', 25],
    ['head', 'babies', 20],
  ] as const)('%s of %s, rarest of all: %d cm', (of, table, value) => {
    expect(checkMeasurement(of, { value, unit: 'cm' }, alone(table)).kind).not.toBe('impossible');
  });
});

describe('a surveyed body is not even asked again', () => {
  it.each(REAL_FIGURES.filter(({ from }) => !from.includes('by age')))(
    '$table, $of by itself: $from',
    ({ table, of, figures }) => {
      const kinds = figures.map((value) => checkMeasurement(of, { value, unit: 'cm' }, alone(table)).kind);
      expect(kinds).toEqual(figures.map(() => 'fine'));
    },
  );

  it.each(WAIST_BANDS)('$table with a waist of $waist cm: upper arm and hip beside it', (band) => {
    const [from, below] = band.waist;
    const body: Body = { table: band.table, known: { waist: cm((from + below) / 2) } };
    for (const value of band.upperArm)
      expect(checkMeasurement('upper arm', { value, unit: 'cm' }, body).kind).toBe('fine');
    for (const value of band.hip)
      expect(checkMeasurement('hip', { value, unit: 'cm' }, body).kind).toBe('fine');
  });

  it.each(CHILDREN_BY_AGE)('$who of $age, waist and upper arm beside the height', (row) => {
    const body: Body = { table: 'children', known: { height: cm(row.height[1]) } };
    for (const of of ['waist', 'upper arm'] as const)
      for (const value of row[of])
        expect(checkMeasurement(of, { value, unit: 'cm' }, body).kind).toBe('fine');
  });
});

/** Source: Craft Yarn Council's www.YarnStandards.com; back lengths there start at the nape, ours at the shoulder. */
describe("the industry's own sizes agree with the checks", () => {
  const NAMED = COUNCIL_MEASURES.filter((m) => m !== 'nape to waist') satisfies readonly Measurement[];
  const bodyOf = (table: Table, size: CouncilSize, end: 0 | 1): Body => {
    const known = NAMED.flatMap((m) => {
      const listed = size[m];
      return listed === undefined ? [] : [[m, inches(listed[end])] as const];
    });
    return { table, known: Object.fromEntries(known) };
  };
  const rows = TABLES.flatMap((table) => COUNCIL[table].map((size) => ({ table, size, name: size.size })));

  it.each(rows)('$table, size $name: every measurement fine beside all the others', ({ table, size }) => {
    for (const end of [0, 1] as const) {
      const body = bodyOf(table, size, end);
      for (const m of NAMED) {
        const listed = size[m];
        if (listed === undefined) continue;
        const verdict = checkMeasurement(m, { value: listed[end], unit: 'in' }, body);
        expect({ m, ...verdict }).toMatchObject({ m, kind: 'fine' });
      }
    }
  });

  it.each(rows)('$table, size $name: no figure falls from low to high', ({ size }) => {
    for (const m of COUNCIL_MEASURES) {
      const listed = size[m];
      if (listed !== undefined) expect(listed[1]).toBeGreaterThanOrEqual(listed[0]);
    }
  });

  it.each(TABLES)('%s: no figure falls from one size to the next', (table) => {
    for (const m of COUNCIL_MEASURES) {
      const column = COUNCIL[table].flatMap((size) => size[m]?.[0] ?? []);
      expect(column).toEqual([...column].sort((a, b) => a - b));
    }
  });

  it.each(['children', 'babies'] as const)('%s: every size by height is a size of the table', (table) => {
    expect(HEIGHTS_BY_SIZE[table].map((h) => h.size)).toEqual(COUNCIL[table].map((s) => s.size));
  });
});
