/** The whole way with many wishes at once: one plan for one garment, each change standing on those before it. */
import { describe, expect, it } from 'vitest';
import type { Instruction, Plan, Step } from '../../src/fit/plan.ts';
import { runScript } from '../../src/transport/script/run.ts';
import { knitEdges } from '../simulator/edges.ts';
import { knitSection } from '../simulator/garment.ts';
import { knitWedge } from '../simulator/knit-wedge.ts';
import { Needle, type Worked } from '../simulator/needle.ts';
import { expectSound, flowOf, instructed, planOf, type Typed, textOf, workingNamed } from './scripted.ts';

const START: Typed = {
  unit: 'cm',
  pattern: 'Pennywhin, in the round',
  swatch_made: 'in the round',
  swatch_washed: 'yes',
  swatch_stitches: '22 sts over 10 cm',
  swatch_stitches_2: '22.5 sts over 10 cm',
  swatch_stitches_3: '22 sts over 10 cm',
  swatch_rows: '30 rows over 10 cm',
  swatch_rows_2: '30.5 over 10 cm',
  table: 'women',
  bust: '96.5 cm',
  upper_bust: '91 cm',
  fit: 'classic',
  size: '4',
};
const SLEEVE: Typed = { upper_arm: '33 cm', wrist: '16 cm', sleeve_length: '45 cm' };
const WAIST: Typed = { waist: '80 cm', waist_ease: '8 cm', underarm_to_waist: '18 cm' };
const BUST: Typed = {
  front_length: '46 cm',
  back_length: '42 cm',
  bust_shaping: 'short rows',
  bust_span: '19 cm',
  bust_below_underarm: '5 cm',
};
const HEM: Typed = { hem_drop: '5 cm', hem_over: 'across the back' };
const UPPER: Typed = {
  armhole_wanted: '22 cm',
  neck_width: '18 cm',
  neck_depth: '10 cm',
  shoulder_how: 'short rows',
  shoulder_drop: '3 cm',
  neck_raise: '2.5 cm',
};
const YARN: Typed = {
  yarn_swatch: '9 g',
  yarn_swatch_width: '15 cm',
  yarn_swatch_height: '15 cm',
  yarn_ball: '50 g',
};
const ALL: Typed = {
  ...START,
  wishes: 'all',
  ...SLEEVE,
  body_length: '40 cm',
  ...WAIST,
  ...BUST,
  ...HEM,
  ...UPPER,
  ...YARN,
};

/** The questions that stay open where nothing is answered but these. */
function unanswered(typed: Typed): string[] {
  const run = runScript(
    flowOf('whole'),
    Object.fromEntries(Object.entries(typed).map(([k, v]) => [k, [v].flat()])),
  );
  return run.result === 'open' ? run.open.map(({ question }) => question) : [];
}

const wheres = (plan: Plan, piece: Step['piece']) =>
  plan.steps.filter((s) => s.piece === piece).map((s) => s.where.say);

/** Knits the steps of one piece, one after another, from its cast-on. */
function knitted(steps: readonly Step[], worked: Worked): Needle {
  let needle: Needle | undefined;
  const follow = (instruction: Instruction): void => {
    if (instruction.do === 'cast on') needle = Needle.castOn(instruction.stitches, worked);
    else if (needle === undefined) throw new Error(`${instruction.do} on an empty needle`);
    else if (instruction.do === 'work edging' || instruction.do === 'work plain') {
      expect(needle.count).toBe(instruction.stitches);
      needle.plain(instruction.rows);
    } else if (instruction.do === 'shape') {
      expect(knitSection(needle, instruction.spaced, worked)).toEqual([]);
    } else if (instruction.do === 'short rows') {
      expect(needle.count).toBe(instruction.wedge.needle);
      if (worked === 'flat') expect(needle.next.side).toBe(instruction.wedge.firstRow);
      knitWedge(needle, instruction.wedge);
    } else throw new Error(`nobody knits '${instruction.do}' here`);
  };
  for (const i of steps.flatMap((s) => s.instead)) if (i.do !== 'say') follow(i);
  if (needle === undefined) throw new Error('nothing was cast on');
  return needle;
}

describe('the whole way with every wish', () => {
  it.each(['Pennywhin, in the round', 'Pennywhin, in pieces'])(
    'asks a beginner at most 40 questions: %s',
    (pattern) => {
      const { hem_over: over, ...others } = ALL;
      const round = pattern.endsWith('round') && over !== undefined ? { hem_over: over } : {};
      const needed: Typed = { ...others, ...round, pattern };
      expect(unanswered(needed)).toEqual([]);
      expect(Object.keys(needed).length).toBeLessThanOrEqual(40);
      for (const id of Object.keys(needed).filter((k) => k !== 'pattern')) {
        const { [id]: _, ...rest } = needed;
        expect(unanswered(rest)).toContain(id);
      }
    },
    // Forty interviews: on a machine with much else to do they take their time.
    300_000,
  );

  it.each(['cm', 'in'])('states no number that its workings do not hold, in %s', (unit) => {
    const plan = planOf('whole', { ...ALL, unit });
    expectSound(plan, ['3', '4', '5']);
    expect(plan.waiting).toEqual([]);
  });

  it('goes piece by piece in the order of knitting', () => {
    const plan = planOf('whole', ALL);
    expect(wheres(plan, 'back')).toEqual([
      'where: armhole',
      'where: back of the neck',
      'where: shoulders of the back',
    ]);
    expect(plan.steps.map((s) => s.piece).filter((p, i, all) => p !== all[i - 1])).toEqual([
      'all',
      'front',
      'body',
      'front',
      'body',
      'back',
      'front',
      'sleeve',
    ]);
    expect(wheres(plan, 'sleeve')).toEqual([
      'where: cast-on and cuff',
      'where: cuff to underarm',
      'where: sleeve cap',
    ]);
  });

  it('says each finished measurement once, and each caution once', () => {
    const plan = planOf('whole', ALL);
    const names = plan.finished.map((f) => f.name);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(plan.cautions.map((c) => c.say)).size).toBe(plan.cautions.length);
    expect(textOf(plan).match(/Short rows are turned before their end/g)).toHaveLength(1);
  });

  it('gives the cap the count of the sleeve, and the shoulders what the neck leaves', () => {
    const plan = planOf('whole', ALL);
    const edges = instructed(plan, 'shape edges').map((i) => i.schedule);
    const arm = instructed(plan, 'shape').at(-1)?.spaced.to;
    expect(edges.at(-1)?.from).toBe(arm);
    const [divided] = instructed(plan, 'divide');
    const across = edges[0]?.to;
    expect((divided?.first ?? 0) + (divided?.bindOff ?? 0) + (divided?.last ?? 0)).toBe(across);
    const ends = edges.filter((e) => e.at === 'neck edge').map((e) => e.to);
    const shoulders = instructed(plan, 'short rows').filter((i) => i.wedge.purpose === 'shoulder slope');
    expect(shoulders.slice(1).map((i) => i.wedge.needle)).toEqual(ends);
    expect(shoulders[0]?.wedge.needle).toBe(across);
  });

  it('gives front and back as many rows from the underarm to the shoulder', () => {
    const plan = planOf('whole', ALL);
    const [back, front, side] = instructed(plan, 'shape edges').map((i) => i.schedule);
    const raise = instructed(plan, 'short rows').find((i) => i.wedge.purpose === 'back neck raise');
    const after = instructed(plan, 'work plain').at(-1)?.rows ?? 0;
    const behind = (back?.rows ?? 0) + (raise?.wedge.closing.ordinaryRows ?? 0) + after;
    expect((front?.rows ?? 0) + (side?.rows ?? 0)).toBe(behind);
    expect(behind).toBe(workingNamed(plan, 'rows from the underarm to the front neck, after').given.a?.value);
  });

  it('reckons the yarn from the pieces of the plan: a cap for each arm, as many stitches as its rows have', () => {
    const plan = planOf('whole', ALL);
    const cap = instructed(plan, 'shape edges').at(-1)?.schedule;
    const needle = knitEdges(cap?.from ?? 0, cap?.events ?? [], cap?.rows ?? 0);
    const area = workingNamed(plan, 'area of the sleeve cap');
    expect(area.given.a?.value).toBe(needle.log.reduce((sum, row) => sum + row.worked, 0));
    expect(area.given.n?.value).toBe(2);
  });

  it('reckons the yarn of a sample that nothing else is changed of, by hand', () => {
    const plan = planOf('whole', { ...START, wishes: 'yarn', ...YARN });
    const stitches = (label: string) => workingNamed(plan, label).given.a?.value;
    // 38 cm at 30.25 rows to 10 cm are 115 rounds; 6 cm and 44 cm of a sleeve are 18 and 133 rows.
    expect(stitches('area of the body')).toBe(220 * 115);
    expect(stitches('area of the sleeve')).toBe(44 * 18 + ((44 + 74) / 2) * (133 - 18));
    // 110 of the back less 6 at each side at once and 7 after that: over 60 rows fewer than 98, more than 84.
    expect(stitches('area of the back from the underarm')).toBeGreaterThan(84 * 60);
    expect(stitches('area of the back from the underarm')).toBeLessThan(98 * 60 + 6);
    expect(textOf(plan)).toContain('What the neck takes away, its band adds again.');
  });

  it('adds to the yarn what darts up and down widen the front by', () => {
    const plan = planOf('whole', {
      ...ALL,
      wishes: 'bust, yarn',
      bust: '104 cm',
      bust_shaping: 'both',
      bust_above_waist: '13 cm',
    });
    const [widen, narrow] = plan.steps.flatMap(({ shaped }) =>
      shaped?.shape === 'front darts' ? [shaped.after.spaced] : [],
    );
    if (widen === undefined || narrow === undefined) throw new Error(textOf(plan));
    const needle = Needle.castOn(widen.from, 'flat');
    const added = [widen, narrow].map((spaced) => {
      const before = needle.log.length;
      expect(knitSection(needle, { ...spaced, perRow: 4 }, 'flat')).toEqual([]);
      const worked = needle.log.slice(before).reduce((sum, row) => sum + row.worked, 0);
      return worked - widen.from * spaced.rows;
    });
    const lines = plan.steps
      .flatMap(({ workings }) => workings)
      .filter((w) => w.label === 'area of the darts');
    expect(lines.map((line) => line.given.a?.value)).toEqual(added);
  });

  it('adds to the yarn what a front that is cast on wider has up to the bust', () => {
    const plan = planOf('whole', {
      ...ALL,
      wishes: 'bust, yarn',
      bust: '104 cm',
      bust_shaping: 'front stitches',
    });
    const spaced = plan.steps.flatMap(({ shaped }) =>
      shaped?.shape === 'front darts' ? [shaped.after.spaced] : [],
    );
    const [narrow] = spaced;
    if (narrow === undefined || spaced.length > 1) throw new Error(textOf(plan));
    const needle = Needle.castOn(narrow.from, 'flat');
    // 38 cm of body at 30.25 rows to 10 cm are 115 rounds.
    needle.plain(115 - narrow.rows);
    expect(knitSection(needle, { ...narrow, perRow: 4 }, 'flat')).toEqual([]);
    const worked = needle.log.reduce((sum, row) => sum + row.worked, 0);
    expect(workingNamed(plan, 'area of the darts').given.a?.value).toBe(worked - 115 * narrow.to);
  });

  it("reckons the pattern's tops where the knitter has still to choose, and says so", () => {
    const stitches = (wishes: Typed) =>
      workingNamed(planOf('whole', { ...ALL, ...wishes }), 'area of the back from the underarm').given.a
        ?.value;
    expect(textOf(planOf('whole', { ...ALL, armhole_wanted: '12 cm' }))).toContain(
      "Where you still have to choose, the pattern's armholes and caps are reckoned.",
    );
    expect(stitches({ armhole_wanted: '12 cm' })).toBe(stitches({ wishes: 'yarn' }));
  });

  it('goes on straight where the pattern has no cap at the gauge', () => {
    const thick = { swatch_stitches: '6 sts over 10 cm', swatch_rows: '40 rows over 10 cm' };
    const skipped = { swatch_stitches_2: 'skip', swatch_stitches_3: 'skip', swatch_rows_2: 'skip' };
    const plan = planOf('whole', { ...START, ...thick, ...skipped, wishes: 'yarn', ...YARN });
    expect(textOf(plan)).toContain('From the underarms up the body is reckoned straight');
    // 220 stitches all round, 20 cm deep at 40 rows to 10 cm.
    expect(workingNamed(plan, 'area of the body from the underarm').given.a?.value).toBe(110 * 80);
  });
});

describe('short rows laid into the body', () => {
  const wishes = 'length, waist, bust, hem';
  const some: Typed = { ...START, wishes, body_length: '40 cm', ...WAIST, ...BUST, ...HEM };

  it('are knitted in the round where they lie: the sides grow by the rows of the body, back and front by their wedges', () => {
    const plan = planOf('whole', some);
    const wedges = instructed(plan, 'short rows').map((i) => i.wedge.rows);
    const needle = knitted(
      plan.steps.filter((s) => s.piece === 'body' || s.where.say === 'where: bust dart'),
      'round',
    );
    const heights = needle.heights;
    const half = needle.count / 2;
    expect(needle.count).toBe(220);
    // 40 cm at 30.25 rows to 10 cm.
    expect(Math.min(...heights)).toBe(121);
    expect(heights.slice(0, half).reduce((a, b) => Math.max(a, b)) - 121).toBe(wedges[0]);
    expect(heights.slice(half).reduce((a, b) => Math.max(a, b)) - 121).toBe(wedges[1]);
  });

  it('are knitted in pieces: the hem on the back alone, the dart on the front alone, both of one length at the side', () => {
    const { hem_over: _, ...pieces } = some;
    const plan = planOf('whole', { ...pieces, pattern: 'Pennywhin, in pieces' });
    const [back, front] = (['back', 'front'] as const).map((piece) =>
      knitted(
        plan.steps.filter((s) => s.piece === piece && s.where.say !== 'where: which shaping suits'),
        'flat',
      ),
    );
    expect(back?.count).toBe(front?.count);
    // Columns near the side lean outward where stitches are lost at the edge: the rows that reach the side are counted.
    const atTheSide = (needle: Needle | undefined) => needle?.log.filter((row) => !row.short).length;
    expect(atTheSide(back)).toBe(122);
    expect(atTheSide(front)).toBe(122);
    const [ofHem, ofDart] = instructed(plan, 'short rows').map((i) => i.wedge.rows);
    expect(Math.max(...(back?.heights ?? []))).toBe(122 + (ofHem ?? 0));
    expect(Math.max(...(front?.heights ?? []))).toBe(122 + (ofDart ?? 0));
    expectSound(plan, ['3', '4', '5']);
  });

  it('stand on the body as it is in the sample where nothing else is wished for', () => {
    const plan = planOf('whole', { ...START, wishes: 'bust, hem', ...BUST, ...HEM });
    const needle = knitted(
      plan.steps.filter((s) => s.piece === 'body' || s.where.say === 'where: bust dart'),
      'round',
    );
    expect(needle.count).toBe(220);
    expectSound(plan, ['3', '4', '5']);
  });

  it('say that they find no place where the bust would lie in the edging', () => {
    const plan = planOf('whole', {
      ...START,
      wishes: 'length, bust',
      body_length: '12 cm',
      ...BUST,
      bust_below_underarm: '10 cm',
    });
    expect(textOf(plan)).toMatch(/They would begin in the edging/);
    expectSound(plan, ['3', '4', '5']);
  });
});

describe('changes that meet in the same rows', () => {
  it('darts up and down on straight sides: told beside the body', () => {
    const plan = planOf('whole', {
      ...START,
      wishes: 'bust',
      ...BUST,
      bust: '104 cm',
      bust_shaping: 'both',
      bust_above_waist: '13 cm',
    });
    expect(textOf(plan)).toMatch(/Work both at the same time/);
    expectSound(plan, ['3', '4', '5', '6']);
  });

  it('a slope that takes the whole depth of the neck: it is said, with what can be done', () => {
    const plan = planOf('whole', {
      ...START,
      wishes: 'front neck, shoulder',
      neck_width: '18 cm',
      neck_depth: '2.5 cm',
      shoulder_how: 'short rows',
      shoulder_drop: '3 cm',
    });
    expect(textOf(plan)).toMatch(/takes up the whole depth of the neck/);
    expectSound(plan, ['3', '4', '5']);
  });
});

describe('a raglan of the knitter’s own with other sleeves', () => {
  const own: Typed = {
    ...START,
    pattern: 'my own',
    pattern_gauge: '22 sts and 30 rows over 10 cm',
    body_made: 'from the hem, in the round',
    sizes_bust: '91 (100, 109) cm',
    size: '2',
    wishes: 'sleeve, top, back neck',
    checking_joined: 'raglan',
    sleeve_made: 'from the cuff, in the round',
    ...SLEEVE,
    p_wrist: '44',
    p_upper_arm: '74',
    p_cuff: '6 cm',
    yoke_depth: '22 cm',
    p_back_yoke: '98',
    p_sleeve_yoke: '62',
    p_back_neck: '38',
    p_front_neck: '38',
    p_sleeve_neck: '10',
    neck_around: '44 cm',
    neck_raise: '2.5 cm',
  };

  it('begins its sleeve lines with the pattern’s count and what the sleeve differs by', () => {
    const plan = planOf('whole', own);
    const arm = instructed(plan, 'shape').at(-1)?.spaced.to ?? 0;
    const [raglan] = instructed(plan, 'shape raglan');
    expect(raglan?.raglan.lines.sleeve.from).toBe(62 + arm - 74);
    expect(workingNamed(plan, 'stitches of a sleeve where the yoke begins').result.value).toBe(62 + arm - 74);
    expectSound(plan, ['1', '2', '3']);
  });

  it.each([
    ['from the hem, in the round', '221', 'in the last round before the yoke'],
    ['from the neck, in the round', '221', 'Take one stitch more at one underarm'],
    ['from the hem, in the round', '220', null],
    ['from the hem, in pieces', '111', null],
  ])('says where the odd stitch of a body goes: %s on %s stitches', (body_made, p_bust, told) => {
    const long = { p_body_length: '38 cm', body_length: '40 cm', p_hem: '6 cm', p_hem_stitches: p_bust };
    const from = body_made.startsWith('from the hem') ? 'cuff' : 'shoulder';
    const sleeve_made = `from the ${from}, in the round`;
    const asked: Typed = { ...own, sleeve_made, wishes: 'sleeve, top, back neck, length', ...long };
    const plan = planOf('whole', { ...asked, body_made, p_bust });
    const lines = plan.steps.find(({ where }) => where.say === 'where: raglan lines');
    const odd = lines?.notes.filter(({ say }) => say.startsWith('note: odd body')) ?? [];
    expect(odd).toHaveLength(told === null ? 0 : 1);
    if (told !== null) expect(textOf(plan)).toContain(told);
  });
});
