import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Instruction, Step } from '../../src/fit/plan.ts';
import { phrase } from '../../src/fit/plan.ts';
import { step } from '../../src/fit/steps.ts';
import { picturesOfStep } from '../../src/present/pictures/of-plan.ts';
import { drawStrip, splitStrip } from '../../src/present/pictures/strip.ts';
import { stripsOf } from '../../src/present/pictures/strip-figures.ts';
import { sampleArmhole, samplePlan, sampleRaglanShape } from '../../tools/sample-garment.ts';
import { garments } from './garments.ts';
import { faultsOf, pathsOf, textsOf } from './geometry.ts';

const VIEW = { unit: 'cm', dialect: 'us' } as const;

type Shape = Extract<Instruction, { do: 'shape' }>;

function shapesOf(steps: readonly Step[]): Shape[] {
  return steps.flatMap((s) =>
    s.instead.filter((i): i is Shape => i.do === 'shape' && i.spaced.shaping.length > 0),
  );
}

describe('the shaping strip', () => {
  it('has for every shaping row its number, the count after it and a box to tick, the first row lowest', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        const strips = plan.steps.flatMap((s) => stripsOf(s, VIEW));
        const shapes = shapesOf(plan.steps);
        expect(strips).toHaveLength(shapes.length);
        strips.forEach((strip, i) => {
          const drawing = drawStrip(strip);
          const texts = textsOf(drawing);
          const shaping = shapes[i]?.spaced.shaping ?? [];
          const rows = texts.filter((t) => t.name === 'row');
          expect(rows.map((t) => Number(t.text))).toEqual(shaping.map((s) => s.row));
          expect(texts.filter((t) => t.name === 'after').map((t) => t.text)).toEqual(
            shaping.map((s) => `${s.after} sts`),
          );
          expect(pathsOf(drawing).filter((p) => p.name === 'tick')).toHaveLength(shaping.length);
          const upwards = rows.every((t, k) => {
            const before = rows[k - 1];
            return before === undefined || t.y < before.y || t.x > before.x;
          });
          expect(upwards).toBe(true);
        });
      }),
    );
  });

  it('has plain and shaping rows that add up to the rows of the section', () => {
    fc.assert(
      fc.property(garments, (plan) => {
        for (const { rungs, plainAfter, rows } of plan.steps.flatMap((s) => stripsOf(s, VIEW)))
          expect(rungs.reduce((sum, r) => sum + r.plainBefore + 1, plainAfter ?? Number.NaN)).toBe(rows);
      }),
    );
  });

  it('says in words and in characters what it draws', () => {
    fc.assert(
      fc.property(garments, fc.integer({ min: 40, max: 120 }), (plan, columns) => {
        for (const picture of plan.steps.flatMap((s) => picturesOfStep(s, VIEW))) {
          const characters = picture.characters(columns);
          for (const { text, name } of textsOf(picture.drawing)) {
            if (name !== 'row' && name !== 'after') continue;
            const number = text.replace(' sts', '');
            expect(picture.alternative).toMatch(new RegExp(`\\b${number}\\b`));
            expect(characters).toMatch(new RegExp(`\\b${number}\\b`));
          }
        }
      }),
    );
  });
});

describe('a strip that is too tall for its paper', () => {
  it('is split into parts that fit, in the order of knitting, no row lost', () => {
    fc.assert(
      fc.property(garments, fc.integer({ min: 560, max: 900 }), (plan, tallest) => {
        for (const strip of plan.steps.flatMap((s) => stripsOf(s, VIEW))) {
          const parts = splitStrip(strip, tallest);
          expect(parts.flatMap((p) => p.rungs)).toEqual(strip.rungs);
          for (const part of parts) {
            expect(faultsOf(drawStrip(part))).toEqual([]);
            expect(drawStrip(part).height).toBeLessThanOrEqual(tallest);
          }
          parts.slice(1).forEach((part, i) => {
            expect(part.from).toBe(parts[i]?.rungs.at(-1)?.after);
          });
          expect(parts.map((p) => p.plainAfter === null)).toEqual(parts.map((_, i) => i < parts.length - 1));
        }
      }),
    );
  });

  it('is one where it fits', () => {
    const [strip] = samplePlan().steps.flatMap((s) => stripsOf(s, VIEW));
    if (strip === undefined) throw new Error('no strip');
    expect(splitStrip(strip, Number.POSITIVE_INFINITY)).toEqual([strip]);
  });
});

describe('a strip of bind-offs and decreases', () => {
  const armhole = sampleArmhole();
  const shaped = step('back', phrase('where: hem to underarm'), {
    worked: 'flat',
    instead: [
      {
        do: 'shape edges',
        schedule: {
          from: armhole.bust,
          to: armhole.crossBack,
          rows: armhole.rows,
          at: 'both edges',
          events: armhole.events,
        },
      },
    ],
  });

  it('tells in each row what is done, in the reader’s terms', () => {
    const [us] = stripsOf(shaped, VIEW);
    const [uk] = stripsOf(shaped, { unit: 'cm', dialect: 'uk' });
    expect(us?.rungs.slice(0, 3).map((r) => r.note)).toEqual([
      'bind off 6 right',
      'bind off 6 left',
      'decrease 1 at both',
    ]);
    expect(uk?.rungs[0]?.note).toBe('cast off 6 right');
  });

  it('has room for what it says', () => {
    for (const strip of [...stripsOf(shaped, VIEW), ...stripsOf(shaped, { unit: 'cm', dialect: 'uk' })])
      expect(faultsOf(drawStrip(strip))).toEqual([]);
  });
});

describe('a strip of raglan lines', () => {
  const raglan = sampleRaglanShape();
  const { back, front, sleeve } = raglan.lines;
  const shaped = step('yoke', phrase('where: hem to underarm'), {
    worked: 'round',
    instead: [
      {
        do: 'shape raglan',
        raglan: {
          direction: raglan.direction,
          rows: raglan.rows,
          shaping: raglan.shaping,
          from: back.spaced.from,
          to: raglan.neck.stitches,
          lines: { back: back.spaced, front: front.spaced, sleeve: sleeve.spaced },
        },
      },
    ],
  });

  it('names the parts that are shaped in each round, and has room for them', () => {
    const [strip] = stripsOf(shaped, VIEW);
    if (strip === undefined) throw new Error('no strip');
    expect(strip.rungs).toHaveLength(raglan.shaping.length);
    expect(strip.rungs.some((r) => r.note === 'all parts')).toBe(true);
    expect(strip.rungs.at(-1)?.after).toBe(raglan.neck.stitches);
    expect(faultsOf(drawStrip(strip))).toEqual([]);
  });
});
