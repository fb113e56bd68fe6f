/** Darts that run up and down, worked by hand at 20 stitches and 28 rows to 10 cm: 8 cm more are 16 stitches, four a shaping row. */
import { describe, expect, it } from 'vitest';
import type { Step } from '../../src/fit/plan.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { type VerticalDartAsk, verticalDarts } from '../../src/fit/vertical-dart.ts';
import { type FrontDarts, type FrontDartsAsk, frontDarts } from '../../src/fit/vertical-dart-steps.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

const GAUGE = over10cm(20, 28, 'round');
/** 20 cm from bust point to bust point are 40 of 100 stitches: 30 at either side. */
const ASK: VerticalDartAsk = {
  extra: { from: 'width', width: cm(8) },
  gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(2.8) },
  front: stitches(100),
  bustSpan: cm(20),
  perRow: 4,
  carriers: 'every row',
  widenOver: rows(20),
  narrowOver: rows(16),
};

const over = (what: string, count: number) =>
  workOut(what, 'a', { a: quantity('rows', count, 'rows') }, { unit: 'rows' });
const FRONT: FrontDartsAsk = {
  ...ASK,
  worked: 'round',
  direction: 'up',
  sides: null,
  edge: 0,
  widen: over('rows to widen over', 20),
  narrow: over('rows to narrow over', 16),
};

function darts(more: Partial<FrontDartsAsk> = {}): FrontDarts {
  const found = frontDarts({ ...FRONT, ...more }, GAUGE);
  if (found.kind !== 'darts') throw new Error('there are darts');
  return found;
}

const said = (one: Step | undefined) =>
  one?.instead.flatMap((what) => (what.do === 'say' ? [what.phrase.say] : []));
const notes = (one: Step | undefined) => one?.notes.map(({ say }) => say);
const fromSide = (one: Step | undefined) =>
  one?.shaped?.shape === 'front darts' ? one.shaped.after.fromSide : undefined;

describe('darts that run up and down', () => {
  it('need a stitch at either side', () => {
    expect(verticalDarts({ ...ASK, front: stitches(41) })).toMatchObject({
      kind: 'darts outside the front',
      span: 40,
      front: 41,
    });
    expect(verticalDarts({ ...ASK, front: stitches(42) })).toMatchObject({
      kind: 'vertical darts',
      fromSide: 1,
    });
  });

  it('take the width from the girths where that is how it is known', () => {
    const girths = { from: 'girths', bust: cm(108), upperBust: cm(100) } as const;
    const found = verticalDarts({ ...ASK, extra: girths });
    expect(told(found.workings)[0]).toBe('width to add to the front: a - b = 8 cm');
  });

  it.each([
    ['every row', 3, 'rows that may carry shaping: a = 3 rows'],
    ['odd rows', 5, 'rows that may carry shaping: a / 2 = 3 rows'],
    ['even rows', 5, 'rows that may carry shaping: a / 2 = 2 rows'],
  ] as const)('say how many rows are lacking where they shape on %s', (carriers, length, line) => {
    const found = verticalDarts({ ...ASK, carriers, widenOver: rows(length) });
    expect(found).toMatchObject({ kind: 'too few rows', part: 'widening', needed: 4 });
    expect(told(found.workings).slice(-2)).toEqual(['shaping rows needed: a / b = 4 times', line]);
  });

  it('say the same of the rows in which they narrow', () => {
    const found = verticalDarts({ ...ASK, narrowOver: rows(2) });
    expect(found).toMatchObject({ kind: 'too few rows', part: 'narrowing', needed: 4, available: 2 });
    expect(told(found.workings).at(-1)).toBe('rows that may carry shaping: a = 2 rows');
  });
});

describe('a front that widens and narrows again', () => {
  it('has its dart lines 30 stitches from the sides, and four more where it is widest', () => {
    const { before, after, added } = darts();
    expect(added).toBe(16);
    expect([fromSide(before[0]), fromSide(after[0])]).toEqual([30, 34]);
    expect(before[0]?.shaped).toMatchObject({ after: { spaced: { from: 100, to: 116, rows: 20 } } });
    expect(after[0]?.shaped).toMatchObject({ after: { spaced: { from: 116, to: 100, rows: 16 } } });
  });

  it('is told up to the bust point and on to the underarm, or down to it and on to the waist', () => {
    const up = darts();
    expect(said(up.before[0])?.slice(0, 2)).toEqual([
      'do: hang dart markers',
      'do: widen up to the bust point',
    ]);
    expect(said(up.after[0])?.[0]).toBe('do: narrow up to the underarm');
    const down = darts({ direction: 'down' });
    expect(said(down.before[0])?.[1]).toBe('do: widen down to the bust point');
    expect(said(down.after[0])?.[0]).toBe('do: narrow down to the waist');
    expect(notes(up.before[0])).not.toContain('note: front keeps its stitches');
  });

  it('shows each sum once', () => {
    for (const one of [...darts().before, ...darts().after]) {
      const lines = told(one.workings);
      expect(lines.filter((line, i) => lines.indexOf(line) !== i)).toEqual([]);
      expect(lines).toContain('stitches of the front at its fullest: a + b = 116 stitches');
      expect(lines).toContain('stitches from the side to the dart: (a - b) / 2 = 30 stitches');
    }
    expect(told(darts().before[0]?.workings ?? []).slice(0, 2)).toEqual([
      'rows to narrow over: a = 16 rows',
      'rows to widen over: a = 20 rows',
    ]);
  });
});

describe('a front that only widens', () => {
  it('keeps its stitches', () => {
    const { before, after } = darts({ narrow: null });
    expect(after).toEqual([]);
    expect(notes(before[0])).toContain('note: front keeps its stitches');
    expect(said(before[0])?.[1]).toBe('do: widen down to the bust point');
    expect(told(before[0]?.workings ?? [])[0]).toBe('rows to widen over: a = 20 rows');
  });
});

describe('a front that only narrows', () => {
  it('begins with all its stitches, its dart lines counted on these', () => {
    const { before, after } = darts({ widen: null });
    expect(said(before[0])).toEqual(['do: cast on more for the front']);
    expect(said(after[0])?.slice(0, 2)).toEqual(['do: hang dart markers', 'do: narrow up to the underarm']);
    // (116 − 40) / 2
    expect(fromSide(after[0])).toBe(38);
    const sides = told(after[0]?.workings ?? []).filter((line) => line.startsWith('stitches from the side'));
    expect(sides).toEqual(['stitches from the side to the dart: (a - b * c) / 2 = 38 stitches']);
  });
});

describe('where there are no darts', () => {
  function refused(more: Partial<FrontDartsAsk>) {
    const found = frontDarts({ ...FRONT, ...more }, GAUGE);
    if (found.kind === 'darts') throw new Error('there are darts');
    return {
      because: found.because.map(({ say }) => say),
      instead: found.instead.map(({ say }) => say),
      found,
    };
  }

  it('the plan says why, and what may be done', () => {
    // Half a centimetre is one stitch of the four that a shaping row adds.
    expect(refused({ extra: { from: 'width', width: cm(0.5) } })).toMatchObject({
      because: ['cannot: no width needed'],
      instead: ['instead: no bust shaping'],
      found: { because: [{ with: { width: { value: 0.5 } } }] },
    });
    expect(refused({ front: stitches(41) })).toMatchObject({
      because: ['cannot: darts outside the front'],
      instead: ['instead: change the figures'],
      found: { because: [{ with: { span: { value: 40 }, front: { value: 41 } } }] },
    });
  });

  it('one reason is given where the rows are too few, and every way beside it', () => {
    const { because, instead, found } = refused({ widen: over('rows to widen over', 3) });
    expect(because).toHaveLength(1);
    expect(instead.length).toBeGreaterThan(0);
    expect(instead).not.toContain(because[0]);
    expect(told(found.workings)).toContain('shaping rows needed: a / b = 4 times');
  });

  it('it is a programmer’s mistake to ask for neither section', () => {
    expect(() => frontDarts({ ...FRONT, widen: null, narrow: null }, GAUGE)).toThrow(/widens or narrows/);
  });
});
