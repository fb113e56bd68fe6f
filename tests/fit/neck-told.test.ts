/** What a plan says of a front neck beside its rows, at 22 stitches and 30 rows to 10 cm. */
import { describe, expect, it } from 'vitest';
import type { CannotNeck, NeckAsk } from '../../src/fit/neck.ts';
import { neck } from '../../src/fit/neck.ts';
import { neckInArmhole } from '../../src/fit/neck-in-armhole.ts';
import { type BesideNeck, type NeckSlope, neckPart, type PatternNeck } from '../../src/fit/neck-steps.ts';
import { neckOtherwise } from '../../src/fit/neck-ways.ts';
import { phrase, type Step } from '../../src/fit/plan.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** 38 stitches wide and 24 rows deep, with 19 stitches for each shoulder. */
const ASK: NeckAsk = { stitches: stitches(76), width: cm(17), depth: cm(8), gauge: over10cm(22, 30) };

function partOf(ask: NeckAsk, pattern: PatternNeck, slope: NeckSlope | null = null, beside?: BesideNeck) {
  const part = neckPart(ask, pattern, slope, beside);
  if ('kind' in part) throw new Error('there is a neck');
  const [divided, first, second] = part.steps;
  if (divided === undefined || first === undefined || second === undefined) throw new Error('three steps');
  return { divided, first, second, finished: part.finished };
}

/** Notes with the figures in them. */
function notes({ notes: of }: Step): string[] {
  return of.map(({ say, with: gaps }) =>
    [
      say.replace('note: ', ''),
      ...Object.values(gaps).map((gap) => (typeof gap === 'string' ? gap : gap.value)),
    ].join(' '),
  );
}

const against = (width: number, depth: number) => partOf(ASK, { width: cm(width), depth: cm(depth) });
const counted = (notesOf: readonly string[]) => notesOf.filter((note) => !note.startsWith('neckband'));

describe('a front neck beside the pattern’s own', () => {
  it('says nothing of changes where there are none', () => {
    const { divided } = against(17, 8);
    expect(notes(divided)).toEqual(['back neck as wide']);
    expect(divided.pattern?.with).toMatchObject({ width: { value: 17 }, depth: { value: 8 } });
  });

  it('begins earlier where it is deeper, and later where it is shallower', () => {
    // 6 cm are 18 rows, 10 cm 30.
    expect(counted(notes(against(17, 6).divided))).toEqual(['neck begins earlier 6', 'back neck as wide']);
    expect(counted(notes(against(17, 10).divided))).toEqual(['neck begins later 6', 'back neck as wide']);
  });

  it('gives to the shoulders what it takes from the neck, and the other way about', () => {
    // 20 cm are 44 stitches and leave 16; 14 cm are 30.8, to an even count 30, and leave 23.
    expect(counted(notes(against(20, 8).divided))).toEqual(['shoulders gain 3', 'back neck as wide']);
    expect(counted(notes(against(14, 8).divided))).toEqual(['shoulders lose 4', 'back neck as wide']);
  });

  it('makes the neckband longer by what its edge gains, in stitches', () => {
    const band = (depth: number) =>
      against(17, depth).divided.notes.find(({ say }) => say.includes('neckband'));
    // 10 cm for 8 are six straight rows more at either side, 4 cm in all: 8.8 stitches.
    expect(band(10)).toMatchObject({
      say: 'note: neckband loses',
      with: { edge: { value: expect.closeTo(4, 9) }, count: { value: 9 } },
    });
    expect(band(6)?.say).toBe('note: neckband gains');
    expect(band(8)).toBeUndefined();
  });

  it('shows the pattern’s figures and its own, then how the changes come about', () => {
    const lines = told(against(17, 6).divided.workings);
    expect(lines.slice(0, 2)).toEqual([
      "the pattern's neck width: a = 17 cm",
      "the pattern's neck depth: a = 6 cm",
    ]);
    expect(lines).toContain('rows of the neck: the difference from the pattern: a - b = 6 rows');
    expect(lines).toContain('depth of the neck: a / b = 8 cm');
  });

  it('is drawn beside the pattern’s, where that can be shaped', () => {
    expect(against(17, 6).divided.shaped).toMatchObject({
      after: { rows: 24 },
      before: { rows: 18 },
      slope: 0,
    });
    // 36 cm are wider than the 76 stitches.
    const wide = against(36, 6).divided;
    expect(wide.shaped).toMatchObject({ before: null });
    expect(wide.pattern?.with).toMatchObject({ width: { value: 36 } });
    expect(notes(wide)).toEqual(['back neck as wide']);
  });

  it('is measured beside it when finished', () => {
    const [width, depth] = against(20, 6).finished;
    expect([width?.name, width?.pattern, depth?.name, depth?.pattern]).toEqual([
      'front neck width',
      20,
      'front neck depth',
      6,
    ]);
    expect([width?.range.expected, depth?.range.expected]).toEqual([38 / 2.2, 8]);
  });
});

describe('a front neck of which the pattern says nothing', () => {
  it('is told by itself', () => {
    const { divided, finished } = partOf(ASK, null);
    expect(divided.pattern).toBeNull();
    expect(notes(divided)).toEqual(['back neck as wide']);
    expect(divided.shaped).toMatchObject({ before: null });
    expect(finished.map(({ pattern }) => pattern)).toEqual([null, null]);
    expect(told(divided.workings).filter((line) => line.startsWith('the pattern'))).toEqual([]);
    expect(divided.instead.map((one) => one.do)).toEqual(['say', 'divide']);
    expect(divided.instead[1]).toEqual({ do: 'divide', first: 32, bindOff: 12, last: 32, atEdges: 0 });
  });
});

describe('a V', () => {
  it('says that it is one, and compares no edge with the pattern’s, whose outline is not asked for', () => {
    const { divided } = partOf({ ...ASK, shape: 'V' }, { width: cm(17), depth: cm(6) });
    expect(divided.instead[0]).toMatchObject({ phrase: { say: 'do: neck is a V' } });
    expect(notes(divided)).toEqual(['neck begins earlier 6', 'back neck as wide']);
    expect(divided.shaped).toMatchObject({ before: null });
  });
});

describe('a neck before a slope of the shoulders', () => {
  const line = workOut('rows of the slope', 'a', { a: quantity('rows', 6, 'rows') }, { unit: 'rows' });
  const slope: NeckSlope = { rows: rows(6), workings: [line] };

  it('is as deep as both, and is not held against the pattern’s', () => {
    const { divided, finished } = partOf(ASK, { width: cm(17), depth: cm(12) }, slope);
    expect(notes(divided)).toEqual(['slope deepens the neck', 'back neck as wide']);
    expect(divided.shaped).toMatchObject({ before: null, slope: 6 });
    expect(divided.workings[0]).toEqual(line);
    const [, depth] = finished;
    // 24 + 6 rows are 10 cm.
    expect([depth?.range.expected, depth?.pattern]).toEqual([10, 12]);
    expect(told(depth?.workings ?? []).slice(0, 2)).toEqual([
      'rows of the neck and of the slope: a + b = 30 rows',
      'front neck depth: a / b = 10 cm',
    ]);
    expect(partOf(ASK, null, slope).finished[1]?.pattern).toBeNull();
  });
});

describe('a neck within the armholes', () => {
  const lines = {
    bust: stitches(100),
    bindOffs: [stitches(6)],
    rows: rows(60),
    events: [
      { row: rows(1), edge: 'right', by: 'bind off', change: -6, after: stitches(94) },
      { row: rows(2), edge: 'left', by: 'bind off', change: -6, after: stitches(88) },
      ...[3, 11, 19, 27, 35, 43].map((row, i) => ({
        row: rows(row),
        edge: 'both' as const,
        by: 'decrease' as const,
        change: -1,
        after: stitches(86 - 2 * i),
      })),
    ],
  } as const;

  it('divides what is left by then, and tells each side which of its edges is the neck', () => {
    const found = neck(ASK);
    if (found.kind !== 'neck') throw new Error(found.kind);
    const within = neckInArmhole(lines, found);
    if (within?.kind !== 'neck in the armhole') throw new Error(within?.kind ?? 'apart');
    const note = phrase('note: shoulders gain');
    const { divided, first, second } = partOf(ASK, null, null, { within, notes: [note], workings: [] });
    // 36 rows of 60 are knitted: 100 − 12 − 10 = 78, less the centre 66, half of it at each side.
    expect(divided.instead.at(-1)).toEqual({ do: 'divide', first: 33, bindOff: 12, last: 33, atEdges: 0 });
    expect(divided.notes[0]).toEqual(note);
    expect(told(divided.workings)).toContain('rows of the armhole before the neck: a - b = 36 rows');
    const said = (of: Step) => of.instead.flatMap((one) => (one.do === 'say' ? [one.phrase.say] : []));
    expect(said(first)).toEqual(['do: rows go on from the divided row', 'do: neck edge at the right']);
    expect(said(second)).toEqual(['do: take up the other side', 'do: neck edge at the left']);
    expect(told(first.workings)).toContain('rows of the armhole before the neck: a - b = 36 rows');
  });

  it('needs no such word where the armholes are straight', () => {
    const { first, second } = partOf(ASK, null);
    for (const side of [first, second])
      expect(side.instead.filter((one) => one.do === 'say')).toHaveLength(1);
  });
});

describe('where there is no neck', () => {
  const alternatives: CannotNeck['alternatives'] = [];
  const cases: readonly [CannotNeck, string, Readonly<Record<string, number>>][] = [
    [
      { kind: 'no shoulders left', neck: stitches(80), stitches: stitches(76), alternatives },
      'cannot: no shoulders left',
      { neck: 80, across: 76 },
    ],
    [
      { kind: 'centre of the wrong parity', centre: stitches(13), neck: stitches(38), alternatives },
      'cannot: neck not symmetrical',
      {},
    ],
    [
      { kind: 'shaping exceeds the neck', taken: stitches(42), neck: stitches(38), alternatives },
      'cannot: shaping exceeds the neck',
      { taken: 42, neck: 38 },
    ],
    [
      { kind: 'too few rows', needed: rows(15), available: rows(12), alternatives },
      'cannot: neck too shallow',
      { needed: 15, available: 12 },
    ],
  ];

  it.each(cases)('the plan says why, with its figures: %o', (found, because, figures) => {
    const said = neckOtherwise(found, ASK, []);
    if (!('kind' in said)) throw new Error('nothing can be planned of it');
    const [why] = said.because;
    expect(why?.say).toBe(because);
    const gaps = Object.entries(why?.with ?? {}).map(([name, gap]) => [
      name,
      typeof gap === 'string' ? gap : gap.value,
    ]);
    expect(Object.fromEntries(gaps)).toEqual(figures);
    // 37.4 stitches and 24 rows were asked for.
    expect(told(said.workings).slice(0, 2)).toEqual([
      'stitches of the neck: a * b = 37 stitches',
      'rows of the neck: a * b = 24 rows',
    ]);
    expect(said.workings.slice(2).map(({ result }) => result.value)).toEqual(Object.values(figures));
  });
});
