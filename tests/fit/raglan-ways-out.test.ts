/** What is offered where no raglan can be shaped, at 20 stitches and 28 rounds to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { type RaglanAsk, raglan } from '../../src/fit/raglan.ts';
import { cm, rows, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

type Counts = readonly [underarm: number, neck: number];
interface Parts {
  readonly back?: Counts;
  readonly front?: Counts;
  readonly sleeve?: Counts;
}

/** 20 cm are 56 rounds. */
function askFor(
  { back = [88, 34], front = [88, 34], sleeve = [60, 10] }: Parts,
  more: Partial<RaglanAsk> = {},
) {
  const of = ([underarm, neck]: Counts) => ({ underarm: stitches(underarm), neck: stitches(neck) });
  const ask: RaglanAsk = {
    direction: 'up',
    depth: cm(20),
    gauge: over10cm(20, 28, 'round'),
    parts: { back: of(back), front: of(front), sleeve: of(sleeve) },
    carriers: 'every row',
    plain: rows(0),
    neckWanted: cm(44),
    ...more,
  };
  return ask;
}

/** Each way with its rows and the neck of back, front and sleeve. */
function ways(ask: RaglanAsk): string[] {
  const found = raglan(ask);
  expect(found.kind).toBe('cannot');
  return found.alternatives.map(({ way, raglan: { rows: length, lines } }) => {
    const necks = [lines.back, lines.front, lines.sleeve].map(({ spaced }) => spaced.to);
    return `${way}: ${length} rows, ${necks.join(' ')}`;
  });
}

describe('where a part cannot come to its neck in pairs of stitches', () => {
  it('its neck is one less, or one more; the other parts stay', () => {
    expect(ways(askFor({ back: [89, 34] }))).toEqual([
      'nearest neck counts: 56 rows, 33 34 10',
      'nearest neck counts: 56 rows, 35 34 10',
    ]);
  });

  it('two stitches are always left', () => {
    expect(ways(askFor({ sleeve: [60, 3] }))).toEqual([
      'nearest neck counts: 56 rows, 34 34 2',
      'nearest neck counts: 56 rows, 34 34 4',
    ]);
    expect(ways(askFor({ sleeve: [61, 2] }))).toEqual([
      'nearest neck counts: 56 rows, 34 34 3',
      'nearest neck counts: 56 rows, 34 34 3',
    ]);
    expect(ways(askFor({ sleeve: [60, 1] }))[0]).toBe('nearest neck counts: 56 rows, 34 34 2');
  });

  it('a neck wider than the underarm goes straight up', () => {
    expect(ways(askFor({ front: [34, 40] }))[0]).toBe('nearest neck counts: 56 rows, 34 34 10');
  });
});

describe('where a part has too few rows', () => {
  it('every row shapes, the yoke is deeper, or the neck is as wide as the rows allow', () => {
    // 38 pairs on right-side rows, of which 56 rows have 28: 110 − 2 × 28 = 54. The 38th right-side row is row 75.
    expect(ways(askFor({ back: [110, 34] }, { carriers: 'odd rows' }))).toEqual([
      'every row: 56 rows, 34 34 10',
      'deeper yoke: 75 rows, 34 34 10',
      'neck counts within reach: 56 rows, 54 34 10',
    ]);
  });

  it('every row is not offered where it shapes already, nor where it is not enough', () => {
    // 61 pairs in 56 rounds; 156 − 112 = 44.
    const steep = { back: [156, 34] } as const;
    const others = ['deeper yoke: 61 rows, 34 34 10', 'neck counts within reach: 56 rows, 44 34 10'];
    expect(ways(askFor(steep))).toEqual(others);
    expect(ways(askFor(steep, { carriers: 'odd rows' })).map((way) => way.split(':')[0])).toEqual([
      'deeper yoke',
      'neck counts within reach',
    ]);
  });

  it('a flat yoke has an even number of rows', () => {
    const flat = askFor({ back: [156, 34] }, { gauge: over10cm(20, 28, 'flat') });
    expect(ways(flat)[0]).toBe('deeper yoke: 62 rows, 34 34 10');
  });

  it('the yoke is as deep as the part needs that needs most; only parts with too few rows get another neck', () => {
    // 61 pairs of the back and 63 of the sleeve: 136 − 112 = 24.
    expect(ways(askFor({ back: [156, 34], sleeve: [136, 10] }))).toEqual([
      'deeper yoke: 63 rows, 34 34 10',
      'neck counts within reach: 56 rows, 44 34 24',
    ]);
  });
});

describe('where the raglan can be shaped', () => {
  it('nothing else is offered while its neck is the one wanted', () => {
    // 34 + 34 + 2 × 10 are 88 stitches: 44 cm.
    expect(raglan(askFor({}))).toMatchObject({
      kind: 'raglan',
      neck: { verdict: 'as wanted' },
      alternatives: [],
    });
  });

  it('the neck is brought to the one wanted by pairs of stitches in back and front', () => {
    // 50 cm are 100 stitches, twelve more: six pairs, three for either.
    const found = raglan(askFor({}, { neckWanted: cm(50) }));
    if (found.kind !== 'raglan') throw new Error('there is a raglan');
    expect(found.neck.verdict).toBe('too narrow');
    expect(
      found.alternatives.map(({ way, raglan: { lines, neck } }) => [
        way,
        lines.back.spaced.to,
        lines.front.spaced.to,
        lines.sleeve.spaced.to,
        neck.stitches,
      ]),
    ).toEqual([['neck as wanted', 40, 40, 10, 100]]);
  });
});
