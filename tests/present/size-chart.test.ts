import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ComparedSize, phrase, type Step } from '../../src/fit/plan.ts';
import { say, step } from '../../src/fit/steps.ts';
import { cm } from '../../src/fit/units.ts';
import { REGIONS } from '../../src/fit/words.ts';
import { drawSizeChart, sizeChartCharacters } from '../../src/present/pictures/size-chart.ts';
import { chartAlternative, sizeChart } from '../../src/present/pictures/size-chart-figures.ts';
import { faultsOf, pathNamed, pathsOf, textsOf } from './geometry.ts';

const labels = ['1', '2', '10', 'XS', 'XXL', '3X', 'Women 42-44 tall', 'A very long name for a size indeed'];

const lengths = fc.integer({ min: 100, max: 1600 }).map((mm) => mm / 10);

/** Sizes compared in the same regions, the wanted figure of a region alike for all. */
const compared: fc.Arbitrary<ComparedSize[]> = fc
  .record({
    names: fc.uniqueArray(fc.constantFrom(...labels), { minLength: 1, maxLength: 4 }),
    regions: fc.uniqueArray(fc.constantFrom(...REGIONS), { minLength: 1, maxLength: 10 }),
    wanted: fc.array(lengths, { minLength: 10, maxLength: 10 }),
    off: fc.array(fc.integer({ min: -400, max: 400 }), { minLength: 40, maxLength: 40 }),
  })
  .map(({ names, regions, wanted, off }) =>
    names.map((label, s) => ({
      label,
      price: s,
      regions: regions.map((region, r) => {
        const difference = (off[10 * s + r] ?? 0) / 10;
        const want = wanted[r] ?? 50;
        return {
          region,
          knitted: cm(want + difference),
          wanted: cm(want),
          difference: cm(difference),
          effort: 'easy' as const,
        };
      }),
    })),
  );

function stepFor(sizes: readonly ComparedSize[], followed: string): Step {
  return step('all', phrase('where: the size'), {
    instead: [say(phrase('do: follow the size', { size: followed })), { do: 'compare sizes', sizes }],
  });
}

const sized = (label: string, off: number): ComparedSize => ({
  label,
  price: 1,
  regions: [{ region: 'bust', knitted: cm(100 + off), wanted: cm(100), difference: cm(off), effort: 'work' }],
});

describe('the size chart', () => {
  it('has everything in its place, whatever sizes are called and however many are compared', () => {
    fc.assert(
      fc.property(compared, fc.constantFrom('cm', 'in'), (sizes, unit) => {
        const chart = sizeChart(stepFor(sizes, sizes[0]?.label ?? ''), unit);
        if (chart === null) throw new Error('no chart');
        expect(faultsOf(drawSizeChart(chart))).toEqual([]);
        for (const columns of [40, 57, 100])
          for (const line of sizeChartCharacters(chart, columns).split('\n'))
            expect(line.length).toBeLessThanOrEqual(columns);
      }),
    );
  });

  it('draws bars as long as the differences, to one scale, smaller to the left', () => {
    const chart = sizeChart(stepFor([sized('4', -5), sized('5', 10)], '4'), 'cm');
    if (chart === null) throw new Error('no chart');
    const drawing = drawSizeChart(chart);
    const line = pathNamed(drawing, 'wanted').points[0]?.x ?? 0;
    const spanOf = (label: string) => pathNamed(drawing, `bar ${label}`).points.map((p) => p.x - line);
    const [small, large] = [spanOf('4'), spanOf('5')];
    expect(Math.max(...small)).toBeCloseTo(0, 6);
    expect(Math.min(...large)).toBeCloseTo(0, 6);
    expect(Math.max(...large)).toBeCloseTo(-2 * Math.min(...small), 6);
  });

  it('marks the size that is followed by a pointer and a solid bar, wherever it stands', () => {
    const chart = sizeChart(stepFor([sized('5', 10), sized('4', -5)], '4'), 'cm');
    if (chart === null) throw new Error('no chart');
    const drawing = drawSizeChart(chart);
    expect(textsOf(drawing).map((t) => t.text)).toEqual(expect.arrayContaining(['▸ size 4', 'size 5']));
    expect(
      pathsOf(drawing)
        .filter((p) => p.fill === 'strong')
        .map((p) => p.name),
    ).toEqual(['bar 4']);
    expect(chartAlternative(chart)).toContain(
      'size 4 (followed) 95 cm, 5 cm less; size 5 110 cm, 10 cm more',
    );
  });

  it('is not drawn where no sizes are compared', () => {
    expect(sizeChart(step('all', phrase('where: the size'), {}), 'cm')).toBeNull();
  });
});
