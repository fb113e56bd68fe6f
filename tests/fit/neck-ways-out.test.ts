/** What is offered where no neck can be shaped, at 22 stitches and 30 rows to 10 cm; counts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { type NeckAsk, neck } from '../../src/fit/neck.ts';
import { shapeNeck } from '../../src/fit/neck-shape.ts';
import { cm, stitches } from '../../src/fit/units.ts';
import { over10cm } from './at-gauge.ts';

/** 17 cm are 37.4 stitches, to an even count 38. */
const ASK: NeckAsk = { stitches: stitches(76), width: cm(17), depth: cm(8), gauge: over10cm(22, 30) };

/** Each way with the stitches of the neck, its centre, its steps and its rows. */
function ways(ask: NeckAsk, because: string) {
  const found = neck(ask);
  if (found.kind === 'neck') throw new Error('there is a neck');
  expect(found.kind).toBe(because);
  return found.alternatives.map(({ way, neck: { stitches: across, centre, steps, rows } }) =>
    [way, across, centre, steps.join('+'), rows].join(' '),
  );
}

describe('where the neck leaves no shoulders', () => {
  const wide = { ...ASK, stitches: stitches(40), width: cm(20) };

  it('a third of the stitches is offered, shaped as usual', () => {
    // 40 / 3 = 13.33, to an even count 14, of which 14 / 3 = 4.67 are 4 in the centre; 5 at a side: a step of 2.
    expect(ways(wide, 'no shoulders left')).toEqual(['a third of the stitches 14 4 2 24']);
    expect(ways({ ...wide, centre: stitches(3), steps: [stitches(10)] }, 'no shoulders left')).toEqual([
      'a third of the stitches 14 4 2 24',
    ]);
  });

  it('a V stays one', () => {
    expect(ways({ ...wide, shape: 'V' }, 'no shoulders left')).toEqual(['a third of the stitches 14 0  24']);
  });

  it('it is two rows deep at the least', () => {
    // Two rows, of the centre and the one back, hold no decrease: the centre is all 14 stitches.
    expect(ways({ ...wide, depth: cm(0.1) }, 'no shoulders left')).toEqual([
      'a third of the stitches 14 14  2',
    ]);
  });
});

describe('where centre and neck are not both even or both odd', () => {
  it('the centre is one stitch less, or one more, or the usual third', () => {
    expect(ways({ ...ASK, centre: stitches(13) }, 'centre of the wrong parity')).toEqual([
      'nearest centre 38 12 3+2 24',
      'nearest centre 38 14 3+2 24',
      'usual shaping 38 12 3+2 24',
    ]);
  });

  it('the centre is never less than nothing', () => {
    // 75 stitches leave an odd neck: 37.
    const odd = { ...ASK, stitches: stitches(75), centre: stitches(0) };
    expect(
      ways(odd, 'centre of the wrong parity').map((way) => way.split(' ').slice(0, 4).join(' ')),
    ).toEqual(['nearest centre 37 1', 'usual shaping 37 13']);
  });
});

describe('where centre and steps take more stitches than the neck has', () => {
  it('the steps are left out, or all is shaped as usual', () => {
    // 12 + 2 × (10 + 5) = 42 of 38.
    expect(
      ways({ ...ASK, centre: stitches(12), steps: [10, 5].map(stitches) }, 'shaping exceeds the neck'),
    ).toEqual(['no steps 38 12  24', 'usual shaping 38 12 3+2 24']);
  });
});

describe('where the neck has too few rows', () => {
  it('it is deeper by what is lacking in pairs of rows, its centre wider, or the neck narrower', () => {
    // (38 − 10) / 2 − 5 = 9 decreases after 2 + 4 rows are 15, of which 4 cm have 12: three are lacking.
    const shallow = { ...ASK, depth: cm(4), centre: stitches(10), steps: [3, 2].map(stitches) };
    expect(ways(shallow, 'too few rows')).toEqual([
      'deeper neck 38 10 3+2 16',
      'wider centre 38 16 3+2 12',
      // 12 − 2 rows hold no more than (12 − 6) / 2 = 3 decreases beside the steps of 5: 38 − 2 × 8.
      'usual shaping 38 22 3+2 12',
      // 37.4 − 6 = 31.4, to an even count 32.
      'narrower neck 32 10 3+2 12',
    ]);
  });

  it('no centre is offered that nobody asked for; the steps are left out', () => {
    // 1 cm has 4 rows, to an even number; two steps take 6.
    expect(ways({ ...ASK, depth: cm(1), steps: [3, 2].map(stitches) }, 'too few rows')).toEqual([
      'deeper neck 38 28 3+2 6',
      'no steps 38 36  4',
      'usual shaping 38 36  4',
    ]);
  });

  it('no neck is offered that is narrower than nothing', () => {
    // 1 cm is 2 stitches; no rows at all lack three.
    const tiny = { ...ASK, width: cm(1), depth: cm(0.1), centre: stitches(0), steps: [] };
    expect(ways(tiny, 'too few rows').filter((way) => way.startsWith('narrower'))).toEqual([]);
  });
});

describe('where the neck can be shaped', () => {
  it('nothing else is offered', () => {
    expect(neck(ASK)).toEqual(shapeNeck(ASK));
  });
});
