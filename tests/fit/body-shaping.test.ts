import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BodyAsk,
  type BodyShaping,
  PLAIN_AT_WAIST,
  perBodyRow,
  shapeBody,
  toDartLine,
} from '../../src/fit/body-shaping.ts';
import { bodyPart } from '../../src/fit/body-steps.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { sections } from '../../src/fit/outline.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';
import { bodyAsks } from './arbitrary.ts';
import { over10cm } from './at-gauge.ts';

/** Cases that can be drawn; how many of the random ones these are is asserted, so that the properties are not empty. */
function drawn(check: (body: BodyShaping) => void, numRuns: number): void {
  let seen = 0;
  fc.assert(
    fc.property(bodyAsks, (ask) => {
      const body = shapeBody(ask);
      if (body.kind !== 'body') return;
      seen += 1;
      check(body);
    }),
    { numRuns },
  );
  expect(seen).toBeGreaterThan(numRuns / 4);
}

describe('the body, drawn anew', () => {
  it('has sections whose rows add up to the length asked for, within one row, and counts that join', () => {
    drawn((body) => {
      const { ask } = body;
      const rows = body.sections.reduce((sum, s) => sum + s.stretch.rows, 0);
      expect(rows).toBe(body.inAll.result.value);
      const tolerance = ask.gauge.worked === 'flat' ? 1 : 0.5;
      expect(Math.abs(rows - ask.length * ask.gauge.rows.perCm)).toBeLessThanOrEqual(tolerance + 1e-6);
      expect(body.sections.slice(1).map((s) => s.from)).toEqual(body.sections.slice(0, -1).map((s) => s.to));
      expect(sections(body.after).map((s) => s.rows)).toEqual(body.sections.map((s) => s.stretch.rows));
      expect(sections(body.after).map((s) => s.change)).toEqual(body.sections.map((s) => s.to - s.from));
    }, 2_000);
  });

  it('is knitted by the simulator to the stated counts and rows', () => {
    let shaped = 0;
    drawn((body) => {
      const { worked } = body.ask.gauge;
      const needle = Needle.castOn(body.sections[0]?.from ?? 0, worked);
      for (const s of body.sections) {
        if (s.spacing === null) needle.plain(s.stretch.rows);
        else if (s.spacing.kind === 'spaced') {
          shaped += 1;
          expect(knitSection(needle, s.spacing, worked)).toEqual([]);
        } else return;
      }
      expect(needle.log).toHaveLength(body.inAll.result.value);
      expect(needle.count).toBe(body.sections.at(-1)?.to);
    }, 800);
    expect(shaped).toBeGreaterThan(200);
  });

  it('keeps shaping off wrong-side rows of flat pieces', () => {
    drawn((body) => {
      if (body.ask.gauge.worked === 'round') return;
      let before = 0;
      for (const s of body.sections) {
        if (s.spacing?.kind === 'spaced')
          expect(s.spacing.shaping.filter((r) => (before + r.row) % 2 === 0)).toEqual([]);
        before += s.stretch.rows;
      }
    }, 1_000);
  });

  it('chooses the waist count nearest to the width that shaping can reach from the bust', () => {
    drawn((body) => {
      const { ask, waist } = body;
      if (waist === null || ask.waist === null) return;
      const per = perBodyRow(ask.gauge, ask.lines);
      expect(Math.abs(waist.stitches - ask.pattern.bust) % per).toBe(0);
      const share = ask.gauge.worked === 'flat' ? 2 : 1;
      const wanted = (ask.waist.around / share) * ask.gauge.stitches.perCm + ask.edge;
      expect(Math.abs(waist.stitches - wanted)).toBeLessThanOrEqual(per / 2 + 1e-6);
      expect(waist.workings[0]?.result.value).toBe(waist.stitches);
    }, 2_000);
  });

  it('leaves stitches beside every dart line, and tells where the first of them lie', () => {
    let darts = 0;
    drawn((body) => {
      const { ask, waist } = body;
      if (ask.lines === 'sides' || waist === null) return;
      const first = body.sections.find(({ spacing }) => spacing !== null);
      if (first === undefined) return;
      darts += 1;
      const beside = toDartLine(first.from, ask).result.value;
      const quarter = (first.from - ask.edge) / (ask.gauge.worked === 'round' ? 8 : 4);
      expect(Math.abs(beside - quarter)).toBeLessThanOrEqual(0.5);
      const times = (first.from - waist.stitches) / perBodyRow(ask.gauge, ask.lines);
      expect(beside - times).toBeGreaterThanOrEqual(2);
      const told = bodyPart(body, null).steps.flatMap(({ notes }) => notes.map(({ say }) => say));
      expect(told.filter((say) => / dart lines|dart lines of/.test(say))).toHaveLength(1);
    }, 2_000);
    expect(darts).toBeGreaterThan(100);
  });

  it('refuses darts that would meet', () => {
    const ask: BodyAsk = {
      gauge: over10cm(22, 30, 'round'),
      direction: 'up',
      edge: 0,
      pattern: { hem: stitches(40), bust: stitches(40), length: cm(40), edging: cm(4) },
      length: cm(40),
      waist: { around: cm(7.5), belowUnderarm: cm(18) },
      hip: null,
    };
    // At 2.2 stitches to the centimetre 7.5 cm are 16.5; in eights below 40 that is 16, three darts deep.
    expect(shapeBody({ ...ask, lines: 'sides' }).kind).toBe('body');
    expect(shapeBody({ ...ask, lines: 'darts' })).toMatchObject({ kind: 'body', waist: { stitches: 16 } });
    // In fours it is 16 too, but six deep, and only five stitches lie beside each line of the back.
    expect(shapeBody({ ...ask, lines: 'back darts' })).toMatchObject({ kind: 'cannot', why: 'darts meet' });
  });

  it('puts an inch of plain fabric at the waist, as near as rows allow', () => {
    drawn((body) => {
      const plain = body.sections.find((s) => s.name === 'waist');
      if (plain === undefined) return;
      const wanted = PLAIN_AT_WAIST * body.ask.gauge.rows.perCm;
      expect(Math.abs(plain.stretch.rows - wanted)).toBeLessThanOrEqual(
        body.ask.gauge.worked === 'flat' ? 2 : 1,
      );
    }, 1_000);
  });

  it('leaves the hem alone unless the shaping needs it moved or a hip is asked for', () => {
    drawn((body) => {
      if (body.ask.hip !== null) return;
      const moved = (body.hem?.stitches ?? body.ask.pattern.hem) - body.ask.pattern.hem;
      expect(Math.abs(moved)).toBeLessThanOrEqual(perBodyRow(body.ask.gauge, body.ask.lines) / 2);
      expect(body.hemMoved).toBe(moved !== 0);
    }, 1_000);
  });

  it('shows workings whose formulas give their values', () => {
    drawn((body) => {
      for (const line of body.sections.flatMap((s) => s.workings))
        expect(evaluate(line.formula, line.given)).toBe(line.exact);
    }, 300);
  });

  it('is the same fabric upside down: knitted down it has the same sections in the other order', () => {
    drawn((body) => {
      const other = shapeBody({ ...body.ask, direction: body.ask.direction === 'up' ? 'down' : 'up' });
      if (other.kind !== 'body') throw new Error('a body can be drawn either way');
      expect(other.sections.map((s) => [s.name, s.to, s.from]).reverse()).toEqual(
        body.sections.map((s) => [s.name, s.from, s.to]),
      );
      expect(other.inAll.result.value).toBe(body.inAll.result.value);
    }, 500);
  });

  it('spaces the pattern’s own change of count where the length alone is altered, and its plan says so', () => {
    const ask = {
      gauge: over10cm(20, 28, 'round'),
      direction: 'up' as const,
      edge: 0,
      pattern: { hem: stitches(200), bust: stitches(220), length: cm(35), edging: cm(5) },
      length: cm(40),
      waist: null,
      hip: null,
    };
    const body = shapeBody(ask);
    if (body.kind !== 'body') throw new Error(body.why);
    // 40 − 5 cm are 98 rounds, 7 of them plain below the underarm: 5 increase rounds in 91.
    expect(body.sections[1]?.spacing).toMatchObject({
      kind: 'spaced',
      runs: [
        { every: 19, times: 1 },
        { every: 18, times: 4 },
      ],
      plainAfter: 7,
    });
    expect(bodyPart(body, null).steps[1]).toMatchObject({
      where: { say: 'where: hem to underarm' },
      instead: [{ do: 'shape', spaced: { from: 200, to: 220, rows: 98 } }],
    });
    expect(shapeBody({ ...ask, pattern: { ...ask.pattern, length: cm(4) } })).toEqual({
      kind: 'cannot',
      why: 'edging longer than the piece',
      length: 4,
      edging: 5,
      waistAt: null,
    });
  });

  it('says why when the waist lies outside the body or nothing is left above the edging', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(bodyAsks, (ask) => {
        const body = shapeBody(ask);
        if (body.kind !== 'cannot') return;
        seen.add(body.why);
        if (body.why === 'edging longer than the piece')
          expect(ask.length).toBeLessThanOrEqual(ask.pattern.edging);
        else expect(body.waistAt).not.toBeNull();
      }),
      { numRuns: 2_000 },
    );
    expect([...seen]).toContain('waist outside the body');
    expect(
      shapeBody({
        ...fc.sample(bodyAsks, 1)[0],
        length: 5,
        pattern: { ...fc.sample(bodyAsks, 1)[0]?.pattern, edging: 6 },
      } as never),
    ).toMatchObject({
      why: 'edging longer than the piece',
    });
  });
});
