/** A round yoke and its workings, worked by hand at 20 stitches and 30 rounds to 10 cm. */
import { describe, expect, it } from 'vitest';
import { cm, stitches } from '../../src/fit/units.ts';
import type { Direction } from '../../src/fit/words.ts';
import { type YokeAsk, type YokeShape, yoke } from '../../src/fit/yoke.ts';
import { THREE_ROUNDS } from '../../src/fit/yoke-scheme.ts';
import { over10cm } from './at-gauge.ts';
import { told } from './told.ts';

/** 20 cm are 60 rounds: shaping in rounds 30, 45 and 60 from the underarm, which take 9, 6 and 4 of 19 parts of 160 stitches. */
function askFor(direction: Direction, more: Partial<YokeAsk> = {}): YokeAsk {
  return {
    direction,
    gauge: over10cm(20, 30, 'round'),
    depth: cm(20),
    underarm: stitches(240),
    neck: stitches(80),
    scheme: THREE_ROUNDS,
    ...more,
  };
}
function shaped(direction: Direction): YokeShape {
  const made = yoke(askFor(direction));
  if (made.kind !== 'yoke') throw new Error(made.kind);
  return made;
}
const stretches = (made: YokeShape) =>
  made.plateaus.map((one) => `${one.rounds} on ${one.stitches}, ${one.height} cm`);
const own = (made: YokeShape) => told(made.workings).filter((line) => !/^round \d+: /.test(line));

describe('a round yoke', () => {
  it('is plain between its shaping rounds, each of which belongs to the count that it leaves', () => {
    // 240 − 160 × 9 / 19 = 164.2 and 240 − 160 × 15 / 19 = 113.7.
    expect(shaped('up').shaping.map(({ round, spread }) => [round, spread.after])).toEqual([
      [30, 164],
      [45, 114],
      [60, 80],
    ]);
    expect(stretches(shaped('up')).map((one) => one.replace(/\.\d+/, ''))).toEqual([
      '29 on 240, 9 cm',
      '15 on 164, 5 cm',
      '15 on 114, 5 cm',
      '1 on 80, 0 cm',
    ]);
  });

  it('knitted down shapes in its first round, so that no round lies on the stitches of the neck', () => {
    expect(shaped('down').shaping.map(({ round, spread }) => [round, spread.after])).toEqual([
      [1, 114],
      [16, 164],
      [31, 240],
    ]);
    expect(stretches(shaped('down'))).toEqual(['15 on 114, 5 cm', '15 on 164, 5 cm', '30 on 240, 10 cm']);
  });

  it('shows its counts and its places from the underarm on', () => {
    expect(own(shaped('up'))).toEqual([
      'rounds of the yoke: a * b = 60 rows',
      'yoke depth as knitted: a / b = 20 cm',
      'stitches above shaping round 1 from the underarm: a - (a - b) * c / d = 164 stitches',
      'stitches above shaping round 2 from the underarm: a - (a - b) * c / d = 114 stitches',
      'stitches above shaping round 3 from the underarm: a - (a - b) * c / d = 80 stitches',
      'shaping round 1 from the underarm: a * b = 30 rows',
      'shaping round 2 from the underarm: a * b = 45 rows',
      'shaping round 3 from the underarm: a * b = 60 rows',
      'rounds on 240 stitches: b - a = 29 rows',
      'height on 240 stitches: a / b = 9.666667 cm',
      'rounds on 164 stitches: b - a = 15 rows',
      'height on 164 stitches: a / b = 5 cm',
      'rounds on 114 stitches: b - a = 15 rows',
      'height on 114 stitches: a / b = 5 cm',
      'rounds on 80 stitches: b - a = 1 rows',
      'height on 80 stitches: a / b = 0.333333 cm',
      'neck around: a / b = 40 cm',
    ]);
  });

  it('counts the places from the other end too where it is knitted down, in the order of knitting', () => {
    expect(own(shaped('down')).slice(8, 12)).toEqual([
      'shaping round 3 counted from the neck: a - b + 1 = 1 rows',
      'shaping round 2 counted from the neck: a - b + 1 = 16 rows',
      'shaping round 1 counted from the neck: a - b + 1 = 31 rows',
      'rounds on 114 stitches: b - a = 15 rows',
    ]);
  });

  it('needs one multiple for each of its counts: a programmer’s mistake', () => {
    expect(() => yoke(askFor('up', { multiples: [4, 4, 4] }))).toThrow('3 rounds need 4 multiples');
  });

  it('has no repeat so wide that the nearest count lies below the neck', () => {
    // 113.7 is 100 to the nearest hundred, and nothing to the nearest 230.
    const wide = yoke(askFor('up', { multiples: [1, 1, 100, 1] }));
    expect(wide.kind === 'yoke' ? wide.shaping.map(({ spread }) => spread.after) : wide.kind).toEqual([
      164, 100, 80,
    ]);
    expect(yoke(askFor('up', { multiples: [1, 1, 230, 1] }))).toMatchObject({
      kind: 'repeat too wide',
      multiple: 230,
    });
  });
});
