import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hear } from '../../../src/dialogue/hear.ts';
import { readYarnLength } from '../../../src/dialogue/read/yarn.ts';
import { loadFlows } from '../../../src/library.ts';

describe('A cone told by its weight and number', () => {
  // Worked by hand: 24 / 2 × 560 yd × 0.9144 m / 453.59237 g × 500 g = 6773.5 m, and so on.
  it.each([
    ['500 g of 2/24 worsted count', '500 g, size 24 in 2 plies by the worsted count: 6773 m (7408 yd)'],
    ['500g 24/2 Nw', '500 g, size 24 in 2 plies by the worsted count: 6773 m (7408 yd)'],
    [
      'a cone of 500 g, 2/24s worsted wool',
      '500 g, size 24 in 2 plies by the worsted count: 6773 m (7408 yd)',
    ],
    ["2/24's worsted, 500 grams", '500 g, size 24 in 2 plies by the worsted count: 6773 m (7408 yd)'],
    ['1 lb of 16/2 cotton', '1 lb, size 16 in 2 plies by the cotton count: 6720 yd (6145 m)'],
    ['8 oz 20/2 Ne', '8 oz, size 20 in 2 plies by the cotton count: 4200 yd (3840 m)'],
    ['4/9 cotton count, 450 g', '450 g, size 9 in 4 plies by the cotton count: 1715 m (1875 yd)'],
    ['500 g Nm 2/28', '500 g, size 28 in 2 plies by the metric count: 7000 m (7655 yd)'],
    ['500 g Nm 28/2', '500 g, size 28 in 2 plies by the metric count: 7000 m (7655 yd)'],
    ['1.2 kg of 30/2nm', '1.2 kg, size 30 in 2 plies by the metric count: 18000 m (19685 yd)'],
    ['1/2 lb of 3/16 worsted', '0.5 lb, size 16 in 3 plies by the worsted count: 1493 yd (1366 m)'],
    ['200 g metric count 2/3.5', '200 g, size 3.5 in 2 plies by the metric count: 350 m (383 yd)'],
    ['200 g Nm 1.5/2', '200 g, size 1.5 in 2 plies by the metric count: 150 m (164 yd)'],
    ['200 g Nm 6/1', '200 g, size 6 in 1 ply by the metric count: 1200 m (1312 yd)'],
    ['100 g of 8/8 cotton', '100 g, size 8 in 8 plies by the cotton count: 169 m (185 yd)'],
    [
      '500 g of 2/24 worsted count, 2 strands held together',
      '500 g, size 24 in 2 plies by the worsted count, 2 strands: 3387 m (3704 yd)',
    ],
  ])('“%s” is heard as %s', (text, echo) => {
    expect(readYarnLength(text)).toMatchObject({ kind: 'heard', echo });
  });

  it.each(['500 g of new wool 2/24', '500 g w/ 2/24', '500 g MC 2/24', '500 g 2/24 CC'])(
    'takes no word for a count that means something else in knitting: “%s”',
    (text) => {
      const read = readYarnLength(text);
      expect(read.kind).not.toBe('heard');
      if (read.kind === 'which') expect(read.options).toHaveLength(3);
    },
  );

  it('has the length of all its weight, unrounded, in the unit that goes with it', () => {
    expect(readYarnLength('500 g Nm 2/28')).toMatchObject({ value: { metres: 7000, typed: 'm' } });
    const pound = readYarnLength('1 lb of 2/24 worsted');
    if (pound.kind !== 'heard') throw new Error('not heard');
    expect(pound.value.typed).toBe('yd');
    expect(pound.value.metres).toBeCloseTo(6720 * 0.9144, 6);
  });

  it('is put back where a word beside it is not known, or the thousands mark may be a decimal', () => {
    expect(readYarnLength('500 g of 2/28 Nm merino')).toMatchObject({ kind: 'ask back', why: 'extra words' });
    expect(readYarnLength('1,000 g of 2/28 Nm')).toMatchObject({
      kind: 'ask back',
      why: 'comma unclear',
      echo: '1000 g, size 28 in 2 plies by the metric count: 14000 m (15311 yd)',
    });
  });

  it('is put back with every count where none is named, or with the two that are', () => {
    const echoes = (text: string) => {
      const read = readYarnLength(text);
      return read.kind === 'which' ? read.options.map((o) => o.echo) : read.kind;
    };
    expect(echoes('500 g of 2/24')).toEqual([
      '500 g, size 24 in 2 plies by the worsted count: 6773 m (7408 yd)',
      '500 g, size 24 in 2 plies by the cotton count: 10160 m (11111 yd)',
      '500 g, size 24 in 2 plies by the metric count: 6000 m (6562 yd)',
    ]);
    expect(echoes('500 g of 2/28 Nm cotton')).toEqual([
      '500 g, size 28 in 2 plies by the metric count: 7000 m (7655 yd)',
      '500 g, size 28 in 2 plies by the cotton count: 11854 m (12963 yd)',
    ]);
  });

  it.each(['8/12', '12/8', '3/2', '2/4'])(
    'is put back where either number of %s could be the plies',
    (number) => {
      const read = readYarnLength(`100 g of ${number} cotton`);
      expect(read).toMatchObject({ kind: 'which', question: expect.stringContaining('plies') });
    },
  );

  it.each([
    ['2/24 worsted', 'incomplete', 'Half of it is missing there.'],
    ['500 g Nm 12', 'incomplete', 'Half of it is missing there.'],
    ['500 g of cotton', 'incomplete', 'Half of it is missing there.'],
    ['500 g of 2/24 linen', 'other kind', 'That counts something else than I asked for.'],
    ['500 g of 2/24 worsted by the ball', 'other kind', 'That counts something else than I asked for.'],
    ['500 g, 2/24 or 2/28 worsted', 'several numbers', 'I read more than one number'],
    ['500 g of 2/24 worsted 7', 'not understood', 'I could not read all of that.'],
    ['500 g of 2.5/24.5 Nm', 'not whole', 'That is not a whole number.'],
    ['500 g of 0/24 Nm', 'out of range', 'That cannot be right for this question.'],
    ['0 g of 2/24 Nm', 'out of range', 'That cannot be right for this question.'],
    ['90 kg of 2/24 Nm', 'out of range', 'That cannot be right for this question.'],
  ])('“%s” is refused: %s', (text, reason, message) => {
    const read = readYarnLength(text);
    expect(read).toMatchObject({ kind: 'refused', reason, example: '500 g of 2/24 worsted count' });
    expect(read.kind === 'refused' && read.message).toContain(message);
    expect(read.kind === 'refused' && read.message).toContain('worsted, cotton or Nm');
  });

  it('is refused with the example of a cone, where the question shows that of a ball', () => {
    const flow = loadFlows().get('yarn');
    const stop = flow?.stops.find((s) => s.id === 'yarn_own_band');
    if (flow === undefined || stop === undefined) throw new Error('the length of a ball is not asked');
    const asked = flow.asked(stop, {});
    expect(hear(asked, '500 g Nm 12')).toMatchObject({ example: '500 g of 2/24 worsted count' });
    expect(hear(asked, 'plenty')).toMatchObject({ example: '100 m' });
  });

  it('is one length whichever way its number is written, and grows with its weight', () => {
    const count = fc.constantFrom('worsted', 'cotton', 'Nm');
    const plies = fc.integer({ min: 1, max: 4 });
    fc.assert(
      fc.property(
        count,
        plies,
        fc.integer({ min: 10, max: 90 }),
        fc.integer({ min: 1, max: 200 }),
        (c, p, s, g) => {
          const metres = (text: string) => {
            const read = readYarnLength(text);
            return read.kind === 'heard' ? read.value.metres : Number.NaN;
          };
          const one = metres(`${g} g of ${p}/${s} ${c}`);
          expect(metres(`${c} ${s}/${p}, ${g} g`)).toBe(one);
          expect(metres(`${2 * g} g of ${p}/${s} ${c}`)).toBeCloseTo(2 * one, 6);
        },
      ),
    );
  });
});

describe('A length of a ball', () => {
  it.each([
    ['91 m', 91],
    ['1/2 m', 0.5],
    ['120 m of wool', 120],
  ])('“%s” is no cone', (text, metres) => {
    expect(readYarnLength(text)).toMatchObject({ kind: 'heard', value: { metres } });
  });

  it('keeps its own refusals', () => {
    expect(readYarnLength('50 g')).toMatchObject({ kind: 'refused', reason: 'other kind', example: '120 m' });
    expect(readYarnLength('91 m / 50 g')).toMatchObject({ kind: 'refused', example: '120 m' });
  });
});
