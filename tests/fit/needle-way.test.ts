/** Another width by the needle alone, on the sample's size 4: 220 stitches are 100 cm, and 110 cm at 2 to the centimetre. */
import { describe, expect, it } from 'vitest';
import { needleWay } from '../../src/fit/needle-way.ts';
import { SAMPLE_ROUND } from '../../src/fit/sample.ts';
import { cm } from '../../src/fit/units.ts';
import { told } from './told.ts';

const size = SAMPLE_ROUND.sizes.find((s) => s.label === '4');
if (size === undefined) throw new Error('the sample has a size 4');
const to = (bust: number) => needleWay(SAMPLE_ROUND, size, 'bust', cm(bust));

describe('a bust of 110 cm from a pattern of 100 cm', () => {
  it('makes every other width and length a tenth more, line by line', () => {
    // Widths as printed: cross back 38.2, neck 43, upper arm 32.7, wrist 19.1; rows 114, 60, 132 and 36 at 3 to the cm.
    expect(told(to(110).workings)).toEqual([
      'stitches to a centimetre that give the width: a * b / c = 2 stitches/cm',
      'bust: a * b / c = 110 cm',
      'waist: a * b / c = 110 cm',
      'hip: a * b / c = 110 cm',
      'cross back: a * b / c = 42.02 cm',
      'neck: a * b / c = 47.3 cm',
      'upper arm: a * b / c = 35.97 cm',
      'wrist: a * b / c = 21.01 cm',
      'length of the body, pattern: a * b / c = 38 cm',
      'length of the body: a * b / c = 41.8 cm',
      'length of the armhole, pattern: a * b / c = 20 cm',
      'length of the armhole: a * b / c = 22 cm',
      'length of the sleeve, pattern: a * b / c = 44 cm',
      'length of the sleeve: a * b / c = 48.4 cm',
      'length of the cap, pattern: a * b / c = 12 cm',
      'length of the cap: a * b / c = 13.2 cm',
    ]);
  });

  it('leaves out what the size does not state, and cannot go by it', () => {
    const { waist: _, ...finished } = size.finished;
    const bare = { ...size, finished };
    expect(needleWay(SAMPLE_ROUND, bare, 'bust', cm(110)).widths.map((w) => w.region)).not.toContain('waist');
    expect(() => needleWay(SAMPLE_ROUND, bare, 'waist', cm(110))).toThrow(RangeError);
  });

  it('is the same fabric within a tenth, looser or denser beyond it', () => {
    expect([90, 95, 100, 110, 112].map((bust) => to(bust).fabric)).toEqual([
      'denser',
      'much the same',
      'much the same',
      'much the same',
      'looser',
    ]);
  });
});
