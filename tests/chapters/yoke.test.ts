/** The yoke chapter: what is typed, the rounds of the yoke, and their knitting. */
import { describe, expect, it } from 'vitest';
import type { Instruction } from '../../src/fit/plan.ts';
import { Needle } from '../simulator/needle.ts';
import { cannotOf, expectSound, instructed, planOf, type Typed, textOf } from './scripted.ts';

/** 'Yoke cheat sheet' (handmadestitchbystitch.wordpress.com, year not given), after Knitting Without Tears, 1971. */
const PUBLISHED: Typed = {
  unit: 'in',
  body_made: 'from the hem, in the round',
  gauge: '20 sts and 28 rows to 4 in',
  yoke_depth: '10',
  p_yoke_underarm: '268',
  p_yoke_neck: '80',
  yoke_rounds: 'three',
  yoke_repeat: '1',
};
const DOWN: Typed = {
  unit: 'cm',
  body_made: 'from the neck, in the round',
  gauge: '20 sts and 28 rows to 10 cm',
  yoke_depth: '22 cm',
  p_yoke_underarm: '272',
  p_yoke_neck: '96',
  yoke_rounds: 'four',
  yoke_repeat: 'multiple of 8',
};

/** Knits instructions in their order; the needle, and the rounds in which the count changed. */
function knit(instructions: readonly Instruction[]): { needle: Needle; shaped: number[] } {
  let needle = Needle.castOn(1, 'round');
  for (const i of instructions) {
    if (i.do === 'begin with') needle = Needle.castOn(i.stitches, 'round');
    if (i.do === 'work row') needle.written(i.row);
    if (i.do === 'work plain') {
      expect(needle.count).toBe(i.stitches);
      needle.plain(i.rows);
    }
  }
  const { counts } = needle;
  const shaped = counts.flatMap((count, i) => (i > 0 && count !== counts[i - 1] ? [i + 1] : []));
  return { needle, shaped };
}

const knitPlan = (typed: Typed) => knit(planOf('yoke', typed).steps.flatMap((s) => s.instead));

describe('a round yoke', () => {
  it('asks eight questions', () => {
    expect(Object.keys(PUBLISHED)).toHaveLength(8);
    expect(planOf('yoke', PUBLISHED).steps).toHaveLength(3);
  });

  it('has the counts and rounds of a published example, knitted as it is written', () => {
    const { needle, shaped } = knitPlan(PUBLISHED);
    expect([needle.counts.length, needle.count]).toEqual([70, 80]);
    expect(shaped).toEqual([35, 53, 70]);
    expect(shaped.map((round) => needle.counts[round - 1])).toEqual([179, 120, 80]);
    expect(textOf(planOf('yoke', PUBLISHED))).toContain('a way that is long in use');
  });

  it('from the neck down grows to the underarm, each count a multiple of the colour pattern', () => {
    const { needle } = knitPlan(DOWN);
    expect([needle.counts.length, needle.count]).toEqual([62, 272]);
    const counts = instructed(planOf('yoke', DOWN), 'work row').flatMap((i) => [i.before, i.after]);
    expect(counts.every((count) => count % 8 === 0)).toBe(true);
  });

  it('takes any count and three rounds where these are not known', () => {
    const plan = planOf('yoke', { ...DOWN, yoke_rounds: "I don't know", yoke_repeat: "I don't know" });
    expect(instructed(plan, 'work row')).toHaveLength(3);
    expect(plan.assumed).toHaveLength(2);
  });

  it.each([
    [
      { ...DOWN, p_yoke_underarm: '270', p_yoke_neck: '90' },
      '270 stitches at one end are no multiple of 8 stitches',
    ],
    [{ ...DOWN, yoke_repeat: '1', p_yoke_neck: '280' }, 'the yoke must narrow'],
    [
      { ...DOWN, yoke_repeat: '1', yoke_rounds: 'three', p_yoke_neck: '20' },
      'has room for 73 changes, and 80 are asked for',
    ],
    [
      { ...DOWN, yoke_repeat: '100', p_yoke_underarm: '300', p_yoke_neck: '100' },
      'A repeat of 100 stitches is too wide',
    ],
  ])('says why it cannot be as asked, and what can, each knitted to its end', (typed, words) => {
    const plan = planOf('yoke', typed);
    expect(textOf(plan)).toContain(words);
    const [choice] = instructed(plan, 'choose one');
    expect(choice?.ways.length).toBeGreaterThan(0);
    for (const way of choice?.ways ?? []) {
      const rows = way.instead.filter((i) => i.do === 'work row');
      expect(knit(way.instead).needle.count).toBe(rows.at(-1)?.after);
    }
    expectSound(plan);
  });

  it('is the same to the round from inches', () => {
    const inches = { ...DOWN, unit: 'in', yoke_depth: '8.6614' };
    const rows = (typed: Typed) => instructed(planOf('yoke', typed), 'work row');
    expect(rows(inches)).toEqual(rows(DOWN));
    expect(knitPlan(inches).shaped).toEqual(knitPlan(DOWN).shaped);
  });

  it.each([PUBLISHED, DOWN, { ...DOWN, unit: 'in' }, { ...PUBLISHED, yoke_rounds: 'six' }])(
    'states no number that its workings do not hold: %o',
    (typed) => {
      expectSound(planOf('yoke', typed));
    },
  );
});

describe('a round yoke as the pattern has it', () => {
  const OWN: Typed = {
    ...PUBLISHED,
    yoke_rounds: 'as my pattern has them',
    yoke_own_depth: '60',
    yoke_own_rounds: '20, 44, 60',
    yoke_own_counts: '200, 130, 80',
  };
  const knitted = (typed: Typed) => {
    const { needle, shaped } = knitPlan(typed);
    return { shaped, counts: shaped.map((round) => needle.counts[round - 1]) };
  };

  // 10 in at 7 rounds to the inch are 70 rounds: 20, 44 and 60 of 60 become 23.3, 51.3 and 70.
  it('keeps its counts, and each round its place in the depth', () => {
    expect(knitted(OWN)).toEqual({ shaped: [23, 51, 70], counts: [200, 130, 80] });
    expectSound(planOf('yoke', OWN));
  });

  // From the neck: rounds 1, 17 and 41 of 60 are the same places seen from the other end.
  it('from the neck down has them in the order of knitting', () => {
    const down: Typed = {
      ...OWN,
      body_made: 'from the neck, in the round',
      yoke_own_rounds: '1, 17, 41',
      yoke_own_counts: '130, 200, 268',
    };
    // Round 1 is the first that is knitted: what changes is seen from the second on.
    expect(knitted(down)).toEqual({ shaped: [20, 48], counts: [200, 268] });
    expect(instructed(planOf('yoke', down), 'work row').map(({ after }) => after)).toEqual([130, 200, 268]);
    expectSound(planOf('yoke', down));
  });

  it.each([
    [
      'more counts than rounds',
      { yoke_own_counts: '220, 200, 130, 80' },
      'You named 3 shaping rounds and 4 counts.',
    ],
    [
      'an end at another count',
      { yoke_own_counts: '200, 130, 84' },
      'has 84 stitches, and the yoke ends with 80',
    ],
    ['a round out of order', { yoke_own_rounds: '20, 60, 44' }, 'Shaping round 3 of the pattern'],
  ])('asks to look again where it has %s', (_, wrong, words) => {
    const cannot = cannotOf('yoke', { ...OWN, ...wrong });
    expect(textOf(cannot)).toContain(words);
    expectSound(cannot);
  });

  it('waits where its rounds are not known', () => {
    const cannot = cannotOf('yoke', { ...OWN, yoke_own_rounds: "I don't know" });
    expect(textOf(cannot)).toContain('Pattern, its shaping rounds: The yoke waits for it.');
  });

  it('in the later published scheme keeps 3/4, 2/3 and 3/5 in turn', () => {
    const plan = planOf('yoke', { ...PUBLISHED, yoke_rounds: 'second scheme' });
    expect(knitted({ ...PUBLISHED, yoke_rounds: 'second scheme' }).counts).toEqual([201, 134, 80]);
    expect(textOf(plan)).toContain('a later way');
    expectSound(plan);
  });

  it('says what the rule of thumb gives: 268 stitches have 80 at the neck and are 10 in deep', () => {
    expect(textOf(planOf('yoke', PUBLISHED))).toContain(
      'such a yoke has 80 stitches at the neck and is 10 in deep',
    );
  });
});
