import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shapeBody } from '../../src/fit/body-shaping.ts';
import { bodyPart } from '../../src/fit/body-steps.ts';
import { easedWidth } from '../../src/fit/ease.ts';
import { evaluate } from '../../src/fit/formula.ts';
import { inUnit } from '../../src/fit/in-unit.ts';
import type { Instruction, Part, Plan } from '../../src/fit/plan.ts';
import { parsePlan } from '../../src/fit/plan-schema.ts';
import { shapeSleeve } from '../../src/fit/sleeve.ts';
import { sleevePart } from '../../src/fit/sleeve-steps.ts';
import { cm, LENGTH_UNITS, type LengthUnit } from '../../src/fit/units.ts';
import type { Quantity, WorkingLine } from '../../src/fit/working.ts';
import { planText } from '../../src/present/plan-text.ts';
import { formatNumber } from '../../src/present/quantity.ts';
import { bodyAsks, sleeveAsks } from '../fit/arbitrary.ts';

function planFrom(parts: readonly Part[], unit: LengthUnit): Plan {
  return {
    schema: 'easewright plan',
    version: 1,
    flow: 'test',
    unit,
    summary: [],
    steps: parts.flatMap((p) => p.steps),
    finished: parts.flatMap((p) => p.finished),
    pieces: parts.flatMap((p) => p.pieces),
    assumed: [],
    waiting: [],
    cautions: [],
  };
}

/** Plans of random bodies and sleeves. */
const plans: fc.Arbitrary<Plan> = fc
  .tuple(bodyAsks, sleeveAsks, fc.constantFrom(...LENGTH_UNITS))
  .map(([bodyAsk, sleeveAsk, unit]) => {
    const waist =
      bodyAsk.waist === null ? null : easedWidth('waist', cm(bodyAsk.waist.around - 5), 'classic');
    const body = shapeBody({
      ...bodyAsk,
      waist: bodyAsk.waist && { ...bodyAsk.waist, around: cm(waist?.result.value ?? 0) },
    });
    const sleeve = shapeSleeve(sleeveAsk);
    return planFrom(
      [
        ...(body.kind === 'body' ? [bodyPart(body, waist)] : []),
        ...(sleeve.kind === 'sleeve' ? [sleevePart(sleeve, { wrist: null, upperArm: null })] : []),
      ],
      unit,
    );
  });

const workingsOf = (plan: Plan): WorkingLine[] => [
  ...plan.steps.flatMap((s) => s.workings),
  ...plan.finished.flatMap((f) => f.workings),
];

/** Numbers as they are printed: with a fraction, a decimal point, or neither; ordinals count as their number. */
const NUMBER = /\d+(?:\.\d+)?[⅛¼⅜½⅝¾⅞]?|[⅛¼⅜½⅝¾⅞]/g;

function figuresIn(lines: readonly WorkingLine[], unit: LengthUnit): Set<string> {
  const quantities: Quantity[] = lines.flatMap((l) => [...Object.values(l.given), l.result]);
  return new Set(quantities.map((q) => formatNumber(q, { unit, worked: null }).replace('−', '')));
}

/** The rows of a schedule and the counts after them are the schedule's own workings. */
function schedule(instruction: Instruction): string[] {
  return instruction.do === 'shape'
    ? instruction.spaced.shaping.flatMap((s) => [String(s.row), String(s.after)])
    : [];
}

describe('the text of a plan', () => {
  it('states no number that its workings do not hold', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const text = planText(plan, { dialect: 'us', workings: false });
        const known = figuresIn(workingsOf(plan), plan.unit);
        for (const step of plan.steps)
          for (const i of step.instead) for (const n of schedule(i)) known.add(n);
        const stated = text.replace(/^\d+\. | per 10 cm/gm, '').match(NUMBER) ?? [];
        expect([...new Set(stated)].filter((n) => !known.has(n))).toEqual([]);
        expect(stated.length).toBeGreaterThanOrEqual(plan.steps.length);
      }),
      { numRuns: 1_500 },
    );
  });

  it('shows sums that hold in the unit that is read, not only in centimetres', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        for (const line of workingsOf(plan)) {
          const given = Object.fromEntries(
            Object.entries(line.given).map(([k, q]) => [
              k,
              { ...q, value: inUnit(q.value, q.unit, plan.unit) },
            ]),
          );
          expect(evaluate(line.formula, given)).toBeCloseTo(
            inUnit(line.exact, line.result.unit, plan.unit),
            6,
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  it('follows the published schema of a plan, for any plan', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(JSON.parse(JSON.stringify(plan)));
      }),
      { numRuns: 200 },
    );
  });

  it('is the same plan to the stitch in either unit', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const numbers = (unit: LengthUnit) =>
          planText({ ...plan, unit }, { dialect: 'us', workings: false }).match(/\d+ (?:stitch|row|round)/g);
        expect(numbers('in')).toEqual(numbers('cm'));
      }),
      { numRuns: 300 },
    );
  });
});
