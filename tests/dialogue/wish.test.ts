import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findWish, rankWishes } from '../../src/dialogue/wish.ts';
import { loadFlows } from '../../src/library.ts';
import { SAID } from './wishes-said.ts';

const wishes = [...loadFlows().values()].map(({ file }) => file);
const placeOf = (said: string, meant: readonly string[]) =>
  rankWishes(wishes, said).findIndex(({ wish }) => meant.includes(wish.id)) + 1;

describe('free words', () => {
  it.each(SAID)('“%s” leads to one of the first three: %s', (said, ...meant) => {
    const place = placeOf(said, meant);
    expect([1, 2, 3]).toContain(place);
  });

  it('lead to the first nine times out of ten, and never surely to another', () => {
    const firsts = SAID.filter(([said, ...meant]) => placeOf(said, meant) === 1);
    expect(firsts.length / SAID.length).toBeGreaterThan(0.9);
    const misled = SAID.filter(([said, ...meant]) => {
      const found = findWish(wishes, said);
      return found.found === 'one' && !meant.includes(found.wish.id);
    });
    expect(misled).toEqual([]);
  });

  it('mean what a flow calls itself, whatever else is near', () => {
    for (const { id, title, wish } of wishes)
      for (const name of [id, title, wish, wish.toUpperCase(), `${title} `])
        expect(findWish(wishes, name)).toMatchObject({ found: 'one', wish: { id } });
  });

  it('mean the same in another order, in the plural and with a typing slip', () => {
    for (const said of [
      'sleeve tight',
      'tight sleeves',
      'it is tight, the sleeve',
      'tight sleves',
      'my sleeve is tigth',
    ])
      expect(findWish(wishes, said)).toMatchObject({ found: 'one', wish: { id: 'sleeve' } });
    for (const said of ['armhole deep', 'deep armholes', 'the armhole is far too deep'])
      expect(findWish(wishes, said)).toMatchObject({ found: 'one', wish: { id: 'armhole' } });
  });

  it('are heard in the terms of both sides of the sea', () => {
    for (const said of ['my gauge is off', 'my tension is off'])
      expect(findWish(wishes, said)).toMatchObject({ found: 'one', wish: { id: 'regauge' } });
  });

  it.each(['', '   ', '?!', 'xyzzy', 'the and of', '🧶', '\u202e\u200f', '12345', 'مرحبا'])(
    'that tell no wish, such as “%s”, are said to tell none',
    (said) => {
      const found = findWish(wishes, said);
      expect(found.found === 'one').toBe(false);
    },
  );

  it('never fail, and offer at most three, each once', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 2_000 }), fc.lorem()), (said) => {
        const found = findWish(wishes, said);
        const offered = found.found === 'several' ? found.wishes.map(({ id }) => id) : ['one'];
        expect(offered.length).toBeGreaterThanOrEqual(1);
        expect(offered.length).toBeLessThanOrEqual(3);
        expect(new Set(offered).size).toBe(offered.length);
      }),
      { numRuns: 200 },
    );
  });

  it('of each flow are heard as that flow', () => {
    const unheard = wishes.flatMap(({ id, hear }) =>
      hear.filter((said) => ![1, 2, 3].includes(placeOf(said, [id]))).map((said) => `${id}: ${said}`),
    );
    expect(unheard).toEqual([]);
  });

  it('are declared by every flow, ten at least of most', () => {
    expect(wishes.filter(({ hear }) => hear.length < 5).map(({ id }) => id)).toEqual([]);
  });
});
