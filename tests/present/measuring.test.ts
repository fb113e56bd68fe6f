import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { MEASUREMENTS } from '../../src/fit/words.ts';
import { readFlowTexts } from '../../src/library.ts';
import { FRONT, SIDE } from '../../src/present/measuring/figure.ts';
import { MEASURED, measuredBy, measuringPicture } from '../../src/present/pictures.ts';
import { faultsOf, pathNamed, pathsOf, textsOf } from './geometry.ts';

interface Described {
  readonly id: string;
  readonly measurement?: string;
  readonly picture: string;
}

/** The questions of all flows that describe a measuring picture. */
function describedInFlows(): Described[] {
  return readFlowTexts().flatMap(({ text }) => {
    const { questions = {} }: { questions?: Record<string, Partial<Described>> } = parse(text);
    return Object.entries(questions).flatMap(([id, { picture, measurement }]) =>
      picture === undefined
        ? []
        : [{ id, picture: picture.trim(), ...(measurement === undefined ? {} : { measurement }) }],
    );
  });
}

describe('where to measure', () => {
  it('has a picture for every measurement, for the lengths of a garment and for the swatch', () => {
    expect(MEASURED).toEqual(expect.arrayContaining([...MEASUREMENTS, 'sleeve length', 'body length']));
    expect(MEASURED).toEqual(expect.arrayContaining(['underarm to waist', 'swatch stitches', 'swatch rows']));
    const names = MEASURED.map((m) => measuringPicture(m).name);
    expect(new Set(names).size).toBe(MEASURED.length);
  });

  it('is described in the interview in the very words of the picture', () => {
    const described = describedInFlows();
    expect(described.length).toBeGreaterThanOrEqual(14);
    for (const question of described) {
      const measured = measuredBy(question);
      expect(measured, question.id).toBeDefined();
      if (measured !== undefined) expect(measuringPicture(measured).alternative).toBe(question.picture);
    }
    expect(measuredBy({ id: 'p_bust' })).toBeUndefined();
  });

  it.each(MEASURED)('has everything in its place: %s', (measured) => {
    const { drawing, alternative } = measuringPicture(measured);
    expect(faultsOf(drawing)).toEqual([]);
    expect(alternative.length).toBeGreaterThan(20);
  });

  it.each(MEASURED)('fits a terminal of 40 columns and more: %s', (measured) => {
    for (const columns of [40, 60, 100]) {
      const lines = measuringPicture(measured).characters(columns).split('\n');
      expect(Math.max(...lines.map((l) => l.length))).toBeLessThanOrEqual(columns);
      expect(lines.length).toBeLessThan(60);
    }
  });

  it('has a tape, or a ruler and ten that are counted, in each', () => {
    for (const measured of MEASURED) {
      const paths = pathsOf(measuringPicture(measured).drawing);
      const swatch = /swatch|counted/.test(measured);
      expect(paths.some((p) => p.name === (swatch ? 'ruler' : 'tape'))).toBe(true);
      if (swatch) expect(paths.filter((p) => p.name === 'counted')).toHaveLength(10);
    }
  });

  it.each(['cross back', 'bust span'] as const)('lies straight and level: %s', (measured) => {
    const { points } = pathNamed(measuringPicture(measured).drawing, 'tape');
    expect(new Set(points.map((p) => p.y.toFixed(6))).size).toBe(1);
  });

  it.each(['back length', 'body length', 'armhole depth', 'height', 'underarm to waist'] as const)(
    'hangs straight down: %s',
    (measured) => {
      const { points } = pathNamed(measuringPicture(measured).drawing, 'tape');
      expect(new Set(points.map((p) => p.x.toFixed(6))).size).toBe(1);
    },
  );

  it.each(['armhole depth', 'back length', 'underarm to waist', 'front length'] as const)(
    'ends at the level that is marked: %s',
    (measured) => {
      const { drawing } = measuringPicture(measured);
      const level = pathNamed(drawing, 'level').points[0]?.y ?? 0;
      const ends = [pathNamed(drawing, 'tape').points[0], pathNamed(drawing, 'tape').points.at(-1)];
      expect(Math.min(...ends.map((e) => Math.abs((e?.y ?? 0) - level)))).toBeLessThan(1);
    },
  );

  it('takes the bust lower than the upper bust, and the hip lower than the waist', () => {
    expect(FRONT.underArm.y).toBeLessThan(FRONT.bust.y);
    expect(FRONT.bust.y).toBeLessThan(FRONT.waist.y);
    expect(SIDE.waist.front.y).toBeLessThan(SIDE.hip.front.y);
  });

  it('has labels in plain words, no letter smaller than 12', () => {
    const texts = MEASURED.flatMap((m) => textsOf(measuringPicture(m).drawing));
    expect(Math.min(...texts.map((t) => t.size))).toBeGreaterThanOrEqual(12);
  });
});
