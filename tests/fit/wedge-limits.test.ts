/** Where short rows begin and end to be possible, and how they are closed; counts are worked by hand, at 3 rows to the centimetre. */
import { describe, expect, it } from 'vitest';
import { cm, perCm, rows, stitches } from '../../src/fit/units.ts';
import { layWedge, type Wedge } from '../../src/fit/wedge.ts';
import type { WedgeAsk } from '../../src/fit/wedge-base.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle } from '../simulator/needle.ts';

interface Wanted extends Partial<Omit<WedgeAsk, 'needle' | 'span' | 'inset' | 'flat' | 'depth'>> {
  readonly needle?: number;
  readonly span?: readonly [start: number, stitches: number];
  readonly inset?: number;
  readonly flat?: number;
  readonly turns?: number;
}

/** Three turns at each side of 40 stitches, the ten in the middle getting the full depth. */
function askFor({ needle = 40, span = [0, 40], inset = 5, flat = 10, turns = 3, ...rest }: Wanted): WedgeAsk {
  return {
    purpose: 'bust dart',
    place: { level: 'bust', rows: rows(0), point: 'begins' },
    worked: 'flat',
    sides: 'both',
    order: 'shortening',
    outer: 'turn',
    counted: 'from the sides',
    ...rest,
    depth: cm((2 * turns) / 3),
    gauge: { stitchesPerCm: perCm(2), rowsPerCm: perCm(3) },
    needle: stitches(needle),
    span: { start: span[0], stitches: stitches(span[1]) },
    // A negative inset or middle is what some of these asks are about.
    inset: inset as WedgeAsk['inset'],
    flat: flat as WedgeAsk['flat'],
  };
}

function laid(wanted: Wanted): Wedge {
  const found = layWedge(askFor(wanted));
  if (found.kind !== 'wedge') throw new Error(found.kind);
  return found;
}

describe('the row after the last turn', () => {
  const round = { worked: 'round', needle: 100, inset: 0 } as const;

  it.each<[string, Wanted, number]>([
    ['of a flat piece ends the row', {}, 1],
    ['of a flat piece ends the row where the turns lengthen', { order: 'lengthening' }, 1],
    ['in the round passes what lies before the wedge', { ...round, span: [30, 40] }, 1],
    [
      'in the round passes it where the turns lengthen',
      { ...round, span: [30, 40], order: 'lengthening' },
      1,
    ],
    ['across the join ends there, with nothing to pass', { ...round, span: [80, 40] }, 0],
    ['across the join where the turns lengthen', { ...round, span: [80, 40], order: 'lengthening' }, 0],
    ['of a wedge that begins at the join', { ...round, span: [0, 40], order: 'lengthening' }, 0],
    ['of a wedge that begins at the join and shortens', { ...round, span: [0, 40] }, 1],
    ['of a wedge that ends at the join', { ...round, span: [60, 40] }, 1],
  ])('%s', (_, wanted, ordinaryRows) => {
    const wedge = laid(wanted);
    expect(wedge.closing.ordinaryRows).toBe(ordinaryRows);
    const { heights } = knitWedge(Needle.castOn(wedge.needle, wedge.worked), wedge);
    expect(Math.min(...heights)).toBe(ordinaryRows);
    expect(Math.max(...heights)).toBe(ordinaryRows + 6);
  });

  it('goes to the join in the round, and closes the gaps that no row has closed before', () => {
    expect(laid({}).closing).toMatchObject({ to: 'end of the row', gaps: 6, closed: 'after the last turn' });
    expect(laid({ order: 'lengthening' }).closing.closed).toBe('row by row');
    expect(laid({ ...round, span: [30, 40] }).closing.to).toBe('join');
  });
});

describe('a wedge in the round', () => {
  it('that ends at the join is counted from the round’s beginning, one that runs past it from before', () => {
    const markers = (start: number) =>
      laid({ worked: 'round', needle: 100, span: [start, 40] }).markers.map(({ at }) => at);
    expect(markers(60)).toEqual([60, 100]);
    expect(markers(61)).toEqual([-39, 1]);
  });

  it('is offered sloped on both sides where one was asked for, the middle as wide as is left', () => {
    const oneSided = (flat: number) => {
      const found = layWedge(askFor({ worked: 'round', needle: 100, sides: 'end', inset: 2, flat }));
      if (found.kind !== 'one side in the round') throw new Error(found.kind);
      return found.alternatives.map(({ way, wedges: [only] }) => [way, only?.sides, only?.flat]);
    };
    // 40 − 2 − 25 = 13 sloped; 40 − 2 × (2 + 13) = 10 in the middle.
    expect(oneSided(25)).toEqual([['both sides', 'both', 10]]);
    // 28 sloped on either side leave nothing of 36.
    expect(oneSided(10)).toEqual([['both sides', 'both', 0]]);
  });

  it('sloped on one side is refused as such, however wide it is', () => {
    const whole: Wanted = { worked: 'round', sides: 'end', inset: 0, span: [0, 40] };
    expect(layWedge(askFor({ ...whole, outer: 'step' })).kind).toBe('one side in the round');
  });
});

describe('where there are more turns than stitches for them', () => {
  /** Sloped where right-side rows end: 20 stitches after the inset, of which the flat part takes its share. */
  const ways = (flat: number, turns: number) => {
    const found = layWedge(askFor({ needle: 21, span: [0, 21], sides: 'end', inset: 1, flat, turns }));
    if (found.kind !== 'too many turns') throw new Error(found.kind);
    return found.alternatives.map(
      ({ way, wedges }) =>
        `${way}: ${wedges.map((wedge) => `${wedge.turns.length} turns beside ${wedge.flat}`).join(', ')}`,
    );
  };

  it('the wedge is made in two, its middle narrower, or shallower', () => {
    // 20 − 12 = 8 sloped stitches hold nine turns; twelve leave 21 − 1 − 12 = 8 in the middle.
    expect(ways(12, 12)).toEqual([
      'two wedges: 6 turns beside 12, 6 turns beside 12',
      'narrower middle: 12 turns beside 8',
      'shallower: 9 turns beside 12',
    ]);
  });

  it('the middle keeps a stitch, and neither half has more turns than there is room for', () => {
    expect(ways(12, 19)).toEqual(['narrower middle: 19 turns beside 1', 'shallower: 9 turns beside 12']);
    expect(ways(12, 20)).toEqual(['shallower: 9 turns beside 12']);
  });

  it('nothing is offered that has no turn at all', () => {
    // Two stitches, with a step outside the turns and one within: room for no turn.
    const found = layWedge(askFor({ needle: 2, span: [0, 2], inset: 0, flat: 0, outer: 'step', turns: 1 }));
    expect(found).toMatchObject({ kind: 'too many turns', most: 0, alternatives: [] });
  });
});

describe('a caller’s mistake throws', () => {
  const fits = /does not fit/;
  const outside = /a stitch outside its outermost turn/;
  const other = /runs to the other edge/;

  it.each<[string, Wanted, RegExp]>([
    ['a wedge that begins before a flat piece', { span: [-1, 40] }, fits],
    ['a wedge that ends beyond a flat piece', { span: [1, 40] }, fits],
    ['a wedge longer than the round', { worked: 'round', span: [0, 41] }, fits],
    ['a negative inset', { inset: -1, span: [5, 30] }, fits],
    ['a negative middle', { flat: -1 }, fits],
    ['a middle wider than the base', { flat: 31 }, fits],
    ['an inset that leaves no base', { inset: 20, flat: 0 }, fits],
    ['a turn at both ends of the row', { inset: 0 }, outside],
    ['a turn where right-side rows begin', { inset: 0, span: [0, 39] }, outside],
    ['a turn where right-side rows end', { inset: 0, span: [1, 39] }, outside],
    ['a one-sided turn where right-side rows end', { sides: 'end', inset: 0 }, outside],
    ['a one-sided turn where right-side rows begin', { sides: 'start', inset: 0 }, outside],
    ['two turns in one place of the round', { worked: 'round', inset: 0 }, outside],
    ['a slope at the end that does not begin at the start', { sides: 'end', span: [1, 39] }, other],
    ['a slope at the start that does not run to the end', { sides: 'start', span: [0, 39] }, other],
  ])('%s', (_, wanted, fault) => {
    expect(() => layWedge(askFor(wanted))).toThrow(fault);
  });

  it.each<[string, Wanted]>([
    ['the full depth over the whole base', { flat: 30, turns: 1 }],
    ['one stitch beside either turn', { inset: 1 }],
    ['the whole row where a step lies outside the turns', { inset: 0, outer: 'step' }],
    ['the whole round where a step lies outside the turns', { worked: 'round', inset: 0, outer: 'step' }],
    ['all of the round but a stitch', { worked: 'round', inset: 0, span: [0, 39] }],
    ['a slope at the end of part of a row', { sides: 'end', inset: 0, span: [0, 39] }],
    ['a slope at the start of part of a row', { sides: 'start', inset: 0, span: [1, 39] }],
  ])('but not %s', (_, wanted) => {
    expect(laid(wanted).kind).toBe('wedge');
  });
});
