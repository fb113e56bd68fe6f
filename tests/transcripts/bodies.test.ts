/**
 * The whole way on the sample sweater for three bodies, in inches and in centimetres. The bodies are of the project's own
 * scenario: three knitters of the harbour at Pennywhin.
 */
import { describe, expect, it } from 'vitest';
import type { Instruction, Plan } from '../../src/fit/plan.ts';
import { formatDecimal } from '../../src/fit/units.ts';
import { loadFlows } from '../../src/library.ts';
import { planText } from '../../src/present/plan-text.ts';
import { runScript } from '../../src/transport/script/run.ts';
import { knitSection } from '../simulator/garment.ts';
import { Needle } from '../simulator/needle.ts';

const whole = loadFlows().get('whole');

/** Lengths in inches; everything else as it is typed in either unit. */
interface Body {
  readonly who: string;
  readonly lengths: Readonly<Record<string, number>>;
  readonly rest: Readonly<Record<string, readonly string[]>>;
  /** Ids of lengths that are unusual for the tables, and are confirmed. */
  readonly unusual: readonly string[];
}

const COMMON = {
  swatch_washed: ['yes'],
  swatch_stitches: ['22 sts over 4 in'],
  swatch_stitches_2: ['22 sts over 4 in'],
  swatch_stitches_3: ['21.75 sts over 4 in'],
  swatch_rows: ['30 rows over 4 in'],
  swatch_rows_2: ['30 rows over 4 in'],
  wishes: ['sleeve, length, waist'],
};

const BODIES: readonly Body[] = [
  {
    who: 'the ferry cook, near a published size',
    lengths: {
      bust: 38,
      upper_bust: 36,
      upper_arm: 12,
      wrist: 6.25,
      sleeve_length: 17.5,
      body_length: 15.5,
      waist: 30,
      waist_ease: 3,
      underarm_to_waist: 7.5,
    },
    rest: {
      ...COMMON,
      swatch_made: ['in the round'],
      table: ['women'],
      fit: ['classic'],
      pattern: ['Pennywhin, in the round'],
      size: ['4'],
    },
    unusual: [],
  },
  {
    who: 'the net mender, with a full bust and narrow shoulders',
    lengths: {
      bust: 46,
      upper_bust: 40,
      upper_arm: 14,
      wrist: 6.5,
      sleeve_length: 16.5,
      body_length: 14.5,
      waist: 37,
      waist_ease: 3,
      underarm_to_waist: 7,
    },
    rest: {
      ...COMMON,
      swatch_made: ['back and forth'],
      table: ['women'],
      fit: ['classic'],
      pattern: ['Pennywhin, in pieces'],
      size: ['5'],
    },
    unusual: [],
  },
  {
    who: 'the lighthouse keeper, a tall man',
    lengths: {
      bust: 42,
      upper_bust: 42,
      upper_arm: 13.5,
      wrist: 7.25,
      sleeve_length: 22,
      body_length: 18.5,
      waist: 36,
      waist_ease: 5,
      underarm_to_waist: 9,
    },
    rest: {
      ...COMMON,
      swatch_made: ['in the round'],
      table: ['men'],
      fit: ['loose'],
      pattern: ['Pennywhin, in the round'],
      size: ['6'],
    },
    unusual: [],
  },
];

function planFor({ lengths, rest, unusual }: Body, unit: 'in' | 'cm'): Plan {
  if (whole === undefined) throw new Error('there is a whole way');
  const typed = Object.entries(lengths).map(([id, inches]) => {
    const text = unit === 'in' ? `${inches} in` : `${formatDecimal(inches * 2.54, 4)} cm`;
    return [id, unusual.includes(id) ? [text, 'yes'] : [text]] as const;
  });
  const result = runScript(whole, { unit: [unit], ...rest, ...Object.fromEntries(typed) });
  if (result.result !== 'outcome' || result.outcome.kind !== 'plan')
    throw new Error(JSON.stringify(result, null, 1));
  return result.outcome.plan;
}

const instructions = (plan: Plan): Instruction[] => plan.steps.flatMap((s) => s.instead);

/** What the hands do: counts and rows alone. */
function deeds(plan: Plan): unknown[] {
  return instructions(plan).flatMap((i): unknown[] => {
    switch (i.do) {
      case 'cast on':
      case 'begin with':
      case 'bind off':
        return [[i.do, i.stitches]];
      case 'work edging':
      case 'work plain':
        return [[i.do, i.rows, i.stitches]];
      case 'shape':
        return [['shape', i.spaced.rows, i.spaced.shaping]];
      default:
        return [];
    }
  });
}

/** Knits each piece of a plan from its published form alone. */
function knit(plan: Plan): string[] {
  const faults: string[] = [];
  let needle: Needle | undefined;
  for (const step of plan.steps) {
    for (const i of step.instead) {
      if (i.do === 'cast on' || i.do === 'begin with')
        needle = Needle.castOn(i.stitches, step.worked ?? 'flat');
      if (needle === undefined) continue;
      if (i.do === 'work edging' || i.do === 'work plain') {
        needle.plain(i.rows);
        if (needle.count !== i.stitches) faults.push(`${needle.count} stitches, not ${i.stitches}`);
      }
      if (i.do === 'shape') faults.push(...knitSection(needle, i.spaced, step.worked ?? 'flat'));
    }
  }
  return faults;
}

describe.each(BODIES)('$who', (body) => {
  it('holds the same plan to the stitch in inches and in centimetres, since the fabric is the same', () => {
    const [inches, metric] = [planFor(body, 'in'), planFor(body, 'cm')];
    expect(deeds(metric)).toEqual(deeds(inches));
    expect(deeds(inches).length).toBeGreaterThan(7);
  });

  it('can be knitted from the plan as it stands', () => {
    expect(knit(planFor(body, 'in'))).toEqual([]);
  });

  it('reads as it is written beside this test', async () => {
    const text = planText(planFor(body, body.who.includes('keeper') ? 'cm' : 'in'), {
      dialect: 'us',
      workings: false,
    });
    await expect(text).toMatchFileSnapshot(`plans/${body.who.split(',')[0]?.replaceAll(' ', '-')}.txt`);
  });
});
