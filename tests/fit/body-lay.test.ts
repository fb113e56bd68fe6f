import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BodyItem, layInBody, type ToLay } from '../../src/fit/body-lay.ts';
import {
  type BodyAsk,
  type BodySection,
  type BodyShaping,
  carriersOf,
  plainBesideUnderarm,
  shapeBody,
} from '../../src/fit/body-shaping.ts';
import { evaluate } from '../../src/fit/formula.ts';
import type { Part } from '../../src/fit/plan.ts';
import { phrase } from '../../src/fit/plan.ts';
import { plain, step } from '../../src/fit/steps.ts';
import { cm, rows, type Stitches, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { bodyAsks } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';

/** 40 cm in the round at 28 rounds to 10 cm: 14 rounds of edging, then 98 in which 5 gain 4 stitches each, 7 of them plain below the underarm. */
const ASK: BodyAsk = {
  gauge: over10cm(20, 28, 'round'),
  direction: 'up',
  edge: 0,
  pattern: { hem: stitches(200), bust: stitches(220), length: cm(35), edging: cm(5) },
  length: cm(40),
  waist: null,
  hip: null,
};
const FLAT: BodyAsk = {
  ...ASK,
  gauge: over10cm(20, 28, 'flat'),
  pattern: { ...ASK.pattern, hem: stitches(100), bust: stitches(110) },
};

function drawn(ask: BodyAsk): BodyShaping {
  const body = shapeBody(ask);
  if (body.kind !== 'body') throw new Error(body.why);
  return body;
}

/** Short rows that begin after so many rows and take `own` of those beside them. What a wedge is like is another file's test. */
function shortRows(after: number, own: number, ask: BodyAsk = ASK): ToLay & { readonly needles: number[] } {
  const needles: number[] = [];
  const on = (needle: Stitches): Part => {
    needles.push(needle);
    const instead = own === 0 ? [] : [plain(own, needle, ask.gauge)];
    return { steps: [step('body', phrase('where: bust dart'), { instead })], finished: [], pieces: [] };
  };
  return { after: rows(after), on, needles };
}

function sectionsOf(items: readonly BodyItem[]): BodySection[] {
  return items.flatMap((item) => (item.kind === 'section' ? [item.section] : []));
}

/** `50 rows 200-208: 25 x2, 0 plain`, or what stands in its stead. */
function told(items: readonly BodyItem[]): string[] {
  return items.map((item) => {
    if (item.kind !== 'section') return item.kind;
    const { stretch, from, to, spacing } = item.section;
    const head = `${stretch.rows} rows ${from}-${to}`;
    if (spacing === null) return head;
    if (spacing.kind !== 'spaced') return `${head}: ${spacing.kind}`;
    const runs = spacing.runs.map(({ every, times }) => `${every} x${times}`).join(', ');
    return `${head}: ${runs}, ${spacing.plainAfter} plain`;
  });
}

const EDGING = '14 rows 200-200';

describe('short rows laid into a body that widens upwards', () => {
  it('come after the rows asked for; each side shapes as many times as it did, spaced anew', () => {
    // Whole, rounds 19, 37, 55, 73 and 91 of the 98 widen: two of them lie in the first 50.
    const wanted = shortRows(14 + 50, 1);
    expect(told(layInBody(drawn(ASK), [wanted]))).toEqual([
      EDGING,
      '50 rows 200-208: 25 x2, 0 plain',
      'short rows',
      '47 rows 208-220: 14 x1, 13 x2, 7 plain',
    ]);
    expect(wanted.needles).toEqual([208]);
  });

  it('divide a straight section into two straight ones', () => {
    const straight = drawn({ ...ASK, pattern: { ...ASK.pattern, hem: stitches(220) } });
    expect(told(layInBody(straight, [shortRows(14 + 50, 1)])).slice(1)).toEqual([
      '50 rows 220-220',
      'short rows',
      '47 rows 220-220',
    ]);
  });

  it('keep no rounds plain beside the waist, where only the underarm asks for them', () => {
    const waist = { around: cm(90), belowUnderarm: cm(20) };
    const body = drawn({ ...ASK, waist });
    // From 200 to 180 in the rounds from 14 to 52, the inch at the waist, 180 to 220 in the last 52.
    expect(told(layInBody(body, [])).slice(1)).toEqual([
      '38 rows 200-180: 7 x2, 8 x3, 0 plain',
      '8 rows 180-180',
      '52 rows 180-220: 5 x5, 4 x5, 7 plain',
    ]);
    expect(told(layInBody(body, [shortRows(14 + 35, 1)])).slice(1, 4)).toEqual([
      '35 rows 200-184: 8 x1, 9 x3, 0 plain',
      'short rows',
      '2 rows 184-180: 2 x1, 0 plain',
    ]);
  });

  it('take no row of the rest where they go all round', () => {
    expect(told(layInBody(drawn(ASK), [shortRows(14 + 50, 0)])).slice(1)).toEqual([
      '50 rows 200-208: 25 x2, 0 plain',
      'short rows',
      '48 rows 208-220: 14 x2, 13 x1, 7 plain',
    ]);
  });

  it('come first in their section where they begin with it, after the edging', () => {
    expect(told(layInBody(drawn(ASK), [shortRows(14, 1)]))).toEqual([
      EDGING,
      'short rows',
      '97 rows 200-220: 18 x5, 7 plain',
    ]);
  });

  it('leave the rounds below the underarm plain, whichever side of the short rows these lie on', () => {
    expect(told(layInBody(drawn(ASK), [shortRows(14 + 90, 1)])).slice(1)).toEqual([
      '90 rows 200-220: 18 x5, 0 plain',
      'short rows',
      '7 rows 220-220',
    ]);
    // Two rounds and the one that the short rows take are three of the seven.
    expect(told(layInBody(drawn(ASK), [shortRows(14 + 95, 1)])).slice(1)).toEqual([
      '95 rows 200-220: 19 x1, 18 x4, 4 plain',
      'short rows',
      '2 rows 220-220',
    ]);
  });

  it.each([98, 300])('come last where no row is left above them: after %i', (after) => {
    expect(told(layInBody(drawn(ASK), [shortRows(14 + after, 1)])).slice(1)).toEqual([
      '97 rows 200-220: 19 x1, 18 x4, 6 plain',
      'short rows',
    ]);
  });

  it('are laid from the top down, whichever was asked for first; between two, no round is kept plain', () => {
    const wanted = [shortRows(14, 1), shortRows(14 + 50, 1)];
    for (const order of [wanted, [...wanted].reverse()])
      expect(told(layInBody(drawn(ASK), order))).toEqual([
        EDGING,
        'short rows',
        '49 rows 200-208: 25 x1, 24 x1, 0 plain',
        'short rows',
        '47 rows 208-220: 14 x1, 13 x2, 7 plain',
      ]);
  });

  it('are never lost, though two of them want the last row', () => {
    const items = layInBody(drawn(ASK), [shortRows(200, 1), shortRows(200, 1)]);
    expect(items.map(({ kind }) => kind)).toEqual(['section', 'section', 'short rows', 'short rows']);
    expect(sectionsOf(items).map(({ stretch }) => stretch.rows)).toEqual([14, 98 - 2]);
  });

  it('say what part of the section lies on each side', () => {
    const [edging, before, rest] = sectionsOf(layInBody(drawn(ASK), [shortRows(14 + 50, 1)]));
    expect([edging?.part, before?.part, rest?.part]).toEqual(['all', 'before', 'rest']);
    expect([before?.name, rest?.name]).toEqual(['plain', 'plain']);
  });

  it('show how the rows on each side come about', () => {
    const body = drawn(ASK);
    const own = body.sections[1]?.workings ?? [];
    const [, before, rest] = sectionsOf(layInBody(body, [shortRows(14 + 50, 1)]));
    const figures = (section: BodySection | undefined) => {
      expect(section?.workings.slice(0, -1)).toEqual(own);
      expect(section?.workings.slice(-1)).toEqual(section?.stretch.workings);
      return section?.workings.slice(-1).map(({ label, given, result }) => ({
        label,
        from: Object.values(given).map(({ value, unit }) => [value, unit]),
        result: [result.value, result.unit],
      }));
    };
    expect(figures(before)).toEqual([
      {
        label: 'rows of this section before the short rows',
        from: [
          [64, 'rows'],
          [14, 'rows'],
        ],
        result: [50, 'rows'],
      },
    ]);
    expect(figures(rest)).toEqual([
      {
        label: 'rows of this section after the short rows',
        from: [
          [98, 'rows'],
          [50, 'rows'],
          [1, 'rows'],
        ],
        result: [47, 'rows'],
      },
    ]);
  });
});

describe('short rows laid into a body knitted down', () => {
  const down = drawn({ ...ASK, direction: 'down' });

  it('leave the rounds below the underarm plain above and below them', () => {
    // Three rounds and the one that the short rows take are four of the seven.
    expect(told(layInBody(down, [shortRows(3, 1)])).slice(0, 3)).toEqual([
      '3 rows 220-220',
      'short rows',
      '94 rows 220-200: 18 x4, 19 x1, 0 plain',
    ]);
    expect(told(layInBody(down, [shortRows(25, 1)])).slice(0, 3)).toEqual([
      '25 rows 220-216: 18 x1, 0 plain',
      'short rows',
      '72 rows 216-200: 18 x4, 0 plain',
    ]);
  });

  it('cannot lie in the edging, which stays whole', () => {
    expect(told(layInBody(down, [shortRows(98, 1)]))).toEqual([
      '98 rows 220-200: 18 x4, 19 x1, 0 plain',
      'cannot lie',
      EDGING,
    ]);
  });
});

describe('short rows that cannot lie where they are wanted', () => {
  /** 21 rounds above the edging, 7 of them plain: every one of the other 14 widens. */
  const steep = drawn({
    ...ASK,
    pattern: { ...ASK.pattern, hem: stitches(164), length: cm(12.5) },
    length: cm(12.5),
  });
  const whole = ['14 rows 164-164', '21 rows 164-220: 1 x14, 7 plain'];

  it('are refused where every row is wanted for shaping, and the section stays whole', () => {
    expect(told(layInBody(steep, []))).toEqual(whole);
    const items = layInBody(steep, [shortRows(14 + 6, 1)]);
    expect(told(items)).toEqual([whole[0], 'cannot lie', whole[1]]);
    expect(items[1]).toMatchObject({ kind: 'cannot lie', part: null, section: { from: 164, to: 220 } });
  });

  it('lie there nevertheless where they take no row of their own', () => {
    expect(told(layInBody(steep, [shortRows(14 + 6, 0)])).slice(1)).toEqual([
      '6 rows 164-188: 1 x6, 0 plain',
      'short rows',
      '15 rows 188-220: 1 x8, 7 plain',
    ]);
  });

  it('are refused apart from those that lie lower in the same section', () => {
    expect(told(layInBody(steep, [shortRows(14 + 6, 0), shortRows(14 + 10, 1)])).slice(1)).toEqual([
      'cannot lie',
      '6 rows 164-188: 1 x6, 0 plain',
      'short rows',
      '15 rows 188-220: 1 x8, 7 plain',
    ]);
  });

  it('are refused where the body has no row above its edging, unless they take none', () => {
    for (const worked of ['flat', 'round'] as const) {
      const gauge = over10cm(20, 28, worked);
      const pattern = { hem: stitches(200), bust: stitches(200), length: cm(5.05), edging: cm(5) };
      const body = drawn({ ...ASK, gauge, pattern, length: cm(5.05) });
      const whole = [EDGING, '0 rows 200-200'];
      expect(told(layInBody(body, [shortRows(14, 1)]))).toEqual([whole[0], 'cannot lie', whole[1]]);
      expect(told(layInBody(body, [shortRows(14, 0)]))).toEqual([EDGING, 'short rows']);
    }
  });

  it('say what stands in their own way', () => {
    const part = { kind: 'cannot' as const, because: [], instead: [], workings: [] };
    const items = layInBody(drawn(ASK), [{ after: rows(64), on: () => part }]);
    expect(items[1]).toEqual({ kind: 'cannot lie', part, section: drawn(ASK).sections[1] });
    expect(told(items)).toEqual([EDGING, 'cannot lie', ...told(layInBody(drawn(ASK), [])).slice(1)]);
  });

  it('are refused in a section that cannot be shaped', () => {
    const body = drawn({
      ...ASK,
      pattern: { ...ASK.pattern, hem: stitches(60), length: cm(6) },
      length: cm(6),
    });
    expect(told(layInBody(body, [shortRows(14, 1)]))).toEqual([
      '14 rows 60-60',
      'cannot lie',
      '3 rows 60-220: too few rows',
    ]);
  });
});

describe('short rows laid into a flat piece', () => {
  it('begin with a right-side row: after an even number of rows', () => {
    expect(told(layInBody(drawn(FLAT), [shortRows(14 + 51, 1)])).slice(1, 3)).toEqual([
      '50 rows 100-104: 26 x1, 24 x1, 1 plain',
      'short rows',
    ]);
  });

  it('leave shaping on right-side rows, which are the even ones after the row that they take', () => {
    const carriers = (own: number) =>
      sectionsOf(layInBody(drawn(FLAT), [shortRows(14 + 50, own)]))
        .slice(1)
        .map(({ spacing }) => (spacing?.kind === 'spaced' ? spacing.carriers : spacing));
    expect(carriers(1)).toEqual(['odd rows', 'even rows']);
    expect(carriers(0)).toEqual(['odd rows', 'odd rows']);
  });
});

describe('any short rows in any body', () => {
  const cases = fc.record({
    ask: bodyAsks,
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    own: fc.constantFrom(0, 1),
  });

  function laid(check: (body: BodyShaping, own: number, items: readonly BodyItem[], needle: number) => void) {
    let seen = 0;
    fc.assert(
      fc.property(cases, ({ ask, at, own }) => {
        const body = shapeBody(ask);
        if (body.kind !== 'body') return;
        const wanted = shortRows(Math.floor(at * body.inAll.result.value), own, ask);
        const items = layInBody(body, [wanted]);
        const needle = wanted.needles.at(-1);
        if (items.every(({ kind }) => kind !== 'short rows') || needle === undefined) return;
        seen += 1;
        check(body, own, items, needle);
      }),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(40);
  }

  it('leave the length, the counts and the number of shaping rows as they are', () => {
    laid((body, own, items) => {
      const after = sectionsOf(items);
      const all = (sections: readonly BodySection[]) => ({
        from: sections[0]?.from,
        to: sections.at(-1)?.to,
        shaped: sections.flatMap(({ spacing }) => (spacing?.kind === 'spaced' ? spacing.shaping : [])).length,
      });
      expect(all(after)).toEqual(all(body.sections));
      expect(after.reduce((sum, { stretch }) => sum + stretch.rows, own)).toBe(body.inAll.result.value);
      for (const line of after.flatMap(({ workings }) => workings))
        expect(evaluate(line.formula, line.given)).toBe(line.exact);
    });
  });

  it('are knitted by the simulator to the counts stated, the short rows on as many stitches as they were told', () => {
    laid(({ ask }, own, items, told) => {
      const needle = Needle.castOn(sectionsOf(items)[0]?.from ?? 0, ask.gauge.worked);
      for (const item of items) {
        if (item.kind === 'short rows') {
          expect(needle.count).toBe(told);
          needle.plain(own);
        } else if (item.kind === 'section') {
          const { spacing, stretch } = item.section;
          if (spacing === null) needle.plain(stretch.rows);
          else if (spacing.kind !== 'spaced') return;
          else {
            const knitted = needle.log.length;
            if (carriersOf(ask.gauge) === 'odd rows')
              expect(spacing.shaping.filter(({ row }) => (knitted + row) % 2 === 0)).toEqual([]);
            expect(knitSection(needle, spacing, ask.gauge.worked)).toEqual([]);
          }
        }
      }
    });
  });

  it('keep the rows beside the underarm plain', () => {
    laid(({ ask, inAll }, own, items) => {
      const total = inAll.result.value;
      const beside = plainBesideUnderarm(ask.gauge).result.value;
      let row = 0;
      for (const item of items) {
        if (item.kind === 'short rows') row += own;
        if (item.kind !== 'section') continue;
        const { spacing, stretch } = item.section;
        for (const shaped of spacing?.kind === 'spaced' ? spacing.shaping : [])
          if (ask.direction === 'up') expect(row + shaped.row).toBeLessThanOrEqual(total - beside);
          else expect(row + shaped.row).toBeGreaterThan(beside);
        row += stretch.rows;
      }
    });
  });
});
