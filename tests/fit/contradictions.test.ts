import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONTRADICTIONS, type Contradiction } from '../../src/fit/contradiction.ts';
import { contradictions } from '../../src/fit/contradictions.ts';
import { evaluate } from '../../src/fit/formula.ts';
import type { Counted, Pattern } from '../../src/fit/pattern.ts';
import { SAMPLE_PIECES, SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import type { Region } from '../../src/fit/words.ts';
import { withCount as count, withLength as length, only, withSize } from './with-size.ts';

const codes = (found: readonly Contradiction[]) => found.map((c) => `${c.size ?? 'all'}: ${c.code}`);
const agreeing = (c: Contradiction | undefined) =>
  Object.fromEntries((c?.wouldAgree ?? []).map((q) => [q.name, Math.round(q.value * 100) / 100]));

const ROUND_4 = only(SAMPLE_ROUND, '4');
const PIECES_4 = only(SAMPLE_PIECES, '4');

describe('a count and a finished width', () => {
  it('disagree where the count is more than one stitch at each side off', () => {
    expect(codes(contradictions(length(ROUND_4, '4', 'bust', 100.9)))).toEqual([]);
    const found = contradictions(length(ROUND_4, '4', 'bust', 104));
    expect(codes(found)).toEqual(['4: count and width disagree']);
    // 104 cm × 2.2 = 228.8, to a rib of two 228; and 220 stitches measure 100 cm.
    expect(agreeing(found[0])).toEqual({ 'bust stitches': 228, 'finished bust': 100 });
  });

  it('are compared for one piece, edge stitches taken off, where the body is in pieces', () => {
    const found = contradictions(length(PIECES_4, '4', 'bust', 104));
    expect(codes(found)).toEqual(['4: count and width disagree']);
    // 52 cm × 2.2 = 114.4, to a rib of two 114, and 2 edge stitches; 110 × 2 / 2.2 = 100 cm.
    expect(agreeing(found[0])).toEqual({ 'bust stitches': 116, 'finished bust': 100 });
  });

  it('may be half a stitch repeat apart where the repeat is long', () => {
    const twelves: Pattern = { ...ROUND_4, repeat: { multiple: 12, plus: 4 } };
    expect(codes(contradictions(length(twelves, '4', 'bust', 102.7)))).toEqual([]);
    expect(codes(contradictions(length(twelves, '4', 'bust', 103)))).toEqual(['4: count and width disagree']);
  });

  it('tell inches typed for centimetres from a wrong count', () => {
    const found = contradictions(length(ROUND_4, '4', 'bust', 39.375));
    expect(codes(found)).toEqual(['4: inches for centimetres']);
    expect(agreeing(found[0])).toEqual({ 'finished bust': 100.01 });
  });

  it('tell 4 in read as 10 cm, which moves a 40 in bust by four stitches', () => {
    // 22 stitches to 4 in are 220 at 40 in; 224 come of 22 stitches to 10 cm.
    const inInches: Pattern = {
      ...ROUND_4,
      gauge: { ...ROUND_4.gauge, stitches: { count: 22, span: cm(10.16), unit: 'in' } },
    };
    const found = contradictions(
      length(count(count(inInches, '4', 'bust', 224), '4', 'cross back', 88), '4', 'bust', 101.6),
    ).filter((c) => c.figures.some((f) => f.name === 'bust stitches' || f.name === 'finished bust'));
    expect(codes(found)).toContain('4: four inches for ten centimetres');
    expect(agreeing(found[0])).toEqual({ 'span of the stitch gauge': 10 });
  });
});

describe('rows and lengths', () => {
  it('disagree where they are more than a pair of rows apart', () => {
    const found = contradictions(length(ROUND_4, '4', 'armhole depth', 22));
    expect(codes(found)).toEqual(['4: rows and length disagree']);
    expect(agreeing(found[0])).toEqual({ 'armhole rows': 66, 'finished armhole depth': 20 });
  });

  it('agree where body rows are counted after the hem', () => {
    const after = withSize(ROUND_4, '4', (s) => ({ ...s, rows: { ...s.rows, body: rows(96) } }));
    expect(contradictions(after)).toEqual([]);
  });

  it('name a depth in inches among centimetres', () => {
    const found = contradictions(length(ROUND_4, '4', 'armhole depth', 7.875));
    expect(codes(found)).toEqual(['4: inches for centimetres']);
  });

  it('leave no room above an edging as deep as the body', () => {
    const found = contradictions({ ...ROUND_4, edging: { hem: cm(38), cuff: cm(6) } });
    expect(codes(found)).toEqual(['4: lengths out of order']);
  });
});

describe('the sizes of a pattern', () => {
  it('run upward', () => {
    const found = contradictions(count(SAMPLE_ROUND, '5', 'back neck', 34));
    expect(codes(found)).toEqual(['5: sizes out of order', '5: shoulders do not add up']);
  });

  it('may be shorter in sleeve and body as they grow wider', () => {
    const shorter = withSize(SAMPLE_ROUND, '10', (s) => ({
      ...s,
      finished: { ...s.finished, 'sleeve length': cm(45) },
      rows: { ...s.rows, sleeve: rows(135) },
    }));
    expect(contradictions(shorter)).toEqual([]);
  });

  it('carry a label each', () => {
    const [first] = SAMPLE_ROUND.sizes;
    const twice: Pattern = { ...SAMPLE_ROUND, sizes: first === undefined ? [] : [first, first] };
    expect(codes(contradictions(twice))).toEqual(['1: label twice']);
  });
});

describe('a gauge', () => {
  const gauge = (count: number, rowCount: number): Pattern => ({
    ...SAMPLE_ROUND,
    sizes: [],
    gauge: {
      stitches: { count, span: cm(10), unit: 'cm' },
      rows: { count: rowCount, span: cm(10), unit: 'cm' },
    },
  });

  it.each([
    ['22 stitches, 30 rows', 22, 30, []],
    ['18 stitches, 36 rows: garter stitch', 18, 36, []],
    ['as many rows as stitches', 20, 20, []],
    ['19 stitches, 16 rows', 19, 16, ['all: rows fewer than stitches']],
    ['88 stitches: counted over four times the span', 88, 120, ['all: gauge out of bounds']],
    ['22 stitches, 120 rows', 22, 120, ['all: gauge out of bounds']],
    ['2 stitches', 2, 3, ['all: gauge out of bounds']],
  ])('of %s', (_, sts, rws, expected) => {
    expect(codes(contradictions(gauge(sts, rws)))).toEqual(expected);
  });
});

describe('repeat, edge and parity', () => {
  it('are fitted by the count at the bust', () => {
    const cable: Pattern = { ...ROUND_4, repeat: { multiple: 12, plus: 0 } };
    const found = contradictions(cable);
    expect(codes(found)).toEqual(['4: repeat not fitted']);
    expect(found[0]?.wouldAgree.map((q) => q.value)).toEqual([216, 228]);
  });

  it('see where the edge stitches were left out', () => {
    const lacking: Pattern = count({ ...PIECES_4, repeat: { multiple: 10, plus: 0 } }, '4', 'bust', 110);
    const found = contradictions(lacking);
    expect(codes(found)).toContain('4: edge stitches left out');
    expect(found[0]?.wouldAgree.map((q) => q.value)).toEqual([102, 112]);
  });

  it('know no edge in the round', () => {
    const edged: Pattern = { ...ROUND_4, edge: { body: 2, sleeves: 2 } };
    expect(codes(contradictions(edged))).toEqual(['all: edge stitches in the round']);
  });

  it('never let a stitch at each side make an odd difference', () => {
    const found = contradictions(count(ROUND_4, '4', 'upper arm', 75));
    expect(codes(found)).toEqual(['4: odd change', '4: odd change']);
    expect(agreeing(found[0])).toEqual({ 'wrist stitches': 45, 'upper arm stitches': 76 });
  });

  it('cannot halve an odd count in the round', () => {
    const odd: Pattern = { ...count(ROUND_4, '4', 'bust', 221), repeat: { multiple: 1, plus: 0 } };
    expect(codes(contradictions(odd))).toEqual(['4: odd change']);
  });
});

describe('armhole and shoulders', () => {
  it('add up: the back less bind-offs and decreases at both sides is the cross back', () => {
    const found = contradictions(
      withSize(ROUND_4, '4', (s) => ({
        ...s,
        armhole: { boundOff: stitches(6), decreased: stitches(8) },
      })),
    );
    expect(codes(found)).toEqual(['4: armhole does not add up']);
    expect(agreeing(found[0])).toEqual({
      'cross back stitches': 82,
      'stitches bound off at each side of the back': 5,
      'stitches decreased at each side of the back': 7,
    });
  });

  it('add up: two shoulders and the back neck are the cross back', () => {
    const found = contradictions(count(PIECES_4, '4', 'shoulder', 25));
    expect(codes(found)).toEqual(['4: shoulders do not add up']);
    expect(agreeing(found[0])).toEqual({
      'cross back stitches': 88,
      'back neck stitches': 36,
      'shoulder stitches': 24,
    });
  });

  it('never widen above the underarm', () => {
    const found = contradictions(
      withSize(ROUND_4, '4', (s) => ({
        ...s,
        counts: { bust: stitches(220), 'cross back': stitches(120) },
        finished: {},
      })),
    );
    expect(codes(found)).toEqual(['4: wider above the armhole']);
  });
});

describe('a sleeve', () => {
  it('is no narrower at the upper arm than at the wrist', () => {
    const found = contradictions(
      withSize(ROUND_4, '4', (s) => ({
        ...s,
        counts: { wrist: stitches(74), 'upper arm': stitches(44) },
        finished: {},
      })),
    );
    expect(codes(found)).toEqual(['4: sleeve narrows upward']);
  });

  it('has rows enough for its shaping', () => {
    const short = withSize(ROUND_4, '4', (s) => ({
      ...s,
      finished: { ...s.finished, 'sleeve length': cm(14) },
      rows: {},
    }));
    const found = contradictions(short);
    // 8 cm above the cuff are 24 rows, 12 of them right-side rows; 15 increases are needed: 44 + 24 = 68, 74 − 24 = 50.
    expect(codes(found)).toEqual(['4: shaping out of reach']);
    expect(agreeing(found[0])).toEqual({ 'upper arm stitches': 68, 'wrist stitches': 50 });
  });

  it('fills a drop shoulder’s armhole, which is twice as long as deep', () => {
    const drop: Pattern = {
      ...only(SAMPLE_ROUND, '4'),
      construction: 'drop shoulder',
      sizes: [{ label: 'M', finished: { 'armhole depth': cm(20), 'upper arm': cm(36) }, counts: {} }],
    };
    const found = contradictions(drop);
    expect(codes(found)).toEqual(['M: sleeve top and armhole disagree']);
    expect(agreeing(found[0])).toEqual({ 'finished upper arm': 40, 'finished armhole depth': 18 });
  });
});

describe('a shaping line', () => {
  const line = { size: '4', from: 'wrist', to: 'upper arm', by: 'increase', perRow: 2 } as const;

  it('reaches the count that is printed', () => {
    expect(contradictions(ROUND_4, [{ ...line, times: 15 }])).toEqual([]);
  });

  it('that misses it is named with the three ways to mend it', () => {
    const found = contradictions(ROUND_4, [{ ...line, times: 14 }]);
    expect(codes(found)).toEqual(['4: shaping misses the count']);
    expect(agreeing(found[0])).toEqual({
      'shaping rows': 15,
      'upper arm stitches': 72,
      'wrist stitches': 46,
    });
  });
});

describe('whatever figures are typed', () => {
  const places: Counted[] = ['bust', 'cross back', 'back neck', 'shoulder', 'wrist', 'upper arm', 'cap top'];
  const wrong = fc
    .record({
      pattern: fc.constantFrom(SAMPLE_ROUND, SAMPLE_PIECES),
      label: fc.integer({ min: 1, max: 10 }),
      place: fc.constantFrom(...places),
      value: fc.integer({ min: 1, max: 400 }),
      region: fc.constantFrom<Region>('bust', 'upper arm', 'armhole depth', 'sleeve length', 'wrist'),
      tape: fc.integer({ min: 1, max: 2000 }),
    })
    .map((w) =>
      length(count(w.pattern, `${w.label}`, w.place, w.value), `${w.label}`, w.region, w.tape / 10),
    );

  it('each line of the workings is its own formula, every code is on the list, and every value is finite', () => {
    fc.assert(
      fc.property(wrong, (pattern) => {
        for (const found of contradictions(pattern)) {
          expect(CONTRADICTIONS).toContain(found.code);
          for (const w of found.workings) expect(evaluate(w.formula, w.given)).toBe(w.exact);
          for (const q of [...found.figures, ...found.wouldAgree])
            expect(Number.isFinite(q.value)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a slip of more than two stitches in a count is always found', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(SAMPLE_ROUND, SAMPLE_PIECES),
        fc.integer({ min: 1, max: 10 }),
        fc.constantFrom<Counted>('bust', 'cross back', 'shoulder', 'back neck', 'wrist', 'upper arm'),
        fc.integer({ min: 3, max: 30 }),
        fc.boolean(),
        (pattern, n, place, by, down) => {
          const right = pattern.sizes[n - 1]?.counts[place] ?? 0;
          const slipped = count(pattern, `${n}`, place, Math.max(1, right + (down ? -by : by)));
          expect(contradictions(slipped).map((c) => c.size)).toContain(`${n}`);
        },
      ),
      { numRuns: 300 },
    );
  });
});
