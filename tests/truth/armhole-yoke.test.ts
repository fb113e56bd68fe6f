/** Worked examples of armholes, sleeve tops, raglans and round yokes as published, each recomputed exactly. */
import { describe, expect, it } from 'vitest';
import { armhole } from '../../src/fit/armhole.ts';
import { dropShoulder } from '../../src/fit/drop-shoulder.ts';
import { ANY_COUNT, rateAsPrinted, rowsFor, stitchesFor } from '../../src/fit/gauge.ts';
import { join } from '../../src/fit/join.ts';
import { type RaglanAsk, raglan } from '../../src/fit/raglan.ts';
import { space } from '../../src/fit/spacing.ts';
import { spread } from '../../src/fit/spread.ts';
import { cm, inches, rows, stitches } from '../../src/fit/units.ts';
import { yoke } from '../../src/fit/yoke.ts';
import { percentageRule, ruleForYoke } from '../../src/fit/yoke-percentages.ts';
import { evenly, LATER_THREE_ROUNDS, THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { over10cm } from '../fit/at-gauge.ts';
import { knitEdges } from '../simulator/edges.ts';
import { Needle } from '../simulator/needle.ts';

const perInch = (count: number) => rateAsPrinted({ count, span: inches(1), unit: 'in' });
const roundAt = (sts: number, rounds: number) => ({
  stitches: perInch(sts),
  rows: perInch(rounds),
  worked: 'round' as const,
});

describe('Set-in sleeves: body (designyourownsweater.blogspot.com, 2007): 28 × 40 to 10 cm', () => {
  const gauge = over10cm(28, 40);
  const made = armhole({
    bust: stitches(174),
    crossBack: stitches(106),
    depth: cm(26),
    gauge,
    // 3 cm, that is 8.4 stitches, cut to 8 as published.
    bindOffs: [stitches(8)],
    // The plain top is 10 cm of 26; the source counts 16 cm after the bind-off, whose two rows are 0.5 cm.
    shapedBy: cm(16.5),
    decreases: 'spread',
  });

  it('62 cm are 174 stitches cast on, 38 cm are 152 rows to the armhole', () => {
    expect(stitchesFor(cm(62), gauge.stitches.perCm, { ...ANY_COUNT, parity: 'even' })).toMatchObject({
      chosen: 174,
      exact: expect.closeTo(173.6, 9),
    });
    expect(rowsFor(cm(64 - 26), gauge.rows.perCm)).toBe(152);
  });
  it('8 bound off and 26 decreased at each side over 64 rows leave 106 stitches, 37.86 cm', () => {
    if (made.kind !== 'armhole') throw new Error(made.kind);
    expect(made.decreases).toMatchObject({ rows: 64 });
    expect(made.decreases.shaping).toHaveLength(26);
    expect(knitEdges(174, made.events, made.rows).count).toBe(106);
    expect(106 / gauge.stitches.perCm).toBeCloseTo(37.86, 2);
  });
  it('26 decreases in 64 rows: quotient 2 and remainder 12, every 2nd row 14 times and every 3rd 12 times', () => {
    const spaced = space({
      rows: rows(64),
      from: stitches(158),
      to: stitches(106),
      perRow: 2,
      carriers: 'every row',
      lead: rows(0),
      trail: rows(0),
      order: 'grouped',
    });
    expect(spaced).toMatchObject({
      kind: 'spaced',
      runs: [
        { every: 2, times: 14 },
        { every: 3, times: 12 },
      ],
    });
  });
});

describe('How to shape armholes in knitting (The Knitter masterclass, gathered.how, 2020): 22 × 30 to 10 cm', () => {
  const gauge = over10cm(22, 30);
  it('is 2.2 stitches and 3 rows to the centimetre', () => {
    expect([gauge.stitches.perCm, gauge.rows.perCm]).toEqual([2.2, 3]);
  });
  it('a drop-shoulder sleeve is twice as wide at its top as the armhole is deep: 20 cm give 88 stitches', () => {
    const ask = { depth: cm(20), back: cm(55), crossBack: cm(38), upperArm: cm(34), rule: ANY_COUNT };
    expect(dropShoulder({ ...ask, body: gauge, sleeve: gauge })).toMatchObject({ top: 88, topWidth: 40 });
  });
});

describe('Yoke cheat sheet (handmadestitchbystitch.wordpress.com, year not given), after Knitting Without Tears, 1971', () => {
  const rule = percentageRule(inches(40), roundAt(5, 7));
  it('40 in at 5 stitches are 200: upper sleeve 66, underarm 16, neck 80, yoke 10 in deep', () => {
    expect(rule).toMatchObject({ key: 200, counts: { 'upper arm': 66, underarm: 16, neck: 80 } });
    expect(rule.yokeDepth / 2.54).toBeCloseTo(10, 9);
  });
  it('its 268 stitches all round the yoke lead back to the 80 of the neck and the 10 in', () => {
    const found = ruleForYoke(stitches(268), roundAt(5, 7));
    expect(found).toMatchObject({ key: 200, counts: { neck: 80 } });
    expect(found.yokeDepth / 2.54).toBeCloseTo(10, 9);
  });
  it('200 of the body and 66 of each sleeve, less 16 at each of four underarm edges: 268; parts of 50 and 84', () => {
    expect(join({ body: stitches(200), sleeve: stitches(66), underarm: stitches(16) })).toMatchObject({
      yoke: 268,
      sleeve: 50,
      front: 84,
      back: 84,
    });
  });
  it.each([
    [6.6, 66, [33, 50, 66]],
    [7, 70, [35, 53, 70]],
    [7.5, 75, [38, 56, 75]],
  ])(
    'at %d rounds to the inch the yoke has %d rounds, shaped at half, three quarters and the top',
    (rate, total, places) => {
      const made = yoke({
        direction: 'up',
        gauge: roundAt(5, rate),
        depth: inches(10),
        underarm: stitches(268),
        neck: stitches(80),
        scheme: THREE_ROUNDS,
      });
      if (made.kind !== 'yoke') throw new Error(made.kind);
      expect(made.rows).toBe(total);
      expect(made.shaping.map((s) => s.round)).toEqual(places);
      expect(made.shaping.map((s) => s.spread.after)).toEqual([179, 120, 80]);
    },
  );
});

describe('Yoke cheat sheet (handmadestitchbystitch.wordpress.com, year not given), after Knitting Around, 1989', () => {
  it('268 stitches keeping 3/4, 2/3 and 3/5 in turn: 201, 134, 80', () => {
    const made = yoke({
      direction: 'up',
      gauge: roundAt(5, 7),
      depth: inches(10),
      underarm: stitches(268),
      neck: stitches(80),
      scheme: LATER_THREE_ROUNDS,
    });
    if (made.kind !== 'yoke') throw new Error(made.kind);
    expect(made.shaping.map((s) => s.spread.after)).toEqual([201, 134, 80]);
  });
});

describe("Elizabeth's Percentage System (heleninhobart.blogspot.com, year not given)", () => {
  it('50 in at 5 stitches: key number 250, cuff 50, upper arm 82.5, underarm 20, neck 100', () => {
    const rule = percentageRule(inches(50), roundAt(5, 7));
    expect(rule.key).toBe(250);
    const exact = Object.fromEntries(rule.workings.map((line) => [line.label, line.exact]));
    expect(exact).toMatchObject({
      'cuff by the rule': 50,
      'upper arm by the rule': 82.5,
      'underarm by the rule': 20,
      'neck by the rule': 100,
    });
  });
});

/** A yoke whose back is as published; the other counts are our own. */
const raglanAsk: RaglanAsk = {
  direction: 'up',
  gauge: over10cm(20, 30, 'round'),
  depth: cm(24),
  parts: {
    back: { underarm: stitches(90), neck: stitches(30) },
    front: { underarm: stitches(90), neck: stitches(30) },
    sleeve: { underarm: stitches(66), neck: stitches(14) },
  },
  carriers: 'every row',
  plain: rows(0),
  neckWanted: cm(44),
};

describe('How to Calculate Raglan Construction (yarnsville.com, year not given): a back of 90', () => {
  it.each([
    ['women', 30, 30],
    ['men', 40, 25],
  ])('%s: %d stay in the middle, each line takes %d', (_, middle, line) => {
    const parts = { ...raglanAsk.parts, back: { underarm: stitches(90), neck: stitches(middle) } };
    const made = raglan({ ...raglanAsk, parts });
    if (made.kind !== 'raglan') throw new Error(made.kind);
    expect(made.lines.back.spaced.shaping).toHaveLength(line);
    expect(made.lines.back.spaced.to).toBe(middle);
  });
  it('an arm of 50 cm and 10 cm of ease open over 30 cm: half the sleeve', () => {
    const gauge = over10cm(20, 30);
    const ask = { depth: cm(30), back: cm(60), crossBack: cm(44), upperArm: cm(50 + 10), rule: ANY_COUNT };
    expect(dropShoulder({ ...ask, body: gauge, sleeve: gauge })).toMatchObject({ topWidth: 60 });
  });
});

describe('Top-Down Design Tutorial 6: Figuring the Round Yoke (knitoutlines.blogspot.com, 2009)', () => {
  it('5 in of neck and two shoulders of 1.5 in at 5.12 stitches: 40.96, cut to 40 as published; nearest is 41', () => {
    const around = inches(5 + 2 * 1.5);
    expect(stitchesFor(around, perInch(5.12).perCm)).toMatchObject({
      exact: expect.closeTo(40.96, 9),
      below: { stitches: 40 },
      chosen: 41,
    });
  });
  it('9 in at 8 rows are 72 rounds, in six groups of 12', () => {
    // Stitch counts of our own; the source's place no part in its rows.
    const made = yoke({
      direction: 'down',
      gauge: roundAt(5.12, 8),
      depth: inches(9),
      underarm: stitches(280),
      neck: stitches(70),
      scheme: evenly(6),
    });
    if (made.kind !== 'yoke') throw new Error(made.kind);
    expect(made.rows).toBe(72);
    const at = made.shaping.map((s) => s.round as number);
    expect(at.slice(1).map((round, i) => round - (at[i] ?? 0))).toEqual([12, 12, 12, 12, 12]);
  });
});

describe('The Pits (knittingsitting.blogspot.com, 2014): a sleeve in a seamless raglan', () => {
  it('from an even count 33 is never reached two at a time: 32 or 34', () => {
    const parts = { ...raglanAsk.parts, sleeve: { underarm: stitches(66), neck: stitches(33) } };
    const made = raglan({ ...raglanAsk, parts });
    if (made.kind !== 'cannot') throw new Error(made.kind);
    expect(made.faults.map((f) => [f.part, f.fault.kind])).toEqual([['sleeve', 'no multiple']]);
    expect(made.alternatives.map((o) => o.raglan.lines.sleeve.spaced.to)).toEqual([32, 34]);
  });
});

describe('Why 120 stitches (miclasouris.over-blog.com, 2019)', () => {
  it('knit one, work the next twice: 60 more, 180', () => {
    const made = spread({ stitches: stitches(120), change: 60, by: 'kfb', worked: 'round' });
    if (made.kind !== 'spread') throw new Error(made.kind);
    expect(made.stretches.every((plain) => plain === 1)).toBe(true);
    expect(Needle.castOn(120, 'round').written(made.row).count).toBe(180);
  });
});
