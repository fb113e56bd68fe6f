/** The answer key: what a plan starts from, and every sum of it, so that it can be checked by hand. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/fit/formula.ts';
import type { Plan } from '../../src/fit/plan.ts';
import { LENGTH_UNITS } from '../../src/fit/units.ts';
import { answerKey } from '../../src/present/key.ts';
import { keyText } from '../../src/present/key-text.ts';
import { planText } from '../../src/present/plan-text.ts';
import { formatNumber } from '../../src/present/quantity.ts';
import { samplePlan } from '../../tools/sample-garment.ts';
import { cannotOf, planOf, workingsOf } from '../chapters/scripted.ts';
import { exercises } from '../exercises.ts';

const ANSWERS = [
  { label: 'Bust or chest', shown: '96.5 cm', assumed: false },
  { label: 'Wrist', shown: 'not known; 15.9 cm is used', assumed: true },
];

const keyOf = (plan: Plan) => keyText({ kind: 'plan', plan }, ANSWERS, 'us');

const SPACED = planOf('spacing', {
  spacing_from: '50',
  spacing_to: '72',
  spacing_rows: '84',
  spacing_worked: 'flat',
  spacing_plain: '0',
});
const SPREAD = planOf('spread', {
  spread_stitches: '80',
  spread_change: '+10',
  spread_by: 'make one',
  spread_worked: 'flat',
  spread_border: '1',
});
const BUTTONS = planOf('buttons', {
  buttons_along: 'stitches',
  buttons_length: '98',
  buttons_number: '7',
  buttons_ends: '4',
  buttons_hole: '2',
});

const plans: readonly (readonly [string, Plan])[] = [
  ...LENGTH_UNITS.map((unit) => [`a whole sweater in ${unit}`, { ...samplePlan(), unit }] as const),
  ['shaping over rows', SPACED],
  ['a row that is written out', SPREAD],
  ['buttonholes', BUTTONS],
];

const NUMBER = /\d+(?:\.\d+)?[⅛¼⅜½⅝¾⅞]?|[⅛¼⅜½⅝¾⅞]/g;
const numbersIn = (text: string) => new Set(text.match(NUMBER) ?? []);

/** Figures of the key, and how a tape shows those that it has to the hundredth. */
function knownFrom(plan: Plan): Set<string> {
  const printed = numbersIn(keyOf(plan));
  const reader = { unit: plan.unit, worked: null };
  const quantities = workingsOf(plan).flatMap((line) => [...Object.values(line.given), line.result]);
  const shown = quantities.filter((q) =>
    printed.has(formatNumber(q, { ...reader, fine: true }).replace('−', '')),
  );
  return new Set([...printed, ...shown.map((q) => formatNumber(q, reader).replace('−', ''))]);
}

/** '(12) width = 9 stitches ÷ 2 stitches per cm (own) = 4.5 cm': the sum and its result, as printed. */
function sumsIn(text: string): { sum: string; result: number }[] {
  const lines = text.split('\n').filter((line) => /^\(\d+\) /.test(line));
  return lines.map((line) => {
    const [, sum = '', result = ''] = line.split(' = ');
    const bare = sum
      .replace(/\((?=[^()]*[a-z])(?![^()]*[÷×])[^()]*\)/g, '')
      .replace(/[a-z]+[²]?|,|'/gi, '')
      .replaceAll('÷', '/')
      .replaceAll('×', '*')
      .replace(/ − /g, ' - ')
      .replace(/−(?=\d)/g, '0-');
    return { sum: bare, result: Number.parseFloat(result.replace('−', '-')) };
  });
}

/** By how much a sum of shown figures may miss: each is shown to two decimals, or to three, and so is the result. */
function unsure(sum: string): number {
  const middle = evaluate(sum, {});
  const numbers = [...sum.matchAll(/\d+(?:\.\d+)?/g)];
  const misses = numbers.map(({ 0: number, index }) => {
    const step = /\.\d{3}$/.test(number) ? 0.0006 : 0.006;
    const nudged = `${sum.slice(0, index)}${Number(number) + step}${sum.slice(index + number.length)}`;
    return Math.abs(evaluate(nudged, {}) - middle);
  });
  return misses.reduce((all, one) => all + one, 0.006);
}

function expectEveryFigure(plan: Plan): void {
  const text = planText(plan, { dialect: 'us', workings: false })
    .replace(/^\d+\. /gm, '')
    .replace(/\b(?:m1|k2tog)\b/g, '');
  const known = knownFrom(plan);
  expect([...numbersIn(text)].filter((n) => !known.has(n))).toEqual([]);
}

function expectSumsToComeOut(plan: Plan): void {
  const sums = sumsIn(keyOf(plan));
  expect(sums.length).toBe(answerKey({ kind: 'plan', plan }, [], 'us').parts.flatMap((p) => p.lines).length);
  for (const { sum, result } of sums)
    expect(Math.abs(evaluate(sum, {}) - result), `${sum} = ${result}`).toBeLessThanOrEqual(unsure(sum));
}

describe('the answer key', () => {
  it('begins with the answers, and marks what stands in for one', () => {
    expect(keyOf(samplePlan())).toContain(
      'It starts from:\n- Bust or chest: 96.5 cm\n- Wrist: not known; 15.9 cm is used (assumed)\n\nStep 1. ',
    );
  });

  it.each(plans)('numbers each working once, in the order of the steps: %s', (_, plan) => {
    const { parts } = answerKey({ kind: 'plan', plan }, [], 'us');
    const lines = parts.flatMap((part) => part.lines);
    expect(lines.map(({ number }) => number)).toEqual(lines.map((_, i) => i + 1));
    expect(new Set(lines.map(({ text }) => text)).size).toBe(lines.length);
    const steps = parts.flatMap(({ title }) => (/^\d/.test(title) ? [Number.parseInt(title, 10)] : []));
    expect(steps).toEqual(steps.toSorted((a, b) => a - b));
    for (const [i, { also }] of parts.entries())
      for (const number of also)
        expect(parts.slice(0, i).some((p) => p.lines.some((line) => line.number === number))).toBe(true);
  });

  it.each(exercises)(
    'has every figure of the plan, and sums that come out: the exercise %s in %s',
    (_id, _unit, worked) => {
      const { plan } = worked();
      expectEveryFigure(plan);
      expectSumsToComeOut(plan);
    },
  );

  it.each(plans)('has every figure of the plan: %s', (_, plan) => {
    expectEveryFigure(plan);
  });
  it.each(plans)(
    'prints sums that come out as it says, worked with the figures that it shows: %s',
    (_, plan) => {
      expectSumsToComeOut(plan);
    },
  );

  it('holds the rows that are written out, which no sum gives', () => {
    expect(keyOf(SPREAD)).toMatch(/\n- Work this row: work 1 border stitch, k4, m1, /);
    expect(keyOf(BUTTONS)).toMatch(/\n- .*buttonhole/i);
    expect(keyOf(SPACED)).toContain('- Rows that shape, with the count after each: ');
  });

  it('tells how it was found that there is no plan', () => {
    const cannot = cannotOf('buttons', {
      buttons_along: 'stitches',
      buttons_length: '20',
      buttons_number: '9',
      buttons_ends: '4',
      buttons_hole: '2',
    });
    expect(keyText(cannot, [], 'us')).toMatch(/\n\nWhy it cannot be planned\n\(1\) /);
  });
});
