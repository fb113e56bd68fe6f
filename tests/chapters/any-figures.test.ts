/** Whatever is typed at the chapters that hold nothing but sums: the plan adds up, can be knitted, and states its figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/fit/plan.ts';
import type { Spaced } from '../../src/fit/spacing.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { expectSound, instructed, outcomeOf, type Typed } from './scripted.ts';

const RUNS = { numRuns: 60 };
const unit = fc.constantFrom('cm', 'in');
const many = (min: number, max: number) => fc.integer({ min, max });
/** A plausible count over a span, as it is typed, to the quarter. */
const counted = (noun: string, least: number, most: number) =>
  fc.tuple(many(least, most), many(10, 30)).map(([rate, span]) => {
    const count = Math.round((4 * rate * span) / 10) / 4;
    return `${count} ${noun} over ${span} cm`;
  });

/** Knits every shape instruction of a plan's steps, each from the count at which it begins. */
function knitShapes(plan: Plan): void {
  for (const step of plan.steps)
    for (const i of step.instead) {
      if (i.do !== 'shape') continue;
      const way = step.worked ?? 'flat';
      if (i.at === 'one edge') knitOneEdge(i.spaced);
      else expect(knitSection(Needle.castOn(i.spaced.from, way), i.spaced, way)).toEqual([]);
    }
}

function knitOneEdge({ from, to, rows, shaping }: Spaced): void {
  const needle = Needle.castOn(from, 'flat');
  for (let row = 1; row <= rows; row += 1) {
    const shaped = shaping.find((s) => s.row === row);
    if (shaped === undefined) needle.plain(1);
    else needle.shaped({ end: shaped.after - needle.count });
    if (shaped !== undefined) expect(needle.count).toBe(shaped.after);
  }
  expect(needle.count).toBe(to);
}

function sound(flow: string, typed: Typed): Plan | undefined {
  const outcome = outcomeOf(flow, typed);
  if (outcome.kind === 'cannot') {
    expectSound(outcome);
    return undefined;
  }
  expectSound(outcome.plan);
  knitShapes(outcome.plan);
  return outcome.plan;
}

describe('any figures', () => {
  it('spacing: ends with the count wanted, or offers what can be had', () => {
    const asked = fc.record({
      from: many(24, 300),
      to: many(24, 300),
      rows: many(1, 200),
      plain: many(0, 12),
      worked: fc.constantFrom('flat', 'round', 'body', 'one edge', 'any row'),
    });
    fc.assert(
      fc.property(asked, ({ from, to, rows, plain, worked }) => {
        const plan = sound('spacing', {
          spacing_from: `${from}`,
          spacing_to: `${to}`,
          spacing_rows: `${rows}`,
          spacing_worked: worked,
          spacing_plain: `${plain}`,
        });
        for (const { spaced } of plan === undefined ? [] : instructed(plan, 'shape'))
          expect([spaced.from, spaced.to, spaced.rows]).toEqual([from, to, rows]);
      }),
      RUNS,
    );
  });

  it('recheck: on track, mended, or a choice, every section of it knitted', () => {
    const asked = fc.record({
      unit,
      piece: fc.constantFrom(
        'sleeve from the cuff, flat',
        'sleeve from the shoulder, in the round',
        'body from the hem, in the round',
        'body from the underarm, in pieces',
      ),
      from: many(80, 260),
      change: many(-20, 20),
      length: many(10, 60),
      row: many(0, 150),
      slip: many(-3, 3),
      stitches: counted('sts', 14, 32),
      rows: counted('rows', 18, 44),
    });
    fc.assert(
      fc.property(asked, ({ unit, piece, from, change, length, row, slip, stitches, rows }) => {
        const now = Math.max(1, from + Math.round(change / 2) + slip);
        const plan = sound('recheck', {
          unit,
          recheck_piece: piece,
          recheck_from: `${from}`,
          recheck_to: `${Math.max(4, from + 2 * change)}`,
          recheck_length: `${length} cm`,
          recheck_gauge: '22 sts and 30 rows to 10 cm',
          recheck_rows: `${row}`,
          recheck_stitches: `${now}`,
          recheck_counted: stitches,
          recheck_counted_rows: rows,
        });
        expect(plan?.summary).toHaveLength(1);
      }),
      RUNS,
    );
  });

  it('stitches: the nearest count of the multiple', () => {
    const asked = fc.record({
      unit,
      width: many(2, 200),
      multiple: many(1, 24),
      plus: many(0, 8),
      edge: many(0, 4),
    });
    fc.assert(
      fc.property(asked, ({ unit, width, multiple, plus, edge }) => {
        const plan = sound('stitches', {
          unit,
          swatch_stitches: '21.5 sts over 10 cm',
          stitches_width: `${width} cm`,
          stitches_multiple: `multiple of ${multiple} + ${plus}`,
          stitches_edge: `${edge}`,
        });
        const said = plan?.steps[0]?.instead[0];
        const count = said?.do === 'say' ? said.phrase.with.count : undefined;
        if (typeof count !== 'object') throw new Error('no count is told');
        expect((count.value - plus - edge) % multiple).toBe(0);
        if (width * 2.15 > multiple + plus + edge)
          expect(Math.abs((count.value - edge) / 2.15 - width)).toBeLessThanOrEqual(
            multiple / 2 / 2.15 + 1e-6,
          );
      }),
      RUNS,
    );
  });

  it('pickup and buttons: every stitch of the band has its place', () => {
    const asked = fc.record({
      unit,
      rows: many(2, 300),
      multiple: many(1, 6),
      fabric: counted('rows', 18, 44),
      band: counted('sts', 14, 32),
    });
    fc.assert(
      fc.property(asked, ({ unit, rows, multiple, fabric, band }) => {
        const plan = sound('pickup', {
          unit,
          pickup_rows: `${rows}`,
          swatch_rows: fabric,
          pickup_band: band,
          pickup_multiple: `${multiple}`,
        });
        const [picked] = plan === undefined ? [] : instructed(plan, 'pick up');
        const more = picked?.between === 'a stitch more' ? 1 : 0;
        const skipped = picked?.between === 'a row skipped' ? 1 : 0;
        const sum = (each: number) =>
          picked?.runs.reduce((all, { pick, times }) => all + times * (pick + each), 0);
        expect([sum(more), sum(skipped)]).toEqual([picked?.stitches, rows]);
      }),
      RUNS,
    );
    const band = fc.record({ length: many(3, 200), number: many(1, 12), ends: many(0, 8), hole: many(1, 4) });
    fc.assert(
      fc.property(band, ({ length, number, ends, hole }) => {
        const plan = sound('buttons', {
          buttons_along: 'rows',
          buttons_length: `${length}`,
          buttons_number: `${number}`,
          buttons_ends: `${ends}`,
          buttons_hole: `${hole}`,
        });
        const [placed] = plan === undefined ? [] : instructed(plan, 'place buttonholes');
        if (placed !== undefined) {
          expect(placed.holes).toHaveLength(number);
          expect(placed.holes.every((h) => h.from > ends && h.to <= length)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it('yarn: never fewer balls than the amount takes', () => {
    const asked = fc.record({ unit, balls: many(1, 40), theirs: many(20, 400), own: many(20, 400) });
    fc.assert(
      fc.property(asked, ({ unit, balls, theirs, own }) => {
        const plan = sound('yarn', {
          unit,
          yarn_wish: 'other',
          yarn_balls: `${balls}`,
          yarn_band: `${theirs} m`,
          yarn_own_band: `${own} m`,
        });
        const said = plan?.steps[0]?.instead[1];
        const bought = said?.do === 'say' ? said.phrase.with.balls : undefined;
        if (typeof bought !== 'object') throw new Error('no balls are told');
        expect(bought.value * own).toBeGreaterThanOrEqual(balls * theirs - 1e-9);
      }),
      RUNS,
    );
  });
});
