/** The counts of a sleeve worked by hand, and what a plan says of it, at 20 stitches and 28 rows to 10 cm. */
import { describe, expect, it } from 'vitest';
import { type CannotCap, cap } from '../../src/fit/cap.ts';
import type { FittedCap } from '../../src/fit/cap-steps.ts';
import type { Step } from '../../src/fit/plan.ts';
import { type SleeveAsk, type SleeveShaping, shapeSleeve } from '../../src/fit/sleeve.ts';
import { sleevePart } from '../../src/fit/sleeve-steps.ts';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { quantity, workOut } from '../../src/fit/working.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** Flat, two of its stitches in the seam: 44 at the wrist, 74 at the upper arm, 43 cm long. */
const ASK: SleeveAsk = {
  gauge: over10cm(20, 28, 'flat'),
  direction: 'up',
  edge: 2,
  pattern: { wrist: stitches(44), upperArm: stitches(74), length: cm(43), cuff: cm(5) },
  wrist: null,
  upperArm: null,
  length: cm(43),
  cuffRepeat: { multiple: 1, plus: 0 },
};

function drawn(more: Partial<SleeveAsk> = {}): SleeveShaping {
  const sleeve = shapeSleeve({ ...ASK, ...more });
  if (sleeve.kind !== 'sleeve') throw new Error(sleeve.why);
  return sleeve;
}

const NONE = { wrist: null, upperArm: null };
const partOf = (more: Partial<SleeveAsk> = {}, top?: Parameters<typeof sleevePart>[2]) =>
  sleevePart(drawn(more), NONE, top);

describe('the counts of a sleeve', () => {
  const counts = (more: Partial<SleeveAsk>) => {
    const { counts: of, topDifference } = drawn(more);
    return [of.wrist, of.upperArm, topDifference === null ? null : told([topDifference])[0]];
  };

  it('are the pattern’s where nothing else is wanted', () => {
    expect(counts({})).toEqual([44, 74, null]);
  });

  it('let the upper arm be where pairs of stitches reach it from the new wrist', () => {
    // 22 cm × 2 + 2 = 46.
    expect(counts({ wrist: cm(22) })).toEqual([46, 74, null]);
  });

  it('move the upper arm by a stitch where they do not, and say so of the top', () => {
    // 22.5 cm × 2 + 2 = 47; 74 lies between 73 and 75, and a tie goes to the larger.
    expect(counts({ wrist: cm(22.5) })).toEqual([
      47,
      75,
      'stitches more than the pattern: a - b = 1 stitches',
    ]);
  });

  it('are counted for the width that is wanted at the upper arm', () => {
    // 30 cm × 2 + 2 = 62, in pairs from 44; 35 cm make 72, between 71 and 73 in pairs from 47.
    expect(counts({ upperArm: cm(30) })).toEqual([
      44,
      62,
      'stitches fewer than the pattern: a - b = 12 stitches',
    ]);
    expect(counts({ wrist: cm(22.5), upperArm: cm(35) })[1]).toBe(73);
  });
});

describe('a sleeve', () => {
  it('has no room for its cuff where it is no longer than that, here or in the pattern', () => {
    const cannot = { kind: 'cannot', why: 'edging longer than the piece', edging: 5 };
    expect(shapeSleeve({ ...ASK, length: cm(5) })).toEqual({ ...cannot, length: 5 });
    const pattern = { ...ASK.pattern, length: cm(4) };
    expect(shapeSleeve({ ...ASK, pattern })).toEqual({ ...cannot, length: 4 });
    expect(shapeSleeve({ ...ASK, length: cm(5.1) }).kind).toBe('sleeve');
  });

  it('is drawn beside the pattern’s where its length is known', () => {
    expect(drawn({ length: cm(40) }).before?.levels.map(({ row }) => row)).toEqual([0, 14, 120]);
    expect(drawn({ length: cm(40) }).after.levels.map(({ row }) => row)).toEqual([0, 14, 112]);
    expect(drawn({ pattern: { ...ASK.pattern, length: null } }).before).toBeNull();
  });
});

const where = (steps: readonly Step[]) => steps.map((one) => one.where.say);
const notes = (one: Step | undefined) => one?.notes.map(({ say }) => say);

describe('the plan of a sleeve', () => {
  it('goes from the cuff up, or from the underarm down', () => {
    expect(where(partOf().steps)).toEqual(['where: cast-on and cuff', 'where: cuff to underarm']);
    expect(where(partOf({ direction: 'down' }).steps)).toEqual([
      'where: underarm to cuff',
      'where: last edging',
    ]);
  });

  it('checks the wrist round about where it is knitted so, and flat where it is not', () => {
    expect(partOf().steps[0]?.check?.say).toBe('check: width');
    const round = { gauge: over10cm(20, 28, 'round'), edge: 0 };
    expect(partOf(round).steps[0]?.check?.say).toBe('check: width around');
  });

  it('names the counts on either side of one that was worked out, and no others', () => {
    // 22.2 cm are 46.4 stitches; 30.2 cm 62.4.
    const [cuff, arm] = partOf({ wrist: cm(22.2), upperArm: cm(30.2) }).steps;
    expect(notes(cuff)).toEqual(['note: nearest counts', 'note: hand must pass']);
    expect(notes(arm)).toContain('note: nearest counts');
    const [plainCuff, plainArm] = partOf().steps;
    expect(notes(plainCuff)).toEqual(['note: hand must pass']);
    expect(notes(plainArm)).not.toContain('note: nearest counts');
  });

  it('shows how the widths were wanted where that is known, then how they were counted', () => {
    const line = (name: string) => workOut(name, 'a', { a: quantity('width', 22, 'cm') }, { unit: 'cm' });
    const eased = { wrist: line('wrist wanted'), upperArm: line('upper arm wanted') };
    const [cuff, arm] = sleevePart(drawn({ wrist: cm(22), upperArm: cm(30) }), eased).steps;
    expect(told(cuff?.workings ?? []).slice(0, 2)).toEqual([
      'wrist wanted: a = 22 cm',
      'stitches at the wrist: a * b + c = 46 stitches',
    ]);
    expect(told(arm?.workings ?? []).slice(0, 3)).toEqual([
      'width at the upper arm of the pattern: (a - c) / b = 36 cm',
      'upper arm wanted: a = 22 cm',
      'stitches at the upper arm: a * b + c = 62 stitches',
    ]);
    const [plainCuff, plainArm] = partOf().steps;
    expect(told(plainCuff?.workings ?? [])[0]).toBe(
      'width at the upper arm of the pattern: (a - c) / b = 36 cm',
    );
    expect(told(plainCuff?.workings ?? [])[1]).toBe('width at the wrist: (a - c) / b = 21 cm');
    expect(told(plainArm?.workings ?? [])[1]).toBe('rows to the cuff: a * b = 14 rows');
  });
});

describe('the top of a sleeve whose upper arm has another count', () => {
  const fuller = { upperArm: cm(40) };
  const said = (one: Step | undefined) =>
    one?.instead.flatMap((what) => (what.do === 'say' ? [what.phrase.say] : []));

  it('is not told where the arm has the pattern’s count, nor where it is told by itself', () => {
    expect(partOf({ wrist: cm(22) }).steps).toHaveLength(2);
    expect(partOf(fuller, 'told by itself').steps).toHaveLength(2);
  });

  it('takes up the difference where no armhole is known', () => {
    // 40 cm × 2 + 2 = 82, eight more than 74.
    const [, , top] = partOf(fuller).steps;
    expect(top?.where.say).toBe('where: sleeve top');
    expect(said(top)).toEqual(['note: cap takes the difference']);
    expect(top?.instead[0]).toMatchObject({ phrase: { with: { count: { value: 8 }, which: 'more' } } });
    expect(notes(top)).toEqual(['note: armhole chapter fits the cap']);
    expect(told(top?.workings ?? []).slice(1)).toEqual([
      'stitches more than the pattern: a - b = 8 stitches',
      'width at the upper arm: (a - c) / b = 40 cm',
    ]);
    expect(partOf({ upperArm: cm(30) }).steps[2]?.instead[0]).toMatchObject({
      phrase: { with: { count: { value: 12 }, which: 'fewer' } },
    });
  });

  it('is the cap that fits the armhole, where there is one', () => {
    const armhole = {
      front: { rows: rows(56), edge: cm(23), events: [] },
      back: { rows: rows(56), edge: cm(23), events: [] },
    };
    const found = cap({
      upperArm: stitches(82),
      armhole: { front: cm(25), back: cm(25) },
      depth: cm(20),
      bindOff: stitches(5),
      gauge: ASK.gauge,
    });
    if (found.kind !== 'cap') throw new Error(found.kind);
    const rates = { stitchesPerCm: perCm(2), rowsPerCm: perCm(2.8) };
    const fitted: FittedCap = {
      kind: 'fitted cap',
      cap: found,
      shaped: {
        shape: 'cap',
        gauge: rates,
        after: found,
        before: null,
        armhole: { gauge: rates, ...armhole },
      },
    };
    const [, , top] = partOf(fuller, fitted).steps;
    expect(top?.where.say).toBe('where: sleeve cap');
    expect(said(top)?.slice(0, 2)).toEqual([
      'do: cap for another upper arm',
      'do: cap begins as the armhole',
    ]);
    expect(top?.pattern?.with).toMatchObject({ count: { value: 74 } });
    expect(told(top?.workings ?? [])[1]).toBe('stitches more than the pattern: a - b = 8 stitches');
  });

  it('is told with the ways out where no cap fits', () => {
    const tight = cap({
      upperArm: stitches(82),
      armhole: { front: cm(21), back: cm(21) },
      depth: cm(20),
      bindOff: stitches(5),
      gauge: ASK.gauge,
    });
    if (tight.kind === 'cap') throw new Error('there is a cap');
    expect(tight.alternatives).not.toEqual([]);
    const [, , top] = partOf(fuller, tight).steps;
    expect(said(top)?.slice(0, 2)).toEqual([
      'note: cap takes the difference',
      'cannot: armhole edge too short',
    ]);
    expect(top?.instead.at(-1)?.do).toBe('choose one');
    expect(notes(top)).toEqual(['note: ask again with that figure']);
    expect(told(top?.workings ?? [])).toContain(`edge wanted: a = 42 cm`);
  });

  it('is told alone where nothing would fit', () => {
    const nothing: CannotCap = { kind: 'armhole too shallow', rows: rows(6), alternatives: [] };
    const [, , top] = partOf(fuller, nothing).steps;
    expect(said(top)).toEqual(['note: cap takes the difference']);
    expect(notes(top)).toEqual([]);
  });
});
