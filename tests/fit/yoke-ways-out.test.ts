/** What is offered where no round yoke can be shaped, at 20 stitches and 30 rounds to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { cm, stitches } from '../../src/fit/units.ts';
import { type YokeAsk, yoke } from '../../src/fit/yoke.ts';
import { evenly, THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { shapeYoke } from '../../src/fit/yoke-shape.ts';
import { over10cm } from './at-gauge.ts';

/** 20 cm are 60 rounds. */
function askFor(underarm: number, neck: number, more: Partial<YokeAsk> = {}): YokeAsk {
  return {
    direction: 'up',
    gauge: over10cm(20, 30, 'round'),
    depth: cm(20),
    underarm: stitches(underarm),
    neck: stitches(neck),
    scheme: THREE_ROUNDS,
    ...more,
  };
}

/** Each way with its rounds and, after the count at the underarm, those that its shaping rounds leave. */
function ways(ask: YokeAsk, because: string) {
  const found = yoke(ask);
  if (found.kind === 'yoke') throw new Error('there is a yoke');
  expect(found.kind).toBe(because);
  return found.alternatives.map(({ way, yoke: made }) => {
    const counts = [made.shaping[0]?.spread.before, ...made.shaping.map(({ spread }) => spread.after)];
    return `${way}: ${made.rows} rounds, ${counts.join(' ')}`;
  });
}

describe('where the neck is no smaller than the underarm', () => {
  it('it has 8/27 of the underarm, what three rounds leave that keep two thirds each', () => {
    expect(ways(askFor(243, 243), 'neck not smaller')).toEqual(['usual neck: 60 rounds, 243 162 108 72']);
  });

  it('it is the multiple below that, of the neck’s own colour pattern and not of the underarm’s', () => {
    // 71.7 of 242, in tens 70.
    const [way] = ways(askFor(242, 250, { multiples: [11, 1, 1, 10] }), 'neck not smaller');
    expect(way).toMatch(/^usual neck: 60 rounds, 242 \d+ \d+ 70$/);
  });
});

describe('where a count is no multiple of its colour pattern', () => {
  it('both ends lie on the multiples below, or on those above, each on its own', () => {
    const found = ways(askFor(242, 80, { multiples: [8, 1, 1, 6] }), 'no multiple');
    expect(found.map((way) => way.replace(/ \d+ \d+ (\d+)$/, ' … $1'))).toEqual([
      'nearest count: 60 rounds, 240 … 78',
      'nearest count: 60 rounds, 248 … 84',
    ]);
  });

  it('an end that is one already stays', () => {
    const found = ways(askFor(242, 84, { multiples: [8, 1, 1, 6] }), 'no multiple');
    expect(found.map((way) => way.replace(/ \d+ \d+ (\d+)$/, ' … $1'))).toEqual([
      'nearest count: 60 rounds, 240 … 84',
      'nearest count: 60 rounds, 248 … 84',
    ]);
    const other = ways(askFor(240, 80, { multiples: [8, 1, 1, 6] }), 'no multiple');
    expect(other.map((way) => way.replace(/ \d+ \d+ (\d+)$/, ' … $1'))).toEqual([
      'nearest count: 60 rounds, 240 … 78',
      'nearest count: 60 rounds, 240 … 84',
    ]);
  });
});

describe('where a colour pattern is too wide for the steps between its counts', () => {
  it('the yoke is offered without it', () => {
    // 48 − 24 in parts of 9, 6 and 4 of 19: 11.4, 18.9 and 24 are taken.
    expect(ways(askFor(48, 24, { multiples: [24, 24, 24, 24] }), 'repeat too wide')).toEqual([
      'without the repeat: 60 rounds, 48 37 29 24',
    ]);
  });
});

describe('where two shaping rounds would fall into one', () => {
  it('the yoke has the fewest rounds that keep them apart, or the most rounds of shaping that it has room for', () => {
    // Of 3 rounds, half and three quarters are the second both; of 4 they are the second, the third and the last.
    expect(ways(askFor(240, 90, { depth: cm(1) }), 'yoke too shallow')).toEqual([
      'deeper yoke: 4 rounds, 240 169 122 90',
      'other number of rounds: 3 rounds, 240 165 90',
    ]);
  });

  it('one round is offered before none', () => {
    expect(ways(askFor(240, 120, { depth: cm(1 / 3), scheme: evenly(2) }), 'yoke too shallow')).toEqual([
      'deeper yoke: 2 rounds, 240 180 120',
      'other number of rounds: 1 rounds, 240 120',
    ]);
  });

  it('no fewer are offered than can take the stitches: a round loses half of them at the most', () => {
    expect(ways(askFor(240, 90, { depth: cm(1 / 3), scheme: evenly(2) }), 'yoke too shallow')).toEqual([
      'deeper yoke: 2 rounds, 240 165 90',
    ]);
  });
});

describe('where a round has no room for its changes', () => {
  it('there are as few more as hold them', () => {
    // From 240 to 60 in n equal rounds, the last takes 180 / n of 60 + 180 / n: at most half where n is 3.
    expect(ways(askFor(240, 60, { scheme: evenly(1) }), 'round too full')).toEqual([
      'other number of rounds: 60 rounds, 240 180 120 60',
    ]);
  });

  it('up to one in every round of the yoke, and no more', () => {
    const scheme = evenly(1);
    expect(ways(askFor(240, 60, { scheme, depth: cm(1) }), 'round too full')).toEqual([
      'other number of rounds: 3 rounds, 240 180 120 60',
    ]);
    expect(ways(askFor(240, 60, { scheme, depth: cm(2 / 3) }), 'round too full')).toEqual([]);
  });
});

describe('where the yoke can be shaped', () => {
  it('nothing else is offered', () => {
    expect(yoke(askFor(240, 80))).toEqual(shapeYoke(askFor(240, 80)));
  });
});
