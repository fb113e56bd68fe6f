/** How the trade says it on either side of the sea; common practice of the trade. */
import { describe, expect, it } from 'vitest';
import { inDialect, namesIn } from '../../src/fit/terms.ts';

describe('a text for knitters', () => {
  it.each([
    ['[Bind off] 6 stitches', 'Bind off 6 stitches', 'Cast off 6 stitches'],
    ['6 stitches are [bound off]', '6 stitches are bound off', '6 stitches are cast off'],
    ['your [gauge] in [stockinette]', 'your gauge in stockinette', 'your tension in stocking stitch'],
    ['[wrap and turn]', 'wrap and turn', 'wrap and turn'],
  ])('%s is said in two ways', (text, us, uk) => {
    expect([inDialect(text, 'us'), inDialect(text, 'uk')]).toEqual([us, uk]);
  });

  it('says rounds for rows where the piece is knitted in the round, and there alone', () => {
    expect(inDialect('[rows] 1 to 4, then one [row]', 'us', 'round')).toBe('rounds 1 to 4, then one round');
    expect(inDialect('[rows] 1 to 4, then one [row]', 'uk', 'flat')).toBe('rows 1 to 4, then one row');
    expect(inDialect('one [row]', 'us')).toBe('one row');
  });

  it('is not to use a term that nobody has put into both dialects', () => {
    expect(() => inDialect('[graft] the toe', 'us')).toThrow(
      'the text uses [graft], which is not among the terms',
    );
  });
});

describe('the name of a figure', () => {
  it('stays as it is in the United States, and takes the terms of the United Kingdom there', () => {
    const name = 'stitches bound off, bind-offs and gauge';
    expect(namesIn(name, 'us')).toBe(name);
    expect(namesIn(name, 'uk')).toBe('stitches cast off, cast-offs and tension');
  });

  it('is changed by whole words only', () => {
    expect(namesIn('gauges', 'uk')).toBe('gauges');
  });
});
